/** `lidlore build`. */
import { stat } from 'node:fs/promises';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type AsOf, readAsOf } from '../build/as-of.ts';
import { mustFixAny } from '../diagnostics/diagnostic.ts';
import type { Edge, Values } from './edge.ts';
import { EXIT } from './exit-status.ts';
import { progress } from './progress.ts';
import { counted, diagnosticsCount, diagnosticsReport, size } from './report.ts';
import { type StageTime, stopWatch } from './stages.ts';

const OWN_TEMPLATES = fileURLToPath(new URL('../../templates', import.meta.url));

interface Request {
  readonly content: string;
  readonly out: string;
  readonly backroom: string;
  readonly asOf: AsOf;
  readonly json: boolean;
  /** The content folder as the author wrote it. */
  readonly root: string;
}

/** What the values ask for, or why it cannot be done. */
const readRequest = async (values: Values, cwd: string): Promise<Request | { mistake: string }> => {
  const text = (name: string): string | undefined =>
    typeof values[name] === 'string' ? values[name] : undefined;
  const instant = text('as-of');
  const asOf = instant === undefined ? Date.now() : readAsOf(instant);
  if (asOf === undefined)
    return {
      mistake: `Unexpected --as-of ${instant}, expected a date or a date and time: 2026-03-27, 2026-03-27T19:00 or 2026-03-27T19:00Z.`,
    };
  const root = text('content') ?? 'content';
  const content = resolve(cwd, root);
  if (!(await stat(content).catch(() => undefined))?.isDirectory())
    return {
      mistake: `There is no folder ${root}${values.content ? '' : ' here'}. Name the folder that holds box.md with --content.`,
    };
  const beside = (name: string): string => join(dirname(content), name);
  const folder = (name: string, fallback: string): string => {
    const named = text(name);
    return named === undefined ? beside(fallback) : resolve(cwd, named);
  };
  return {
    content,
    out: folder('out', 'site'),
    backroom: folder('backroom', 'backroom'),
    asOf,
    json: values.json === true,
    root: root.split(sep).join('/').replace(/\/+$/, '') || root,
  };
};

/** A path as somebody in `cwd` would write it. */
const shown = (cwd: string, path: string): string => {
  const way = relative(cwd, path);
  return way.startsWith('..') || way === '' ? path : way;
};

const times = (stages: readonly StageTime[]): string =>
  stages
    .map(({ name, ms }) => `${name} ${ms < 1000 ? `${ms} ms` : `${(ms / 1000).toFixed(1)} s`}`)
    .join(', ');

/** Builds, reports, and gives the exit status. */
export const buildCommand = async (values: Values, edge: Edge): Promise<number> => {
  const say = (text: string): unknown => edge.stderr.write(`${text}\n`);
  const request = await readRequest(values, edge.cwd);
  const { publish, refusal } = await import('../io/publish.ts');
  const refused = 'mistake' in request ? request.mistake : await refusal(request);
  if ('mistake' in request || refused) {
    say(`${refused}\nSee: lidlore build --help`);
    return EXIT.usage;
  }
  const { content, out, backroom, root } = request;
  const cache = join(dirname(content), '.lidlore');
  const watch = stopWatch();

  watch.begin('read');
  const { readContent } = await import('../io/read-content.ts');
  const { readTemplates } = await import('../io/read-templates.ts');
  const templates = await readTemplates(OWN_TEMPLATES, join(dirname(content), 'templates'));
  const sources = await readContent(content, cache, progress(edge, 'Looking at photos'), root);

  const { buildSite } = await import('../build/build.ts');
  const result = buildSite({ sources, templates, asOf: request.asOf, onStage: watch.begin });
  const { diagnostics, outputs } = result;
  const ok = !mustFixAny(diagnostics);
  const showFile = (file: string): string =>
    file.startsWith(`${root}/`) || file.startsWith('templates/') ? file : `${root}/${file}`;
  if (!request.json) edge.stderr.write(diagnosticsReport(diagnostics, showFile));
  const site = shown(edge.cwd, out);
  if (!ok) {
    const stages = watch.end();
    if (request.json) edge.stdout.write(`${JSON.stringify({ ok, diagnostics, stages })}\n`);
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
              : { copyOf: pictures.fileOf(output.picture) },
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
  if (request.json) {
    const made = { pictures: pictures.made, picturesFromCache: pictures.fromCache };
    edge.stdout.write(
      `${JSON.stringify({ ok, diagnostics, site: { dir: out, pages, files, bytes, ...made }, sealed: result.sealed, kept, stages })}\n`,
    );
    return EXIT.done;
  }
  const lines = [
    `Made ${counted(pages, 'page')} and ${counted(jobs.length, 'picture')} (${pictures.made} new, ${pictures.fromCache} from the cache): ${counted(files, 'file')}, ${size(bytes)}.`,
    ...result.sealed.map(({ cycle, theme, revealDay }) => `Sealed until ${revealDay}: ${cycle}, ${theme}.`),
    ...kept.map((path) => `Kept ${path}, which was not made here.`),
    ...(diagnostics.length > 0 ? [`Findings: ${diagnosticsCount(diagnostics)}.`] : []),
    `Time: ${times(stages)}.`,
    `Look at ${join(site, 'index.html')}`,
  ];
  edge.stdout.write(`${lines.join('\n')}\n`);
  return EXIT.done;
};
