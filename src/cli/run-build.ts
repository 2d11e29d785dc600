/** A build that has something to do. */

import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findFfmpeg } from '../io/film/find-ffmpeg.ts';
import type { BuildFolders } from '../io/last-build.ts';
import { rememberedPictures } from '../io/memory/remembered-pictures.ts';
import { refusal } from '../io/publish/index.ts';
import { readTemplates } from '../io/read-templates.ts';
import type { AsOf } from '../pipeline/as-of.ts';
import type { Leavable } from '../pipeline/leavable.ts';
import type { Share } from '../pipeline/share.ts';
import { commandLine } from '../wording/en/command-line.ts';
import { type BuildOutcome, buildInto } from '../workspace/build-into.ts';
import { openWorkspace } from '../workspace/workspace.ts';
import { sayMustFix, sayPublished, saySharedOut } from './build-report.ts';
import type { ContentFolder } from './content-folder.ts';
import type { Environment, Values } from './environment.ts';
import { picturesInThread } from './pictures-in-thread.ts';
import { filmProgress, progress } from './progress.ts';
import { stopWatch } from './stages.ts';
import { withMemory } from './with-memory.ts';

const { help, build: words, progress: progressWords } = commandLine;

const OWN_TEMPLATES = fileURLToPath(new URL('../../templates', import.meta.url));
const OWN_SCRIPTS = fileURLToPath(new URL('../../dist/browser', import.meta.url));

export interface BuildRun {
  readonly asOf: AsOf;
  readonly values: Values;
  readonly environment: Environment;
  readonly place: ContentFolder;
  readonly folders: BuildFolders;
  readonly program: string;
  readonly without: ReadonlySet<Leavable>;
  /** The moment up to which what is shown is public; absent for another folder than the usual one. */
  readonly publicUntil?: number;
  readonly share?: Share;
  /** The cycles whose films are made; those that matter now where none are named. */
  readonly films?: readonly string[];
}

/** Builds and reports. `refused`: the folders cannot be published to. */
export const runBuild = async (run: BuildRun): Promise<BuildOutcome | { readonly kind: 'refused' }> => {
  const { environment, asOf, folders, program, without, publicUntil, share, films } = run;
  const ffmpeg = findFfmpeg(environment.env.PATH);
  const say = (text: string): unknown => environment.stderr.write(`${text}\n`);
  const refused = share
    ? undefined
    : await refusal({ content: folders.content, out: folders.site, backroom: folders.backroom });
  if (refused) {
    say(`${refused}\n${help.see('build')}`);
    return { kind: 'refused' };
  }
  const watch = stopWatch();
  watch.begin('read');
  const outcome = await withMemory(folders.memory, async (memory) => {
    const workspace = await openWorkspace({
      path: folders.content,
      memory,
      program,
      onPhotos: progress(environment, progressWords.photos),
    });
    const templates = readTemplates({
      own: OWN_TEMPLATES,
      theirs: folders.templates,
      scripts: OWN_SCRIPTS,
    });
    const done = await buildInto(workspace, {
      asOf,
      folders,
      templates,
      pictures: rememberedPictures(join(folders.memory, 'pictures')),
      makePictures: picturesInThread(),
      without,
      films: {
        made: rememberedPictures(join(folders.memory, 'films')),
        ...(ffmpeg !== undefined && { ffmpeg }),
        ...(films && { cycles: films }),
        onFilm: filmProgress(environment),
      },
      ...(publicUntil !== undefined && { publicUntil }),
      ...(share && { share }),
      onStage: watch.begin,
      onPictures: progress(environment, progressWords.pictures),
      onWait: (holder, dir) => say(words.waiting(dir, holder.pid)),
    });
    workspace.folder.remember();
    return { value: done, isWhole: done.kind === 'published' };
  });
  const stages = watch.end();
  const told = { ...run, stages };
  if (outcome.kind === 'must fix') sayMustFix(outcome.diagnostics, told);
  else if (outcome.kind === 'shared out') saySharedOut(outcome, told);
  else sayPublished(outcome.diagnostics, outcome.report, told);
  return outcome;
};
