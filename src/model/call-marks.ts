/** Marks of the calls in box.md: what a piece adds to a call's address. */
import type { Usable } from '../content/read.ts';
import type { BoxRecord } from '../content/schemas.ts';
import { CALL_KINDS, PIECES } from '../content/vocabulary.ts';
import { type Diagnostic, lookAt } from '../diagnostics/diagnostic.ts';
import { queryOf } from '../text/query.ts';
import type { CallTerms } from './box.ts';

type Marks = NonNullable<CallTerms['from']>;

/** Marks as they are added. */
export const marksOf = (from: { readonly [Piece in keyof Marks]: string | undefined }): Marks =>
  Object.fromEntries(
    PIECES.flatMap((piece) => {
      const mark = from[piece];
      return mark === undefined ? [] : [[piece, queryOf(mark)]];
    }),
  );

/** An e-mail address, its sign written as it is or percent-encoded. */
const MAIL = /[^=&@](?:@|%40)[^=&@]/i;
/**
 * What sending services put each reader's own words in the place of: it has a bracket, bar, star or dollar in it, or stands
 * between signs, as `__name__`.
 */
const PLACEHOLDER = /[{}[\]|*$]|%(?:5b|5d|7b|7c|7d)|=[^\p{L}\p{N}%&][^&]*[^\p{L}\p{N}&](?:&|$)/iu;

/** Marks that would tell the shop who came, and not only from where. */
export const markFindings = ({ value, locationOf }: Usable<BoxRecord>): readonly Diagnostic[] =>
  CALL_KINDS.flatMap((kind) =>
    PIECES.flatMap((piece) => {
      const mark = value.calls?.[kind]?.from?.[piece];
      if (mark === undefined || !(MAIL.test(mark) || PLACEHOLDER.test(mark))) return [];
      return [
        lookAt(
          'call-mark',
          locationOf(['calls', kind, 'from', piece]),
          `Unexpected \`${mark}\` as the mark of \`${piece}\`, expected one that is the same for everybody: it says which piece, never who`,
          `Write what the piece is and nothing about its reader, as \`${piece}: ?via=${piece}\``,
        ),
      ];
    }),
  );
