/** What `lidlore begin` asks and says, and the hints in the records that it lays out. */
import { counted } from '../../text/counting-words.ts';
import { listInWords } from '../../text/list-in-words.ts';

/** Hints in records that are begun, for somebody who opens the file next. */
const hints = {
  thing: 'thing',
  further:
    'It may also say these, shown with invented examples. Take the # and the space away, and write your own.',
  address: 'The address at which you will put the site.',
  standInAddress: 'This stands in. Write your site’s real address here before you publish.',
  author: 'Who signs the articles. A person’s name reads better than a shop’s.',
  joinText: 'Join for the next box',
  boxBody: 'Write here what your box is, in a paragraph or two, for the first page of your site.',
  kind: 'What people call such a thing, one word or two, singular.',
  brand: 'Who made it, as Tolley Joinery.',
  description: 'One sentence, as: A pine seed tray that fits the narrowest sill.',
  category:
    'This can hurt somebody. Write none instead of it, and take the lines of its cautions out, if it cannot.',
  /** By the field that is asked for. */
  asked: {
    allergens:
      'The major allergens in it, as [milk, wheat]; or none, when you have looked and there are none.',
    ingredients: 'All that it is made of, as it stands on the label.',
    toxicTo: 'Whom it poisons, as [cats, dogs]; or none, when none is known.',
    minAge: 'From which age it is, in years, as 3.',
    hazards: 'What can harm a child, as [small parts, cords]; or none.',
  } as Readonly<Record<string, string>>,
  pictureText:
    'After alt, say what each picture shows, in a sentence for people who cannot see it. The name alone is a beginning.',
  fromList: 'From your list; no page shows it.',
  itemBody: 'Write its story here: who made it, how to use it, how it goes with the rest.',
  cycleBody: 'Write here how this box came to be, and what went wrong on the way.',
  promised: (peek: string) => `The box before promised: “${peek}” Pick it up in your opening.`,
  summary: 'Names the things, in 70 to 160 characters. Better in your own words.',
  shipped: 'The day the parcels leave.',
  reveal:
    'Until then nothing of this box is in the public site. Or when-delivered: then your list of parcels decides.',
  wholeBox: (theme: string) => `The whole box: ${theme}`,
};

/** A question, as it is asked. */
const questions = {
  name: 'What is your box called?',
  about: 'What is it, in a sentence or two (at most 160 characters)?',
  address: 'At which address will its site be, as sillandsprig.example? (https:// is put before it)',
  machine: 'Your currency, time zone and language? (or one of them, as: euros)',
  /** Asked one by one where an option has said one of them. */
  machineOne: {
    currency: 'In which currency are prices, as GBP or euros?',
    zone: 'By the clocks of which city, as Europe/London?',
    language: 'In which language are the articles, as en-GB?',
  } as Readonly<Record<string, string>>,
  join: 'At which address do people join, as sillandsprig.example/join? (Enter: nowhere yet)',
  month: 'Which month is its first box of?',
  theme: (month: string) => `What is the theme of the ${month} box?`,
  thing: (number: number) =>
    number === 1 ? 'What is in it? The first thing, as its card says' : `Thing ${number}`,
  noMore: 'Enter: that is all',
  lead: 'Which number is the piece the box was built around?',
  kinds: 'Right? Enter, or number and word, as: 2 plant mister',
  shipped: 'On which day do the parcels leave?',
  reveal: 'When may it be shown?',
  columns: 'Take them so? Enter for yes, no to stop, or as: price = Sells for; note = Maker',
  pairs: 'Take them so? Enter for yes, no for none, or as: 4=2 5=box 6=none',
};

/** What is expected of an answer that no field of a record takes. */
const expected = {
  month: 'a month, as 2026-05',
  address: 'an address, as sillandsprig.example or https://sillandsprig.example/box',
  currency: 'a currency, as GBP or euros',
  currencies: (some: readonly (readonly [code: string, name: string])[], isAll: boolean) =>
    `one of ${some.map(([code, name]) => `${code} (${name})`).join(', ')}${isAll ? '' : ', or another by its three letters'}`,
  machine: 'a currency, a time zone or a language, as: euros Europe/Berlin de',
  lead: (most: number) => `a number from 1 to ${most}`,
  kinds: (most: number) => `a number from 1 to ${most} and what such a thing is called, as: 2 plant mister`,
  column: 'a word for what it says and the title of a column, as: price = Sells for',
  pairs: (photos: number, things: number) =>
    `the number of a photo (1 to ${photos}), = and the number of a thing (1 to ${things}), box or none, as: 4=2`,
  thing: 'a name',
  kindsInOrder: (most: number) =>
    `at most ${most}, what each thing is called, in their order, with ; between them`,
  things: 'the names of one thing at least, with ; between them',
};

const mistakes = {
  wrong: (option: string, typed: string, wanted: string) =>
    `Unexpected --${option} ${typed}, expected ${wanted}.`,
  again: (typed: string, wanted: string) => `Unexpected ${typed}, expected ${wanted}. Please try again.`,
  needed: 'Nobody is here to be asked, so these have to be said:',
  neededOption: (option: string, what: string) => `  --${option}  ${what}`,
  month: (typed: string) => `Unexpected ${typed}, expected a month, as 2026-05.`,
  standing: (file: string) =>
    `Unexpected ${file}, which stands there already. lidlore begin never writes over a file: name another month, or move it away.`,
  cycleStands: (month: string, next: string) =>
    `The cycle ${month} stands already, and nothing of it was changed. The next is: lidlore begin ${next}`,
  noNewPhotos: (month: string, folder: string, next: string) =>
    `The cycle ${month} stands already, and ${folder} has no picture that its records do not show; nothing was changed. Put photos there and run it again, or begin the next one: lidlore begin ${next}`,
  boxAtFault: 'box.md must be mended first; nothing was made.',
  noFile: (file: string) => `There is no file ${file}.`,
  noFolder: (folder: string) => `There is no folder ${folder}.`,
  unreadable: (file: string, reason: string) => `${file} cannot be read: ${reason}.`,
  spreadsheet: (file: string) =>
    `${file} is a spreadsheet’s own file. Save it there as CSV (text with commas or semicolons), and give that.`,
  noThings: (file: string) => `No row of ${file} has a thing in it.`,
  noText: 'it is no text',
  noPhotos: (folder: string) => `There is no picture in ${folder}.`,
  listAndThings: 'Unexpected --things beside --from, expected one of them: the list has the names.',
  tooMany: (count: number, most: number) =>
    `Unexpected ${count} things, expected at most ${most} in one box.`,
};

/** What a column was taken for, in the owner's words. */
const fieldNames: Readonly<Record<string, string>> = {
  name: 'name',
  kind: 'kind',
  also: 'other names',
  brand: 'maker',
  description: 'description',
  material: 'material',
  color: 'colour',
  size: 'size',
  weight: 'weight',
  care: 'care',
  countryOfOrigin: 'country',
  price: 'price',
  priceCurrency: 'currency',
  sku: 'your number',
  gtin: 'bar code',
  image: 'photo',
  goesWith: 'goes with',
  category: 'category',
  allergens: 'allergens',
  mayContain: 'may contain',
  ingredients: 'ingredients',
  minAge: 'age',
  story: 'story',
  note: 'a note for you alone',
};

const passedRows: Readonly<Record<string, string>> = {
  'no name': 'has no name',
  sum: 'adds up the others',
  'titles again': 'has the titles again',
  above: 'stands above the titles',
  'the same again': 'is the same as one before',
};

const list = {
  columns: (file: string, things: number) => `${file} has ${counted(things, 'thing')}. Its columns:`,
  column: (title: string, field: string) => `  ${title}  →  ${fieldNames[field] ?? field}`,
  untitled: (number: number) => `column ${number}`,
  rows: 'Not taken:',
  row: (line: number, why: string, text: string) => `  line ${line} ${passedRows[why] ?? why}: ${text}`,
  blank: (count: number) => `  ${counted(count, 'row')} with nothing in it`,
  refused: ({
    line,
    title,
    field,
    text,
  }: {
    readonly line: number;
    readonly title: string;
    readonly field: string;
    readonly text: string;
  }) =>
    `  line ${line}, ${title}: “${text}” cannot be read as ${fieldNames[field] ?? field}, and is kept as a note`,
  gap: (title: string, lines: readonly number[]) =>
    `${title} is empty in line${lines.length === 1 ? '' : 's'} ${listInWords(lines.map(String), 'en')}. If one cell stood over several rows, write it into each, and give the list again.`,
  unclosed: (line: number) =>
    `  The quotation mark on line ${line} is never closed, so quotation marks were read as they stand.`,
};

const photos = {
  heading: 'Which photo shows what:',
  by: {
    name: 'by its name',
    number: 'by its number',
    order: 'a guess, by the order they were taken in',
    none: '',
  } as Readonly<Record<string, string>>,
  whole: 'the whole box',
  nothing: 'none yet',
  also: (names: readonly string[]) => `Not a picture, left where it is: ${listInWords(names, 'en')}.`,
  /** A photo under a name that another has already. */
  renamed: (name: string, as: string) => `${name} is there already with another picture; this one is ${as}.`,
};

const said = {
  welcome: 'There is no box here yet. Five questions make one.',
  how: 'Enter takes what stands in brackets. Ctrl-C leaves everything as it was.',
  cycle: (name: string, month: string) => `Now the ${name} box (${month}).`,
  promised: (peek: string) => `The box before promised: “${peek}”`,
  things: 'The things, and what people call such a thing:',
  hurtful: (words: string) => `can hurt somebody (${words}): its record asks for its cautions`,
  unknownKinds: '   ?  nobody could tell: say it here, or later in its record.',
  made: (count: number) => `Made ${counted(count, 'file')}:`,
  changed: 'Added to:',
  copied: (count: number, folder: string) => `Copied ${counted(count, 'photo')} into ${folder}.`,
  leftToWrite: 'Left to write, wherever a line ends in a colon:',
  left: (file: string, fields: readonly string[]) => `  ${file}: ${listInWords(fields, 'en')}`,
  next: 'Next:',
  nextPhotos: (folder: string, month: string) =>
    `  Put the photos, as they come off the phone, into ${folder}, and run lidlore begin ${month} again.`,
  nextWrite: (folder: string) =>
    `  lidlore desk   opens all of it in your browser as forms, to write on\n    (or open the files in ${folder} in any program for plain text)`,
  nextBuild: (from: string | undefined) =>
    from === undefined
      ? '  lidlore build'
      : `  lidlore build --as-of ${from} --out preview   shows it before it is revealed`,
  nextProof: '  lidlore proof   says whether each thing will be found',
  nextCycle: '  lidlore begin   lays out the first box',
  stopped: 'Stopped. Nothing was made or changed.',
};

export const begin = { hints, questions, expected, mistakes, fieldNames, list, photos, said };
