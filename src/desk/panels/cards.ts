/** The cards among the pieces: each as it is posted, with its picture text and its link; drawn when they are asked for. */
import { type PostedCard, postedCards } from '../../pipeline/posted-cards.ts';
import type { Html } from '../../render/html.ts';
import type { PictureOutput } from '../../render/output.ts';
import { type Context, momentToSee, openedOf, shownAddress } from '../context.ts';
import type { Shown, Table } from '../table.ts';
import { type WorkView, workView } from '../work-view.ts';
import type { Working } from '../works.ts';

interface PictureView {
  readonly label: string;
  readonly shape: string;
  readonly file: string;
  readonly width: number;
  readonly height: number;
  readonly src: string;
  readonly isDrawn: boolean;
}

interface CardView
  extends Pick<PostedCard, 'number' | 'heading' | 'text' | 'link' | 'copyText' | 'copyLink'> {
  readonly pictures: readonly PictureView[];
}

interface CardsView {
  readonly words: Context['words'];
  readonly wording: Context['wording'];
  readonly token: string;
  readonly at: string;
  readonly told: string;
  readonly isDrawn: boolean;
  readonly work: WorkView | undefined;
  readonly textLang: string;
  readonly cards: readonly CardView[];
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    'desk/cards': CardsView;
  }
}

/** Pictures of a cycle's cards, all tall ones first: they are what is looked at. */
const picturesOf = (cards: readonly PostedCard[], shown: Shown, id: string): readonly PictureOutput[] => {
  const shapes = cards[0]?.pictures.length ?? 0;
  return Array.from({ length: shapes }, (_, shape) =>
    cards.flatMap(({ pictures }) => shown.pictures.get(`backroom/${id}/${pictures[shape]?.file}`) ?? []),
  ).flat();
};

const cardsIn = ({ wording, id }: Context, { input }: Shown): readonly PostedCard[] =>
  input ? postedCards(input, id, wording) : [];

/** The cards' part of the page; undefined where nothing is drawn of which they could be. */
export const cardsPart = (context: Context, shown: Shown, at: string): Html | undefined => {
  const { table, words, wording, id, token, works, settings } = context;
  const cards = cardsIn(context, shown);
  if (cards.length === 0) return undefined;
  const all = picturesOf(cards, shown, id);
  const drawn = all.filter(table.hasPicture).length;
  const state = works.cards.stateOf(id);
  const told = words.pieces.cards;
  const view = ({ shape, file, width, height, label }: PostedCard['pictures'][number]): PictureView => {
    const place = `backroom/${id}/${file}`;
    const picture = shown.pictures.get(place);
    return {
      label,
      shape,
      file: `${id}-${file.slice(file.lastIndexOf('/') + 1)}`,
      width,
      height,
      src: shownAddress(momentToSee(context), place, openedOf(context)),
      isDrawn: picture !== undefined && table.hasPicture(picture),
    };
  };
  return table.templates().render('desk/cards', {
    words,
    wording,
    token,
    at,
    told: [
      told.drawn(drawn, all.length),
      ...(state?.kind === 'stopped' && drawn < all.length ? [told.stopped] : []),
      ...(state?.kind === 'failed' ? [told.failed(state.said)] : []),
    ].join(' '),
    isDrawn: drawn === all.length,
    work: state?.kind === 'at work' ? workView(state, told.at, words) : undefined,
    textLang: settings?.lang ?? 'en',
    cards: cards.map((card) => ({ ...card, pictures: card.pictures.map(view) })),
  });
};

const draw = async (
  table: Table,
  pictures: readonly PictureOutput[],
  { onProgress, signal }: Working,
): Promise<void> => {
  const missing = pictures.filter((one) => !table.hasPicture(one));
  onProgress(0, missing.length);
  for (const [n, picture] of missing.entries()) {
    signal.throwIfAborted();
    await table.picture(picture);
    onProgress(n + 1, missing.length);
  }
};

/** Draws the cards, or stops that. */
export const actOnCards = (context: Context, shown: Shown, action: string): void => {
  const { table, works, id } = context;
  if (action === 'stop') works.cards.stop(id);
  if (action === 'draw')
    works.cards.start(id, (working) => draw(table, picturesOf(cardsIn(context, shown), shown, id), working));
};
