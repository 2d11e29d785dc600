import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { within } from '../../src/content/slip.ts';
import { flowText, isPlain } from '../../src/content/write-yaml.ts';
import { parseFields, valuesOf } from '../../src/content/yaml-fields.ts';

const read = (fields: string): unknown => {
  const document = parseFields(fields);
  return document.errors.length + document.warnings.length > 0 ? undefined : valuesOf(document);
};

describe('which texts need no quotes', () => {
  const sign = fc.constantFrom(...`a1é’'"“” .,;:#-–&*!?%@|>{}[]()/\\_\`~=+\t`, ': ', ' #', '://');
  const text = fc.string({ unit: sign, minLength: 1, maxLength: 12 }).map((one) => `t${one}`);

  test('is one rule for what is written anew and for what is proposed in the place of a slip', () => {
    fc.assert(
      fc.property(text, (one) => {
        expect(within(one) === one).toBe(isPlain(one));
        expect(flowText(one) === one).toBe(isPlain(one));
      }),
      { numRuns: 2000 },
    );
  });

  test('holds wherever such a text stands: alone, in a list, within braces and within brackets', () => {
    let plain = 0;
    fc.assert(
      fc.property(text, (one) => {
        if (!isPlain(one)) return;
        plain += 1;
        expect(read(`a: ${one}\nb:\n  - ${one}\nc: {d: ${one}}\ne: [${one}, ${one}]`)).toEqual({
          ...{ a: one, b: [one], c: { d: one }, e: [one, one] },
        });
      }),
      { numRuns: 5000 },
    );
    expect(plain).toBeGreaterThan(100);
  });
});
