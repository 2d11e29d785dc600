/** What a story's HTML may hold: GitHub's list, less what stories never need, plus what our dressing adds. */

import type { Schema } from 'hast-util-sanitize';
import { defaultSchema } from 'hast-util-sanitize';
import { literal } from '../text/literal-pattern.ts';

const given = defaultSchema.attributes ?? {};
const headings = ['h2', 'h3', 'h4'] as const;

/** Attributes that no author can write, since raw HTML never reaches the tree, and that we do not use either. */
const unused = new Set(['id', 'name']);

/**
 * The schema for one story. Ids are only those of its notes, which already start with `idPrefix`: both ends of a
 * note's link are made from it, so nothing is prefixed a second time.
 */
export const storySchema = (idPrefix: string): Schema => {
  const ours = new RegExp(`^${literal(idPrefix)}`);
  return {
    ...defaultSchema,
    clobber: [],
    clobberPrefix: idPrefix,
    tagNames: [...(defaultSchema.tagNames ?? []), 'figure', 'figcaption', 'picture', 'source'],
    protocols: { ...defaultSchema.protocols, href: [...(defaultSchema.protocols?.href ?? []), 'tel'] },
    attributes: {
      ...given,
      '*': (given['*'] ?? []).filter((name) => typeof name !== 'string' || !unused.has(name)),
      a: [...(given.a ?? []).filter((name) => name !== 'ariaDescribedBy'), ['id', ours], ['rel', 'noopener']],
      li: [...(given.li ?? []), ['id', ours]],
      div: [['className', 'table'], ['tabIndex', 0], ['role', 'group'], 'ariaLabel'],
      source: ['type', 'srcSet', 'sizes'],
      img: [
        'src',
        'srcSet',
        'sizes',
        'width',
        'height',
        ['loading', 'lazy'],
        ['decoding', 'async'],
        ['dataTint', /^#[0-9a-f]{6}$/i],
      ],
      ...Object.fromEntries(headings.map((name) => [name, [['className', 'visually-hidden']]])),
    },
  };
};
