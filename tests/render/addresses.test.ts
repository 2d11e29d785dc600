import { describe, expect, test } from 'vitest';
import type { Target } from '../../src/model/story.ts';
import {
  absoluteAddress,
  addressFrom,
  articlePath,
  destinationOf,
  fullAddress,
  kindPagePath,
  relativeAddress,
} from '../../src/render/addresses.ts';
import { box, cycle, item, settings } from '../support/box.ts';

describe('addresses', () => {
  test.each([
    ['index.html', 'boxes/a.html'],
    ['boxes/a.html', 'boxes/b.html'],
    ['boxes/a.html', 'index.html'],
    ['boxes/a.html', 'pictures/tin-400.0123456789.avif'],
    ['a/b/c.html', 'a/d/e.html'],
  ])('from %s the way to %s is what a browser resolves back (RFC 3986 §5.2)', (from, to) => {
    const base = 'https://example.org/sub/';
    expect(new URL(relativeAddress(from, to), base + from).href).toBe(base + to);
  });
  test('the home page is named as a file on the site and by the bare address outside it', () => {
    expect(relativeAddress('boxes/a.html', 'index.html')).toBe('../index.html');
    expect(absoluteAddress(settings(), 'index.html')).toBe('https://sillandsprig.example/');
  });
  test('an article stands below boxes/', () => {
    expect(absoluteAddress(settings(), articlePath(cycle()))).toBe(
      'https://sillandsprig.example/boxes/2026-03-first-sowings.html',
    );
  });
  test('a record has a full address for readers away from the site', () => {
    const full = 'https://sillandsprig.example/boxes/2026-03-first-sowings.html';
    const addressOf = (target: Target): string | undefined => {
      const to = destinationOf(box(), target);
      return to && fullAddress(settings(), to);
    };
    expect(addressOf({ cycle: '2026-03' })).toBe(full);
    expect(addressOf({ cycle: '2026-03', item: 'plant-mister' })).toBe(`${full}#plant-mister`);
    expect(addressOf({ cycle: '2026-09' })).toBeUndefined();
    expect(addressOf({ cycle: '2026-03', item: 'no-such-thing' })).toBeUndefined();
  });
  test('a section is named by its fragment alone on its own page, and by its page elsewhere', () => {
    const to = { path: 'boxes/a b.html', fragment: 'tin' };
    expect(addressFrom('boxes/a b.html', to)).toBe('#tin');
    expect(addressFrom('boxes/c.html', to)).toBe('a%20b.html#tin');
    expect(addressFrom('boxes/a b.html', { path: 'boxes/a b.html' })).toBe('a%20b.html');
  });
  test('a kind’s page has the slug of the oldest spelling, and none while fewer than three share it', () => {
    const cycles = ['Plant Mister', 'plant misters', 'plant mister'].map((kind, i) =>
      cycle({ id: `2026-0${i + 1}`, items: [item({ cycle: `2026-0${i + 1}`, kind })] }),
    );
    expect(kindPagePath(box({ cycles }), 'plant mister')).toBe('kinds/plant-mister.html');
    expect(kindPagePath(box({ cycles: cycles.slice(1) }), 'plant mister')).toBeUndefined();
  });
});
