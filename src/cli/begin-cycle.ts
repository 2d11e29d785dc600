/** The questions that lay out a cycle. */
import { begin } from '../wording/en/begin.ts';
import {
  bareThing,
  checkAnswer,
  cycleBefore,
  dayNear,
  monthInWords,
  proposeCaution,
  proposeKinds,
  proposeReveal,
  proposeShipped,
} from '../workspace/begin/index.ts';
import type { KnownBox } from '../workspace/begin/known-box.ts';
import type { CycleAnswers, ThingAnswers } from '../workspace/begin/plan-records.ts';
import { askList } from './begin-list.ts';
import { padEnd } from './cells.ts';
import type { Environment, Values } from './environment.ts';
import type { Checked, Questioner } from './questions.ts';

const { questions, expected, mistakes, said } = begin;

/** More things than any box has: a list of something else. A choice of ours, no source. */
const MOST_THINGS = 99;

const namesIn = (typed: string): readonly string[] =>
  typed
    .split(/[;\n]/)
    .map((name) => name.replace(/\s+/g, ' ').trim())
    .filter(Boolean);

type Things = { readonly things: readonly ThingAnswers[] } | { readonly mistake: string } | undefined;

const askThings = async (
  questioner: Questioner,
  values: Values,
  edge: Environment,
  box: KnownBox,
): Promise<Things> => {
  if (values.from !== undefined) {
    if (values.things !== undefined) return { mistake: mistakes.listAndThings };
    const read = await askList(questioner, values, edge, box.currency);
    if (!read || 'mistake' in read) return read;
    const among = read.list.columns.find((column) => column.field === 'name')?.title;
    return {
      things: read.list.things.map(({ name, values: fields, story, notes }) => ({
        ...{ name, story, notes, pictures: [] },
        kind: typeof fields.kind === 'string' ? fields.kind : '',
        ...(among !== undefined && { among }),
        values: fields,
      })),
    };
  }
  if (values.things !== undefined || !questioner.isAsked) {
    const names = await questioner.ask({
      option: 'things',
      words: expected.things,
      check: (typed): Checked<readonly string[]> => {
        const names = namesIn(typed);
        return names.length > 0 ? { value: names } : { expected: expected.things };
      },
    });
    return names && { things: names.map((name) => bareThing(name)) };
  }
  const things: ThingAnswers[] = [];
  for (;;) {
    const number = things.length + 1;
    const name = await questioner.ask({
      option: 'things',
      words: `${questions.thing(number)}${number === 1 ? '' : ` (${questions.noMore})`}:`,
      check: (typed): Checked<string> =>
        typed !== '' || number > 1 ? { value: typed.replace(/\s+/g, ' ') } : { expected: expected.thing },
    });
    if (!name) return { things };
    things.push(bareThing(name));
  }
};

/** "2 plant mister" as a change; several have ; between them. */
const readKinds = (typed: string, kinds: readonly string[]): Checked<readonly string[]> => {
  const changed = [...kinds];
  for (const one of typed.split(';').filter((part) => part.trim() !== '')) {
    const [, number = '', kind = ''] = /^\s*(\d+)[.:=)]?\s+(.*\S)\s*$/.exec(one) ?? [];
    if (kind === '' || kinds[Number(number) - 1] === undefined)
      return { expected: expected.kinds(kinds.length) };
    changed[Number(number) - 1] = kind;
  }
  return { value: changed };
};

const withKinds = async (
  { ask, tell, isAsked }: Questioner,
  values: Values,
  things: readonly ThingAnswers[],
  box: KnownBox,
): Promise<readonly ThingAnswers[] | undefined> => {
  const proposed = await proposeKinds(
    things.map(({ name }) => name),
    box,
  );
  let kinds = things.map(({ kind }, i) => kind || proposed[i] || '');
  const take = (): readonly ThingAnswers[] => things.map((thing, i) => ({ ...thing, kind: kinds[i] ?? '' }));
  if (values.kinds !== undefined) {
    const given = await ask({
      option: 'kinds',
      words: '',
      check: (typed): Checked<readonly string[]> => {
        const words = typed.split(';').map((word) => word.trim());
        return words.length <= things.length
          ? { value: words }
          : { expected: expected.kindsInOrder(things.length) };
      },
    });
    if (!given) return undefined;
    kinds = kinds.map((kind, i) => given[i] || kind);
    return take();
  }
  if (!isAsked) return take();
  const wide = Math.max(...things.map(({ name }) => name.length));
  for (;;) {
    tell('', said.things);
    for (const [i, { name, among }] of things.entries()) {
      const cautions = proposeCaution({ name, kind: kinds[i] ?? '', among });
      tell(
        `${String(i + 1).padStart(4)}  ${padEnd(name, wide)}  ${kinds[i] || '?'}${cautions === undefined ? '' : `, ${said.hurtful(cautions)}`}`,
      );
    }
    if (kinds.some((kind) => kind === '')) tell(said.unknownKinds);
    const current = kinds;
    const answer = await ask<readonly string[] | 'yes'>({
      option: 'kinds',
      words: questions.kinds,
      initial: 'yes',
      check: (typed) => (/^y(?:es)?$/i.test(typed) ? { value: 'yes' } : readKinds(typed, current)),
    });
    if (answer === 'yes' || answer === undefined) return take();
    kinds = [...answer];
  }
};

/** Asks for a cycle of a month; undefined where an answer is lacking or the owner said no. */
export const askCycle = async (
  questioner: Questioner,
  values: Values,
  edge: Environment,
  { box, month }: { readonly box: KnownBox; readonly month: string },
): Promise<CycleAnswers | { readonly mistake: string } | undefined> => {
  const { ask, tell } = questioner;
  const field =
    (key: string) =>
    (typed: string): Checked<string> =>
      checkAnswer('cycle', [key], typed);
  const promised = cycleBefore(box, month)?.peek;
  tell('', said.cycle(monthInWords(month), month));
  if (promised !== undefined) tell(said.promised(promised));
  const theme = await ask({
    option: 'theme',
    words: questions.theme(monthInWords(month)),
    check: field('theme'),
  });
  const found = await askThings(questioner, values, edge, box);
  if (found && 'mistake' in found) return found;
  if (found && found.things.length > MOST_THINGS)
    return { mistake: mistakes.tooMany(found.things.length, MOST_THINGS) };
  const things = found && (await withKinds(questioner, values, found.things, box));
  const count = things?.length ?? 0;
  const lead =
    count === 1
      ? 1
      : await ask({
          option: 'lead',
          words: questions.lead,
          initial: '1',
          check: (typed): Checked<number> =>
            /^\d+$/.test(typed) && Number(typed) >= 1 && (!things || Number(typed) <= count)
              ? { value: Number(typed) }
              : { expected: expected.lead(count) },
        });
  const shipped = await ask({
    option: 'shipped',
    words: questions.shipped,
    initial: proposeShipped(box, month),
    check: (typed) => field('shipped')(dayNear(typed, month)),
  });
  const reveal =
    shipped &&
    (await ask({
      option: 'reveal',
      words: questions.reveal,
      initial: proposeReveal(box, month, shipped),
      check: (typed) => field('reveal')(typed.replace(/^(\d{4}-\d\d-\d\d) (?=\d)/, '$1T')),
    }));
  if (!theme || !things || !lead || !shipped || !reveal) return undefined;
  return {
    ...{ month, theme, things, shipped, reveal },
    lead: lead - 1,
    ...(promised !== undefined && { promised }),
  };
};
