import { expect, test } from 'vitest';
import { parcelShapeOf } from '../../src/content/parcel-shape.ts';
import { withAdvice } from '../../src/desk/advice.ts';
import { photoName } from '../../src/desk/panels/photos.ts';
import { commentsIn, shortName } from '../../src/desk/panels/voices.ts';
import { editedBy, fieldOf, recordOf, STORY } from '../../src/desk/record.ts';
import { begin } from '../../src/wording/en/begin.ts';
import { ownersNote } from '../../src/workspace/begin/record-text.ts';
import { sentForm } from '../support/typed-form.ts';

const item = (story: string, fields = 'description: A blade.\n') =>
  recordOf('cycles/2026-03/items/01-a.md', `---\nname: Scraper\n${fields}---\n\n${story}`, '');

const at = (line: number, column: number) => ({ file: 'cycles/2026-03/items/01-a.md', line, column });

test('advice changes its own sentence, over the ends of lines too, and no other byte', () => {
  const record = item('First. It lifts\n  a loaf. It lifts a loaf.\n');
  const taken = (line: number, column: number) => {
    const result = withAdvice(record, {
      at: at(line, column),
      before: 'It lifts a loaf.',
      after: 'A dough scraper lifts a loaf.',
    });
    return result?.kind === 'edited' ? result.text.slice(result.text.indexOf('First.')) : undefined;
  };
  expect(taken(6, 8)).toBe('First. A dough scraper lifts a loaf. It lifts a loaf.\n');
  expect(taken(7, 11)).toBe('First. It lifts\n  a loaf. A dough scraper lifts a loaf.\n');
});

test('advice on a field changes that field; a sentence that stands otherwise by now is left alone', () => {
  const record = item('It lifts.\n', 'description: "A blade." # keep\n');
  const edit = { at: at(3, 14), before: 'A blade.', after: 'A dough scraper of steel.' };
  expect(withAdvice(record, edit)).toMatchObject({
    kind: 'edited',
    text: record.text.replace('A blade.', 'A dough scraper of steel.'),
    about: ['description'],
  });
  expect(withAdvice(record, { ...edit, before: 'A knife.' })).toBeUndefined();
  expect(withAdvice(record, { at: at(6, 1), before: 'It cuts.', after: 'It does.' })).toBeUndefined();
});

const list = (head: string, ...rows: readonly string[]) => parcelShapeOf([head, ...rows].join('\n'));

test.each([
  [
    'comma, days and months told by a day past the twelfth',
    list(
      'Order,Ship date,Delivered on,Status',
      'A1,03/02/2026,14/02/2026,Delivered',
      'A2,03/02/2026,,In transit',
    ),
    { shipped: 'Ship date', delivered: 'Delivered on', status: 'Status' },
    ['DD/MM/YYYY'],
  ],
  [
    'dates as standards write them',
    list('tracking;dispatched;arrived', 'X;2026-03-02;2026-03-05', 'Y;2026-03-02;'),
    { shipped: 'dispatched', delivered: 'arrived', parcel: 'tracking' },
    [],
  ],
  [
    'either number may be the month',
    list('sent\treceived\tcounty', '03/02/2026\t05/02/2026\tKent', '03/02/2026\t\tKent'),
    { shipped: 'sent', delivered: 'received', region: 'county' },
    ['DD/MM/YYYY', 'MM/DD/YYYY'],
  ],
  [
    'heads that say nothing: what left is dated in every row',
    list('a,b,c', '1,2026-03-02,2026-03-05', '2,2026-03-02,'),
    { shipped: 'b', delivered: 'c' },
    [],
  ],
])('a carrier’s list is recognised: %s', (_, shape, columns, dates) => {
  expect({ ...shape?.columns }).toMatchObject(columns);
  expect(shape?.dates).toEqual(dates);
});

test('what is no list is said to be none', () => {
  expect(parcelShapeOf('just a line of text')).toBeUndefined();
  expect(parcelShapeOf('')).toBeUndefined();
});

test('comments of a live have names where they begin with one, and times are left out', () => {
  expect(
    commentsIn(
      '[19:04] Ada Finch: It has stripes!\n\nWhat a loaf: round and brown, and I would say the best of all of them so far: yes\nhttps://x.example: no\n19:05 - @ada_f: again',
    ),
  ).toEqual([
    { name: 'Ada Finch', text: 'It has stripes!' },
    { name: 'What a loaf', text: 'round and brown, and I would say the best of all of them so far: yes' },
    { name: '', text: 'https://x.example: no' },
    { name: '@ada_f', text: 'again' },
  ]);
  expect(['Ada Finch', '@ada_f', 'ada', 'María del Mar Ruiz'].map(shortName)).toEqual([
    'Ada F.',
    'Ada F.',
    'Ada',
    'María R.',
  ]);
});

test('a photo’s name stands anywhere: no folder, no sign that means something, an ending that is a picture’s', () => {
  expect(
    ['IMG 2041.JPEG', '../../etc/x.png', 'C:\\pics\\Küche (1).heic', '.jpg', 'a.svg', 'b.php', '猫.webp'].map(
      photoName,
    ),
  ).toEqual([
    { stem: 'img-2041', ending: 'jpg' },
    { stem: 'x', ending: 'png' },
    { stem: 'küche-1', ending: 'heic' },
    { stem: 'photo', ending: 'jpg' },
    undefined,
    undefined,
    { stem: '猫', ending: 'webp' },
  ]);
});

const noted = (body: string): string => `---\nname: Scraper\ndescription: A blade.\n---\n\n${body}`;
const { itemBody, fromList } = begin.hints;
const LIST = `${ownersNote(`${fromList}\nCost: 4.20`)}\n`;

test('the first words of a story take the place of what asked for them, and no note of the owner', () => {
  const asked = noted(`${ownersNote(itemBody)}\n\n${LIST}`);
  const record = recordOf('cycles/2026-03/items/01-a.md', asked, '');
  const form = sentForm(record);
  expect(form.get(STORY)).toBe('');
  const saved = (story: string, of = record) => {
    const result = editedBy(of, (name) => (name === STORY ? story : form.get(name)));
    return result.kind === 'edited' ? result.text : undefined;
  };
  expect(saved('')).toBe(asked);
  const told = noted(`${LIST}\nIt lifts a loaf.`);
  expect(saved('It lifts a loaf.')).toBe(told);
  // The form stays as it was shown, and saves again and again.
  const again = recordOf('cycles/2026-03/items/01-a.md', told, '');
  expect(saved('It lifts a loaf.', again)).toBe(told);
  expect(saved('It lifts a loaf. Dry it.', again)).toBe(noted(`${LIST}\nIt lifts a loaf. Dry it.`));
});

test.each([
  ['beside another field', { adds: 'goesWith' }, 2, 'goesWith'],
  ['in a group that stands nowhere', { adds: 'spare.until' }, 2, 'spare.until'],
  ['in a thing of a list', { adds: 'image.0.alt' }, 4, 'image.0.alt'],
  ['one that stands there', { adds: 'description' }, 2, 'name'],
  ['one that no form has', { adds: 'nothing' }, 2, 'name'],
])('a finding is shown at the field that it asks for: %s', (_, asked, line, field) => {
  const record = item('It lifts.\n', 'description: A blade.\nimage:\n  - {file: a.jpg}\n');
  expect(fieldOf(record, { ...asked, location: at(line, 1) })).toBe(field);
});
