/**
 * What letters are made of: four files for every cycle in the back room, a preview of those that are still to be sent, and
 * their pictures in the site.
 */
import { callFor } from '../../model/calls.ts';
import { makesPiece } from '../../model/pieces.ts';
import { isSealed } from '../../model/seal.ts';
import { type ChannelInput, type ChannelPlan, plannedDocument } from '../channel.ts';
import { replayFinding, settingsFindings } from './findings.ts';
import { mailAddress } from './message.ts';
import { letterPage, letterPreview, letterSheet, plainLetter, wholeMessage } from './page.ts';
import { letterFiles, previewPath } from './pictures.ts';

/** Four or five files for each cycle, with findings about what box.md and the newest cycle do not say; none for a box without the letter. */
export const planLetters = ({ box, asOf }: ChannelInput): ChannelPlan => {
  const { settings, cycles } = box;
  if (!makesPiece(settings, 'letter')) return { documents: [] };
  // The next to be sent is that of the newest cycle that may be shown.
  const next = cycles.findLast((cycle) => !isSealed(cycle, asOf));
  const sender = settings.email === undefined ? undefined : mailAddress(settings.email);
  return {
    documents: cycles.flatMap((cycle) => {
      const told = { cycle, settings, call: callFor(box, cycle, asOf, 'letter') };
      // A letter that waits for its parcels bears the moment of its build.
      const message = { told, sent: cycle.reveal ?? asOf };
      const sealed = isSealed(cycle, asOf);
      // No build knows when its folders are published. The pictures of what was sent before are out.
      const preview = sealed || cycle === next;
      const file = (name: string): string => `${cycle.id}/${name}`;
      return [
        plannedDocument(file('letter.html'), 'page', told, letterPage),
        plannedDocument(file('letter.txt'), 'page', told, plainLetter),
        plannedDocument(file('letter.eml'), 'page', message, wholeMessage),
        ...(preview ? [plannedDocument(previewPath(cycle), 'page', told, letterPreview)] : []),
        plannedDocument(file('letter-sheet.html'), 'page', { told, sealed, preview }, letterSheet),
      ];
    }),
    diagnostics: [...settingsFindings(settings, sender), ...(next ? replayFinding(next) : [])],
  };
};

/** The pictures that the letters of a box name. */
export const planLetterPictures = ({ box }: ChannelInput): ChannelPlan => ({
  documents: [],
  pictures: makesPiece(box.settings, 'letter')
    ? box.cycles.flatMap((cycle) => letterFiles(box.settings, cycle))
    : [],
});
