/** The questions that make box.md. */

import { begin } from '../wording/en/begin.ts';
import { checkAnswer, currenciesMeant, currencyName, slugOf } from '../workspace/begin/index.ts';
import type { BoxAnswers } from '../workspace/begin/plan-records.ts';
import type { Environment, Values } from './environment.ts';
import { FREQUENT, guessMachine, type MachineGuess } from './machine.ts';
import type { Checked, Questioner } from './questions.ts';

const { questions, expected, said } = begin;

/** `tinandtansy.example` as an address, since nobody says https. */
const asAddress = (typed: string): string =>
  /^[^\s/:@]+\.[^\s/:@]{2,}(?:[/:].*)?$/.test(typed) ? `https://${typed}` : typed;

/** A bare name is taken here, so what is expected says so, where the field of a record asks for https. */
const addressAnswer = (answer: Checked<string>): Checked<string> =>
  'value' in answer ? answer : { expected: expected.address };

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
    check: (typed) => addressAnswer(field('url')(asAddress(typed))),
  });
  const guess = guessMachine(edge.env);
  const one = (option: string, key: string, initial: string | undefined): Promise<string | undefined> =>
    ask({
      option,
      words: questions.machineOne[option] ?? '',
      ...(initial !== undefined && { initial }),
      check: key === 'currency' ? (typed) => readCurrency(typed, guess) : field(key),
    });
  const isSaid = ['currency', 'zone', 'language'].some((option) => values[option] !== undefined);
  const money =
    isAsked && !isSaid
      ? await ask<Money>({
          option: 'currency',
          words: questions.machine,
          initial: [guess.currency, guess.zone, guess.language].filter(Boolean).join(' '),
          check: (typed) => readMoney(typed, guess),
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
        : addressAnswer(checkAnswer('box', ['calls', 'join', 'address'], joinAddress(typed, address))),
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

/** As many currencies as are offered at once. */
const MOST_OFFERED = 6;

/** A currency by its letters or as people say it; where several may be meant, the guess is offered first, and none is taken. */
export const readCurrency = (typed: string, guess: MachineGuess): Checked<string> => {
  const meant = currenciesMeant(typed, [guess.language]);
  const [only] = meant;
  if (only === undefined) return { expected: expected.currency };
  if (meant.length === 1) return { value: only };
  const rank = (code: string): number => (code === guess.currency ? 0 : FREQUENT.has(code) ? 1 : 2);
  const offered = meant.toSorted((a, b) => rank(a) - rank(b)).slice(0, MOST_OFFERED);
  return {
    expected: expected.currencies(
      offered.map((code) => [code, currencyName(code, 'en')]),
      offered.length === meant.length,
    ),
  };
};

/** Words in the longest name that one may say of a currency: "United Arab Emirates dirhams". */
const MOST_WORDS = 4;

/** How many of these words, from the first on, are a currency's name. */
const currencySpan = (words: readonly string[], { language }: MachineGuess): number | undefined =>
  [...Array(MOST_WORDS).keys()]
    .map((i) => MOST_WORDS - i)
    .find((length) => currenciesMeant(words.slice(0, length).join(' '), [language]).length > 0);

/** "euros Europe/Berlin de": what each word is shows in its form; what is not said stays as guessed. */
export const readMoney = (typed: string, guess: MachineGuess): Checked<Money> => {
  let [currency, zone, language] = [guess.currency ?? '', guess.zone, guess.language];
  const takes = (key: string, word: string): boolean => 'value' in checkAnswer('box', [key], word);
  const words = typed.split(/[\s,;]+/).filter(Boolean);
  for (let at = 0; at < words.length; ) {
    const word = words[at] ?? '';
    const isCode = /^[a-z]{3}$/i.test(word) && takes('currency', word.toUpperCase());
    const isZone = (word.includes('/') || /^utc$/i.test(word)) && takes('timeZone', word);
    // Names are looked up last, because all of them have to be made; `kr` is a language too, and nobody's here.
    const span = isCode || isZone || word === language ? undefined : currencySpan(words.slice(at), guess);
    if (isZone) zone = word;
    else if (isCode) currency = word.toUpperCase();
    else if (span !== undefined) {
      const read = readCurrency(words.slice(at, at + span).join(' '), guess);
      if ('expected' in read) return read;
      currency = read.value;
    } else if (word === language || takes('lang', word)) language = word;
    else return { expected: expected.machine };
    at += span ?? 1;
  }
  return currency === '' ? { expected: expected.currency } : { value: { currency, zone, language } };
};
