/** A note where the coming cycle lacks photographs that its pieces need. */
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Cycle } from '../../model/box.ts';
import { locationIn } from '../../model/location-in.ts';
import { counted } from '../../text/counting-words.ts';
import type { WantedPhoto } from './plan.ts';

/** One note for all of them, because they are taken at one sitting. `needed`: every photograph that a piece needs. */
export const shootFindings = (
  cycle: Pick<Cycle, 'id' | 'source'>,
  needed: readonly WantedPhoto[],
): readonly Diagnostic[] => {
  const none = needed.filter(({ there }) => !there).length;
  const poor = needed.filter(({ there }) => there && there.unserved.length > 0).length;
  if (none + poor === 0) return [];
  const found = [
    ...(none > 0 ? [`${counted(none, 'photograph')} missing`] : []),
    ...(poor > 0 ? [`${poor} too small, too wide or blurred for a piece`] : []),
  ].join(' and ');
  return [
    {
      weight: 'note',
      rule: 'photographs-missing',
      location: locationIn(cycle.source, 'photo.file', 'photo', 'theme'),
      message: `Unexpected ${found} before the reveal of ${cycle.id}, expected the ${counted(needed.length, 'photograph')} that its pieces show`,
      fix: `Print ${cycle.id}/shoot-list.html in the back room: it says what to take, how large and for which piece`,
    },
  ];
};
