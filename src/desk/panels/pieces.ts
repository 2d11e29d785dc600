/** Pieces: every paper of the cycle as it is read, on a phone and on a desk, each with what copies and saves it. */
import { makesPiece, papersInOrder } from '../../model/pieces.ts';
import { articlePath } from '../../render/addresses.ts';
import {
  addressOf,
  type Context,
  momentToSee,
  type Outcome,
  openedOf,
  type Panel,
  shownAddress,
} from '../context.ts';

interface FileView {
  readonly name: string;
  readonly file: string;
  readonly src: string;
  /** Whether it is a page to look at; else it is a text to copy or a file to save. */
  readonly isPage: boolean;
  readonly canCopy: boolean;
}

interface PieceView {
  readonly id: string;
  readonly name: string;
  readonly pages: readonly FileView[];
  readonly files: readonly FileView[];
}

interface PiecesView {
  readonly words: Context['words'];
  readonly at: string;
  readonly isOlder: boolean;
  readonly pieces: readonly PieceView[];
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    'desk/pieces': PiecesView;
  }
}

/** Papers that have a part of the desk of their own. */
const ELSEWHERE = new Set(['parcels', 'proof']);
const TEXTS = /\.(txt|html|vtt|srt|ics)$/;

const show = async (context: Context): Promise<Outcome> => {
  const { table, words, wording, settings, cycle, id } = context;
  const asOf = momentToSee(context);
  const opened = openedOf(context);
  const shown = await table.shown(asOf, opened);
  const folder = `backroom/${id}/`;
  const view = (file: string, name: string): FileView => ({
    name,
    file,
    src: shownAddress(asOf, folder + file, opened),
    isPage: file.endsWith('.html'),
    canCopy: TEXTS.test(file),
  });
  const named = new Set<string>();
  const known = papersInOrder.flatMap(({ name, file, more = [] }): readonly PieceView[] => {
    if (ELSEWHERE.has(name)) return [];
    if (name === 'article') {
      const place = cycle && `site/${articlePath(cycle)}`;
      if (!place || !shown.files.has(place)) return [];
      const src = shownAddress(asOf, place, opened);
      return [
        {
          id: 'article',
          name: wording.pieces.papers.article,
          pages: [
            {
              name: wording.pieces.papers.article,
              file: place.slice(place.lastIndexOf('/') + 1),
              src,
              isPage: true,
              canCopy: true,
            },
          ],
          files: [],
        },
      ];
    }
    const files = [...(file === undefined ? [] : [{ name, file }]), ...more].filter((one) =>
      shown.files.has(folder + one.file),
    );
    for (const one of files) named.add(one.file);
    const views = files.map((one) => view(one.file, wording.pieces.papers[one.name]));
    return views.length === 0
      ? []
      : [
          {
            id: name.replaceAll(' ', '-'),
            name: wording.pieces.papers[name],
            pages: views.filter(({ isPage }) => isPage),
            files: views,
          },
        ];
  });
  // A paper that is new has its own place here before anybody has written it into a list.
  const others = [...shown.files.keys(), ...shown.pictures.keys()]
    .filter((path) => path.startsWith(folder))
    .map((path) => path.slice(folder.length))
    .filter((file) => !named.has(file) && !ELSEWHERE.has(file.replace(/\.html$/, '')))
    .sort()
    .map((file) => view(file, file));
  const isMade = (piece: Parameters<typeof makesPiece>[1]): boolean =>
    settings !== undefined && makesPiece(settings, piece);
  const pieces = known.filter(({ id: name }) => name !== 'clip-sheet' || isMade('clip'));
  const body = table.templates().render('desk/pieces', {
    words,
    at: addressOf('pieces', id),
    isOlder: shown.isOlder,
    pieces:
      others.length === 0
        ? pieces
        : [
            ...pieces,
            { id: 'others', name: id, pages: others.filter(({ isPage }) => isPage), files: others },
          ],
  });
  return { kind: 'page', heading: words.panels.pieces, body };
};

/** Pieces. */
export const piecesPanel: Panel = { show };
