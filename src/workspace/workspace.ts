/**
 * One content folder, opened: its records, its box and what is wrong with them, kept up to date as files change. What
 * every command begins with.
 */
import { type ContentFolder, contentFolder } from '../io/content-folder.ts';
import type { Progress } from '../io/know-files.ts';
import { openWordNet } from '../io/wordnet.ts';
import { type Kept, nothingKept } from '../pipeline/kept.ts';
import { type Memory, memoryFor } from '../text/memory.ts';
import type { WordNet } from '../text/wordnet.ts';
import { assembler, type Snapshot } from './assemble.ts';

export interface Workspace {
  readonly folder: ContentFolder;
  readonly memory: Memory;
  /** Digest of the program. */
  readonly program: string;
  /** The dictionary of English; nothing of it is read before it is asked. */
  readonly wordnet: WordNet;
  /** What one build leaves to the next. */
  readonly kept: Kept;
  readonly snapshot: () => Snapshot;
  /**
   * Reads again what lies at these paths (relative to the folder, forward slashes), or looks at every file where none
   * are named, and does only what those that changed ask for.
   */
  readonly update: (paths?: readonly string[]) => Promise<Snapshot>;
}

export interface OpenOptions {
  /** Absolute path of the content folder. */
  readonly path: string;
  readonly memory: Memory;
  /** Digest of the program: what another one made of the same files is not taken. */
  readonly program: string;
  /** Hears of photos that are looked at. */
  readonly onPhotos?: Progress;
}

/** Opens a content folder: reads, parses and links it, as far as the memory does not know the outcome. */
export const openWorkspace = async ({
  path,
  memory: whole,
  program,
  onPhotos,
}: OpenOptions): Promise<Workspace> => {
  // A photo that was looked at is known to every program: looking takes longest of all.
  const folder = contentFolder(path, whole, onPhotos);
  const memory = memoryFor(program, whole);
  const wordnet = openWordNet();
  const { assemble } = assembler(memory, folder.readText, wordnet);
  let snapshot = await assemble(await folder.look());
  return {
    folder,
    memory,
    program,
    wordnet,
    kept: nothingKept(),
    snapshot: () => snapshot,
    update: async (paths) => {
      snapshot = await assemble(await folder.look(paths));
      return snapshot;
    },
  };
};
