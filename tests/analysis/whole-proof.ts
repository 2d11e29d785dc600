/** The proof of one cycle, put together as a build does it, without anything kept from before. */
import type { Coverage } from '../../src/analysis/coverage/coverage.ts';
import {
  articleOf,
  comparedCoverage,
  comparisonOf,
  coverageOf,
  indexArticle,
  ownCoverage,
  passagesOf,
  searchIndexOf,
  surroundingsOf,
} from '../../src/analysis/coverage/measure-coverage.ts';
import type { Language } from '../../src/analysis/language/language.ts';
import type { Box, Cycle, Moment } from '../../src/model/box.ts';
import { isSealed } from '../../src/model/seal.ts';
import { cautionText } from '../support/telling-input.ts';

export interface ProofOptions {
  readonly aim?: number;
  readonly otherNames?: ReadonlyMap<string, readonly string[]>;
}

export const proofIn = async (
  box: Box,
  cycle: Cycle,
  asOf: Moment,
  language: Language,
  { aim = 0.7, otherNames = new Map() }: ProofOptions = {},
): Promise<Coverage> => {
  const passagesIn = (one: Cycle) => passagesOf(one, surroundingsOf(box, one, asOf), language, cautionText);
  const compared = box.cycles.filter((one) => one === cycle || !isSealed(one, asOf));
  const indexes = compared.map((one) => indexArticle(articleOf(one, passagesIn(one))));
  const searches = searchIndexOf(box.searches, language);
  const passages = passagesIn(cycle);
  const own = await ownCoverage({
    cycle,
    box: box.settings,
    passages,
    searches,
    aim,
    language,
    otherNames,
    strangers: [],
  });
  return coverageOf(own, comparedCoverage(own, comparisonOf(indexes, language)), passages, language);
};
