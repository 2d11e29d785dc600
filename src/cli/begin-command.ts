/** `lidlore begin`: a box, and the next of its cycles, laid out as files. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { decodeText } from '../io/decode-text.ts';
import { listedIfThere } from '../io/list-files.ts';
import { type PutPlan, putFiles } from '../io/put-files.ts';
import { codeOf } from '../text/error-code.ts';
import { begin } from '../wording/en/begin.ts';
import { commandLine } from '../wording/en/command-line.ts';
import {
  addPictures,
  knownBox,
  monthNear,
  nextMonth,
  planBox,
  planCycle,
  standingCycle,
  todayIn,
} from '../workspace/begin/index.ts';
import type { KnownBox } from '../workspace/begin/known-box.ts';
import type { PhotoMatch } from '../workspace/begin/match-photos.ts';
import type { BoxAnswers, PlannedFile } from '../workspace/begin/plan-records.ts';
import { askBox } from './begin-box.ts';
import { askCycle } from './begin-cycle.ts';
import { askPhotos, type DroppedFolder, readDropped } from './begin-photos.ts';
import type { Environment, Operands, Values } from './environment.ts';
import { EXIT } from './exit-status.ts';
import { type Checked, isStop, type Questioner, questionerFor } from './questions.ts';

const { questions, expected, mistakes, said, photos: photoWords } = begin;

/** What was asked for and cannot be done, in words. */
interface Refusal {
  readonly mistake: string;
}

/** All that one run puts on the disk, and what to say of it. */
interface Outcome {
  readonly plan: PutPlan;
  readonly made: readonly PlannedFile[];
  readonly changed: readonly string[];
  readonly month?: string;
  /** The moment of the reveal; absent where no cycle was laid out or its parcels decide. */
  readonly reveal?: string;
  readonly wantsPhotos: boolean;
}

interface Place {
  /** Absolute. */
  readonly content: string;
  /** As the owner wrote it. */
  readonly root: string;
}

const isFolder = (path: string): boolean => statSync(path, { throwIfNoEntry: false })?.isDirectory() === true;

/** Folders among the cycles, whatever is in them. */
const monthFolders = (content: string): readonly string[] => {
  const cycles = join(content, 'cycles');
  return isFolder(cycles)
    ? readdirSync(cycles).filter((name) => existsSync(join(cycles, name, 'cycle.md')))
    : [];
};

/** The box that stands in the folder, or what must be mended in it first. */
const readBox = async (
  { content }: Place,
  edge: Environment,
): Promise<{ readonly box: KnownBox | undefined; readonly diagnostics: readonly Diagnostic[] }> => {
  const [{ withMemory }, { openWorkspace }, { programDigest }, { progress }] = await Promise.all([
    import('./with-memory.ts'),
    import('../workspace/workspace.ts'),
    import('../io/program.ts'),
    import('./progress.ts'),
  ]);
  const snapshot = await withMemory(join(dirname(content), '.lidlore'), async (memory) => {
    const onPhotos = progress(edge, commandLine.progress.photos);
    const { snapshot } = await openWorkspace({ path: content, memory, program: programDigest(), onPhotos });
    return { value: snapshot(), isWhole: false };
  });
  return {
    box: knownBox(snapshot),
    diagnostics: snapshot.diagnostics.filter(({ location }) => location.file === 'box.md'),
  };
};

const newBox = ({ lang, timeZone, currency }: BoxAnswers, content: string): KnownBox => ({
  ...{ lang, timeZone, currency, everyMonths: 1, habit: {}, cycles: [] },
  months: monthFolders(content),
});

/** Where the photos of a month come from: a folder that was named, or the cycle's own. */
const droppedFor = (
  month: string,
  values: Values,
  { content }: Place,
  edge: Environment,
): ({ readonly folder: string; readonly own: string } & DroppedFolder) | Refusal => {
  const own = join(content, 'cycles', month, 'photos');
  const named = typeof values.photos === 'string' ? values.photos : undefined;
  const folder = named === undefined ? own : resolve(edge.cwd, named);
  if (named !== undefined && !isFolder(folder)) return { mistake: mistakes.noFolder(named) };
  const found = isFolder(folder) ? readDropped(folder) : { photos: [], others: [] };
  if (named !== undefined && found.photos.length === 0) return { mistake: mistakes.noPhotos(named) };
  return { folder, own, ...found };
};

/** Under which name each photo stands in photos/, and which have to be copied there. */
const placed = (
  matches: readonly PhotoMatch[],
  { folder, own }: { readonly folder: string; readonly own: string },
  say: (line: string) => void,
): { readonly fileOf: (match: PhotoMatch) => string; readonly copies: PutPlan['copies'] } => {
  const names = new Map<PhotoMatch, string>();
  const copies: { from: string; to: string }[] = [];
  // Disks that pass over capitals would have one file for two names.
  const taken = new Set(isFolder(own) ? readdirSync(own).map((name) => name.toLowerCase()) : []);
  for (const match of matches) {
    const { name } = match.photo;
    if (folder === own || match.shows === undefined) {
      names.set(match, name);
      continue;
    }
    const from = join(folder, name);
    const there = join(own, name);
    if (existsSync(there) && readFileSync(there).equals(readFileSync(from))) {
      names.set(match, name);
      continue;
    }
    let free = name;
    for (let next = 2; taken.has(free.toLowerCase()); next += 1)
      free = name.replace(/(\.[^.]*)?$/, `-${next}$1`);
    if (free !== name) say(photoWords.renamed(name, free));
    taken.add(free.toLowerCase());
    names.set(match, free);
    copies.push({ from, to: join(own, free) });
  }
  return { fileOf: (match) => names.get(match) ?? match.photo.name, copies };
};

/** Photos for a cycle that stands: added to its records. */
const addToCycle = async (
  questioner: Questioner,
  values: Values,
  place: Place,
  edge: Environment,
  { month, next }: { readonly month: string; readonly next: string },
): Promise<Outcome | Refusal> => {
  if (
    ['theme', 'things', 'from', 'kinds', 'lead', 'shipped', 'reveal'].some(
      (option) => values[option] !== undefined,
    )
  )
    return { mistake: mistakes.cycleStands(month, next) };
  const dropped = droppedFor(month, values, place, edge);
  if ('mistake' in dropped) return dropped;
  const folder = join(place.content, 'cycles', month);
  const bytes = new Map<string, Uint8Array>(
    listedIfThere(folder)
      .filter(({ path }) => path.endsWith('.md'))
      .map(({ path }) => [`cycles/${month}/${path}`, readFileSync(join(folder, path))]),
  );
  const cycle = standingCycle([...bytes].map(([path, one]) => ({ path, text: decodeText(one) })));
  const fresh = dropped.photos.filter(({ name }) => !cycle.pictures.has(name));
  if (fresh.length === 0)
    return {
      mistake: mistakes.noNewPhotos(month, `${place.root}/cycles/${month}/photos/`, next),
    };
  const say = (text: string): void => void edge.stderr.write(text);
  const matches = await askPhotos(questioner, fresh, cycle.things, cycle.hasWholeBox, say);
  const { fileOf, copies } = placed(matches, dropped, (line) => say(`${line}\n`));
  const changed = addPictures(cycle, matches, fileOf);
  if (dropped.others.length > 0) say(`${photoWords.also(dropped.others)}\n`);
  return {
    plan: {
      ...{ folders: [], files: [], copies },
      changes: changed.map(({ path, text }) => ({
        path: join(place.content, path),
        was: bytes.get(path) ?? new Uint8Array(),
        text,
      })),
    },
    made: [],
    changed: changed.map(({ path }) => path),
    month,
    wantsPhotos: false,
  };
};

/** A new cycle, with its photos where there are any. */
const layOut = async (
  questioner: Questioner,
  values: Values,
  place: Place,
  edge: Environment,
  { box, month }: { readonly box: KnownBox; readonly month: string },
): Promise<Outcome | Refusal | undefined> => {
  const answers = await askCycle(questioner, values, edge, { box, month });
  if (!answers || 'mistake' in answers) return answers;
  const dropped = droppedFor(month, values, place, edge);
  if ('mistake' in dropped) return dropped;
  const say = (text: string): void => void edge.stderr.write(text);
  const bare = answers.things.map(({ name, kind }) => ({ name, kind, hasPicture: false }));
  const matches =
    dropped.photos.length > 0 ? await askPhotos(questioner, dropped.photos, bare, false, say) : [];
  const { fileOf, copies } = placed(matches, dropped, (line) => say(`${line}\n`));
  const filesFor = (shows: number | 'box'): readonly string[] =>
    matches.filter((match) => match.shows === shows).map(fileOf);
  const [wholeBox] = filesFor('box');
  const made = planCycle(
    {
      ...answers,
      things: answers.things.map((thing, i) => ({ ...thing, pictures: filesFor(i) })),
      ...(wholeBox !== undefined && { wholeBox }),
    },
    box.lang,
  );
  const isMoment = /^\d{4}-/.test(answers.reveal);
  return {
    plan: {
      folders: [dropped.own],
      files: made.map(({ path, text }) => ({ path: join(place.content, path), text })),
      copies,
      changes: [],
    },
    made,
    changed: [],
    month,
    wantsPhotos: matches.length === 0,
    ...(isMoment && { reveal: answers.reveal }),
  };
};

/** What was made, what is left to write, and what comes next. */
const report = ({ root }: Place, { plan, made, changed, month, reveal, wantsPhotos }: Outcome): string => {
  const shown = (path: string): string => `${root}/${path}`;
  const left = made.filter((file) => file.left.length > 0);
  const folder = month === undefined ? root : shown(`cycles/${month}`);
  const lines = [
    ...(made.length === 0 ? [] : [said.made(made.length), ...made.map(({ path }) => `  ${shown(path)}`)]),
    ...(plan.copies.length === 0 ? [] : [said.copied(plan.copies.length, `${folder}/photos/`)]),
    ...(changed.length === 0 ? [] : [said.changed, ...changed.map((path) => `  ${shown(path)}`)]),
    ...(left.length === 0
      ? []
      : ['', said.leftToWrite, ...left.map((file) => said.left(shown(file.path), file.left))]),
    '',
    said.next,
    ...(month === undefined
      ? [said.nextCycle]
      : [
          ...(wantsPhotos ? [said.nextPhotos(`${folder}/photos/`, month)] : []),
          said.nextWrite(`${folder}/`),
          said.nextBuild(reveal),
        ]),
  ];
  return `${lines.join('\n')}\n`;
};

const bothOf = (box: PlannedFile | undefined, outcome: Outcome | undefined, { content }: Place): Outcome => {
  const files = box ? [{ path: join(content, box.path), text: box.text }] : [];
  const plan = outcome?.plan ?? { folders: [join(content, 'cycles')], files: [], copies: [], changes: [] };
  return {
    ...(outcome ?? { changed: [], wantsPhotos: false }),
    plan: { ...plan, files: [...files, ...plan.files] },
    made: [...(box ? [box] : []), ...(outcome?.made ?? [])],
  };
};

const MONTH = /^[1-9]\d{3}-(?:0[1-9]|1[0-2])$/;
const OF_A_CYCLE = ['theme', 'things', 'from', 'photos', 'shipped', 'reveal', 'lead', 'kinds'];

/** Nothing says which month a first box is of; where nobody can be asked, it is this one. */
const askMonth = async ({ ask, isAsked }: Questioner, next: string): Promise<string> =>
  (isAsked
    ? await ask({
        option: 'month',
        words: questions.month,
        initial: next,
        check: (typed): Checked<string> => {
          const month = monthNear(typed, next);
          return month === undefined ? { expected: expected.month } : { value: month };
        },
      })
    : undefined) ?? next;

/** Asks, plans and puts; gives the exit status. */
const runBegin = async (
  questioner: Questioner,
  values: Values,
  edge: Environment,
  [named]: Operands,
): Promise<number> => {
  const refuse = (mistake: string): number => {
    edge.stderr.write(`${mistake}\n${commandLine.help.see('begin')}\n`);
    return EXIT.usage;
  };
  if (named !== undefined && !MONTH.test(named)) return refuse(mistakes.month(named));
  const root =
    (typeof values.content === 'string' ? values.content : 'content').replace(/[/\\]+$/, '') || '.';
  const place: Place = { root, content: resolve(edge.cwd, root) };
  const hasBox = existsSync(join(place.content, 'box.md'));
  let answers: BoxAnswers | undefined;
  let box: KnownBox | undefined;
  if (hasBox) {
    const read = await readBox(place, edge);
    if (!read.box) {
      const { diagnosticsReport } = await import('./report.ts');
      edge.stderr.write(diagnosticsReport(read.diagnostics, (file) => `${root}/${file}`));
      edge.stderr.write(`\n${mistakes.boxAtFault}\n`);
      return EXIT.mustFix;
    }
    box = { ...read.box, months: [...new Set([...read.box.months, ...monthFolders(place.content)])] };
  } else {
    answers = await askBox(questioner, values, edge);
    box = answers && newBox(answers, place.content);
  }
  const wantsCycle =
    hasBox ||
    questioner.isAsked ||
    named !== undefined ||
    OF_A_CYCLE.some((option) => values[option] !== undefined);
  let outcome: Outcome | undefined;
  if (box && wantsCycle) {
    const next = nextMonth(box, todayIn(box.timeZone, Date.now()));
    const month = named ?? (box.months.length === 0 ? await askMonth(questioner, next) : next);
    const found = box.months.includes(month)
      ? await addToCycle(questioner, values, place, edge, { month, next })
      : await layOut(questioner, values, place, edge, { box, month });
    if (found && 'mistake' in found) return refuse(found.mistake);
    outcome = found;
  }
  const lacking = questioner.unanswered();
  if (lacking.mistakes.length + lacking.needed.length > 0)
    return refuse(
      [
        ...lacking.mistakes,
        ...(lacking.needed.length === 0 ? [] : [mistakes.needed]),
        ...lacking.needed.map(({ option, words }) => mistakes.neededOption(option, words)),
      ].join('\n'),
    );
  if (!box || (wantsCycle && !outcome)) {
    edge.stderr.write(`${said.stopped}\n`);
    return EXIT.stopped;
  }
  const whole = bothOf(answers && planBox(answers), outcome, place);
  const standing = whole.plan.files.find(({ path }) => existsSync(path));
  if (standing) return refuse(mistakes.standing(standing.path.replace(place.content, root)));
  try {
    putFiles(whole.plan);
  } catch (error) {
    // Something came, or lies where a folder is to be.
    const path = error instanceof Error && 'path' in error ? String(error.path) : place.content;
    if (codeOf(error) === 'EEXIST') return refuse(mistakes.standing(path.replace(place.content, root)));
    throw error;
  }
  edge.stdout.write(report(place, whole));
  return EXIT.done;
};

/** Begins a box or a cycle; gives the exit status. */
export const beginCommand = async (
  values: Values,
  edge: Environment,
  operands: Operands,
): Promise<number> => {
  const questioner = await questionerFor(values, edge);
  try {
    return await runBegin(questioner, values, edge, operands);
  } catch (error) {
    if (!isStop(error)) throw error;
    edge.stderr.write(`\n${said.stopped}\n`);
    return EXIT.stopped;
  } finally {
    questioner.close();
  }
};
