import { expect, test } from 'vitest';
import { formatOf, parcelShapeOf } from '../../src/content/parcel-shape.ts';
import { parcelsReader } from '../../src/content/parcels.ts';
import { dayOfDate } from '../../src/text/days.ts';

const read = (text: string, format: Parameters<typeof parcelsReader>[0]['format'] = {}) => {
  const reader = parcelsReader({
    file: 'cycles/2026-04/parcels.csv',
    format,
    timeZone: 'Europe/Berlin',
    asOf: dayOfDate('2026-04-20'),
  });
  reader.write(text);
  const { value, diagnostics } = reader.end();
  const counted = (state: string): number =>
    (value?.counts ?? []).filter((one) => one.state === state).reduce((sum, { count }) => sum + count, 0);
  return {
    states: ['delivered', 'travelling', 'lost', 'returned'].map(counted),
    rules: diagnostics.map(({ rule }) => rule),
    diagnostics,
  };
};

/** As it is read once somebody said yes to what it was taken for. */
const proposed = (text: string) => {
  const shape = parcelShapeOf(text);
  return read(text, formatOf(shape?.columns ?? {}, shape?.dates[0]));
};

test.each([
  [
    'German, with days of the week',
    'Sendungsnummer;Versanddatum;Zustelldatum;Status\nA1;Mi., 01.04.2026;Fr., 17.04.2026;Beim Nachbarn abgegeben\nA2;Mi., 01.04.2026;;Unterwegs\nA3;Mi., 01.04.2026;;Verloren\nA4;Mi., 01.04.2026;;Retoure\n',
  ],
  [
    'French, with months in words',
    "N° de colis;Date d'expédition;Date de livraison;Statut\nA1;1 avr. 2026;17 avr. 2026;Livré\nA2;1 avr. 2026;;En cours d’acheminement\nA3;1 avr. 2026;;Perdu\nA4;1 avr. 2026;;Retourné à l’expéditeur\n",
  ],
  [
    'Japanese',
    '追跡番号,発送日,配達日,状況\nA1,2026/04/01,2026/04/17,配達完了\nA2,2026/04/01,,輸送中\nA3,2026/04/01,,紛失\nA4,2026/04/01,,返送\n',
  ],
  [
    'a hoped-for day before the day of arrival',
    'Tracking No,Date Shipped,Expected Delivery,Delivered Date,Outcome\nA1,2026-04-01,2026-04-03,2026-04-17,"Delivered - signed for"\nA2,2026-04-01,2026-04-03,,At local depot\nA3,2026-04-01,2026-04-03,,Lost in transit\nA4,2026-04-01,2026-04-03,,Undeliverable - returned\n',
  ],
  [
    'lines above the heads, and words for no date',
    'Shipment report,,\nMade 20 April,,\n\nBarcode,Despatched,Delivered\nA1,01/04/2026,17/04/2026\nA2,01/04/2026,not yet\nA3,01/04/2026,Lost\nA4,01/04/2026,returned to sender\n',
  ],
  [
    'days as a spreadsheet numbers them',
    'Order;Shipped;Delivered;Last status\nA1;46113;46129;left with neighbour\nA2;46113;;out for delivery\nA3;46113;;missing\nA4;46113;;RTS\n',
  ],
])('a list is read as its carrier meant it: %s', (_, text) => {
  expect(proposed(text).states).toEqual([1, 1, 1, 1]);
});

test('columns that box.md does not name are proposed as lines for it', () => {
  const { diagnostics, states } = read(
    'Zending;Verzonden op;Bezorgd op\nA1;1-4-2026;17-4-2026\nA2;1-4-2026;3-4-2026\n',
  );
  expect(states).toEqual([0, 0, 0, 0]);
  expect(diagnostics[0]?.written?.lines).toEqual([
    'parcels:',
    '  shipped: "Verzonden op"',
    '  delivered: "Bezorgd op"',
    '  parcel: "Zending"',
    '  dates: "DD-MM-YYYY"',
  ]);
});

test('a list of events is said to be one', () => {
  const { diagnostics } = read(
    'Tracking,Event time,Event\nA1,2026-04-01 07:00,Collected\nA1,2026-04-03 09:00,Delivered\nA2,2026-04-01 07:00,Collected\nA2,2026-04-02 07:00,In transit\n',
  );
  expect(diagnostics).toHaveLength(1);
  expect(diagnostics[0]?.message).toMatch(/several rows a parcel/);
});

test('a date of arrival beside a status that says on its way is named', () => {
  const { states, rules } = read(
    'shipped,delivered,status\n2026-04-01,2026-04-03,In transit\n2026-04-01,2026-04-17,Delivered\n',
  );
  expect([states, rules]).toEqual([[2, 0, 0, 0], ['parcels-status']]);
});

test.each([
  'Returned to depot',
  'Return label printed',
  'Missing address',
  'sent back',
  'Delivery attempted',
])('“%s” is neither lost, sent back nor arrived', (status) => {
  const { states, rules } = read(
    `shipped,delivered,status\n2026-04-01,,${status}\n2026-04-01,2026-04-19,Delivered\n`,
  );
  expect([states, rules]).toEqual([[1, 1, 0, 0], ['parcels-status']]);
});
