/** What cycle.md says of the live, before it and after it, as the box has it; names and times that do not fit are reported. */
import type { Written } from '../content/read.ts';
import type { CycleRecord } from '../content/schemas.ts';
import type { ReportFinding } from '../diagnostics/diagnostic.ts';
import { nearest } from '../diagnostics/nearest.ts';
import { defined } from '../text/defined.ts';
import { NAMED_KINDS, namedKind } from './beat-names.ts';
import type { Item, LiveWords, Moment, Replay, ReplayBeat } from './box.ts';
import { momentOf } from './calendar.ts';

type Slugged = Pick<Item, 'slug'>;

/** "4:10" or "1:02:30" as seconds; digits alone are seconds. */
export const secondsOf = (time: string): number =>
  time.split(':').reduce((sum, part) => sum * 60 + Number(part), 0);

const perhaps = (meant: string | undefined): string => (meant ? `, perhaps \`${meant}\`` : '');

/** The words for the live; items that the cycle does not hold are reported and left out. */
export const liveWordsOf = (
  record: Written<CycleRecord>,
  { live }: CycleRecord,
  items: readonly Slugged[],
  report: ReportFinding,
): LiveWords | undefined => {
  if (!live) return undefined;
  const slugs = items.map(({ slug }) => slug);
  const named = Object.entries(live.items ?? {}).filter(([slug]) => {
    if (slugs.includes(slug)) return true;
    report({
      weight: 'must fix',
      rule: 'live-item',
      location: record.locationOf(['live', 'items', slug]),
      message: `Unexpected item \`${slug}\`, expected one of ${slugs.join(', ')}${perhaps(nearest(slug, slugs))}`,
      fix: 'Name the item by its file’s name without the number',
    });
    return false;
  });
  return defined({ ...live, items: live.items && Object.fromEntries(named) });
};

const beatsOf = (
  record: Written<CycleRecord>,
  replay: NonNullable<CycleRecord['replay']>,
  items: readonly Slugged[],
  report: ReportFinding,
): readonly ReplayBeat[] => {
  const names = [...NAMED_KINDS, ...items.map(({ slug }) => slug)];
  const beats: ReplayBeat[] = [];
  for (const [name, time] of Object.entries(replay.beats ?? {})) {
    const location = record.locationOf(['replay', 'beats', name]);
    const at = secondsOf(time);
    const before = beats.at(-1);
    if (!namedKind(name) && !names.includes(name)) {
      report({
        weight: 'must fix',
        rule: 'replay-beat',
        location,
        message: `Unexpected beat \`${name}\`, expected one of ${names.join(', ')}${perhaps(nearest(name, names))}`,
        fix: 'Write the name that stands beside the beat on the run sheet',
      });
    } else if (before && at <= before.at) {
      report({
        weight: 'must fix',
        rule: 'replay-order',
        location,
        message: `Unexpected time \`${time}\` of \`${name}\`, expected one after that of \`${before.name}\``,
        fix: 'Write the beats in the order in which they came, each with its own time',
      });
    } else if (replay.minutes !== undefined && at >= (replay.minutes + 1) * 60) {
      // Minutes are whole, and may have been rounded down.
      report({
        weight: 'must fix',
        rule: 'replay-end',
        location,
        message: `Unexpected time \`${time}\` of \`${name}\`, expected one within the ${replay.minutes} minutes of the recording`,
        fix: 'Put the time or `minutes` right',
      });
    } else beats.push({ name, at });
  }
  return beats;
};

/** The recording; beats of unknown name, out of order or past its end are reported and left out. */
export const replayOf = (
  record: Written<CycleRecord>,
  { replay }: CycleRecord,
  items: readonly Slugged[],
  report: ReportFinding,
): Replay | undefined => {
  if (!replay) return undefined;
  const { beats, ...rest } = replay;
  return defined({ ...rest, beats: beats && beatsOf(record, replay, items, report) });
};

/** The moments of the reveal before it was moved; the one that holds now is none of them. */
export const movedOf = (
  record: Written<CycleRecord>,
  moved: readonly string[],
  timeZone: string,
  report: ReportFinding,
): readonly Moment[] => {
  const moments = moved.flatMap((text) => momentOf(text, timeZone) ?? []);
  const reveal = typeof record.value?.reveal === 'string' && momentOf(record.value.reveal, timeZone);
  if (reveal && moments.at(-1) === reveal)
    report({
      weight: 'must fix',
      rule: 'reveal-moved',
      location: record.locationOf(['moved', moved.length - 1]),
      message: `Unexpected \`${moved.at(-1)}\`, expected a moment before it was moved, not the reveal itself`,
      fix: 'Move `reveal`, and leave the old moment here',
    });
  return moments;
};
