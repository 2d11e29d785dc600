/** A cycle's article as passages: the same telling that is rendered, before any markup. */
import type { Cycle, Item, Picture, RecordSource } from '../../../model/box.ts';
import { type CautionWords, cautionsOf } from '../../../model/cautions.ts';
import { itemAtHead, tellingOf } from '../../../model/telling.ts';
import { type Span, sentenceSpans } from '../../../text/sentences.ts';
import type { Language } from '../../language/language.ts';
import type { Passage, PassageForm } from './passage.ts';
import { type LineColumn, type SourceText, sourceText } from './source-text.ts';
import { type Block, storyBlocks } from './story-blocks.ts';
import type { ItemSurroundings, Surroundings } from './surroundings.ts';
import type { Zone } from './zones.ts';
import { zonedWords } from './zoning.ts';

/** Cuts a text into its sentences. */
type SentenceCutter = (text: string) => readonly Span[];

interface Writing {
  readonly language: Language;
  readonly sentencesIn: SentenceCutter;
  readonly passages: Passage[];
  readonly texts: Map<string, SourceText>;
  readonly cautionText: CautionWords;
  /** Words of running text so far. */
  running: number;
}

interface Given {
  readonly form: PassageForm;
  readonly zone: Zone;
  readonly text: string | undefined;
  readonly source: RecordSource;
  readonly at: LineColumn;
  readonly item?: string;
  readonly field?: string;
  readonly links?: Block['links'];
  /** Running text begins with the opening. */
  readonly running?: boolean;
  /** Whether the author wrote these very words, so that they can be changed where they stand. */
  readonly written?: boolean;
  /** The text is not the author's: every word of it stands where what it was made from stands. */
  readonly made?: boolean;
}

const textOf = (writing: Writing, { file, text }: RecordSource): SourceText => {
  const known = writing.texts.get(file);
  if (known) return known;
  const made = sourceText(text);
  writing.texts.set(file, made);
  return made;
};

const add = (writing: Writing, given: Given): void => {
  const { form, zone, text, source, item, field, links, running = false, written = true } = given;
  if (!text) return;
  const find = given.made ? () => given.at : textOf(writing, source).from(given.at);
  const setting = {
    zone,
    ...(links ? { links } : {}),
    ...(running ? { runningBefore: writing.running } : {}),
  };
  const words = zonedWords(writing.language, text, writing.sentencesIn(text), setting, find);
  if (words.length === 0) return;
  if (running) writing.running += words.length;
  writing.passages.push({
    form,
    text,
    words,
    file: source.file,
    written,
    ...(running ? { running } : {}),
    ...(links && links.length > 0 ? { links } : {}),
    ...(item === undefined ? {} : { item }),
    ...(field === undefined ? {} : { field }),
  });
};

/** The key of a list's element; where one thing may stand for a list of one, its key has no number. */
const elementKey = (source: RecordSource, list: string, i: number): string =>
  source.fields.has(`${list}.${i}`) ? `${list}.${i}` : list;

/** Where the value of a key begins: after the key, or at once where it is an element of a list. */
const valueAt = (source: RecordSource, field: string): LineColumn => {
  const { line, column } = source.fields.get(field) ?? { line: 1, column: 1 };
  const key = field.slice(field.lastIndexOf('.') + 1);
  return { line, column: /^\d+$/.test(key) ? column : column + key.length + 1 };
};

/**
 * Fields that tell: their words may be changed for the telling's sake. A name or a material says what is so, an
 * address must stay what it is, and a voice is somebody else's.
 */
const TOLD = /^(?:title|summary|description|goesWith|peek\.text)$|\.(?:alt|caption)$/;

/** A value of a record, or what was made from others where the record has no such key. */
const addField = (
  writing: Writing,
  source: RecordSource,
  field: string,
  given: Omit<Given, 'source' | 'at' | 'field'>,
): void => {
  const running = given.form === 'paragraph' && given.zone !== 'summary' && given.written !== false;
  const made = given.made === true || !source.fields.has(field);
  const written = given.written !== false && !made && TOLD.test(field);
  add(writing, { ...given, source, at: valueAt(source, field), field, running, written, made });
};

const addPicture = (
  writing: Writing,
  source: RecordSource,
  field: string,
  picture: Picture | undefined,
  item?: string,
): void => {
  if (!picture) return;
  const of = item === undefined ? {} : { item };
  addField(writing, source, `${field}.alt`, {
    form: 'picture',
    zone: 'picture text',
    text: picture.alt,
    ...of,
  });
  addField(writing, source, `${field}.caption`, {
    form: 'caption',
    zone: 'picture text',
    text: picture.caption,
    ...of,
  });
};

const addStory = (
  writing: Writing,
  source: RecordSource,
  blocks: readonly Block[],
  zone: Zone,
  item?: string,
): void => {
  for (const { form, text, links, at, note } of blocks)
    add(writing, {
      form,
      zone: form === 'heading' ? 'heading' : form === 'picture' ? 'picture text' : zone,
      text,
      source,
      at,
      links,
      running: form === 'paragraph' && !note,
      ...(item === undefined ? {} : { item }),
    });
};

const FACTS = ['brand', 'color', 'size', 'weight', 'care'] as const;

const addItem = (
  writing: Writing,
  cycle: Cycle,
  item: Item,
  { earlier, onSale, hasKindPage }: ItemSurroundings,
): void => {
  const { source, slug } = item;
  const field = (name: string, form: PassageForm, zone: Zone, text: string | undefined, more = {}): void =>
    addField(writing, source, name, { form, zone, text, item: slug, ...more });
  // The label over the name: it heads the section, and tells nothing in it.
  field('kind', 'fact', 'heading', item.kind);
  field('name', 'heading', 'heading', item.name);
  field('description', 'paragraph', 'section', item.description);
  item.pictures.forEach((picture, i) => {
    if (picture.file !== cycle.hero?.file || itemAtHead(cycle) !== item)
      addPicture(writing, source, elementKey(source, 'image', i), picture, slug);
  });
  for (const fact of FACTS) field(fact, 'fact', 'section', item[fact]);
  for (const [i, material] of item.material.entries())
    field(elementKey(source, 'material', i), 'fact', 'section', material);
  if (onSale) field('kind', 'link', 'link text', item.kind, { written: false });
  addStory(writing, source, storyBlocks(item.story.tree), 'section', slug);
  const [lead] = cycle.items;
  if (item.goesWith && lead)
    addField(writing, lead.source, 'name', { form: 'fact', zone: 'section', text: lead.name, item: slug });
  field('goesWith', 'paragraph', 'section', item.goesWith);
  for (const { lines } of cautionsOf(item).map(writing.cautionText))
    for (const line of lines) field('kind', 'paragraph', 'section', line, { written: false, made: true });
  for (const other of earlier)
    addField(writing, other.source, 'name', {
      form: 'link',
      zone: 'link text',
      text: other.name,
      item: slug,
      written: false,
    });
  if (hasKindPage) field('kind', 'link', 'link text', item.kind, { written: false });
};

const surroundingsOfItem = ({ items }: Surroundings, cycle: Cycle, item: Item): ItemSurroundings => {
  const found = items[cycle.items.indexOf(item)];
  if (!found) throw new Error(`Expected what surrounds \`${item.slug}\` in ${cycle.id}`);
  return found;
};

/** What a machine reads of an item: its name, kind, other names and facts, once more. */
const addData = (writing: Writing, item: Item): void => {
  const data = (field: string, text: string | undefined): void =>
    addField(writing, item.source, field, {
      form: 'data',
      zone: 'structured data',
      text,
      item: item.slug,
      written: false,
    });
  data('name', item.name);
  data('kind', item.kind);
  data('description', item.description);
  for (const [i, name] of item.also.entries()) data(elementKey(item.source, 'also', i), name);
  for (const [i, name] of item.material.entries()) data(elementKey(item.source, 'material', i), name);
  data('color', item.color);
  data('brand', item.brand);
};

const addContents = (writing: Writing, cycle: Cycle): void => {
  for (const item of cycle.items)
    addField(writing, item.source, 'name', {
      form: 'link',
      zone: 'link text',
      text: item.name,
      item: item.slug,
      written: false,
    });
};

/**
 * Every passage of a cycle's article in the order of the page: head, opening, the telling's parts, and what
 * machines read. `cautionText` gives the words of the cautions that its page shows. Labels of the templates (“The
 * whole box”) are left out: they are the same on every page. They depend on the cycle, on what surrounds it and on the
 * language and its words for cautions, and on nothing else. Where nobody asks for sentences, another cutter may be given.
 */
export const passagesOf = (
  cycle: Cycle,
  surroundings: Surroundings,
  language: Language,
  cautionText: CautionWords,
  sentencesIn: SentenceCutter = (text) => sentenceSpans(text, language.tag),
): readonly Passage[] => {
  const writing: Writing = {
    language,
    sentencesIn,
    passages: [],
    texts: new Map(),
    cautionText,
    running: 0,
  };
  const { source } = cycle;
  const field = (name: string, form: PassageForm, zone: Zone, text: string | undefined): void =>
    addField(writing, source, name, { form, zone, text });
  field('title', 'title', 'title', cycle.title);
  field('address', 'address', 'address', cycle.address);
  field('theme', 'fact', 'body', cycle.theme);
  field('summary', 'paragraph', 'summary', cycle.summary);
  addContents(writing, cycle);
  const shown = itemAtHead(cycle);
  if (shown) {
    const at = shown.pictures.findIndex(({ file }) => file === cycle.hero?.file);
    addPicture(writing, shown.source, elementKey(shown.source, 'image', at), cycle.hero, shown.slug);
  } else addPicture(writing, source, source.fields.has('hero') ? 'hero' : 'photo', cycle.hero);

  for (const part of tellingOf(cycle).parts) {
    switch (part.part) {
      case 'prose':
        addStory(writing, source, storyBlocks(part.tree), 'body');
        break;
      case 'item':
        addItem(writing, cycle, part.item, surroundingsOfItem(surroundings, cycle, part.item));
        break;
      case 'box':
        if (cycle.wholeBox?.file !== cycle.hero?.file) addPicture(writing, source, 'photo', cycle.wholeBox);
        addContents(writing, cycle);
        break;
      case 'voices':
        cycle.voices.forEach(({ text, name }, i) => {
          field(`voices.${i}.text`, 'paragraph', 'body', text);
          field(`voices.${i}.name`, 'caption', 'body', name);
        });
        break;
      case 'peek':
        field('peek.text', 'paragraph', 'body', cycle.peek?.text);
        addPicture(writing, source, 'peek.picture', cycle.peek?.picture);
        break;
      case 'call': {
        const { call, settings } = surroundings;
        if (!call) break;
        const own = settings.source;
        const given = { form: 'paragraph', zone: 'body', written: false } as const;
        addField(writing, own, 'description', { ...given, text: settings.description });
        addField(writing, own, `calls.${call.kind}.text`, {
          form: 'link',
          zone: 'link text',
          text: call.text,
          written: false,
        });
      }
    }
  }
  for (const item of cycle.items) addData(writing, item);
  return writing.passages;
};
