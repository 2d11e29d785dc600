/** What a cycle asks for from the packing to the film, with the days that its records give. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { mustFixAny } from '../diagnostics/diagnostic.ts';
import type { BoxSettings, Cycle, Moment, Piece, PlainDate } from '../model/box.ts';
import { dateInZone } from '../model/calendar.ts';
import { piecesOf } from '../model/pieces.ts';
import type { ParcelsFacts } from '../pipeline/parcels.ts';
import { dateOfDay } from '../pipeline/parcels.ts';
import { dayOfDate } from '../text/days.ts';

/** Steps of a cycle; the pieces among them are those that its box makes. */
export type StepName = 'written' | 'photographs' | 'sent' | 'proof' | 'arrived' | Piece;

/** `late`: its day is over and nobody has said that it is done. */
export type StepState = 'done' | 'next' | 'later' | 'late';

/** One step. */
export interface Step {
  readonly name: StepName;
  readonly state: StepState;
  /** The day by which it should be done; absent while nobody can know. */
  readonly due?: PlainDate;
  /** The day on which it was, where the record or the parcels say. */
  readonly doneOn?: PlainDate;
}

export interface StepsInput {
  readonly cycle: Cycle;
  readonly settings: BoxSettings;
  readonly asOf: Moment;
  /** Findings of its records. */
  readonly diagnostics: readonly Diagnostic[];
  /** How many of its things have a picture, and whether the whole box has one. */
  readonly pictures: { readonly have: number; readonly of: number; readonly wholeBox: boolean };
  readonly parcels: ParcelsFacts | undefined;
  /** Items that will be found; absent where there is no proof. */
  readonly proof?: { readonly atAim: number; readonly items: number };
}

/** The invitation goes out so many days before the evening. Common practice, no source. */
const DAYS_TO_INVITE = 5;
/** The proof is read so many days before, so that there is time to mend. Common practice, no source. */
const DAYS_TO_PROOF = 2;
/** Film and cards follow within so many days, while people still ask. Common practice, no source. */
const DAYS_TO_FILM = 3;

const moved = (date: PlainDate, days: number): PlainDate => dateOfDay(dayOfDate(date) + days);

type Draft = Omit<Step, 'state'> & { readonly isDone: boolean };

const draftsOf = ({
  cycle,
  settings,
  asOf,
  diagnostics,
  pictures,
  parcels,
  proof,
}: StepsInput): readonly Draft[] => {
  const { timeZone } = settings;
  const today = dateInZone(asOf, timeZone);
  const evening = cycle.reveal === undefined ? undefined : dateInZone(cycle.reveal, timeZone);
  const before = (days: number) => (evening === undefined ? {} : { due: moved(evening, -days) });
  const after = (days: number) => (evening === undefined ? {} : { due: moved(evening, days) });
  const arrived = parcels?.outlook.dates.day;
  const draft = (name: StepName, isDone: boolean, days: Partial<Step> = {}): Draft => ({
    ...days,
    name,
    isDone,
  });
  const pieceDays: Readonly<Record<Piece, Partial<Step>>> = {
    invitation: before(DAYS_TO_INVITE),
    live: after(0),
    article: after(0),
    letter: after(1),
    clip: after(DAYS_TO_FILM),
    cards: after(DAYS_TO_FILM),
  };
  const made = cycle.made ?? {};
  const isPast = evening !== undefined && evening < today;
  return [
    draft('written', !mustFixAny(diagnostics), before(DAYS_TO_PROOF)),
    draft('photographs', pictures.of > 0 && pictures.have === pictures.of && pictures.wholeBox, {
      due: cycle.shipped,
    }),
    draft('sent', cycle.shipped <= today, {
      due: cycle.shipped,
      ...(cycle.shipped <= today && { doneOn: cycle.shipped }),
    }),
    draft('arrived', parcels?.reached ?? isPast, {
      ...(arrived !== undefined &&
        (parcels?.reached ? { doneOn: dateOfDay(arrived) } : { due: dateOfDay(arrived) })),
    }),
    draft('proof', proof !== undefined && proof.atAim === proof.items, before(DAYS_TO_PROOF)),
    ...piecesOf(settings).map((piece) => {
      const doneOn = made[piece];
      return draft(piece, doneOn !== undefined, {
        ...pieceDays[piece],
        ...(doneOn !== undefined && { doneOn }),
      });
    }),
  ];
};

/** The steps in the order of their days; of one day, as a cycle goes. */
export const stepsOf = (input: StepsInput): readonly Step[] => {
  const today = dateInZone(input.asOf, input.settings.timeZone);
  const drafts = [...draftsOf(input)].sort((a, b) => {
    const [one, other] = [a.doneOn ?? a.due ?? '9999', b.doneOn ?? b.due ?? '9999'];
    return one < other ? -1 : one > other ? 1 : 0;
  });
  const open = drafts.filter(({ isDone }) => !isDone);
  // Before there is anything in the box, there is nothing to photograph or to pack.
  const next = (input.pictures.of === 0 && open.find(({ name }) => name === 'written')) || open[0];
  return drafts.map(({ isDone, ...step }): Step => {
    if (isDone) return { ...step, state: 'done' };
    if (step.due !== undefined && step.due < today) return { ...step, state: 'late' };
    return { ...step, state: step.name === next?.name ? 'next' : 'later' };
  });
};
