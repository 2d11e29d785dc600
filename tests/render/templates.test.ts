import { describe, expect, test } from 'vitest';
import { html, htmlSource } from '../../src/render/html.ts';
import { compileTemplates } from '../../src/render/templates.ts';

declare module '../../src/render/templates.ts' {
  interface TemplateData {
    /** The one that these tests render. */
    a: object;
  }
}

const compile = (texts: Record<string, string>) =>
  compileTemplates(
    Object.entries(texts).map(([name, text]) => ({ name, file: `templates/${name}.eta`, text })),
    [],
  );

describe('templates', () => {
  test('escape words and leave Html as it is', () => {
    const { value } = compile({ a: '<p title="<%= it.words %>"><%= it.more %></p>' });
    const made = value.render('a', { words: '"<&', more: html`<b>${'&'}</b>` });
    expect(htmlSource(made)).toBe('<p title="&quot;&lt;&amp;"><b>&amp;</b></p>');
  });
  test('put each other in as parts', () => {
    const { value } = compile({ a: '<ul><%= it.part("b", { x: "<" }) %></ul>', b: '<li><%= it.x %></li>' });
    expect(htmlSource(value.render('a', {}))).toBe('<ul><li>&lt;</li></ul>');
  });
  test.each([
    ['an unclosed tag', 'one\ntwo <%= it.x', 2],
    ['a broken expression', 'one\n\n<%= it.( %>', 3],
    ['a tag that prints unescaped', 'one\n<%~ it.x %>', 2],
  ])('report %s at its line', (_, text, line) => {
    const { diagnostics } = compile({ a: text });
    expect(diagnostics).toHaveLength(1);
    expect(diagnostics[0]).toMatchObject({ weight: 'must fix', location: { file: 'templates/a.eta', line } });
  });
  test('throw for a name that no file bears', () => {
    expect(() => compile({}).value.render('a', {})).toThrow('`a`');
  });
});
