/** The proof of an article, as a page of the back room and on a terminal. */
import type { Grade } from '../../analysis/coverage/coverage.ts';
import type { PassageForm } from '../../analysis/coverage/text/passage.ts';
import { counted, listed, numberWord } from '../../text/counting-words.ts';
import { coverage } from './coverage.ts';

/** What a passage is, where its setting does not show it. */
const forms: Readonly<Partial<Record<PassageForm, string>>> = { caption: 'caption', fact: 'fact' };

/** The page of the back room. */
const page = {
  title: (month: string) => `Proof of ${month}`,
  sealedUntil: (reveal: string) => `Sealed until ${reveal}`,
  shownSince: (reveal: string) => `Shown since ${reveal}`,
  readAs: (date: string, aim: number) =>
    `; read as of ${date}. The aim is a standing of ${aim} for every item; the most there can be is 1.`,
  parts: 'Parts of this proof',
  nav: {
    mustFix: 'Must fix',
    advice: 'Advice',
    places: 'Items by places',
    text: 'The text',
    rivals: 'Rivals',
    crowded: 'Crowded',
    shared: 'Said before',
    names: 'Other names',
    findings: 'Findings',
    breakdowns: 'Standing, opened up',
  },
  printAll: 'Print the marked text and the sums too',
  mustFix: 'To be fixed before anything is published',
  findings: 'Findings of the records',
  advice: {
    heading: 'Advice',
    lead: 'What reads as well and names the thing: each sentence as it is, and as it would be. They stand in the margin of ',
    theText: 'the text',
    none: 'None.',
    now: 'Now',
    instead: 'Then',
    to: 'to',
    atAim: ', at the aim',
    edit: (number: number) => `Edit ${number}`,
    editInList: (number: number) => `Edit ${number} in the list`,
  },
  places: {
    heading: 'Items by places',
    lead: 'The best mention in each place of the finished page. ',
    opens: 'A standing opens its account.',
    walking: 'A phrase’s name walks through its mentions in the text.',
    table: 'Table of items by places',
    item: 'Item',
    standing: 'Standing',
    below: 'below',
    thin: 'thin',
    ofItem: (number: number) => `item ${number}`,
  },
  text: {
    heading: 'The text',
    lead: 'As it is read on the finished page, and after it what machines read. In the margin the line it was written in; files are in ',
    fainter: (grades: readonly Grade[]) =>
      `A fainter underline: ${listed(grades.map((grade) => coverage.gradeNames[grade]))}.`,
    openingEnds: 'the opening ends here',
    forms,
    /** Whoever walks from one mention to the next is told what each is. */
    mention: (grade: Grade, within: string | undefined, zone: string, file: string, line: number) =>
      `${coverage.gradeNames[grade]}${within === undefined ? '' : `, part of ${coverage.quoted(within)}`}, ${zone}, ${file} line ${line}`,
  },
  titles: {
    heading: 'Titles to choose from',
    lead: 'The record gives no `title`: the first of these is used until you write one.',
  },
  rivals: {
    heading: 'Rivals',
    lead: 'Another of our own pages would answer these first. A link between the two tells a visitor, and a search engine, which is which.',
    none: 'None: for every phrase that this article carries, it answers first.',
    /** Words between a phrase, its item, the rival's title and its cycle. */
    for: ' for ',
    answersFirst: (cycle: string, score: string, own: string, rank: number) =>
      ` (${cycle}) answers first, with ${score} against ${own}; this article comes ${coverage.ordinal(rank)}.`,
    link: 'The link to write, in ',
  },
  crowded: {
    heading: 'Crowded',
    lead: 'Said so often that it reads as if it were meant for a machine. The sentences to thin out, the densest first.',
    none: 'No phrase is said too often.',
    told: (name: string, mentions: number, rate: string, dispersion: string) =>
      ` for ${name}: ${mentions} mentions, ${rate} in every hundred words; deviation of proportions ${dispersion} (0 is spread evenly, 1 all in one part).`,
    inIt: (mentions: number) => `${mentions} in it, `,
  },
  shared: {
    heading: 'Said before',
    lead: 'Passages much like one of an earlier article. Two articles that say the same compete with each other.',
    none: 'No passage is much like one of an earlier article.',
    resemblance: (figure: string) => `Resemblance ${figure} (1 is word for word)`,
    here: 'Here, ',
  },
  called: {
    heading: 'Called otherwise',
    lead: 'The story calls these by a name that the record does not have. Where it is what people call the thing, paste the line; the text may stay as it is.',
    told: (name: string, times: number) => `${coverage.quoted(name)}, ${times} times`,
  },
  names: {
    heading: 'Other names',
    lead: 'A dictionary has these for the same things. They count for nothing until they stand in the record: paste the line, and strike out what is not true of the piece.',
    listed: (names: readonly string[]) => listed(names.map(coverage.quoted)),
  },
  breakdowns: {
    heading: 'Standing, opened up',
    lead: 'A place gives its worth by the best match there: all of it where the thing is named outright, less where it is not. What all places give, set against what the item’s own are worth, is its standing, at most 1. Title, opening and the others add to it and are not asked for.',
    folds: 'account',
    best: 'best there',
    gives: 'gives',
    together: 'together',
    ownWorth: 'its own places are worth',
    standing: 'standing: the one by the other, at most 1',
    where: 'Where each of its phrases is said',
    nowhere: 'nowhere',
    unsaid: (names: string) =>
      `Other names that the text does not say: ${names}. One sentence in its own section (“some call it …”) would let it be found by them too; nothing asks for it.`,
    from: (origins: readonly string[]) => `from ${origins.join('; ')}`,
    countedInside: (phrase: string) => `; counted inside ${coverage.quoted(phrase)} too`,
    place: 'place',
    worth: 'worth',
    places: (names: readonly string[]) => listed(names),
  },
  walk: {
    label: 'Walk through the mentions',
    back: 'Previous',
    on: 'Next',
    leave: 'Leave',
    show: 'show',
    hide: 'hide',
    of: 'of',
    mention: 'mention',
  },
};

/** The report on a terminal. */
const report = {
  title: (cycle: string, theme: string, title: string) => `Proof of ${cycle}, ${theme}: ${title}`,
  columns: {
    standing: 'Standing',
    advised: 'Advised',
    item: 'Item',
    places: 'Places',
    lacking: 'Not named in',
  },
  placesOf: (some: number, all: number) => `${some} of ${all}`,
  more: (count: number) => `and ${numberWord(count)} more, on the page`,
  now: 'Now:',
  instead: 'Then:',
  reach: 'Other names that the text does not say',
  unsaid: (name: string, phrases: readonly string[]) => `${name}: ${listed(phrases.map(coverage.quoted))}.`,
  titles: 'Titles to choose from',
  typed: 'What people typed',
  typedFor: (name: string, words: string) => `${name}: ${words}`,
  rivals: 'Rivals: another of our pages answers first',
  rival: (phrase: string, cycle: string, title: string, rank: number, why: string) =>
    `${coverage.quoted(phrase)}: ${cycle}, ${title}, answers first; this article comes ${coverage.ordinal(rank)}. ${why}`,
  writeIn: (at: string, link: string) => `Write in ${at}: ${link}`,
  crowded: 'Crowded: said too often',
  crowding: (phrase: string, mentions: number, rate: string) =>
    `${coverage.quoted(phrase)}: ${mentions} mentions, ${rate} in every hundred words. Thin out:`,
  inIt: (at: string, mentions: number) => `${at} (${mentions} in it)`,
  shared: 'Said before in an earlier article',
  muchLike: (at: string, other: string, resemblance: string) =>
    `${at} is much like ${other}: resemblance ${resemblance}.`,
  called: 'Called otherwise in the story, to be taken into “also” if people call it so',
  calledSo: (name: string, called: string, times: number) =>
    `${name}: ${coverage.quoted(called)}, ${times} times.`,
  names: 'Other names in a dictionary, to be taken into “also” or left',
  namesOf: (name: string, others: readonly string[]) => `${name}: ${listed(others)}.`,
  advice: 'Advice',
  brings: (name: string, before: string, after: string, isThere: boolean) =>
    `${name} ${before} to ${after}${isThere ? ', at the aim' : ''}`,
  mustFix: 'Must fix',
  besides: (findings: string) => `Findings: ${findings}`,
  fixedFirst: (count: number) => `${counted(count, 'finding')} must be fixed first.`,
};

/** What is said around a proof. */
export const proof = { page, report };
