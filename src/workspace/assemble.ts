/**
 * The files of a content folder → the box, each cycle linked by itself: what did not change since it was linked is taken
 * as it is, in this process or from the memory.
 */

import { letterCaseBy } from '../analysis/language/letter-case.ts';
import type { WrittenCycle } from '../content/read.ts';
import type { FileReader } from '../content/record-file.ts';
import { frontMatterOf } from '../content/record-file.ts';
import type { PhotoSource, TextSource } from '../content/sources.ts';
import { unreadFindings } from '../content/unread-files.ts';
import type { Checked, Diagnostic } from '../diagnostics/diagnostic.ts';
import { mustFixAny } from '../diagnostics/diagnostic.ts';
import { ADDRESSES_FILE } from '../io/addresses-file.ts';
import { isTooBig, type KnownFile } from '../io/know-files.ts';
import { hasContent, isBroken, leadsOut } from '../io/list-files.ts';
import type { Box, Cycle, Search, ShownAddress } from '../model/box.ts';
import type { LinkTargets } from '../model/link-stories.ts';
import { locationIn } from '../model/location-in.ts';
import type { Target } from '../model/story.ts';
import { isUnnamedTake } from '../model/take.ts';
import { digestOf } from '../text/digest.ts';
import { primaryLanguage } from '../text/language-tag.ts';
import type { CaseOf } from '../text/letter-case.ts';
import { type Memory, recalled } from '../text/memory.ts';
import type { WordNet } from '../text/wordnet.ts';
import { joinsFor } from '../wording/joins.ts';
import { isWordedIn, wordingFor } from '../wording/wording.ts';
import { type BoxFacts, boxFactsOf, forCyclesOf } from './box-facts.ts';
import { keepFacts, recallFacts } from './linked-box.ts';
import {
  cycleKey,
  type Dependencies,
  holds,
  keepCycle,
  type LinkedCycle,
  noting,
  type RecordShelf,
  recallCycle,
} from './linked-cycle.ts';
import { isRemembered, type ParsedRecord, parseRecord, type RecordText } from './record-reader.ts';

/** What stands in a content folder. */
export interface Snapshot {
  /** Undefined where box.md is no record. */
  readonly box: Box | undefined;
  readonly facts: BoxFacts;
  /**
   * Addresses that earlier builds have shown; none while a record is at fault, because what it lacks is not lost, and
   * nothing is published.
   */
  readonly shown: readonly ShownAddress[];
  /** Every cycle that has a folder, the oldest first, also those at fault. */
  readonly cycleIds: readonly string[];
  /** Of the records, of what they name, of searches.csv and of addresses.csv. */
  readonly diagnostics: readonly Diagnostic[];
  readonly files: ReadonlyMap<string, KnownFile>;
  /** By cycle: every photo of its folder, named by a record or not. */
  readonly photos: ReadonlyMap<string, readonly PhotoSource[]>;
}

/** A cycle in this process: its key says what it was made of. */
interface Held {
  readonly key: string;
  readonly linked: LinkedCycle;
}

export interface Assembler {
  readonly assemble: (files: ReadonlyMap<string, KnownFile>) => Promise<Snapshot>;
}

/** A cycle whose records were read now. */
interface ReadCycle {
  readonly id: string;
  readonly key: string;
  readonly read: Checked<WrittenCycle | undefined>;
}

const CYCLE_FILE = /^cycles\/([^/]+)\//;

/** Files of every folder of `cycles/`, the oldest first; a folder without a text is there too. */
const byCycle = (files: ReadonlyMap<string, KnownFile>): ReadonlyMap<string, readonly KnownFile[]> => {
  const folders = new Map<string, KnownFile[]>();
  for (const file of files.values()) {
    const id = CYCLE_FILE.exec(file.path)?.[1];
    if (id === undefined) continue;
    const folder = folders.get(id);
    if (folder) folder.push(file);
    else folders.set(id, [file]);
  }
  return new Map([...folders].sort(([a], [b]) => (a < b ? -1 : 1)));
};

const isReadable = (file: KnownFile): boolean => hasContent(file) && !isTooBig(file);

const isRecord = (file: KnownFile): boolean => file.path.endsWith('.md') && isReadable(file);

const targetsOfCycle = ({ id, items }: Cycle): readonly (readonly [string, Target])[] => [
  [`cycles/${id}/cycle.md`, { cycle: id }],
  ...items.map((item): readonly [string, Target] => [item.source.file, { cycle: id, item: item.slug }]),
];

/** Photos and paths, for what records name. */
const photosIn = (files: ReadonlyMap<string, KnownFile>): LinkTargets['photos'] => ({
  byPath: new Map([...files.values()].flatMap(({ path, photo }) => (photo ? [[path, photo] as const] : []))),
  paths: new Set(files.keys()),
});

/** A dictionary of a language that there is none of. */
const knowsNothing: CaseOf = () => undefined;

/** An assembler that keeps what it linked. `readText` gives a file's text as `decodeText` reads it. */
export const assembler = (
  memory: Memory,
  readText: (path: string) => Promise<string>,
  wordnet: WordNet,
): Assembler => {
  let held: ReadonlyMap<string, Held> = new Map();
  let files: ReadonlyMap<string, KnownFile> = new Map();
  let targets: LinkTargets = { targets: new Map(), photos: { byPath: new Map(), paths: new Set() } };
  const english = letterCaseBy(wordnet);
  const shelf: RecordShelf = {
    memory,
    hashOf: (path) => files.get(path)?.hash,
    targets: () => targets,
  };

  /** Whether a record is said to be missing that stands there and is not read: why it is not has a finding of its own. */
  const isThereUnread = ({ rule, location }: Diagnostic): boolean =>
    (rule === 'box-missing' || rule === 'cycle-missing') && files.has(location.file);

  const wholeFile = (path: string): KnownFile | undefined => {
    const file = files.get(path);
    return file && isReadable(file) ? file : undefined;
  };

  const textOf = ({ path, hash, text }: KnownFile): RecordText => ({
    path,
    hash,
    read: async () => text ?? (await readText(path)),
  });

  /** A reader of these files, all parsed. */
  const readerOf = async (records: readonly KnownFile[]): Promise<FileReader> => {
    const parsed = new Map<string, ParsedRecord>();
    for (const file of records) parsed.set(file.path, await parseRecord(textOf(file), memory));
    return ({ path }) => {
      const record = parsed.get(path);
      if (!record) throw new Error(`Expected ${path} among the parsed files`);
      return frontMatterOf(record, record.parsed);
    };
  };

  const sourcesOf = (folder: readonly KnownFile[]): readonly TextSource[] =>
    folder.filter(isRecord).map(({ path }) => ({ path, text: '' }));

  const readCycle = async (id: string, key: string, folder: readonly KnownFile[]): Promise<ReadCycle> => {
    const { readCycleRecords } = await import('../content/read.ts');
    const readFile = await readerOf(folder.filter(isRecord));
    return { id, key, read: readCycleRecords(id, sourcesOf(folder), readFile) };
  };

  const boxRecord = async () => {
    const { readBoxRecord } = await import('../content/read.ts');
    const file = wholeFile('box.md');
    const readFile = await readerOf(file ? [file] : []);
    return readBoxRecord(file ? [{ path: 'box.md', text: '' }] : [], readFile);
  };

  /** What is known of a cycle of this key, where everything it names is at hand. */
  const known = (id: string, key: string, folder: readonly KnownFile[]): LinkedCycle | undefined => {
    const mine = held.get(id);
    if (mine?.key === key) return mine.linked;
    if (!folder.filter(isRecord).every((file) => isRemembered(file, memory))) return undefined;
    return recallCycle(key, shelf);
  };

  const searchesOf = ({ searches: columns }: BoxFacts): Promise<Checked<readonly Search[]>> => {
    const file = wholeFile('searches.csv');
    return recalled(memory, digestOf('searches', file?.hash, columns), async () => {
      const { readSearches } = await import('../content/searches.ts');
      return readSearches(file && { path: file.path, text: await textOf(file).read() }, columns);
    });
  };

  const shownAddresses = async (): Promise<Checked<readonly ShownAddress[]>> => {
    const file = wholeFile(ADDRESSES_FILE);
    if (!file) return { value: [], diagnostics: [] };
    return recalled(memory, digestOf('addresses', file.hash), async () => {
      const { readAddresses } = await import('../content/addresses.ts');
      return readAddresses({ path: file.path, text: await textOf(file).read() });
    });
  };

  const assemble = async (now: ReadonlyMap<string, KnownFile>): Promise<Snapshot> => {
    files = now;
    const folders = byCycle(files);
    const boxHash = wholeFile('box.md')?.hash;
    const remembered = boxHash === undefined ? undefined : recallFacts(boxHash, shelf);
    const record = remembered ? undefined : await boxRecord();
    const forCycles = remembered?.facts.forCycles ?? forCyclesOf(record?.value);
    const { lang } = forCycles;
    const titleWords = joinsFor(lang).title;
    const isTitleWorded = isWordedIn(wordingFor(lang), lang);
    const settingsDigest = digestOf(forCycles, titleWords.title('things', 'theme', 'month'));

    // Every cycle that is known as it stands, and the records of the others: both say what links may lead to.
    const linked = new Map<string, LinkedCycle>();
    const read = new Map<string, ReadCycle>();
    const keys = new Map<string, string>();
    for (const [id, folder] of folders) {
      const key = cycleKey(id, folder.filter(isRecord), settingsDigest);
      keys.set(id, key);
      const before = known(id, key, folder);
      if (before) linked.set(id, before);
      else read.set(id, await readCycle(id, key, folder));
    }
    const { targetsOf } = read.size > 0 ? await import('../model/link.ts') : { targetsOf: () => [] };
    targets = {
      targets: new Map([
        ...[...linked.values()].flatMap(({ cycle }) => targetsOfCycle(cycle)),
        ...targetsOf([...read.values()].flatMap((one) => one.read.value ?? [])),
      ]),
      photos: photosIn(files),
    };
    for (const [id, { dependencies }] of linked)
      if (!holds(dependencies, targets)) {
        linked.delete(id);
        read.set(id, await readCycle(id, keys.get(id) ?? '', folders.get(id) ?? []));
      }

    const faulty = new Map<string, readonly Diagnostic[]>();
    const caseOf = primaryLanguage(lang) === 'en' ? english : knowsNothing;
    const { linkCycle } = read.size > 0 ? await import('../model/link-cycle.ts') : { linkCycle: undefined };
    for (const {
      id,
      key,
      read: { value: written, diagnostics: found },
    } of read.values()) {
      const { targets: watched, noted } = noting(targets);
      const result =
        written && linkCycle
          ? linkCycle(written, { ...watched, settings: forCycles, titleWords, isTitleWorded, caseOf })
          : { value: undefined, diagnostics: [] };
      const diagnostics = [...found, ...result.diagnostics];
      if (!result.value || mustFixAny(diagnostics)) {
        faulty.set(id, diagnostics);
        if (result.value) linked.set(id, { cycle: result.value, diagnostics: [], dependencies: noted() });
        continue;
      }
      const one: LinkedCycle = { cycle: result.value, diagnostics, dependencies: noted() };
      keepCycle(key, one, memory);
      linked.set(id, one);
    }
    held = new Map(
      [...linked]
        .filter(([id]) => !faulty.has(id))
        .map(([id, one]) => [id, { key: keys.get(id) ?? '', linked: one }]),
    );

    const facts = await settingsFacts(remembered, record, boxHash);
    const searches = await searchesOf(facts);
    const ids = [...folders.keys()];
    const cycles = ids.flatMap((id) => linked.get(id)?.cycle ?? []);
    const between = await addressesOf(cycles);
    const shown = await shownAddresses();
    const diagnostics = [
      ...facts.diagnostics,
      ...between,
      ...ids.flatMap((id) => faulty.get(id) ?? linked.get(id)?.diagnostics ?? []),
      ...searches.diagnostics,
      ...shown.diagnostics,
    ];
    return {
      box: facts.settings && { settings: facts.settings, cycles, searches: searches.value },
      facts,
      cycleIds: ids.filter((id) => linked.has(id) || read.get(id)?.read.value !== undefined),
      shown: mustFixAny(diagnostics) ? [] : shown.value,
      diagnostics: [
        ...diagnostics.filter((finding) => !isThereUnread(finding)),
        ...unreadFindings(
          [...files.values()].map((file) => ({
            path: file.path,
            isBroken: isBroken(file),
            isTooBig: isTooBig(file),
            leadsOut: leadsOut(file),
            isPhoto: file.photo !== undefined,
            isUnnamedTake: isUnnamedTake(file.path, cycles),
          })),
        ),
      ],
      files,
      photos: new Map(
        [...folders].map(([id, folder]) => [id, folder.flatMap(({ photo }) => photo ?? [])] as const),
      ),
    };
  };

  /** The box's facts: those remembered, where what box.md names is as it was. */
  const settingsFacts = async (
    remembered: { readonly facts: BoxFacts; readonly dependencies: Dependencies } | undefined,
    record: Awaited<ReturnType<typeof boxRecord>> | undefined,
    hash: string | undefined,
  ): Promise<BoxFacts> => {
    if (remembered && holds(remembered.dependencies, targets)) return remembered.facts;
    const { value, diagnostics } = record ?? (await boxRecord());
    const { targets: watched, noted } = noting(targets);
    const facts = boxFactsOf(value, watched, diagnostics);
    if (hash !== undefined && !mustFixAny(facts.diagnostics)) keepFacts(hash, facts, noted(), memory);
    return facts;
  };

  const addressesOf = async (cycles: readonly Cycle[]): Promise<readonly Diagnostic[]> => {
    const { addressFindings } = await import('../model/address-findings.ts');
    return addressFindings(
      cycles.map(({ address, source }) => ({ address, location: () => locationIn(source, 'address') })),
    );
  };

  return { assemble };
};
