/**
 * What is said at a live where neither the owner nor the stories give the words. English alone: a box in another
 * language writes these itself, and is told so.
 */
import type { Call } from './calls.ts';

export interface StockWords {
  readonly greet: readonly string[];
  readonly about: (name: string, description: string) => string;
  readonly question: (earlier: string | undefined, later: string) => string;
  readonly whole: (names: string) => string;
  readonly call: (call: Call, address: string) => readonly string[];
}

const described = (name: string, description: string): string =>
  /^(?:An?|The|One|Our) /.test(description)
    ? `${name} is ${description.charAt(0).toLowerCase()}${description.slice(1)}`
    : description;

const english: StockWords = {
  greet: [
    'Hello, and come in. Where are you watching from?',
    'And has yours arrived? Tell me what you unpacked first.',
  ],
  about: (name, description) => `If this is your first time here: ${described(name, description)}`,
  question: (earlier, later) =>
    earlier === undefined
      ? `What would you do with the ${later} first?`
      : `Of the ${earlier} and the ${later}: which would you use first, and where?`,
  whole: (names) => `And that is all of it, on one table. ${names}.`,
  call: ({ text, places }, address) => [
    `${text}: ${address}.`,
    ...(places === undefined ? [] : [places === 1 ? 'There is one place.' : `There are ${places} places.`]),
  ],
};

const silent: StockWords = {
  greet: [],
  about: (_, description) => description,
  question: () => '',
  whole: (names) => `${names}.`,
  call: ({ text }, address) => [`${text}: ${address}`],
};

export const stockWords = (lang: string): StockWords => (/^en\b/i.test(lang) ? english : silent);

/** An address as it is said: without what a browser adds by itself. */
export const saidAddress = (address: string): string =>
  address.replace(/^https?:\/\/(?:www\.)?/i, '').replace(/\/$/, '');
