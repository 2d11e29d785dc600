/** Which thing stands in which file, read from the files themselves, so that no channel vouches for its own. */
import type { FilePlace } from '../../channels/channel.ts';
import type { Cycle, Moment, Piece } from '../../model/box.ts';
import type { PieceState } from '../../model/carried.ts';
import { formsOfPiece } from '../../model/pieces.ts';
import { isSealed } from '../../model/seal.ts';
import { articlePath } from '../../render/addresses.ts';
import { plainWords } from '../../render/plain-words.ts';
import { type Duty, duties } from './duties.ts';
import { isOwed, type SoughtTexts, type SoughtThing, soughtTexts } from './sought.ts';

/**
 * Whether each of some texts stands in a file, whatever its quotes, dashes and spaces. It depends on the file and the
 * texts alone, so an answer may be kept as long as neither changes.
 */
export const heldBy = (
  { path, text }: { readonly path: string; readonly text: string },
  sought: readonly SoughtTexts[],
): readonly boolean[] => {
  const words = ` ${plainWords(text, path.endsWith('.html'))} `;
  const stands = (form: string): boolean => words.includes(` ${plainWords(form)} `);
  return sought.map((texts) => texts.every((forms) => forms.some(stands)));
};

/** Answers `heldBy` of a file by its place; undefined where there is no such file. */
export type FileReading = (
  place: FilePlace,
  sought: readonly SoughtTexts[],
) => Promise<readonly boolean[] | undefined>;

/** A piece of a cycle as its files tell it. */
export interface ToldPiece {
  readonly piece: Piece;
  readonly duty: Duty;
  /** Why there is nothing to read, where there is not. */
  readonly without?: 'sealed' | 'not made';
  /** The files, each with whether it holds each thing. */
  readonly forms: readonly { readonly path: string; readonly holds: readonly boolean[] }[];
}

const placesOf = (cycle: Cycle, piece: Piece): readonly FilePlace[] =>
  piece === 'article'
    ? [{ where: 'site', path: articlePath(cycle) }]
    : formsOfPiece[piece].map((file) => ({ where: 'backroom', path: `${cycle.id}/${file}` }));

/** What the files of a cycle's piece hold of the things looked for. */
export const toldIn = async (
  cycle: Cycle,
  piece: Piece,
  things: readonly SoughtThing[],
  asOf: Moment,
  reading: FileReading,
): Promise<ToldPiece> => {
  const sought = things.map((thing) => soughtTexts(thing, piece));
  const forms: { readonly path: string; readonly holds: readonly boolean[] }[] = [];
  for (const place of placesOf(cycle, piece)) {
    const holds = await reading(place, sought);
    if (holds) forms.push({ path: place.path, holds });
  }
  const duty = duties[piece];
  if (forms.length > 0) return { piece, duty, forms };
  const without = piece === 'article' && isSealed(cycle, asOf) ? 'sealed' : 'not made';
  return { piece, duty, forms, without };
};

/** The files of a piece that lack a thing, by its place among those looked for. */
export const lackedBy = (index: number, { forms }: ToldPiece): readonly string[] =>
  forms.filter(({ holds }) => !holds[index]).map(({ path }) => path);

/** How a piece stands to a thing, by its place among those looked for. */
export const stateOf = ({ thing }: SoughtThing, index: number, told: ToldPiece): PieceState => {
  if (told.piece === 'invitation' && thing.kind === 'item') {
    if (told.without) return 'not made';
    return lackedBy(index, told).length === told.forms.length ? 'kept still' : 'given away';
  }
  if (!isOwed(thing, told.duty)) return 'not asked';
  if (told.without) return told.without;
  return lackedBy(index, told).length === 0 ? 'there' : 'absent';
};
