/**
 * A content folder held open while its author writes: `node held-open.cjs CONTENT EDITS TEMPLATES SCRIPTS AS-OF` prints
 * what each edit took from the end of its write to the end of its publishing, as JSON. The site and the back room lie
 * beside the content.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { openMemory } from '../../src/io/memory/open-memory.ts';
import { rememberedPictures } from '../../src/io/memory/remembered-pictures.ts';
import { readTemplates } from '../../src/io/read-templates.ts';
import type { Memory } from '../../src/text/memory.ts';
import { type BuildOutcome, buildInto } from '../../src/workspace/build-into.ts';
import { openWorkspace } from '../../src/workspace/workspace.ts';
import type { EditTime } from './edit-latency.ts';

const [path = '', edits = '', own = '', scripts = '', asOf = ''] = process.argv.slice(2);

/** Stories from one edit to the next; a prime, so that every story has its turn. */
const STRIDE = 17;

/** A word that no text has, another one for each edit. */
const newWord = (edit: number): string =>
  `quiet${[...String(edit)].map((digit) => 'abcdefghij'[Number(digit)]).join('')}`;

const beside = (name: string): string => join(path, '..', name);

/** Fails where nothing was published, because then there was nothing to wait for. */
const checkPublished = (outcome: BuildOutcome): void => {
  if (outcome.kind !== 'published')
    throw new Error(`Expected a build, found ${outcome.kind}: ${JSON.stringify(outcome.diagnostics[0])}`);
};

const timesOf = async (memory: Memory): Promise<readonly EditTime[]> => {
  const workspace = await openWorkspace({ path, memory, program: 'held open' });
  const templates = readTemplates({ own, scripts });
  const pictures = rememberedPictures(join(beside('.lidlore'), 'pictures'));
  const build = (): Promise<BuildOutcome> =>
    buildInto(workspace, {
      asOf: Date.parse(asOf),
      folders: { site: beside('site'), backroom: beside('backroom') },
      templates,
      pictures,
      films: { made: rememberedPictures(join(beside('.lidlore'), 'films')), cycles: [] },
    });
  const articleOf = (story: string): string => {
    const cycle = workspace.snapshot().box?.cycles.find(({ id }) => story.startsWith(`cycles/${id}/`));
    if (!cycle) throw new Error(`Expected the box to hold the cycle of ${story}`);
    return readFileSync(join(beside('site'), 'boxes', `${cycle.address}.html`), 'utf8');
  };

  checkPublished(await build());
  const stories = [...workspace.snapshot().files.keys()].filter((file) => /\/items\/.*\.md$/.test(file));
  const times: EditTime[] = [];
  for (let edit = 0; edit < Number(edits); edit += 1) {
    // All over the box, in its oldest and its newest cycles alike.
    const story = stories[(edit * STRIDE) % stories.length] ?? '';
    const text = readFileSync(join(path, story), 'utf8');
    const word = newWord(edit);
    writeFileSync(join(path, story), text.replace(/(?: quiet[a-j]+)?\n*$/, ` ${word}\n`));
    const [began, before] = [performance.now(), process.cpuUsage()];
    await workspace.update([story]);
    const outcome = await build();
    const { user, system } = process.cpuUsage(before);
    times.push({ wall: performance.now() - began, cpu: (user + system) / 1000 });
    checkPublished(outcome);
    if (!articleOf(story).includes(word)) throw new Error(`Expected ${word} in the article of ${story}`);
  }
  return times;
};

const memory = openMemory(beside('.lidlore'));
timesOf(memory).then((times) => {
  memory.close();
  process.stdout.write(JSON.stringify(times));
});
