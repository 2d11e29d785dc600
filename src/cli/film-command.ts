/** `lidlore film`: a build that makes the film of the cycle that is named, be it as old as it may. */

import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { programDigest } from '../io/program.ts';
import { commandLine } from '../wording/en/command-line.ts';
import { foldersFor, SITE } from './build-command.ts';
import { findContentFolder, readMoment } from './content-folder.ts';
import type { Environment, Operands, Values } from './environment.ts';
import { EXIT } from './exit-status.ts';
import { nearestCycle } from './nearest-cycle.ts';

const { help, mistakes } = commandLine;

/** Months of the cycles in a content folder, by their folders' names; a build says what is wrong with one of them. */
const cyclesIn = (content: string): readonly string[] => {
  try {
    return readdirSync(join(content, 'cycles'));
  } catch {
    return [];
  }
};

/** Builds, makes the film, reports, and gives the exit status. */
export const filmCommand = async (
  values: Values,
  environment: Environment,
  [cycle]: Operands,
): Promise<number> => {
  const refuse = (mistake: string): number => {
    environment.stderr.write(`${mistake}\n${help.see('film')}\n`);
    return EXIT.usage;
  };
  const place = findContentFolder(values, environment.cwd);
  if ('mistake' in place) return refuse(place.mistake);
  const moment = await readMoment(values);
  if ('mistake' in moment) return refuse(moment.mistake);
  if (cycle !== undefined) {
    const cycles = cyclesIn(place.content);
    if (!cycles.includes(cycle))
      return refuse(mistakes.noCycle(cycle, place.root, nearestCycle(cycle, cycles)));
  }
  const { runBuild } = await import('./run-build.ts');
  const folders = foldersFor(place);
  const outcome = await runBuild({
    asOf: moment.asOf,
    values,
    environment,
    place,
    folders,
    program: programDigest(),
    without: new Set(),
    ...(cycle !== undefined && { films: [cycle] }),
    ...(folders.site === place.beside(SITE) && { publicUntil: Date.now() }),
  });
  if (outcome.kind === 'refused') return EXIT.usage;
  if (outcome.kind === 'must fix') return EXIT.mustFix;
  // Here the film is what was asked for; after `lidlore build` the rest stands without it.
  return outcome.kind === 'published' && outcome.report.filmsToMake.length > 0 ? EXIT.bug : EXIT.done;
};
