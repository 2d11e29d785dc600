/** What the command line says. Loads nothing, so that help is quick. */
import type { Change } from '../../model/next-change.ts';
import { counted } from '../../text/counting-words.ts';

/** Values that hold where an option is left out. */
interface Defaults {
  /** A standing, and a share of parcels, from 0 to 1. */
  readonly aim: number;
  readonly share: number;
}

/** What help says of a command: options by their name, examples as a command line and what it gives. */
export interface CommandWords {
  readonly summary: string;
  readonly about: string;
  readonly options: Readonly<Record<string, string>>;
  readonly examples: readonly (readonly [line: string, gives: string])[];
}

const contentOption = 'the folder with box.md and cycles/ (default: content)';
const jsonObject = 'print one JSON object on standard output instead of a report';

/** What help says of each command. */
const commands = ({ aim, share }: Defaults) =>
  ({
    begin: {
      summary: 'begin a box, or lay out the next of its cycles',
      about:
        'Asks a few questions and lays out the files. In a folder without a box, five make content/box.md. Then comes a cycle, the next by the box’s habit unless a month is named: its theme, its things and its days. Each thing gets a record with what it needs still as empty lines. Where the cycle stands already, pictures in its photos/ that no record names are matched to its things. No file is ever written over, and nothing is made before the last answer. Every question can be answered by an option; where nobody can be asked, defaults are taken, and what has none is named.',
      options: {
        content: contentOption,
        name: 'what the box is called',
        about: 'what it is, in a sentence or two',
        address: 'where its site will be (default: one that stands in)',
        currency: 'what prices are in, as GBP (default: by the machine)',
        zone: 'where reveals are timed, as Europe/London (default: by the machine)',
        language: 'the language of the articles, as en-GB (default: by the machine)',
        join: 'the address at which people join (default: none yet)',
        author: 'who signs the articles (default: the box)',
        theme: 'the theme of the cycle',
        things: "its things by their names, with ; between them: 'Seed tray; Plant mister'",
        kinds: 'what people call such things, in their order, with ; between them (default: by their names)',
        lead: 'the number of the thing that the box was built around (default: 1)',
        shipped: 'the day the parcels leave, as 2026-05-05 (default: by the cycle before)',
        reveal: 'when it may be shown, as 2026-05-21T19:00 (default: by the habit)',
        from: 'a list of things, a row each, as a spreadsheet saves it as CSV; - is standard input',
        columns: "what columns of it say, where that is not seen: 'price = Sells for; note = Maker'",
        photos: 'a folder of photos to copy into the cycle, each to the thing that it shows',
        pairs: "what photos show, where that is not seen: '4=2 5=box 6=none'",
        yes: 'take what is proposed and ask nothing',
      },
      examples: [
        ['lidlore begin', 'asks for a box, or for its next cycle'],
        ['lidlore begin 2026-05 --from items.csv', 'the May box, from a spreadsheet'],
        ['lidlore begin 2026-05 --photos ~/phone', 'its photos, each to its thing'],
      ],
    },
    build: {
      summary: 'make the site and the back room from the content folder',
      about:
        'Reads the content folder, checks it, and makes the public site and the private back room. When anything must be fixed it says where and how, and writes nothing. A cycle whose reveal is still to come stays sealed: no trace of it is in the site.',
      options: {
        content: contentOption,
        out: 'the public site (default: site, beside the content folder)',
        backroom: 'the private papers (default: backroom, beside the content folder)',
        'as-of':
          "build as if it were then: 2026-03-27 (the end of that day), 2026-03-27T19:00 (in the box's time zone), or with an offset, 2026-03-27T19:00Z (default: now)",
        without: 'leave parts out: proof, cards or film; several with commas, as proof,film',
        share: 'make only one of several shares, 1/4, into what is remembered, and publish nothing',
        json: jsonObject,
      },
      examples: [
        ['lidlore build', 'content/ into site/ and backroom/'],
        ['lidlore build --as-of 2026-03-27', 'the site as it stands at the end of 27 March'],
        ['lidlore build --content ~/box/content --out /srv/www', 'folders elsewhere'],
      ],
    },
    proof: {
      summary: 'read an article before publishing: will each thing in the box be found?',
      about:
        'Reads one cycle, the newest unless another is named, sealed or not, and says for every item which of the phrases a shopper would type its article carries, in which places and how well (its standing, from 0 to 1), which other page of yours would answer first, what is said too often, and the least work that would bring every item to the aim. It writes nothing; build puts the same proof, with the article marked up, into the back room.',
      options: {
        content: contentOption,
        aim: `what every item should stand at, between 0 and 1 (default: ${aim})`,
        'as-of':
          'which cycles are unsealed, and so compared with, as of then; written as for build (default: now)',
        json: jsonObject,
      },
      examples: [
        ['lidlore proof', 'the newest cycle'],
        ['lidlore proof 2026-02 --aim 0.8', 'an earlier one, by a higher aim'],
        ['lidlore proof --json > proof.json', 'with every mention and its place'],
      ],
    },
    film: {
      summary: 'make the short film of a cycle',
      about:
        'Builds as lidlore build does, and makes the film of the cycle that is named, however old it is: backroom/CYCLE/clip.mp4, upright, as long as the clip sheet says, with its shots, its words and a silent sound track. Without a name, the films that matter now: of the box that was shown last and of the next one. Where ffmpeg is installed it is used, because it is faster and its files are smaller; nothing has to be installed. A film that is there already, made of the same pictures and words, is not made again.',
      options: {
        content: contentOption,
        out: 'the public site (default: site, beside the content folder)',
        backroom: 'the private papers (default: backroom, beside the content folder)',
        'as-of': 'build as if it were then; written as for build (default: now)',
        json: jsonObject,
      },
      examples: [
        ['lidlore film', 'those of the newest cycle and of the next one'],
        ['lidlore film 2025-11', 'that of an earlier one'],
      ],
    },
    parcels: {
      summary: 'have enough parcels arrived to show the box?',
      about:
        "Reads a cycle's list of shipments, content/cycles/CYCLE/parcels.csv, and says how many have arrived, by which day the wanted share will have arrived and how sure that is, what is overdue, which carrier is stuck, and on which evening the box can be revealed. Parcels on their way are counted as what they are, so that the answer is not too early; a cycle that is too young is told from earlier ones. Columns and forms of dates are named in box.md; names and addresses are not read. It writes nothing.",
      options: {
        content: contentOption,
        'as-of': 'what had happened by then; written as for build (default: now)',
        share: `how many should have arrived, between 0 and 1 (default: the share in box.md, or ${share})`,
        json: 'print one JSON object, with the whole curve, instead of a report',
      },
      examples: [
        ['lidlore parcels', 'the newest cycle that has a list'],
        ['lidlore parcels 2026-02 --as-of 2026-02-10', 'as it stood on that day'],
        ['lidlore parcels export.csv --share 0.95', 'a file that is not in place yet'],
      ],
    },
    desk: {
      summary: 'write, see, mend and ready a cycle in the browser',
      about:
        'Opens a page on this machine in which a whole cycle is done: what is next, each record as a form with its article beside it, photos, the proof with changes to take, the parcels, every paper, and the site made ready. Files are changed key by key and nothing else of them; each change can be taken back, also another day. Files may be changed in other programs at the same time. Nobody but this machine can reach it, unless --share is given.',
      options: {
        content: contentOption,
        port: 'where the page is (default: 4747, or the next that is free)',
        'as-of': 'what the desk takes for now; written as for build (default: now)',
        'no-open': 'only print the address',
        share: 'let others in the same network in, by an address with a secret key',
      },
      examples: [
        ['lidlore desk', 'opens the desk in the browser'],
        ['lidlore desk --share', 'prints an address for the phone on the table'],
      ],
    },
    phrases: {
      summary: 'what shoppers would type for a name; noun phrases of a text',
      about:
        'Takes a name apart: the word that says what the thing is (its head), the kind it is of, and the phrases a shopper would type for it, each with where it came from. Try names before one is printed on a label. Names are words of the command line, one in quotes each, or lines on standard input. With --text, the noun phrases of a running text instead, each with where it starts and ends.',
      options: {
        text: 'a plain text to take the noun phrases from; - is standard input. Offsets count UTF-16 units from 0',
        json: 'print one JSON array on standard output instead of a table',
      },
      examples: [
        ["lidlore phrases 'Sage enamel watering can, 1.2 litre'", 'what it will be looked for as'],
        ['lidlore phrases --json < names.txt', 'a line a name, as JSON in the same order'],
        ['lidlore phrases --text article.txt', 'the noun phrases of a text'],
      ],
    },
  }) satisfies Readonly<Record<string, CommandWords>>;

const help = {
  program: 'lidlore: reveal articles from the records of a subscription box',
  command: (name: string, summary: string) => `lidlore ${name}: ${summary}`,
  usage: (words: string) => `Usage: lidlore ${words}`,
  commands: 'Commands:',
  options: 'Options:',
  examples: 'Examples:',
  exitStatus: 'Exit status:',
  helpOfAll: 'this text; after a command, help on that command',
  helpOfOne: 'this text',
  version: 'the version',
  see: (command: string | undefined) => `See: lidlore ${command === undefined ? '' : `${command} `}--help`,
};

/** What each exit status says, by its name. */
const exits = {
  done: 'done',
  mustFix: 'something in the content must be fixed, or a proof misses its aim; nothing was written',
  usage:
    'the command line cannot be carried out, or something that was not made here is in the way; nothing was written',
  bug: 'a bug in lidlore',
  disk: 'the disk refused to be read or written; the old site is as it was, or the next build finishes the new one',
  stopped: 'stopped at a question; nothing was made or changed',
};

const didYouMean = (word: string | undefined): string => (word === undefined ? '' : ` Did you mean ${word}?`);

/** Command lines that make no sense. `meant` is the nearest word that would. */
const mistakes = {
  noCommand: 'Name a command. To write this box in your browser: lidlore desk',
  /** Where nothing is there that a command could be about. */
  noBox:
    'There is no box in this folder yet. To begin one: lidlore begin\nAll that can be done: lidlore --help',
  unknownCommand: (word: string, meant: string | undefined) => `Unknown command ${word}.${didYouMean(meant)}`,
  unknownOption: (word: string, meant: string | undefined) => `Unknown option ${word}.${didYouMean(meant)}`,
  optionFirst: (option: string, command: string) =>
    `Unexpected ${option}, expected a command before it: lidlore ${command} ${option}`,
  operand: (word: string) => `Unexpected ${word}, expected an option.`,
  secondOperand: (word: string, operands: string) => `Unexpected second ${word}, expected one ${operands}.`,
  secondOption: (name: string) => `Unexpected second --${name}, expected it once.`,
  needlessValue: (value: string, name: string) => `Unexpected value ${value}: --${name} takes none.`,
  missingValue: (name: string, value: string, about: string) =>
    `Missing value: --${name} ${value}, ${about}.`,
  asOf: (instant: string) =>
    `Unexpected --as-of ${instant}, expected a date or a date and time: 2026-03-27, 2026-03-27T19:00 or 2026-03-27T19:00Z.`,
  noFolder: (folder: string, isDefault: boolean) =>
    `There is no folder ${folder}${isDefault ? ' here' : ''}. Name the folder that holds box.md with --content, or begin a box: lidlore begin`,
  noFile: (file: string) => `There is no file ${file}.`,
  aim: (value: string, example: number) =>
    `Unexpected --aim ${value}, expected a standing between 0 and 1, as ${example}.`,
  share: (value: string, example: number) =>
    `Unexpected --share ${value}, expected a share between 0 and 1, as ${example}.`,
  noCycle: (cycle: string, folder: string, meant: string | undefined) =>
    `There is no cycle ${cycle} in ${folder}.${didYouMean(meant)}`,
  newestCycle: (cycle: string) => ` The newest is ${cycle}.`,
  fileByEnding: ' A file is named by its ending, as export.csv.',
  without: (word: string, parts: readonly string[]) =>
    `Unexpected --without ${word}, expected ${parts.join(' or ')}.`,
  buildShare: (value: string) => `Unexpected --share ${value}, expected one of several shares, as 1/2.`,
};

/** `halfWay`: some of the new files are in place already. */
const published = (halfWay: boolean): string =>
  halfWay
    ? 'The site is published in part; the next build finishes it.'
    : 'Nothing was published; the old site is as it was.';

const failures = {
  inTheWay: (reason: string, halfWay: boolean) => `${reason}\n${published(halfWay)}`,
  disk: (reason: string, halfWay: boolean) => `The disk refused: ${reason}\n${published(halfWay)}`,
  bug: (stack: string, halfWay: boolean) =>
    `This is a bug in lidlore, not a mistake of yours. ${halfWay ? published(true) : 'Nothing was published.'} Please report it with:\n${stack}`,
};

const progress = {
  photos: 'Looking at photos',
  pictures: 'Making pictures',
  film: (cycle: string) => `Making the film of ${cycle}, frame`,
  of: (done: number, total: number) => `${done} of ${total}`,
  secondsLeft: (seconds: number) => `${seconds} s left`,
  minutesLeft: (minutes: number) => `${minutes} min left`,
};

/** `3.4 MB`, decimal units. */
const size = (bytes: number): string =>
  bytes < 1000
    ? `${bytes} bytes`
    : bytes < 1e6
      ? `${Math.round(bytes / 1000)} kB`
      : `${(bytes / 1e6).toFixed(1)} MB`;

/** What a change of the site without a change of the content is: "2026-04, Small Wings, is revealed". */
const change = (one: Change): string => {
  if (one.change === 'reveal') return `${one.cycle}, ${one.theme}, is revealed`;
  if (one.change === 'spare') return `spare pieces of ${one.name} (${one.cycle}) go off sale`;
  return `the call of ${one.cycle ?? 'the box'} is ${one.call ? `then \`${one.call}\`` : 'gone'}`;
};

const build = {
  change,
  /** "23 April 2026, 19:00: 2026-04, Small Wings, is revealed". */
  next: (when: string, changes: readonly Change[]) => `${when}: ${changes.map(change).join('; ')}`,
  made: (made: {
    readonly pages: number;
    readonly pictures: number;
    readonly newPictures: number;
    readonly fromCache: number;
    readonly files: number;
    readonly bytes: number;
  }) =>
    `Made ${counted(made.pages, 'page')} and ${counted(made.pictures, 'picture')} (${made.newPictures} new, ${made.fromCache} from the cache): ${counted(made.files, 'file')}, ${size(made.bytes)}.`,
  /** "Proof of 2026-03, First Sowings: 4 of 5 items at the aim of 0.7; weakest Wooden dibber, 0.52." */
  proved: (proof: {
    readonly cycle: string;
    readonly theme: string;
    readonly aim: number;
    readonly items: number;
    readonly atAim: number;
    readonly weakest?: { readonly name: string; readonly shown: string };
    readonly thin: number;
    readonly crowded: number;
    readonly rivals: number;
  }) => {
    const { weakest, thin, crowded, rivals } = proof;
    const parts = [
      `${proof.atAim} of ${counted(proof.items, 'item')} at the aim of ${proof.aim}`,
      ...(weakest ? [`weakest ${weakest.name}, ${weakest.shown}`] : []),
      ...(thin > 0 ? [counted(thin, 'thin story', 'thin stories')] : []),
      ...(crowded > 0 ? [counted(crowded, 'crowded phrase')] : []),
      ...(rivals > 0 ? [counted(rivals, 'rival')] : []),
    ];
    return `Proof of ${proof.cycle}, ${proof.theme}: ${parts.join('; ')}.`;
  },
  again: (next: string) => `Build again after ${next}.`,
  awaitingParcels: (cycles: readonly string[]) =>
    `Build again with a newer list of the parcels of ${cycles.join(', ')}.`,
  sealed: (cycle: string, theme: string, until: string) => `Sealed until ${until}: ${cycle}, ${theme}.`,
  until: (day: string | undefined) => day ?? 'its parcels have arrived',
  waiting: (dir: string, pid: number) =>
    `Waiting for another run (process ${pid}), which publishes to ${dir}.`,
  unchanged: (found: {
    readonly pages: number;
    readonly pictures: number;
    readonly files: number;
    readonly bytes: number;
  }) =>
    `Nothing has changed: ${counted(found.pages, 'page')} and ${counted(found.pictures, 'picture')} stand as they were, ${counted(found.files, 'file')}, ${size(found.bytes)}.`,
  sharedOut: (memory: string, pictures: number, made: number) =>
    `Made a share of the build into ${memory}: ${counted(pictures, 'picture')} of it, ${made} new. Nothing was published; lidlore build without --share puts all of it together.`,
  film: (film: {
    readonly cycle: string;
    readonly file: string;
    readonly seconds: number;
    readonly bytes: number;
    readonly encoder: 'ffmpeg' | 'embedded';
  }) =>
    `Made the film of ${film.cycle} (${Math.round(film.seconds)} s, ${size(film.bytes)}, ${film.encoder === 'ffmpeg' ? 'with ffmpeg' : 'with the encoder that comes along; ffmpeg, once installed, is faster'}): ${film.file}`,
  filmsToMake: (cycles: readonly string[]) =>
    `Not made yet: ${cycles.length === 1 ? 'the film' : 'the films'} of ${cycles.join(' and ')}. Make ${cycles.length === 1 ? 'it' : 'them'} with lidlore film.`,
  readProofs: (path: string) => `Read the proofs in ${path}`,
  addresses: (count: number, file: string) =>
    `Wrote ${counted(count, 'new address', 'new addresses')} into ${file}; keep it with your records.`,
  kept: (path: string) => `Kept ${path}, which was not made here.`,
  replaced: (path: string) => `Replaced ${path}, which somebody had changed by hand.`,
  findings: (count: string) => `Findings: ${count}.`,
  time: (stages: readonly (readonly [name: string, ms: number])[]) =>
    `Time: ${stages.map(([name, ms]) => `${name} ${ms < 1000 ? `${ms} ms` : `${(ms / 1000).toFixed(1)} s`}`).join(', ')}.`,
  lookAt: (path: string) => `Look at ${path}`,
  nothingWritten: (findings: string, site: string) =>
    `${findings}. Nothing was written; ${site} is as it was.`,
};

/** What a command says that has nothing to report on. */
const nothing = {
  noProof: (findings: string) => `${findings}. There is no proof before these are mended.`,
  noFigures: (findings: string) => `${findings}. There are no figures before these are mended.`,
  noCycles: (folder: string) => `There is no cycle in ${folder} yet.`,
  beginCycle: (folder: string) =>
    ` Begin one: lidlore begin${folder === 'content' ? '' : ` --content ${folder}`}`,
};

const phrasesExample = "lidlore phrases 'Sage enamel watering can, 1.2 litre'";

const phrases = {
  missingName: `Missing name, for example: ${phrasesExample}`,
  noNames: `Standard input is empty, expected a name a line. Or: ${phrasesExample}`,
  missingText: 'Missing text: --text - expects it piped in.',
  nameBesideText: (word: string) => `Unexpected ${word}: --text takes its words from the file alone.`,
  standardInput: 'Standard input',
  isFolder: (file: string) => `${file} is a folder, expected a text file.`,
  isUnreadable: (file: string, reason: string) => `${file} cannot be read: ${reason}.`,
  isNoText: (file: string) => `${file} is not a text: it has a NUL byte in it.`,
  isEmpty: (file: string) => `${file} is empty, expected a text.`,
  head: 'head',
  noHead: 'none: no word of it says what the thing is',
  headIs: (head: string) => `${head}, what the thing is`,
  kind: 'kind',
  none: 'no phrases',
  typed: 'typed by shoppers, and where it is from:',
  start: 'start',
  end: 'end',
  nounPhrase: 'noun phrase',
  nounPhrases: (count: number) =>
    `${counted(count, 'noun phrase')}. Offsets count UTF-16 units from 0; articles and pronouns are left out.`,
};

/** What the command line says. */
export const commandLine = {
  commands,
  help,
  exits,
  mistakes,
  failures,
  progress,
  build,
  nothing,
  phrases,
};
