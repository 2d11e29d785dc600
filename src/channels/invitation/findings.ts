/** What is wrong with an invitation before it goes out. */
import { type Diagnostic, type Location, lookAt } from '../../diagnostics/diagnostic.ts';
import { locationIn } from '../../model/location-in.ts';
import { hookOf, type InvitationInput } from './posts.ts';

const named = (names: readonly string[]): string => names.map((name) => `\`${name}\``).join(', ');

/** Words of an address, which can give a thing away as well. */
const addressWords = (address: string): string => {
  try {
    return decodeURIComponent(address).replace(/[^\p{L}\p{N}]+/gu, ' ');
  } catch {
    return address.replace(/[^\p{L}\p{N}]+/gu, ' ');
  }
};

/** An invitation that may be at fault. */
interface Invited extends InvitationInput {
  /** Whether there is somebody to invite still: of a live that is over there is nothing left to mend. */
  readonly sealed: boolean;
  /** Where the peek before stands. */
  readonly peekAt?: Location;
}

/** Findings about an invitation to a live to come; `spoilers` gives the names that stand in a text. */
export const invitationFindings = (
  invited: Invited,
  spoilers: (text: string) => readonly string[],
): readonly Diagnostic[] => {
  const { cycle, sealed, peekAt } = invited;
  if (!sealed) return [];
  const at = (...keys: readonly string[]): Location => locationIn(cycle.source, ...keys);
  const findings: Diagnostic[] = [];
  const hook = hookOf(invited);
  const given = [...new Set(hook.flatMap(spoilers))];
  const own = cycle.invitation?.hook !== undefined;
  if (given.length > 0)
    findings.push(
      lookAt(
        'invitation-spoils',
        own || !peekAt ? at('invitation.hook', 'invitation') : peekAt,
        `Unexpected ${named(given)} before the reveal of ${cycle.id}, expected nothing that its box holds; the sentence is left out of the invitation`,
        own
          ? 'Make people curious without naming the thing'
          : `Write a \`hook\` under \`invitation\` in cycle.md of ${cycle.id}`,
      ),
    );
  if (hook.length === 0)
    findings.push({
      ...lookAt(
        'invitation-hook',
        at('theme'),
        'Unexpected invitation without a word that makes people curious, expected a `hook` under `invitation` or a peek in the cycle before',
        'Add a `hook` under `invitation`, a sentence or two that name nothing in the box',
      ),
      adds: 'invitation.hook',
    });
  const address = cycle.live?.address;
  if (address === undefined)
    findings.push({
      ...lookAt(
        'invitation-address',
        at('live', 'reveal'),
        'Unexpected invitation without an address, expected where the live is seen',
        'Add its `address` under `live`; until then it leads to the site',
      ),
      adds: 'live.address',
    });
  const inAddress = address === undefined ? [] : spoilers(addressWords(address));
  if (inAddress.length > 0)
    findings.push(
      lookAt(
        'invitation-spoils',
        at('live.address'),
        `Unexpected ${named(inAddress)} in the live’s address before the reveal, expected nothing that the box holds`,
        'Give the stream an address without the name',
      ),
    );
  return findings;
};
