/** A memory whose values are sound as bytes, and wrong inside. */
import { closeSync, openSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { entriesIn, PACK_HEAD, packedEntry } from '../../src/io/memory/pack.ts';
import type { Chance } from './seeded.ts';

/** What one value of a memory becomes. */
export type Change = (value: Buffer, chance: Chance) => Uint8Array;

/** Values that are read as JSON, and others. */
const isJson = (value: Buffer): boolean => /^[[{"]/.test(value.toString('latin1', 0, 1));

/** Writes every value of the packs in a folder anew, some of them changed, each with a checksum that is right; gives how many. */
export const rewriteMemory = (folder: string, share: number, chance: Chance, change: Change): number => {
  let changed = 0;
  for (const name of readdirSync(folder).filter((one) => one.endsWith('.pack'))) {
    const path = join(folder, name);
    const file = openSync(path, 'r');
    const bytes = readFileSync(path);
    const entries = entriesIn(file, bytes.length);
    closeSync(file);
    const pieces = entries.flatMap(({ key, offset, length }) => {
      const value = bytes.subarray(offset, offset + length);
      const other = chance.share() < share ? change(value, chance) : value;
      if (!value.equals(other)) changed += 1;
      return packedEntry(key, other);
    });
    writeFileSync(path, Buffer.concat([PACK_HEAD, ...pieces]));
    rmSync(`${path}.list`, { force: true });
  }
  return changed;
};

/** Some node of a value in JSON becomes another. */
export const someNode =
  (other: unknown): Change =>
  (value, chance) => {
    if (!isJson(value)) return value;
    const nodes: [Record<string, unknown>, string][] = [];
    let whole: unknown;
    try {
      whole = JSON.parse(value.toString());
    } catch {
      return value;
    }
    const visit = (node: unknown): void => {
      if (node === null || typeof node !== 'object') return;
      for (const key of Object.keys(node)) {
        nodes.push([node as Record<string, unknown>, key]);
        visit((node as Record<string, unknown>)[key]);
      }
    };
    visit(whole);
    if (nodes.length === 0) return value;
    const [node, key] = chance.one(nodes);
    if (other === undefined) delete node[key];
    else node[key] = other;
    return Buffer.from(JSON.stringify(whole));
  };
