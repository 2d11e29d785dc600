/** The cards' papers: the page that shows them with what goes with each, and the same words as a text file. */
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { monthName } from '../../model/calendar.ts';
import type { LiveInput } from '../../model/cues.ts';
import { fullAddress, itemDestination } from '../../render/addresses.ts';
import { documentText } from '../../render/document.ts';
import { DRAWING_SIZES, type DrawingShape, drawingJob, SAFE_AREAS } from '../../render/drawing.ts';
import { findingViews } from '../../render/findings.ts';
import type { MadeDocument, PictureOutput } from '../../render/output.ts';
import { pageLang } from '../../render/page-lang.ts';
import { paperHead } from '../../render/paper.ts';
import { typeset } from '../../render/typeset.ts';
import type { Wording } from '../../wording/wording.ts';
import type { Tools } from '../channel.ts';
import { type Card, cardDrawing, cardsOf, layoutOf } from './cards.ts';
import { cardFindings } from './findings.ts';

declare module '../../render/templates.ts' {
  interface TemplateData {
    cards: ReturnType<typeof pageView>;
  }
}

/** What the papers are made of. */
export interface CardsData {
  readonly told: LiveInput;
  readonly sealed: boolean;
}

/** Shapes that each card is drawn in, with the beginnings of their files' names. */
const SHAPES = [
  ['card', ''],
  ['pin', 'pin-'],
  ['square', 'square-'],
] as const satisfies readonly (readonly [DrawingShape, string])[];

/** "pin-02.jpg", of the second card. */
const fileName = (number: number, prefix: string): string =>
  `${prefix}${String(number).padStart(2, '0')}.jpg`;

/** What a card says and shows, for people who cannot see it. */
const pictureText = ({ entries, call }: Card, wording: Wording, lang: string): string =>
  [
    ...entries.map(({ name, lines, relation, cautions, picture }) =>
      [
        `${name}.`.replace(/([.!?…。])\.$/u, '$1'),
        ...lines.slice(0, 1),
        ...(relation === undefined ? [] : [relation]),
        ...cautions.map(({ label, text }) => `${label}: ${text}`),
        ...(picture ? [wording.cards.picture(typeset(picture.alt, lang))] : []),
      ].join(' '),
    ),
    ...(call ? [`${typeset(call.text, lang)}: ${call.address}`] : []),
  ].join('\n\n');

/** Where a card leads: its first thing's place in the article, the last one to the call. */
const linkOf = ({ entries, call }: Card, { cycle, settings }: LiveInput): string => {
  const item = entries[0]?.item;
  if (call) return call.address;
  return fullAddress(settings, itemDestination(cycle, item ?? { slug: '' })).replace(/#$/, '');
};

const percentOf = (share: number): string => `${Math.round(share * 1000) / 10}%`;

const postedCard = (card: Card, number: number, told: LiveInput, wording: Wording) => {
  const { lang } = told.settings;
  const words = wording.cards;
  return {
    number,
    heading: words.card(number, card.entries.map(({ name }) => name).join(' · ')),
    copyText: words.copyText(number),
    copyLink: words.copyLink(number),
    text: pictureText(card, wording, lang),
    link: linkOf(card, told),
    pictures: SHAPES.map(([shape, prefix]) => ({
      shape,
      file: `cards/${fileName(number, prefix)}`,
      ...DRAWING_SIZES[shape],
      label: words[shape === 'card' ? 'tall' : shape],
      size: words.size(DRAWING_SIZES[shape].width, DRAWING_SIZES[shape].height),
    })),
  };
};

/** A card as it is posted: what it is called, its words for people who cannot see it, where it leads, and its files. */
export type PostedCard = ReturnType<typeof postedCard>;

/** A cycle's cards as they are posted. */
export const postedCardsOf = (told: LiveInput, wording: Wording): readonly PostedCard[] =>
  cardsOf(told, wording).map((card, n) => postedCard(card, n + 1, told, wording));

const pageView = (
  cards: readonly Card[],
  { told, sealed }: CardsData,
  findings: readonly Diagnostic[],
  tools: Tools,
) => {
  const words = tools.wording.cards;
  const { top, bottom } = SAFE_AREAS.card;
  const { height } = DRAWING_SIZES.card;
  return {
    ...paperHead(told, words, tools),
    sealed,
    plan: words.plan(cards.length),
    covered: { top: percentOf(top / height), bottom: percentOf(bottom / height) },
    cards: cards.map((card, n) => postedCard(card, n + 1, told, tools.wording)),
    findings: findingViews(findings, tools.wording.findings),
    findingsHeading: tools.wording.invitation.findings,
  };
};

const picturesOf = (
  cards: readonly Card[],
  told: LiveInput,
  { faces }: Pick<Tools, 'faces'>,
): readonly PictureOutput[] =>
  cards.flatMap((card, n) =>
    SHAPES.map(([shape, prefix]) => ({
      where: 'backroom' as const,
      path: `${told.cycle.id}/cards/${fileName(n + 1, prefix)}`,
      picture: drawingJob(cardDrawing(card, shape, told), faces),
    })),
  );

/** The page, with the drawings that it shows and what is wrong with them. */
export const cardsPage = async (data: CardsData, tools: Tools): Promise<MadeDocument<Diagnostic>> => {
  const { told } = data;
  const cards = cardsOf(told, tools.wording);
  const diagnostics = await cardFindings(cards, told.cycle, {
    lang: told.settings.lang,
    layout: layoutOf(told),
    faces: tools.faces,
  });
  const view = pageView(cards, data, diagnostics, tools);
  return {
    content: documentText(tools.templates.render('cards', view)),
    pictures: picturesOf(cards, told, tools),
    diagnostics,
  };
};

/** Each card's picture text and link, to be copied from a phone. */
export const cardTexts = ({ told }: CardsData, { wording }: Tools): MadeDocument<Diagnostic> => {
  const { cycle, settings } = told;
  const { file, title } = wording.cards;
  const { lang } = settings;
  const head = title(
    monthName(cycle, pageLang(lang)),
    typeset(cycle.theme, lang),
    typeset(settings.name, lang),
  );
  const blocks = cardsOf(told, wording).map((card, n) =>
    [
      `${fileName(n + 1, '')} (${file.pin}: ${fileName(n + 1, 'pin-')}, ${file.square}: ${fileName(n + 1, 'square-')})`,
      `${file.text}:`,
      pictureText(card, wording, lang),
      `${file.link}: ${linkOf(card, told)}`,
    ].join('\n'),
  );
  return { content: `${[head, ...blocks].join('\n\n')}\n` };
};
