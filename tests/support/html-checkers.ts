/** Two independent checkers of HTML; they overlap only in part. */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { HtmlValidate, StaticConfigLoader } from 'html-validate';

const JAR = join(import.meta.dirname, '../../node_modules/vnu-jar/build/dist/vnu.jar');

/** Errors that the Nu HTML Checker (vnu-jar) finds in the pages of a folder, as `file:line message`. */
export const nuErrors = (folder: string): string[] => {
  const options = ['-Xss2m', '-XX:TieredStopAtLevel=1', '-XX:+UseSerialGC', '-jar', JAR];
  const { stderr } = spawnSync('java', [...options, '--format', 'json', '--skip-non-html', folder], {
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
  const { messages } = JSON.parse(stderr) as {
    messages: { type: string; url: string; lastLine: number; message: string }[];
  };
  return messages
    .filter(({ type }) => type !== 'info')
    .map(
      ({ url, lastLine, message }) =>
        `${url
          .replace(/^file:/, '')
          .split(folder)
          .at(-1)}:${lastLine} ${message}`,
    );
};

const checker = new HtmlValidate(
  new StaticConfigLoader({
    extends: ['html-validate:recommended', 'html-validate:document', 'html-validate:a11y'],
    rules: {
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

/** What html-validate's recommended, document and accessibility rules find in a document, as `line:column rule: message`. */
export const htmlValidateFaults = async (text: string): Promise<string[]> => {
  const report = await checker.validateString(text);
  return report.results.flatMap(({ messages }) =>
    messages.map(({ ruleId, line, column, message }) => `${line}:${column} ${ruleId}: ${message}`),
  );
};
