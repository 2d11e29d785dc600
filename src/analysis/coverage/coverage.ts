/** Everything the proof says about one cycle's article. */
import type { Location } from '../../diagnostics/diagnostic.ts';
import type { Phrase } from './phrases/phrase.ts';
import type { FieldName } from './rivals/ranking.ts';
import type { CalledName } from './standing/called.ts';
import type { Stranger } from './strangers/untold.ts';
import type { ThinPart } from './substance.ts';
import type { Passage } from './text/passage.ts';
import type { Zone } from './text/zones.ts';

/** Every grade once, the best first. */
export const grades = ['exact', 'inflected', 'same stem', 'scattered', 'head only', 'absent'] as const;

/** How a phrase is met. */
export type Grade = (typeof grades)[number];

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

/** Whether a mention says a phrase as such: in the very words, or singular for plural. */
export const isClear = ({ grade }: Pick<Mention, 'grade'>): boolean =>
  grade === 'exact' || grade === 'inflected';

/** What one place adds to an item's standing. */
export interface PlaceStanding {
  readonly zone: Zone;
  /** The most it can give. */
  readonly worth: number;
  /** Whether it is one of the item's own, which are asked for. */
  readonly isOwn: boolean;
  /** What it gives, before the sum is set against what the item's own places are worth. */
  readonly gives: number;
  /** Mentions of any of the item's phrases. */
  readonly mentions: number;
  /** The best match there: its grade, and the phrase's index among the item's where there is any. */
  readonly grade: Grade;
  readonly phrase?: number;
}

/** How often a text says something, in so many words where their number is what makes the difference. */
export interface TextMentions {
  readonly times: number;
  readonly words?: number;
}

/** What a rival does more for a phrase than this article. */
export type RivalReason =
  | {
      /** It says the phrase in better places, or more often; at least one of `fields` and `text` is there. */
      readonly kind: 'says it';
      /** What is said of the phrase, where the rival never says the whole of it. */
      readonly core?: string;
      /** Fields besides the text that say it oftener than here, the weightiest first, and whether more than once. */
      readonly fields: readonly { readonly field: FieldName; readonly many: boolean }[];
      readonly text?: { readonly there: TextMentions; readonly here: TextMentions };
    }
  | {
      /** Its words, though not together, stand oftener in some fields. */
      readonly kind: 'has its words';
      readonly phrase: string;
      readonly fields: readonly FieldName[];
    };

/** A page of ours that would answer a phrase before this article. */
export interface Rival {
  readonly cycle: string;
  readonly title: string;
  /** BM25F scores of the rival and of this article, rounded to two decimals as they are shown. */
  readonly score: number;
  readonly own: number;
  /** This article's rank for the phrase among the box's articles, from 1. */
  readonly rank: number;
  /** Why it comes first. */
  readonly reason: RivalReason;
  /** The link to write, from the page that answers first to the other. */
  readonly link: {
    readonly from: string;
    readonly to: string;
    readonly anchor: string;
    readonly at: Location;
  };
}

/** Where the article says one phrase. */
export interface PhraseCoverage {
  readonly phrase: Phrase;
  /** In reading order. */
  readonly mentions: readonly Mention[];
  readonly rival?: Rival;
}

/** How well the article carries one item. */
export interface ItemCoverage {
  readonly slug: string;
  readonly number: number;
  readonly name: string;
  /** Without what a card adds to it. */
  readonly shortName: string;
  readonly kind: string;
  /** What `places` give of what its own are worth, at most 1. */
  readonly standing: number;
  /** One for each place, in their order. */
  readonly places: readonly PlaceStanding[];
  /** Its other names that the text says, and those it does not: none is asked for. */
  readonly reach: { readonly said: readonly string[]; readonly unsaid: readonly string[] };
  /** How often it was typed, how often in words that the text has, and in which others; absent where nobody knows. */
  readonly typed?: {
    readonly all: number;
    readonly answered: number;
    readonly unanswered: readonly string[];
  };
  /** What it would be after all the advice was done. */
  readonly promised: number;
  /** Whether its section says too little to be worth finding: then it is not found, whatever it names. */
  readonly thin: boolean;
  /** The weightiest first. */
  readonly phrases: readonly PhraseCoverage[];
  /** What its story calls it again and again and its record does not. */
  readonly called: readonly CalledName[];
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
  readonly text: string;
  readonly other: { readonly cycle: string; readonly at: Location; readonly text: string };
  /** Broder's resemblance of the two, 0 to 1. */
  readonly resemblance: number;
}

/** What an edit does. */
export type EditAction =
  /** Calls the thing by its name, where `now` stands. */
  | { readonly kind: 'call by name'; readonly now: string }
  /** Begins a picture's text with the thing that it shows. */
  | { readonly kind: 'begin with it' }
  /** Names the things of the box in its summary. */
  | { readonly kind: 'name the things' };

/** What the analysis cannot do in a language: take names apart and measure reading; know a word in another form. */
export type Limit = 'names taken whole' | 'no stemmer';

/** One thing to do. */
export interface Edit {
  readonly zone: Zone;
  readonly at: Location;
  readonly action: EditAction;
  /** The sentence as it is and as it would be; of a picture's text and a summary the whole. */
  readonly before: string;
  readonly after: string;
  /** Standing of each item that it serves, before and after this edit, in the order of the advice. */
  readonly brings: readonly { readonly item: string; readonly before: number; readonly after: number }[];
}

/** Everything the proof says about one cycle’s article, as data. */
export interface Coverage {
  /** Hash of all that is here: stands for it where it is asked whether anything changed. */
  readonly digest?: string;
  readonly cycle: string;
  readonly theme: string;
  readonly title: string;
  /** Titles to choose from; empty where the record gives one. */
  readonly titles: readonly string[];
  readonly aim: number;
  readonly lang: string;
  /** Empty for English. */
  readonly limits: readonly Limit[];
  readonly passages: readonly Passage[];
  /** In the order of the telling. */
  readonly items: readonly ItemCoverage[];
  readonly overRepeated: readonly OverRepetition[];
  readonly shared: readonly SharedPassage[];
  /** Parts that say too little. */
  readonly thin: readonly ThinPart[];
  /** Things that are named and not in the box, in the order of the page; of English alone. */
  readonly strangers: readonly Stranger[];
  readonly reading: Reading;
  readonly advice: readonly Edit[];
  /** Items that no advice brings to the aim. */
  readonly outOfReach: readonly string[];
}
