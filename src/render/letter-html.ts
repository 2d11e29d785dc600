/** The letter's page: its template's markup with every style put on the element it is for, as mail programs need it. */
import juice from 'juice/client.js';
import { type Scheme, schemesOf } from './colours.ts';
import { htmlSource } from './html.ts';
import type { Letter } from './letter-parts.ts';
import { NO_POSTAL_ADDRESS, NO_UNSUBSCRIBE } from './letter-text.ts';
import type { Templates } from './templates.ts';

/** Longer letters are cut off by some programs. Common practice, no source. */
export const LETTER_BYTES = 102_000;

export interface LetterHead {
  readonly subject: string;
  readonly preheader: string;
  /** The cycle's colours, one to five. */
  readonly palette: readonly string[];
}

/** Colours that a letter changes in the dark, by the class that bears them. */
const themed: readonly { readonly name: string; readonly rule: (colours: Scheme) => string }[] = [
  { name: 'paper', rule: ({ paper }) => `background-color:${paper}` },
  { name: 'wash', rule: ({ wash }) => `background-color:${wash}` },
  { name: 'ink', rule: ({ ink }) => `color:${ink}` },
  { name: 'soft', rule: ({ soft }) => `color:${soft}` },
  { name: 'accent', rule: ({ accent }) => `color:${accent}` },
  { name: 'act', rule: ({ accent }) => `background-color:${accent}` },
  { name: 'on', rule: ({ onAccent }) => `color:${onAccent}` },
  { name: 'rule', rule: ({ edge }) => `border-color:${edge}` },
];

const rules = (colours: Scheme, after = ''): string =>
  themed.map(({ name, rule }) => `.${name}{${rule(colours)}${after}}`).join('\n');

/**
 * The letter as HTML. Colours are computed from the palette so that text reaches WCAG 2.2 AA in the light and in the
 * dark; the light ones stand on the elements, the dark ones in a style sheet that a program may follow.
 */
export const letterHtml = (letter: Letter, head: LetterHead, templates: Templates): string => {
  const { light, dark } = schemesOf(head.palette);
  const page = htmlSource(
    templates.render('letter', {
      ...letter,
      ...head,
      darkRules: rules(dark, '!important'),
      postal: letter.postal ?? NO_POSTAL_ADDRESS,
      noUnsubscribe: NO_UNSUBSCRIBE,
    }),
  );
  const style = htmlSource(templates.render('letter-style', {}));
  return `<!doctype html>\n${juice.inlineContent(page, `${style}\n${rules(light)}`)}`;
};
