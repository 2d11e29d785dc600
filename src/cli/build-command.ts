/** `lidlore build`. */

import { createHash } from 'node:crypto';
import { readFile as readBytes, stat } from 'node:fs/promises';
import { basename, dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { mustFixAny } from '../diagnostics/diagnostic.ts';
import type { PublishedFile, Step, Target } from '../io/publish/index.ts';
import type { BuildResult, Proved } from '../pipeline/build.ts';
import { standingText } from '../pipeline/proof.ts';
import { commandLine } from '../wording/en/command-line.ts';
import { readContentFolder } from './content-folder.ts';
import type { Environment, Values } from './environment.ts';
import { EXIT } from './exit-status.ts';
import { progress } from './progress.ts';
import { diagnosticsCount, diagnosticsReport } from './report.ts';
import { stopWatch } from './stages.ts';

const { build: words, help, progress: progressWords } = commandLine;

const OWN_TEMPLATES = fileURLToPath(new URL('../../templates', import.meta.url));
const OWN_SCRIPTS = fileURLToPath(new URL('../../dist/browser', import.meta.url));

/** A path as somebody in `cwd` would write it. */
const shown = (cwd: string, path: string): string => {
  const way = relative(cwd, path);
  return way.startsWith('..') || way === '' ? path : way;
};

const provedLine = ({ weakest, ...proof }: Proved): string =>
  words.proved({
    ...proof,
    ...(weakest &&
      proof.atAim < proof.items && {
        weakest: { name: weakest.name, standing: standingText(weakest.standing, proof.aim) },
      }),
  });

/** A page waits for all that it refers to, the index of the catalogue's search among it; what names pages waits for them. */
const stepOf = (path: string): Step => {
  if (/^(robots\.txt|sitemap.*\.xml|feed\.(xml|json))$/.test(path)) return 'list';
  return /\.(html|eml|txt|ics|vtt|srt)$/.test(path) && !path.startsWith('assets/') ? 'page' : 'asset';
};

const keyOf = (content: string | Uint8Array): string =>
  createHash('sha256').update(content).digest('base64url');

/** When the site would be another one: "Build again after 23 April 2026, 19:00: 2026-04, Small Wings, is revealed." */
const againLines = ({ next, sealed }: BuildResult): readonly string[] => {
  const waiting = sealed.filter(({ reveal }) => reveal === undefined).map(({ cycle }) => cycle);
  return [
    ...(next ? [words.again(words.next(next.when, next.changes))] : []),
    ...(waiting.length > 0 ? [words.awaitingParcels(waiting)] : []),
  ];
};

const nextAsJson = ({ next }: BuildResult): object | undefined =>
  next && { at: next.at, changes: next.changes, words: words.next(next.when, next.changes) };

/** Builds, reports, and gives the exit status. */
export const buildCommand = async (values: Values, edge: Environment): Promise<number> => {
  const say = (text: string): unknown => edge.stderr.write(`${text}\n`);
  const place = await readContentFolder(values, edge.cwd);
  const refuse = (mistake: string): number => {
    say(`${mistake}\n${help.see('build')}`);
    return EXIT.usage;
  };
  if ('mistake' in place) return refuse(place.mistake);
  const { content, root, cache, folder, showFile } = place;
  const [out, backroom] = [folder('out', 'site'), folder('backroom', 'backroom')];
  const json = values.json === true;
  const { publish, refusal, settle } = await import('../io/publish/index.ts');
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
  const sources = await readContent(content, cache, progress(edge, progressWords.photos), root);

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
  const isSealed = (path: string): boolean => result.sealed.some(({ cycle }) => path.includes(cycle));
  if (!ok) {
    for (const dir of [out, backroom]) await settle(dir, dir === out ? isSealed : undefined);
    const stages = watch.end();
    if (json) edge.stdout.write(`${JSON.stringify({ ok, diagnostics, stages })}\n`);
    else say(`\n${words.nothingWritten(diagnosticsCount(diagnostics), `${site}${sep}`)}`);
    return EXIT.mustFix;
  }

  watch.begin('pictures');
  const { cachePictures } = await import('../io/picture-cache.ts');
  const jobs = outputs.flatMap((output) => ('picture' in output ? [output.picture] : []));
  const pictures = await cachePictures(content, cache, jobs, progress(edge, progressWords.pictures));

  watch.begin('publish');
  const filesFor = async (where: 'site' | 'backroom'): Promise<PublishedFile[]> => {
    const made = outputs.filter((output) => output.where === where);
    return Promise.all(
      made.map(async (output) => {
        const { path } = output;
        const base = { path, step: stepOf(path) };
        if ('picture' in output) {
          const copyOf = pictures.fileOf(output.picture);
          return { ...base, key: keyOf(basename(copyOf)), bring: async () => ({ copyOf }) };
        }
        const content =
          'text' in output
            ? output.text
            : 'bytes' in output
              ? output.bytes
              : await readBytes(join(backroom, path));
        return { ...base, key: keyOf(content), bring: async () => content };
      }),
    );
  };
  const papers = await filesFor('backroom');
  const hadBackroom = (await stat(backroom).catch(() => undefined)) !== undefined;
  const targets: Target[] = [{ dir: out, files: await filesFor('site'), first: isSealed }];
  if (papers.length > 0 || hadBackroom) targets.push({ dir: backroom, files: papers });
  const published = await publish(targets, {
    onWait: ({ pid }, dir) => say(`Waiting for another run (process ${pid}), which publishes to ${dir}.`),
  });
  const stages = watch.end();

  const pages = outputs.filter(({ where, path }) => where === 'site' && path.endsWith('.html')).length;
  const { files = 0, bytes = 0 } = published[0] ?? {};
  const kept = published.flatMap((folder) => folder.kept);
  const replaced = published.flatMap((folder) => folder.replaced);
  if (json) {
    const made = { pictures: pictures.made, picturesFromCache: pictures.fromCache };
    edge.stdout.write(
      `${JSON.stringify({ ok, diagnostics, site: { dir: out, pages, files, bytes, ...made }, sealed: result.sealed, next: result.next, proofs: result.proofs, kept, replaced, stages })}\n`,
    );
    return EXIT.done;
  }
  const lines = [
    words.made({
      pages,
      pictures: jobs.length,
      newPictures: pictures.made,
      fromCache: pictures.fromCache,
      files,
      bytes,
    }),
    ...result.sealed.map(({ cycle, theme, until }) => words.sealed(cycle, theme, until)),
    ...againLines(result),
    ...result.proofs.map(provedLine),
    ...(result.proofs.length > 0
      ? [words.readProofs(join(shown(edge.cwd, backroom), 'CYCLE', 'proof.html'))]
      : []),
    ...kept.map(words.kept),
    ...(diagnostics.length > 0 ? [words.findings(diagnosticsCount(diagnostics))] : []),
    words.time(stages.map(({ name, ms }) => [name, ms])),
    words.lookAt(join(site, 'index.html')),
  ];
  edge.stdout.write(`${lines.join('\n')}\n`);
  return EXIT.done;
};
