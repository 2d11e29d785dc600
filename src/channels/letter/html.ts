/** The letter's page: its template's markup with every style put on the element it is for, as mail programs need it. */
import { type Scheme, schemesOf } from '../../render/colours.ts';
import { htmlSource } from '../../render/html.ts';
import type { Wording } from '../../wording/wording.ts';
import type { Tools } from '../channel.ts';
import { withInlineStyles } from './inline-styles.ts';
import type { Letter } from './letter.ts';

declare module '../../render/templates.ts' {
  interface TemplateData {
    letter: ReturnType<typeof letterView>;
    'letter-style': object;
  }
}

/** What stands in the head of a letter's page, and its colours. */
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
 * A logo keeps the light ground and ink in the dark too: it was drawn for paper, and its see-through parts would leave
 * dark lines on a dark ground.
 */
const logoRule = ({ paper, ink }: Scheme): string => `.logo{background-color:${paper};color:${ink}}`;

const letterView = (letter: Letter, head: LetterHead, darkRules: string, words: Wording['letter']) => ({
  ...letter,
  ...head,
  words: words.page,
  darkRules,
  label: words.page.label(letter.month, letter.theme),
  postal: letter.postal ?? words.gaps.postalAddress,
  noUnsubscribe: words.gaps.unsubscribe,
  callHeading: letter.call && words.page.calls[letter.call.kind],
});

/**
 * The letter as HTML. Colours are computed from the palette so that text reaches WCAG 2.2 AA in the light and in the
 * dark; the light ones stand on the elements, the dark ones in a style sheet that a program may follow.
 */
export const letterHtml = (letter: Letter, head: LetterHead, { templates, wording }: Tools): string => {
  const { light, dark } = schemesOf(head.palette);
  const page = htmlSource(
    templates.render('letter', letterView(letter, head, rules(dark, '!important'), wording.letter)),
  );
  const style = htmlSource(templates.render('letter-style', {}));
  return `<!doctype html>\n${withInlineStyles(page, `${style}\n${rules(light)}\n${logoRule(light)}`)}`;
};
