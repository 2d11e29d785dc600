/** What a letter's HTML and CSS ask of a mail program, and which programs drop it: the data of caniemail.com (MIT). */
import { rawData } from 'caniemail';

/** The programs that most letters are read in. */
const MAJOR = ['apple-mail', 'gmail', 'outlook', 'yahoo', 'aol', 'samsung-email', 'thunderbird'];

/** Properties that belong to another in the data, or that it has no table for. */
const asTold = (property: string): string =>
  property
    .replace(/^(border|padding|margin)-(?:top|right|bottom|left)(?:-.*)?$/, '$1')
    .replace(/^border-color$/, 'border');

export interface Features {
  /** Of the data, as `css-padding`, `html-role`. */
  readonly known: ReadonlySet<string>;
  /** Properties that the data has no table for. */
  readonly unknown: ReadonlySet<string>;
}

interface Table {
  readonly slug: string;
  readonly stats: Readonly<Record<string, Readonly<Record<string, Readonly<Record<string, string>>>>>>;
}

const tables = new Map((rawData.data as unknown as readonly Table[]).map((table) => [table.slug, table]));

/** Elements, attributes, properties, units, at-rules and selectors that a letter uses. */
export const featuresIn = (html: string): Features => {
  const names: string[] = ['html-doctype', 'image-jpg'];
  const sheets = [...html.matchAll(/<style>([\s\S]*?)<\/style>/g)].map(([, css = '']) => css);
  const inline = [...html.matchAll(/ style="([^"]*)"/g)].map(([, css = '']) => css);
  const body = html.replace(/<style>[\s\S]*?<\/style>/g, '');
  if (sheets.length > 0) names.push('html-style', 'css-selector-class');
  if (body.includes('<!--')) names.push('html-comments');
  for (const [, tag = '', attributes = ''] of body.matchAll(/<([a-z][a-z0-9]*)((?:\s[^<>]*)?)>/g)) {
    names.push(/^h[1-6]$/.test(tag) ? 'html-h1-h6' : `html-${tag}`);
    for (const [, name = ''] of attributes.matchAll(/\s([a-z-]+)="/g)) names.push(`html-${name}`);
    if (attributes.includes('href="mailto:')) names.push('html-mailto-links');
    if (attributes.includes('name="color-scheme"')) names.push('html-meta-color-scheme');
    if (/src="[^"]*\.(?:avif|webp)"/.test(attributes)) names.push('image-avif', 'image-webp');
  }
  const unknown: string[] = [];
  const css = [...sheets, ...inline].join(';');
  for (const sheet of sheets) {
    if (sheet.includes('@media')) names.push('css-at-media');
    if (sheet.includes('prefers-color-scheme')) names.push('css-at-media-prefers-color-scheme');
    if (/\.[\w-]+,/.test(sheet)) names.push('css-selector-grouping');
  }
  if (css.includes('!important')) names.push('css-important');
  if (/display:\s*none/.test(css)) names.push('css-display-none');
  for (const [, unit] of css.matchAll(/[\d.](px|em|rem|%|vw|vh|ch|pt)(?![a-z])/g))
    names.push(unit === '%' ? 'css-unit-percent' : `css-unit-${unit}`);
  for (const [, property = ''] of css.matchAll(/(?:^|[;{\s])([a-z-]+):\s*[^;{}]+(?=[;}]|$)/g)) {
    const name = `css-${asTold(property)}`;
    if (tables.has(name)) names.push(name);
    else unknown.push(property);
  }
  return { known: new Set(names.filter((name) => tables.has(name))), unknown: new Set(unknown) };
};

/** Major programs that do not do a feature in the newest version that was tried, as `gmail.ios`. */
export const droppedBy = (feature: string): string[] => {
  const { stats } = tables.get(feature) as Table;
  return MAJOR.flatMap((family) =>
    Object.entries(stats[family] ?? {})
      .filter(([, versions]) => Object.values(versions).at(-1)?.startsWith('n'))
      .map(([platform]) => `${family}.${platform}`),
  );
};
