import { beforeAll, describe, expect, test } from 'vitest';
import { type BuiltSite, siteOf } from '../support/built.ts';

const item = (name: string, kind: string, more = ''): string =>
  `---\nname: ${name}\nkind: ${kind}\ndescription: Es tut, was es soll.\nbrand: Tolley\nprice: 9.00\n${more}---\n\nEine kurze Geschichte.\n`;

const cycle = (theme: string, month: string): string =>
  `---\ntheme: ${theme}\nsummary: Schilder, ein Kasten und eine Kanne, und wie man mit den dreien ein ganzes Fensterbrett besät.\nshipped: ${month}-03\nreveal: ${month}-19T19:00\npeek: {text: Im April wird es eng.}\n---\n\nSo kam es dazu.\n`;

const files = {
  'box.md':
    '---\nname: Sims\nurl: https://sims.example/\nlang: de\ntimeZone: Europe/Berlin\ncurrency: EUR\ndescription: Jeden Monat fünf Dinge.\nauthor: Nell Orchard\ncalls: {join: {address: "https://sims.example/dabei", text: Dabei sein}}\ncall: join\npieces: [article, invitation, live, letter, clip]\n---\n\nEine Schachtel.\n',
  ...Object.fromEntries(
    ['2026-01', '2026-02', '2026-03'].flatMap((month, i) => [
      [`cycles/${month}/cycle.md`, cycle(`Thema ${i + 1}`, month)],
      [`cycles/${month}/items/01.md`, item('Pflanzenschilder aus Kupfer', 'Pflanzenschild', 'lead: true\n')],
      [`cycles/${month}/items/02.md`, item('Anzuchtkasten, 30 cm', 'Anzuchtkasten', 'goesWith: Es passt.\n')],
    ]),
  ),
};

let built: BuiltSite;

beforeAll(async () => {
  built = await siteOf(files, Date.parse('2026-04-30T00:00:00Z'));
});

const page = (path: RegExp): string => {
  const found = [...built.site, ...built.backroom].find(([one]) => path.test(one));
  if (!found) throw new Error(`Expected ${path} among the files`);
  return found[1];
};

const first = (text: string, pattern: RegExp): string => pattern.exec(text)?.[1] ?? '';

describe('in a language that the site does not speak', () => {
  const title = 'Pflanzenschilder aus Kupfer · Thema 3 · März 2026';

  test('a title made by rule is the things that fit, the theme and the month, and a title is asked for', () => {
    expect(first(page(/^boxes\/2026-03/), /<h1[^>]*>([^<]*)/).trim()).toBe(title);
    expect(first(page(/^boxes\/2026-03/), /<title>([^<]*)/)).toBe(`${title} · Sims`);
    expect(page(/^feed\.xml$/)).toContain(`>${title}<`);
    expect(page(/^2026-03\/letter\.html$/)).toContain(title);
    const asked = built.diagnostics.filter(({ rule }) => rule === 'title-language');
    expect(asked.map(({ weight, location }) => [weight, location.file, location.line])).toEqual([
      ['look at', 'cycles/2026-01/cycle.md', 2],
      ['look at', 'cycles/2026-02/cycle.md', 2],
      ['look at', 'cycles/2026-03/cycle.md', 2],
    ]);
  });

  test('what a search result says of a kind’s page is in the box’s language alone', () => {
    const kind = page(/^kinds\/anzuchtkasten/);
    expect(first(kind, /<title>([^<]*)/)).toBe('Anzuchtkasten · Sims');
    expect(first(kind, /<meta name="description" content="([^"]*)/)).toBe(
      'Anzuchtkasten, Anzuchtkasten und Anzuchtkasten.',
    );
  });

  test('subjects of the letter and the clip’s post are no half English', () => {
    const subjects = page(/^2026-03\/letter-sheet\.html$/);
    expect(subjects).toContain('Thema 3 · März 2026');
    expect(subjects).not.toMatch(/what was in|that goes? with|One thing|Two things/);
    expect(page(/^2026-03\/clip-sheet\.html$/)).toContain('Thema 3 · März 2026 · Sims');
  });

  test('an English sentence of ours has no German month in it', () => {
    const german = /Januar\b|Februar\b|März/;
    const texts = [...built.site, ...built.backroom].filter(([path]) => /\.html$/.test(path));
    const mixed = texts.flatMap(([path, text]) =>
      text
        .replace(/<(style|script)\b[^>]*>[\s\S]*?<\/\1>/g, '')
        .split(/<[^>]*>|\n/)
        .filter((run) => german.test(run) && /\b(?:the|box|of|until|in|on|from)\b/i.test(run))
        .map((run) => `${path}: ${run}`),
    );
    expect(mixed).toEqual([]);
    expect(page(/^boxes\/2026-03/)).toContain('The March 2026 box');
  });
});
