/** A cycle's picture cards as data: what each shows and says, before anything is laid out. */
import type { CardLayout, Cycle, Item, Picture } from '../../model/box.ts';
import { monthName } from '../../model/calendar.ts';
import { type Call, typedAddress } from '../../model/calls.ts';
import { cautionsOf, isDanger } from '../../model/cautions.ts';
import type { LiveInput } from '../../model/cues.ts';
import { paragraphsOf } from '../../model/paragraphs.ts';
import { endsSentence, namesIt } from '../../model/short-lines.ts';
import { schemesOf } from '../../render/colours.ts';
import {
  type Drawing,
  type DrawingShape,
  type DrawnCaution,
  drawingFor,
  drawnPicture,
} from '../../render/drawing.ts';
import { MOST_ENLARGED } from '../../render/tall-picture.ts';
import { typeset } from '../../render/typeset.ts';
import { graphemeCount } from '../../text/segments.ts';
import { sentencesOf } from '../../text/sentences.ts';
import type { Wording } from '../../wording/wording.ts';
import { cardGroups } from './sharing.ts';

/** One thing on a card. */
interface CardEntry {
  readonly label: string;
  readonly name: string;
  /** Whole sentences, the first that has room is shown. */
  readonly lines: readonly string[];
  readonly relation?: string;
  readonly cautions: readonly DrawnCaution[];
  readonly picture?: Picture;
  readonly item?: Item;
}

export interface Card {
  readonly entries: readonly CardEntry[];
  /** On the last one. */
  readonly call?: Call;
}

/** Signs of a line at most: five lines of a card. A choice of ours. */
const LONGEST_LINE = 170;

/** The layout without a word about it. */
const USUAL_LAYOUT: CardLayout = 'plate';

export const layoutOf = ({ cycle, settings }: Pick<LiveInput, 'cycle' | 'settings'>): CardLayout =>
  cycle.cards?.layout ?? settings.cards?.layout ?? USUAL_LAYOUT;

/** Pixels of the window that a card's picture has to fill, by layout. */
const WINDOWS: Readonly<Record<CardLayout, { readonly width: number; readonly height: number }>> = {
  plate: { width: 912, height: 912 },
  broadside: { width: 1080, height: 1080 },
};

/** Wider than this a picture is a strip of a card. */
const WIDEST = 2;

/** Pixels that a picture should have for a card, so that it is upright and never enlarged. */
export const WANTED = { width: 1080, height: 1350 } as const;

/** Whether a picture fills its part of a card. */
export const fills = ({ width, height }: Pick<Picture, 'width' | 'height'>, layout: CardLayout): boolean =>
  width * MOST_ENLARGED >= WINDOWS[layout].width &&
  height * MOST_ENLARGED >= WINDOWS[layout].height &&
  width / height <= WIDEST;

/** The first picture that fills a card, else the one that comes nearest. */
export const bestPicture = (pictures: readonly Picture[], layout: CardLayout): Picture | undefined => {
  const least = ({ width, height }: Picture): number => Math.min(width, height);
  return (
    pictures.find((picture) => fills(picture, layout)) ?? [...pictures].sort((a, b) => least(b) - least(a))[0]
  );
};

/** What can be said of an item in a line: how its story begins, where that stands by itself, and what it is. */
const linesOf = (item: Item, lang: string): readonly string[] => {
  const [paragraph] = paragraphsOf(item.story.tree, item.story.file);
  const [first] = sentencesOf(paragraph?.text ?? '', lang);
  const told = first !== undefined && namesIt(first, item, lang) ? [first] : [];
  const sentences = [...new Set([...told, ...sentencesOf(item.description, lang).slice(0, 1)])];
  return sentences.filter((one) => graphemeCount(one, lang) <= LONGEST_LINE).map(endsSentence);
};

const dangersOf = (item: Item, { cautions }: Wording, lang: string): readonly DrawnCaution[] =>
  cautionsOf(item)
    .filter(isDanger)
    .map((caution) => {
      const { label, lines } = cautions.text(caution);
      return { label: typeset(label, lang), text: lines.map((line) => typeset(line, lang)).join(' ') };
    });

const entryOf = (item: Item, label: string, told: LiveInput, wording: Wording): CardEntry => {
  const { lang } = told.settings;
  const picture = bestPicture(item.pictures, layoutOf(told));
  return {
    label,
    name: typeset(item.name, lang),
    lines: linesOf(item, lang).map((line) => typeset(line, lang)),
    ...(item.goesWith === undefined ? {} : { relation: typeset(endsSentence(item.goesWith), lang) }),
    cautions: dangersOf(item, wording, lang),
    ...(picture && { picture }),
    item,
  };
};

/** Signs that have to be on an item's card in any case. */
const needOf = ({ name, cautions }: CardEntry, lang: string): number =>
  [name, ...cautions.map(({ label, text }) => `${label}. ${text}`)].reduce(
    (sum, text) => sum + graphemeCount(text, lang),
    0,
  );

/** The name of the box and its month: what whoever meets a card alone has to know. */
export const boxAndMonth = (cycle: Cycle, settings: LiveInput['settings']): string =>
  `${typeset(settings.name, settings.lang)} · ${monthName(cycle, settings.lang)}`;

/** The cards of a cycle in the order in which they are posted. */
export const cardsOf = (told: LiveInput, wording: Wording): readonly Card[] => {
  const { cycle, settings, call } = told;
  const { lang } = settings;
  const label = boxAndMonth(cycle, settings);
  const entries = cycle.items.map((item, place) =>
    entryOf(item, place === 0 ? label : wording.cards.number(place + 1), told, wording),
  );
  const groups = cardGroups(entries.map((entry) => needOf(entry, lang)));
  const caption = cycle.wholeBox?.caption;
  const whole: Card = {
    entries: [
      {
        label,
        name: typeset(cycle.theme, lang),
        lines: caption === undefined ? [] : [typeset(endsSentence(caption), lang)],
        cautions: [],
        ...(cycle.wholeBox && { picture: cycle.wholeBox }),
      },
    ],
    ...(call && { call }),
  };
  return [
    ...groups.map((group) => ({
      entries: group.flatMap((place) => {
        const entry = entries[place];
        return entry ? [entry] : [];
      }),
    })),
    whole,
  ];
};

/** A card's drawing in a shape. */
export const cardDrawing = ({ entries, call }: Card, shape: DrawingShape, told: LiveInput): Drawing => {
  const { cycle, settings } = told;
  const { paper, wash, ink, soft, accent, onAccent, hair } = schemesOf(cycle.palette).light;
  const pictures = entries.flatMap(({ picture }) => (picture ? [picture] : []));
  return drawingFor(shape, {
    layout: layoutOf(told),
    lang: settings.lang,
    colours: { paper, wash, ink, soft, accent, onAccent, hair },
    palette: cycle.palette,
    entries: entries.map(({ label, name, lines, relation, cautions, picture }) => ({
      label,
      name,
      lines,
      ...(relation === undefined ? {} : { relation }),
      cautions,
      ...(picture && { picture: pictures.indexOf(picture) }),
    })),
    ...(call && { call: { text: typeset(call.text, settings.lang), address: typedAddress(settings, call) } }),
    pictures: pictures.map(drawnPicture),
  });
};
