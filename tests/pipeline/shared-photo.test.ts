import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import sharp from 'sharp';
import { afterAll, expect, test } from 'vitest';
import { siteOfFolder } from '../support/built.ts';
import { smallBox } from '../support/small-box.ts';

const dir = mkdtempSync(join(tmpdir(), 'lidlore-shared-photo-'));
afterAll(() => rmSync(dir, { recursive: true, force: true }));

const item = (name: string, lead: boolean, alt: string): string => `---
name: ${name}
kind: ${name.toLowerCase()}
brand: A Potter
${lead ? 'lead: true' : 'goesWith: It stands beside the jug.'}
description: A ${name.toLowerCase()}.
image:
  file: table.jpg
  alt: ${alt}
---
It is on the table.
`;

const FILES: Readonly<Record<string, string>> = {
  'box.md': smallBox(`calls: {join: {address: "https://crumb.example/join", text: Join}}
call: join
`),
  'cycles/2026-03/cycle.md': `---
theme: Table
summary: A jug, a bowl and a spoon, photographed together on the table where they were packed.
shipped: 2026-03-03
reveal: 2026-03-19T19:00
---
They stand together.
`,
  'cycles/2026-03/items/01-jug.md': item('Jug', true, 'A blue jug at the left of the table'),
  'cycles/2026-03/items/02-bowl.md': item('Bowl', false, 'A wooden bowl in the middle'),
  'cycles/2026-03/items/03-spoon.md': item('Spoon', false, 'A spoon laid across the bowl'),
};

test('one photo that serves several items says in each section what is to be seen of that item', async () => {
  for (const [path, text] of Object.entries(FILES)) {
    mkdirSync(dirname(join(dir, 'content', path)), { recursive: true });
    writeFileSync(join(dir, 'content', path), text);
  }
  const photos = join(dir, 'content/cycles/2026-03/photos');
  mkdirSync(photos, { recursive: true });
  await sharp({ create: { width: 900, height: 700, channels: 3, background: '#887766' } })
    .jpeg()
    .toFile(join(photos, 'table.jpg'));
  const { site } = await siteOfFolder(join(dir, 'content'), join(dir, 'cache'), Date.UTC(2026, 3, 1));
  const page = [...site].find(([path]) => path.startsWith('boxes/'))?.[1] ?? '';
  const section = (slug: string): string =>
    page.slice(page.indexOf(`id="${slug}"`), page.indexOf('</section>', page.indexOf(`id="${slug}"`)));
  // The head shows the lead item's picture with its words; there they are not said a second time.
  expect(page.match(/alt="A blue jug at the left of the table"/g)).toHaveLength(1);
  expect(section('bowl')).toContain('alt="A wooden bowl in the middle"');
  expect(section('spoon')).toContain('alt="A spoon laid across the bowl"');
});
