/** Pictures that will not look well where pages show them, and items that have none. */
import { type Diagnostic, type Location, lookAt } from '../diagnostics/diagnostic.ts';
import type { Box, Cycle, Item, Picture, RecordSource } from './box.ts';
import { locationIn } from './location-in.ts';

/**
 * Least width of a photo, in pixels: a phone's column of some 350 CSS pixels has two pixels or more to each. Common
 * practice, no source.
 */
export const LEAST_WIDTH = 800;
/** Width of the widest copy that pages offer, in pixels: more is never shown. */
export const WIDEST_SHOWN = 1280;
/** Width over height of the frame in which lists show a picture. */
export const UPRIGHT = 4 / 5;
/** Least share of a photo's width that the upright frame is to show: less cuts most things in two. By eye. */
export const LEAST_SHARE = 0.4;

const WANTED = `${WIDEST_SHOWN} × ${WIDEST_SHOWN / UPRIGHT} pixels at best`;

const smallFinding = ({ width, height }: Picture, location: Location): readonly Diagnostic[] =>
  width >= LEAST_WIDTH
    ? []
    : [
        lookAt(
          'picture-small',
          location,
          `Unexpected picture of ${width} × ${height} pixels, expected ${LEAST_WIDTH} or more from side to side; pages show it blurred`,
          `Use the photo as it came off the phone or camera, ${WIDEST_SHOWN} pixels wide or more`,
        ),
      ];

/** About a picture that lists show in an upright frame. A `focus` says that its author knows what will be seen. */
const wideFinding = ({ width, height, focus }: Picture, location: Location): readonly Diagnostic[] => {
  const share = (UPRIGHT * height) / width;
  if (focus || share >= LEAST_SHARE) return [];
  return [
    lookAt(
      'picture-wide',
      location,
      `Unexpected picture of ${width} × ${height} pixels in an upright frame, which shows ${Math.round(share * 100)} % of its width, expected ${LEAST_SHARE * 100} % or more`,
      `Use one that is upright or nearly square, ${WANTED}, or say with \`focus\` which part is to be seen`,
    ),
  ];
};

const withoutPicture = ({ lead, source }: Item): Diagnostic => ({
  weight: lead ? 'look at' : 'note',
  rule: 'item-picture',
  location: locationIn(source, 'name'),
  adds: 'image',
  message: `Unexpected ${lead ? 'lead item' : 'item'} without a picture, expected one at least`,
  fix: `Add \`image\` with the \`file\` and the \`alt\` of a photo of it, ${WANTED}`,
});

const itemFindings = (item: Item): readonly Diagnostic[] => {
  const { pictures, source } = item;
  // A photo that is not there was reported as such.
  if (pictures.length === 0) return source.fields.has('image') ? [] : [withoutPicture(item)];
  return pictures.flatMap((picture, i) => {
    const location = locationIn(source, `image.${i}.file`, 'image');
    // Lists show the first.
    return [...smallFinding(picture, location), ...(i === 0 ? wideFinding(picture, location) : [])];
  });
};

const cyclePicture = (
  source: RecordSource,
  picture: Picture | undefined,
  key: string,
  upright: boolean,
): readonly Diagnostic[] => {
  const location = source.fields.get(key);
  if (!picture || !location) return [];
  return [...smallFinding(picture, location), ...(upright ? wideFinding(picture, location) : [])];
};

const cycleFindings = ({ source, wholeBox, hero, peek, items }: Cycle): readonly Diagnostic[] => [
  ...cyclePicture(source, wholeBox, 'photo.file', false),
  ...cyclePicture(source, hero, 'hero.file', true),
  ...cyclePicture(source, peek?.picture, 'peek.picture.file', false),
  ...items.flatMap(itemFindings),
];

/** Every picture of the box that is too small or too wide for its place, and every item without any. */
export const pictureFindings = ({ cycles }: Pick<Box, 'cycles'>): readonly Diagnostic[] =>
  cycles.flatMap(cycleFindings);
