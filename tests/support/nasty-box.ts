/** A box whose words are as long as words get: compounds, addresses, scripts without spaces. */

const COMPOUND = 'Donaudampfschifffahrtsgesellschaftskapitänsmützenhalterung';
const UNSPACED = 'PflanzenschildersetAusKupferUndMessingMitGravurUndSchmuckkassette'.repeat(2);
const ADDRESS = `https://shop.example/${'eine-sehr-lange-adresse/'.repeat(6)}ende?with=${'x'.repeat(60)}`;
const CHINESE = '手工铜制植物标签与黄铜喷雾器以及松木育苗盘组合套装礼盒限量版春季特别纪念款'.repeat(2);

const BOX = `---
name: ${COMPOUND}
url: https://lange-woerter.example/
lang: de
timeZone: Europe/Berlin
currency: EUR
description: "${COMPOUND}, ${COMPOUND} monatlich."
author: ${COMPOUND}
every: P1M
palette: ["#5a3d2b", "#5f7358", "#b5714a"]
email: ${'postfach'.repeat(7)}@lange-woerter.example
calls:
  join: {address: "${ADDRESS}", text: ${COMPOUND}}
call: join
---

${COMPOUND}. Siehe ${ADDRESS} und \`${UNSPACED}\`.
`;

const cycle = (month: string): string => `---
theme: ${COMPOUND}
title: "${COMPOUND}: ${UNSPACED}"
summary: "${COMPOUND} ${CHINESE}"
shipped: ${month}-03
reveal: ${month}-19T19:00
replay: {address: "${ADDRESS}", beats: {hook: "0:00", thing-1: "1:00"}}
peek: {text: ${COMPOUND}}
voices:
  - {text: ${UNSPACED}, name: ${COMPOUND}, consent: 2026-03-03}
---

${COMPOUND} ${CHINESE} ${ADDRESS}

## ${COMPOUND}

| ${COMPOUND} | ${UNSPACED} |
| --- | --- |
| ${ADDRESS} | ${CHINESE} |

- ${UNSPACED}

> ${COMPOUND}

    ${UNSPACED}${UNSPACED}

${UNSPACED}[^1]

[^1]: ${ADDRESS}
`;

const item = (number: number): string => `---
name: ${number === 3 ? CHINESE : number === 2 ? UNSPACED : COMPOUND}
kind: ${number === 1 ? COMPOUND : 'gerät'}
category: none
${number === 1 ? 'lead: true' : `goesWith: ${UNSPACED}`}
brand: ${UNSPACED}
description: "${COMPOUND}, ${UNSPACED}"
material: [${COMPOUND}]
color: ${COMPOUND}
size: ${UNSPACED}
price: 18.50
care: ${COMPOUND}
spare: {count: 3, price: 18.50, address: "${ADDRESS}", until: 2026-12-31}
---

### ${COMPOUND}

${UNSPACED} ${ADDRESS}
`;

/** Its content, by path: three months, each with three things, of which two kinds have pages of their own. */
export const nastyBox = (): Readonly<Record<string, string>> =>
  Object.fromEntries([
    ['box.md', BOX],
    ...['2026-01', '2026-02', '2026-03'].flatMap((month) => [
      [`cycles/${month}/cycle.md`, cycle(month)],
      ...[1, 2, 3].map((number) => [`cycles/${month}/items/0${number}-thing-${number}.md`, item(number)]),
    ]),
  ]);
