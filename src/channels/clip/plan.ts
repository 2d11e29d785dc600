/** What the clip's papers are made of: a sheet and two files of subtitles for every cycle. */
import { callFor } from '../../model/calls.ts';
import { makesPiece } from '../../model/pieces.ts';
import { isSealed } from '../../model/seal.ts';
import { type ChannelInput, type ChannelPlan, plannedDocument } from '../channel.ts';
import { clipSheetPage, subRipFile, webVttFile } from './page.ts';

/** Three files for each cycle; none for a box without the clip. */
export const planClips = ({ box, asOf }: ChannelInput): ChannelPlan => {
  const { settings, cycles } = box;
  if (!makesPiece(settings, 'clip')) return { documents: [] };
  return {
    documents: cycles.flatMap((cycle) => {
      const told = { cycle, settings, call: callFor(box, cycle, asOf, 'clip') };
      return [
        plannedDocument(
          `${cycle.id}/clip-sheet.html`,
          'page',
          { told, sealed: isSealed(cycle, asOf) },
          clipSheetPage,
        ),
        plannedDocument(`${cycle.id}/clip.vtt`, 'page', told, webVttFile),
        plannedDocument(`${cycle.id}/clip.srt`, 'page', told, subRipFile),
      ];
    }),
  };
};
