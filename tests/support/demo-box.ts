/** The demo's whole box, and what channels are given of a box, as a build has them. */

import { join } from 'node:path';
import { languageFor } from '../../src/analysis/language/language.ts';
import type { PrivateInput, PublicInput } from '../../src/channels/channel.ts';
import { openMemory } from '../../src/io/memory/open-memory.ts';
import { programDigest } from '../../src/io/program.ts';
import { readTemplates } from '../../src/io/read-templates.ts';
import type { Box, Moment } from '../../src/model/box.ts';
import { unsealed } from '../../src/model/seal.ts';
import { compileTemplates } from '../../src/render/templates.ts';
import { wordingFor } from '../../src/wording/wording.ts';
import { openWorkspace } from '../../src/workspace/workspace.ts';

const root = join(import.meta.dirname, '../..');

/** The box, sealed cycles and all. `cache` is the folder of what earlier builds remember, looks at photos among it. */
export const demoBox = async (cache: string): Promise<Box> => {
  // It stays open, because stories are read from it when somebody asks for them.
  const memory = openMemory(cache);
  const { box, diagnostics } = (
    await openWorkspace({ path: join(root, 'content'), memory, program: programDigest() })
  ).snapshot();
  if (!box) throw new Error(`Expected the demo to be a box: ${JSON.stringify(diagnostics)}`);
  memory.flush();
  return box;
};

/** What a private channel is given as of a moment, when nothing was proved or sent. */
export const privateInput = async (box: Box, asOf: Moment): Promise<PrivateInput> => ({
  ...(await publicInput(box, asOf)),
  box,
  proofs: new Map(),
  parcels: new Map(),
  photos: new Map(),
});

/** What a public channel is given as of a moment. */
export const publicInput = async (box: Box, asOf: Moment): Promise<PublicInput> => {
  const { files, assets } = readTemplates({ own: join(root, 'templates') });
  return {
    box: unsealed(box, asOf),
    asOf,
    templates: compileTemplates(files, assets).value,
    language: await languageFor(box.settings.lang),
    wording: wordingFor(box.settings.lang),
    faces: { digest: 'the faces', lacking: async () => [] },
  };
};
