/** Photos: put in as they came off the phone, given to a record, and the point of each that every cut must keep. */
import { valueAt } from '../../content/field-path.ts';
import { isFieldList } from '../../content/write-yaml.ts';
import type { SentForm } from '../../io/serve.ts';
import { addressOf, type Context, type Outcome, type Panel, sent } from '../context.ts';
import { likelyShown, picturedRecords } from '../pictures.ts';
import { openRecord } from '../record.ts';
import { writeKeys } from './cycle.ts';

interface UseView {
  /** Record and dotted field of the picture. */
  readonly record: string;
  readonly field: string;
  readonly name: string;
  readonly href: string;
  readonly alt: string;
  readonly focus: string;
  readonly across: string;
  readonly down: string;
}

interface PhotoView {
  readonly id: string;
  readonly file: string;
  readonly src: string;
  readonly width: number;
  readonly height: number;
  /** Its size on the page, in CSS pixels, so that its place is there before it is. */
  readonly drawn: { readonly width: number; readonly height: number } | undefined;
  readonly problem: string;
  readonly uses: readonly UseView[];
}

interface PhotosView {
  readonly words: Context['words'];
  readonly token: string;
  readonly at: string;
  readonly used: readonly PhotoView[];
  readonly unused: readonly PhotoView[];
  /** `isLikely`: the one that is chosen at first. */
  readonly records: readonly {
    readonly path: string;
    readonly name: string;
    readonly isLikely: boolean;
  }[];
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    'desk/photos': PhotosView;
  }
}

/** One photo of the largest phones is 30 MB; a handful of them are taken at once. */
export const MOST_PHOTO_BYTES = 400_000_000;
const MOST_ONE_PHOTO = 100_000_000;

/** Upright photos are no higher than a laptop's window with its head, in CSS pixels. A choice of ours, no source. */
const MOST_DRAWN_HEIGHT = 480;

const drawnSize = (
  photo: { readonly width?: number; readonly height?: number } | undefined,
): Pick<PhotoView, 'drawn'> => {
  const { width = 0, height = 0 } = photo ?? {};
  if (width === 0 || height === 0) return { drawn: undefined };
  const scale = Math.min(1, MOST_DRAWN_HEIGHT / height);
  return { drawn: { width: Math.round(width * scale), height: Math.round(height * scale) } };
};

const FOCUS = /^(\d{1,3})% (\d{1,3})%$/;

const show = async (context: Context): Promise<Outcome> => {
  const { table, words, id, token } = context;
  const records = picturedRecords(context);
  const uses = new Map<string, UseView[]>();
  for (const { path, record, name, pictures } of records)
    for (const { at, file } of pictures) {
      const text = (key: string): string => {
        const value = valueAt(record.values, [...at, key]);
        return typeof value === 'string' ? value : '';
      };
      const [, across = '', down = ''] = FOCUS.exec(text('focus')) ?? [];
      const use = {
        record: path,
        field: at.join('.'),
        name,
        href: `${addressOf('write', path)}#field-${[...at, 'file'].join('-')}`,
        alt: text('alt'),
        focus: text('focus'),
        across,
        down,
      };
      uses.set(file, [...(uses.get(file) ?? []), use]);
    }
  const folder = `cycles/${id}/photos/`;
  const photos = [...table.snapshot().files.values()]
    .filter(({ path, photo }) => photo && path.startsWith(folder))
    .map(({ path, photo }): PhotoView => {
      const file = path.slice(folder.length);
      return {
        id: `photo-${file.replace(/[^\w-]/g, '-')}`,
        file,
        src: addressOf('photo', path),
        width: photo?.width ?? 0,
        height: photo?.height ?? 0,
        ...drawnSize(photo),
        problem: photo?.problem ?? '',
        uses: uses.get(file) ?? [],
      };
    });
  const likely = likelyShown(records);
  const body = table.templates().render('desk/photos', {
    words,
    token,
    at: addressOf('photos', id),
    used: photos.filter((photo) => photo.uses.length > 0),
    unused: photos.filter((photo) => photo.uses.length === 0),
    records: records.map(({ path, name }) => ({ path, name, isLikely: path === likely })),
  });
  return { kind: 'page', heading: words.panels.photos, body };
};

const KINDS: Readonly<Record<string, string>> = { jpeg: 'jpg', tif: 'tiff' };
const PHOTO_NAME = /^(.*)\.(jpe?g|png|webp|avif|hei[cf]|tiff?|gif)$/i;

/** A file's name as it can stand anywhere: small letters, digits and hyphens. Undefined for what is named as no picture. */
export const photoName = (given: string): { readonly stem: string; readonly ending: string } | undefined => {
  const [, stem = '', ending = ''] = PHOTO_NAME.exec(given.replace(/^.*[\\/]/, '')) ?? [];
  if (ending === '') return undefined;
  const plain = stem
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 80);
  const kind = ending.toLowerCase();
  return { stem: plain || 'photo', ending: KINDS[kind] ?? kind };
};

/** Puts photos in, each under a name that no other file has. Gives the names; empty where none of them is a picture. */
const putIn = async ({ table, id }: Context, form: SentForm): Promise<readonly string[]> => {
  // Decoders are loaded by whoever puts photos in.
  const { probe } = await import('../../io/probe.ts');
  const names: string[] = [];
  for (const { name, bytes } of form.files.get('photos') ?? []) {
    const plain = photoName(name);
    if (!plain || bytes.length > MOST_ONE_PHOTO) continue;
    const looked = await probe(name, bytes);
    if (looked.problem !== undefined) continue;
    for (let copy = 1; copy <= 500; copy += 1) {
      const file = `${plain.stem}${copy === 1 ? '' : `-${copy}`}.${plain.ending}`;
      const path = `cycles/${id}/photos/${file}`;
      const there = table.read(path);
      if (there?.hash === looked.hash) {
        names.push(file);
        break;
      }
      if (there) continue;
      const written = await table.save({ path, seen: null, bytes, about: ['photo'] });
      if (written.kind === 'outside') return names;
      if (written.kind === 'written') {
        names.push(file);
        break;
      }
    }
  }
  return names;
};

/** Gives a photo to a record: the whole box's is the cycle's own, a thing's comes after those that it has. */
const give = async (context: Context, form: SentForm, path: string): Promise<boolean> => {
  const file = sent(form, 'file') ?? '';
  const alt = (sent(form, 'alt') ?? '').trim();
  const record = openRecord(context.table, path);
  if (!record || record === 'other encoding' || file === '' || /[\\/]/.test(file)) return false;
  const picture = { file, ...(alt !== '' && { alt }) };
  if (path.endsWith('/cycle.md')) return writeKeys(context, path, [{ path: ['photo'], value: picture }]);
  const now = valueAt(record.values, ['image']);
  const count = now === undefined || now === null ? 0 : isFieldList(now) ? now.length : 1;
  return writeKeys(context, path, [{ path: ['image', count], value: picture }]);
};

const act = async (context: Context, form: SentForm): Promise<Outcome> => {
  const back = addressOf('photos', context.id);
  const action = sent(form, 'do');
  if (action === 'put') {
    const names = await putIn(context, form);
    const isAll = names.length === (form.files.get('photos') ?? []).length;
    return { kind: 'go', to: back, said: names.length === 0 ? 'no photo' : isAll ? 'photo' : 'some photos' };
  }
  const record = sent(form, 'record') ?? '';
  const isOne = picturedRecords(context).some(({ path }) => path === record);
  if (!isOne) return { kind: 'go', to: back };
  if (action === 'give')
    return { kind: 'go', to: back, said: (await give(context, form, record)) ? 'saved' : 'same' };
  if (action === 'mend') {
    const at = (sent(form, 'field') ?? '')
      .split('.')
      .map((step) => (/^\d+$/.test(step) ? Number(step) : step));
    const [across, down, alt] = ['across', 'down', 'alt'].map((name) => (sent(form, name) ?? '').trim());
    const isPoint = [across, down].every((share) => /^\d{1,3}$/.test(share ?? '') && Number(share) <= 100);
    const saved = await writeKeys(context, record, [
      ...(isPoint ? [{ path: [...at, 'focus'], value: `${Number(across)}% ${Number(down)}%` }] : []),
      ...(across === '' && down === '' ? [{ path: [...at, 'focus'], value: undefined }] : []),
      ...(alt ? [{ path: [...at, 'alt'], value: alt }] : []),
    ]);
    return { kind: 'go', to: back, said: saved ? 'saved' : 'same' };
  }
  return { kind: 'go', to: back };
};

/** Photos. */
export const photosPanel: Panel = { show, act };
