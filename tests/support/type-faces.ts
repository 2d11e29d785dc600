/** The faces that drawings are set in, opened once a test file. */
import { join } from 'node:path';
import { type Faces, openFaces } from '../../src/drawing/type/faces.ts';
import { readFaces } from '../../src/io/read-faces.ts';
import { readTemplates } from '../../src/io/read-templates.ts';
import type { Asset } from '../../src/render/templates.ts';
import { lazily } from '../../src/text/lazy.ts';

export const fontAssets = lazily((): readonly Asset[] =>
  readTemplates({ own: join(import.meta.dirname, '../../templates') }).assets.filter(({ path }) =>
    path.startsWith('fonts/'),
  ),
);

export const typeFaces = lazily((): Promise<Faces> => openFaces(fontAssets(), readFaces()));
