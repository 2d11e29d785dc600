/** `lidlore build`. */

import { stat } from 'node:fs/promises';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { mustFixAny } from '../diagnostics/diagnostic.ts';
import type { BuildResult, Proved } from '../pipeline/build.ts';
import { standingText } from '../pipeline/proof.ts';
import { counted } from '../text/counting-words.ts';
import { readContentFolder } from './content-folder.ts';
import type { Environment, Values } from './environment.ts';
import { EXIT } from './exit-status.ts';
import { progress } from './progress.ts';
import { diagnosticsCount, diagnosticsReport, size } from './report.ts';
import { type StageTime, stopWatch } from './stages.ts';

const OWN_TEMPLATES = fileURLToPath(new URL('../../templates', import.meta.url));
const OWN_SCRIPTS = fileURLToPath(new URL('../../dist/browser', import.meta.url));

/** A path as somebody in `cwd` would write it. */
const shown = (cwd: string, path: string): string => {
  const way = relative(cwd, path);
  return way.startsWith('..') || way === '' ? path : way;
};

const times = (stages: readonly StageTime[]): string =>
  stages
    .map(({ name, ms }) => `${name} ${ms < 1000 ? `${ms} ms` : `${(ms / 1000).toFixed(1)} s`}`)
    .join(', ');

/** "Proof of 2026-03, First Sowings: 4 of 5 items at the aim of 0.7; weakest wooden dibber, 0.52." */
const provedLine = ({ cycle, theme, aim, items, atAim, weakest, crowded, rivals }: Proved): string => {
  const parts = [
    `${atAim} of ${counted(items, 'item')} at the aim of ${aim}`,
    ...(weakest && atAim < items ? [`weakest ${weakest.name}, ${standingText(weakest.standing, aim)}`] : []),
    ...(crowded > 0 ? [counted(crowded, 'crowded phrase')] : []),
    ...(rivals > 0 ? [counted(rivals, 'rival')] : []),
  ];
  return `Proof of ${cycle}, ${theme}: ${parts.join('; ')}.`;
};

/** When the site would be another one: "Build again after 23 April 2026, 19:00: 2026-04, Small Wings, is revealed." */
const againLines = ({ next, sealed }: BuildResult): readonly string[] => {
  const waiting = sealed.filter(({ reveal }) => reveal === undefined).map(({ cycle }) => cycle);
  return [
    ...(next ? [`Build again after ${next.words}.`] : []),
    ...(waiting.length > 0 ? [`Build again with a newer list of the parcels of ${waiting.join(', ')}.`] : []),
  ];
};

/** Builds, reports, and gives the exit status. */
export const buildCommand = async (values: Values, edge: Environment): Promise<number> => {
  const say = (text: string): unknown => edge.stderr.write(`${text}\n`);
  const place = await readContentFolder(values, edge.cwd);
  const refuse = (mistake: string): number => {
    say(`${mistake}\nSee: lidlore build --help`);
    return EXIT.usage;
  };
  if ('mistake' in place) return refuse(place.mistake);
  const { content, root, cache, folder, showFile } = place;
  const [out, backroom] = [folder('out', 'site'), folder('backroom', 'backroom')];
  const json = values.json === true;
  const { publish, refusal } = await import('../io/publish.ts');
  const refused = await refusal({ content, out, backroom });
  if (refused) return refuse(refused);
  const watch = stopWatch();

  watch.begin('read');
  const { readContent } = await import('../io/read-content.ts');
  const { readScripts, readTemplates } = await import('../io/read-templates.ts');
  const templates = {
    ...(await readTemplates(OWN_TEMPLATES, join(dirname(content), 'templates'))),
    scripts: await readScripts(OWN_SCRIPTS),
  };
  const sources = await readContent(content, cache, progress(edge, 'Looking at photos'), root);

  const { readerOf } = await import('./record-files.ts');
  const readFile = await readerOf(sources, cache);
  const { readLists } = await import('./parcels-lists.ts');
  const parcels = await readLists(content, sources, readFile, place.asOf);

  const { readProofs } = await import('../io/read-proofs.ts');
  const proved = await readProofs(backroom);
  const { buildSite } = await import('../pipeline/build.ts');
  const { readNameMemory } = await import('../io/name-memory.ts');
  const memory = await readNameMemory(cache);
  const result = await buildSite({
    sources,
    readFile,
    templates,
    asOf: place.asOf,
    parcels,
    proved,
    names: memory.names,
    onStage: watch.begin,
  });
  // What cannot be remembered is looked up again next time.
  await memory.keep().catch(() => undefined);
  const { diagnostics, outputs } = result;
  const ok = !mustFixAny(diagnostics);
  if (!json) edge.stderr.write(diagnosticsReport(diagnostics, showFile));
  const site = shown(edge.cwd, out);
  if (!ok) {
    const stages = watch.end();
    if (json) edge.stdout.write(`${JSON.stringify({ ok, diagnostics, stages })}\n`);
    else say(`\n${diagnosticsCount(diagnostics)}. Nothing was written; ${site}${sep} is as it was.`);
    return EXIT.mustFix;
  }

  watch.begin('pictures');
  const { cachePictures } = await import('../io/picture-cache.ts');
  const jobs = outputs.flatMap((output) => ('picture' in output ? [output.picture] : []));
  const pictures = await cachePictures(content, cache, jobs, progress(edge, 'Making pictures'));

  watch.begin('publish');
  const filesFor = (where: 'site' | 'backroom') =>
    outputs
      .filter((output) => output.where === where)
      .map((output) => ({
        path: output.path,
        content:
          'text' in output
            ? output.text
            : 'bytes' in output
              ? output.bytes
              : { copyOf: 'kept' in output ? join(backroom, output.path) : pictures.fileOf(output.picture) },
      }));
  const papers = filesFor('backroom');
  const hadBackroom = (await stat(backroom).catch(() => undefined)) !== undefined;
  const folders = [{ dir: out, files: filesFor('site') }];
  if (papers.length > 0 || hadBackroom) folders.push({ dir: backroom, files: papers });
  const published = await publish(folders);
  const stages = watch.end();

  const pages = outputs.filter(({ where, path }) => where === 'site' && path.endsWith('.html')).length;
  const { files = 0, bytes = 0 } = published[0] ?? {};
  const kept = published.flatMap((folder) => folder.kept);
  if (json) {
    const made = { pictures: pictures.made, picturesFromCache: pictures.fromCache };
    edge.stdout.write(
      `${JSON.stringify({ ok, diagnostics, site: { dir: out, pages, files, bytes, ...made }, sealed: result.sealed, next: result.next, proofs: result.proofs, kept, stages })}\n`,
    );
    return EXIT.done;
  }
  const lines = [
    `Made ${counted(pages, 'page')} and ${counted(jobs.length, 'picture')} (${pictures.made} new, ${pictures.fromCache} from the cache): ${counted(files, 'file')}, ${size(bytes)}.`,
    ...result.sealed.map(({ cycle, theme, until }) => `Sealed until ${until}: ${cycle}, ${theme}.`),
    ...againLines(result),
    ...result.proofs.map(provedLine),
    ...(result.proofs.length > 0
      ? [`Read the proofs in ${join(shown(edge.cwd, backroom), 'CYCLE', 'proof.html')}`]
      : []),
    ...kept.map((path) => `Kept ${path}, which was not made here.`),
    ...(diagnostics.length > 0 ? [`Findings: ${diagnosticsCount(diagnostics)}.`] : []),
    `Time: ${times(stages)}.`,
    `Look at ${join(site, 'index.html')}`,
  ];
  edge.stdout.write(`${lines.join('\n')}\n`);
  return EXIT.done;
};
