/** What is wrong with a live before it is held. */
import { type Diagnostic, type Location, lookAt } from '../../diagnostics/diagnostic.ts';
import type { Beat, Live } from '../../model/beats.ts';
import type { Cycle } from '../../model/box.ts';
import { HOOK_SECONDS } from '../../model/cues.ts';
import { locationIn } from '../../model/location-in.ts';
import { clockText } from '../../model/speaking.ts';

/** Seconds to the tenth, so that 15.2 is not called 15. */
const tenths = (seconds: number): string => String(Math.ceil(seconds * 10) / 10);

const silentFix = ({ kind, field, name }: Beat): string => {
  if (kind === 'peek') return 'Add a `text` under `peek`, or a `peek` under `live`';
  if (kind === 'call') return 'Add the call to box.md, or a `call` under `live`';
  if (kind === 'item') return `Tell its story in its file, or add \`${name}\` under \`items\` under \`live\``;
  return `Add \`${field.replace('live.', '')}\` under \`live\` in cycle.md`;
};

/** Findings about the live of a cycle that is to come, or whose record speaks of it; of the others it is over. */
export const liveFindings = (
  live: Live,
  { cycle, sealed }: { readonly cycle: Cycle; readonly sealed: boolean },
  beatTitle: (beat: Beat) => string,
): readonly Diagnostic[] => {
  if (!cycle.live && !sealed) return [];
  const locationOf = (...keys: readonly string[]): Location => locationIn(cycle.source, ...keys);
  const findings: Diagnostic[] = [];
  const report = (...found: Parameters<typeof lookAt>): void => void findings.push(lookAt(...found));
  for (const beat of live.beats) {
    if (beat.kind === 'hook' && beat.speaking > HOOK_SECONDS)
      report(
        'live-hook',
        beat.from ?? locationOf('live', 'theme'),
        `Unexpected hook of ${tenths(beat.speaking)} seconds, expected at most ${HOOK_SECONDS}`,
        'Write a shorter one as `hook` under `live` in cycle.md: people decide in that time whether they stay',
      );
    if (beat.kind !== 'stage' && beat.say.join('').trim() === '')
      report(
        'live-silent',
        beat.from ?? locationOf(beat.field, 'live', 'theme'),
        `Unexpected silence at the beat “${beatTitle(beat)}”, expected something to say`,
        silentFix(beat),
      );
  }
  if (live.wanted !== undefined && live.needed > live.wanted)
    report(
      'live-long',
      locationOf('live.minutes', 'replay.minutes', 'theme'),
      `Unexpected length of ${clockText(live.needed)} for words and handling, expected at most ${clockText(live.wanted)}`,
      'Say less in the longest beats, or put `minutes` up',
    );
  return findings;
};
