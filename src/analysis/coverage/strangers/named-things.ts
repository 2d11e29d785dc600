/** What is known of a cycle without its stories, as far as a thing that is not in the box is looked for. */
import type { BoxSettings, Cycle } from '../../../model/box.ts';

/** A text that says what is in the box, by the key of the record that it is the value of. */
export interface NamedText {
  readonly field: 'title' | 'summary';
  readonly text: string;
}

/** What is looked through, and what may be named in it. */
export interface NamedThings {
  readonly texts: readonly NamedText[];
  /** Names, kinds and other names of the items. */
  readonly names: readonly string[];
  /** What else the records say in a word or two: materials, colours, makers, the theme, and what box.md says of the box. */
  readonly said: readonly string[];
}

/**
 * What a cycle's records name. A title that was made of the items' names says nothing of its own. Descriptions are not
 * looked through: they call a thing by what it is like ("a dried gourd"), and of honest ones a third were found at fault.
 */
export const namedThingsOf = (
  { title, summary, theme, items, source }: Cycle,
  box: BoxSettings,
): NamedThings => ({
  texts: [
    ...(source.fields.has('title') ? [{ field: 'title', text: title } as const] : []),
    { field: 'summary', text: summary },
  ],
  names: items.flatMap(({ name, kind, also }) => [name, kind, ...also]),
  said: [
    theme,
    box.name,
    box.description,
    ...items.flatMap(({ brand, material, color }) => [brand, ...material, color ?? '']),
  ],
});
