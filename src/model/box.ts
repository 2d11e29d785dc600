/** The box with every link resolved: what channels and analysis read. Plain data, no methods. */
import type { Root } from 'mdast';
import type { CALL_KINDS, CARD_LAYOUTS, Category, CLIP_LENGTHS, PIECES } from '../content/vocabulary.ts';
import type { Location } from '../diagnostics/diagnostic.ts';
import type { InText } from './in-text.ts';
import type { Target } from './story.ts';

export type { PublicAddress, ShownAddress } from '../content/addresses.ts';
export type { ParcelCount, ParcelState, Parcels } from '../content/parcel-count.ts';
export type { PhotoSource } from '../content/sources.ts';
export type { Category } from '../content/vocabulary.ts';

/** Milliseconds since 1970-01-01T00:00Z. The core never asks for the time; the edge passes it in. */
export type Moment = number;

/** Calendar date, `YYYY-MM-DD` (ISO 8601). */
export type PlainDate = string;

/** Where the words of a record stand: the file, and the place of each key (`name`, `image.0.alt`). */
export interface RecordSource {
  readonly file: string;
  readonly fields: ReadonlyMap<string, Location>;
  /** The whole file, front matter and body. */
  readonly text: string;
  /** Hash of `text`: stands for the record where it is asked whether anything changed. */
  readonly digest?: string;
}

/** Running text as the author wrote it. Positions in `tree` are lines and columns of `file`. */
export interface Story {
  readonly file: string;
  /**
   * Markdown tree; links to records carry `data.target`, pictures `data.picture` (see `story.ts`).
   */
  readonly tree: Root;
  /** Hash of the text and of what its links and pictures were resolved to: stands for the tree. */
  readonly digest?: string;
  /**
   * The cycles that its links lead to or whose photos it shows, each once; where it is absent, the tree says it. With
   * it the seal need not look into trees that name nothing sealed.
   */
  readonly leadsTo?: readonly string[];
  /** What its links and pictures were resolved to, in the order of the text: known without walking the tree. */
  readonly resolved?: readonly (Target | Picture)[];
}

/** A photo with its words, as one place shows it. */
export interface Picture {
  /** Path in the content folder. */
  readonly file: string;
  readonly hash: string;
  /** Pixels after orientation. */
  readonly width: number;
  readonly height: number;
  readonly tint: string;
  readonly dominant: string;
  /** For people who cannot see it. Never empty. */
  readonly alt: string;
  readonly caption?: string;
  /** The point that a crop must keep, shares from 0 to 1 from the left and the top. */
  readonly focus?: { readonly x: number; readonly y: number };
}

/** An amount with its ISO 4217 currency. `amount` keeps the record's digits, with the currency's decimals. */
export interface Money {
  readonly amount: string;
  readonly currency: string;
}

/** What a visitor can be called to do. */
export type CallKind = (typeof CALL_KINDS)[number];

/** One way to act, as box.md words it. */
export interface CallTerms {
  readonly address: string;
  readonly text: string;
  /** Places left, for `join`, where the box counts them. */
  readonly places?: number;
  /** What a piece adds to the address so that its readers can be told apart: a query without its `?`. */
  readonly from?: Readonly<Partial<Record<Piece, string>>>;
}

/** Where the business is, in schema.org's names. */
export interface PostalAddress {
  readonly streetAddress?: string;
  readonly addressLocality?: string;
  readonly addressRegion?: string;
  readonly postalCode?: string;
  readonly addressCountry?: string;
}

/** What it costs to be sent every box. */
export interface Subscription {
  readonly name: string;
  readonly description?: string;
  readonly price: Money;
  readonly image?: Picture;
}

/** One form of the reveal. */
export type Piece = (typeof PIECES)[number];

/** Seconds that a short video lasts. */
export type ClipLength = (typeof CLIP_LENGTHS)[number];

export type CardLayout = (typeof CARD_LAYOUTS)[number];

/** What the picture cards look like. */
export interface CardLook {
  readonly layout?: CardLayout;
}

/** When the box is usually revealed. */
export interface RevealHabit {
  /** Share of the parcels that should have arrived before, above 0 and below 1. */
  readonly share?: number;
  /** ISO 8601: Monday is 1, Sunday 7. */
  readonly weekdays?: readonly number[];
  /** Local time of day, `19:00`. */
  readonly time?: string;
}

/** The business and its settings: `content/box.md`. */
export interface BoxSettings {
  readonly name: string;
  /** Absolute https or http address of the published site, ending in `/`. */
  readonly url: string;
  readonly lang: string;
  readonly timeZone: string;
  readonly currency: string;
  readonly description: string;
  readonly author: string;
  readonly email?: string;
  readonly postalAddress?: PostalAddress;
  /** Months from one cycle to the next. */
  readonly everyMonths: number;
  readonly palette: readonly string[];
  readonly logo?: Picture;
  readonly subscription?: Subscription;
  readonly calls: Partial<Record<CallKind, CallTerms>>;
  readonly call: CallKind;
  readonly revealHabit?: RevealHabit;
  /** Which forms of the reveal are made; the article alone where the record does not say. */
  readonly pieces?: readonly Piece[];
  /** Words a minute at which the owner speaks. */
  readonly pace?: number;
  readonly clip?: ClipLength;
  readonly cards?: CardLook;
  readonly profiles: readonly string[];
  /** Site paths of pages that are gone, each with the address of the site that it sends on to. */
  readonly formerly?: Readonly<Record<string, string>>;
  /** An https address, or what the owner's sending service puts one in the place of. */
  readonly unsubscribe?: string;
  readonly story: Story;
  readonly source: RecordSource;
}

interface Voice {
  readonly text: string;
  readonly name: string;
  readonly consent: PlainDate;
  /** The box was free or discounted: a connection to be disclosed. */
  readonly given: boolean;
}

/** The recording of a live. */
export interface Replay {
  readonly address: string;
  readonly recorded?: PlainDate;
  readonly minutes?: number;
  /** When each beat of the live began, in the order of the recording. */
  readonly beats?: readonly ReplayBeat[];
}

/** When one beat begins in the recording. */
export interface ReplayBeat {
  /** As the run sheet names it: `hook`, or an item's slug. */
  readonly name: string;
  /** Seconds from the start of the recording. */
  readonly at: number;
}

/** What the owner wants said at the live instead of the stories' words; every part may be left out. */
export interface LiveWords {
  /** Where it is seen while it lasts. */
  readonly address?: string;
  /** How long the live should last. */
  readonly minutes?: number;
  readonly layOut?: readonly string[];
  readonly wear?: string;
  readonly hook?: string;
  /** Questions to the people who are there, at the beginning. */
  readonly greet?: readonly string[];
  readonly about?: string;
  readonly chosen?: string;
  readonly mishap?: string;
  /** By the item's slug. */
  readonly items?: Readonly<Record<string, string>>;
  /** Questions to subscribers, between the items. */
  readonly questions?: readonly string[];
  readonly whole?: string;
  readonly peek?: string;
  readonly call?: string;
  readonly goodbye?: string;
}

/** The look at the next cycle. */
export interface Peek {
  readonly text: string;
  readonly picture?: Picture;
}

/** Pieces of an item that are sold singly. */
export interface Spare {
  /** Pieces left; 0 is sold out. */
  readonly count: number;
  readonly price: Money;
  readonly address: string;
  readonly until?: PlainDate;
}

/** What the record states so that the usual cautions can be shown. */
export interface Hazards {
  readonly categories: readonly Category[];
  /** Present, even if empty, when the record states it. */
  readonly allergens?: readonly string[];
  readonly mayContain?: readonly string[];
  readonly ingredients?: string;
  readonly toxicTo?: readonly string[];
  readonly minAge?: number;
  readonly hazards?: readonly string[];
  /** Of a blade: whether it folds or closes. */
  readonly closes?: boolean;
  /** Of a blade: whether it is no edge that is sharp, but a point. */
  readonly isPointed?: boolean;
  /** The owner's own lines. */
  readonly more: readonly string[];
}

/** One thing in the box. */
export interface Item {
  readonly slug: string;
  /** Slugs that it had before, which still lead to it. */
  readonly formerly?: readonly string[];
  /** The cycle's id. */
  readonly cycle: string;
  /** Place in the telling, from 1; the lead item is 1. */
  readonly number: number;
  readonly lead: boolean;
  readonly name: string;
  readonly kind: string;
  /** What running text calls it. */
  readonly inText: InText;
  readonly also: readonly string[];
  readonly brand: string;
  readonly description: string;
  readonly material: readonly string[];
  readonly color?: string;
  readonly size?: string;
  readonly weight?: string;
  readonly care?: string;
  /** ISO 3166-1 alpha-2. */
  readonly countryOfOrigin?: string;
  readonly price?: Money;
  readonly sku?: string;
  readonly gtin?: string;
  readonly pictures: readonly Picture[];
  readonly goesWith?: string;
  /** Its own filmed piece, for the film. */
  readonly take?: Take;
  readonly spare?: Spare;
  readonly hazards: Hazards;
  readonly story: Story;
  readonly source: RecordSource;
}

/** What a cycle's items come to, each bought by itself: the sum of their own prices. */
export interface BoxValue {
  readonly total: Money;
  /** Day of those prices. */
  readonly on: PlainDate;
}

/** A filmed piece of the owner's, as a record names it. */
export interface Take {
  /** The file's name in the cycle's `takes/`. */
  readonly name: string;
  /** Seconds from its start. */
  readonly from: number;
}

/** One sending. */
export interface Cycle {
  /** ISO 8601 month, `2026-03`: the folder's name. */
  readonly id: string;
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  readonly theme: string;
  /** The article's title, the record's own or made from the items' names. */
  readonly title: string;
  /** Titles to choose from, the first of which is used, where the record gives none. */
  readonly titles?: readonly string[];
  readonly summary: string;
  /** Last part of the article's address, without `.html`: `2026-03-first-sowings`. */
  readonly address: string;
  /** Addresses that it had before, written alike: pages there send on. */
  readonly formerly?: readonly string[];
  readonly shipped: PlainDate;
  /**
   * From when it may be shown; undefined while it waits for its parcels and nobody can know. In an open cycle
   * (`seal.ts`) it is there.
   */
  readonly reveal: Moment | undefined;
  /** There where its parcels decide when it is revealed; never before `notBefore`. */
  readonly whenDelivered?: { readonly notBefore?: Moment };
  /** Moments at which it was to be before, oldest first, where the record names any. */
  readonly moved?: readonly Moment[];
  /** Date of the last real change, where the record states one. */
  readonly updated?: PlainDate;
  readonly author: string;
  readonly palette: readonly string[];
  readonly wholeBox?: Picture;
  /** What stands at the head of the article: the record's `hero`, else the lead item's first picture, else the whole box. */
  readonly hero?: Picture;
  readonly replay?: Replay;
  readonly live?: LiveWords;
  /** Seconds that this cycle's short video lasts, where it is not the box's usual length. */
  readonly clip?: ClipLength;
  /** Filmed pieces for the film's shots that are of no one thing. */
  readonly takes?: { readonly hook?: Take; readonly whole?: Take };
  /** How its picture cards look, where they differ from the box's. */
  readonly cards?: CardLook;
  /** What the invitation says to make people come, where its record gives it. */
  readonly invitation?: { readonly hook?: string };
  /** The day on which each piece was made or went out, where the record says. */
  readonly made?: Partial<Readonly<Record<Piece, PlainDate>>>;
  readonly peek?: Peek;
  readonly voices: readonly Voice[];
  readonly call?: CallKind;
  readonly value?: BoxValue;
  /** The letter's own subject and preheader, where its record gives them. */
  readonly letter?: { readonly subject?: string; readonly preheader?: string };
  /** Lead item first, the others in the order of their files. */
  readonly items: readonly Item[];
  /** Records of things that are at fault, and so are no items yet; absent where there are none. */
  readonly itemsAtFault?: number;
  readonly story: Story;
  readonly source: RecordSource;
}

/** What people typed, as the owner's own statistics have it. */
export interface Search {
  /** As it was typed. */
  readonly phrase: string;
  /** How often; more than 0. */
  readonly count: number;
  /** Where it stands first in searches.csv. */
  readonly location: Location;
}

/** Everything that the content folder says, with all links resolved. */
export interface Box {
  readonly settings: BoxSettings;
  /** Oldest first. */
  readonly cycles: readonly Cycle[];
  /** In the order of searches.csv; empty where there is none. */
  readonly searches: readonly Search[];
}
