/**
 * Lists of what people typed, as they may come out of statistics: all invented, with no product's names. Written before
 * the rules that find their columns; only every other one was looked at while they were written.
 */

export interface SearchExport {
  readonly like: string;
  readonly text: string;
  /** What is read; none where only the owner can say. */
  readonly rows?: readonly (readonly [string, number])[];
  /** Lines that are proposed for box.md where only the owner can say. */
  readonly proposed?: readonly string[];
}

const TWO = [
  ['plant labels', 226],
  ['seed tin', 64],
] as const;
const MANY = [
  ['plant labels', 1204],
  ['seed tin', 640],
  ['slate markers', 226],
  ['dibber', 64],
  ['twine', 9],
] as const;
const read = (like: string, text: string, rows: SearchExport['rows'] = TWO): SearchExport => ({
  like,
  text,
  ...(rows && { rows }),
});
const asked = (like: string, text: string, proposed: readonly string[]): SearchExport => ({
  like,
  text,
  proposed,
});

export const SEARCH_EXPORTS: readonly SearchExport[] = [
  read('two columns under other names', 'Words,Times\nplant labels,226\nseed tin,64\n'),
  read('two columns the other way round', 'Times,Words\n226,plant labels\n64,seed tin\n'),
  read('semicolons and names in German', 'Eingabe;Häufigkeit\nplant labels;226\nseed tin;64\n'),
  read('tabs and names in French', 'Mots\tFois\nplant labels\t226\nseed tin\t64\n'),
  read(
    'a mark, semicolons and percentages with commas',
    '\ufeffWords;Times;Share\nplant labels;226;12,5 %\nseed tin;64;3,1 %\n',
  ),
  read(
    'tabs and positions after the comma',
    'Words\tTimes\tPlace\nplant labels\t226\t3.1\nseed tin\t64\t12.75\n',
  ),
  read('days before the words', 'Day,Words,Times\n2026-03-01,plant labels,226\n2026-03-02,seed tin,64\n'),
  read(
    'a month in words before the words',
    'Day;Words;Times\n1 March 2026;plant labels;226\n2 March 2026;seed tin;64\n',
  ),
  read(
    'two lines above the names',
    'Report of March\n2026-03-01 to 2026-03-31\n\nWords,Times\nplant labels,226\nseed tin,64\n',
  ),
  read(
    'a line above the names that has commas',
    'Report of Sill, Sprig, and friends, March\n\nWords;Times\nplant labels;226\nseed tin;64\n',
  ),
  read(
    'thousands with commas between quotes',
    'Words,Times\nplant labels,"1,204"\nseed tin,640\nslate markers,226\ndibber,64\ntwine,9\n',
    MANY,
  ),
  read(
    'thousands with points',
    'Words;Times;Share\nplant labels;1.204;56,2\nseed tin;640;29,9\nslate markers;226;10,5\ndibber;64;3,0\ntwine;9;0,4\n',
    MANY,
  ),
  read(
    'thousands with thin blanks',
    'Words\tTimes\nplant labels\t1\u202f204\nseed tin\t640\nslate markers\t226\ndibber\t64\ntwine\t9\n',
    MANY,
  ),
  read(
    'a number for each row first',
    'No,Words,Times\n1,plant labels,1204\n2,seed tin,640\n3,slate markers,226\n4,dibber,64\n5,twine,9\n',
    MANY,
  ),
  read(
    'addresses of pages beside the words',
    'Page;Words;Times\n/labels.html;plant labels;226\nhttps://example.org/tin;seed tin;64\n',
  ),
  read(
    'countries beside the words',
    'Words,Land,Times\nplant labels,GB,1204\nseed tin,GB,640\nslate markers,IE,226\ndibber,GB,64\ntwine,IE,9\n',
    MANY,
  ),
  read('no names at all', 'plant labels,226\nseed tin,64\n'),
  read('no names, and the count first', '226;plant labels\n64;seed tin\n'),
  read(
    'a total at the end',
    'Words,Times\nplant labels,1204\nseed tin,640\nslate markers,226\ndibber,64\ntwine,9\nAll,2143\n',
    MANY,
  ),
  read(
    'a total above the words',
    'Words;Times\nAll;2143\nplant labels;1204\nseed tin;640\nslate markers;226\ndibber;64\ntwine;9\n',
    MANY,
  ),
  asked('two columns of whole numbers', 'Words,Seen,Opened\nplant labels,1204,226\nseed tin,640,64\n', [
    'phrase: Words; count: Seen',
    'phrase: Words; count: Opened',
  ]),
  asked(
    'two columns of whole numbers and a share',
    'Words;Seen;Opened;Share\nplant labels;1204;226;18,8 %\nseed tin;640;64;10 %\n',
    ['phrase: Words; count: Seen', 'phrase: Words; count: Opened'],
  ),
  asked(
    'two columns of texts',
    'Words,Meaning,Times\nplant labels,marks for pots,226\nseed tin,box for seeds,64\n',
    ['phrase: Words; count: Times', 'phrase: Meaning; count: Times'],
  ),
  asked('names with signs', 'Words: typed\tSeen #\tOpened #\nplant labels\t1204\t226\nseed tin\t640\t64\n', [
    'phrase: "Words: typed"; count: "Seen #"',
    'phrase: "Words: typed"; count: "Opened #"',
  ]),
  read('phrases with a comma between quotes', 'Words,Times\n"labels, for plants",226\nseed tin,64\n', [
    ['labels, for plants', 226],
    ['seed tin', 64],
  ]),
  read('one row alone', 'Words;Times\nplant labels;226\n', [['plant labels', 226]]),
  read(
    'a phrase of digits among others',
    'Words,Times\nplant labels,1204\nseed tin,640\n2026,226\ndibber,64\ntwine,9\n',
    [
      ['plant labels', 1204],
      ['seed tin', 640],
      ['2026', 226],
      ['dibber', 64],
      ['twine', 9],
    ],
  ),
  read('empty columns and an empty one last', 'Words,,Times,\nplant labels,,226,\nseed tin,,64,\n'),
  read(
    'the day of each row as eight digits',
    'Day\tWords\tTimes\n20260301\tplant labels\t226\n20260302\tseed tin\t64\n',
  ),
  read(
    'a first line that names the separator, and a report’s name',
    'sep=;\nReport\nWords;Times\nplant labels;226\nseed tin;64\n',
  ),
  asked('no whole numbers', 'Words,Share\nplant labels,12.5\nseed tin,3.1\n', []),
  asked('no texts', 'Seen,Opened\n1204,226\n640,64\n', []),
  read(
    'a name that is known beside one that is not',
    'phrase,Times,Opened\nplant labels,226,x\nseed tin,64,y\n',
  ),
  read(
    'the known names below a report’s name',
    'Report of March\n\nphrase,count,Opened\nplant labels,226,7\nseed tin,64,3\n',
  ),
  // A second set, written after the rules and run once before anything was mended.
  read(
    'points in shares and semicolons between',
    'Begriff;Anzahl;Anteil;Position\nplant labels;1.204;0,56;1,2\nseed tin;640;0,30;2,4\nslate markers;226;0,11;3,0\ndibber;64;0,03;4,1\ntwine;9;0,00;8,8\n',
    MANY,
  ),
  read('shares with a sign and no decimals', 'Words,Times,Share\nplant labels,226,78%\nseed tin,64,22%\n'),
  read(
    'a month as 2026-03 beside the words',
    'Month\tWords\tTimes\n2026-03\tplant labels\t226\n2026-03\tseed tin\t64\n',
  ),
  read(
    'devices beside the words',
    'Device;Words;Times\nphone;plant labels;1204\nphone;seed tin;640\ndesk;slate markers;226\nphone;dibber;64\ndesk;twine;9\n',
    MANY,
  ),
  read(
    'remarks above the names',
    '# made on 1 March\n# all of the site\nWords,Times\nplant labels,226\nseed tin,64\n',
  ),
  read('words in Greek and Chinese', 'λέξη;πλήθος\nτσαγιέρα;226\n茶壶;64\n', [
    ['τσαγιέρα', 226],
    ['茶壶', 64],
  ]),
  read(
    'apostrophes in thousands',
    "Words;Times\nplant labels;1'204\nseed tin;640\nslate markers;226\ndibber;64\ntwine;9\n",
    MANY,
  ),
  read('a time beside each', 'Words,Times,Longest\nplant labels,226,0:42\nseed tin,64,1:05\n'),
  asked('three columns of whole numbers', 'Words,a,b,c\nplant labels,9,226,12\nseed tin,7,64,3\n', [
    'phrase: Words; count: a',
    'phrase: Words; count: b',
    'phrase: Words; count: c',
  ]),
  asked('only texts', 'Words,Land\nplant labels,GB\nseed tin,IE\n', []),
  asked('a letter and no list', 'Dear all,\nhere is what was typed.\nBest,\nNell\n', []),
  read('bars between the cells', 'Words|Times\nplant labels|226\nseed tin|64\n'),
];
