/**
 * Fields that stand where they belong to nothing, and quotes left open within brackets and braces. Written before the
 * rules; only every other one was looked at while they were written.
 */
import type { BrokenRecord } from './broken-records.ts';

export interface MisplacedField extends BrokenRecord {
  readonly of: 'item' | 'cycle';
  readonly meant: Readonly<Record<string, unknown>>;
}

const item = (slip: string, typed: string, meant: MisplacedField['meant']): MisplacedField => ({
  of: 'item',
  slip,
  typed,
  meant,
});
const cycle = (slip: string, typed: string, meant: MisplacedField['meant']): MisplacedField => ({
  of: 'cycle',
  slip,
  typed,
  meant,
});

const POT = { file: 'pot.jpg', alt: 'A pot' };
const CUP = { file: 'cup.jpg', alt: 'A cup' };
const SEEN = 'https://video.example/one';
const REPLAY = { address: SEEN, beats: { hook: '0:00', peek: '22:49' } };

export const MISPLACED_FIELDS: readonly MisplacedField[] = [
  item('alt at the margin', 'image:\n  - file: pot.jpg\nalt: A pot', { image: [POT] }),
  item('alt and caption at the margin', 'image:\n  - file: pot.jpg\nalt: A pot\ncaption: Warm still', {
    image: [{ ...POT, caption: 'Warm still' }],
  }),
  item('alt at the margin, the dash too', 'image:\n- file: pot.jpg\nalt: A pot', { image: [POT] }),
  item(
    'alt at the margin of the second picture',
    'image:\n  - file: cup.jpg\n    alt: A cup\n  - file: pot.jpg\nalt: A pot',
    {
      image: [CUP, POT],
    },
  ),
  item('alt at the margin, and a field after it', 'image:\n  - file: pot.jpg\nalt: A pot\ncare: Rinse it.', {
    image: [POT],
    care: 'Rinse it.',
  }),
  item('alt at the margin, no dash', 'image:\n  file: pot.jpg\nalt: A pot', { image: POT }),
  cycle('alt at the margin of the hero', 'hero:\n  file: pot.jpg\nalt: A pot', { hero: POT }),
  cycle('both keys of the hero at the margin', 'hero:\nfile: pot.jpg\nalt: A pot', { hero: POT }),
  cycle('a voice’s day at the margin', 'voices:\n  - text: Lovely.\n    name: Ann\nconsent: 2026-01-05', {
    voices: [{ text: 'Lovely.', name: 'Ann', consent: '2026-01-05' }],
  }),
  cycle(
    'a voice’s name and day at the margin',
    'voices:\n  - text: Lovely.\nname: Ann\nconsent: 2026-01-05',
    {
      voices: [{ text: 'Lovely.', name: 'Ann', consent: '2026-01-05' }],
    },
  ),
  cycle(
    'beats as deep as their children',
    `replay:\n  address: ${SEEN}\n  beats:\n  hook: "0:00"\n  peek: "22:49"`,
    { replay: REPLAY },
  ),
  cycle('beats as deep as one child', `replay:\n  address: ${SEEN}\n  beats:\n  wooden-tray: "2:22"`, {
    replay: { address: SEEN, beats: { 'wooden-tray': '2:22' } },
  }),
  cycle(
    'items of the live as deep as their words',
    'live:\n  minutes: 20\n  items:\n  pot: It pours.\n  cup: It holds.',
    {
      live: { minutes: 20, items: { pot: 'It pours.', cup: 'It holds.' } },
    },
  ),
  cycle('the live’s keys at the margin', 'live:\nminutes: 20\nhook: There are three.', {
    live: { minutes: 20, hook: 'There are three.' },
  }),
  item(
    'keys of the spare pieces at the margin',
    'spare:\ncount: 2\nprice: 4.00\naddress: https://example.org/',
    {
      spare: { count: 2, price: '4.00', address: 'https://example.org/' },
    },
  ),
  cycle('the letter’s keys at the margin', 'letter:\nsubject: Of pots\npreheader: And cups', {
    letter: { subject: 'Of pots', preheader: 'And cups' },
  }),
  cycle('the replay’s minutes at the margin', `replay:\n  address: ${SEEN}\nminutes: 24`, {
    replay: { address: SEEN, minutes: 24 },
  }),
  cycle(
    'the peek’s picture as deep as its keys',
    'peek:\n  text: Next comes a cup.\n  picture:\n  file: cup.jpg\n  alt: A cup',
    {
      peek: { text: 'Next comes a cup.', picture: CUP },
    },
  ),
  item('a dash before a field', '- care: Rinse it.', { care: 'Rinse it.' }),
  item('dashes before two fields', '- care: Rinse it.\n- size: 10 cm', { care: 'Rinse it.', size: '10 cm' }),
  item('a dash without a space before a field', '-care: Rinse it.', { care: 'Rinse it.' }),
  item('a long dash before a field', '– care: Rinse it.', { care: 'Rinse it.' }),
  item('a dash before a field after a list', 'also:\n- brewer\n- care: Rinse it.', {
    also: ['brewer'],
    care: 'Rinse it.',
  }),
  item('a star before a field', '* care: Rinse it.', { care: 'Rinse it.' }),
  item('a dash before a field after an indented list', 'also:\n  - brewer\n- care: Rinse it.', {
    also: ['brewer'],
    care: 'Rinse it.',
  }),
  item('a dash before a field with a list', '- also: [brewer, maker]', { also: ['brewer', 'maker'] }),
  item('an open quote within brackets, a comma in its text', 'also: [brewer, "pot, small]', {
    also: ['brewer', 'pot, small'],
  }),
  item('an open quote within brackets before another', 'also: ["brewer", "pot, "maker"]', {
    also: ['brewer', 'pot', 'maker'],
  }),
  item('an open quote last within brackets', 'also: [brewer, "pot]', { also: ['brewer', 'pot'] }),
  item('an open single quote within brackets', "also: [brewer, 'pot]", { also: ['brewer', 'pot'] }),
  item('a quote within brackets that only closes', 'also: [brewer, pot", maker]', {
    also: ['brewer', 'pot', 'maker'],
  }),
  item('an open quote within braces', 'image: {file: pot.jpg, alt: "A pot}', { image: POT }),
  item('an open quote first within brackets', 'also: ["brewer, maker", "pot]', {
    also: ['brewer, maker', 'pot'],
  }),
  item('an open quote first within braces', 'image: {file: "pot.jpg, alt: A pot}', { image: POT }),
  item('an open quote and an open bracket', 'also: [brewer, "pot', { also: ['brewer', 'pot'] }),
  item('a first quote that is not closed, all others are', 'also: ["brewer, "pot", "maker"]', {
    also: ['brewer', 'pot', 'maker'],
  }),
  // A second set, written after the rules and run once before anything was mended.
  item('caption alone at the margin', 'image:\n  - file: pot.jpg\n    alt: A pot\ncaption: Warm still', {
    image: [{ ...POT, caption: 'Warm still' }],
  }),
  item('alt one blank in', 'image:\n  - file: pot.jpg\n alt: A pot', { image: [POT] }),
  cycle(
    'a picture’s file and alt at the margin below a list',
    'photo:\nfile: pot.jpg\nalt: A pot\ncaption: Warm',
    {
      photo: { ...POT, caption: 'Warm' },
    },
  ),
  cycle('the value’s day at the margin', 'value:\n  amount: 12.00\non: 2026-01-05', {
    value: { amount: '12.00', on: '2026-01-05' },
  }),
  cycle('the invitation’s hook at the margin', 'invitation:\nhook: Come and see.', {
    invitation: { hook: 'Come and see.' },
  }),
  cycle(
    'questions as deep as their list',
    'live:\n  minutes: 20\n  questions:\n  - How deep?\nhook: There are three.',
    {
      live: { minutes: 20, questions: ['How deep?'], hook: 'There are three.' },
    },
  ),
  item('dashes before three fields, with a list', '- care: Rinse it.\n- also: [brewer]\n- size: 10 cm', {
    ...{ care: 'Rinse it.', size: '10 cm', also: ['brewer'] },
  }),
  item('a bullet before a field', '• care: Rinse it.', { care: 'Rinse it.' }),
  item(
    'an open quote in the middle of brackets',
    'cautions: ["Hot when full.", "Keep dry., "Not for ovens."]',
    {
      cautions: ['Hot when full.', 'Keep dry.', 'Not for ovens.'],
    },
  ),
  item(
    'an open quote in a list of braces',
    'image:\n  - {file: pot.jpg, alt: "A pot}\n  - {file: cup.jpg, alt: A cup}',
    {
      image: [POT, CUP],
    },
  ),
  item('a quote that only closes last within brackets', 'also: [brewer, pot"]', { also: ['brewer', 'pot'] }),
  item('an open single quote with a comma', "also: [brewer, 'pot, small]", {
    also: ['brewer', 'pot, small'],
  }),
];
