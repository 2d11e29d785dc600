/** Every command and option once: the parser and the help are both derived from this table. */
import type { Environment, Operands, Values } from './environment.ts';

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
  /** What it is called on, as the usage shows it: `[CYCLE]` for at most one, `[NAME…]` for any number; absent for none. */
  readonly operands?: string;
  readonly options: readonly Option[];
  readonly examples: readonly (readonly [string, string])[];
  /** Gives the exit status. Loaded when called, so that help does not wait for what it does not need. */
  readonly run: (values: Values, edge: Environment, operands: Operands) => Promise<number>;
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
  {
    name: 'proof',
    summary: 'read an article before publishing: will each thing in the box be found?',
    about:
      'Reads one cycle, the newest unless another is named, sealed or not, and says for every item which of the phrases a shopper would type its article carries, in which places and how well (its standing, from 0 to 1), which other page of yours would answer first, what is said too often, and the least work that would bring every item to the aim. It writes nothing; build puts the same proof, with the article marked up, into the back room.',
    operands: '[CYCLE]',
    options: [
      { name: 'content', value: 'DIR', help: 'the folder with box.md and cycles/ (default: content)' },
      {
        name: 'aim',
        value: 'STANDING',
        help: 'what every item should stand at, between 0 and 1 (default: 0.7)',
      },
      {
        name: 'as-of',
        value: 'INSTANT',
        help: 'which cycles are unsealed, and so compared with, as of then; written as for build (default: now)',
      },
      { name: 'json', help: 'print one JSON object on standard output instead of a report' },
    ],
    examples: [
      ['lidlore proof', 'the newest cycle'],
      ['lidlore proof 2026-02 --aim 0.8', 'an earlier one, by a higher aim'],
      ['lidlore proof --json > proof.json', 'with every mention and its place'],
    ],
    run: async (values, edge, operands) =>
      (await import('./proof-command.ts')).proofCommand(values, edge, operands),
  },
  {
    name: 'parcels',
    summary: 'have enough parcels arrived to show the box?',
    about:
      "Reads a cycle's list of shipments, content/cycles/CYCLE/parcels.csv, and says how many have arrived, by which day the wanted share will have arrived and how sure that is, what is overdue, which carrier is stuck, and on which evening the box can be revealed. Parcels on their way are counted as what they are, so that the answer is not too early; a cycle that is too young is told from earlier ones. Columns and forms of dates are named in box.md; names and addresses are not read. It writes nothing.",
    operands: '[CYCLE | FILE.csv]',
    options: [
      { name: 'content', value: 'DIR', help: 'the folder with box.md and cycles/ (default: content)' },
      {
        name: 'as-of',
        value: 'INSTANT',
        help: 'what had happened by then; written as for build (default: now)',
      },
      {
        name: 'share',
        value: 'SHARE',
        help: 'how many should have arrived, between 0 and 1 (default: the share in box.md, or 0.9)',
      },
      { name: 'json', help: 'print one JSON object, with the whole curve, instead of a report' },
    ],
    examples: [
      ['lidlore parcels', 'the newest cycle that has a list'],
      ['lidlore parcels 2026-02 --as-of 2026-02-10', 'as it stood on that day'],
      ['lidlore parcels export.csv --share 0.95', 'a file that is not in place yet'],
    ],
    run: async (values, edge, operands) =>
      (await import('./parcels-command.ts')).parcelsCommand(values, edge, operands),
  },
  {
    name: 'phrases',
    summary: 'what shoppers would type for a name; noun phrases of a text',
    about:
      'Takes a name apart: the word that says what the thing is (its head), the kind it is of, and the phrases a shopper would type for it, each with where it came from. Try names before one is printed on a label. Names are words of the command line, one in quotes each, or lines on standard input. With --text, the noun phrases of a running text instead, each with where it starts and ends.',
    operands: '[NAME…]',
    options: [
      {
        name: 'text',
        value: 'FILE',
        help: 'a plain text to take the noun phrases from; - is standard input. Offsets count UTF-16 units from 0',
      },
      { name: 'json', help: 'print one JSON array on standard output instead of a table' },
    ],
    examples: [
      ["lidlore phrases 'Sage enamel watering can, 1.2 litre'", 'what it will be looked for as'],
      ['lidlore phrases --json < names.txt', 'a line a name, as JSON in the same order'],
      ['lidlore phrases --text article.txt', 'the noun phrases of a text'],
    ],
    run: async (values, edge, operands) =>
      (await import('./phrases-command.ts')).phrasesCommand(values, edge, operands),
  },
];
