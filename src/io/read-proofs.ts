/** Which proofs lie in the back room, and what each was made from. */
import { open, readdir } from 'node:fs/promises';
import { join } from 'node:path';

/** Bytes of a page that hold its mark, at the head of it. */
const HEAD = 1000;
const MARK = /<meta name="lidlore-text" content="([0-9a-f]+)">/;

const headOf = async (path: string): Promise<string> => {
  const file = await open(path);
  try {
    const { buffer, bytesRead } = await file.read(Buffer.alloc(HEAD), 0, HEAD, 0);
    return buffer.toString('utf8', 0, bytesRead);
  } finally {
    await file.close();
  }
};

/** The hash that each cycle's `proof.html` was made from, by cycle; a page that does not say is left out. */
export const readProofs = async (backroom: string): Promise<ReadonlyMap<string, string>> => {
  const entries = await readdir(backroom, { withFileTypes: true }).catch(() => []);
  const proofs = new Map<string, string>();
  for (const entry of entries) {
    if (!entry.isDirectory()) continue;
    const head = await headOf(join(backroom, entry.name, 'proof.html')).catch(() => '');
    const hash = MARK.exec(head)?.[1];
    if (hash !== undefined) proofs.set(entry.name, hash);
  }
  return proofs;
};
