/** The style sheet and the fonts: files of templates/ that are published under a name that bears their hash. */
import { shortHash } from '../text/hash.ts';
import type { BytesOutput, TextOutput } from './output.ts';
import type { Asset, Templates } from './templates.ts';

/** Site path of a file that may be kept for ever: its name changes with its content. */
export const hashedPath = (path: string, content: string | Uint8Array): string => {
  const dot = path.lastIndexOf('.');
  return `assets/${path.slice(0, dot)}.${shortHash(content)}${path.slice(dot)}`;
};

const isStyle = (asset: Asset): boolean => asset.path.endsWith('.css');

const styleText = (asset: Asset, assets: readonly Asset[]): string =>
  (asset.text ?? new TextDecoder().decode(asset.bytes)).replace(
    /url\(["']?([^"')]+)["']?\)/g,
    (whole, path: string) => {
      const target = assets.find((other) => other.path === path);
      return target ? `url(${hashedPath(path, target.bytes).slice('assets/'.length)})` : whole;
    },
  );

/** Site path of a file of templates/, or undefined where there is no such file. */
export const assetPath = (templates: Templates, path: string): string | undefined => {
  const asset = templates.assets.find((other) => other.path === path);
  if (!asset) return undefined;
  return hashedPath(path, isStyle(asset) ? styleText(asset, templates.assets) : asset.bytes);
};

/** Every file of templates/ that is not a template, style sheets with their font addresses put right. */
export const assetOutputs = (templates: Templates): readonly (TextOutput | BytesOutput)[] =>
  templates.assets.map((asset) =>
    isStyle(asset)
      ? {
          where: 'site',
          path: assetPath(templates, asset.path) as string,
          text: styleText(asset, templates.assets),
        }
      : { where: 'site', path: hashedPath(asset.path, asset.bytes), bytes: asset.bytes },
  );
