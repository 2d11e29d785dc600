import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { HtmlValidate, StaticConfigLoader } from 'html-validate';
import { describe, expect, inject, test } from 'vitest';
import { describeWith, pagesBelow } from '../support/tools.ts';

const site = inject('demoSite');

describeWith('java', 'default-jre-headless', 'every page', () => {
  // The Nu HTML Checker (vnu-jar): the WHATWG HTML standard as validator.nu checks it.
  test('passes the Nu checker without an error', () => {
    const jar = join(import.meta.dirname, '../../node_modules/vnu-jar/build/dist/vnu.jar');
    const { stderr } = spawnSync(
      'java',
      [
        '-Xss2m',
        '-XX:TieredStopAtLevel=1',
        '-XX:+UseSerialGC',
        '-jar',
        jar,
        '--format',
        'json',
        '--skip-non-html',
        site,
      ],
      { encoding: 'utf8', maxBuffer: 1e8 },
    );
    const { messages } = JSON.parse(stderr) as {
      messages: { type: string; url: string; lastLine: number; message: string }[];
    };
    const errors = messages
      .filter(({ type }) => type !== 'info')
      .map(({ url, lastLine, message }) => `${url.split('/site/').at(-1)}:${lastLine} ${message}`);
    expect(errors).toEqual([]);
    expect(pagesBelow(site).length).toBeGreaterThan(14);
  });
});

describe('every page', () => {
  test('passes html-validate’s recommended, document and accessibility rules', async () => {
    const checker = new HtmlValidate(
      new StaticConfigLoader({
        extends: ['html-validate:recommended', 'html-validate:document', 'html-validate:a11y'],
        rules: {
          // The placeholder colour of each picture is its own; it cannot stand in a style sheet.
          'no-inline-style': 'off',
          // Titles name the things in the box; search results cut them, readers of the page do not.
          'long-title': 'off',
          // The style sheet comes from the same folder as the page.
          'require-sri': 'off',
          // HTML takes the doctype in either case; ours is lower case.
          'doctype-style': 'off',
          // A table that scrolls is a region reachable by keyboard (WCAG 2.1.1), on a div by necessity.
          'prefer-native-element': 'off',
        },
      }),
    );
    const faults: string[] = [];
    for (const { path, text } of pagesBelow(site)) {
      const report = await checker.validateString(text);
      for (const result of report.results)
        for (const { ruleId, line, column, message } of result.messages)
          faults.push(`${path}:${line}:${column} ${ruleId}: ${message}`);
    }
    expect(faults).toEqual([]);
  });
});
