import { HtmlValidate, StaticConfigLoader } from 'html-validate';
import { describe, expect, test } from 'vitest';
import { languageFor } from '../../src/analysis/language/language.ts';
import { parcelsFacts } from '../../src/analysis/parcels/facts.ts';
import { parcels } from '../../src/channels/parcels/index.ts';
import type { Parcels } from '../../src/model/box.ts';
import { htmlSource } from '../../src/render/html.ts';
import { stepCurve } from '../../src/render/step-curve.ts';
import { dayOfDate } from '../../src/text/days.ts';
import { wordingFor } from '../../src/wording/wording.ts';
import { parcel } from '../analysis/parcels/parcels.ts';
import { box, cycle } from '../support/box.ts';
import { carriedOut } from '../support/carried-out.ts';
import { outputFiles } from '../support/output-files.ts';
import { ownTemplates } from '../support/own-templates.ts';

const language = await languageFor('en-GB');

const LEFT = dayOfDate('2026-03-03');
const list = (age: number, left = LEFT): Parcels => ({
  file: 'cycles/2026-03/parcels.csv',
  asOf: left + age,
  counts: Array.from({ length: 120 }, (_, i) => 2 + (i % 11)).map((days, i) => ({
    ...(days <= age ? parcel(days) : parcel(age, 'travelling', { lines: [i + 2] })),
    shipped: left,
    carrier: i % 3 === 0 ? 'Bell & <Barrow>' : 'Heronway',
  })),
});
const page = async (age: number, more: Partial<Parameters<typeof parcelsFacts>[0]> = {}): Promise<string> => {
  const asOf = (LEFT + age) * 86_400_000 + 72_000_000;
  const facts = parcelsFacts({
    cycle: '2026-03',
    theme: 'First Sowings',
    parcels: list(age),
    earlier: [{ cycle: '2026-02', parcels: list(40, LEFT - 30) }],
    planned: Date.UTC(2026, 2, 19, 19),
    asOf,
    asOfDay: LEFT + age,
    timeZone: 'Europe/London',
    habit: { weekdays: [4] },
    ...more,
  });
  const diagnostics = [
    {
      weight: 'look at' as const,
      rule: 'parcels-row',
      location: { file: 'cycles/2026-03/parcels.csv', line: 7, column: 1 },
      message: 'Unexpected `<b>`',
      instead: { from: 7, to: 7, lines: ['<b>,2026-03-03'] },
    },
  ];
  const { outputs } = await carriedOut(parcels, {
    box: box({ cycles: [cycle({ id: '2026-02' }), cycle()] }),
    asOf,
    templates: ownTemplates,
    wording: wordingFor('en-GB'),
    language,
    faces: { digest: 'the faces', lacking: async () => [] },
    proofs: new Map(),
    parcels: new Map([['2026-03', { facts, diagnostics }]]),
    photos: new Map(),
  });
  const files = outputFiles(outputs);
  expect([...files.keys()]).toEqual(['2026-03/parcels.html']);
  return String(files.get('2026-03/parcels.html'));
};
const { parcels: _none, ...without } = { parcels: undefined };
const pages: Readonly<Record<string, string>> = {
  'of a young cycle': await page(5),
  'of one that has arrived': await page(30),
  'of a young cycle with nothing to go by': await page(5, { earlier: [] }),
  'of a cycle without a parcel yet': await page(5, {
    ...without,
    parcels: { file: 'p.csv', asOf: LEFT, counts: [] },
    leaves: LEFT,
  }),
};

describe.each(Object.entries(pages))('the paper %s', (_, text) => {
  test('is valid HTML', async () => {
    const validator = new HtmlValidate(
      new StaticConfigLoader({
        extends: ['html-validate:standard', 'html-validate:a11y'],
        rules: { 'no-trailing-whitespace': 'off', 'long-title': 'off', 'require-sri': 'off' },
      }),
    );
    const report = await validator.validateString(text);
    expect(
      report.results.flatMap(({ messages }) =>
        messages.map(({ ruleId, message, line }) => `${line} ${ruleId}: ${message}`),
      ),
    ).toEqual([]);
  });

  test('needs nothing beside it: no script, no address, no picture', () => {
    expect(text).not.toMatch(/<script|<img|<link|url\(|src=/);
    expect([...text.matchAll(/href="([^"]+)"/g)].map(([, href]) => href)).toEqual(
      expect.arrayContaining(['../index.html', '#figures']),
    );
  });

  test('escapes what the list says', () => {
    expect(text).not.toMatch(/<Barrow>|<b>[`,]/);
    expect(text).toContain('<p>Line 7 should be:</p><pre><code>&lt;b&gt;,2026-03-03</code></pre>');
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
  });
});

describe('the paper', () => {
  const marks = (text: string): readonly string[] =>
    [...text.matchAll(/<path class="mark" d="M([\d.]+) /g)].map(([, x]) => x as string);
  const at = (date: number) => ({ planned: date, habit: { weekdays: [4] } });

  test('marks the reveal in the drawing on its day, the day the first left included', async () => {
    expect(await page(5)).toContain('>Reveal, 19 March 2026</text>');
    const first = await page(5, at(Date.UTC(2026, 2, 3, 19)));
    expect(first).toContain('>Reveal, 3 March 2026</text>');
    // The drawing's left edge.
    expect(marks(first)).toEqual(['52.0']);
  });

  test('marks no reveal that was before anything left, and none where none is planned', async () => {
    expect(marks(await page(5, at(Date.UTC(2026, 2, 2, 19))))).toEqual([]);
    const { planned: _none, ...unplanned } = at(0);
    expect(marks(await page(5, { ...unplanned, ...({ planned: undefined } as object) }))).toEqual([]);
  });

  test('has a column for what has yet to leave where there is any, so that the figures of a row add up', async () => {
    const counts = [
      ...list(5).counts,
      parcel(0, 'toLeave', { shipped: LEFT + 9, carrier: 'Heronway', count: 7 }),
    ];
    const text = await page(5, { parcels: { file: 'p.csv', asOf: LEFT + 5, counts } });
    const [, row = ''] = /<th scope="row">Heronway.*?<\/th>(.*?)<\/tr>/s.exec(text) ?? [];
    const [parcels = 0, ...states] = [...row.matchAll(/<td class="figure">(\d+)/g)].map(([, n]) => Number(n));
    expect(parcels).toBe(87);
    expect(states.slice(0, 5).reduce((a, b) => a + b)).toBe(parcels);
    expect(text).toContain('>To leave</th>');
    expect(await page(5)).not.toContain('>To leave</th>');
  });

  test('says which carrier is behind, what is overdue on which lines, and what is wrong with the list', async () => {
    const text = await page(5);
    expect(text).toContain('<h2 id="by-carrier">Carriers</h2>');
    expect(text).toContain('<b>look at</b> Unexpected ');
    expect(text).not.toContain('<h2 id="by-region">');
  });
});

describe('the drawing', () => {
  test('steps up where parcels arrive, and marks the share and the reveal', () => {
    const svg = htmlSource(
      stepCurve({
        label: 'a "curve"',
        steps: [
          { day: 2, height: 0.5, lower: 0.4, upper: 0.6 },
          { day: 9, height: 1 },
        ],
        end: 9,
        wanted: { height: 0.9, label: 'nine in ten', day: 9 },
        mark: { day: 14, label: 'Reveal' },
        foot: 'days',
      }),
    );
    // 15 days on 648 units from 52, heights on 282 from 312 upwards.
    expect(svg).toContain('class="known" d="M52.0 312.0H138.4V171.0H440.8V30.0H440.8"');
    expect(svg).toContain('class="mark" d="M656.8 20V312"');
    expect(svg).toContain('aria-label="a &quot;curve&quot;"');
    expect(svg).toContain('class="met" cx="440.8" cy="58.2"');
  });
});
