/**
 * Faces for what the templates' own do not have: other scripts, and rare letters of Latin. Each is cut into files of
 * some letters, of which only those are read that a text asks for. All are under the SIL Open Font License 1.1.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { FaceFile } from '../drawing/type/faces.ts';
import { rangesOf } from '../drawing/type/unicode-range.ts';
import { digestOf } from '../text/digest.ts';
import { lazily } from '../text/lazy.ts';

interface Package {
  readonly manifest: string;
  readonly style?: 'normal' | 'italic';
  readonly hand?: FaceFile['hand'];
  readonly lang?: string;
  /** Whether letters that the text face draws as well are taken from here. */
  readonly isLatin?: boolean;
}

/** In the order in which they are asked. Han letters that differ by language are drawn as in Chinese unless it is Japanese. */
const packages = (): readonly Package[] => {
  const require = createRequire(import.meta.url);
  const alegreya = require.resolve('@fontsource-variable/alegreya/package.json');
  return [
    { manifest: alegreya, hand: 'text', isLatin: true },
    { manifest: alegreya, hand: 'italic', style: 'italic', isLatin: true },
    { manifest: require.resolve('@fontsource-variable/noto-serif-hebrew/package.json') },
    { manifest: require.resolve('@fontsource-variable/noto-naskh-arabic/package.json') },
    { manifest: require.resolve('@fontsource-variable/noto-serif-devanagari/package.json') },
    { manifest: require.resolve('@fontsource-variable/noto-serif-thai/package.json') },
    { manifest: require.resolve('@fontsource-variable/noto-serif-sc/package.json'), lang: 'zh' },
    { manifest: require.resolve('@fontsource-variable/noto-serif-jp/package.json'), lang: 'ja' },
  ];
};

/** Cuts that the text face covers. */
const LATIN = /^(?:latin|latin-ext|vietnamese|cyrillic|cyrillic-ext|greek|greek-ext|math|symbols)$/;

const filesOf = ({
  manifest,
  style = 'normal',
  hand,
  lang,
  isLatin = false,
}: Package): readonly FaceFile[] => {
  const folder = dirname(manifest);
  const { name, version }: { name: string; version: string } = JSON.parse(readFileSync(manifest, 'utf8'));
  const cuts: Readonly<Record<string, string>> = JSON.parse(
    readFileSync(join(folder, 'unicode.json'), 'utf8'),
  );
  const face = name.slice(name.indexOf('/') + 1);
  return Object.entries(cuts)
    .filter(([cut]) => isLatin || !LATIN.test(cut))
    .map(([cut, written]) => {
      const file = `${face}-${cut.replace(/^\[|\]$/g, '')}-wght-${style}.woff2`;
      return {
        name: file,
        // A version of a package has the same bytes for ever.
        digest: digestOf(name, version, file),
        ranges: rangesOf(written),
        ...(hand && { hand }),
        ...(lang && { lang }),
        bytes: () => readFileSync(join(folder, 'files', file)),
      };
    });
};

/** Which packages they are, each with its version: other ones give other drawings. */
export const facePackages = lazily((): readonly string[] =>
  packages().map(({ manifest }) => {
    const { name, version }: { name: string; version: string } = JSON.parse(readFileSync(manifest, 'utf8'));
    return `${name} ${version}`;
  }),
);

/** Every file of them, none of which is read yet. */
export const readFaces = lazily((): readonly FaceFile[] => packages().flatMap(filesOf));
