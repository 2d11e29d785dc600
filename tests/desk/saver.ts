/** A process of its own that saves as the desk does, without an end: `node saver.cjs CONTENT HISTORY`. Says each save once it is made. */
import { writeSync } from 'node:fs';
import { openHistory } from '../../src/io/history.ts';
import { stateOf } from '../../src/io/owned-files.ts';

const [, , content = '', folder = ''] = process.argv;
const history = openHistory(folder, content);

/** As long as a record's text, and told apart by its number. */
const textOf = (save: number): Uint8Array =>
  Buffer.from(`save ${save}\n${'word '.repeat(save % 900)}\nend of ${save}\n`);

const before = stateOf(content, 'box.md');
let seen = before?.hash ?? null;
let save = Number(/^save (\d+)/.exec(before ? Buffer.from(before.bytes).toString() : '')?.[1] ?? 0);
for (;;) {
  save += 1;
  const written = history.change({ path: 'box.md', seen, bytes: textOf(save), about: ['name'] });
  if (written.kind !== 'written') throw new Error(`Expected save ${save} to be made, found ${written.kind}`);
  seen = written.hash;
  writeSync(1, `${save}\n`);
}
