/** A site of texts alone, built in memory: small enough to be built at many moments. */
import { join } from 'node:path';
import type { Sources } from '../../src/content/sources.ts';
import { readTemplates } from '../../src/io/read-templates.ts';
import type { Moment } from '../../src/model/box.ts';
import { type BuildResult, buildSite } from '../../src/pipeline/build.ts';
import type { ParcelsByCycle } from '../../src/pipeline/parcels.ts';
import { readFrontMatter } from './read-front-matter.ts';

const templates = await readTemplates(join(import.meta.dirname, '../../templates'));
/** Stands in for the compiled search, so that its index is made. */
const script = { path: 'search.en.js', bytes: Buffer.from('/* search */') };
/** What the dictionary was asked once is not asked again. */
const names = new Map<string, readonly string[]>();

/** Content files as the disk would give them. */
export const sourcesOf = (files: Readonly<Record<string, string>>): Sources => ({
  root: 'content',
  texts: Object.entries(files).map(([path, text]) => ({ path, text })),
  photos: [],
  paths: Object.keys(files).sort(),
});

/** Builds content files (paths below `content/`) as of a moment. */
export const plainBuild = (
  files: Readonly<Record<string, string>>,
  asOf: Moment,
  parcels: ParcelsByCycle = new Map(),
): Promise<BuildResult> =>
  buildSite({
    sources: sourcesOf(files),
    readFile: readFrontMatter,
    templates: { ...templates, scripts: [script] },
    asOf,
    names,
    parcels,
  });

/** What a build publishes, by path; fonts alone are left out, which have no words. */
export const publicTexts = ({ outputs }: BuildResult): ReadonlyMap<string, string> =>
  new Map(
    outputs.flatMap((output): readonly (readonly [string, string])[] => {
      if (output.where !== 'site' || output.path.endsWith('.woff2')) return [];
      if ('text' in output) return [[output.path, output.text]];
      return 'bytes' in output ? [[output.path, Buffer.from(output.bytes).toString('latin1')]] : [];
    }),
  );
