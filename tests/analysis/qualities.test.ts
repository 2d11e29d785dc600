import { expect, test } from 'vitest';
import { qualitiesIn } from '../../src/analysis/language/qualities.ts';

test.each([
  ['beech', ['beech']],
  ['Beech and oiled steel', ['Beech', 'oiled steel']],
  ['beech, ash & brass', ['beech', 'ash', 'brass']],
  ['tan; flowers in mixed pinks', ['tan', 'flowers in mixed pinks']],
  ['cotton/linen (recycled)', ['cotton', 'linen', 'recycled']],
  ['sand', ['sand']],
  ['', []],
])('%j is %j', (text, parts) => expect(qualitiesIn(text)).toEqual(parts));
