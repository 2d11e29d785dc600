/** The order of the stages, without a disk: Sources → outputs and findings. */
import { languageFor } from '../analysis/language/language.ts';
import type {
  ChannelInput,
  ChannelResult,
  PlannedFragment,
  PlanningChannel,
  Proof,
  Tools,
} from '../channels/channel.ts';
import { channels, closingChannels } from '../channels/index.ts';
import { readRecords } from '../content/read.ts';
import type { FileReader } from '../content/record-file.ts';
import type { Sources } from '../content/sources.ts';
import { type Diagnostic, mustFixAny } from '../diagnostics/diagnostic.ts';
import type { Box, Moment } from '../model/box.ts';
import { revealDay } from '../model/calendar.ts';
import { callFindings } from '../model/call-findings.ts';
import { linkBox } from '../model/link.ts';
import { isSealed, unsealed } from '../model/seal.ts';
import type { Output, Where } from '../render/output.ts';
import { isAtAim } from '../render/proof-words.ts';
import { type Asset, compileTemplates, type TemplateFile } from '../render/templates.ts';
import { wordingFor } from '../wording/wording.ts';
import type { AsOf } from './as-of.ts';
import { completenessOf } from './completeness.ts';
import { DEFAULT_AIM, type NameMemory, proofsOf } from './facts.ts';
import { type NextBuild, nextBuild } from './next-build.ts';
import { type ParcelsByCycle, parcelsFindings, parcelsReports } from './parcels.ts';
import { withReveals } from './reveals.ts';

/** `records`: texts are checked and linked; `proofs`: articles are read for their coverage; `pages`: channels make their files. */
export type Stage = 'records' | 'proofs' | 'pages';

export interface BuildInput {
  readonly sources: Sources;
  readonly readFile: FileReader;
  readonly templates: {
    readonly files: readonly TemplateFile[];
    readonly assets: readonly Asset[];
    /** Scripts for visitors' browsers, `search.en.js`; without them the pages do without. */
    readonly scripts?: readonly Asset[];
  };
  readonly asOf: AsOf;
  /** Filled with what the dictionary is asked. */
  readonly names?: NameMemory;
  /** The hash that each cycle's proof in the back room was made from, by cycle. */
  readonly proved?: ReadonlyMap<string, string>;
  /** Each cycle's list of shipments, as `parcelsReaders` read it; none where there is none. */
  readonly parcels?: ParcelsByCycle;
  /** Called as each stage begins; the core has no clock, but the edge may time it so. */
  readonly onStage?: (stage: Stage) => void;
}

/** A proof that this build made, in short. */
export interface Proved {
  readonly cycle: string;
  readonly theme: string;
  readonly aim: number;
  readonly items: number;
  readonly atAim: number;
  readonly weakest?: { readonly name: string; readonly standing: number };
  readonly crowded: number;
  readonly rivals: number;
}

/** A cycle that is not shown yet. */
export interface SealedCycle {
  readonly cycle: string;
  readonly theme: string;
  /** Absent while it waits for its parcels, and `until` says so. */
  readonly reveal?: Moment;
  /** What it is sealed until: the day of the reveal in the box's zone, or that its parcels have arrived. */
  readonly until: string;
}

export interface BuildResult {
  /** Empty when anything must be fixed. Paths are unique within `site` and within `backroom`. */
  readonly outputs: readonly Output[];
  readonly diagnostics: readonly Diagnostic[];
  /** Absent when the records do not make a box. */
  readonly box?: Box;
  readonly asOf?: Moment;
  readonly sealed: readonly SealedCycle[];
  /** When the same content will give another site; absent where no moment is known. */
  readonly next?: NextBuild;
  /** Of the newest cycle and of every cycle whose text changed. */
  readonly proofs: readonly Proved[];
}

const sameContent = (a: Output, b: Output): boolean => {
  if ('text' in a) return 'text' in b && a.text === b.text;
  if ('bytes' in a) return 'bytes' in b && Buffer.compare(a.bytes, b.bytes) === 0;
  if ('kept' in a) return 'kept' in b;
  return 'picture' in b && a.picture.key === b.picture.key;
};

/** One output a path; throws when two channels want different files in one place. */
const unique = (outputs: readonly Output[]): readonly Output[] => {
  const byPath = new Map<string, Output>();
  for (const output of outputs) {
    const key = `${output.where}/${output.path}`;
    const other = byPath.get(key);
    if (other && !sameContent(other, output)) throw new Error(`Two different files of one path: ${key}`);
    byPath.set(key, other ?? output);
  }
  return [...byPath.values()];
};

const sealedIn = (box: Box, asOf: Moment): readonly SealedCycle[] => {
  const { timeZone, lang } = box.settings;
  return box.cycles
    .filter((cycle) => isSealed(cycle, asOf))
    .map(({ id, theme, reveal }) => ({
      cycle: id,
      theme,
      ...(reveal !== undefined && { reveal }),
      until: revealDay({ reveal }, timeZone, lang),
    }));
};

const inShort = ({ coverage }: Proof): Proved => {
  const { cycle, theme, aim, items, overRepeated: crowded } = coverage;
  const [weakest] = [...items].sort((a, b) => a.standing - b.standing);
  return {
    cycle,
    theme,
    aim,
    items: items.length,
    atAim: items.filter(({ standing }) => isAtAim(standing, aim)).length,
    ...(weakest ? { weakest: { name: weakest.name, standing: weakest.standing } } : {}),
    crowded: crowded.length,
    rivals: items.flatMap(({ phrases }) => phrases).filter(({ rival }) => rival).length,
  };
};

type Making = Promise<{ readonly content: string; readonly result: ChannelResult }>;

/** Makes each fragment once, however many documents are put together from it. */
const fragmentMaker = (where: Where, tools: Tools): ((fragment: PlannedFragment) => Making) => {
  const known = new Map<PlannedFragment, Making>();
  const made = async ({ of, pathOf, make }: PlannedFragment): Making => {
    const parts = await Promise.all(of.map(madeOnce));
    const {
      content,
      pictures = [],
      diagnostics = [],
    } = await make(
      tools,
      parts.map((part) => part.content),
    );
    const files: readonly Output[] = pathOf ? [{ where, path: pathOf(content), text: content }] : [];
    return {
      content,
      result: {
        outputs: [...parts.flatMap(({ result }) => result.outputs), ...files, ...pictures],
        diagnostics: [...parts.flatMap(({ result }) => result.diagnostics), ...diagnostics],
      },
    };
  };
  const madeOnce = (fragment: PlannedFragment): Making => {
    const making = known.get(fragment) ?? made(fragment);
    known.set(fragment, making);
    return making;
  };
  return madeOnce;
};

/** A channel's plan with every document made. */
const carriedOut = async (channel: PlanningChannel, input: ChannelInput): Promise<ChannelResult> => {
  const { documents, pictures = [], diagnostics = [] } = channel.plan(input);
  const { where } = channel;
  const fragmentOf = fragmentMaker(where, input);
  const results = await Promise.all(
    documents.map(async ({ path, of = [], make }): Promise<ChannelResult> => {
      const parts = await Promise.all(of.map(fragmentOf));
      const made = await make(
        input,
        parts.map((part) => part.content),
      );
      const { content, pictures: named = [], diagnostics: found = [] } = made;
      const file: Output =
        typeof content === 'string' ? { where, path, text: content } : { where, path, bytes: content };
      return {
        outputs: [file, ...parts.flatMap(({ result }) => result.outputs), ...named],
        diagnostics: [...parts.flatMap(({ result }) => result.diagnostics), ...found],
      };
    }),
  );
  return {
    outputs: [...results.flatMap((one) => one.outputs), ...pictures],
    // A fragment that several documents share is found at fault once.
    diagnostics: [...new Set([...diagnostics, ...results.flatMap((one) => one.diagnostics)])],
  };
};

/** All files of the site and the back room as of a moment, or what must be fixed first. */
export const buildSite = async (input: BuildInput): Promise<BuildResult> => {
  const {
    sources,
    readFile,
    templates,
    asOf,
    proved = new Map(),
    names = new Map(),
    parcels = new Map(),
    onStage = () => {},
  } = input;
  onStage('records');
  const records = readRecords(sources, readFile);
  const linked = linkBox(records.value, sources);
  const compiled = compileTemplates(templates.files, templates.assets, templates.scripts);
  const read = [
    ...records.diagnostics,
    ...linked.diagnostics,
    ...compiled.diagnostics,
    ...parcelsFindings(parcels),
  ];
  if (!linked.value) return { outputs: [], diagnostics: read, sealed: [], proofs: [] };

  const { value: box, diagnostics: waiting } = withReveals(linked.value, parcels);
  const moment = typeof asOf === 'number' ? asOf : asOf(box.settings.timeZone);
  const found = [...read, ...waiting, ...callFindings(box, moment)];
  const next = nextBuild(box, moment);
  const known = { box, asOf: moment, sealed: sealedIn(box, moment), ...(next && { next }), proofs: [] };
  if (mustFixAny(found)) return { outputs: [], diagnostics: found, ...known };

  onStage('proofs');
  const newest = box.cycles.at(-1);
  const language = await languageFor(box.settings.lang);
  const proofs = await proofsOf({
    box,
    language,
    sources,
    asOf: moment,
    aim: DEFAULT_AIM,
    diagnostics: found,
    names,
    wanted: (cycle, hash) => cycle === newest || proved.get(cycle.id) !== hash,
  });

  onStage('pages');
  const open = unsealed(box, moment);
  const shared = {
    asOf: moment,
    templates: compiled.value,
    language,
    wording: wordingFor(box.settings.lang),
  };
  const inside = { ...shared, box, proofs, parcels: parcelsReports({ box, asOf: moment, parcels }) };
  const outside = { ...shared, box: open, proofs: new Map(), parcels: new Map() };
  const results = await Promise.all(
    channels.map((channel) => {
      const input = channel.where === 'site' ? outside : inside;
      return 'plan' in channel ? carriedOut(channel, input) : channel.make(input);
    }),
  );
  const made = results.flatMap((result) => result.outputs);
  const { whole, diagnostics: lacking } = completenessOf(box, moment, made);
  const closing = closingChannels.map(({ make }) => make({ ...inside, outputs: made, completeness: whole }));
  const all = [...results, ...closing];
  const diagnostics = [...found, ...all.flatMap((result) => result.diagnostics), ...lacking];
  const outputs = mustFixAny(diagnostics) ? [] : unique(all.flatMap((result) => result.outputs));
  return { ...known, outputs, diagnostics, proofs: [...proofs.values()].map(inShort) };
};
