/** The clip sheet: the short vertical video shot by shot, its subtitles as files, and the post it goes out with. */
import type { PlanningChannel } from '../channel.ts';
import { planClips } from './plan.ts';

/** Three files for each cycle of a box that makes the clip. */
export const clipSheet: PlanningChannel<'backroom'> = {
  name: 'clip-sheet',
  where: 'backroom',
  plan: planClips,
};
