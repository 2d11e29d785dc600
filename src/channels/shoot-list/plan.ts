/**
 * What a shoot list is made of. There is one for every cycle that is still sealed, complete or not, because the
 * photographs are taken between packing and the reveal; and for the one that was shown last while something is missing
 * that its pieces need.
 */
import type { PhotoSource } from '../../content/sources.ts';
import type { Box, Cycle, Item, Moment, Piece } from '../../model/box.ts';
import { callFor } from '../../model/calls.ts';
import type { LiveInput } from '../../model/cues.ts';
import { makesPiece, piecesOf } from '../../model/pieces.ts';
import { isSealed } from '../../model/seal.ts';
import type { PictureSource } from '../../render/pictures.ts';
import { type ChannelPlan, type PrivateInput, plannedDocument } from '../channel.ts';
import { shootFindings } from './findings.ts';
import { type Fault, type Judgement, judge, type Sharpness, sharpnessOf } from './judge.ts';
import { type Need, needsOf, type Shape, type Size, sizesOf, type View } from './needs.ts';
import { shootListPage } from './page.ts';
import { type Candidate, candidatesFor, namedIn } from './seen.ts';

/** A photo as the list shows it. */
export interface ShownPhoto {
  readonly source: PictureSource;
  readonly sharpness: Sharpness;
}

/** A photograph that is wanted, with the one that is there. */
export interface WantedPhoto {
  readonly view: View;
  readonly shape: Shape;
  readonly item?: Pick<Item, 'name' | 'lead' | 'inText'>;
  readonly isNeeded: boolean;
  readonly pieces: readonly Piece[];
  readonly least: Size;
  readonly best: Size;
  readonly there?: {
    readonly photo: ShownPhoto;
    readonly by: Candidate['by'];
    readonly faults: readonly Fault[];
    /** Pieces that it does not serve. */
    readonly unserved: readonly Piece[];
  };
}

/** What the list of one cycle is made of. */
export interface ShootListData {
  readonly cycle: Pick<Cycle, 'id' | 'year' | 'month' | 'theme' | 'palette'>;
  readonly settings: Pick<Box['settings'], 'name' | 'lang'>;
  readonly sealed: boolean;
  /** The kind of the lead item inside a sentence. */
  readonly lead?: string;
  readonly wanted: readonly WantedPhoto[];
  /** Photos of the cycle's folder that no record names. */
  readonly unplaced: readonly ShownPhoto[];
  /** What the clip is made of, for its takes; none for a box that makes no clip. */
  readonly clip?: LiveInput;
}

type PhotosByPath = ReadonlyMap<string, PhotoSource>;

const shownPhoto = (source: PictureSource, photos: PhotosByPath): ShownPhoto => ({
  source,
  sharpness: sharpnessOf({ ...source, sharpness: photos.get(source.file)?.sharpness }),
});

/** Whether one photo serves better than another: more pieces, then fewer faults, then more pixels. */
const better = (a: Judged, b: Judged): number =>
  a.judgement.unserved.length - b.judgement.unserved.length ||
  a.judgement.faults.length - b.judgement.faults.length;

interface Judged {
  readonly candidate: Candidate;
  readonly judgement: Judgement;
}

const wantedPhoto = (need: Need, cycle: Cycle, lang: string, photos: PhotosByPath): WantedPhoto => {
  const { view, shape, item, isNeeded, uses } = need;
  const [best] = candidatesFor(need, cycle, lang)
    .map((candidate): Judged => {
      const { picture } = candidate;
      const { width, height } = picture;
      const sharpness = photos.get(picture.file)?.sharpness;
      return { candidate, judgement: judge({ width, height, sharpness }, need) };
    })
    .sort(better);
  return {
    ...{ view, shape, isNeeded },
    ...(item && { item: { name: item.name, lead: item.lead, inText: item.inText } }),
    pieces: [...new Set(uses.map(({ piece }) => piece))],
    ...sizesOf(need),
    ...(best && {
      there: {
        photo: shownPhoto(best.candidate.picture, photos),
        by: best.candidate.by,
        faults: best.judgement.faults,
        unserved: best.judgement.unserved,
      },
    }),
  };
};

/** Whether a photograph has still to be taken: none is there, or none that serves every piece. */
export const isMissing = ({ there }: WantedPhoto): boolean => !there || there.unserved.length > 0;

/** Paths of all photos that a record or story of the box names. */
const namedPaths = ({ settings, cycles }: Box): ReadonlySet<string> =>
  new Set(
    [
      settings.logo,
      settings.subscription?.image,
      ...cycles.flatMap((cycle) => [cycle.wholeBox, ...namedIn(cycle).map(({ picture }) => picture)]),
    ].flatMap((picture) => (picture ? [picture.file] : [])),
  );

const listFor = (
  cycle: Cycle,
  { box, asOf, photos }: PrivateInput,
  named: ReadonlySet<string>,
): ShootListData => {
  const { settings } = box;
  const own = photos.get(cycle.id) ?? [];
  const byPath: PhotosByPath = new Map(own.map((photo) => [photo.path, photo]));
  const { id, year, month, theme, palette } = cycle;
  const { name, lang } = settings;
  const lead = cycle.items.find((item) => item.lead);
  const call = callFor(box, cycle, asOf, 'clip');
  return {
    cycle: { id, year, month, theme, palette },
    settings: { name, lang },
    sealed: isSealed(cycle, asOf),
    ...(lead && { lead: lead.inText.kind }),
    wanted: needsOf(cycle, piecesOf(settings)).map((need) => wantedPhoto(need, cycle, lang, byPath)),
    unplaced: own
      .filter(({ path, problem }) => problem === undefined && !named.has(path))
      .map(({ path, hash, width, height }) => shownPhoto({ file: path, hash, width, height }, byPath)),
    ...(makesPiece(settings, 'clip') && { clip: { cycle, settings, call } }),
  };
};

const currentCycles = (cycles: readonly Cycle[], asOf: Moment): readonly Cycle[] => {
  const newest = cycles.findLast((cycle) => !isSealed(cycle, asOf));
  return cycles.filter((cycle) => cycle.items.length > 0 && (cycle === newest || isSealed(cycle, asOf)));
};

/** The lists, and a note where the coming cycle still lacks what its pieces need. */
export const planShootLists = (input: PrivateInput): ChannelPlan => {
  const { box, asOf } = input;
  const named = namedPaths(box);
  const lists = currentCycles(box.cycles, asOf)
    .map((cycle) => ({ cycle, list: listFor(cycle, input, named) }))
    .filter(
      ({ list: { sealed, wanted } }) =>
        wanted.length > 0 && (sealed || wanted.some((one) => one.isNeeded && isMissing(one))),
    );
  const coming = lists.find(({ list }) => list.sealed);
  return {
    documents: lists.map(({ cycle, list }) =>
      plannedDocument(`${cycle.id}/shoot-list.html`, 'page', list, shootListPage),
    ),
    diagnostics: coming
      ? shootFindings(
          coming.cycle,
          coming.list.wanted.filter((one) => one.isNeeded),
        )
      : [],
  };
};
