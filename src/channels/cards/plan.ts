/** For which cycles cards are made, and of what. */
import type { Box, Cycle, Moment } from '../../model/box.ts';
import { callsAsOf } from '../../model/calls.ts';
import type { LiveInput } from '../../model/cues.ts';
import { makesPiece } from '../../model/pieces.ts';
import { isSealed } from '../../model/seal.ts';
import { type ChannelInput, type ChannelPlan, plannedDocument } from '../channel.ts';
import { cardsPage, cardTexts } from './page.ts';

/** Revealed cycles whose sets are kept up: a newcomer looks at no more. A choice of ours. */
const KEPT = 3;

/** What is to come, the last three that were shown, and whichever says in its own record how its cards look. */
const drawnCycles = ({ cycles }: Box, asOf: Moment): readonly Cycle[] => {
  const kept = new Set(cycles.filter((cycle) => !isSealed(cycle, asOf)).slice(-KEPT));
  return cycles.filter((cycle) => kept.has(cycle) || isSealed(cycle, asOf) || cycle.cards !== undefined);
};

/** What a cycle's cards are made of as of a moment. */
export const cardsTold = (box: Box, asOf: Moment): ((cycle: Cycle) => LiveInput) => {
  const callOf = callsAsOf(box, asOf, 'cards');
  return (cycle) => ({ cycle, settings: box.settings, call: callOf(cycle) });
};

/** Two files for each of these cycles; none for a box without the cards. */
export const planCards = ({ box, asOf }: ChannelInput): ChannelPlan => {
  const { settings } = box;
  if (!makesPiece(settings, 'cards')) return { documents: [] };
  const toldOf = cardsTold(box, asOf);
  return {
    documents: drawnCycles(box, asOf).flatMap((cycle) => {
      const data = { told: toldOf(cycle), sealed: isSealed(cycle, asOf) };
      return [
        plannedDocument(`${cycle.id}/cards.html`, 'page', data, cardsPage),
        plannedDocument(`${cycle.id}/cards.txt`, 'page', data, cardTexts),
      ];
    }),
  };
};
