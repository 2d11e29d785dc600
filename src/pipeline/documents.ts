/**
 * Documents by key: each is made once for all that it is made of, and remembered. Nothing else decides whether a file is
 * made anew: a second build, a watcher and a build that is split over machines all ask the same key.
 */
import type { PlannedDocument, PlannedFragment, Tools } from '../channels/channel.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { PictureOutput, Step, Where } from '../render/output.ts';
import { digestOf } from '../text/digest.ts';
import { keepData, type Memory, recallData } from '../text/memory.ts';

/** A document that a build wants, under the key of all that it is made of. */
export interface KeyedDocument {
  readonly where: Where;
  readonly path: string;
  readonly step: Step;
  readonly key: string;
  readonly planned: PlannedDocument;
}

/** What is known of a made document without its content. */
export interface MadeFacts {
  readonly pictures: readonly PictureOutput[];
  readonly diagnostics: readonly Diagnostic[];
  /** Text is written as UTF-8; bytes as they are. */
  readonly text: boolean;
}

/** What all keys of a build have in common: another program, wording or template gives other files. */
export interface Making {
  readonly memory: Memory;
  readonly tools: Tools;
  /** Digest of the program, its wording among it, and of every template. */
  readonly tooling: string;
}

type Keyed = Pick<PlannedDocument, 'data' | 'of'>;

/** The key of a document or a fragment under some tooling. `name` says which it is. */
export const keyOf = (name: string, { data, of = [] }: Keyed, tooling: string): string =>
  digestOf(
    tooling,
    name,
    data,
    of.map((fragment) => fragmentKey(fragment, tooling)),
  );

const fragmentKey = (fragment: PlannedFragment, tooling: string): string =>
  keyOf(`fragment ${fragment.name}`, fragment, tooling);

const factsKey = (key: string): string => digestOf('facts', key);

/** What is remembered of a document; undefined where it has to be made. */
export const recallFacts = (key: string, { memory }: Making): MadeFacts | undefined =>
  memory.has(key) ? (recallData(memory, factsKey(key)) as MadeFacts | undefined) : undefined;

const encoder = new TextEncoder();
const decoder = new TextDecoder();

/** Makes a document or a fragment, its own fragments first, and remembers it. */
const makeUnder = async (
  key: string,
  { make, of = [] }: Pick<PlannedDocument, 'make' | 'of'>,
  making: Making,
): Promise<MadeFacts> => {
  const parts: MadeFacts[] = [];
  const contents: string[] = [];
  for (const fragment of of) {
    const own = fragmentKey(fragment, making.tooling);
    const known = recallFacts(own, making);
    const content = known && making.memory.recall(own);
    if (known && content) {
      parts.push(known);
      contents.push(decoder.decode(content));
      continue;
    }
    parts.push(await makeUnder(own, fragment, making));
    const made = making.memory.recall(own);
    if (!made)
      throw new Error(`Expected the fragment ${fragment.name} to be remembered while its document is made`);
    contents.push(decoder.decode(made));
  }
  const { content, pictures = [], diagnostics = [] } = await make(making.tools, contents);
  const facts: MadeFacts = {
    pictures: [...pictures, ...parts.flatMap((part) => part.pictures)],
    diagnostics: [...diagnostics, ...parts.flatMap((part) => part.diagnostics)],
    text: typeof content === 'string',
  };
  making.memory.keep(key, typeof content === 'string' ? encoder.encode(content) : content);
  keepData(making.memory, factsKey(key), facts);
  return facts;
};

/** What a document is known by: from the memory, or from making it. */
export const factsOf = async ({ key, planned }: KeyedDocument, making: Making): Promise<MadeFacts> =>
  recallFacts(key, making) ?? makeUnder(key, planned, making);

/** A document's content; it is made again where what was remembered is damaged. */
export const contentOf = async (document: KeyedDocument, making: Making): Promise<Uint8Array> => {
  const { key, planned } = document;
  const known = making.memory.recall(key);
  if (known) return known;
  await makeUnder(key, planned, making);
  const made = making.memory.recall(key);
  if (!made) throw new Error(`Expected ${document.path} to be remembered once it is made`);
  return made;
};
