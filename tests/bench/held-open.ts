/**
 * A content folder held open while its author writes: `node held-open.cjs CONTENT EDITS TEMPLATES SCRIPTS AS-OF` prints
 * the milliseconds from the end of each write to the end of its publishing, as JSON. The site and the back room lie
 * beside the content.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { openMemory } from '../../src/io/memory/open-memory.ts';
import { rememberedPictures } from '../../src/io/memory/remembered-pictures.ts';
import { readTemplates } from '../../src/io/read-templates.ts';
import { type BuildOutcome, buildInto } from '../../src/workspace/build-into.ts';
import { openWorkspace } from '../../src/workspace/workspace.ts';

const [path = '', edits = '', own = '', scripts = '', asOf = ''] = process.argv.slice(2);

/** A word that no text has, another one for each edit. */
const newWord = (edit: number): string =>
  `quiet${[...String(edit)].map((digit) => 'abcdefghij'[Number(digit)]).join('')}`;

const beside = (name: string): string => join(path, '..', name);

const memory = openMemory(beside('.lidlore'));
const workspace = await openWorkspace({ path, memory });
const templates = readTemplates({ own, scripts });
const pictures = rememberedPictures(join(beside('.lidlore'), 'pictures'));
const build = (): Promise<BuildOutcome> =>
  buildInto(workspace, {
    asOf: Date.parse(asOf),
    folders: { site: beside('site'), backroom: beside('backroom') },
    templates,
    pictures,
    program: 'held open',
  });

/** Fails where nothing was published: then there was nothing to wait for. */
const published = (outcome: BuildOutcome): void => {
  if (outcome.kind !== 'published')
    throw new Error(`Expected a build, found ${outcome.kind}: ${JSON.stringify(outcome.diagnostics[0])}`);
};

const addressOf = (cycle: string): string => {
  const found = workspace.snapshot().box?.cycles.find(({ id }) => id === cycle);
  if (!found) throw new Error(`Expected the box to hold ${cycle}`);
  return found.address;
};

published(await build());
const stories = [...workspace.snapshot().files.keys()].filter((file) => /\/items\/.*\.md$/.test(file)).sort();
const times: number[] = [];
for (let edit = 0; edit < Number(edits); edit += 1) {
  // All over the box, the oldest and the newest cycles alike: 17 and the number of stories have no divisor in common.
  const story = stories[(edit * 17) % stories.length] ?? '';
  const text = readFileSync(join(path, story), 'utf8');
  const word = newWord(edit);
  const changed = text.replace(/(?: quiet[a-j]+)?\n*$/, ` ${word}\n`);
  writeFileSync(join(path, story), changed);
  const began = performance.now();
  await workspace.update([story]);
  const outcome = await build();
  times.push(performance.now() - began);
  published(outcome);
  const article = `boxes/${addressOf(story.split('/')[1] ?? '')}.html`;
  if (!readFileSync(join(beside('site'), article), 'utf8').includes(word))
    throw new Error(`Expected ${word} in ${article}`);
}
memory.close();
process.stdout.write(JSON.stringify(times));
