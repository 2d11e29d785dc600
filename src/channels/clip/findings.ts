/** What is wrong with a clip before it is made. */
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Cycle } from '../../model/box.ts';
import { locationIn } from '../../model/location-in.ts';
import { type Clip, isTooWide } from '../../render/clip-shots.ts';
import { FILM_SIZE, leastStill } from '../../render/film.ts';

/**
 * Pictures that a film cannot show well: much wider than tall, or so small that they would be enlarged too much. Of a
 * cycle that is still sealed, because then they can be taken anew.
 */
const stillFindings = (
  { shots }: Clip,
  { cycle, sealed }: { readonly cycle: Cycle; readonly sealed: boolean },
): readonly Diagnostic[] => {
  const { width, height } = leastStill(FILM_SIZE);
  return shots.flatMap(({ still, item }): readonly Diagnostic[] => {
    if (!sealed || !still || item?.take) return [];
    if (!isTooWide(still) && still.width >= width) return [];
    const name = still.file.slice(still.file.lastIndexOf('/') + 1);
    return [
      {
        weight: 'look at',
        rule: 'film-still',
        location: item
          ? locationIn(item.source, 'image', 'name')
          : locationIn(cycle.source, 'photo', 'theme'),
        message: `Unexpected photo \`${name}\` of ${still.width} × ${still.height} pixels in the film, expected an upright one of at least ${width} × ${height}; it is set on paper, small`,
        fix: 'Take an upright photo of it, or film it, and name the filmed piece with `take`',
      },
    ];
  });
};

/** What of a video that is still to be made does not fit: its length with the fewest words, and its pictures. */
export const clipFindings = (
  clip: Clip,
  { cycle, sealed }: { readonly cycle: Cycle; readonly sealed: boolean },
): readonly Diagnostic[] => {
  const stills = stillFindings(clip, { cycle, sealed });
  const { length, wanted } = clip;
  if (length <= wanted * 1000 || (cycle.clip === undefined && !sealed)) return stills;
  const seconds = Math.ceil(length / 100) / 10;
  return [
    ...stills,
    {
      weight: 'look at',
      rule: 'clip-long',
      location: locationIn(cycle.source, 'clip', 'theme'),
      message: `Unexpected clip of ${seconds} seconds at its shortest, expected ${wanted}`,
      fix: 'Write a shorter `hook` under `live`, or a longer `clip`: 15, 30 or 60',
    },
  ];
};
