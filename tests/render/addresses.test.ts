import { describe, expect, test } from 'vitest';
import { absoluteAddress, articlePath, relativeAddress } from '../../src/render/addresses.ts';
import { cycle, settings } from '../support/box.ts';

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
});
