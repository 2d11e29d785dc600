/** Lines that an author pastes into a record, as YAML and Markdown have them. */

/** What YAML takes for a word and nothing else. */
const PLAIN_YAML = /^(?!(?:true|false|null|yes|no|on|off|y|n)$)\p{L}[\p{L}\p{N} '’-]*$/iu;

/** The line of a record that names other names: those are quoted that YAML would take for something else. */
export const alsoLine = (names: readonly string[]): string =>
  `also: [${names.map((name) => (PLAIN_YAML.test(name) ? name : JSON.stringify(name))).join(', ')}]`;

/** A link from a record of one cycle to another cycle, as an author writes it. */
export const linkMarkdown = (link: {
  readonly to: string;
  readonly anchor: string;
  readonly at: { readonly file: string };
}): string => {
  const folders = link.at.file.split('/').length - 2;
  return `[${link.anchor}](${'../'.repeat(Math.max(0, folders))}${link.to}/cycle.md)`;
};
