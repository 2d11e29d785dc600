/** The program's own templates, compiled, without what is published beside the pages. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { compileTemplates } from '../../src/render/templates.ts';

const folder = join(import.meta.dirname, '../../templates');

export const { value: ownTemplates } = compileTemplates(
  readdirSync(folder)
    .filter((file) => file.endsWith('.eta'))
    .map((file) => ({
      name: file.slice(0, -'.eta'.length),
      file: `templates/${file}`,
      text: readFileSync(join(folder, file), 'utf8'),
    })),
  [],
);
