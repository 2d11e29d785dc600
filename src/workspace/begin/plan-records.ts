/** Answers → the files of a box and of a cycle, as data; nothing is written here. */
import { boxSchema, cycleSchema, itemSchema } from '../../content/schemas.ts';
import type { FieldValue } from '../../content/write-yaml.ts';
import { needed } from '../../model/hazards.ts';
import { RESERVED_SLUGS } from '../../model/set-findings.ts';
import { slugOf } from '../../model/slug.ts';
import { listInWords } from '../../text/list-in-words.ts';
import { begin } from '../../wording/en/begin.ts';
import { proposeCaution } from './propose-caution.ts';
import { type BegunField, ownersNote, recordText } from './record-text.ts';

export { slugOf };

const { hints } = begin;

/** A file that is to be made. */
export interface PlannedFile {
  /** In the content folder, with forward slashes. */
  readonly path: string;
  readonly text: string;
  /** Fields that it needs and that nobody has answered yet. */
  readonly left: readonly string[];
}

const leftIn = (fields: readonly BegunField[]): readonly string[] =>
  fields.flatMap(({ key, value }) => (value === undefined ? [key] : []));

/** What is known of a box that is begun. */
export interface BoxAnswers {
  readonly name: string;
  /** What it is, in a sentence. */
  readonly about: string;
  /** Absolute address of its site. */
  readonly address: string;
  /** Whether that is one that stands in until there is a real one. */
  readonly isStandIn: boolean;
  /** BCP 47. */
  readonly lang: string;
  /** IANA. */
  readonly timeZone: string;
  /** ISO 4217. */
  readonly currency: string;
  /** Where people join; absent where they cannot yet. */
  readonly join?: string;
  /** Who signs the articles. */
  readonly author: string;
}

/** A thing of a cycle that is begun. */
export interface ThingAnswers {
  readonly name: string;
  /** Empty where nobody could tell. */
  readonly kind: string;
  /** What its list calls all its things, where it has one: the title above their names. */
  readonly among?: string;
  /** Further fields of its record. */
  readonly values: Readonly<Record<string, FieldValue>>;
  readonly story: string;
  /** For the owner alone. */
  readonly notes: readonly { readonly title: string; readonly text: string }[];
  /** Files in the cycle's photos/. */
  readonly pictures: readonly string[];
}

/** A thing of which nothing is known but its name. */
export const bareThing = (name: string, kind = ''): ThingAnswers => ({
  name,
  kind,
  values: {},
  story: '',
  notes: [],
  pictures: [],
});

/** What is known of a cycle that is begun. */
export interface CycleAnswers {
  /** `2026-03`. */
  readonly month: string;
  readonly theme: string;
  /** `YYYY-MM-DD`. */
  readonly shipped: string;
  /** As a record has it. */
  readonly reveal: string;
  /** What the cycle before said of this one. */
  readonly promised?: string;
  readonly things: readonly ThingAnswers[];
  /** Which of them is the lead item, from 0. */
  readonly lead: number;
  /** The file of a picture of the whole box. */
  readonly wholeBox?: string;
}

/** box.md. */
export const planBox = (answers: BoxAnswers): PlannedFile => {
  const { name, about, address, isStandIn, lang, timeZone, currency, join, author } = answers;
  const fields: readonly BegunField[] = [
    { key: 'name', value: name },
    { key: 'url', value: address, hint: isStandIn ? hints.standInAddress : hints.address },
    { key: 'lang', value: lang },
    { key: 'timeZone', value: timeZone },
    { key: 'currency', value: currency },
    { key: 'description', value: about },
    { key: 'author', value: author, hint: hints.author },
    ...(join === undefined
      ? []
      : [
          { key: 'calls', value: { join: { address: join, text: hints.joinText } } },
          { key: 'call', value: 'join' },
        ]),
  ];
  const text = recordText({
    schema: boxSchema,
    fields,
    further: [
      'email',
      'postalAddress',
      'every',
      'palette',
      'subscription',
      'calls',
      'call',
      'reveal',
      'pieces',
    ],
    furtherHint: hints.further,
    body: ownersNote(hints.boxBody),
  });
  return { path: 'box.md', text, left: leftIn(fields) };
};

/** A name without the measures that the card adds behind it. */
const shortName = (name: string): string => /^[^,(]*/.exec(name)?.[0].trim() || name;

/** As long as a name in an address and on every disk may be, in UTF-16 units: one takes three bytes at most. */
const MOST_SLUG = 60;

const cutSlug = (slug: string): string =>
  slug.length <= MOST_SLUG
    ? slug
    : slug.slice(0, MOST_SLUG).replace(/(?<=.{20})-[^-]*$|[\ud800-\udbff]$/u, '');

/** A name in addresses for each name: no two alike, none that is taken already and none that the page needs itself. */
export const slugsFor = (names: readonly string[], standing: readonly string[] = []): readonly string[] => {
  const taken = new Set<string>([...RESERVED_SLUGS, ...standing]);
  return names.map((name, i) => {
    const slug = cutSlug(slugOf(shortName(name)) || slugOf(name)) || `${hints.thing}-${i + 1}`;
    let free = slug;
    for (let next = 2; taken.has(free); next += 1) free = `${slug}-${next}`;
    taken.add(free);
    return free;
  });
};

/** Of a picture that nobody has described: the name is true of it, and the hint asks for more. */
const imageField = (pictures: readonly string[], name: string): readonly BegunField[] =>
  pictures.length === 0
    ? []
    : [{ key: 'image', value: pictures.map((file) => ({ file, alt: name })), hint: hints.pictureText }];

const FURTHER = [
  'also',
  'material',
  'color',
  'size',
  'weight',
  'care',
  'countryOfOrigin',
  'price',
  'image',
  'goesWith',
];

/** Known and needed fields in the order of the schema, those that are needed first. */
const fieldsOf = (
  { name, kind, among, values, pictures }: ThingAnswers,
  isLead: boolean,
): readonly BegunField[] => {
  const category = values.category === undefined ? proposeCaution({ name, kind, among }) : undefined;
  const asked = category === undefined ? [] : needed[category];
  const known = (key: string): Pick<BegunField, 'value'> =>
    values[key] === undefined ? {} : { value: values[key] };
  const first = ['brand', 'description'];
  const others = Object.keys(itemSchema.entries).filter(
    (key) => values[key] !== undefined && !first.includes(key) && !asked.some((one) => one === key),
  );
  return [
    { key: 'name', value: name },
    { key: 'kind', ...(kind !== '' && { value: kind }), hint: hints.kind },
    ...(isLead ? [{ key: 'lead', value: true }] : []),
    { key: 'brand', ...known('brand'), ...(values.brand === undefined && { hint: hints.brand }) },
    {
      key: 'description',
      ...known('description'),
      ...(values.description === undefined && { hint: hints.description }),
    },
    ...others.map((key) => ({ key, ...known(key) })),
    ...(category === undefined ? [] : [{ key: 'category', value: [category], hint: hints.category }]),
    ...asked.map((key) => ({
      key,
      ...known(key),
      ...(values[key] === undefined && { hint: hints.asked[key] ?? '' }),
    })),
    ...imageField(pictures, name),
  ];
};

const notesOf = ({ notes }: ThingAnswers): readonly string[] =>
  notes.length === 0
    ? []
    : [
        ownersNote(
          [
            hints.fromList,
            ...notes.map(({ title, text }) => (title === '' ? text : `${title}: ${text}`)),
          ].join('\n'),
        ),
      ];

const planThing = (thing: ThingAnswers, path: string, isLead: boolean): PlannedFile => {
  const fields = fieldsOf(thing, isLead);
  const text = recordText({
    schema: itemSchema,
    fields,
    further: FURTHER.filter((key) => key !== 'goesWith' || !isLead),
    furtherHint: hints.further,
    body: [...(thing.story === '' ? [ownersNote(hints.itemBody)] : [thing.story]), ...notesOf(thing)].join(
      '\n\n',
    ),
  });
  return { path, text, left: leftIn(fields) };
};

const itemPath = (month: string, number: number, slug: string): string =>
  `cycles/${month}/items/${String(number).padStart(2, '0')}-${slug}.md`;

/** The file of one thing more, after those that stand in its cycle (`standing`, their paths); the first is the lead item. */
export const planNextThing = (
  thing: ThingAnswers,
  month: string,
  standing: readonly string[],
): PlannedFile => {
  const named = standing.map((path) => /(?:^|\/)(?:(\d+)-?)?([^/]*)\.md$/i.exec(path));
  const number = Math.max(0, ...named.map((name) => Number(name?.[1] ?? 0))) + 1;
  const [slug = ''] = slugsFor(
    [thing.name],
    named.map((name) => name?.[2] ?? ''),
  );
  return planThing(thing, itemPath(month, number, slug), standing.length === 0);
};

/** Longest summary that a list of search results shows whole, as findings have it. */
const MOST_SUMMARY = 160;

/** A summary that is true: the theme and as many of the things as there is room for. */
const summaryOf = (theme: string, names: readonly string[], lang: string): string => {
  for (let count = names.length; count > 0; count -= 1) {
    const summary = `${theme}: ${listInWords(names.slice(0, count), lang)}.`;
    if ([...summary].length <= MOST_SUMMARY) return summary;
  }
  return theme;
};

/** Every file of a cycle, its record first; `lang` is the box's, BCP 47. */
export const planCycle = (answers: CycleAnswers, lang: string): readonly PlannedFile[] => {
  const { month, theme, shipped, reveal, promised, things, lead, wholeBox } = answers;
  const folder = `cycles/${month}`;
  const names = things.map(({ name }) => shortName(name));
  const body = [
    ownersNote(hints.cycleBody),
    ...(promised === undefined ? [] : [ownersNote(hints.promised(promised))]),
  ];
  const cycle = recordText({
    schema: cycleSchema,
    fields: [
      { key: 'theme', value: theme },
      { key: 'summary', value: summaryOf(theme, names, lang), hint: hints.summary },
      { key: 'shipped', value: shipped, hint: hints.shipped },
      { key: 'reveal', value: reveal, hint: hints.reveal },
      ...(wholeBox === undefined
        ? []
        : [{ key: 'photo', value: { file: wholeBox, alt: hints.wholeBox(theme) }, hint: hints.pictureText }]),
    ],
    further: ['title', 'palette', 'photo', 'peek'],
    furtherHint: hints.further,
    body: body.join('\n\n'),
  });
  const slugs = slugsFor(things.map(({ name }) => name));
  return [
    { path: `${folder}/cycle.md`, text: cycle, left: [] },
    ...things.map((thing, i) => planThing(thing, itemPath(month, i + 1, slugs[i] ?? ''), i === lead)),
  ];
};
