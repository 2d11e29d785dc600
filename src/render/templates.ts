/** Templates: text with holes, compiled once, whose holes escape whatever is not Html. */
import { Eta } from 'eta/core';
import type { Checked, Diagnostic } from '../diagnostics/diagnostic.ts';
import { lazily } from '../text/lazy.ts';
import { type Html, htmlSource, trusted } from './html.ts';

/** A template’s source. */
export interface TemplateFile {
  /** `article` for `templates/article.eta`. */
  readonly name: string;
  /** The file as diagnostics show it. */
  readonly file: string;
  readonly text: string;
  /** One of the program’s own, which its tests compile: it is compiled when it is first rendered. */
  readonly isOwn?: boolean;
}

/** A file of templates/ that is published beside the pages. */
export interface Asset {
  /** Path relative to templates/. */
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly text?: string;
}

/**
 * What each template is given, by its name. Whoever renders a template adds its line, so that a template and its data
 * are checked together: `declare module '../render/templates.ts' { interface TemplateData { kind: KindView } }`.
 */
// biome-ignore lint/suspicious/noEmptyInterface: filled by declaration merging
export interface TemplateData {}

/** Every template, compiled, with the files that are published beside the pages. */
export interface Templates {
  /**
   * Throws when no template bears `name`, or one of ours fails: those are bugs. Of what an author's throws
   * `templateFinding` makes a finding.
   */
  readonly render: <Name extends keyof TemplateData>(name: Name, data: TemplateData[Name]) => Html;
  readonly assets: readonly Asset[];
  /** Scripts for a visitor's browser; a page's channel publishes the one it needs. */
  readonly scripts: readonly Asset[];
}

/** Tags of a template as Eta's parser gives them: `i` prints, `e` runs, `r` prints unescaped. */
interface Tag {
  readonly t: string;
  readonly val: string;
  readonly lineNo?: number;
}

const fault = (file: string, line: number, message: string, fix: string): Diagnostic => ({
  weight: 'must fix',
  rule: 'template-syntax',
  location: { file, line, column: 1 },
  message,
  fix,
});

/** Whether the content of a printing tag is an expression. Compiled, never called. */
const isExpression = (source: string): boolean => {
  try {
    new Function('it', `return (${source}\n)`);
    return true;
  } catch {
    return false;
  }
};

/** What one of the author's templates threw while it was rendered. */
interface TemplateFailure extends Error {
  readonly finding: Diagnostic;
}

const FAILURE = 'TemplateFailure';

const isFailure = (error: unknown): error is TemplateFailure =>
  error instanceof Error && error.name === FAILURE && 'finding' in error;

/** The finding about an author's template, where an error came of one. */
export const templateFinding = (error: unknown): Diagnostic | undefined =>
  isFailure(error) ? error.finding : undefined;

/**
 * What an author's template threw, as a finding at the tag. Eta puts the place and the lines round it before the
 * message: "templates/article.eta:3", then ` >> 3| ` at the line itself.
 */
const failureIn = (file: string, error: unknown): TemplateFailure => {
  const said = (error instanceof Error ? error.message : String(error)).trim().split('\n');
  const line = Number(/:(\d+)$/.exec(said[0] ?? '')?.[1] ?? 1);
  const source = said.find((one) => one.startsWith(' >> '))?.replace(/^ >> \d+\| /, '') ?? '';
  const message = `Unexpected end of the template: ${said.at(-1) ?? ''}`;
  const finding: Diagnostic = {
    weight: 'must fix',
    rule: 'template-run',
    location: { file, line, column: Math.max(0, source.indexOf('<%')) + 1 },
    message,
    fix: 'See what the template asks for that is not there, or take ours again from the program’s templates/',
  };
  return Object.assign(new Error(message, { cause: error }), { name: FAILURE, finding });
};

const rawTagFault = (file: string, tag: Tag): Diagnostic =>
  fault(
    file,
    tag.lineNo ?? 1,
    'Unexpected `<%~`, expected `<%=`',
    'Print with `<%= %>`; another template is put in with `<%= it.part(name, data) %>`',
  );

/** The line of a fault that Eta or the engine found: Eta says "at line N", the engine does not. */
const faultLine = (error: unknown, tags: readonly Tag[]): number => {
  const said = /at line (\d+)/.exec(String(error))?.[1];
  if (said !== undefined) return Number(said);
  return tags.find((tag) => tag.t === 'i' && !isExpression(tag.val))?.lineNo ?? 1;
};

const firstLine = (error: unknown): string =>
  (error instanceof Error ? error.message : String(error)).split('\n')[0] ?? '';

/**
 * Compiles templates. One of the author’s that does not compile, or prints unescaped with `<%~ %>`, is a must-fix
 * diagnostic at its line, and is left out. In every template `it.part(name, data)` gives another one's Html.
 */
export const compileTemplates = (
  files: readonly TemplateFile[],
  assets: readonly Asset[],
  scripts: readonly Asset[] = [],
): Checked<Templates> => {
  const eta = new Eta({ escapeFunction: htmlSource, debug: true, cache: false });
  const compiled = new Map<string, () => (data: object) => string>();
  const diagnostics: Diagnostic[] = [];
  const compile = ({ file, text, isOwn }: TemplateFile): ((data: object) => string) => {
    const run = eta.compile(text, { filepath: file });
    return (data) => {
      try {
        return run.call(eta, data, { filepath: file });
      } catch (error) {
        throw isOwn || isFailure(error) ? error : failureIn(file, error);
      }
    };
  };
  for (const template of files) {
    const { name, file, text, isOwn = false } = template;
    if (isOwn) {
      compiled.set(
        name,
        lazily(() => compile(template)),
      );
      continue;
    }
    let tags: readonly Tag[] = [];
    try {
      tags = eta.parse(text).filter((piece): piece is Tag & { val: string } => typeof piece !== 'string');
      const raw = tags.find((tag) => tag.t === 'r');
      if (raw) {
        diagnostics.push(rawTagFault(file, raw));
        continue;
      }
      const run = compile(template);
      compiled.set(name, () => run);
    } catch (error) {
      const message = `Unexpected template source: ${firstLine(error)}`;
      diagnostics.push(
        fault(file, faultLine(error, tags), message, 'Close every tag and bracket on its line'),
      );
    }
  }
  const render = (name: string, data: object): Html => {
    const run = compiled.get(name)?.();
    if (!run)
      throw new Error(`Expected a template named \`${name}\`, found ${[...compiled.keys()].join(', ')}`);
    return trusted(run({ ...data, part: (other: string, more: object = {}) => render(other, more) }));
  };
  return { value: { render, assets, scripts }, diagnostics };
};
