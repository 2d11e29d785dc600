import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { squeezed } from '../../src/render/assets.ts';

const TEMPLATES = join(import.meta.dirname, '../../templates');
const sheets = readdirSync(TEMPLATES).filter((name) => name.endsWith('.css'));

test.each([
  ['a  b > c ,\n d { color: red ; margin: 0 auto; }', 'a b > c,d{color:red;margin:0 auto}'],
  ['/* one */ p { } /* two; {} */', ' p{}'],
  ['a :hover, a:hover { width: calc(1rem + 2px) }', 'a :hover,a:hover{width:calc(1rem + 2px)}'],
  ['p::after { content: "; {  } /* , */ : \\" " }', 'p::after{content:"; {  } /* , */ : \\" "}'],
  ["@media (min-width: 40rem) { p { font: '  ' } }", "@media (min-width:40rem){p{font:'  '}}"],
])('%j is squeezed to what means the same', (css, expected) => {
  expect(squeezed(css)).toBe(expected);
});

test.each(sheets)('%s cannot be squeezed further', (name) => {
  const once = squeezed(readFileSync(join(TEMPLATES, name), 'utf8'));
  expect(squeezed(once)).toBe(once);
});
