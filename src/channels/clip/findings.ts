/** What is wrong with a clip before it is made. */
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Cycle } from '../../model/box.ts';
import { locationIn } from '../../model/location-in.ts';
import type { Clip } from '../../render/clip-shots.ts';

/** A finding where a video that is still to be made lasts longer than wanted with the fewest words. */
export const clipFindings = (
  { length, wanted }: Clip,
  { cycle, sealed }: { readonly cycle: Cycle; readonly sealed: boolean },
): readonly Diagnostic[] => {
  if (length <= wanted * 1000 || (cycle.clip === undefined && !sealed)) return [];
  const seconds = Math.ceil(length / 100) / 10;
  return [
    {
      weight: 'look at',
      rule: 'clip-long',
      location: locationIn(cycle.source, 'clip', 'theme'),
      message: `Unexpected clip of ${seconds} seconds at its shortest, expected ${wanted}`,
      fix: 'Write a shorter `hook` under `live`, or a longer `clip`: 15, 30 or 60',
    },
  ];
};
