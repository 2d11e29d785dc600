/** Photos by name → pictures that can be shown. */
import type { PictureRecord } from '../content/schemas.ts';
import type { PhotoSource } from '../content/sources.ts';
import type { Diagnostic, Location, ReportFinding } from '../diagnostics/diagnostic.ts';
import { nearest } from '../diagnostics/nearest.ts';
import type { Picture } from './box.ts';

/** The photos of the content folder, to be asked by path. */
export interface Photos {
  readonly byPath: ReadonlyMap<string, PhotoSource>;
  /** Of every file there is, so that one that is no picture is told from one that is missing. */
  readonly paths: ReadonlySet<string>;
}

const focusOf = (focus: string | undefined): Picture['focus'] => {
  const [x, y] = (focus ?? '').split(' ').map((share) => Number.parseInt(share, 10) / 100);
  return x === undefined || y === undefined || Number.isNaN(x) || Number.isNaN(y) ? undefined : { x, y };
};

/** That a photo is there and cannot be used; `problem` follows its name. */
export const unusablePhoto = (
  location: Location,
  name: string,
  problem: string,
  fix?: string,
): Diagnostic => ({
  weight: 'must fix',
  rule: 'photo-unusable',
  location,
  message: `Unexpected photo \`${name}\`: it ${problem}`,
  fix: fix ?? 'Export or copy it from the phone again',
});

/** The picture at a path of the content folder; undefined with a finding where there is none to show. */
export const pictureAt = (
  photos: Photos,
  path: string,
  told: { readonly alt: string; readonly caption?: string | undefined; readonly focus?: string | undefined },
  location: Location,
  report: ReportFinding,
): Picture | undefined => {
  const photo = photos.byPath.get(path);
  const name = path.slice(path.lastIndexOf('/') + 1);
  if (!photo) {
    const folder = path.slice(0, path.length - name.length);
    const there = [...photos.byPath.keys()]
      .filter((other) => other.startsWith(folder))
      .map((other) => other.slice(folder.length));
    // Records are read from photos/ on, and whoever looks at the folder writes its name once more.
    const isThere = photos.byPath.has(path.replace('photos/photos/', 'photos/'));
    const meant = isThere ? name : nearest(name, there);
    const isFile = photos.paths.has(path);
    report({
      weight: 'must fix',
      rule: 'photo-missing',
      location,
      message: isFile
        ? `Unexpected file \`${path}\`, expected a picture (JPEG, PNG, WebP, AVIF, HEIC, TIFF or GIF)`
        : `Unexpected photo \`${name}\`, expected a file in ${folder || 'the content folder'}${meant ? `, perhaps \`${meant}\`` : ''}`,
      fix: meant
        ? `Write \`${meant}\`, or put the photo there`
        : 'Put the photo there, or take the picture out',
    });
    return undefined;
  }
  if (photo.problem !== undefined) {
    report(unusablePhoto(location, name, photo.problem, photo.fix));
    return undefined;
  }
  const { hash, width, height, tint, dominant } = photo;
  const focus = focusOf(told.focus);
  return {
    file: path,
    hash,
    width,
    height,
    tint,
    dominant,
    alt: told.alt,
    ...(told.caption === undefined ? {} : { caption: told.caption }),
    ...(focus ? { focus } : {}),
  };
};

/** A picture that a record of the folder `photos/` below `dir` names. */
export const recordPicture = (
  photos: Photos,
  dir: string,
  record: PictureRecord,
  location: Location,
  report: ReportFinding,
): Picture | undefined => pictureAt(photos, `${dir}photos/${record.file}`, record, location, report);
