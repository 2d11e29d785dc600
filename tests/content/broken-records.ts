/**
 * Records as people who have never seen YAML type them, each with what they meant. Written before the rules that
 * explain them; on the first run of the rules 63 of the 80 were explained.
 */

/** One slip in a record. */
export interface BrokenRecord {
  readonly slip: string;
  /** The lines of the fields that are at fault; `AROUND` stands before and after them. */
  readonly typed: string;
  /** What they meant. None where only the owner can say. */
  readonly meant?: Readonly<Record<string, unknown>>;
}

const item = (slip: string, typed: string, meant?: BrokenRecord['meant']): BrokenRecord => ({
  slip,
  typed,
  ...(meant && { meant }),
});

export const BROKEN_RECORDS: readonly BrokenRecord[] = [
  item('a colon in a text', 'description: The tray we wanted: one that fits.', {
    description: 'The tray we wanted: one that fits.',
  }),
  item('a colon in a name', 'name: Tea: the second flush', { name: 'Tea: the second flush' }),
  item('a colon at the end', 'care: Rinse it, then:', { care: 'Rinse it, then:' }),
  item('a colon in a list of dashes', 'cautions:\n  - Warning: hot.\n  - Keep dry.', {
    cautions: ['Warning: hot.', 'Keep dry.'],
  }),
  item('a comma in braces', 'image: {file: pot.jpg, alt: A pot on a table, still warm.}', {
    image: { file: 'pot.jpg', alt: 'A pot on a table, still warm.' },
  }),
  item('two commas in braces in a list', 'image:\n  - {file: pot.jpg, alt: A pot, a cup, and a spoon}', {
    image: [{ file: 'pot.jpg', alt: 'A pot, a cup, and a spoon' }],
  }),
  item('a colon in braces', 'image: {file: pot.jpg, alt: The pot: empty}', {
    image: { file: 'pot.jpg', alt: 'The pot: empty' },
  }),
  item(
    'a comma in braces before another key',
    'image: {file: pot.jpg, alt: "A pot", caption: Tea, at last}',
    {
      image: { file: 'pot.jpg', alt: 'A pot', caption: 'Tea, at last' },
    },
  ),
  item('no space after the colons in braces', 'image: {file:pot.jpg, alt:A pot}', {
    image: { file: 'pot.jpg', alt: 'A pot' },
  }),
  item('no comma in braces', 'image: {file: pot.jpg alt: A pot}', {
    image: { file: 'pot.jpg', alt: 'A pot' },
  }),
  item('a brace that is not closed', 'image: {file: pot.jpg, alt: A pot', {
    image: { file: 'pot.jpg', alt: 'A pot' },
  }),
  item('a bracket that is not closed', 'also: [tea pot, brewer', { also: ['tea pot', 'brewer'] }),
  item('an apostrophe between single quotes', "care: 'Don't boil it.'", { care: "Don't boil it." }),
  item('double quotes within double quotes', 'care: "Say "enough" and pour."', {
    care: 'Say "enough" and pour.',
  }),
  item('a quoted word first', 'care: "Enough" is what you say.', { care: '"Enough" is what you say.' }),
  item('a quoted word first and last', 'care: "Enough" and "more"', { care: '"Enough" and "more"' }),
  item('a double quote that is not closed', 'care: "Rinse it and let it dry.', {
    care: 'Rinse it and let it dry.',
  }),
  item('a single quote that is not closed', "care: 'Rinse it and let it dry.", {
    care: 'Rinse it and let it dry.',
  }),
  item('a quote closed by a typographic one', 'care: "Rinse it: twice.”', { care: 'Rinse it: twice.' }),
  item('typographic quotes round a text', 'care: “Rinse it.”', { care: 'Rinse it.' }),
  item('typographic quotes round a text with a colon', 'care: “Rinse it: twice.”', {
    care: 'Rinse it: twice.',
  }),
  item('low quotes round a text', 'care: „Rinse it.“', { care: 'Rinse it.' }),
  item('single typographic quotes', 'color: ‘sage’', { color: 'sage' }),
  item('typographic quotes round a key', '“care”: Rinse it.', { care: 'Rinse it.' }),
  item('typographic quotes in brackets', 'also: [“tea pot”, “brewer”]', { also: ['tea pot', 'brewer'] }),
  item('a text that begins with @', 'brand: @potter', { brand: '@potter' }),
  item('a text that begins with %', 'care: % of milk as you like', { care: '% of milk as you like' }),
  item('a text that begins with a backtick', 'brand: `Potter`', { brand: '`Potter`' }),
  item('a text that begins with *', 'brand: *Potter* of Bow', { brand: '*Potter* of Bow' }),
  item('a text that begins with &', 'brand: &Sons of Bow', { brand: '&Sons of Bow' }),
  item('a text that begins with & and a space', 'brand: & Sons of Bow', { brand: '& Sons of Bow' }),
  item('a text that begins with !', 'care: !Hot when full', { care: '!Hot when full' }),
  item('a text that begins with |', 'care: | rinse it', { care: '| rinse it' }),
  item('a text that begins with >', 'size: > 10 cm', { size: '> 10 cm' }),
  item('a text that begins with a dash and a space', 'size: - 10 cm or so', { size: '- 10 cm or so' }),
  item('a text that begins with ?', 'care: ? nobody knows', { care: '? nobody knows' }),
  item('a text that begins with a bracket', 'size: [about] 10 cm', { size: '[about] 10 cm' }),
  item('a text that begins with a brace', 'name: {Big} pot', { name: '{Big} pot' }),
  item('a text that begins with a comma', 'care: , then rinse', { care: ', then rinse' }),
  item('a text with # in it', 'name: Pot #2 in blue', { name: 'Pot #2 in blue' }),
  item('a text that begins with #', 'color: #8a9a7b', { color: '#8a9a7b' }),
  item('a backslash between double quotes', 'care: "See C:\\pots"', { care: 'See C:\\pots' }),
  item('a comma after a quoted text', 'care: "Rinse it.",', { care: 'Rinse it.' }),
  item('a tab before a key of a picture', 'image:\n\t- file: pot.jpg\n\t  alt: A pot', {
    image: [{ file: 'pot.jpg', alt: 'A pot' }],
  }),
  item('tabs as deep as levels', 'spare:\n\tcount: 2\n\tprice: 4.00\n\taddress: https://example.org/', {
    spare: { count: 2, price: '4.00', address: 'https://example.org/' },
  }),
  item('a tab after the colon', 'care:\tRinse it: twice.', { care: 'Rinse it: twice.' }),
  item(
    'hard spaces before a key',
    'image:\n\u00a0\u00a0- file: pot.jpg\n\u00a0\u00a0\u00a0\u00a0alt: A pot',
    {
      image: [{ file: 'pot.jpg', alt: 'A pot' }],
    },
  ),
  item('a hard space after the colon', 'care:\u00a0Rinse it.', { care: 'Rinse it.' }),
  item('a key indented by one', ' care: Rinse it.', { care: 'Rinse it.' }),
  item('a key indented by two', '  care: Rinse it.', { care: 'Rinse it.' }),
  item('a picture’s key one too deep', 'image:\n  - file: pot.jpg\n     alt: A pot', {
    image: [{ file: 'pot.jpg', alt: 'A pot' }],
  }),
  item('a picture’s key one too shallow', 'image:\n  - file: pot.jpg\n   alt: A pot', {
    image: [{ file: 'pot.jpg', alt: 'A pot' }],
  }),
  item('a dash at another depth', 'also:\n  - tea pot\n - brewer', { also: ['tea pot', 'brewer'] }),
  item('a dash deeper than the first', 'also:\n  - tea pot\n    - brewer', { also: ['tea pot', 'brewer'] }),
  item('no space after the colon', 'care:Rinse it.', { care: 'Rinse it.' }),
  item('no colon', 'care Rinse it.', { care: 'Rinse it.' }),
  item('an equals sign', 'care = Rinse it.', { care: 'Rinse it.' }),
  item('a wide colon', 'care：Rinse it.', { care: 'Rinse it.' }),
  item('no space after the dashes', 'also:\n  -tea pot\n  -brewer', { also: ['tea pot', 'brewer'] }),
  item('stars for dashes', 'also:\n  * tea pot\n  * brewer', { also: ['tea pot', 'brewer'] }),
  item('bullets for dashes', 'also:\n  • tea pot\n  • brewer', { also: ['tea pot', 'brewer'] }),
  item('long dashes for dashes', 'also:\n  – tea pot\n  – brewer', { also: ['tea pot', 'brewer'] }),
  item('no dashes', 'cautions:\n  "Hot when full."\n  "Keep dry."', {
    cautions: ['Hot when full.', 'Keep dry.'],
  }),
  item(
    'no dash before the second picture',
    'image:\n  - file: a.jpg\n    alt: A pot\n    file: b.jpg\n    alt: A cup',
    {
      image: [
        { file: 'a.jpg', alt: 'A pot' },
        { file: 'b.jpg', alt: 'A cup' },
      ],
    },
  ),
  item('a key twice', 'brand: Bow Pots\nbrand: Hill Pots'),
  item('a text that goes on at the margin', 'description: A pot that pours\nwithout a drop.', {
    description: 'A pot that pours without a drop.',
  }),
  // Its second line may as well be a field that does not exist: it is found, and nothing is proposed.
  item('a text with a colon that goes on at the margin', 'care: Rinse it\nand then: dry it.'),
  item('three lines at the margin', 'care: Rinse it,\ndry it\nand put it away.', {
    care: 'Rinse it, dry it and put it away.',
  }),
  item('a remark of another language', '// to be weighed again\nweight: 400 g', { weight: '400 g' }),
  item('a remark of HTML', '<!-- weigh it again -->\nweight: 400 g', { weight: '400 g' }),
  item('a bold key', '**care**: Rinse it.', { care: 'Rinse it.' }),
  item('a capital key', 'Care: Rinse it.', { care: 'Rinse it.' }),
  item('a capital needed key', 'Brand: Bow Pots', { brand: 'Bow Pots' }),
  item('yes for true', 'lead: yes', { lead: true }),
  item('a quoted true', 'lead: "true"', { lead: true }),
  item('a price with its sign', 'price: £16.00', { price: '16.00' }),
  item('a price with a comma', 'price: 16,00', { price: '16.00' }),
  item('a small country', 'countryOfOrigin: gb', { countryOfOrigin: 'GB' }),
  item('a quoted number', 'minAge: "3"', { minAge: 3 }),
  item('a number with its unit', 'minAge: 3 years', { minAge: 3 }),
];
