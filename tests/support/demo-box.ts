/** The demo's whole box and templates, as a build reads them. */
import { join } from 'node:path';
import { languageFor } from '../../src/analysis/language/language.ts';
import type { PrivateInput, PublicInput } from '../../src/channels/channel.ts';
import { readRecords } from '../../src/content/read.ts';
import { readContent } from '../../src/io/read-content.ts';
import { readTemplates } from '../../src/io/read-templates.ts';
import type { Box, Moment } from '../../src/model/box.ts';
import { linkBox } from '../../src/model/link.ts';
import { unsealed } from '../../src/model/seal.ts';
import { compileTemplates } from '../../src/render/templates.ts';
import { wordingFor } from '../../src/wording/wording.ts';
import { readFrontMatter } from './read-front-matter.ts';

const root = join(import.meta.dirname, '../..');

/** The box, sealed cycles and all. `cache` is the folder of what earlier builds found in the photos. */
export const demoBox = async (cache: string): Promise<Box> => {
  const sources = await readContent(join(root, 'content'), cache);
  return linkBox(readRecords(sources, readFrontMatter).value, sources).value as Box;
};

/** What a private channel is given as of a moment, when nothing was proved or sent. */
export const privateInput = async (box: Box, asOf: Moment): Promise<PrivateInput> => ({
  ...(await publicInput(box, asOf)),
  box,
  proofs: new Map(),
  parcels: new Map(),
});

/** What a public channel is given as of a moment. */
export const publicInput = async (box: Box, asOf: Moment): Promise<PublicInput> => {
  const { files, assets } = await readTemplates(join(root, 'templates'));
  return {
    box: unsealed(box, asOf),
    asOf,
    templates: compileTemplates(files, assets).value,
    language: await languageFor(box.settings.lang),
    wording: wordingFor(box.settings.lang),
  };
};
