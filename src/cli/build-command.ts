/** `lidlore build`: what is asked for, and whether anything has changed since it was last asked. */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { rememberBuild, reportOfLastBuild, seeFolders } from '../io/last-build.ts';
import { programDigest } from '../io/program.ts';
import { commandLine } from '../wording/en/command-line.ts';
import type { BuildReport } from '../workspace/build-into.ts';
import { readShare, readWithout } from './build-options.ts';
import { sayUnchanged } from './build-report.ts';
import { type ContentFolder, findContentFolder, readMoment } from './content-folder.ts';
import type { Environment, Values } from './environment.ts';
import { EXIT } from './exit-status.ts';

const { help } = commandLine;

/** What is written down of a build, to be said again where nothing has changed. */
interface Remembered {
  readonly diagnostics: readonly Diagnostic[];
  readonly report: BuildReport;
}

/** The public folder, where no other is named. */
export const SITE = 'site';

/** The folders that a build of some content works in. */
export const foldersFor = ({ content, memory, beside, folder }: ContentFolder) => ({
  content,
  memory,
  templates: beside('templates'),
  site: folder('out', SITE),
  backroom: folder('backroom', 'backroom'),
});

/** Builds, reports, and gives the exit status. */
export const buildCommand = async (values: Values, environment: Environment): Promise<number> => {
  const refuse = (mistake: string): number => {
    environment.stderr.write(`${mistake}\n${help.see('build')}\n`);
    return EXIT.usage;
  };
  const place = findContentFolder(values, environment.cwd);
  if ('mistake' in place) return refuse(place.mistake);
  const without = readWithout(values.without);
  if ('mistake' in without) return refuse(without.mistake);
  const share = readShare(values.share);
  if (share && 'mistake' in share) return refuse(share.mistake);

  const folders = foldersFor(place);
  const asked = {
    program: programDigest(),
    options: JSON.stringify([values['as-of'], [...without.parts].sort()]),
    now: values['as-of'] === undefined ? Date.now() : undefined,
  };
  const seen = seeFolders(folders);
  const last = share ? undefined : (reportOfLastBuild(folders, asked, seen) as Remembered | undefined);
  if (last) return sayUnchanged(last.diagnostics, last.report, { values, environment, place, folders });

  const moment = await readMoment(values);
  if ('mistake' in moment) return refuse(moment.mistake);
  const { runBuild } = await import('./run-build.ts');
  const outcome = await runBuild({
    asOf: moment.asOf,
    values,
    environment,
    place,
    folders,
    program: asked.program,
    without: without.parts,
    ...(folders.site === place.beside(SITE) && { publicUntil: Date.now() }),
    ...(share && { share }),
  });
  // Addresses that could not be written down are tried again by the next build, though nothing has changed.
  if (outcome.kind === 'published' && outcome.isWhole && outcome.addresses !== 'refused') {
    const { validity, diagnostics, report, addresses } = outcome;
    rememberBuild(folders, asked, validity, seen, { diagnostics, report } satisfies Remembered, addresses);
  }
  return outcome.kind === 'refused' ? EXIT.usage : outcome.kind === 'must fix' ? EXIT.mustFix : EXIT.done;
};
