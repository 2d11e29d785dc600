/** The letter without markup: as a person would type it. */
import type { Letter, LetterItem } from './letter-parts.ts';
import { wrapped } from './plain-text.ts';

/** What stands in the place of what box.md does not say, to be seen in a test letter before anybody else gets it. */
export const NO_POSTAL_ADDRESS = '[your postal address]';
export const NO_UNSUBSCRIBE = '[your sending service’s way to unsubscribe]';

const INDENT = '   ';

const itemText = ({ number, name, lead, line, cautions }: LetterItem): string => {
  const told = lead ? `The piece this box was built around. ${line}` : line;
  return [
    wrapped(`${number}. ${name}`),
    wrapped(told, INDENT),
    ...cautions.map(({ label, lines }) => wrapped(`${label}: ${lines.join(' ')}`, INDENT)),
  ].join('\n');
};

const callText = ({ call, description, price }: Letter): readonly string[] => {
  if (!call) return [];
  const places = call.places ? ` (${call.places} places left)` : '';
  const sold = price === undefined ? '' : ` ${price} a box.`;
  return [wrapped(`${description}${sold}`), `${wrapped(`${call.text}${places}:`)}\n${call.address}`];
};

const voicesText = ({ voices }: Letter): readonly string[] =>
  voices.map(({ text, name, given }) => {
    const disclosed = given ? ' (had this box free or at a lower price)' : '';
    return `${wrapped(`“${text}”`, INDENT)}\n${wrapped(`— ${name}${disclosed}`, INDENT)}`;
  });

/** Lines of at most 72 characters, an address on a line of its own, an empty line between paragraphs. */
export const letterText = (letter: Letter): string => {
  const { replay, items, peek } = letter;
  const minutes = replay?.minutes ? `, ${replay.minutes} minutes` : '';
  const paragraphs = [
    'Hello,',
    ...(letter.hook === undefined ? [] : [wrapped(letter.hook)]),
    `${wrapped(`The whole story of the ${letter.month} box, ${letter.theme}, is here to read:`)}\n${letter.article}`,
    ...(replay ? [`${wrapped(`Watch the live opening again${minutes}:`)}\n${replay.address}`] : []),
    wrapped(
      items.length > 1 ? 'Here is what was in it, and how it goes together.' : 'Here is what was in it.',
    ),
    ...items.map(itemText),
    ...(letter.voices.length > 0 ? [wrapped('From those who opened it:'), ...voicesText(letter)] : []),
    ...(peek ? [wrapped('And a look at the next box:'), wrapped(peek.text)] : []),
    ...callText(letter),
    `${letter.author}\n${letter.boxName}`,
    [
      wrapped(letter.postal ?? NO_POSTAL_ADDRESS),
      ...(letter.email === undefined ? [] : [letter.email]),
      'No more of these letters:',
      letter.unsubscribe ?? NO_UNSUBSCRIBE,
    ].join('\n'),
  ];
  return `${paragraphs.join('\n\n')}\n`;
};
