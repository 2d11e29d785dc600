/**
 * Spelling by region. What is British and what American is said by Hunspell's dictionaries: en_US of SCOWL
 * (dictionary-en) and en_GB (dictionary-en-gb), read by nspell. A word is of one region where only its dictionary has it.
 */
import american from 'dictionary-en';
import british from 'dictionary-en-gb';
import nspell from 'nspell';
import { beforeAll, describe, expect, test } from 'vitest';
import { browserFor } from '../../src/wording/en/browser.ts';
import { wordingFor } from '../../src/wording/wording.ts';
import { bakersBox } from '../support/bakers-box.ts';
import { siteOf } from '../support/built.ts';

const us = nspell(american);
const gb = nspell(british);

const knows = (dictionary: typeof us, word: string): boolean =>
  dictionary.correct(word) || dictionary.correct(word.charAt(0).toUpperCase() + word.slice(1));

/** Words of a page or a file as they are read or heard: text, and what attributes say. */
const wordsOf = (file: string): ReadonlySet<string> => {
  // Addresses and a record's own field are the same in every region.
  const text = file.replace(/https?:[^\s"<]+|\bcolor: /g, ' ');
  const said = [...text.matchAll(/\s(?:alt|title|aria-label|content|data-name)="([^"]*)"/g)].map(
    ([, words]) => words,
  );
  const read = text.replace(/<(style|script)\b[^>]*>[\s\S]*?<\/\1>/g, ' ').replace(/<[^>]*>/g, ' ');
  return new Set(
    [...said, read]
      .join(' ')
      .toLowerCase()
      .match(/[a-z’']+/g),
  );
};

const PAGES = /\.(?:html|txt|json|xml|vtt|srt|ics)$/;

/** Every word that a build of the bakers' box says and that only one of two dictionaries has. */
const onlyIn = async (lang: string, one: typeof us, other: typeof us): Promise<readonly string[]> => {
  const { site, backroom } = await siteOf(bakersBox(lang), Date.parse('2026-04-30T00:00:00Z'));
  const pages = [...site, ...backroom].filter(([path]) => PAGES.test(path));
  expect(pages.length).toBeGreaterThan(20);
  const words = new Set(pages.flatMap(([, text]) => [...wordsOf(text)]));
  return [...words].filter((word) => knows(one, word) && !knows(other, word));
};

test('a box in American English says nothing in British spelling', async () => {
  expect(await onlyIn('en-US', gb, us)).toEqual([]);
}, 30_000);

test('a box in British English says nothing in American spelling', async () => {
  expect(await onlyIn('en-GB', us, gb)).toEqual([]);
}, 30_000);

describe('words that both regions know are taken by the region all the same', () => {
  test.each([
    ['en-US', 'Color', 'Color: ', 'Catalog', 'a crib', 'a quarter of an inch', 'cats, dogs, and rabbits'],
    ['en-GB', 'Colour', 'Colour: ', 'Catalogue', 'a cot', '6 mm', 'cats, dogs and rabbits'],
  ])('%s', (lang, colour, reason, catalogue, cot, wick, animals) => {
    const { cautions, site, structuredData } = wordingFor(lang);
    expect(site.item.facts.color).toBe(colour);
    expect(browserFor(lang).reason.colour).toBe(reason);
    expect(structuredData.catalogue).toBe(catalogue);
    expect(cautions.text({ sort: 'children', hazards: ['cords'] }).lines.join()).toContain(cot);
    expect(cautions.text({ sort: 'flame' }).lines.join()).toContain(wick);
    expect(cautions.text({ sort: 'pets', toxicTo: ['cats', 'dogs', 'rabbits'] }).lines.join()).toContain(
      animals,
    );
  });
});

test.each([
  ['en', 'Color'],
  ['en-PH', 'Color'],
  ['en-AU', 'Colour'],
  ['en-CA', 'Colour'],
  ['en-IE', 'Colour'],
  ['de', 'Colour'],
])('%s has the label %s', (lang, label) => {
  expect(wordingFor(lang).site.item.facts.color).toBe(label);
});

beforeAll(() => {
  // The dictionaries do what they are here for.
  expect(knows(gb, 'colour') && !knows(us, 'colour')).toBe(true);
});
