/** A small box whose last cycle bears a mark in every field, file name and photo, so that a scan finds any byte of it. */
import sharp from 'sharp';
import { photo } from '../io/photos.ts';

/** Begins every mark, and no other word of any language. */
export const MARK = 'zqx';
/** What the cycle before shows of it on purpose. */
export const PEEK = 'Look for a long strap of leather';

const NUMBERS = {
  places: 4711,
  spare: 86421357,
  price: '731.09',
  sparePrice: '642.17',
  gtin: '4006381333931',
};
/** Marks that cannot be words, and that no hash in a file's name spells by chance. */
export const NUMBER_MARKS = [
  '731.09',
  '642.17',
  '86421357',
  '4006381333931',
  '3.1415 kg',
  '0f1e2d',
  '2026-04',
  'Tuvalu',
];

const BOX = `---
name: Crumb & Co
url: https://crumb.example/
lang: en-GB
timeZone: Europe/London
currency: GBP
description: A small box of baking tools, with the story of each.
author: Ada Crumb
email: ada@crumb.example
every: P1M
palette: ["#5f7358"]
pieces: [article, invitation, live, letter, clip]
subscription: {name: The monthly box, price: 29.00}
calls:
  join: {address: "https://crumb.example/join", text: Join for the next box, places: ${NUMBERS.places}}
  spare: {address: "https://crumb.example/spare", text: See what is left}
call: join
formerly: {boxes/2026-01-crust.html: boxes/zqxaddress.html#zqxslug}
---

Crumb & Co sends one good tool a month. The next is [a secret](cycles/2026-04/items/01-zqxslug.md "zqxlinktitle").
`;

const openCycle = (month: string, theme: string, last: boolean): string => `---
theme: ${theme}
summary: A round cane proving basket for one loaf of bread, told from the willow bed to the first crust.
shipped: ${month}-03
reveal: ${month}-19T19:00
photo: {file: box.jpg, alt: The whole box on a table}
${last ? `peek: {text: ${PEEK}., picture: {file: strap.jpg, alt: A strap over a chair}}\n` : ''}---

We looked for a basket for a year.${last ? ' Then came [the next box](../2026-04/cycle.md "zqxcycletitle").\n\n![zqxbodyalt](../2026-04/photos/zqxphoto.jpg "zqxbodytitle")' : ''}
`;

const openItem = (name: string): string => `---
name: ${name}
kind: proving basket
lead: true
brand: Fenn Weavers
description: A round basket of cane that shapes one loaf while it rises.
material: [cane]
price: 18.50
category: none
image:
  - {file: basket.jpg, alt: A round cane basket with dough in it}
---

Dust it with rice flour.
`;

/** Every field of a cycle's schema. */
const SEALED_CYCLE = `---
theme: Zqxtheme
title: Zqxtitle and what came with it
summary: Zqxsummary, a thing of a length that the lists of a search engine show as a whole and do not cut.
address: zqxaddress
formerly: [zqxformeraddress]
shipped: 2026-04-03
reveal: 2026-04-19T19:00
moved: [2026-04-16T19:00]
updated: 2026-04-21
author: Zqxauthor
palette: ["#0f1e2d"]
photo: {file: zqxwhole.jpg, alt: Zqxwholealt, caption: Zqxwholecaption}
hero: {file: zqxhero.jpg, alt: Zqxheroalt, caption: Zqxherocaption}
replay: {address: "https://zqxreplay.example/", recorded: 2026-04-19, minutes: 24, beats: {hook: "0:00"}}
live:
  address: https://zqxlive.example/
  minutes: 20
  layOut: [Zqxlayout]
  wear: Zqxwear
  hook: Zqxhook
  greet: [Zqxgreet]
  about: Zqxabout
  chosen: Zqxchosen
  mishap: Zqxmishap
  items: {zqxslug: Zqxsaid}
  questions: [Zqxquestion]
  whole: Zqxwholewords
  peek: Zqxpeekwords
  call: Zqxcallwords
clip: 15
takes: {hook: zqxhands.mov, whole: zqxopen.mov}
cards: {layout: broadside}
invitation: {hook: Zqxinvitationhook}
made: {live: 2026-04-19}
peek: {text: Zqxpeek, picture: {file: zqxpeekpicture.jpg, alt: Zqxpeekalt}}
voices: [{text: Zqxvoice, name: Zqxvoicename, consent: 2026-04-20}]
call: spare
value: {amount: 731.09, on: 2026-04-01}
letter: {subject: Zqxsubject, preheader: Zqxpreheader}
---

Zqxbody of the opening.

![Zqxinbodyalt](photos/zqxinbody.jpg)
`;

/** Every field of an item's schema. */
const SEALED_ITEM = `---
name: Zqxname
slug: zqxslug
formerly: [zqxformerslug]
kind: proving basket
also: [zqxalso]
lead: true
brand: Zqxbrand
description: Zqxdescription of it.
material: [zqxmaterial]
color: zqxcolour
size: zqxsize
weight: 3.1415 kg
care: Zqxcare
countryOfOrigin: TV
price: ${NUMBERS.price}
priceCurrency: GBP
sku: zqxsku
gtin: "${NUMBERS.gtin}"
image: [{file: zqxphoto.jpg, alt: Zqxphotoalt, caption: Zqxphotocaption}]
take: zqxfilmed.mov 0:04
goesWith: Zqxgoes with it
spare: {count: ${NUMBERS.spare}, price: ${NUMBERS.sparePrice}, address: "https://zqxspare.example/", until: 2026-04-30}
category: [food, plant, children]
allergens: [milk]
mayContain: [zqxtraces]
ingredients: zqxingredients
toxicTo: [zqxanimals]
minAge: 3
hazards: [zqxhazard]
cautions: [Zqxcaution]
---

Zqxstory, with [a link](https://zqxlink.example/).
`;

/** Pure green, which no other photo has, with marks where cameras and programs write words. */
const markedPhoto = (): Promise<Buffer> =>
  sharp({ create: { width: 700, height: 500, channels: 3, background: '#00ff00' } })
    .withExif({ IFD0: { ImageDescription: 'zqxexif', Artist: 'zqxartist', Make: 'zqxmake' } })
    .withXmp(
      '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:dc="http://purl.org/dc/elements/1.1/" rdf:about="" dc:source="zqxxmp"/></rdf:RDF></x:xmpmeta>',
    )
    .jpeg()
    .toBuffer();

/** Three cycles: revealed on 19 February and 19 March 2026, and the marked one on 19 April; a kind that all share. */
export const markedBox = async (): Promise<Record<string, string | Uint8Array>> => {
  const sealed = 'content/cycles/2026-04';
  const files: Record<string, string | Uint8Array> = {
    'content/box.md': BOX,
    'content/searches.csv': 'phrase,count\nzqxsearch,12\n',
    [`${sealed}/cycle.md`]: SEALED_CYCLE,
    [`${sealed}/items/01-zqxfile.md`]: SEALED_ITEM,
    [`${sealed}/items/02-zqxsecond.md`]: SEALED_ITEM.replace('name: Zqxname', 'name: Zqxother')
      .replace('slug: zqxslug\nformerly: [zqxformerslug]', 'slug: zqxotherslug')
      .replace('lead: true', 'lead: false')
      .replace(/^price: .*\n/m, 'price: 0\n'),
    [`${sealed}/parcels.csv`]:
      'shipped,delivered,carrier,region\n2026-04-03,2026-04-07,zqxcarrier,zqxregion\n',
  };
  files['content/box.md'] = BOX.replace('01-zqxslug', '01-zqxfile');
  for (const name of ['zqxwhole', 'zqxhero', 'zqxpeekpicture', 'zqxphoto', 'zqxinbody'])
    files[`${sealed}/photos/${name}.jpg`] = await markedPhoto();
  for (const [month, theme] of [
    ['2026-02', 'Proving'],
    ['2026-03', 'Rising'],
  ] as const) {
    const folder = `content/cycles/${month}`;
    files[`${folder}/cycle.md`] = openCycle(month, theme, month === '2026-03');
    files[`${folder}/items/01-basket.md`] = openItem(`Cane proving basket of ${theme}`);
    for (const name of ['box', 'basket', 'strap'])
      files[`${folder}/photos/${name}.jpg`] = await photo(700, 500);
  }
  return files;
};
