import { describe, expect, test } from 'vitest';
import { commandLine } from '../../src/wording/en/command-line.ts';
import { findings } from '../../src/wording/en/findings.ts';

const { build, progress } = commandLine;

describe('a build says', () => {
  test('when to build again, and what will then be another', () => {
    const next = build.next('1 March 2026, 00:00', [
      { change: 'spare', cycle: '2025-10', item: 'spoon', name: 'Bramble spoon' },
      { change: 'call', cycle: '2025-10', call: 'join' },
      { change: 'call' },
    ]);
    expect(build.again(next)).toBe(
      'Build again after 1 March 2026, 00:00: spare pieces of Bramble spoon (2025-10) go off sale; the call of 2025-10 is then `join`; the call of the box is gone.',
    );
  });

  test.each([
    [999, '999 bytes'],
    [34_400, '34 kB'],
    [3_440_000, '3.4 MB'],
  ])('what it made, %i bytes as %s', (bytes, words) => {
    const made = { pages: 1, pictures: 2, newPictures: 1, fromCache: 1, files: 3, bytes };
    expect(build.made(made)).toBe(`Made 1 page and 2 pictures (1 new, 1 from the cache): 3 files, ${words}.`);
  });

  test('of a proof how many items stand at the aim, and of the rest only what there is', () => {
    const proof = {
      cycle: '2026-03',
      theme: 'First Sowings',
      aim: 0.7,
      items: 5,
      atAim: 5,
      thin: 0,
      crowded: 0,
      rivals: 0,
    };
    expect(build.proved(proof)).toBe('Proof of 2026-03, First Sowings: 5 of 5 items at the aim of 0.7.');
    const weakest = { name: 'Wooden dibber', shown: '0.52' };
    expect(build.proved({ ...proof, atAim: 4, weakest, thin: 2, crowded: 1, rivals: 2 })).toBe(
      'Proof of 2026-03, First Sowings: 4 of 5 items at the aim of 0.7; weakest Wooden dibber, 0.52; 2 thin stories; 1 crowded phrase; 2 rivals.',
    );
  });

  test('how long each stage took', () => {
    expect(
      build.time([
        ['read', 999],
        ['pages', 3400],
      ]),
    ).toBe('Time: read 999 ms, pages 3.4 s.');
  });
});

test('findings are counted by weight, and those there are none of are left out', () => {
  expect(
    findings.count([
      ['must fix', 2],
      ['look at', 0],
      ['note', 1],
    ]),
  ).toBe('2 must fix, 1 note');
  expect(
    findings.count([
      ['must fix', 0],
      ['look at', 1],
      ['note', 2],
    ]),
  ).toBe('1 look at, 2 notes');
});

test('what is left of a stage is told in seconds or minutes', () => {
  expect([progress.secondsLeft(9), progress.minutesLeft(2)]).toEqual(['9 s left', '2 min left']);
});
