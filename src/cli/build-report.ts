/** What a build says of itself, on a terminal and as JSON. */
import { join, relative, sep } from 'node:path';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { ADDRESSES_FILE } from '../io/addresses-file.ts';
import type { BuildFolders } from '../io/last-build.ts';
import { commandLine } from '../wording/en/command-line.ts';
import type { BuildReport } from '../workspace/build-into.ts';
import type { ContentFolder } from './content-folder.ts';
import type { Environment, Values } from './environment.ts';
import { EXIT } from './exit-status.ts';
import { diagnosticsCount, diagnosticsReport } from './report.ts';
import type { StageTime } from './stages.ts';

const { build: words } = commandLine;

/** To whom, and about which folders. */
export interface Told {
  readonly values: Values;
  readonly environment: Environment;
  readonly place: ContentFolder;
  readonly folders: BuildFolders;
  readonly stages?: readonly StageTime[];
}

/** A path as somebody in `cwd` would write it. */
const shown = (cwd: string, path: string): string => {
  const way = relative(cwd, path);
  return way.startsWith('..') || way === '' ? path : way;
};

const isJson = ({ values }: Told): boolean => values.json === true;

const sayFindings = (diagnostics: readonly Diagnostic[], { environment, place }: Told): void =>
  void environment.stderr.write(diagnosticsReport(diagnostics, place.showFile));

const sayJson = ({ environment }: Told, told: object): void =>
  void environment.stdout.write(`${JSON.stringify(told)}\n`);

/** What must be fixed, and that nothing was written. */
export const sayMustFix = (diagnostics: readonly Diagnostic[], told: Told): void => {
  const { environment, folders, stages } = told;
  if (isJson(told)) {
    sayJson(told, { ok: false, diagnostics, stages });
    return;
  }
  sayFindings(diagnostics, told);
  const site = `${shown(environment.cwd, folders.site)}${sep}`;
  environment.stderr.write(`\n${words.nothingWritten(diagnosticsCount(diagnostics), site)}\n`);
};

/** When the site would be another one. */
const againLines = ({ next, sealed }: BuildReport): readonly string[] => {
  const waiting = sealed.filter(({ reveal }) => reveal === undefined).map(({ cycle }) => cycle);
  return [
    ...(next ? [words.again(words.next(next.when, next.changes))] : []),
    ...(waiting.length > 0 ? [words.awaitingParcels(waiting)] : []),
  ];
};

const provedLine = ({ weakest, ...proof }: BuildReport['proofs'][number]): string =>
  words.proved({
    ...proof,
    ...(weakest && proof.atAim < proof.items && { weakest }),
  });

const asJson = (
  diagnostics: readonly Diagnostic[],
  report: BuildReport,
  { folders, stages }: Told,
): object => {
  const { pages, files, bytes, pictures, newPictures, sealed, next, proofs, kept, replaced } = report;
  return {
    ok: true,
    diagnostics,
    site: {
      dir: folders.site,
      pages,
      files,
      bytes,
      pictures: newPictures,
      picturesFromCache: pictures - newPictures,
    },
    sealed: sealed.map(({ day, ...cycle }) => ({ ...cycle, until: words.until(day) })),
    next: next && { at: next.at, changes: next.changes, words: words.next(next.when, next.changes) },
    proofs,
    kept,
    replaced,
    newAddresses: report.newAddresses,
    films: report.films,
    filmsToMake: report.filmsToMake,
    stages,
  };
};

const sayDone = (
  first: string,
  diagnostics: readonly Diagnostic[],
  report: BuildReport,
  told: Told,
): void => {
  const { environment, place, folders, stages } = told;
  const { sealed, proofs, kept, replaced, newAddresses, films, filmsToMake } = report;
  sayFindings(diagnostics, told);
  const lines = [
    first,
    ...sealed.map(({ cycle, theme, day }) => words.sealed(cycle, theme, words.until(day))),
    ...againLines(report),
    ...proofs.map(provedLine),
    ...(proofs.length > 0
      ? [words.readProofs(join(shown(environment.cwd, folders.backroom), 'CYCLE', 'proof.html'))]
      : []),
    ...films.map((film) =>
      words.film({ ...film, file: join(shown(environment.cwd, folders.backroom), film.path) }),
    ),
    ...(filmsToMake.length > 0 ? [words.filmsToMake(filmsToMake)] : []),
    ...(newAddresses > 0 ? [words.addresses(newAddresses, place.showFile(ADDRESSES_FILE))] : []),
    ...kept.map(words.kept),
    ...replaced.map(words.replaced),
    ...(diagnostics.length > 0 ? [words.findings(diagnosticsCount(diagnostics))] : []),
    ...(stages ? [words.time(stages.map(({ name, ms }) => [name, ms]))] : []),
    words.lookAt(join(shown(environment.cwd, folders.site), 'index.html')),
  ];
  environment.stdout.write(`${lines.join('\n')}\n`);
};

/** What was made. */
export const sayPublished = (diagnostics: readonly Diagnostic[], report: BuildReport, told: Told): void => {
  if (isJson(told)) {
    sayJson(told, asJson(diagnostics, report, told));
    return;
  }
  const { pages, pictures, newPictures, files, bytes } = report;
  const made = { pages, pictures, newPictures, fromCache: pictures - newPictures, files, bytes };
  sayDone(words.made(made), diagnostics, report, told);
};

/** That nothing has changed, and all else that a build would say. Gives the exit status. */
export const sayUnchanged = (diagnostics: readonly Diagnostic[], report: BuildReport, told: Told): number => {
  // The newest cycle's proof is always told, and stands last; whether this run read anything at all is none of the owner's.
  const unchanged = {
    ...report,
    newPictures: 0,
    proofs: report.proofs.slice(-1),
    newAddresses: 0,
    films: [],
  };
  if (isJson(told)) sayJson(told, asJson(diagnostics, unchanged, told));
  else sayDone(words.unchanged(report), diagnostics, unchanged, told);
  return EXIT.done;
};

/** What a share of a build put into the memory. */
export const saySharedOut = (
  {
    diagnostics,
    pictures,
    newPictures,
  }: {
    readonly diagnostics: readonly Diagnostic[];
    readonly pictures: number;
    readonly newPictures: number;
  },
  told: Told,
): void => {
  const { environment, folders, stages } = told;
  if (isJson(told)) {
    sayJson(told, { ok: true, diagnostics, pictures, newPictures, stages });
    return;
  }
  sayFindings(diagnostics, told);
  environment.stdout.write(
    `${words.sharedOut(shown(environment.cwd, folders.memory), pictures, newPictures)}\n`,
  );
};
