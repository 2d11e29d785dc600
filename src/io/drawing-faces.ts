/** The faces of drawings for those who only ask about them: nothing is opened until a letter is asked for. */
import type { DrawingFaces } from '../render/drawing.ts';
import type { Asset } from '../render/templates.ts';
import { digestOf } from '../text/digest.ts';
import { lazily } from '../text/lazy.ts';
import { facePackages, readFaces } from './read-faces.ts';

/**
 * Letters that the faces behind the templates' own have for sure (a test sets each): most texts are made of them, and then
 * no face has to be opened to know that nothing is lacking.
 */
export const COMMON_LETTERS = /[ -~\u00a0-\u00ff\u2013\u2014\u2018\u2019\u201c\u201d\u2026]/g;

const isFont = ({ path }: Asset): boolean => /^fonts\/.*\.(?:woff2|ttf|otf)$/.test(path);

/** The templates' faces with those that stand behind them. */
export const drawingFaces = (assets: readonly Asset[]): DrawingFaces => {
  const digest = lazily(() =>
    digestOf(
      assets.filter(isFont).map(({ path, bytes }) => [path, bytes]),
      facePackages(),
    ),
  );
  const opened = lazily(async () => {
    const { openFaces } = await import('../drawing/type/faces.ts');
    return openFaces(assets, readFaces());
  });
  return {
    get digest() {
      return digest();
    },
    lacking: async (text, lang) => {
      if (text.replace(COMMON_LETTERS, '') === '') return [];
      const { setText } = await import('../drawing/type/set-type.ts');
      const spec = { hand: 'text', size: 10, least: 10, width: 1e6, lines: 1, leading: 1, lang } as const;
      return setText(text, spec, await opened()).lacking;
    },
  };
};
