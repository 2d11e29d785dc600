/** Pieces: every form of the reveal as it is read, on a phone and on a desk, in the light and in the dark, to copy and to save. */
import type { SentForm } from '../../io/serve.ts';
import { makesPiece, type PaperName, papersInOrder } from '../../model/pieces.ts';
import { articlePath } from '../../render/addresses.ts';
import type { Html } from '../../render/html.ts';
import {
  addressOf,
  type Context,
  momentToSee,
  type Outcome,
  openedOf,
  type Panel,
  SCHEMES,
  type SchemeName,
  sent,
  shownAddress,
} from '../context.ts';
import type { Shown } from '../table.ts';
import { actOnCards, cardsPart } from './cards.ts';
import { actOnFilm, filmPart } from './film.ts';

interface FileView {
  readonly name: string;
  readonly file: string;
  readonly src: string;
  /** Where it is looked at; empty for what is no page. */
  readonly look: string;
  readonly canCopy: boolean;
}

interface WayView {
  readonly label: string;
  readonly href: string;
  readonly isHere: boolean;
}

interface FrameView {
  readonly src: string;
  readonly title: string;
  readonly isPhone: boolean;
  /** Whether its width was asked for; else it is no wider than the window. */
  readonly isChosen: boolean;
  readonly widths: readonly WayView[];
  readonly schemes: readonly WayView[];
}

interface PiecesView {
  readonly words: Context['words'];
  readonly isOlder: boolean;
  readonly pieces: readonly WayView[];
  readonly name: string;
  readonly files: readonly FileView[];
  readonly frame: FrameView | undefined;
  /** What a piece shows that is no page. */
  readonly inside: Html | undefined;
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    'desk/pieces': PiecesView;
  }
}

/** A piece as it can be shown. */
interface Piece {
  readonly id: string;
  readonly name: string;
  /** Places of its files, with what each is called; the first page is the one that is looked at. */
  readonly files: readonly { readonly name: string; readonly place: string }[];
}

/** Papers that have a part of the desk of their own, and the letter's preview: here the letter itself has its pictures. */
const ELSEWHERE: ReadonlySet<PaperName> = new Set(['parcels', 'proof', 'letter preview', 'film']);
/** What people have in their hand when they read it. */
const ON_A_PHONE: ReadonlySet<string> = new Set(['run-sheet', 'article', 'letter']);
const TEXTS = /\.(txt|html|vtt|srt|ics)$/;

const idOf = (name: PaperName): string => name.replaceAll(' ', '-');

const fileName = (place: string): string => place.slice(place.lastIndexOf('/') + 1);

/** A letter is looked at as it is read; its paper is about the sending. */
const readFirst = (files: Piece['files']): Piece['files'] =>
  [...files].sort(
    (a, b) => Number(b.place.endsWith('/letter.html')) - Number(a.place.endsWith('/letter.html')),
  );

const piecesOf = ({ words, wording, settings, cycle, id }: Context, shown: Shown): readonly Piece[] => {
  const folder = `backroom/${id}/`;
  const { papers } = wording.pieces;
  const named = new Set<string>();
  const known = papersInOrder.flatMap(({ name, file, more = [] }): readonly Piece[] => {
    const files = [...(file === undefined ? [] : [{ name, file }]), ...more];
    for (const one of files) named.add(folder + one.file);
    if (ELSEWHERE.has(name)) return [];
    const places =
      name === 'article'
        ? cycle
          ? [{ name: papers.article, place: `site/${articlePath(cycle)}` }]
          : []
        : files
            .filter((one) => !ELSEWHERE.has(one.name))
            .map((one) => ({
              name: one.name === 'letter' ? words.pieces.sending : papers[one.name],
              place: folder + one.file,
            }));
    const there = places.filter(({ place }) => shown.files.has(place));
    const piece = { id: idOf(name), name: papers[name], files: readFirst(there) };
    const own = there.length === 0 ? [] : [piece];
    const hasFilm = name === 'clip sheet' && shown.films.some((film) => film.cycle === id);
    return hasFilm ? [{ id: 'film', name: papers.film, files: [] }, ...own] : own;
  });
  // A paper that is new has its own place here before anybody has written it into a list.
  const others = [...shown.files.keys()]
    .filter((place) => place.startsWith(folder) && !named.has(place))
    .sort()
    .map((place) => ({ name: fileName(place), place }));
  const isMade = settings !== undefined && makesPiece(settings, 'clip');
  const pieces = known.filter((piece) => isMade || (piece.id !== 'clip-sheet' && piece.id !== 'film'));
  return others.length === 0 ? pieces : [...pieces, { id: 'others', name: id, files: others }];
};

/** A page as it is looked at, with the ways to see it otherwise. */
const frameOf = (context: Context, piece: Piece, at: string): FrameView | undefined => {
  const { asked, words } = context;
  const pages = piece.files.filter(({ place }) => place.endsWith('.html'));
  const page = pages.find(({ place }) => fileName(place) === asked.query.get('page')) ?? pages[0];
  if (!page) return undefined;
  const usual = ON_A_PHONE.has(piece.id) ? 'phone' : 'wide';
  const chosen = ['phone', 'wide'].find((one) => one === asked.query.get('width'));
  const width = chosen ?? usual;
  const scheme = SCHEMES.find((one) => one === asked.query.get('colours'));
  const href = (change: { readonly width?: string; readonly colours?: string }): string => {
    const query = new URLSearchParams({
      ...(page !== pages[0] && { page: fileName(page.place) }),
      width,
      ...(scheme && { colours: scheme }),
      ...change,
    });
    return `${at}?${query}#look`;
  };
  const schemeLabels: Readonly<Record<SchemeName, string>> = words.pieces.schemes;
  return {
    src: `${shownAddress(momentToSee(context), page.place, openedOf(context), scheme)}?seen=1`,
    title: words.pieces.seen(page.name, words.pieces.widths[width === 'phone' ? 'phone' : 'wide']),
    isPhone: width === 'phone',
    isChosen: chosen !== undefined,
    widths: (['phone', 'wide'] as const).map((one) => ({
      label: words.pieces.widths[one],
      href: href({ width: one }),
      isHere: one === width,
    })),
    schemes: SCHEMES.map((one) => ({
      label: schemeLabels[one],
      href: href({ colours: one }),
      isHere: one === scheme,
    })),
  };
};

const shownNow = (context: Context): Promise<Shown> =>
  context.table.shown(momentToSee(context), openedOf(context));

const show = async (context: Context): Promise<Outcome> => {
  const { table, words, id, rest } = context;
  const shown = await shownNow(context);
  const pieces = piecesOf(context, shown);
  const wanted = rest.split('/')[1];
  const piece = pieces.find((one) => one.id === wanted) ?? pieces[0];
  const at = addressOf('pieces', id, piece?.id ?? '');
  const inside =
    piece?.id === 'film'
      ? filmPart(context, shown, at)
      : piece?.id === 'cards'
        ? cardsPart(context, shown, at)
        : undefined;
  const body = table.templates().render('desk/pieces', {
    words,
    isOlder: shown.isOlder,
    pieces: pieces.map((one) => ({
      label: one.name,
      href: addressOf('pieces', id, one.id),
      isHere: one === piece,
    })),
    name: piece?.name ?? '',
    files: (piece?.files ?? []).map(({ name, place }) => ({
      name,
      file: fileName(place),
      src: shownAddress(momentToSee(context), place, openedOf(context)),
      look:
        place.endsWith('.html') && !inside ? `${at}?page=${encodeURIComponent(fileName(place))}#look` : '',
      canCopy: TEXTS.test(place),
    })),
    frame: piece && !inside ? frameOf(context, piece, at) : undefined,
    inside,
  });
  return { kind: 'page', heading: words.panels.pieces, body };
};

const act = async (context: Context, form: SentForm): Promise<Outcome> => {
  const { id, rest } = context;
  const shown = await shownNow(context);
  const action = sent(form, 'do') ?? '';
  const piece = rest.split('/')[1];
  if (piece === 'film') actOnFilm(context, shown, action);
  if (piece === 'cards') actOnCards(context, shown, action);
  return { kind: 'go', to: addressOf('pieces', id, piece ?? '') };
};

/** Pieces. */
export const piecesPanel: Panel = { show, act };
