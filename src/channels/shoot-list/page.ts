/** The shoot list as a page: what is missing first, what is there with its thumbnail, the film's takes. */
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { clipFor } from '../../render/clip.ts';
import { documentText } from '../../render/document.ts';
import type { MadeDocument, PictureOutput } from '../../render/output.ts';
import { paperHead } from '../../render/paper.ts';
import { thumbnail } from '../../render/pictures.ts';
import { COVERED, TALL_PICTURE } from '../../render/tall-picture.ts';
import { typeset } from '../../render/typeset.ts';
import { percent } from '../../text/counting-words.ts';
import type { Wording } from '../../wording/wording.ts';
import type { Tools } from '../channel.ts';
import type { Fault } from './judge.ts';
import { isMissing, type ShootListData, type ShownPhoto, type WantedPhoto } from './plan.ts';

declare module '../../render/templates.ts' {
  interface TemplateData {
    'shoot-list': ReturnType<typeof listView>;
  }
}

const nameOf = (file: string): string => file.slice(file.lastIndexOf('/') + 1);

const faultText = (
  fault: Fault,
  { shape }: WantedPhoto,
  { faults, shapes }: Wording['shootList'],
): string => {
  switch (fault.kind) {
    case 'shape':
      return faults.shape(shapes[shape]);
    case 'small':
      return faults.small(fault.shown, fault.wanted);
    case 'blurred':
      return faults.blurred();
  }
};

const photoView = ({ source, sharpness }: ShownPhoto, cycle: string, words: Wording['shootList']) => {
  const { path, picture } = thumbnail(source, cycle);
  return {
    src: path.slice(cycle.length + 1),
    width: picture.width,
    height: picture.height,
    file: nameOf(source.file),
    judged: words.photo(source, words.sharpness[sharpness]),
    isDoubtful: sharpness === 'blurred' || sharpness === 'doubtful',
  };
};

const wantedView = (wanted: WantedPhoto, { cycle, settings, lead = '' }: ShootListData, wording: Wording) => {
  const words = wording.shootList;
  const { view, shape, item, pieces, least, best, there } = wanted;
  const { deeds } = wording.pieces;
  const name = item ? typeset(item.inText.short, settings.lang) : '';
  return {
    title: words.views[view](name, lead),
    hint: words.hints[view],
    sizes: words.sizes(words.shapes[shape], least, best),
    pieces: words.forPieces(pieces.map((piece) => deeds[piece])),
    byWords: there?.by === 'words' && words.byWords,
    photo: there && photoView(there.photo, cycle.id, words),
    but:
      there &&
      there.unserved.length > 0 &&
      words.insteadOf(
        nameOf(there.photo.source.file),
        there.faults.map((fault) => faultText(fault, wanted, words)),
        there.unserved.map((piece) => deeds[piece]),
      ),
  };
};

/** "4.8", of milliseconds */
const tenths = (milliseconds: number): string => (milliseconds / 1000).toFixed(1);

const takesView = ({ clip, settings }: ShootListData, wording: Wording) => {
  if (!clip) return undefined;
  const { shots, length } = clipFor(clip, wording);
  const words = wording.shootList;
  return {
    note: words.takesNote(words.seconds(tenths(length).replace(/\.0$/, ''))),
    shots: shots.map((shot) => ({
      title: shot.item ? typeset(shot.item.inText.short, settings.lang) : words.shotTitles[shot.kind],
      length: words.seconds(tenths(shot.end - shot.start)),
      film: typeset(wording.clip.film(shot.film), settings.lang),
    })),
  };
};

const listView = (data: ShootListData, tools: Tools) => {
  const { wanted, unplaced, cycle } = data;
  const { wording } = tools;
  const words = wording.shootList;
  const missing = wanted.filter(isMissing);
  const needed = missing.filter(({ isNeeded }) => isNeeded);
  const helpful = missing.filter(({ isNeeded }) => !isNeeded);
  const views = (some: readonly WantedPhoto[]) => some.map((one) => wantedView(one, data, wording));
  const groups = [
    { title: words.needed, wanted: views(needed) },
    { title: words.helpful, wanted: views(helpful) },
  ];
  return {
    ...paperHead(data, words, tools),
    sealed: data.sealed,
    sum: words.sum(wanted.length - missing.length, wanted.length, needed.length, helpful.length),
    missing: groups.filter((group) => group.wanted.length > 0),
    there: views(wanted.filter((one) => !isMissing(one))),
    takes: takesView(data, wording),
    unplaced: unplaced.map((photo) => photoView(photo, cycle.id, words)),
    unplacedNote: words.unplacedNote(unplaced.length),
    roomUpright: words.roomUpright(
      percent(COVERED.top / TALL_PICTURE.height),
      percent(COVERED.bottom / TALL_PICTURE.height),
    ),
  };
};

const thumbnailsOf = ({ wanted, unplaced, cycle }: ShootListData): readonly PictureOutput[] => {
  const photos = [...wanted.flatMap(({ there }) => there?.photo ?? []), ...unplaced];
  return photos.map(({ source }) => thumbnail(source, cycle.id));
};

/** The list as HTML, with the thumbnails that it shows. */
export const shootListPage = (data: ShootListData, tools: Tools): MadeDocument<Diagnostic> => ({
  content: documentText(tools.templates.render('shoot-list', listView(data, tools))),
  pictures: thumbnailsOf(data),
});
