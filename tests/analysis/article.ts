/** A whole small box, read from texts as the edge would hand them over, for tests of coverage. */

import type { Passage } from '../../src/analysis/coverage/text/passage.ts';
import { zonedWords } from '../../src/analysis/coverage/text/zoning.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import type { Box } from '../../src/model/box.ts';
import { sentenceSpans } from '../../src/text/sentences.ts';
import { type Sources, sourcesOf as sourcesFrom, wholeBox } from '../support/whole-box.ts';

export const BOX = `---
name: Sill & Sprig
url: https://sillandsprig.example/
lang: en-GB
timeZone: Europe/London
currency: GBP
description: A box for people with a windowsill.
author: Ottilie Marsh
calls: {join: {address: https://sillandsprig.example/join, text: Join}}
---
`;

const record = (fields: Readonly<Record<string, unknown>>, body: string): string =>
  `---\n${Object.entries(fields)
    .map(([key, value]) => `${key}: ${JSON.stringify(value)}\n`)
    .join('')}---\n\n${body}\n`;

/** A cycle's own file. */
export const cycleText = (body: string, more: Readonly<Record<string, unknown>> = {}): string =>
  record(
    {
      theme: 'First Sowings',
      title: 'A box for the sill',
      summary: 'What was in the box.',
      shipped: '2026-03-03',
      reveal: '2026-03-19T19:00',
      ...more,
    },
    body,
  );

/** An item's file. */
export const itemText = (
  name: string,
  kind: string,
  body: string,
  more: Readonly<Record<string, unknown>> = {},
): string =>
  record(
    { name, kind, brand: 'Halloway', description: 'It came in the box.', countryOfOrigin: 'GB', ...more },
    body,
  );

export const sourcesOf = (texts: Readonly<Record<string, string>>): Sources =>
  sourcesFrom({ 'box.md': BOX, ...texts });

/** The box of some files by path. Throws when they do not make one. */
export const boxOf = (texts: Readonly<Record<string, string>>): Box => {
  const { value, linking } = wholeBox(sourcesOf(texts));
  if (!value) throw new Error(JSON.stringify(linking));
  return value;
};

export const english = await languageFor('en-GB');
export const NOW = Date.UTC(2026, 5, 1);

/** A paragraph that the author wrote, in the body of an article. */
export const paragraphOf = (text: string): Passage => ({
  form: 'paragraph',
  text,
  words: zonedWords(english, text, sentenceSpans(text, 'en'), { zone: 'body' }, () => ({
    line: 1,
    column: 1,
  })),
  file: 'cycle.md',
  written: true,
  running: true,
});
