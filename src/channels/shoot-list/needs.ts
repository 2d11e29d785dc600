/** Which photographs a cycle's pieces want, each once for all the pieces that show it. */
import type { Cycle, Item, Piece } from '../../model/box.ts';
import { LEAST_WIDTH, UPRIGHT, WIDEST_SHOWN } from '../../model/picture-findings.ts';
import { MOST_ENLARGED, TALL_PICTURE } from '../../render/tall-picture.ts';

/** What is to be seen: the box open or closed, a thing alone, with the lead item or in use, hands and no box yet. */
export type View = 'open' | 'closed' | 'alone' | 'with lead' | 'in use' | 'hands';

export type Shape = 'upright' | 'wide';

/** Pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A picture of one piece: its size, and the least that a photo may have in that shape. */
interface Use {
  readonly piece: Piece;
  readonly size: Size;
  readonly least: Size;
}

/** A photograph that is wanted. */
export interface Need {
  readonly view: View;
  /** The thing in it; none where the whole box, or no box, is to be seen. */
  readonly item?: Item;
  readonly shape: Shape;
  /** Whether a piece stands without a picture, or with a poor one, where it is missing; else it would help. */
  readonly isNeeded: boolean;
  readonly uses: readonly Use[];
}

interface Frame {
  readonly views: readonly View[];
  readonly shape: Shape;
  readonly size: Size;
  /** How often larger than the photo's own pixels it may be drawn. */
  readonly mostEnlarged: number;
  /** Whether it is of the lead item alone. */
  readonly onlyLead?: true;
  readonly isNeeded: boolean;
}

/** What pages show may be as narrow as the findings about pictures allow. */
const PAGE_ENLARGED = WIDEST_SHOWN / LEAST_WIDTH;
/** Height over width of a wide photograph as cameras take it, 3:2. */
const CAMERA = 2 / 3;
/** The open box across a letter's column and a thing in it, three pixels for two of a screen's. */
const LETTER_ACROSS = 960;
const LETTER_BESIDE = 640;

const wideOf = (width: number): Size => ({ width, height: Math.round(width * CAMERA) });
const uprightOf = (width: number): Size => ({ width, height: Math.round(width / UPRIGHT) });

const tall = (views: readonly View[], isNeeded: boolean): Frame => ({
  ...{ views, shape: 'upright', size: TALL_PICTURE, mostEnlarged: MOST_ENLARGED, isNeeded },
});

/** What each piece shows. A piece that is not here shows no photograph. */
const FRAMES: Readonly<Partial<Record<Piece | 'cards', readonly Frame[]>>> = {
  article: [
    {
      ...{ views: ['open'], shape: 'wide', size: wideOf(WIDEST_SHOWN) },
      ...{ mostEnlarged: PAGE_ENLARGED, isNeeded: true },
    },
    {
      ...{ views: ['alone'], shape: 'upright', size: uprightOf(WIDEST_SHOWN) },
      ...{ mostEnlarged: PAGE_ENLARGED, isNeeded: true },
    },
    {
      ...{ views: ['with lead', 'in use'], shape: 'upright', size: uprightOf(WIDEST_SHOWN) },
      ...{ mostEnlarged: PAGE_ENLARGED, isNeeded: false },
    },
    // The picture of the article's link, which is cut from the one at its head.
    {
      ...{ views: ['alone'], shape: 'wide', size: { width: 1200, height: 630 } },
      ...{ mostEnlarged: 1, onlyLead: true, isNeeded: true },
    },
  ],
  letter: [
    { views: ['open'], shape: 'wide', size: wideOf(LETTER_ACROSS), mostEnlarged: 1, isNeeded: true },
    { views: ['alone'], shape: 'upright', size: uprightOf(LETTER_BESIDE), mostEnlarged: 1, isNeeded: true },
  ],
  cards: [tall(['alone', 'open'], true), tall(['with lead'], false)],
  clip: [tall(['alone', 'open'], true), tall(['with lead', 'in use', 'hands', 'closed'], false)],
};

const ceiled = ({ width, height }: Size, share: number): Size => ({
  width: Math.ceil(width / share),
  height: Math.ceil(height / share),
});

/** The things that a view is taken of, or none where it is of no single one. */
const subjectsOf = (
  view: View,
  { items }: Pick<Cycle, 'items'>,
  onlyLead: boolean,
): readonly (Item | undefined)[] => {
  switch (view) {
    case 'alone':
      return onlyLead ? items.filter(({ lead }) => lead) : items;
    case 'with lead':
      return items.some(({ lead }) => lead) ? items.filter(({ lead }) => !lead) : [];
    case 'in use':
      return items.filter(({ lead }) => lead);
    case 'open':
    case 'closed':
    case 'hands':
      return [undefined];
  }
};

/** In the order in which they are taken: while everything is clean, and the box last closed. */
const VIEWS: readonly View[] = ['open', 'alone', 'with lead', 'in use', 'hands', 'closed'];

/** Every photograph that these pieces want of a cycle, each once, in the order in which they are taken. */
export const needsOf = (cycle: Pick<Cycle, 'items'>, pieces: readonly Piece[]): readonly Need[] => {
  const needs = new Map<string, Need>();
  for (const piece of pieces)
    for (const { views, shape, size, mostEnlarged, onlyLead, isNeeded } of FRAMES[piece] ?? [])
      for (const view of views)
        for (const item of subjectsOf(view, cycle, onlyLead ?? false)) {
          const key = [view, shape, item?.slug].join();
          const before = needs.get(key);
          const use = { piece, size, least: ceiled(size, mostEnlarged) };
          needs.set(key, {
            ...{ view, shape },
            ...(item && { item }),
            isNeeded: isNeeded || (before?.isNeeded ?? false),
            uses: [...(before?.uses ?? []), use],
          });
        }
  return [...needs.values()].sort((a, b) => VIEWS.indexOf(a.view) - VIEWS.indexOf(b.view));
};

/** The pixels with which a photo serves every use: the least, and those from which nothing is lost. */
export const sizesOf = ({ uses }: Need): { readonly least: Size; readonly best: Size } => {
  const most = (sizes: readonly Size[]): Size => ({
    width: Math.max(...sizes.map(({ width }) => width)),
    height: Math.max(...sizes.map(({ height }) => height)),
  });
  return { least: most(uses.map(({ least }) => least)), best: most(uses.map(({ size }) => size)) };
};
