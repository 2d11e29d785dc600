/** The letter without markup: as a person would type it. */
import { wrapped } from '../../render/plain-text.ts';
import type { Wording } from '../../wording/wording.ts';
import type { Letter, LetterItem } from './letter.ts';

const INDENT = '   ';

type TextWords = Wording['letter']['text'];

const itemText = ({ number, name, lead, line, cautions }: LetterItem, words: TextWords): string =>
  [
    wrapped(`${number}. ${name}`),
    wrapped(lead ? words.lead(line) : line, INDENT),
    ...cautions.map(({ label, lines }) => wrapped(`${label}: ${lines.join(' ')}`, INDENT)),
  ].join('\n');

const callText = ({ call, description, price }: Letter, words: TextWords): readonly string[] =>
  call
    ? [
        wrapped(words.offer(description, price)),
        `${wrapped(words.call(call.text, call.places))}\n${call.address}`,
      ]
    : [];

const voicesText = ({ voices }: Letter, words: TextWords): readonly string[] =>
  voices.map(
    ({ text, name, given }) =>
      `${wrapped(words.quoted(text), INDENT)}\n${wrapped(words.by(name, given), INDENT)}`,
  );

/** Lines of at most 72 characters, an address on a line of its own, an empty line between paragraphs. */
export const letterText = (letter: Letter, { text: words, gaps }: Wording['letter']): string => {
  const { replay, items, peek } = letter;
  const paragraphs = [
    words.greeting,
    ...(letter.hook === undefined ? [] : [wrapped(letter.hook)]),
    `${wrapped(words.read(letter.month, letter.theme))}\n${letter.article}`,
    ...(replay ? [`${wrapped(words.watch(replay.minutes))}\n${replay.address}`] : []),
    wrapped(words.contents(items.length)),
    ...items.map((item) => itemText(item, words)),
    ...(letter.voices.length > 0 ? [wrapped(words.voices), ...voicesText(letter, words)] : []),
    ...(peek ? [wrapped(words.peek), wrapped(peek.text)] : []),
    ...callText(letter, words),
    `${letter.author}\n${letter.boxName}`,
    [
      wrapped(letter.postal ?? gaps.postalAddress),
      ...(letter.email === undefined ? [] : [letter.email]),
      words.unsubscribe,
      letter.unsubscribe ?? gaps.unsubscribe,
    ].join('\n'),
  ];
  return `${paragraphs.join('\n\n')}\n`;
};
