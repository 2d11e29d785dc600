/**
 * What an author wrote is shown or named in a finding. The reader below shares no code with what made the files: it takes
 * the tags out of a page and looks for words.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { temporary } from '../io/temporary.ts';
import { seeded } from '../support/seeded.ts';
import { toldBox, type Written } from '../support/told-box.ts';
import { filesBelow } from '../support/tools.ts';
import { lidlore } from './terminal.ts';

const SEEDS = [1, 2];

/** A page as it is read: its text, and the words for people who cannot see its pictures; no script, no style, no address. */
const read = (page: string): string => {
  const body = page
    .replace(/<(script|style|template|head)\b[\s\S]*?<\/\1>/gi, ' ')
    .replace(/<!--[\s\S]*?-->/g, ' ');
  const alts = [...body.matchAll(/\balt="([^"]*)"/g)].map(([, alt]) => alt).join(' ');
  return `${body.replace(/<[^>]*>/g, ' ')} ${alts}`.toLowerCase();
};

/** Pages of a folder that match, as they are read. The proof is left out: it is about the article, not a piece of it. */
const pagesIn = (folder: string, names: RegExp): string =>
  filesBelow(folder)
    .filter((path) => names.test(path) && !path.includes('proof'))
    .map((path) => {
      const text = readFileSync(join(folder, path), 'utf8');
      return path.endsWith('.html') ? read(text) : text.toLowerCase();
    })
    .join('\n');

/** Which texts are neither in their place nor named, by what was said of the build. */
const lost = (written: readonly Written[], dir: string, said: string): readonly string[] => {
  // Articles alone: what a catalogue's entry shows would not make up for a gap in the article.
  const texts = {
    site: pagesIn(join(dir, 'site'), /^boxes\/.*\.html$/),
    backroom: pagesIn(join(dir, 'backroom'), /\.(?:html|txt|eml|ics|vtt)$/),
  };
  return written
    .filter(({ mark, where }) => !texts[where].includes(mark) && !said.includes(mark))
    .map(({ field, mark }) => `${field}: ${mark}`);
};

describe('nothing that was written leaves in silence', () => {
  test.each(SEEDS)('a year as chance %i has it', { timeout: 240_000 }, async (seed) => {
    const { files, written } = await toldBox(seeded(seed));
    const dir = await temporary(files);
    const { status, stdout, stderr } = await lidlore(
      dir,
      ...['build', '--as-of', '2026-03-27', '--json', '--without', 'proof,film'],
    );
    expect({ status, stderr }).toMatchObject({ status: 0 });
    expect(written.length).toBeGreaterThan(400);
    expect(new Set(written.map(({ mark }) => mark)).size).toBe(written.length);
    expect(lost(written, dir, stdout.toLowerCase())).toEqual([]);
  });
});
