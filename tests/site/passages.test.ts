/** What the analysis reads is what is on the page: the words of an article's passages beside those of its HTML. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import type { Passage } from '../../src/analysis/coverage/text/passage.ts';
import { passagesOf } from '../../src/analysis/coverage/text/passages.ts';
import { surroundingsOf } from '../../src/analysis/coverage/text/surroundings.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import type { Box, Cycle } from '../../src/model/box.ts';
import { cautionsOf } from '../../src/model/cautions.ts';
import { en } from '../../src/wording/en.ts';
import { demoBox } from '../support/demo-box.ts';
import { cautionText } from '../support/telling-input.ts';

const site = inject('demoSite');
const english = await languageFor('en-GB');
const NOW = Date.UTC(2026, 2, 28);

const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  '#39': "'",
  nbsp: ' ',
};

/** Elements that stand within a line; every other tag ends a run of words. */
const INLINE = /<\/?(?:a|em|strong|del|code|sup|time|abbr|cite)\b[^>]*>/g;

/** Words of a page's main part, as a reader meets them, without what only machines see. */
const shownWords = (html: string): readonly string[] => {
  const main = /<main[^>]*>([\s\S]*)<\/main>/.exec(html)?.[1] ?? '';
  const text = main
    .replace(/<(script|style|sup)\b[\s\S]*?<\/\1>/g, ' ')
    // Names of a recording's chapters lead away from the site: they say nothing of the article.
    .replace(/<nav class="marks"[\s\S]*?<\/nav>/g, ' ')
    .replace(INLINE, '')
    .replace(/<[^>]*>/g, ' ¶ ')
    .replace(/&(#?\w+);/g, (whole, name) => ENTITIES[name] ?? whole);
  return english.words(text).map(({ folded }) => folded);
};

const wordsOf = (passages: readonly Passage[]): readonly string[] =>
  passages.flatMap(({ words }) => words.map(({ folded }) => folded));

const isShown = ({ form }: Passage): boolean => !['address', 'picture', 'data'].includes(form);

/** Every string of a wording's part; what its functions say is read off their literals. */
const stringsIn = (part: unknown): readonly string[] => {
  if (typeof part === 'string') return [part];
  if (typeof part === 'function')
    return (String(part).match(/(['"`])[\s\S]*?\1/g) ?? []).map((literal) =>
      literal.replace(/\$\{.*?\}/g, ' '),
    );
  return typeof part === 'object' && part !== null ? Object.values(part).flatMap(stringsIn) : [];
};

/** What the site says on every page, and what is made of dates, numbers and places. */
const furniture = (box: Box): ReadonlySet<string> => {
  const labels = stringsIn(en.site);
  const countries = new Intl.DisplayNames(['en-GB'], { type: 'region' });
  const made = box.cycles.flatMap(({ theme, author, items }) => [
    theme,
    author,
    ...items.flatMap((item) => [
      ...cautionsOf(item).map((caution) => cautionText(caution).label),
      item.countryOfOrigin ? countries.of(item.countryOfOrigin) : '',
    ]),
  ]);
  const months = Array.from({ length: 12 }, (_, i) =>
    new Intl.DateTimeFormat('en-GB', { month: 'long', timeZone: 'UTC' }).format(Date.UTC(2026, i, 1)),
  );
  // The call stands at the head of the page and of each item, and once among the passages.
  const calls = Object.values(box.settings.calls).map(({ text }) => text);
  return new Set(wordsIn([...labels, ...made, ...calls, ...months].join(' ')));
};

const wordsIn = (text: string): readonly string[] => english.words(text).map(({ folded }) => folded);

describe('the passages of an article', () => {
  let box: Box;
  let known: ReadonlySet<string>;
  beforeAll(async () => {
    box = await demoBox(join(site, '../.lidlore'));
    known = furniture(box);
  });

  const pageOf = (cycle: Cycle): Promise<string> =>
    readFile(join(site, 'boxes', `${cycle.address}.html`), 'utf8');

  test.each(['2025-04', '2025-11', '2026-02', '2026-03'])('of %s are all on its page', async (id) => {
    const cycle = box.cycles.find((one) => one.id === id) as Cycle;
    const page = ` ${shownWords(await pageOf(cycle)).join(' ')} `;
    const passages = passagesOf(cycle, surroundingsOf(box, cycle, NOW), english, cautionText).filter(isShown);
    expect(passages.length).toBeGreaterThan(50);
    const absent = passages.filter((passage) => !page.includes(` ${wordsOf([passage]).join(' ')} `));
    expect(absent.map(({ text }) => text)).toEqual([]);
  });

  test.each(['2025-04', '2025-11', '2026-02', '2026-03'])('of %s leave none of its words out', async (id) => {
    const cycle = box.cycles.find((one) => one.id === id) as Cycle;
    const counts = new Map<string, number>();
    for (const word of wordsOf(
      passagesOf(cycle, surroundingsOf(box, cycle, NOW), english, cautionText).filter(isShown),
    ))
      counts.set(word, (counts.get(word) ?? 0) + 1);
    const left = shownWords(await pageOf(cycle)).filter((word) => {
      const count = counts.get(word) ?? 0;
      counts.set(word, count - 1);
      return count <= 0;
    });
    expect(left.filter((word) => !known.has(word) && !/^\d/.test(word))).toEqual([]);
  });
});
