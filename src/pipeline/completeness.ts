/**
 * The whole, checked: whether every chosen piece of a cycle says what it must, read from the files themselves as they
 * are about to be written, so that no channel vouches for its own.
 */
import type { CarriedRow, Completeness, CycleCompleteness, PieceState } from '../channels/channel.ts';
import type { Diagnostic, Location } from '../diagnostics/diagnostic.ts';
import type { Box, Cycle, Moment, Piece } from '../model/box.ts';
import { callFor } from '../model/calls.ts';
import { type Caution, cautionsOf } from '../model/cautions.ts';
import { saidAddress } from '../model/live-words.ts';
import { locationIn } from '../model/location-in.ts';
import { formsOfPiece, piecesOf, pieceTitles } from '../model/pieces.ts';
import { isSealed } from '../model/seal.ts';
import { shortName } from '../model/title.ts';
import { articlePath } from '../render/addresses.ts';
import type { Output } from '../render/output.ts';
import { plainWords } from '../render/plain-words.ts';
import { sentencesOf } from '../text/sentences.ts';

/** What a piece must carry. */
interface Duty {
  readonly items: boolean;
  readonly caution: (caution: Caution) => boolean;
  /** `begun`: its first sentence will do, where the piece has not the time for more. */
  readonly peek: 'whole' | 'begun' | 'no';
  readonly callText: boolean;
  readonly callAddress: boolean;
}

const nothing: Duty = {
  items: false,
  caution: () => false,
  peek: 'no',
  callText: false,
  callAddress: false,
};
const all: Duty = { items: true, caution: () => true, peek: 'whole', callText: true, callAddress: true };

/** Ingredients are read on the card. What is said aloud or under a video are the dangers. */
const danger = ({ sort }: Caution): boolean => sort !== 'ingredients';

const duties: Readonly<Record<Piece, Duty>> = {
  // It keeps still: nothing in it may name what the box holds.
  invitation: nothing,
  // The owner's own words may ask for the same in other words; the address is on the card they hold up.
  live: { ...all, caution: danger, peek: 'begun', callText: false },
  article: all,
  letter: all,
  // Thirty seconds have no room for the peek.
  clip: { ...all, caution: danger, peek: 'no' },
  cards: { ...nothing, items: true, callAddress: true },
};

interface ReadFile {
  readonly file: string;
  /** Its words, folded, between spaces. */
  readonly words: string;
}

interface Told {
  readonly piece: Piece;
  readonly duty: Duty;
  /** Why there is nothing to read, where there is not. */
  readonly without?: 'sealed' | 'not made';
  readonly forms: readonly ReadFile[];
}

const holds = ({ words }: ReadFile, text: string): boolean => words.includes(` ${plainWords(text)} `);

const toldIn = (
  cycle: Cycle,
  piece: Piece,
  asOf: Moment,
  textOf: (key: string) => string | undefined,
): Told => {
  const keys =
    piece === 'article'
      ? [`site/${articlePath(cycle)}`]
      : formsOfPiece[piece].map((file) => `backroom/${cycle.id}/${file}`);
  const forms = keys.flatMap((key) => {
    const text = textOf(key);
    return text === undefined
      ? []
      : [{ file: key.slice(key.indexOf('/') + 1), words: ` ${plainWords(text, key.endsWith('.html'))} ` }];
  });
  const duty = duties[piece];
  if (forms.length > 0) return { piece, duty, forms };
  return {
    piece,
    duty,
    forms,
    without: piece === 'article' && isSealed(cycle, asOf) ? 'sealed' : 'not made',
  };
};

/** One thing that pieces must carry. */
interface CarriedThing {
  readonly kind: CarriedRow['kind'];
  readonly label: string;
  /** Each of them has to stand there, and of each at least one wording. */
  readonly texts: (piece: Piece) => readonly (readonly string[])[];
  readonly owed: (duty: Duty) => boolean;
  readonly location: Location;
  /** As a finding calls it. */
  readonly called: string;
}

const itemThings = (cycle: Cycle): readonly CarriedThing[] =>
  cycle.items.flatMap((item): readonly CarriedThing[] => [
    {
      kind: 'item',
      label: item.name,
      texts: () => [[shortName(item.name)]],
      owed: ({ items }) => items,
      location: locationIn(item.source, 'name'),
      called: `\`${shortName(item.name)}\``,
    },
    ...cautionsOf(item).map(
      (caution): CarriedThing => ({
        kind: 'caution',
        label: caution.label,
        texts: () => caution.lines.map((line) => [line]),
        owed: (duty) => duty.caution(caution),
        location: locationIn(item.source, 'category', 'cautions', 'name'),
        called: `the caution “${caution.label}” of \`${shortName(item.name)}\``,
      }),
    ),
  ]);

const sharedThings = (box: Box, cycle: Cycle, asOf: Moment): readonly CarriedThing[] => {
  const { peek, live } = cycle;
  const call = callFor(box, cycle, asOf);
  const { source } = box.settings;
  return [
    ...(peek
      ? [
          {
            kind: 'peek',
            label: 'The peek',
            texts: (piece) => {
              if (duties[piece].peek === 'whole') return [[peek.text]];
              return [[live?.peek ?? sentencesOf(peek.text, box.settings.lang)[0] ?? '']];
            },
            owed: (duty) => duty.peek !== 'no',
            location: locationIn(cycle.source, 'peek.text', 'peek'),
            called: 'the peek',
          } satisfies CarriedThing,
        ]
      : []),
    ...(call
      ? [
          {
            kind: 'call',
            label: `The call, “${call.text}”`,
            texts: () => [[call.text]],
            owed: ({ callText }) => callText,
            location: locationIn(source, `calls.${call.kind}.text`, 'calls', 'name'),
            called: `the call “${call.text}”`,
          } satisfies CarriedThing,
          {
            kind: 'call',
            label: 'Its address',
            texts: () => [[call.address, saidAddress(call.address)]],
            owed: ({ callAddress }) => callAddress,
            location: locationIn(source, `calls.${call.kind}.address`, 'calls', 'name'),
            called: `the call’s address ${call.address}`,
          } satisfies CarriedThing,
        ]
      : []),
  ];
};

/** The files of a piece that lack a thing. */
const lackedBy = (thing: CarriedThing, { piece, forms }: Told): readonly string[] =>
  forms
    .filter((form) => !thing.texts(piece).every((wordings) => wordings.some((text) => holds(form, text))))
    .map(({ file }) => file);

const stateOf = (thing: CarriedThing, told: Told): PieceState => {
  if (told.piece === 'invitation' && thing.kind === 'item') {
    if (told.without) return 'not made';
    return lackedBy(thing, told).length === told.forms.length ? 'kept still' : 'given away';
  }
  if (!thing.owed(told.duty)) return 'not asked';
  if (told.without) return told.without;
  return lackedBy(thing, told).length === 0 ? 'there' : 'absent';
};

const findingFor = (thing: CarriedThing, told: Told, state: PieceState): readonly Diagnostic[] => {
  const title = pieceTitles[told.piece].toLowerCase();
  if (state === 'absent')
    return [
      {
        weight: 'look at',
        rule: `whole-${thing.kind}`,
        location: thing.location,
        message: `Unexpected ${title} without ${thing.called}, expected it in ${lackedBy(thing, told).join(' and in ')}`,
        fix: `Let the ${title} say it: look for words of your own in cycle.md that take its place, or for a template that leaves it out`,
      },
    ];
  if (state === 'given away')
    return [
      {
        weight: 'look at',
        rule: 'whole-spoils',
        location: thing.location,
        message: `Unexpected ${thing.called} in the invitation, expected nothing that the box holds`,
        fix: 'Take the name out of the box’s own name and description, of `invitation` and of the live’s address',
      },
    ];
  return [];
};

const completenessOfCycle = (
  box: Box,
  cycle: Cycle,
  asOf: Moment,
  textOf: (key: string) => string | undefined,
): { readonly whole: CycleCompleteness; readonly diagnostics: readonly Diagnostic[] } => {
  const pieces = piecesOf(box.settings);
  const told = pieces.map((piece) => toldIn(cycle, piece, asOf, textOf));
  const things = [...itemThings(cycle), ...sharedThings(box, cycle, asOf)];
  const states = things.map((thing) => told.map((one) => stateOf(thing, one)));
  return {
    whole: {
      cycle: cycle.id,
      pieces,
      rows: things.map(({ kind, label }, i) => ({ kind, label, states: states[i] as readonly PieceState[] })),
    },
    diagnostics: things.flatMap((thing, i) =>
      told.flatMap((one, j) => findingFor(thing, one, states[i]?.[j] as PieceState)),
    ),
  };
};

/**
 * Pieces that box.md names and that have no file: said once of one that was made for no cycle, else of each cycle. The
 * invitation is made only for what is to come, and a sealed article is not missed.
 */
const notMade = (box: Box, found: readonly CycleCompleteness[]): readonly Diagnostic[] =>
  piecesOf(box.settings).flatMap((piece, column) => {
    const without = found.filter(({ rows }) => rows.some(({ states }) => states[column] === 'not made'));
    const never = without.length === found.length;
    const dated = box.cycles.some(({ reveal }) => reveal !== undefined);
    if (without.length === 0 || (piece === 'invitation' && !(never && dated))) return [];
    const places = never
      ? [{ where: 'any cycle', location: locationIn(box.settings.source, 'pieces', 'name') }]
      : box.cycles
          .filter(({ id }) => without.some(({ cycle }) => cycle === id))
          .map(({ id, source }) => ({ where: id, location: locationIn(source, 'theme') }));
    return places.map(({ where, location }) => ({
      weight: 'look at',
      rule: 'whole-piece',
      location,
      message: `Unexpected absence of the piece \`${piece}\` for ${where}, expected its files`,
      fix: `Take \`${piece}\` out of \`pieces\` in box.md until it is made`,
    }));
  });

/** What every cycle's pieces carry, and findings about what they do not, from all files of a build. */
export const completenessOf = (
  box: Box,
  asOf: Moment,
  outputs: readonly Output[],
): { readonly whole: Completeness; readonly diagnostics: readonly Diagnostic[] } => {
  const texts: ReadonlyMap<string, string> = new Map(
    outputs.flatMap((output) =>
      'text' in output ? [[`${output.where}/${output.path}`, output.text] as const] : [],
    ),
  );
  const found = box.cycles.map((cycle) => completenessOfCycle(box, cycle, asOf, (key) => texts.get(key)));
  const whole = found.map((one) => one.whole);
  return {
    whole,
    diagnostics: [...notMade(box, whole), ...found.flatMap(({ diagnostics }) => diagnostics)],
  };
};
