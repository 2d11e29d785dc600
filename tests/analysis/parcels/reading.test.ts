import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { csvScanner } from '../../../src/content/csv-scanner.ts';
import { dateReader, formsFitting, isDatePattern } from '../../../src/content/parcel-dates.ts';
import { type ParcelFormat, parcelsReader } from '../../../src/content/parcels.ts';
import { dateOfDay, dayNumber, dayOfDate } from '../../../src/text/days.ts';

/** Every row that the scanner gives of a text cut into chunks. */
const scanned = (text: string, chunk = 1e9, wanted?: readonly number[]): string[][] => {
  const rows: string[][] = [];
  const scanner = csvScanner({
    header: (cells) => {
      rows.push([...cells]);
      return wanted ?? cells.map((_, i) => i);
    },
    row: (cells) => rows.push([...cells]),
    unclosed: (line) => rows.push([`unclosed ${line}`]),
  });
  for (let at = 0; at < text.length; at += chunk) scanner.write(text.slice(at, at + chunk));
  scanner.end();
  return rows;
};

describe('the scanner', () => {
  test('reads what csv-parse reads, whatever the delimiter, the line ends and the chunks', () => {
    const cell = fc.oneof(fc.stringMatching(/^[a-z0-9/.-]{1,8}$/), fc.stringMatching(/^[a-z",;\n é]{0,8}$/));
    const table = fc
      .integer({ min: 1, max: 4 })
      .chain((width) =>
        fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 2, maxLength: 6 }),
      );
    fc.assert(
      fc.property(
        table,
        fc.constantFrom(',', ';', '\t', '|'),
        fc.constantFrom('\n', '\r\n', '\r'),
        fc.integer({ min: 1, max: 9 }),
        fc.constantFrom('', '\ufeff'),
        (cells, delimiter, end, chunk, mark) => {
          // The header decides which sign separates: give it plain words and one sign.
          const rows = [cells[0]?.map((_, i) => `column ${i}`) as string[], ...cells.slice(1)];
          const text = rows
            .map((row) => row.map((one) => `"${one.replaceAll('"', '""')}"`).join(delimiter) + end)
            .join('');
          if (rows[0]?.length === 1) return;
          const theirs = parse(text, { delimiter, record_delimiter: end }) as string[][];
          const filled = theirs.map((row) => row.map((one) => one.trim())).filter((row) => row.some(Boolean));
          expect(scanned(mark + text, chunk)).toEqual(filled);
        },
      ),
    );
  });

  test('takes quotes that stand in the middle of a cell as they are, in columns that nobody wants too', () => {
    expect(scanned('a,b,c\n5" tin,1,"say ""so"""\n', 1e9, [1, 2])).toEqual([
      ['a', 'b', 'c'],
      ['1', 'say "so"'],
    ]);
  });

  test('follows a line that says what separates, passes over empty rows, and fills short ones', () => {
    expect(scanned('sep=|\r\na,x|b\r\n\r\n|\r\n1\r\n', 3)).toEqual([
      ['a,x', 'b'],
      ['1', ''],
    ]);
  });

  test('says on which line a quote opens that never closes, at the end of the file or long before', () => {
    expect(scanned('a,b\n1,2\n"3,4\n5,6\n').at(-1)).toEqual(['unclosed 3']);
    expect(scanned(`a,b\n"3,4\n${'5,6\n'.repeat(100)}`, 7).at(-1)).toEqual(['unclosed 2']);
  });
});

describe('days', () => {
  test('are those of ISO 8601 as Temporal has them', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1000, max: 9999 }),
        fc.integer({ min: 0, max: 14 }),
        fc.integer({ min: 0, max: 33 }),
        (year, month, day) => {
          let theirs: string | undefined;
          try {
            theirs = Temporal.PlainDate.from({ year, month, day }, { overflow: 'reject' }).toString();
          } catch {}
          const ours = dayNumber(year, month, day);
          expect(ours === undefined ? undefined : dateOfDay(ours)).toBe(theirs);
          if (theirs) expect(dayOfDate(theirs)).toBe(ours);
        },
      ),
    );
  });

  test.each([
    ['DD/MM/YYYY', '05/03/2026', '2026-03-05'],
    ['DD/MM/YYYY', '5/3/2026 14:05', '2026-03-05'],
    ['DD-MM-YYYY', '05-03-2026', '2026-03-05'],
    ['D-MMM-YY', '5-Mar-26', '2026-03-05'],
    ['DD/MM/YYYY', '2026-03-05', '2026-03-05'],
    ['MM/DD/YYYY', '03/05/2026, 9:05 PM', '2026-03-05'],
    ['D.M.YY', '5.3.26', '2026-03-05'],
    ['DD MMM YYYY', '05 Mar 2026', '2026-03-05'],
    ['DD MMM YYYY', '5 march 2026', '2026-03-05'],
    ['YYYYMMDD', '20260305', '2026-03-05'],
    ['DD/MM/YYYY HH:mm', '05/03/2026 23:59', '2026-03-05'],
    [undefined, '2026-03-05T23:30:00Z', '2026-03-05'],
    // Clocks in London went forward on 29 March 2026: from then on 23:30 in UTC is the next day.
    [undefined, '2026-03-28T23:30:00Z', '2026-03-28'],
    [undefined, '2026-03-29T23:30:00Z', '2026-03-30'],
    [undefined, '2026-03-05 00:30:00+02:00', '2026-03-04'],
    [undefined, '2026-03-04T22:30:00-0500', '2026-03-05'],
    [undefined, '2024-02-29', '2024-02-29'],
    // As a spreadsheet numbers days.
    [undefined, '46086', '2026-03-05'],
    ['DD/MM/YYYY', '46086.39', '2026-03-05'],
    ['DD.MM.YYYY', 'Do., 05.03.2026', '2026-03-05'],
    // Half past eleven at night in London's winter, in seconds.
    [undefined, '1772753400', '2026-03-05'],
    ['D MMM YYYY', '3 avr. 2026', '2026-04-03'],
    ['D MMM YYYY', '3 de março de 2026', '2026-03-03'],
    ['D MMM YYYY', '15 października 2026', '2026-10-15'],
    ['DD MMM YYYY', 'Fri, 03 Apr 2026 09:12:00 GMT', '2026-04-03'],
    ['MMM D, YYYY', 'April 3, 2026 2:15 PM', '2026-04-03'],
    // A month that is Tuesday in another language.
    ['MMM D, YYYY', 'Mar 3, 2026', '2026-03-03'],
    ['D MMM YYYY', 'mar 3 abr 2026', '2026-04-03'],
  ])('by %s, `%s` is %s', (pattern, cell, day) => {
    const reading = dateReader(pattern, 'Europe/London')(cell);
    expect('day' in reading ? dateOfDay(reading.day) : reading).toBe(day);
  });

  test.each([
    [undefined, '2026-02-30', 'none'],
    [undefined, '2025-02-29', 'none'],
    [undefined, '2026-13-01', 'none'],
    [undefined, '03/04/2026', 'shape'],
    [undefined, '2026-03-05 soon', 'shape'],
    [undefined, '20457', 'shape'],
    ['D MMM YYYY', '3 jui 2026', 'none'],
    ['DD.MM.YYYY', 'Fr., 03.04.', 'shape'],
    ['DD/MM/YYYY', '30/02/2026', 'none'],
    ['DD/MM/YYYY', '03/25/2026', 'swapped'],
    ['DD/MM/YYYY', '05.03.2026', 'shape'],
    ['DD/MM/YYYY', '05/03/2026 25:00', 'none'],
  ])('by %s, `%s` is no date: %s', (pattern, cell, fault) => {
    expect(dateReader(pattern, 'Europe/London')(cell)).toEqual({ fault });
  });

  test('of instants are those of Intl, in zones on both sides of the date line', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: Date.UTC(2024, 0, 1), max: Date.UTC(2028, 0, 1) }),
        fc.constantFrom(
          'Europe/London',
          'Pacific/Auckland',
          'America/St_Johns',
          'Pacific/Kiritimati',
          'Australia/Lord_Howe',
        ),
        (instant, timeZone) => {
          const reading = dateReader(undefined, timeZone)(new Date(instant).toISOString());
          const parts = new Intl.DateTimeFormat('sv-SE', { timeZone, dateStyle: 'short' }).format(instant);
          expect('day' in reading && dateOfDay(reading.day)).toBe(parts);
        },
      ),
    );
  });

  test('have a form that names year, month and day once', () => {
    for (const good of ['DD/MM/YYYY', 'YYYY-MM-DD', 'D.M.YY', 'MMM D, YYYY', 'DD/MM/YYYY HH:mm:ss'])
      expect(isDatePattern(good)).toBe(true);
    for (const bad of ['DD/MM', 'DD/DD/YYYY', 'dd/mm/yyyy', 'DD/MM/YYYY UTC', ''])
      expect(isDatePattern(bad)).toBe(false);
  });

  test('that leave the month open show both forms they may have', () => {
    expect(formsFitting('03/04/2026')).toEqual(['DD/MM/YYYY', 'MM/DD/YYYY']);
    expect(formsFitting('25.04.26')).toEqual(['DD.MM.YY']);
    expect(formsFitting('next week')).toEqual([]);
  });
});

const ASOF = dayOfDate('2026-03-20');
const read = (text: string, format: ParcelFormat = {}, chunk = 1e9) => {
  const reader = parcelsReader({ file: 'parcels.csv', format, timeZone: 'Europe/London', asOf: ASOF });
  for (let at = 0; at < text.length; at += chunk) reader.write(text.slice(at, at + chunk));
  const { value, diagnostics } = reader.end();
  return {
    counts: value?.counts.map(
      ({ shipped, days, state, count }) => `${dateOfDay(shipped)} ${days} ${state} ${count}`,
    ),
    findings: diagnostics.map(({ weight, rule, location: place }) => `${weight} ${rule} ${place.line}`),
    value,
    diagnostics,
  };
};
const good = (rows: number): string => '2026-03-03,2026-03-05\n'.repeat(rows);

describe('a file of parcels', () => {
  test('gives counts, whatever its columns are called and however it is cut up', () => {
    const text =
      '\ufeffOrder;Name;Ship date;Delivered on;State\r\n1;"Ann; Lee";03/03/2026;05/03/2026;Delivered\r\n2;"Bo ""B"" Ek";03/03/2026;;In transit\r\n3;C;03/03/2026;;LOST\r\n4;D;03/03/2026;09/03/2026;Return to sender\r\n';
    const format = { shipped: 'ship  date', delivered: 'Delivered on', status: 'State', dates: 'DD/MM/YYYY' };
    const expected = [
      '2026-03-03 2 delivered 1',
      '2026-03-03 17 travelling 1',
      '2026-03-03 17 lost 1',
      // It came back on the ninth.
      '2026-03-03 6 returned 1',
    ];
    for (const chunk of [1, 2, 7, 1e9]) {
      const { counts, findings } = read(text, format, chunk);
      expect({ counts, findings: findings.filter((one) => !one.includes('parcels-old')) }).toEqual({
        counts: expected,
        findings: [],
      });
    }
    expect(JSON.stringify(read(text, format).value)).not.toMatch(/Ann|Lee|Bo/);
  });

  test('keeps the lines of what is on its way', () => {
    const { value } = read(`shipped,delivered\n${good(20)}2026-03-18,\n2026-03-18,\n`);
    expect(value?.counts.find(({ state }) => state === 'travelling')?.lines).toEqual([22, 23]);
  });

  test.each([
    ['2026-02-30,2026-03-05', 'parcels-row'],
    ['2026-03-05,2026-03-03', 'parcels-row'],
    [',2026-03-03', 'parcels-row'],
    ['2026-03-05,soon', 'parcels-row'],
    ['2016-03-05,2026-03-09', 'parcels-row'],
    ['2016-03-05,', 'parcels-row'],
    ['2026-03-05,2026-03-22', 'parcels-later'],
    ['2026-03-25,', 'parcels-later'],
  ])('says of `%s` on its line what is wrong', (row, rule) => {
    const { findings, counts } = read(`shipped,delivered\n${good(20)}${row}\n`);
    expect(findings).toEqual([`look at ${rule} 22`]);
    expect(counts?.[0]).toBe('2026-03-03 2 delivered 20');
  });

  test('counts what is dated after the day it is read as of as not happened yet', () => {
    const { counts } = read(`shipped,delivered\n${good(20)}2026-03-05,2026-03-22\n2026-03-25,\n`);
    expect(counts).toEqual([
      '2026-03-03 2 delivered 20',
      '2026-03-05 15 travelling 1',
      '2026-03-25 0 toLeave 1',
    ]);
  });

  test('names ten bad rows and counts the others', () => {
    const { findings, diagnostics } = read(`shipped,delivered\n${good(300)}${'2026-02-30,\n'.repeat(15)}`);
    expect(findings.length).toBe(11);
    expect(diagnostics.at(-1)?.message).toContain('5 more than were named');
  });

  test.each([
    ['shipped,arrived\n2026-03-03,\n', {}, 'must fix parcels-column 1'],
    ['shipped,delivered\n2026-03-03,\n', { carrier: 'Courier' }, 'must fix parcels-column 1'],
    [`shipped,delivered\n${good(20)}"2026-03-03,\n`, {}, 'must fix parcels-quote 22'],
    ['shipped,delivered\n03/03/2026,05/03/2026\n', {}, 'must fix parcels-dates 1'],
    [
      `shipped,delivered\n${'03/03/2026,05/03/2026\n'.repeat(50)}03/03/2026,03/25/2026\n`,
      { dates: 'DD/MM/YYYY' },
      'must fix parcels-dates 52',
    ],
    [`shipped,delivered\n${good(7)}2026-03-05,2026-03-01\n`, {}, 'must fix parcels-rows 1'],
  ])('that cannot be relied on gives no numbers (%#)', (text, format, finding) => {
    const { value, findings } = read(text, format);
    expect(value).toBeUndefined();
    expect(findings).toContain(finding);
  });

  test('whose dates may be read two ways asks which is meant', () => {
    const asked = (text: string) => read(text).diagnostics.at(-1)?.fix;
    expect(asked('shipped,delivered\n03/03/2026,05/03/2026\n')).toBe(
      'Write in box.md under `parcels` which number is the month: `dates: DD/MM/YYYY` or `dates: MM/DD/YYYY`',
    );
    expect(asked('shipped,delivered\n03/03/2026,05/03/2026\n03/03/2026,25/03/2026\n')).toBe(
      'Write in box.md `dates: DD/MM/YYYY` under `parcels`',
    );
    expect(asked('shipped,delivered\n25/02/2026,05/03/2026\n')).toBe(
      'Write in box.md `dates: DD/MM/YYYY` under `parcels`',
    );
  });

  test('counts a parcel once that it names twice, and takes the row in which it has arrived', () => {
    const text = `parcel,shipped,delivered\nA1,2026-03-17,\nA2,2026-03-17,2026-03-19\nA1,2026-03-17,2026-03-20\nA2,2026-03-17,2026-03-19\nA2,2026-03-17,\n`;
    const { counts, findings } = read(text);
    expect(counts).toEqual(['2026-03-17 2 delivered 1', '2026-03-17 3 delivered 1']);
    expect(findings).toEqual(['note parcels-twice 4']);
  });

  test('knows thousands of parcels again', () => {
    const rows = Array.from({ length: 3000 }, (_, i) => `SS-${i},2026-03-03,2026-03-05\n`).join('');
    const { counts, diagnostics } = read(`parcel,shipped,delivered\n${rows}${rows}`);
    expect(counts).toEqual(['2026-03-03 2 delivered 3000']);
    expect(diagnostics[0]?.message).toContain('in 3000 of 6000 rows');
  });

  test('has its lines counted as an editor counts them, within quotes too', () => {
    for (const end of ['\n', '\r\n', '\r']) {
      const text = [
        'shipped,delivered,address',
        '2026-03-03,2026-03-05,"A',
        'B"',
        ...Array(10).fill('2026-03-03,2026-03-05,'),
        '2026-02-30,,',
      ].join(end);
      for (const chunk of [1, 1e9])
        expect(read(text, {}, chunk).findings).toEqual(['look at parcels-row 14']);
    }
  });

  test('that has no numbers for its parcels may hold rows that are alike', () => {
    expect(read(`shipped,delivered\n${good(5)}`)).toMatchObject({
      counts: ['2026-03-03 2 delivered 5'],
      findings: [],
    });
  });

  test('that is older than the day it is read as of is suspected while parcels are on their way', () => {
    expect(read(`shipped,delivered\n${good(20)}2026-03-03,\n`).findings).toEqual(['look at parcels-old 1']);
  });

  test('with a name in every row where a carrier should be says so, and does not keep them', () => {
    const rows = Array.from({ length: 100 }, (_, i) => `2026-03-03,2026-03-05,Name ${i}\n`).join('');
    const { findings, value } = read(`shipped,delivered,carrier\n${rows}`);
    expect(findings).toEqual(['look at parcels-names 1']);
    expect(value?.counts.length).toBeLessThan(70);
  });
});
