/** Calls that say what is not so, as of a moment. The pages do without them; their owner should know. */

import { type Diagnostic, lookAt } from '../diagnostics/diagnostic.ts';
import { primaryLanguage } from '../text/language-tag.ts';
import { longDate } from '../text/long-date.ts';
import type { Box, Item, Moment, RecordSource } from './box.ts';
import { anySpareOnSale, callFor, sparePast } from './calls.ts';
import { locationIn } from './location-in.ts';

const placesFinding = (box: Box, asOf: Moment): readonly Diagnostic[] => {
  const { calls, call, source } = box.settings;
  const said = call === 'join' || box.cycles.some((cycle) => cycle.call === 'join');
  if (!said || calls.join?.places !== 0) return [];
  const instead = callFor(box, undefined, asOf);
  return [
    lookAt(
      'call-places',
      locationIn(source, 'calls.join.places', 'calls.join', 'calls'),
      `Unexpected call to join with 0 places, expected places left; ${instead ? `pages say “${instead.text}” instead` : 'pages have no call'}`,
      calls.waitList
        ? 'Write `call: waitList`, or the number of places left'
        : 'Add `waitList` with its lines `address` and `text` under `calls` and write `call: waitList`, or write the number of places left',
    ),
  ];
};

const pastFinding = (box: Box, item: Item, asOf: Moment): readonly Diagnostic[] => {
  const { spare, source } = item;
  const { timeZone, lang } = box.settings;
  if (!spare?.until || spare.count === 0 || !sparePast(item, asOf, timeZone)) return [];
  const pieces = spare.count === 1 ? '1 spare piece' : `${spare.count} spare pieces`;
  return [
    lookAt(
      'spare-past',
      locationIn(source, 'spare.until', 'spare'),
      `Unexpected ${pieces} past their last day, ${longDate(spare.until, primaryLanguage(lang) === 'en' ? lang : 'en-GB')}, expected a later day or none left; pages do not offer them`,
      'Write `count: 0`, or a later `until`',
    ),
  ];
};

const spareCallFindings = (box: Box, asOf: Moment): readonly Diagnostic[] => {
  const { settings, cycles } = box;
  const { timeZone } = settings;
  const none = (source: RecordSource, whose: string, instead: string | undefined): Diagnostic =>
    lookAt(
      'call-spare',
      locationIn(source, 'call'),
      `Unexpected call \`spare\` with no spare piece of ${whose} on sale, expected one; pages ${instead ? `say “${instead}” instead` : 'have no call'}`,
      'Write another `call`, or the pieces that are left as `spare` of an item',
    );
  const said = cycles
    .filter((cycle) => cycle.call === 'spare' && !anySpareOnSale([cycle], asOf, timeZone))
    .map((cycle) => none(cycle.source, 'this box', callFor(box, cycle, asOf)?.text));
  const held = callFor(box, undefined, asOf);
  return settings.call === 'spare' && settings.calls.spare && held?.kind !== 'spare'
    ? [none(settings.source, 'any box', held?.text), ...said]
    : said;
};

/** Everything that is impossible in the calls and spare pieces as of a moment. */
export const callFindings = (box: Box, asOf: Moment): readonly Diagnostic[] => [
  ...placesFinding(box, asOf),
  ...spareCallFindings(box, asOf),
  ...box.cycles.flatMap(({ items }) => items.flatMap((item) => pastFinding(box, item, asOf))),
];
