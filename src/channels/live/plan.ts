/** What the live's papers are made of: a run sheet for every cycle, and the chapters of those that were recorded. */
import { callFor } from '../../model/calls.ts';
import { chaptersOf } from '../../model/chapters.ts';
import { makesPiece } from '../../model/pieces.ts';
import { boxAfter } from '../../model/relations.ts';
import { isSealed } from '../../model/seal.ts';
import { type ChannelInput, type ChannelPlan, plannedDocument } from '../channel.ts';
import { chaptersFile, runSheetPage } from './page.ts';

/** A run sheet for each cycle, and a file of chapters for each recording with times; none for a box without the live. */
export const planLive = ({ box, asOf }: ChannelInput): ChannelPlan => {
  const { settings, cycles } = box;
  if (!makesPiece(settings, 'live')) return { documents: [] };
  return {
    documents: cycles.flatMap((cycle) => {
      const sheet = {
        cycle,
        settings,
        call: callFor(box, cycle, asOf, 'live'),
        next: boxAfter(box, cycle),
        sealed: isSealed(cycle, asOf),
      };
      const chapters = chaptersOf(cycle);
      return [
        plannedDocument(`${cycle.id}/run-sheet.html`, 'page', sheet, runSheetPage),
        ...(chapters.length > 0
          ? [
              plannedDocument(
                `${cycle.id}/chapters.vtt`,
                'page',
                { chapters, lang: settings.lang },
                chaptersFile,
              ),
            ]
          : []),
      ];
    }),
  };
};
