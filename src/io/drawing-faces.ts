/** The faces of drawings for those who only ask about them: nothing is opened until a letter is asked for. */
import { openFaces } from '../drawing/type/faces.ts';
import { setText } from '../drawing/type/set-type.ts';
import type { DrawingFaces } from '../render/drawing.ts';
import type { Asset } from '../render/templates.ts';
import { digestOf } from '../text/digest.ts';
import { lazily } from '../text/lazy.ts';
import { readFaces } from './read-faces.ts';

const isFont = ({ path }: Asset): boolean => /^fonts\/.*\.(?:woff2|ttf|otf)$/.test(path);

/** The templates' faces with those that stand behind them. */
export const drawingFaces = (assets: readonly Asset[]): DrawingFaces => {
  const digest = lazily(() =>
    digestOf(
      assets.filter(isFont).map(({ path, bytes }) => [path, bytes]),
      readFaces().map((file) => [file.name, file.digest]),
    ),
  );
  const opened = lazily(() => openFaces(assets, readFaces()));
  return {
    get digest() {
      return digest();
    },
    lacking: async (text, lang) => {
      const spec = { hand: 'text', size: 10, least: 10, width: 1e6, lines: 1, leading: 1, lang } as const;
      return setText(text, spec, await opened()).lacking;
    },
  };
};
