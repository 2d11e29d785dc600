/** Records as they are begun: what is known, what has to be written still, and what may be. */
import { exampleAt } from '../../content/examples.ts';
import { blockLines, type FieldValue } from '../../content/write-yaml.ts';
import { wrapLines } from '../../text/wrap.ts';

/** A field of a record that is begun. */
export interface BegunField {
  readonly key: string;
  /** Absent where it is left to write: then the record asks for it by an empty line. */
  readonly value?: FieldValue;
  /** What stands above it for whoever writes on. */
  readonly hint?: string;
}

/** A record that is begun, in its parts. */
interface BegunRecord {
  readonly schema: unknown;
  readonly fields: readonly BegunField[];
  /** Fields that it may have besides, each shown by the example of its schema in a line that says nothing yet. */
  readonly further: readonly string[];
  /** What stands above those. */
  readonly furtherHint: string;
  readonly body: string;
}

const WIDTH = 96;

const comment = (text: string): readonly string[] => wrapLines(text, WIDTH - 2).map((line) => `# ${line}`);

/** The text of a file. What is not known stands as an empty field: a finding names its line until it is written. */
export const recordText = ({ schema, fields, further, furtherHint, body }: BegunRecord): string => {
  const lines = fields.flatMap(({ key, value, hint }) => [
    ...(hint === undefined ? [] : comment(hint)),
    ...(value === undefined ? [`${key}:`] : blockLines({ [key]: value })),
  ]);
  const written = new Set(fields.map(({ key }) => key));
  const shown = further.flatMap((key) => (written.has(key) ? [] : exampleAt(schema, [key])));
  const more = shown.length === 0 ? [] : [...comment(furtherHint), ...shown.map((line) => `# ${line}`)];
  return `${['---', ...lines, ...more, '---'].join('\n')}\n${body === '' ? '' : `\n${body}\n`}`;
};

/** Words for the owner alone among those for readers: Markdown leaves a comment out of every page. */
export const ownersNote = (text: string): string => `<!-- ${text.replaceAll('-->', '-- >').trim()} -->`;
