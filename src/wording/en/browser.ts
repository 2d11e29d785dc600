/**
 * What the catalogue's search says in the visitor's browser. It goes into the published script, so it imports no more
 * than how words are spelled and has nothing that the search does not say.
 */
import { capital } from '../../text/counting-words.ts';
import { type Spelling, spellingFor } from './spelling.ts';

const pieces = (count: number): string => (count === 1 ? '1 piece' : `${count} pieces`);

/** Words that were taken for others, as "secaturs" for "secateurs". */
interface ReadAs {
  readonly typed: string;
  /** Not empty. */
  readonly as: readonly string[];
}

const readAs = (read: readonly ReadAs[]): string =>
  read.map(({ typed, as }) => `“${typed}” read as ${as.map((word) => `“${word}”`).join(' or ')}`).join('; ');

/** What the catalogue’s search says. */
export const browser = ({ colour }: Spelling) => ({
  loading: 'Looking…',
  notLoaded: 'The search could not be loaded. Everything we have packed is listed below.',
  nothing: (of: number): string => `Nothing found among ${pieces(of)}.`,
  /**
   * "2 of 60 pieces, and 9 with some of the words. “secaturs” read as “secateurs”." `all`: how many of the found have
   * every word; `words`: how many words were asked for.
   */
  found: (found: number, all: number, of: number, words: number, read: readonly ReadAs[]): string => {
    const partly =
      all === 0 && words > 1
        ? `${found} of ${pieces(of)} with some of the words, none with all`
        : `${all} of ${pieces(of)}${found > all ? `, and ${found - all} with some of the words` : ''}`;
    return `${partly}.${read.length === 0 ? '' : ` ${readAs(read)}.`}`;
  },
  /** Where nothing answers. What stands between pieces is a link. */
  empty: {
    narrowed: (unnarrowed: number) =>
      ['Nothing fits all of that. ', `${unnarrowed} without the narrowing`, '.'] as const,
    unknown: (asked: string): string => `We have packed nothing that answers to “${asked}”.`,
    meant: ['Did you mean ', '?'] as const,
    /** Before, between and after the kinds. */
    kinds: ['Look through a kind: ', ', ', '.'] as const,
  },
  /** Why an entry answers, where what it shows does not say so; each stands before the words that answer. */
  reason: {
    also: 'Also called ',
    material: 'Material: ',
    colour: `${capital(colour)}: `,
    colourOfPicture: `${capital(colour)} of its picture: `,
    colourOr: (said: string): string => `${capital(colour)}: ${said}, or `,
    packed: 'Packed in ',
    story: 'In its story: ',
  },
  partly: 'With some of the words',
  /** Of those that are left, where all of them are shown at once, and where they are not. */
  others: (left: number): string => `Show the other ${left}`,
  more: (more: number, left: number): string => `Show ${more} more of ${left}`,
});

/** The same for a page in a language (BCP 47). */
export const browserFor = (lang: string) => browser(spellingFor(lang));
