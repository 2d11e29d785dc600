/** The questions that make box.md. */

import { begin } from '../wording/en/begin.ts';
import { checkAnswer, slugOf } from '../workspace/begin/index.ts';
import type { BoxAnswers } from '../workspace/begin/plan-records.ts';
import type { Environment, Values } from './environment.ts';
import { guessMachine } from './machine.ts';
import type { Checked, Questioner } from './questions.ts';

const { questions, expected, said } = begin;

/** `tinandtansy.example` as an address, since nobody says https. */
const asAddress = (typed: string): string =>
  /^[^\s/:@]+\.[^\s/:@]{2,}(?:[/:].*)?$/.test(typed) ? `https://${typed}` : typed;

interface Money {
  readonly currency: string;
  readonly zone: string;
  readonly language: string;
}

/** Asks for the box; undefined where an answer is lacking. */
export const askBox = async (
  { ask, tell, isAsked }: Questioner,
  values: Values,
  edge: Environment,
): Promise<BoxAnswers | undefined> => {
  const field =
    (...path: string[]) =>
    (typed: string): Checked<string> =>
      checkAnswer('box', path, typed);
  tell(said.welcome, said.how, '');
  const name = await ask({ option: 'name', words: questions.name, check: field('name') });
  const about = await ask({ option: 'about', words: questions.about, check: field('description') });
  // RFC 2606: a name that nobody can own, until there is a real one.
  const standIn = `https://${slugOf(name ?? '').replace(/[^a-z0-9-]/g, '') || 'my-box'}.example/`;
  const address = await ask({
    option: 'address',
    words: questions.address,
    initial: standIn,
    check: (typed) => field('url')(asAddress(typed)),
  });
  const guess = guessMachine(edge.env);
  const one = (option: string, key: string, initial: string | undefined): Promise<string | undefined> =>
    ask({
      option,
      words: questions.machineOne[option] ?? '',
      ...(initial !== undefined && { initial }),
      check: field(key),
    });
  const isSaid = ['currency', 'zone', 'language'].some((option) => values[option] !== undefined);
  const money =
    isAsked && !isSaid
      ? await ask<Money>({
          option: 'currency',
          words: questions.machine,
          initial: [guess.currency, guess.zone, guess.language].filter(Boolean).join(' '),
          check: (typed) => readMoney(typed, guess, checkAnswer),
        })
      : {
          currency: (await one('currency', 'currency', guess.currency)) ?? '',
          zone: (await one('zone', 'timeZone', guess.zone)) ?? '',
          language: (await one('language', 'lang', guess.language)) ?? '',
        };
  const join = await ask<string>({
    option: 'join',
    words: questions.join,
    initial: '',
    check: (typed) =>
      typed === ''
        ? { value: '' }
        : checkAnswer('box', ['calls', 'join', 'address'], joinAddress(typed, address)),
  });
  const author =
    name === undefined
      ? undefined
      : values.author === undefined
        ? name
        : await ask({ option: 'author', words: '', check: field('author') });
  if (
    !(name && about && address && money?.currency && money.zone && money.language && author) ||
    join === undefined
  )
    return undefined;
  const { currency, zone: timeZone, language: lang } = money;
  return {
    ...{ name, about, address, lang, timeZone, currency, author },
    isStandIn: address === standIn,
    ...(join !== '' && { join }),
  };
};

/** "/join" is below the site's own address. */
const joinAddress = (typed: string, site: string | undefined): string =>
  typed.startsWith('/') && site !== undefined && URL.canParse(typed, site)
    ? new URL(typed, site).href
    : asAddress(typed);

/** "EUR Europe/Berlin de": what each word is shows in its form; what is not said stays as guessed. */
const readMoney = (
  typed: string,
  guess: { readonly currency?: string; readonly zone: string; readonly language: string },
  checkAnswer: (record: 'box', path: readonly string[], typed: string) => Checked<string>,
): Checked<Money> => {
  let [currency, zone, language] = [guess.currency ?? '', guess.zone, guess.language];
  const takes = (key: string, word: string): boolean => 'value' in checkAnswer('box', [key], word);
  for (const word of typed.split(/[\s,;]+/).filter(Boolean)) {
    if (/^[a-z]{3}$/i.test(word) && takes('currency', word.toUpperCase())) currency = word.toUpperCase();
    else if ((word.includes('/') || /^utc$/i.test(word)) && takes('timeZone', word)) zone = word;
    else if (takes('lang', word)) language = word;
    else return { expected: expected.machine };
  }
  return currency === '' ? { expected: expected.currency } : { value: { currency, zone, language } };
};
