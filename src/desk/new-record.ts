/** Records that are begun on the desk, laid out as `lidlore begin` lays them out. */
import { MONTH } from '../content/paths.ts';
import type { SentForm } from '../io/serve.ts';
import { utf8Bytes } from '../text/utf8.ts';
import {
  bareThing,
  cycleBefore,
  knownBox,
  nextMonth,
  planCycle,
  planNextThing,
  proposeKinds,
  proposeReveal,
  proposeShipped,
  todayIn,
} from '../workspace/begin/index.ts';
import type { PlannedFile } from '../workspace/begin/plan-records.ts';
import { addressOf, type Context, itemFiles, type Outcome, sent } from './context.ts';

/** What is typed on one line. */
const lineOf = (form: SentForm, name: string): string => (sent(form, name) ?? '').replace(/\s+/g, ' ').trim();

/** The next thing of the cycle; undefined where nothing was typed or there is no cycle. */
const newThing = async (context: Context, form: SentForm): Promise<PlannedFile | undefined> => {
  const { table, id } = context;
  const box = knownBox(table.snapshot());
  const name = lineOf(form, 'name');
  if (name === '' || id === '' || !box) return undefined;
  const [kind] = await proposeKinds([name], box);
  return planNextThing(bareThing(name, kind), id, itemFiles(context));
};

/** A cycle of a month, its days by the habit of those before it; undefined where that is no month or it has no theme. */
const newCycle = ({ table }: Context, form: SentForm): PlannedFile | undefined => {
  const box = knownBox(table.snapshot());
  const [month, theme] = [lineOf(form, 'month'), lineOf(form, 'theme')];
  if (!box || !MONTH.test(month) || theme === '') return undefined;
  const shipped = proposeShipped(box, month);
  const promised = cycleBefore(box, month)?.peek;
  const [record] = planCycle(
    {
      ...{ month, theme, shipped, things: [], lead: 0 },
      reveal: proposeReveal(box, month, shipped),
      ...(promised !== undefined && { promised }),
    },
    box.lang,
  );
  return record;
};

/** The month that a next cycle would be of, `2026-05`; empty where box.md is no record. */
export const monthToBegin = ({ table }: Context): string => {
  const box = knownBox(table.snapshot());
  return box ? nextMonth(box, todayIn(box.timeZone, table.now())) : '';
};

/** Whether a press asks for a record to be begun. */
export const isBeginning = (action: string | undefined): action is 'add thing' | 'add cycle' =>
  action === 'add thing' || action === 'add cycle';

/** Begins a thing or a cycle and goes on to its record; back to where that was asked for, where one stands there already. */
export const beginRecord = async (
  context: Context,
  form: SentForm,
  action: 'add thing' | 'add cycle',
  back: string,
): Promise<Outcome> => {
  const planned = await (action === 'add thing' ? newThing(context, form) : newCycle(context, form));
  if (!planned) return { kind: 'go', to: back, said: 'not begun' };
  const { path, text } = planned;
  const written = await context.table.save({ path, seen: null, bytes: utf8Bytes(text), about: ['whole'] });
  return written.kind === 'written'
    ? { kind: 'go', to: addressOf('write', path), said: 'made' }
    : { kind: 'go', to: back, said: 'stands' };
};
