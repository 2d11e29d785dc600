/** What is wrong with pieces that do not say what they must. */

import { CALL_KINDS } from '../../content/vocabulary.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Box, Piece } from '../../model/box.ts';
import type { CarriedThing, CycleCompleteness, PieceState } from '../../model/carried.ts';
import { locationIn } from '../../model/location-in.ts';
import { pieceOrder, piecesOf } from '../../model/pieces.ts';
import type { Wording } from '../../wording/wording.ts';
import { duties } from './duties.ts';
import type { SoughtThing } from './sought.ts';

/** A rule for a thing's kind; a call's words and its address are one rule. */
const ruleOf = ({ kind }: CarriedThing): string => `whole-${kind === 'address' ? 'call' : kind}`;

/** The finding about a thing that a piece lacks, or gives away; `lacking` names the files without it. */
export const findingFor = (
  { thing, location, called }: SoughtThing,
  title: string,
  state: PieceState,
  lacking: readonly string[],
): readonly Diagnostic[] => {
  if (state === 'absent')
    return [
      {
        weight: 'look at',
        rule: ruleOf(thing),
        location,
        message: `Unexpected ${title} without ${called}, expected it in ${lacking.join(' and in ')}`,
        fix: `Let the ${title} say it: look for words of your own in cycle.md that take its place, or for a template that leaves it out`,
      },
    ];
  if (state === 'given away')
    return [
      {
        weight: 'look at',
        rule: 'whole-spoils',
        location,
        message: `Unexpected ${called} in the invitation, expected nothing that the box holds`,
        fix: 'Take the name out of the box’s own name and description, of `invitation` and of the live’s address',
      },
    ];
  return [];
};

/** What a finding calls a piece's paper. */
export const titleInFinding = (piece: keyof Wording['pieces']['titles'], { pieces }: Wording): string =>
  pieces.titles[piece].toLowerCase();

/** Pieces that are made for what is to come, or was shown last, and are not missed elsewhere. */
const OF_SOME_CYCLES: ReadonlySet<Piece> = new Set<Piece>(['invitation', 'cards']);

/**
 * Pieces that box.md names and that have no file: said once of one that was made for no cycle, else of each cycle. The
 * invitation and the cards are made only for some, and a sealed article is not missed.
 */
export const missingPieces = (box: Box, found: readonly CycleCompleteness[]): readonly Diagnostic[] =>
  piecesOf(box.settings).flatMap((piece, column) => {
    const without = found.filter(({ rows }) => rows.some(({ states }) => states[column] === 'not made'));
    const never = without.length === found.length;
    const dated = box.cycles.some(({ reveal }) => reveal !== undefined);
    if (without.length === 0 || (OF_SOME_CYCLES.has(piece) && !(never && dated))) return [];
    const places = never
      ? [{ where: 'any cycle', location: locationIn(box.settings.source, 'pieces', 'name') }]
      : box.cycles
          .filter(({ id }) => without.some(({ cycle }) => cycle === id))
          .map(({ id, source }) => ({ where: id, location: locationIn(source, 'theme') }));
    return places.map(({ where, location }) => ({
      weight: 'look at',
      rule: 'whole-piece',
      location,
      message: `Unexpected absence of the piece \`${piece}\` for ${where}, expected its files`,
      fix: `Take \`${piece}\` out of \`pieces\` in box.md until it is made`,
    }));
  });

/** Marks of the call for pieces that do not lead to it. */
export const idleMarks = ({ settings }: Box): readonly Diagnostic[] =>
  CALL_KINDS.flatMap((kind) =>
    pieceOrder
      .filter((piece) => settings.calls[kind]?.from?.[piece] !== undefined && !duties[piece].callAddress)
      .map((piece) => ({
        weight: 'note',
        rule: 'call-mark',
        location: locationIn(settings.source, `calls.${kind}.from.${piece}`, `calls.${kind}`, 'name'),
        message: `Unexpected mark for \`${piece}\`, expected one for a piece that leads to the call`,
        fix: `Take \`${piece}\` out of \`from\`: the ${piece} does not lead to the call`,
      })),
  );
