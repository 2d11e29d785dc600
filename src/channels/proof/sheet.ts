/** What every part of a proof's page is told, and how the parts refer to each other. */
import type { Coverage, Grade, ItemCoverage } from '../../analysis/coverage/coverage.ts';
import type { Passage } from '../../analysis/coverage/text/passage.ts';
import type { Zone } from '../../analysis/coverage/text/zones.ts';
import { type Location, locationText } from '../../diagnostics/diagnostic.ts';
import type { Wording } from '../../wording/wording.ts';

/** The facts with the words they are told in. */
export interface Sheet {
  readonly coverage: Coverage;
  /** The page's own words. */
  readonly page: Wording['proof']['page'];
  /** What is said of an article wherever a proof is shown. */
  readonly words: Wording['coverage'];
}

/** Grades in which a phrase is not met as such. */
export const WEAK: readonly Grade[] = ['scattered', 'head only'];

/** Names of things as the page's anchors have them. Items and phrases are counted as they are told, from 1. */
export const anchors = {
  passage: (index: number) => `text-${index + 1}`,
  edit: (index: number) => `edit-${index + 1}`,
  mention: (item: number, phrase: number, mention: number) => `said-${item}-${phrase}-${mention}`,
};

/** The file as it is called inside its cycle's folder. */
export const shortFile = (file: string, cycle: string): string => {
  const folder = file.lastIndexOf(`${cycle}/`);
  return folder < 0 ? file : file.slice(folder + cycle.length + 1).replace(/^items\//, '');
};

/** The first and the last line that a passage's words stand on; `last` is -1 where there are none. */
export const linesOf = (passage: Passage): { readonly first: number; readonly last: number } => {
  const lines = passage.words.map(({ line }) => line);
  return lines.length === 0
    ? { first: 0, last: -1 }
    : { first: Math.min(...lines), last: Math.max(...lines) };
};

/** Index of the passage that a location is in: one with text of the wanted place, else any, else none. */
export const passageAt = (
  { passages }: Coverage,
  { file, line }: Location,
  zone?: Zone,
): number | undefined => {
  const there = passages.flatMap((passage, index) => {
    const { first, last } = linesOf(passage);
    return passage.file === file && line >= first && line <= last ? [{ passage, index }] : [];
  });
  const written = there.filter(({ passage }) => passage.written);
  const wanted = written.find(({ passage }) => passage.words.some((word) => word.zone === zone));
  return (wanted ?? written[0] ?? there[0])?.index;
};

/** A location as it is shown, and a link to where the page shows its text, where it does. */
export interface LocationView {
  readonly words: string;
  readonly href: string | false;
}

/** A location, linked to the page's own text. */
export const locationView = (coverage: Coverage, at: Location, zone?: Zone): LocationView => {
  const passage = passageAt(coverage, at, zone);
  return { words: locationText(at), href: passage !== undefined && `#${anchors.passage(passage)}` };
};

/** The short name of an item. */
export const itemName = (items: readonly ItemCoverage[], slug: string): string =>
  items.find((item) => item.slug === slug)?.shortName ?? slug;
