/**
 * All records of a content folder read and linked at once, straight through and with nothing remembered: what the
 * workspace, which takes a cycle at a time, has to agree with.
 */
import { readBoxRecord, readCycleRecords, type Written, type WrittenCycle } from '../../src/content/read.ts';
import type { BoxRecord } from '../../src/content/schemas.ts';
import { readSearches } from '../../src/content/searches.ts';
import type { PhotoSource, TextSource } from '../../src/content/sources.ts';
import type { Checked } from '../../src/diagnostics/diagnostic.ts';
import { addressFindings } from '../../src/model/address-findings.ts';
import type { Box, Search } from '../../src/model/box.ts';
import { targetsOf } from '../../src/model/link.ts';
import { type LinkContext, linkCycle } from '../../src/model/link-cycle.ts';
import { cycleSettingsOf, linkSettings } from '../../src/model/link-settings.ts';
import type { LinkTargets } from '../../src/model/link-stories.ts';
import type { Photos } from '../../src/model/pictures.ts';
import { addressOf } from '../../src/model/set-findings.ts';
import { cycle as cycleWords } from '../../src/wording/en/cycle.ts';
import { caseOf } from './dictionary.ts';
import { readFrontMatter } from './read-front-matter.ts';

/** All that was found in a content folder. */
export interface Sources {
  readonly texts: readonly TextSource[];
  readonly photos: readonly PhotoSource[];
  /** Every file path below the content folder (texts and photos included), sorted. */
  readonly paths: readonly string[];
}

/** The sources of some files by path, and of photos beside them. */
export const sourcesOf = (
  files: Readonly<Record<string, string>>,
  photos: readonly PhotoSource[] = [],
): Sources => ({
  texts: Object.entries(files).map(([path, text]) => ({ path, text })),
  photos,
  paths: [...Object.keys(files), ...photos.map(({ path }) => path)].sort(),
});

/** All records of a content folder. */
export interface Records {
  readonly box?: Written<BoxRecord>;
  readonly cycles: readonly WrittenCycle[];
}

const CYCLE_FILE = /^cycles\/([^/]+)\/(.+)$/;

const byName = (a: string, b: string): number => (a < b ? -1 : 1);

/** Every folder of `cycles/`, also one that is no month, in the order of their names, each with its text files. */
export const textsByCycle = ({ paths, texts }: Sources): ReadonlyMap<string, readonly TextSource[]> => {
  const idOf = (path: string): string | undefined => CYCLE_FILE.exec(path)?.[1];
  const ids = [...new Set(paths.flatMap((path) => idOf(path) ?? []))].sort(byName);
  const folders = new Map(ids.map((id): [string, TextSource[]] => [id, []]));
  for (const source of texts) folders.get(idOf(source.path) ?? '')?.push(source);
  return folders;
};

/** All records, in the order of their paths, and every finding about them one by one.  */
const readRecords = (sources: Sources): Checked<Records> => {
  const box = readBoxRecord(sources.texts, readFrontMatter);
  const cycles = [...textsByCycle(sources)].map(([id, texts]) =>
    readCycleRecords(id, texts, readFrontMatter),
  );
  return {
    value: {
      ...(box.value && { box: box.value }),
      cycles: cycles.flatMap(({ value }) => value ?? []),
    },
    diagnostics: [box, ...cycles].flatMap(({ diagnostics }) => diagnostics),
  };
};

/** All photos and paths of the content folder, by path. */
export const photosOf = (sources: Sources): Photos => ({
  byPath: new Map(sources.photos.map((photo) => [photo.path, photo])),
  paths: new Set(sources.paths),
});

/** What people typed, as searches.csv has it, its columns named as box.md says. */
const linkSearches = ({ box }: Pick<Records, 'box'>, texts: Sources['texts']): Checked<readonly Search[]> => {
  const named = box?.value?.searches;
  return readSearches(
    texts.find(({ path }) => path === 'searches.csv'),
    box && named && { ...named, location: box.locationOf(['searches']) },
  );
};

/** The box, or undefined where box.md is no record; findings of every cycle either way. */
const linkBox = (records: Records, sources: Sources): Checked<Box | undefined> => {
  const targets: LinkTargets = { targets: targetsOf(records.cycles), photos: photosOf(sources) };
  const settings = linkSettings(records.box, targets);
  const context: LinkContext = {
    ...targets,
    settings: cycleSettingsOf(settings.value, records.box),
    titleWords: cycleWords,
    isTitleWorded: true,
    caseOf,
  };
  const between = addressFindings(
    records.cycles.flatMap(({ id, cycle }) =>
      cycle?.value
        ? [{ address: addressOf(id, cycle.value), location: () => cycle.locationOf(['address']) }]
        : [],
    ),
  );
  const cycles = records.cycles.map((written) => linkCycle(written, context));
  const searches = linkSearches(records, sources.texts);
  return {
    value: settings.value && {
      settings: settings.value,
      cycles: cycles.flatMap(({ value }) => value ?? []),
      searches: searches.value,
    },
    diagnostics: [
      ...settings.diagnostics,
      ...between,
      ...cycles.flatMap(({ diagnostics }) => diagnostics),
      ...searches.diagnostics,
    ],
  };
};

/** The box of some sources with every finding, and apart those of its records one by one, and of linking them. */
export const wholeBox = (sources: Sources) => {
  const records = readRecords(sources);
  const { value, diagnostics } = linkBox(records.value, sources);
  return { value, records, linking: diagnostics, diagnostics: [...records.diagnostics, ...diagnostics] };
};
