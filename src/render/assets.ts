/** The style sheet and the fonts: files of templates/ that are published under a name that bears their hash. */
import { shortHash } from '../text/hash.ts';
import { remembered } from '../text/remembered.ts';
import { utf8Text } from '../text/utf8.ts';
import type { Asset, Templates } from './templates.ts';

/** Site path of a file that may be kept for ever: its name changes with its content. */
export const hashedPath = (path: string, content: string | Uint8Array): string => {
  const dot = path.lastIndexOf('.');
  return `assets/${path.slice(0, dot)}.${shortHash(content)}${path.slice(dot)}`;
};

/** Site path of the style sheet that holds a page's colours and nothing else; pages of the same colours share it. */
export const colourSheetPath = (text: string): string => hashedPath('colours.css', text);

const isStyle = (asset: Asset): boolean => asset.path.endsWith('.css');

const STRING = /"(?:[^"\\]|\\[\s\S])*"|'(?:[^'\\]|\\[\s\S])*'/.source;
const COMMENT_OR_SPACE = new RegExp(`(${STRING})|(?:/\\*[\\s\\S]*?\\*/|\\s)+`, 'g');
const MARK_IN_SPACE = new RegExp(`(${STRING})|[ ;]*(}) ?| ?([{;,]) ?|(:) `, 'g');

/** A style sheet without its comments and the spaces that mean nothing (CSS Syntax 3, 4.3.2): a visitor waits for it. */
export const squeezed = (css: string): string =>
  css.replace(COMMENT_OR_SPACE, (_, text?: string) => text ?? ' ').replace(MARK_IN_SPACE, '$1$2$3$4');

const styleText = (asset: Asset, assets: readonly Asset[]): string =>
  squeezed(asset.text ?? utf8Text(asset.bytes)).replace(
    /url\(["']?([^"')]+)["']?\)/g,
    (whole, path: string) => {
      const target = assets.find((other) => other.path === path);
      return target ? `url(${hashedPath(path, target.bytes).slice('assets/'.length)})` : whole;
    },
  );

interface PublishedAssets {
  /** Site path by the file's path in templates/. */
  readonly paths: ReadonlyMap<string, string>;
  /** By site path. */
  readonly contents: ReadonlyMap<string, string | Uint8Array>;
}

/** Every page asks for some of them, and the hashes of fonts take time. */
const publishedOf = remembered((assets: readonly Asset[]): PublishedAssets => {
  const files = assets.map((asset) => {
    const content = isStyle(asset) ? styleText(asset, assets) : asset.bytes;
    return { asset, content, path: hashedPath(asset.path, content) };
  });
  return {
    paths: new Map(files.map(({ asset, path }) => [asset.path, path])),
    contents: new Map(files.map(({ path, content }) => [path, content])),
  };
});

/** Site path of a file of templates/, or undefined where there is no such file. */
export const assetPath = ({ assets }: Pick<Templates, 'assets'>, path: string): string | undefined =>
  publishedOf(assets).paths.get(path);

/** Every file of templates/ that is not a template, by its site path, style sheets with their font addresses put right. */
export const publishedAssets = ({
  assets,
}: Pick<Templates, 'assets'>): ReadonlyMap<string, string | Uint8Array> => publishedOf(assets).contents;
