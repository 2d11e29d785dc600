import { describe, expect, test } from 'vitest';
import { mayConflate } from '../../src/analysis/language/conflation.ts';
import { languageFor } from '../../src/analysis/language/language.ts';

const english = await languageFor('en-GB');
const joins = (a: string, b: string): boolean => mayConflate(english.word(a), english.word(b));

describe('two words of one stem', () => {
  test.each([
    ['plant', 'planting'],
    ['garden', 'gardening'],
    ['water', 'watering'],
    ['enamel', 'enamelled'],
    ['scent', 'scented'],
    ['decor', 'decoration'],
    ['decorate', 'decoration'],
    ['propagate', 'propagation'],
    ['knit', 'knitted'],
    ['glaze', 'glazed'],
    ['fence', 'fencing'],
    ['edge', 'edging'],
    ['label', 'labels'],
    ['knives', 'knife'],
  ])('%s and %s are one thing', (a, b) => {
    expect([joins(a, b), joins(b, a)]).toEqual([true, true]);
  });

  test.each([
    ['engine', 'engineer'],
    ['plant', 'planter'],
    ['plant', 'plantation'],
    ['garden', 'gardener'],
    ['contain', 'container'],
    ['dispense', 'dispenser'],
    ['propagation', 'propagator'],
    ['general', 'generation'],
    ['generous', 'generation'],
    ['import', 'important'],
    ['compass', 'compassion'],
    ['transit', 'transition'],
    ['stock', 'stocking'],
    ['dress', 'dressing'],
    ['bed', 'bedding'],
    ['ear', 'earring'],
    ['organ', 'organic'],
    ['past', 'paste'],
    ['rug', 'rugged'],
    ['statue', 'status'],
    ['universe', 'university'],
    ['cloth', 'clothes'],
    ['addition', 'additive'],
    ['medical', 'medication'],
    ['journal', 'journalism'],
    ['local', 'locality'],
    ['pot', 'potting'],
  ])('%s and %s are two', (a, b) => {
    expect([joins(a, b), joins(b, a)]).toEqual([false, false]);
  });

  test('most pairs kept apart do share a stem, so that the rule is needed', () => {
    for (const [a, b] of [
      ['engine', 'engineer'],
      ['garden', 'gardener'],
      ['stock', 'stocking'],
      ['organ', 'organic'],
      ['general', 'generation'],
    ] as const)
      expect(english.word(a).stem).toBe(english.word(b).stem);
  });
});
