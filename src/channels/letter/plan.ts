/** What letters are made of: four files for every cycle in the back room, and their pictures in the site. */
import { callFor } from '../../model/calls.ts';
import { makesPiece } from '../../model/pieces.ts';
import { isSealed } from '../../model/seal.ts';
import { type ChannelInput, type ChannelPlan, plannedDocument } from '../channel.ts';
import { replayFinding, settingsFindings } from './findings.ts';
import { mailAddress } from './message.ts';
import { letterPage, letterSheet, plainLetter, wholeMessage } from './page.ts';
import { letterFiles } from './pictures.ts';

/** Four files for each cycle, with findings about what box.md and the newest cycle do not say; none for a box without the letter. */
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
      const file = (name: string): string => `${cycle.id}/${name}`;
      return [
        plannedDocument(file('letter.html'), 'page', told, letterPage),
        plannedDocument(file('letter.txt'), 'page', told, plainLetter),
        plannedDocument(file('letter.eml'), 'page', message, wholeMessage),
        plannedDocument(
          file('letter-sheet.html'),
          'page',
          { told, sealed: isSealed(cycle, asOf) },
          letterSheet,
        ),
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
