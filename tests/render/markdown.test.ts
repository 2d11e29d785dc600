import type { Image, Link, Root } from 'mdast';
import { visit } from 'unist-util-visit';
import { describe, expect, test } from 'vitest';
import { parseMarkdown } from '../../src/content/markdown.ts';
import { htmlSource } from '../../src/render/html.ts';
import { renderStory, type StoryOptions } from '../../src/render/markdown.ts';
import { en } from '../../src/wording/en.ts';
import { picture } from '../support/box.ts';

const parse = (text: string): Root => parseMarkdown(text);
const options: StoryOptions = {
  page: 'boxes/a.html',
  idPrefix: 'mister-',
  topHeading: 3,
  addressOf: ({ cycle }) => (cycle === '2026-02' ? 'b.html#tin' : undefined),
  layout: { name: 'plate', widths: [400], sizes: '100vw' },
  lang: 'en',
  words: en.site.story,
};
const render = (tree: Root | string, more: Partial<StoryOptions> = {}) =>
  renderStory(typeof tree === 'string' ? parse(tree) : tree, { ...options, ...more });
const source = (tree: Root | string, more: Partial<StoryOptions> = {}) => htmlSource(render(tree, more).html);

const withLinks = (text: string, data: Link['data']): Root => {
  const tree = parse(text);
  visit(tree, 'link', (node) => {
    if (data) node.data = data;
  });
  return tree;
};
const withPictures = (text: string): Root => {
  const tree = parse(text);
  visit(tree, 'image', (node: Image) => {
    node.data = { picture: picture() };
  });
  return tree;
};

describe('a story', () => {
  test('links to a record by its address on the site', () => {
    expect(source(withLinks('the [tin](x.md)', { target: { cycle: '2026-02', item: 'tin' } }))).toBe(
      '<p>the <a href="b.html#tin">tin</a></p>\n',
    );
  });
  test.each([
    ['has no address', { target: { cycle: '2026-09' } }],
    ['may not be shown yet', { target: { cycle: '2026-02' }, dropped: true }],
  ])('keeps the words of a link whose record %s', (_, data) => {
    expect(source(withLinks('the [*old* tin](x.md) here', data))).toBe('<p>the <em>old</em> tin here</p>\n');
  });
  test('marks links that leave the site', () => {
    expect(source('[a](https://example.org/)')).toContain('<a href="https://example.org/" rel="noopener">');
  });
  test('shows a picture alone in its paragraph as a figure with its caption', () => {
    const { html, outputs } = render(withPictures('![A "mister"](a.jpg "It\'s brass")'));
    expect(htmlSource(html)).toMatch(
      /^<figure><picture><source .*><img .*><\/picture><figcaption>It’s brass<\/figcaption><\/figure>/,
    );
    expect(htmlSource(html)).toContain('data-tint="#8a9a7b"');
    expect(htmlSource(html)).toContain('loading="lazy"');
    const named = new Set(htmlSource(html).match(/pictures\/[^\s",]+/g));
    expect(named).toEqual(new Set(outputs.map((output) => output.path)));
  });
  test('keeps a picture among words within them', () => {
    expect(source(withPictures('see ![x](a.jpg) here'))).toMatch(/^<p>see <picture>.*<\/picture> here<\/p>/);
  });
  test('has headings that begin at the given level and skip none', () => {
    expect(source('## a\n\n#### b\n\n### c\n\n## d').match(/<h\d>/g)).toEqual([
      '<h3>',
      '<h4>',
      '<h4>',
      '<h3>',
    ]);
  });
  test('has notes whose links lead both ways and whose ids are the story’s own', () => {
    const made = source('a[^1] b[^1]\n\n[^1]: note');
    const ids = new Set([...made.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id));
    const hrefs = [...made.matchAll(/ href="#([^"]+)"/g)].map(([, href]) => href);
    expect(hrefs).toHaveLength(4);
    for (const href of hrefs) expect(ids).toContain(href);
    for (const id of ids) expect(id).toMatch(/^mister-/);
    expect(made).toContain('<h3 class="visually-hidden">Notes</h3>');
    expect(made).not.toContain('aria-describedby');
  });
  // GFM 0.29, 4.10: the row below the head has a bar or, of a single column, at least a colon.
  test.each(['| a |\n| - |', 'a|b\n-|-', 'a\n:-', 'a\n-:', 'a\n :---: ', '> a\n> :-', '- a\n  -:'])(
    'has a table of %j',
    (text) => {
      expect(source(text)).toContain('<table>');
    },
  );

  test('has tables that scroll by themselves', () => {
    expect(source('|a|\n|-|\n|b|')).toMatch(
      /^<div class="table" tabindex="0" role="group" aria-label="Table"><table>/,
    );
  });
  test('is typeset across emphasis, but not in code', () => {
    expect(source(`"*it's*" and \`"it's"\``)).toBe('<p>“<em>it’s</em>” and <code>"it\'s"</code></p>\n');
  });
  test('leaves out raw HTML and says where it was', () => {
    const { html, diagnostics } = render('a <b onclick="x">c</b>\n\n<script>alert(1)</script>', {
      file: 'x.md',
    });
    expect(htmlSource(html)).not.toMatch(/<b|script|onclick/);
    expect(diagnostics.map(({ weight, location: place }) => [weight, place])).toContainEqual([
      'note',
      { file: 'x.md', line: 3, column: 1 },
    ]);
  });
  test.each([
    'javascript:alert(1)',
    'JaVaScRiPt:alert(1)',
    'data:text/html,x',
    'vbscript:x',
    '&#106;avascript:x',
  ])('drops the address %s', (address) => {
    expect(source(`[a](${address}) ![b](${address})`)).not.toMatch(/(?:href|src)=/);
  });
  test('does not change the tree that it is given', () => {
    const tree = withPictures("## It's\n\n![x](a.jpg)\n\n|a|\n|-|\n|b|\n\n[c](https://example.org)");
    const before = structuredClone(tree);
    render(tree);
    expect(tree).toEqual(before);
  });
});

describe('a story that is read away from the site', () => {
  const away = { away: (path: string) => `https://sill.example/${path}` };
  test('shows each picture as one JPEG at its full address', () => {
    const { html, outputs } = render(withPictures('![A mister](a.jpg)'), away);
    expect(htmlSource(html)).toMatch(
      /^<figure><img src="https:\/\/sill\.example\/pictures\/mister-1-400\.[0-9a-f]{10}\.jpg" width="400" height="267" alt="A mister"><\/figure>\n$/,
    );
    expect(outputs.map(({ picture: { format } }) => format)).toEqual(['jpeg']);
  });
  test('lists its notes at its end, in the order they are called, without a jump', () => {
    const text =
      'Late[^b], and early[^a]; late again[^b].\n\n[^a]: First.\n[^b]: Second[^c].\n[^c]: Third.\n[^d]: Never called.';
    expect(source(text, away)).toBe(
      '<p>Late<sup>1</sup>, and early<sup>2</sup>; late again<sup>1</sup>.</p>\n<hr>\n<ol>\n<li>Second<sup>3</sup>.</li>\n<li>First.</li>\n<li>Third.</li>\n</ol>\n',
    );
  });
  test('has its tables without what makes them scroll', () => {
    expect(source('| a |\n| - |\n| b |', away)).toMatch(/^<table>/);
  });
});
