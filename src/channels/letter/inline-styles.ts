/**
 * Puts a style sheet's rules on the elements they are for, because many mail programs drop a sheet. It knows what the
 * letter's own sheet needs: elements, classes, and one of either inside another.
 */

/** `p`, or `.name`. */
type Simple = string;

interface Rule {
  readonly within?: Simple;
  readonly of: Simple;
  /** Specificity (W3C Selectors 3, §9): a class counts more than any number of elements here. */
  readonly weight: number;
  readonly declarations: readonly (readonly [property: string, value: string])[];
}

interface Element {
  readonly tag: string;
  readonly classes: ReadonlySet<string>;
}

const SIMPLE = /^\.?[a-z][\w-]*$/;
const CLASS_WEIGHT = 10;

const weightOf = (simple: Simple): number => (simple.startsWith('.') ? CLASS_WEIGHT : 1);

/** Splits at the first colon: a value may hold others. */
const declarationOf = (text: string): readonly [string, string] => {
  const at = text.indexOf(':');
  return [text.slice(0, at).trim(), text.slice(at + 1).trim()];
};

const ruleOf = (selector: string, declarations: Rule['declarations']): Rule => {
  const parts = selector.trim().split(/\s+/);
  const [of = '', within] = parts.reverse();
  if (parts.length > 2 || !parts.every((part) => SIMPLE.test(part)))
    throw new Error(`Expected a selector like \`p\`, \`.name\` or \`.name a\`, found ${selector}`);
  return {
    of,
    ...(within === undefined ? {} : { within }),
    weight: weightOf(of) + (within === undefined ? 0 : weightOf(within)),
    declarations,
  };
};

/** The sheet's rules, the weakest first and of equal ones the earlier first. */
const rulesOf = (sheet: string): readonly Rule[] =>
  [...sheet.matchAll(/([^{}]+)\{([^}]*)\}/g)]
    .flatMap(([, selectors = '', body = '']) => {
      const declarations = body.split(';').filter((text) => text.trim() !== '');
      return selectors.split(',').map((selector) => ruleOf(selector, declarations.map(declarationOf)));
    })
    .sort((a, b) => a.weight - b.weight);

const fits = (simple: Simple, { tag, classes }: Element): boolean =>
  simple.startsWith('.') ? classes.has(simple.slice(1)) : simple === tag;

/** The winning declarations in the order in which they won; empty for an element that no rule is for. */
const styleOf = (rules: readonly Rule[], element: Element, around: readonly Element[]): string => {
  const won = new Map<string, string>();
  for (const { of, within, declarations } of rules) {
    if (!fits(of, element)) continue;
    if (within !== undefined && !around.some((other) => fits(within, other))) continue;
    for (const [property, value] of declarations) {
      won.delete(property);
      won.set(property, value);
    }
  }
  return [...won].map(([property, value]) => `${property}: ${value};`).join(' ');
};

/** A comment, an element whose text is no markup, an end tag, or a start tag with its attributes in double quotes. */
const TAGS =
  /<!--[\s\S]*?-->|<(style|title)\b[\s\S]*?<\/\1>|<\/([a-z]\w*)>|<([a-z]\w*)((?:\s+[\w-]+(?:="[^"]*")?)*)>/g;

/** Elements without an end tag (HTML Living Standard, 13.1.2), those of them that a letter has. */
const VOID = new Set(['br', 'hr', 'img', 'meta']);

/**
 * The page with a `style` attribute on every element that a rule of the sheet is for. The page is our own markup:
 * lower case, attributes in double quotes, end tags written. Throws for a selector that it does not know.
 */
export const withInlineStyles = (page: string, sheet: string): string => {
  const rules = rulesOf(sheet);
  const open: Element[] = [];
  return page.replace(TAGS, (whole, _style, ended, tag, attributes) => {
    if (ended !== undefined) {
      open.length = Math.max(
        0,
        open.findLastIndex((element) => element.tag === ended),
      );
      return whole;
    }
    if (tag === undefined) return whole;
    const classes = /\sclass="([^"]*)"/.exec(attributes)?.[1]?.split(' ') ?? [];
    const element = { tag, classes: new Set(classes) };
    const style = styleOf(rules, element, open);
    if (!VOID.has(tag)) open.push(element);
    return style === '' ? whole : `<${tag}${attributes} style="${style}">`;
  });
};
