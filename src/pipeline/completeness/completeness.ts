/** Whether every chosen piece of a cycle says what it must. */
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Box, Cycle, Moment } from '../../model/box.ts';
import type { Completeness, CycleCompleteness } from '../../model/carried.ts';
import { piecesOf } from '../../model/pieces.ts';
import type { Wording } from '../../wording/wording.ts';
import { isLeft, type Leavable } from '../leavable.ts';
import { type FileReading, lackedBy, stateOf, toldIn } from './facts.ts';
import { findingFor, idleMarks, missingPieces, titleInFinding } from './findings.ts';
import { soughtIn } from './sought.ts';

/** What is asked about a box's pieces. */
export interface CompletenessInput {
  readonly box: Box;
  readonly asOf: Moment;
  readonly wording: Wording;
  /** The finished files. */
  readonly reading: FileReading;
  /** Pieces that this build leaves out owe nothing. */
  readonly without?: ReadonlySet<Leavable>;
}

interface Completed<Whole> {
  readonly whole: Whole;
  readonly diagnostics: readonly Diagnostic[];
}

const ofCycle = async (cycle: Cycle, input: CompletenessInput): Promise<Completed<CycleCompleteness>> => {
  const { box, asOf, wording, reading, without } = input;
  const pieces = piecesOf(box.settings).filter((piece) => !isLeft(piece, without));
  const things = soughtIn(box, cycle, asOf, wording);
  const told = await Promise.all(pieces.map((piece) => toldIn(cycle, piece, things, asOf, reading)));
  const judged = things.map((thing, i) => ({
    thing,
    verdicts: told.map((one) => ({ one, state: stateOf(thing, i, one), lacking: lackedBy(i, one) })),
  }));
  return {
    whole: {
      cycle: cycle.id,
      pieces,
      rows: judged.map(({ thing, verdicts }) => ({
        thing: thing.thing,
        states: verdicts.map(({ state }) => state),
      })),
    },
    diagnostics: judged.flatMap(({ thing, verdicts }) =>
      verdicts.flatMap(({ one, state, lacking }) =>
        findingFor(thing, titleInFinding(one.piece, wording), state, lacking),
      ),
    ),
  };
};

/** What every cycle's pieces carry, and findings about what they do not. */
export const completenessOf = async (input: CompletenessInput): Promise<Completed<Completeness>> => {
  const found = await Promise.all(input.box.cycles.map((cycle) => ofCycle(cycle, input)));
  const whole = found.map((one) => one.whole);
  return {
    whole,
    diagnostics: [
      ...missingPieces(input.box, whole),
      ...idleMarks(input.box),
      ...found.flatMap(({ diagnostics }) => diagnostics),
    ],
  };
};
