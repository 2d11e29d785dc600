/** The words that fields of records may choose from. Schemas, types and tables are all made from these lists. */

/** What a visitor can be called to do. */
export const CALL_KINDS = ['join', 'waitList', 'spare'] as const;

/** Forms of the reveal, in the order in which it is told. */
export const PIECES = ['invitation', 'live', 'article', 'letter', 'clip', 'cards'] as const;

/** Lengths that short videos are asked for in, in seconds. Common practice, no source. */
export const CLIP_LENGTHS = [15, 30, 60] as const;

/** How picture cards are laid out: words beside a mounted plate, or a sheet that its picture fills. */
export const CARD_LAYOUTS = ['plate', 'broadside'] as const;

/** Where an item can hurt somebody. */
export const CATEGORIES = ['food', 'drink', 'cosmetic', 'candle', 'blade', 'plant', 'children'] as const;
export type Category = (typeof CATEGORIES)[number];

/** What stands at an address of the site: an article, an item's section in it, a kind's page, or a page that sends on. */
export const ADDRESS_SORTS = ['article', 'item', 'kind', 'page'] as const;
