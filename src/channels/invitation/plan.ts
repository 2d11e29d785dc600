/** What invitations are made of: a post and an event for each live that somebody may still be invited to. */
import { spoilersIn } from '../../analysis/spoilers.ts';
import type { Box, Cycle, Moment } from '../../model/box.ts';
import { callFor } from '../../model/calls.ts';
import { locationIn } from '../../model/location-in.ts';
import { makesPiece } from '../../model/pieces.ts';
import { boxAfter, previousCycle } from '../../model/relations.ts';
import { isSealed } from '../../model/seal.ts';
import { type ChannelInput, type ChannelPlan, plannedDocument } from '../channel.ts';
import { invitationFindings } from './findings.ts';
import type { InvitationData } from './page.ts';
import { eventFile, invitationPage } from './page.ts';

/** Where there is still somebody to invite: cycles to come, and the one that was shown last, whose live may be now. */
const invitedTo = ({ cycles }: Box, asOf: Moment): readonly Cycle[] => {
  const shown = cycles.findLast((cycle) => !isSealed(cycle, asOf));
  return cycles.filter((cycle) => cycle === shown || isSealed(cycle, asOf));
};

const dataFor = (box: Box, cycle: Cycle, asOf: Moment): InvitationData => {
  const { settings } = box;
  const before = previousCycle(box, cycle);
  const sealed = isSealed(cycle, asOf);
  return {
    cycle,
    settings,
    // It leads to the live and not to the call, which is said there: the live is as long as on its own run sheet.
    call: callFor(box, cycle, cycle.reveal ?? asOf, 'live'),
    ...(before?.peek ? { peekBefore: before.peek.text } : {}),
    // Findings, which name the place, are for what is to come.
    ...(before && sealed ? { peekAt: locationIn(before.source, 'peek.text', 'peek') } : {}),
    next: boxAfter(box, cycle),
    sealed,
  };
};

/** Two files for each; none for a box without the invitation, nor for a cycle whose moment nobody can know. */
export const planInvitations = ({ box, asOf, language }: ChannelInput): ChannelPlan => {
  if (!makesPiece(box.settings, 'invitation')) return { documents: [] };
  const invitations = invitedTo(box, asOf).map((cycle) => dataFor(box, cycle, asOf));
  return {
    // What is found about the others is found while their pages are made.
    diagnostics: invitations
      .filter(({ cycle }) => cycle.reveal === undefined)
      .flatMap((data) => invitationFindings(data, spoilersIn(data.cycle.items, language))),
    documents: invitations.flatMap((data) => {
      const { cycle } = data;
      if (cycle.reveal === undefined) return [];
      return [
        plannedDocument(`${cycle.id}/invitation.html`, 'page', data, invitationPage),
        plannedDocument(`${cycle.id}/invitation.ics`, 'page', data, eventFile),
      ];
    }),
  };
};
