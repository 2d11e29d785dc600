/** Files that the desk's pages load: its own style, script and type, photos, and pages of the site and the back room. */
import type { Answer } from '../io/serve.ts';
import { articlePath } from '../render/addresses.ts';
import { schemeStyle, schemesOf } from '../render/colours.ts';
import { htmlSource } from '../render/html.ts';
import type { PictureOutput } from '../render/output.ts';
import { sha256Base64 } from '../text/hash.ts';
import { utf8Text } from '../text/utf8.ts';
import { type Context, SCHEMES, type SchemeName } from './context.ts';
import { filmAt } from './films.ts';
import { cycleOf, type Table } from './table.ts';

declare module '../render/templates.ts' {
  interface TemplateData {
    'desk/style': object;
  }
}

const TYPES: Readonly<Record<string, string>> = {
  avif: 'image/avif',
  css: 'text/css; charset=utf-8',
  eml: 'message/rfc822',
  gif: 'image/gif',
  html: 'text/html; charset=utf-8',
  ico: 'image/x-icon',
  ics: 'text/calendar; charset=utf-8',
  jpg: 'image/jpeg',
  js: 'text/javascript; charset=utf-8',
  json: 'application/json; charset=utf-8',
  mp4: 'video/mp4',
  png: 'image/png',
  srt: 'text/plain; charset=utf-8',
  svg: 'image/svg+xml',
  txt: 'text/plain; charset=utf-8',
  vtt: 'text/vtt; charset=utf-8',
  webm: 'video/webm',
  webp: 'image/webp',
  woff2: 'font/woff2',
  xml: 'application/xml; charset=utf-8',
};

const typeOf = (path: string): string =>
  TYPES[/\.(\w+)$/.exec(path)?.[1]?.toLowerCase() ?? ''] ?? 'application/octet-stream';

/** What holds for every answer: nobody else may show it, guess its type, or learn where it was asked from. */
export const GUARDED: Readonly<Record<string, string>> = {
  'cache-control': 'no-store',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'referrer-policy': 'same-origin',
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'SAMEORIGIN',
};

/** The desk's own pages: everything from here, nothing inline. */
export const DESK_POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; frame-src 'self'; media-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'self'";

/** Pages of the site keep to what they may do where they are published; they send no form here. */
const SITE_POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; media-src 'self'; connect-src 'self'; form-action 'none'; base-uri 'none'; frame-ancestors 'self'";

/** Papers hold their style and script in themselves: the very scripts that stand in them may run, and no other. */
const paperPolicy = (html: string): string => {
  const scripts = [...html.matchAll(/<script>([\s\S]*?)<\/script>/g)].map(
    ([, code = '']) => `'sha256-${sha256Base64(code)}'`,
  );
  return `default-src 'none'; script-src ${scripts.length > 0 ? [...new Set(scripts)].join(' ') : "'none'"}; style-src 'unsafe-inline'; img-src 'self' data:; font-src 'self' data:; media-src 'self'; form-action 'none'; base-uri 'none'; frame-ancestors 'self'`;
};

/** A file as an answer. */
export const fileAnswer = (
  path: string,
  body: string | Uint8Array,
  headers: Readonly<Record<string, string>> = {},
): Answer => ({
  status: 200,
  headers: { ...GUARDED, 'content-type': typeOf(path), ...headers },
  body,
});

/** `bytes=100-`, `bytes=100-199` or `bytes=-100` (RFC 9110, 14.1.2), of so many bytes; undefined for what is none of these. */
const rangeOf = (
  asked: string | undefined,
  size: number,
): readonly [from: number, to: number] | undefined => {
  const [, first = '', last = ''] = /^bytes=(\d*)-(\d*)$/.exec(asked ?? '') ?? [];
  if (first === '' && last === '') return undefined;
  const from = first === '' ? Math.max(0, size - Number(last)) : Number(first);
  const to = first === '' || last === '' ? size - 1 : Math.min(Number(last), size - 1);
  return from <= to ? [from, to] : undefined;
};

/** A film: browsers ask for parts of it, and go to and fro in none that is not given in parts. */
const filmAnswer = (
  path: string,
  bytes: Uint8Array,
  range: string | undefined,
  headers: Readonly<Record<string, string>>,
): Answer => {
  const whole = { 'accept-ranges': 'bytes', ...headers };
  const part = rangeOf(range, bytes.length);
  if (!part) return fileAnswer(path, bytes, whole);
  const [from, to] = part;
  return {
    ...fileAnswer(path, bytes.subarray(from, to + 1), {
      ...whole,
      'content-range': `bytes ${from}-${to}/${bytes.length}`,
    }),
    status: 206,
  };
};

/** Text of a page or a style sheet as it is where the one scheme is preferred, whatever the browser prefers. */
const inScheme = (text: string, scheme: SchemeName): string =>
  text
    .replace(/\(prefers-color-scheme:\s*(light|dark)\)/g, (_, asked: string) =>
      asked === scheme ? '(min-width:0)' : '(max-width:-1px)',
    )
    .replace(/(color-schemes?" content="|color-scheme:\s*)light dark/g, `$1${scheme}`);

const pictureAnswer = async (
  table: Table,
  path: string,
  picture: PictureOutput,
): Promise<Answer | undefined> => {
  const bytes = await table.picture(picture);
  return bytes && fileAnswer(path, bytes, isNamed(path) ? LASTING : {});
};

/** A letter names its pictures where they will be published: to be seen before, they are taken from here. */
const withOwnPictures = (paper: string, table: Table, rest: string): string => {
  const url = table.snapshot().facts.settings?.url;
  if (url === undefined) return paper;
  const here = `/shown/${rest.slice(0, rest.indexOf('/'))}/site/`;
  return paper.replaceAll(`src="${url}`, `src="${here}`);
};

/** Whether a file's name changes with its content. */
const isNamed = (path: string): boolean => /\.[\da-f]{10,}\.\w+$|\/pictures\//.test(path);

const LASTING = { 'cache-control': 'private, max-age=31536000, immutable' };

/** A page or file of the site or the back room as of a moment: `/shown/1774000000000/site/index.html`. */
export const shownFile = async ({ table, asked }: Context, rest: string): Promise<Answer | undefined> => {
  const [, moment = '', opened, wanted, place = ''] =
    /^(\d{1,14})(?:~([\w-]+))?(?:\.(light|dark))?\/((?:site|backroom)\/.*)$/.exec(rest) ?? [];
  if (place === '') return undefined;
  const scheme = SCHEMES.find((one) => one === wanted);
  const inOne = (content: Uint8Array): string | Uint8Array =>
    scheme === undefined ? content : inScheme(utf8Text(content), scheme);
  const path = place.endsWith('/') ? `${place}index.html` : place;
  const cycle = table.snapshot().box?.cycles.find((one) => path === `site/${articlePath(one)}`);
  const article = cycle && (await table.article(cycle.id, Number(moment), opened));
  const saved: Record<string, string> = asked.query.has('save')
    ? { 'content-disposition': 'attachment' }
    : {};
  if (article)
    return fileAnswer(path, inOne(article.content), { ...saved, 'content-security-policy': SITE_POLICY });
  // What has its content in its name is the same in every state, and nobody waits for it.
  const last = isNamed(path) ? table.lastShown(Number(moment), opened) : undefined;
  const isLast = last?.pictures.has(path) || last?.files.has(path);
  const shown = isLast && last ? last : await table.shown(Number(moment), opened);
  const picture = shown.pictures.get(path);
  if (picture) return pictureAnswer(table, path, picture);
  const film = filmAt(table, shown, path);
  if (film) return filmAnswer(path, film, asked.headers.range, saved);
  const file = shown.files.get(path);
  if (!file) return undefined;
  const content = await file.content();
  if (isNamed(path)) return fileAnswer(path, path.endsWith('.css') ? inOne(content) : content, LASTING);
  if (!path.endsWith('.html')) return fileAnswer(path, content, saved);
  if (path.startsWith('site/'))
    return fileAnswer(path, inOne(content), { ...saved, 'content-security-policy': SITE_POLICY });
  const paper = utf8Text(content);
  const policy = { ...saved, 'content-security-policy': paperPolicy(paper) };
  const seen = asked.query.has('seen') ? withOwnPictures(paper, table, rest) : paper;
  return fileAnswer(path, scheme === undefined ? seen : inScheme(seen, scheme), policy);
};

/** Pixels of the longer side: enough to choose a point on a wide screen. */
const PREVIEW = 1200;

const previews = new Map<string, Promise<Uint8Array | undefined>>();
const MOST_PREVIEWS = 60;

const previewOf = async (bytes: Uint8Array | undefined): Promise<Uint8Array | undefined> => {
  if (!bytes) return undefined;
  // A desk without pictures to show is open sooner without their decoders.
  const { previewPhoto } = await import('../io/preview-photo.ts');
  return previewPhoto(bytes, PREVIEW);
};

/** A photo of the content folder as every browser shows it. */
export const photoFile = async ({ table }: Context, path: string): Promise<Answer | undefined> => {
  const known = table.snapshot().files.get(path);
  if (!known?.photo) return undefined;
  const made = previews.get(known.hash) ?? previewOf(table.read(path)?.bytes);
  previews.set(known.hash, made);
  for (const old of [...previews.keys()].slice(0, -MOST_PREVIEWS)) previews.delete(old);
  const preview = await made;
  return preview && fileAnswer('preview.jpg', preview);
};

/** The faces are declared in the site's own style sheet, before what they are used for. */
const facesIn = (css: string): string =>
  css.slice(0, Math.max(0, css.indexOf('/* End of the fitted faces. */')));

/** Where a box has no colours yet. */
const PLAIN_PALETTE = ['#5f7358'];

const paletteOf = (table: Table, cycle: string): readonly string[] => {
  const palette = cycleOf(table.snapshot(), cycle)?.palette ?? table.snapshot().box?.settings.palette ?? [];
  return palette.length > 0 ? palette : PLAIN_PALETTE;
};

/** The desk's style, script, colours and type. */
export const ownFile = ({ table }: Context, name: string): Answer | undefined => {
  const templates = table.templates();
  if (name === 'style.css') {
    const site = templates.assets.find(({ path }) => path === 'site.css');
    return fileAnswer(name, facesIn(site?.text ?? '') + htmlSource(templates.render('desk/style', {})));
  }
  if (name === 'desk.js') {
    const script = templates.scripts.find(({ path }) => path === 'desk.js');
    return script && fileAnswer(name, script.bytes);
  }
  const cycle = /^colours-([\w-]*)\.css$/.exec(name)?.[1];
  if (cycle !== undefined) {
    return fileAnswer(name, schemeStyle(paletteOf(table, cycle)));
  }
  const ofCycle = /^icon-([\w-]*)\.svg$/.exec(name)?.[1];
  if (ofCycle !== undefined) {
    const { accent, onAccent } = schemesOf(paletteOf(table, ofCycle)).light;
    // A sheet with a line begun on it.
    return fileAnswer(
      name,
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64"><path fill="${accent}" d="M8 6h48v52H8z"/><path fill="none" stroke="${onAccent}" stroke-width="5" d="M18 22h28M18 34h17"/></svg>`,
    );
  }
  const font = templates.assets.find(
    ({ path }) => path === name && path.startsWith('fonts/') && path.endsWith('.woff2'),
  );
  return font && fileAnswer(name, font.bytes, { 'cache-control': 'private, max-age=86400' });
};
