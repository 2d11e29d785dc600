import { photo } from '../io/photos.ts';

const BOX = `---
name: Crumb & Co
url: https://crumb.example/
lang: en-GB
timeZone: Europe/London
currency: GBP
description: A small box of baking tools, with the story of each.
author: Ada Crumb
every: P1M
palette: ["#5f7358"]
calls:
  join: {address: "https://crumb.example/join", text: Join for the next box}
call: join
---

Crumb & Co sends one good baking tool a month to people who bake at home.
`;

const cycle = (month: string): string => `---
theme: Proving
summary: A round cane proving basket for one loaf of bread, told from the willow bed to the first crust.
shipped: ${month}-03
reveal: ${month}-19T19:00
photo: {file: box.jpg, alt: The whole box on a table}
---

We looked for a basket for a year.
`;

const item = (name: string): string => `---
name: ${name}
kind: proving basket
lead: true
brand: Fenn Weavers
description: A round basket of cane that shapes one loaf while it rises.
material: [cane]
size: 22 cm
price: 18.50
category: none
image:
  - {file: basket.jpg, alt: A round cane basket with dough in it}
---

Dust it with rice flour.
`;

/** A box with one cycle revealed on 19 March 2026 and one on 19 April 2026. */
export const tinyBox = async (): Promise<Record<string, string | Uint8Array>> => {
  const files: Record<string, string | Uint8Array> = { 'content/box.md': BOX };
  for (const [month, name] of [
    ['2026-03', 'Cane proving basket'],
    ['2026-04', 'Zanzibar dough scraper'],
  ] as const) {
    const folder = `content/cycles/${month}`;
    files[`${folder}/cycle.md`] = cycle(month);
    files[`${folder}/items/01-${month === '2026-03' ? 'basket' : 'scraper'}.md`] = item(name);
    files[`${folder}/photos/box.jpg`] = await photo(800, 600);
    files[`${folder}/photos/basket.jpg`] = await photo(700, 500);
  }
  return files;
};
