import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const folder = join(import.meta.dirname, '../../templates');

/** Templates whose words come from the wording alone; what they share with others is not among them. */
const WORDED = /^(?:proof|parcels)(?:-(?!style|script|squares)[\w-]+)?\.eta$/;

/** What a template says by itself: text between tags, and attributes that are read out. Names of keys are no words. */
const ownWords = (source: string): readonly string[] => {
  const without = source
    .replace(/<%[\s\S]*?%>/g, '')
    .replace(/&\w+;/g, '')
    .replace(/<kbd>\w+<\/kbd>/g, '')
    .replace(/<!--[\s\S]*?-->/g, '');
  const attributes = [...without.matchAll(/\s(?:aria-label|alt|title|placeholder)="([^"]*)"/g)];
  const text = without.replace(/<[^>]*>/g, ' ');
  return [text, ...attributes.map(([, value]) => value ?? '')].flatMap(
    (one) => one.match(/\p{L}{2,}/gu) ?? [],
  );
};

test.each(readdirSync(folder).filter((file) => WORDED.test(file)))('%s has no words of its own', (file) => {
  expect(ownWords(readFileSync(join(folder, file), 'utf8'))).toEqual([]);
});

test('words of a template’s own are seen', () => {
  expect(ownWords('<p>As of <%= it.date %></p>')).toEqual(['As', 'of']);
  expect(ownWords('<nav aria-label="Parts"><%= it.parts %></nav>')).toEqual(['Parts']);
});
