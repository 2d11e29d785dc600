/** Everything the proof says about one cycle's article. */
import type { Location } from '../../diagnostics/diagnostic.ts';
import type { Phrase } from './phrases/phrase.ts';
import type { Passage } from './text/passage.ts';
import type { Zone } from './text/zones.ts';

export type Grade = 'exact' | 'inflected' | 'same stem' | 'scattered' | 'head only' | 'absent';

/** One way a phrase is met in the text. */
export interface Mention {
  /** Index in `Coverage.passages`. */
  readonly passage: number;
  /** Index of the first and of the last word in the passage's words. */
  readonly from: number;
  readonly to: number;
  readonly zone: Zone;
  readonly grade: Exclude<Grade, 'absent'>;
  /** The longer phrase of the same item that it is a part of here. */
  readonly within?: string;
  readonly at: Location;
}

/** What one place adds to a phrase's standing. */
export interface StandingPart {
  readonly zone: Zone;
  /** The most it can give. */
  readonly worth: number;
  readonly gives: number;
  readonly mentions: number;
  /** The best grade there. */
  readonly grade: Grade;
}

/** A page of ours that would answer a phrase before this article. */
export interface Rival {
  readonly cycle: string;
  readonly title: string;
  /** BM25F scores of the rival and of this article, rounded to two decimals as they are shown. */
  readonly score: number;
  readonly own: number;
  /** This article's rank for the phrase among the box's articles, from 1. */
  readonly rank: number;
  /** Why it comes first, in one sentence. */
  readonly why: string;
  /** The link to write, from the page that answers first to the other. */
  readonly link: {
    readonly from: string;
    readonly to: string;
    readonly anchor: string;
    readonly at: Location;
  };
}

export interface PhraseCoverage {
  readonly phrase: Phrase;
  /** The sum of what `parts` give, at most 1. */
  readonly standing: number;
  /** One for each place, in the order of `placeNames`. */
  readonly parts: readonly StandingPart[];
  /** In reading order. */
  readonly mentions: readonly Mention[];
  readonly rival?: Rival;
}

export interface ItemCoverage {
  readonly slug: string;
  readonly number: number;
  readonly name: string;
  readonly kind: string;
  /** The mean of its phrases' standing, each by its weight. */
  readonly standing: number;
  /** What it would be after all the advice was done. */
  readonly promised: number;
  /** The weightiest first. */
  readonly phrases: readonly PhraseCoverage[];
  /** Other names a dictionary has for it, to be taken as `also` or left; none is scored. */
  readonly otherNames: readonly string[];
}

/** A phrase said too often. */
export interface OverRepetition {
  readonly item: string;
  readonly phrase: string;
  /** Mentions in each hundred words of running text. */
  readonly rate: number;
  /** Gries' deviation of proportions, 0 (spread evenly) to 1 (all in one part). */
  readonly dispersion: number;
  readonly mentions: number;
  /** The sentences to thin out, the densest first. */
  readonly sentences: readonly { readonly at: Location; readonly text: string; readonly mentions: number }[];
}

/** The article as reading. Ease and grade in English alone. */
export interface Reading {
  readonly words: number;
  readonly sentences: number;
  readonly minutes: number;
  /** Flesch (1948). */
  readonly ease?: number;
  /** Kincaid et al. (1975): years of school. */
  readonly grade?: number;
}

/** A passage much like one of an earlier article. */
export interface SharedPassage {
  readonly passage: number;
  readonly at: Location;
  readonly other: { readonly cycle: string; readonly at: Location };
  /** Broder's resemblance of the two, 0 to 1. */
  readonly resemblance: number;
}

/** One thing to do. */
export interface Edit {
  readonly zone: Zone;
  readonly at: Location;
  /** Item and phrase pairs that it serves. */
  readonly serves: readonly { readonly item: string; readonly phrase: string }[];
  /** The words to write, as they would stand there. */
  readonly write: string;
  /** As something to do: "Opening, line 14: call it the seed tin once; now it is only “the tin”." */
  readonly words: string;
  /** Standing of each item it serves, before and after this edit, in the order of the advice. */
  readonly brings: readonly { readonly item: string; readonly before: number; readonly after: number }[];
}

export interface Coverage {
  readonly cycle: string;
  readonly theme: string;
  readonly title: string;
  readonly aim: number;
  readonly lang: string;
  /** What the analysis cannot do in this language, in words; empty for English. */
  readonly limits: readonly string[];
  readonly passages: readonly Passage[];
  /** In the order of the telling. */
  readonly items: readonly ItemCoverage[];
  readonly overRepeated: readonly OverRepetition[];
  readonly shared: readonly SharedPassage[];
  readonly reading: Reading;
  readonly advice: readonly Edit[];
  /** Items that no advice brings to the aim. */
  readonly outOfReach: readonly string[];
}
