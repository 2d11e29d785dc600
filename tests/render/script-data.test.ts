import fc from 'fast-check';
import { expect, test } from 'vitest';
import { htmlSource } from '../../src/render/html.ts';
import { scriptText } from '../../src/render/script-data.ts';

test('text in a script reads as it was written between any quotes, and ends neither its string nor its element', () => {
  const hostile = fc.constantFrom(
    "n'a",
    '"',
    '`',
    '$\u007b1}',
    '\\',
    '</script>',
    '<!--',
    '\n',
    '\u2028',
    '&amp;',
    'é',
  );
  fc.assert(
    fc.property(fc.array(fc.oneof(hostile, fc.string())), (parts) => {
      const text = parts.join('');
      const source = htmlSource(scriptText(text));
      for (const quote of ["'", '"', '`'])
        expect(new Function(`return ${quote}${source}${quote}`)()).toBe(text);
      expect(source).not.toMatch(/[<>&\n\u2028\u2029]/);
    }),
  );
});
