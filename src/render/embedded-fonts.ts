/** The text face inside a page, for one that is carried about as a single file. */
import { remembered } from '../text/remembered.ts';
import { type Html, trusted } from './html.ts';
import type { Templates } from './templates.ts';

const FACES = [
  ['fonts/alegreya.woff2', 'normal'],
  ['fonts/alegreya-more.woff2', 'normal'],
  ['fonts/alegreya-italic.woff2', 'italic'],
] as const;

/** Style rules with the site's text face as data (RFC 2397); none for a face that the templates do not bring. */
export const embeddedFonts = remembered(({ assets }: Templates): Html => {
  const rules = FACES.flatMap(([path, style]) => {
    const face = assets.find((asset) => asset.path === path);
    if (!face) return [];
    const data = Buffer.from(face.bytes).toString('base64');
    return [
      `@font-face{font-family:"Alegreya";font-style:${style};src:url(data:font/woff2;base64,${data}) format("woff2")}`,
    ];
  });
  return trusted(`<style>${rules.join('')}</style>`);
});
