import { test } from 'vitest';
import { languageFor } from '../../src/analysis/language/language.ts';
import { catalogueItems, searchIndex } from '../../src/analysis/search/documents.ts';
import { find } from '../../src/analysis/search/find.ts';
import { openPart } from '../../src/analysis/search/part.ts';
import { archive } from './archive.ts';

test('probe', async () => {
  const box = archive();
  const language = await languageFor('en-GB');
  const index = searchIndex(catalogueItems(box, language), box.settings, language);
  const t0 = performance.now();
  const parts = [index.head, ...index.stories].map(openPart);
  console.log(
    'open',
    performance.now() - t0,
    parts.map((p) => p.forms.length),
  );
  for (let r = 0; r < 3; r++) {
    const known = new Map();
    const rows: [string, number, number][] = [];
    for (const text of [
      'green mister from spring',
      'terracota pot',
      'watering can',
      'thermometr',
      'bambo trelis',
      'winter kitchen bowls',
    ])
      for (let e = 1; e <= text.length; e++) {
        const q = text.slice(0, e);
        const t = performance.now();
        const a = find(parts, language, q, {}, known);
        rows.push([q, performance.now() - t, a.found.length]);
      }
    rows.sort((a, b) => b[1] - a[1]);
    console.log(
      rows
        .slice(0, 14)
        .map(([q, ms, n]) => `${q} ${ms.toFixed(1)} (${n})`)
        .join(', '),
      'median',
      rows[rows.length >> 1]?.[1].toFixed(2),
    );
  }
});
