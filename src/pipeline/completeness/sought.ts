/** What is looked for in a cycle's pieces, from its records alone. */
import type { Location } from '../../diagnostics/diagnostic.ts';
import type { Box, Cycle, Moment, Piece } from '../../model/box.ts';
import { addressFrom, callFor, saidAddress } from '../../model/calls.ts';
import type { CarriedThing } from '../../model/carried.ts';
import { cautionsOf } from '../../model/cautions.ts';
import { locationIn } from '../../model/location-in.ts';
import { sentencesOf } from '../../text/sentences.ts';
import type { Wording } from '../../wording/wording.ts';
import { type Duty, duties } from './duties.ts';

/** Texts of which each has to stand in a file, in at least one of its forms. */
export type SoughtTexts = readonly (readonly string[])[];

/** One thing that pieces must carry. */
export interface SoughtThing {
  readonly thing: CarriedThing;
  readonly texts: SoughtTexts;
  /** What will do for a piece that has not the time for more. */
  readonly begun?: SoughtTexts;
  /** What will do as well in a piece, because it differs in what is that piece's own alone. */
  readonly ownOf?: (piece: Piece) => readonly string[];
  /** Asked only for a finding, because it is read from the record’s file. */
  readonly location: Location;
  /** As a finding calls it. */
  readonly called: string;
}

/** Whether a piece must carry a thing. */
export const isOwed = (thing: CarriedThing, duty: Duty): boolean => {
  switch (thing.kind) {
    case 'item':
      return duty.items;
    case 'caution':
      return duty.caution(thing);
    case 'peek':
      return duty.peek !== 'no';
    case 'call':
      return duty.callText;
    case 'address':
      return duty.callAddress;
  }
};

/** What is looked for of a thing in the files of a piece. */
export const soughtTexts = ({ texts, begun = texts, ownOf }: SoughtThing, piece: Piece): SoughtTexts => {
  const own = ownOf?.(piece) ?? [];
  return (duties[piece].peek === 'whole' ? texts : begun).map((forms) => [...new Set([...forms, ...own])]);
};

const itemThings = ({ items }: Cycle, { cautions }: Wording): readonly SoughtThing[] =>
  items.flatMap((item): readonly SoughtThing[] => {
    const name = item.inText.short;
    return [
      {
        thing: { kind: 'item', name: item.name },
        texts: [[name]],
        get location() {
          return locationIn(item.source, 'name');
        },
        called: `\`${name}\``,
      },
      ...cautionsOf(item).map((caution): SoughtThing => {
        const { label, lines } = cautions.text(caution);
        return {
          thing: { kind: 'caution', sort: caution.sort },
          texts: lines.map((line) => [line]),
          get location() {
            return locationIn(item.source, 'category', 'cautions', 'name');
          },
          called: `the caution “${label}” of \`${name}\``,
        };
      }),
    ];
  });

const peekThings = ({ peek, live, source }: Cycle, lang: string): readonly SoughtThing[] =>
  peek
    ? [
        {
          thing: { kind: 'peek' },
          texts: [[peek.text]],
          begun: [[live?.peek ?? sentencesOf(peek.text, lang)[0] ?? '']],
          get location() {
            return locationIn(source, 'peek.text', 'peek');
          },
          called: 'the peek',
        },
      ]
    : [];

/** An address in the forms in which a piece may say it. */
const formsOf = (address: string): readonly string[] => [address, saidAddress(address)];

const callThings = (box: Box, cycle: Cycle, asOf: Moment): readonly SoughtThing[] => {
  const call = callFor(box, cycle, asOf);
  const { source, calls } = box.settings;
  const terms = call && calls[call.kind];
  if (!call || !terms) return [];
  return [
    {
      thing: { kind: 'call', text: call.text },
      texts: [[call.text]],
      get location() {
        return locationIn(source, `calls.${call.kind}.text`, 'calls', 'name');
      },
      called: `the call “${call.text}”`,
    },
    {
      thing: { kind: 'address' },
      // Without the piece's mark, or with it where it stands in the middle, as before a fragment.
      texts: [formsOf(terms.address)],
      ownOf: (piece) => formsOf(addressFrom(terms, piece)),
      get location() {
        return locationIn(source, `calls.${call.kind}.address`, 'calls', 'name');
      },
      called: `the call’s address ${terms.address}`,
    },
  ];
};

/** Everything that a cycle's pieces may have to carry: items with their cautions, peek, call, address. */
export const soughtIn = (box: Box, cycle: Cycle, asOf: Moment, wording: Wording): readonly SoughtThing[] => [
  ...itemThings(cycle, wording),
  ...peekThings(cycle, box.settings.lang),
  ...callThings(box, cycle, asOf),
];
