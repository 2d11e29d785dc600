/** Every command and option once: the parser and the help are both derived from this table. */
import type { Edge, Values } from './edge.ts';

export interface Option {
  readonly name: string;
  /** What its value is called in the help; absent for a switch. */
  readonly value?: string;
  readonly help: string;
}

export interface Command {
  readonly name: string;
  readonly summary: string;
  readonly about: string;
  readonly options: readonly Option[];
  readonly examples: readonly (readonly [string, string])[];
  /** Gives the exit status. Loaded when called, so that help does not wait for what it does not need. */
  readonly run: (values: Values, edge: Edge) => Promise<number>;
}

export const commands: readonly Command[] = [
  {
    name: 'build',
    summary: 'make the site and the back room from the content folder',
    about:
      'Reads the content folder, checks it, and makes the public site and the private back room. When anything must be fixed it says where and how, and writes nothing. A cycle whose reveal is still to come stays sealed: no trace of it is in the site.',
    options: [
      { name: 'content', value: 'DIR', help: 'the folder with box.md and cycles/ (default: content)' },
      { name: 'out', value: 'DIR', help: 'the public site (default: site, beside the content folder)' },
      {
        name: 'backroom',
        value: 'DIR',
        help: 'the private papers (default: backroom, beside the content folder)',
      },
      {
        name: 'as-of',
        value: 'INSTANT',
        help: "build as if it were then: 2026-03-27 (the end of that day), 2026-03-27T19:00 (in the box's time zone), or with an offset, 2026-03-27T19:00Z (default: now)",
      },
      { name: 'json', help: 'print one JSON object on standard output instead of a report' },
    ],
    examples: [
      ['lidlore build', 'content/ into site/ and backroom/'],
      ['lidlore build --as-of 2026-03-27', 'the site as it stands at the end of 27 March'],
      ['lidlore build --content ~/box/content --out /srv/www', 'folders elsewhere'],
    ],
    run: async (values, edge) => (await import('./build-command.ts')).buildCommand(values, edge),
  },
];
