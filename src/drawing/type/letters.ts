/** A text as letters: which face draws each, in which script and direction. */
import bidiFactory from 'bidi-js';
import { graphemesOf } from '../../text/segments.ts';
import type { Face } from './faces.ts';
import { type Part, partsOf } from './stacked-marks.ts';

/** A grapheme cluster (UAX #29). */
export interface Letter {
  readonly text: string;
  /** Where it begins and ends in the text, UTF-16. */
  readonly from: number;
  readonly to: number;
  /** Undefined where no face has it as a whole. */
  readonly face: Face | undefined;
  /** The letter and its marks in faces that have them, where no face has it as a whole. */
  readonly parts?: readonly Part[];
  /** ISO 15924. */
  readonly script: string;
  /** Embedding level (UAX #9): odd is written from right to left. */
  readonly level: number;
}

export interface Letters {
  readonly text: string;
  readonly letters: readonly Letter[];
  /** Of the whole: 1 is written from right to left. */
  readonly baseLevel: 0 | 1;
}

const bidi = bidiFactory();

/** Scripts that a face is here for, and those that are joined or stacked like them. Names are ISO 15924's. */
const SCRIPTS: readonly (readonly [name: string, pattern: RegExp])[] = [
  'Latn',
  'Grek',
  'Cyrl',
  'Hebr',
  'Arab',
  'Deva',
  'Thai',
  'Hani',
  'Hira',
  'Kana',
  'Hang',
  'Armn',
  'Geor',
  'Beng',
  'Syrc',
  'Mong',
  'Nkoo',
].map((name) => [name, new RegExp(`\\p{Script=${name}}`, 'u')]);

/** The script of a letter; undefined for signs and marks that every script has. */
const scriptOf = (letter: string): string | undefined => {
  if (/^[a-z]/i.test(letter)) return 'Latn';
  const found = SCRIPTS.find(([, pattern]) => pattern.test(letter))?.[0];
  return found ?? (/^[\p{Script=Common}\p{Script=Inherited}]+$/u.test(letter) ? undefined : 'Zyyy');
};

const IGNORABLE = /\p{Default_Ignorable_Code_Point}/u;

const codePointsOf = (letter: string): readonly number[] =>
  [...letter].filter((one) => !IGNORABLE.test(one)).map((one) => one.codePointAt(0) ?? 0);

/** Whether a face has a letter, whole or as its parts, which HarfBuzz puts together. */
const draws = (face: Face, letter: string): boolean =>
  codePointsOf(letter).every(face.has) || codePointsOf(letter.normalize('NFD')).every(face.has);

/** What was found of each order of faces, because a rare letter is sought in hundreds of files. */
const found = new WeakMap<readonly Face[], Map<string, Face | undefined>>();

const faceFor = (faces: readonly Face[], letter: string): Face | undefined => {
  const known = found.get(faces) ?? new Map<string, Face | undefined>();
  if (known.size === 0) found.set(faces, known);
  if (known.has(letter)) return known.get(letter);
  const face = faces.find((one) => draws(one, letter));
  known.set(letter, face);
  return face;
};

const RIGHT_TO_LEFT = /^(?:ar|fa|he|iw|ps|sd|ug|ur|yi|dv|ckb|syr)\b/i;

const RIGHT_TO_LEFT_LETTER =
  /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u;

const SIGN = /^[\p{Script=Common}\p{Script=Inherited}]+$/u;

/**
 * The letters of a text in NFC. A text of a language that is written from right to left is so as a whole as soon as one
 * of its letters is; any other as its first letter is (UAX #9, P2 and P3). A sign that scripts share is drawn by the face of the letter before it where that has
 * it, so that a comma fits the word that it follows.
 */
export const lettersOf = (text: string, lang: string, faces: readonly Face[]): Letters => {
  const base = RIGHT_TO_LEFT.test(lang) && RIGHT_TO_LEFT_LETTER.test(text) ? 'rtl' : 'auto';
  const { levels, paragraphs } = bidi.getEmbeddingLevels(text, base);
  const letters: Letter[] = [];
  const graphemes = graphemesOf(text, lang);
  const scripts = graphemes.map(scriptOf);
  let script = scripts.find((one) => one !== undefined) ?? 'Zyyy';
  let before: Face | undefined;
  let from = 0;
  for (const [i, letter] of graphemes.entries()) {
    script = scripts[i] ?? script;
    const keeps = before !== undefined && SIGN.test(letter) && draws(before, letter);
    const face = keeps ? before : faceFor(faces, letter);
    const parts = face ? undefined : partsOf(letter, (part) => faceFor(faces, part));
    const to = from + letter.length;
    letters.push({ text: letter, from, to, face, script, level: levels[from] ?? 0, ...(parts && { parts }) });
    before = face;
    from = to;
  }
  return { text, letters, baseLevel: paragraphs[0]?.level === 1 ? 1 : 0 };
};
