/**
 * Documents by key: each is made once for all that it is made of, and remembered. Nothing else decides whether a file is
 * made anew: a second build, a watcher and a build that is split over machines all ask for the same keys.
 */
import type { PlannedDocument, PlannedFragment, Tools } from '../channels/channel.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { FilmOutput } from '../render/film.ts';
import type { PictureOutput, Step, Where } from '../render/output.ts';
import { digestOf } from '../text/digest.ts';
import type { Generations } from '../text/generations.ts';
import { keepData, type Memory, recallData } from '../text/memory.ts';
import { utf8Bytes, utf8Text } from '../text/utf8.ts';

/** A document that a build wants, under the key of all that it is made of. */
export interface KeyedDocument {
  readonly where: Where;
  readonly path: string;
  readonly step: Step;
  readonly key: string;
  readonly planned: PlannedDocument;
}

/** A file whose name follows from its content. */
export interface NamedFragment {
  readonly path: string;
  readonly key: string;
}

/** What is known of a made document or fragment without its content. */
export interface MadeFacts {
  readonly pictures: readonly PictureOutput[];
  readonly films: readonly FilmOutput[];
  readonly diagnostics: readonly Diagnostic[];
  /** Fragments of it that are published by themselves. */
  readonly named: readonly NamedFragment[];
}

/** What all documents of a build have in common: another program, wording or template gives other files. */
export interface Making {
  readonly memory: Memory;
  /** What this process knows of documents by their keys, so that it is not read anew at each build. */
  readonly known: Generations<MadeFacts | undefined>;
  readonly tools: Tools;
  /** Digest of the program, its wording among it, and of every template. */
  readonly tooling: string;
}

type Keyed = Pick<PlannedDocument, 'data' | 'of'>;

const fragmentKeys = new WeakMap<PlannedFragment, string>();

const fragmentKey = (fragment: PlannedFragment, tooling: string): string => {
  const before = fragmentKeys.get(fragment);
  if (before !== undefined) return before;
  const key = keyOf(`fragment ${fragment.name}`, fragment, tooling);
  fragmentKeys.set(fragment, key);
  return key;
};

/** The key of a document or a fragment. `name` says which it is. */
export const keyOf = (name: string, { data, of = [] }: Keyed, tooling: string): string =>
  digestOf(
    tooling,
    name,
    data,
    of.map((fragment) => fragmentKey(fragment, tooling)),
  );

const factsKey = (key: string): string => `facts ${key}`;

/** What is remembered under a key; undefined where it has to be made. */
const recallFacts = (key: string, { memory, known }: Making): MadeFacts | undefined => {
  const there = factsKey(key);
  // Both are asked for, because what nobody asks for is forgotten.
  return memory.has(key) && memory.has(there)
    ? known.get(key, () => recallData(memory, there) as MadeFacts | undefined)
    : undefined;
};

interface Made {
  readonly facts: MadeFacts;
  readonly content: () => string;
}

/** A fragment, remembered or made. */
const fragmentOf = async (fragment: PlannedFragment, making: Making): Promise<Made> => {
  const key = fragmentKey(fragment, making.tooling);
  const known = recallFacts(key, making);
  const content = known && making.memory.recall(key);
  if (known && content) return { facts: known, content: () => utf8Text(content) };
  const made = await make(key, fragment, making, fragment.pathOf);
  return { facts: made.facts, content: () => utf8Text(made.content) };
};

/** Makes a document or a fragment, its own fragments first, and remembers it. */
const make = async (
  key: string,
  planned: Pick<PlannedDocument, 'make' | 'of'>,
  making: Making,
  pathOf?: PlannedFragment['pathOf'],
): Promise<{ readonly facts: MadeFacts; readonly content: Uint8Array }> => {
  const parts: Made[] = [];
  for (const fragment of planned.of ?? []) parts.push(await fragmentOf(fragment, making));
  const made = await planned.make(
    making.tools,
    parts.map((part) => part.content()),
  );
  const { content, pictures = [], films = [], diagnostics = [] } = made;
  const own = pathOf && typeof content === 'string' ? [{ path: pathOf(content), key }] : [];
  const facts: MadeFacts = {
    pictures: [...pictures, ...parts.flatMap((part) => part.facts.pictures)],
    films: [...films, ...parts.flatMap((part) => part.facts.films)],
    diagnostics: [...diagnostics, ...parts.flatMap((part) => part.facts.diagnostics)],
    named: [...own, ...parts.flatMap((part) => part.facts.named)],
  };
  const bytes = typeof content === 'string' ? utf8Bytes(content) : content;
  making.memory.keep(key, bytes);
  keepData(making.memory, factsKey(key), facts);
  return { facts, content: bytes };
};

/** What a document is known by, and whether it had to be made. */
export const factsOf = async (
  { key, planned }: KeyedDocument,
  making: Making,
): Promise<{ readonly facts: MadeFacts; readonly isNew: boolean }> => {
  const known = recallFacts(key, making);
  return known
    ? { facts: known, isNew: false }
    : { facts: (await make(key, planned, making)).facts, isNew: true };
};

/** A document's content; it is made again where what was remembered is damaged. */
export const contentOf = async ({ key, planned }: KeyedDocument, making: Making): Promise<Uint8Array> =>
  making.memory.recall(key) ?? (await make(key, planned, making)).content;
