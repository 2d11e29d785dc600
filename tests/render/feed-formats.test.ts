import { spawnSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { atomText, type Feed, jsonFeedText } from '../../src/render/feed-formats.ts';
import { html, htmlSource } from '../../src/render/html.ts';
import { xml } from '../../src/render/xml.ts';
import { describeWith } from '../support/tools.ts';

const feedOf = (words: string): Feed => ({
  title: words,
  description: words,
  lang: 'en-GB',
  author: words,
  home: 'https://sill.example/',
  icon: 'https://sill.example/icon.svg',
  atomAddress: 'https://sill.example/feed.xml',
  jsonAddress: 'https://sill.example/feed.json',
  updated: '2026-03-19T19:00:00Z',
  entries: [
    {
      id: 'tag:sill.example,2026-03:/reveal',
      address: 'https://sill.example/boxes/2026-03.html',
      title: words,
      summary: words,
      author: words,
      published: '2026-03-19T19:00:00Z',
      updated: '2026-03-19T19:00:00Z',
      tags: [words],
      content: html`<p>${words}</p>`,
    },
  ],
});

describe('XML text', () => {
  // XML 1.0 §2.2: no escape makes these characters legal.
  test.each([
    ['a control', 'a\u0008b\u001bc', 'abc'],
    ['half a pair', 'a\ud83db\ude00c', 'abc'],
    ['a noncharacter', 'a\ufffeb\uffffc', 'abc'],
    ['what is legal', 'a\t\n\u0085\ud83d\ude00c', 'a\t\n\u0085\ud83d\ude00c'],
    ['signs of markup', `<&>"']]>`, '&lt;&amp;&gt;&quot;&#39;]]&gt;'],
  ])('passes over %s', (_, words, source) => {
    expect(htmlSource(xml`${words}`)).toBe(source);
  });
});

test('a JSON feed gives back what it was given', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (words) => {
      const { items, title } = JSON.parse(jsonFeedText(feedOf(words)));
      expect([title, items[0].summary, items[0].content_html]).toEqual([
        words,
        words,
        htmlSource(html`<p>${words}</p>`),
      ]);
    }),
  );
});

describeWith('xmllint', 'libxml2-utils', 'an Atom feed', () => {
  test('is well-formed whatever an author typed', () => {
    const all = Array.from({ length: 0x300 }, (_, code) => String.fromCharCode(code)).join('');
    const input = atomText(feedOf(`${all}\ud800 ]]> <!-- &amp; \ufffe`));
    const { status, stderr } = spawnSync('xmllint', ['--noout', '--nonet', '-'], { input, encoding: 'utf8' });
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  });
});
