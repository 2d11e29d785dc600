import { describe, expect, test } from 'vitest';
import type { PublicInput } from '../../src/channels/channel.ts';
import { robots } from '../../src/channels/robots.ts';
import { en } from '../../src/wording/en.ts';
import { box, settings } from '../support/box.ts';
import { carriedOut } from '../support/carried-out.ts';
import { readRobots } from '../support/read-robots.ts';

const madeFor = (url: string) =>
  carriedOut(robots, {
    box: box({
      settings: settings({
        url,
        source: {
          file: 'box.md',
          fields: new Map([['url', { file: 'box.md', line: 3, column: 6 }]]),
          text: '',
        },
      }),
    }),
    wording: en,
  } as PublicInput);

describe('robots.txt', () => {
  test.each(['https://sill.example/', 'https://sill.example/boxes/and more/'])(
    'of a site at %s names its sitemap in full and forbids nothing',
    async (url) => {
      const [output] = (await madeFor(url)).outputs;
      const rules = readRobots(
        'https://sill.example/robots.txt',
        output && 'text' in output ? output.text : '',
      );
      expect(rules.getSitemaps()).toEqual([`${url}sitemap.xml`]);
      expect(rules.isAllowed(`${url}index.html`, 'anyone')).toBe(true);
    },
  );
  test('below a domain’s root has no effect, and a note says so (RFC 9309, 2.3)', async () => {
    expect((await madeFor('https://sill.example/')).diagnostics).toEqual([]);
    expect((await madeFor('https://sill.example/box/')).diagnostics).toMatchObject([
      { weight: 'note', rule: 'robots-root', location: { file: 'box.md', line: 3, column: 6 } },
    ]);
  });
});
