/** A small box, and edits of every sort that its owner could make between two builds. */
import { existsSync } from 'node:fs';
import { copyFile, cp, mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { photo } from '../io/photos.ts';
import type { Chance } from './seeded.ts';

const BOX = `---
name: Crumb & Co
url: https://crumb.example/box/
lang: en-GB
timeZone: Europe/London
currency: GBP
description: A small box of baking tools, with the story of each.
author: Ada Crumb
email: ada@crumb.example
every: P1M
palette: ["#5f7358"]
pieces: [invitation, live, article, letter, clip]
calls:
  join: {address: "https://crumb.example/join", text: Join for the next box}
  waitList: {address: "https://crumb.example/wait", text: Put me on the list}
call: join
---

Crumb & Co sends one good baking tool a month to people who bake at home.
`;

const THINGS = ['proving basket', 'dough scraper', 'bread knife', 'flour sieve', 'rolling pin', 'cake tin'];

const cycleText = (month: string, theme: string): string => `---
theme: ${theme}
summary: A few good tools for the kitchen table, told from the workshop to the first loaf that came out well.
shipped: ${month}-03
reveal: ${month}-19T19:00
photo: {file: box.jpg, alt: The whole box on a table}
peek: {text: Next time we look at the oven.}
---

We looked for these for a year, and nearly gave up. Then somebody wrote to us from a farm.
`;

const itemText = (name: string, kind: string, lead: boolean): string => `---
name: ${name}
kind: ${kind}
${lead ? 'lead: true' : 'goesWith: It lies beside the first on the table.'}
brand: Fenn Weavers
description: A plain ${kind} that does one thing and lasts.
material: [cane]
category: none
price: 18.50
image: [{file: thing.jpg, alt: A ${kind} on a board}]
---

The ${kind} was made in a shed by the fen. Dust it with flour, and hang it up to dry.
`;

/** The box's files below `content/`, pictures small so that a build takes no time. */
export const editableBox = async (): Promise<Record<string, string | Uint8Array>> => {
  const files: Record<string, string | Uint8Array> = {
    'content/box.md': BOX,
    'content/searches.csv': 'phrase,count\nproving basket,40\nbread knife,12\n',
  };
  const months = ['2026-01', '2026-02', '2026-03'];
  for (const [i, month] of months.entries()) {
    const folder = `content/cycles/${month}`;
    files[`${folder}/cycle.md`] = cycleText(month, ['Proving', 'Crust', 'Steam'][i] ?? '');
    for (const place of [0, 1]) {
      const kind = THINGS[(i * 2 + place) % 4] ?? 'cake tin';
      files[`${folder}/items/0${place + 1}-${kind.replace(' ', '-')}.md`] = itemText(
        `Round ${kind}`,
        kind,
        place === 0,
      );
    }
    files[`${folder}/photos/box.jpg`] = await photo(90 + i, 60);
    files[`${folder}/photos/thing.jpg`] = await photo(64 + i, 48);
  }
  files['content/cycles/2026-03/parcels.csv'] =
    'shipped,delivered\n2026-03-03,2026-03-06\n2026-03-03,2026-03-07\n2026-03-03,\n';
  return files;
};

/** One edit: what it is called, and whether it found something to change. */
export interface RandomEdit {
  readonly sort: string;
  readonly apply: (root: string, chance: Chance) => Promise<boolean>;
}

const cyclesOf = async (root: string): Promise<readonly string[]> =>
  (await readdir(join(root, 'content/cycles')).catch(() => [])).sort();

const itemsOf = async (root: string): Promise<readonly string[]> => {
  const found: string[] = [];
  for (const cycle of await cyclesOf(root)) {
    const folder = join(root, 'content/cycles', cycle, 'items');
    for (const name of (await readdir(folder).catch(() => [])).sort()) found.push(join(folder, name));
  }
  return found;
};

/** Puts another text in a file's place; a text of the same length too, so that the size alone tells nothing. */
const rewrite = async (file: string, change: (text: string) => string): Promise<boolean> => {
  const text = await readFile(file, 'utf8');
  const changed = change(text);
  if (changed === text) return false;
  await writeFile(file, changed);
  return true;
};

const inStory = (text: string, change: (story: string) => string): string => {
  const at = text.indexOf('\n---\n', 4) + 5;
  return text.slice(0, at) + change(text.slice(at));
};

const setKey = (text: string, key: string, value: string | undefined): string => {
  const line = new RegExp(`^${key}:.*\\n`, 'm');
  if (value === undefined) return text.replace(line, '');
  if (line.test(text)) return text.replace(line, `${key}: ${value}\n`);
  return text.replace(/^---\n/, `---\n${key}: ${value}\n`);
};

const someItem = async (root: string, chance: Chance, change: (text: string) => string): Promise<boolean> => {
  const items = await itemsOf(root);
  return items.length > 0 && rewrite(chance.one(items), change);
};

const someCycle = async (
  root: string,
  chance: Chance,
  change: (text: string) => string,
): Promise<boolean> => {
  const cycles = await cyclesOf(root);
  if (cycles.length === 0) return false;
  const file = join(root, 'content/cycles', chance.one(cycles), 'cycle.md');
  return existsSync(file) && rewrite(file, change);
};

const WORDS = [
  'slow',
  'floury',
  'quiet',
  'sharp',
  'willow',
  'warm',
  'proving basket',
  'bread knife',
  'crumb',
];

const edit = (sort: string, apply: RandomEdit['apply']): RandomEdit => ({ sort, apply });

export const EDITS: readonly RandomEdit[] = [
  edit('a word of an item’s story', (root, chance) =>
    someItem(root, chance, (text) =>
      inStory(text, (story) => story.replace(/\b(a|the)\b/i, `the ${chance.one(WORDS)}`)),
    ),
  ),
  edit('a letter of an item’s story, the size kept', (root, chance) =>
    someItem(root, chance, (text) =>
      inStory(text, (story) => story.replace(/[a-z](?=[a-z]{4})/, chance.one(['b', 'd', 'p', 't']))),
    ),
  ),
  edit('a word of a cycle’s story', (root, chance) =>
    someCycle(root, chance, (text) =>
      inStory(text, (story) => `${story.trimEnd()} It was ${chance.one(WORDS)}.\n`),
    ),
  ),
  edit('a paragraph more', (root, chance) =>
    someItem(
      root,
      chance,
      (text) => `${text}\nThe ${chance.one(THINGS)} is ${chance.one(WORDS)} again, and **dry**.\n`,
    ),
  ),
  edit('a story cut to one sentence', (root, chance) =>
    someItem(root, chance, (text) => inStory(text, () => '\nDust it with flour.\n')),
  ),
  edit('a link to another cycle', async (root, chance) => {
    const cycles = await cyclesOf(root);
    if (cycles.length === 0) return false;
    return someCycle(
      root,
      chance,
      (text) => `${text}\nSee [the other](../${chance.one(cycles)}/cycle.md).\n`,
    );
  }),
  edit('a picture in a story', (root, chance) =>
    someCycle(root, chance, (text) => `${text}\n![A thing](photos/thing.jpg)\n`),
  ),
  edit('a name', (root, chance) =>
    someItem(root, chance, (text) =>
      setKey(text, 'name', `${chance.one(['Round', 'Old', 'Small'])} ${chance.one(THINGS)}`),
    ),
  ),
  edit('a kind', (root, chance) =>
    someItem(root, chance, (text) => setKey(text, 'kind', chance.one(THINGS))),
  ),
  edit('other names', (root, chance) =>
    someItem(root, chance, (text) =>
      setKey(text, 'also', chance.share() < 0.3 ? undefined : `[${chance.one(WORDS)} ${chance.one(THINGS)}]`),
    ),
  ),
  edit('a caution', (root, chance) =>
    someItem(root, chance, (text) => setKey(text, 'category', chance.one(['none', '[blade]', '[plant]']))),
  ),
  edit('spare pieces', (root, chance) =>
    someItem(root, chance, (text) =>
      setKey(
        text,
        'spare',
        chance.share() < 0.3
          ? undefined
          : `{count: ${chance.below(4)}, price: 9.50, address: "https://crumb.example/spare", until: 2026-0${2 + chance.below(3)}-20}`,
      ),
    ),
  ),
  edit('a theme', (root, chance) =>
    someCycle(root, chance, (text) =>
      setKey(text, 'theme', `${chance.one(['Proving', 'Crust', 'Steam', 'Salt'])} ${chance.below(9)}`),
    ),
  ),
  edit('a former address', (root, chance) =>
    someCycle(root, chance, (text) =>
      setKey(text, 'formerly', `[old-${chance.below(3)}, ${chance.one(['crust', 'salt'])}]`),
    ),
  ),
  edit('a former anchor', (root, chance) =>
    someItem(root, chance, (text) => setKey(text, 'formerly', `[old-${chance.below(3)}]`)),
  ),
  edit('the list of addresses taken away', async (root) => {
    const file = join(root, 'content/addresses.csv');
    if (!existsSync(file)) return false;
    await rm(file);
    return true;
  }),
  edit('a summary', (root, chance) =>
    someCycle(root, chance, (text) =>
      setKey(
        text,
        'summary',
        `A ${chance.one(WORDS)} ${chance.one(THINGS)} and what goes with it, told from the workshop to the first good loaf of all.`,
      ),
    ),
  ),
  edit('a reveal', (root, chance) =>
    someCycle(root, chance, (text) =>
      setKey(text, 'reveal', `2026-0${1 + chance.below(4)}-${10 + chance.below(18)}T19:00`),
    ),
  ),
  edit('a reveal that waits for its parcels', (root, chance) =>
    someCycle(root, chance, (text) => setKey(text, 'reveal', 'when-delivered')),
  ),
  edit('a palette', (root, chance) =>
    someCycle(root, chance, (text) =>
      setKey(text, 'palette', `["#${['5f7358', '7a3b2e', '27415f'][chance.below(3)]}"]`),
    ),
  ),
  edit('a logo', async (root, chance) => {
    const cycles = await cyclesOf(root);
    if (cycles.length === 0) return false;
    const photo = join(root, 'content/cycles', chance.one(cycles), 'photos/thing.jpg');
    if (!existsSync(photo)) return false;
    await mkdir(join(root, 'content/photos'), { recursive: true });
    await copyFile(photo, join(root, 'content/photos/logo.jpg'));
    return rewrite(join(root, 'content/box.md'), (text) =>
      setKey(text, 'logo', chance.share() < 0.2 ? undefined : 'logo.jpg'),
    );
  }),
  edit('a call of its own', (root, chance) =>
    someCycle(root, chance, (text) => setKey(text, 'call', chance.one([undefined, 'join', 'waitList']))),
  ),
  edit('a voice', (root, chance) =>
    someCycle(root, chance, (text) =>
      setKey(
        text,
        'voices',
        chance.share() < 0.3
          ? undefined
          : `[{text: I baked ${chance.one(WORDS)} bread., name: Mo, consent: 2026-02-01}]`,
      ),
    ),
  ),
  edit('a mistake', (root, chance) =>
    someItem(root, chance, (text) => setKey(text, chance.one(['nmae', 'price']), chance.one(['x', '[']))),
  ),
  edit('a mistake mended', (root, chance) =>
    someItem(root, chance, (text) => setKey(setKey(text, 'nmae', undefined), 'price', '18.50')),
  ),
  edit('the box’s name', (root, chance) =>
    rewrite(join(root, 'content/box.md'), (text) =>
      setKey(text, 'name', chance.one(['Crumb & Co', 'Crust & Co'])),
    ),
  ),
  edit('the box’s call', (root, chance) =>
    rewrite(join(root, 'content/box.md'), (text) => setKey(text, 'call', chance.one(['join', 'waitList']))),
  ),
  edit('the box’s pieces', (root, chance) =>
    rewrite(join(root, 'content/box.md'), (text) =>
      setKey(
        text,
        'pieces',
        chance.one(['[article]', '[invitation, live, article, letter, clip]', '[article, letter, cards]']),
      ),
    ),
  ),
  edit('the box’s story', (root, chance) =>
    rewrite(join(root, 'content/box.md'), (text) => `${text}\nAnd ${chance.one(WORDS)} it is.\n`),
  ),
  edit('searches', (root, chance) =>
    writeFile(
      join(root, 'content/searches.csv'),
      `phrase,count\n${chance.one(WORDS)} ${chance.one(THINGS)},${1 + chance.below(50)}\nproving basket,${chance.below(9) + 1}\n`,
    ).then(() => true),
  ),
  edit('searches taken away', async (root) => {
    const file = join(root, 'content/searches.csv');
    if (!existsSync(file)) return false;
    await rm(file);
    return true;
  }),
  edit('parcels', async (root, chance) => {
    const cycles = await cyclesOf(root);
    if (cycles.length === 0) return false;
    const cycle = chance.one(cycles);
    const rows = Array.from(
      { length: 3 + chance.below(8) },
      () => `${cycle}-03,${chance.share() < 0.3 ? '' : `${cycle}-0${4 + chance.below(5)}`}`,
    );
    await writeFile(
      join(root, 'content/cycles', cycle, 'parcels.csv'),
      `shipped,delivered\n${rows.join('\n')}\n`,
    );
    return true;
  }),
  edit('parcels taken away', async (root, chance) => {
    const cycles = await cyclesOf(root);
    if (cycles.length === 0) return false;
    const file = join(root, 'content/cycles', chance.one(cycles), 'parcels.csv');
    if (!existsSync(file)) return false;
    await rm(file);
    return true;
  }),
  edit('another photo under the same name', async (root, chance) => {
    const cycles = await cyclesOf(root);
    if (cycles.length === 0) return false;
    const name = chance.one(['box.jpg', 'thing.jpg']);
    await writeFile(
      join(root, 'content/cycles', chance.one(cycles), 'photos', name),
      await photo(60 + chance.below(30), 40 + chance.below(20)),
    );
    return true;
  }),
  edit('a photo renamed, its record following', async (root, chance) => {
    const cycles = await cyclesOf(root);
    if (cycles.length === 0) return false;
    const folder = join(root, 'content/cycles', chance.one(cycles));
    const [from, to] = existsSync(join(folder, 'photos/box.jpg'))
      ? ['box.jpg', 'all.jpg']
      : ['all.jpg', 'box.jpg'];
    if (!existsSync(join(folder, 'photos', from))) return false;
    await rename(join(folder, 'photos', from), join(folder, 'photos', to));
    return rewrite(join(folder, 'cycle.md'), (text) => text.replaceAll(`file: ${from}`, `file: ${to}`));
  }),
  edit('an item added', async (root, chance) => {
    const cycles = await cyclesOf(root);
    if (cycles.length === 0) return false;
    const kind = chance.one(THINGS);
    const folder = join(root, 'content/cycles', chance.one(cycles), 'items');
    if ((await readdir(folder)).length > 3) return false;
    await writeFile(
      join(folder, `0${3 + chance.below(6)}-${kind.replace(' ', '-')}-${chance.below(9)}.md`),
      itemText(`Tall ${kind}`, kind, false),
    );
    return true;
  }),
  edit('an item taken away', async (root) => {
    const items = (await itemsOf(root)).filter((file) => !/\/01-/.test(file));
    const last = items.at(-1);
    if (items.length < 3 || last === undefined) return false;
    await rm(last);
    return true;
  }),
  edit('an item renamed', async (root, chance) => {
    const items = (await itemsOf(root)).filter((file) => !/\/01-/.test(file));
    if (items.length === 0) return false;
    const file = chance.one(items);
    await rename(file, file.replace(/-?\d*\.md$/, `-${chance.below(99)}.md`));
    return true;
  }),
  edit('a cycle added', async (root, chance) => {
    const month = `2026-0${4 + chance.below(3)}`;
    const folder = join(root, 'content/cycles', month);
    if (existsSync(folder)) return false;
    await cp(join(root, 'content/cycles/2026-01'), folder, { recursive: true });
    await rm(join(folder, 'parcels.csv'), { force: true });
    await writeFile(
      join(folder, 'cycle.md'),
      cycleText(month, `Salt ${chance.below(9)}`).replaceAll(
        'box.jpg',
        existsSync(join(folder, 'photos/box.jpg')) ? 'box.jpg' : 'all.jpg',
      ),
    );
    return true;
  }),
  edit('a cycle taken away', async (root) => {
    const last = (await cyclesOf(root)).at(-1);
    if (last === undefined || last <= '2026-03') return false;
    await rm(join(root, 'content/cycles', last), { recursive: true });
    return true;
  }),
  edit('a template of one’s own', async (root, chance) => {
    await mkdir(join(root, 'templates'), { recursive: true });
    await writeFile(join(root, 'templates/voices.eta'), `<p class="own">${chance.one(WORDS)}</p>\n`);
    return true;
  }),
  edit('a style sheet of one’s own', async (root, chance) => {
    await mkdir(join(root, 'templates'), { recursive: true });
    await writeFile(join(root, 'templates/lists.css'), `.own{order:${chance.below(9)}}\n`);
    return true;
  }),
  edit('templates of one’s own taken away', async (root) => {
    if (!existsSync(join(root, 'templates'))) return false;
    await rm(join(root, 'templates'), { recursive: true });
    return true;
  }),
  edit('a file saved without a change', (root, chance) =>
    itemsOf(root).then(async (items) => {
      if (items.length === 0) return false;
      const file = chance.one(items);
      await writeFile(file, await readFile(file));
      return true;
    }),
  ),
];

/** Moments to build as of, around every reveal of the box. */
export const MOMENTS = [
  '2026-01-10',
  '2026-01-25',
  '2026-02-19T18:59',
  '2026-02-19T19:00',
  '2026-03-12',
  '2026-03-27',
  '2026-05-30',
] as const;
