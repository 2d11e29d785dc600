/** A small invented box of another trade than the demo's: everything that can hurt somebody is in it, and every piece is made. */
import type { Files } from './built.ts';

const box = (lang: string): string => `---
name: Crumb & Crust
url: https://crumbandcrust.example/
lang: ${lang}
timeZone: Europe/London
currency: GBP
description: A monthly box for people who bake at home, with its story told once it has come.
author: Nell Orchard
postalAddress: {streetAddress: 2 Mill Row, addressLocality: Aldermouth, postalCode: AM1 1AA, addressCountry: GB}
unsubscribe: https://crumbandcrust.example/stop
subscription: {name: The monthly box, price: 31.00, description: Five things for the oven.}
calls:
  join: {address: "https://crumbandcrust.example/join", text: Join for the next box}
call: join
pieces: [article, invitation, live, letter, clip]
reveal: {share: 0.9, weekdays: [thursday], time: "19:00"}
---

A box for the warm end of the house.
`;

const cycle = (theme: string, month: string, more: string, body: string): string => `---
theme: ${theme}
summary: A whisk, an oven, a knife, a pin, a cutter and a bag of flour, and how one loaf needs them all.
shipped: ${month}-03
reveal: ${month}-19T19:00
${more}---

${body}
`;

const item = (name: string, kind: string, more: string, story: string): string => `---
name: ${name}
kind: ${kind}
description: ${more.includes('lead: true') ? 'It is what this month is about.' : 'It does one thing and does it well.'}
color: red
material: [steel]
${more}---

${story}
`;

/** Its files in a language (BCP 47), two cycles of which the second is April 2026. */
export const bakersBox = (lang: string): Files => ({
  'box.md': box(lang),
  'cycles/2026-03/cycle.md': cycle(
    'First Loaves',
    '2026-03',
    'peek: {text: "April is about edges."}\n',
    'The starter died in January. It was not my fault.',
  ),
  'cycles/2026-03/items/01-whisk.md': item(
    'Danish dough whisk',
    'dough whisk',
    'lead: true\nbrand: Tolley\n',
    'The loops cut through a stiff dough without clogging.',
  ),
  'cycles/2026-03/items/02-tin.md': item(
    'Bun, muffin and pudding tin',
    'baking tin',
    'brand: Tolley\ngoesWith: The dough fills half of each hollow.\n',
    'Grease it once and wipe it ever after.',
  ),
  'cycles/2026-03/items/03-pin.md': item(
    'IKA rolling pin',
    'rolling pin',
    'brand: IKA\ngoesWith: It follows the whisk.\n',
    'It has no handles.',
  ),
  'cycles/2026-04/cycle.md': cycle(
    'A Good Edge',
    '2026-04',
    '',
    'The knives were late. They had to be ground again.',
  ),
  'cycles/2026-04/items/01-oven.md': item(
    'Dutch oven, 4 quarts',
    'Dutch oven',
    'lead: true\nbrand: Tolley\n',
    'Heat it empty, then drop the dough in.',
  ),
  'cycles/2026-04/items/02-knife.md': item(
    'Japanese bread knife',
    'bread knife',
    'brand: Hasami\ncategory: [blade]\ngoesWith: It opens what the oven made.\n',
    'Saw, never press.',
  ),
  'cycles/2026-04/items/03-cutter.md': item(
    'Biscuit cutter',
    'biscuit cutter',
    'brand: Tolley\ncategory: [children]\nminAge: 3\nhazards: [small parts, cords]\ngoesWith: It cuts what the oven is too big for.\n',
    'Press it straight down and do not twist.',
  ),
  'cycles/2026-04/items/04-flour.md': item(
    'Stone-ground rye flour',
    'flour',
    'brand: Mill Row\ncategory: [food]\nallergens: [rye, gluten]\nmayContain: [molluscs, sulphites]\ningredients: Rye.\ngoesWith: A loaf wants a pound of it.\n',
    'It is best within three months.',
  ),
  'cycles/2026-04/items/05-candle.md': item(
    'Beeswax candle',
    'candle',
    'brand: Mill Row\ncategory: [candle]\ngoesWith: It stands beside the oven while you wait.\n',
    'It smells of honey.',
  ),
  'cycles/2026-04/items/06-herb.md': item(
    'Potted rosemary',
    'plant',
    'brand: Mill Row\ncategory: [plant]\ntoxicTo: [cats, dogs, rabbits]\ngoesWith: A sprig goes into the crust.\n',
    'Water it when the pot is light.',
  ),
});
