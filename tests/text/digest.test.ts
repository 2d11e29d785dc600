import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digestOf } from '../../src/text/digest.ts';
import { survivesJson } from '../../src/text/plain-data.ts';

describe('a digest of plain data', () => {
  it('is the same for equal data and another for any other, undefined keys left aside', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (a, b) => {
        expect(digestOf(a)).toBe(digestOf(JSON.parse(JSON.stringify(a))));
        const alike = JSON.stringify(a) === JSON.stringify(b);
        expect(digestOf(a) === digestOf(b)).toBe(alike || Object.is(a, b));
      }),
      { numRuns: 500 },
    );
    expect(digestOf({ a: 1, b: undefined })).toBe(digestOf({ a: 1 }));
  });

  it('tells kinds of values apart that print alike', () => {
    const values = [
      1,
      '1',
      [1],
      ['1'],
      { 1: 1 },
      new Map([['1', 1]]),
      new Set([1]),
      null,
      'null',
      undefined,
      'undefined',
      true,
      'true',
      [],
      {},
      new Map(),
      new Set(),
      new Uint8Array([49]),
    ];
    expect(new Set(values.map((value) => digestOf(value))).size).toBe(values.length);
    expect(digestOf('a', 'b')).not.toBe(digestOf('ab'));
    expect(digestOf(['a'], 'b')).not.toBe(digestOf(['a', 'b']));
  });

  it('takes a value’s own digest for it, and never looks at the rest', () => {
    const told = {
      digest: 'abc',
      get tree(): never {
        throw new Error('looked at');
      },
    };
    expect(digestOf({ told })).toBe(digestOf({ told: { digest: 'abc' } }));
    expect(digestOf({ told })).not.toBe(digestOf({ told: { digest: 'abd' } }));
  });

  it('reads a record that many hold once', () => {
    let looked = 0;
    const record = {
      source: { digest: 's' },
      get name() {
        looked += 1;
        return 'n';
      },
    };
    const [one, other] = [digestOf([record, record]), digestOf([record, record])];
    expect(one).toBe(other);
    expect(looked).toBe(1);
  });

  it('throws for what is no data', () => {
    expect(() => digestOf({ make: () => 1 })).toThrow('function');
  });
});

it('data survives JSON exactly when it comes back as it was', () => {
  fc.assert(
    fc.property(
      fc.anything({ withMap: true, withSet: true, withDate: true, withNullPrototype: true }),
      (value) => {
        if (!survivesJson(value)) return;
        expect(JSON.parse(JSON.stringify(value))).toStrictEqual(value);
      },
    ),
    { numRuns: 1000 },
  );
  expect(survivesJson({ a: [1, { b: null }] })).toBe(true);
  for (const lost of [undefined, { a: undefined }, [Number.NaN], -0, new Date(0), new Map(), 1n])
    expect(survivesJson(lost)).toBe(false);
});
