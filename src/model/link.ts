/** Records → the box: what each names is found, and what does not fit together is reported. */
import type { Records } from '../content/read.ts';
import { readSearches } from '../content/searches.ts';
import type { Sources } from '../content/sources.ts';
import type { Checked } from '../diagnostics/diagnostic.ts';
import { addressFindings } from './address-findings.ts';
import type { Box, Search } from './box.ts';
import { type LinkContext, linkCycle } from './link-cycle.ts';
import { cycleSettingsOf, linkSettings } from './link-settings.ts';
import type { LinkTargets } from './link-stories.ts';
import { photosOf } from './pictures.ts';
import { addressOf, slugFor } from './set-findings.ts';
import type { Target } from './story.ts';
import type { SayTitle } from './title.ts';

/** Every record's file → what a link to it means; records at fault are among them, because they will be mended. */
export const targetsOf = (cycles: Records['cycles']): ReadonlyMap<string, Target> =>
  new Map(
    cycles.flatMap(({ id, items }): (readonly [string, Target])[] => [
      [`cycles/${id}/cycle.md`, { cycle: id }],
      ...items.map((item): readonly [string, Target] => [item.file, { cycle: id, item: slugFor(item) }]),
    ]),
  );

/** What people typed, as searches.csv has it, its columns named as box.md says. */
const linkSearches = ({ box }: Pick<Records, 'box'>, texts: Sources['texts']): Checked<readonly Search[]> => {
  const named = box?.value?.searches;
  return readSearches(
    texts.find(({ path }) => path === 'searches.csv'),
    box && named && { ...named, location: box.locationOf(['searches']) },
  );
};

/** The box, or undefined where box.md is no record; findings of every cycle either way. */
export const linkBox = (records: Records, sources: Sources, sayTitle: SayTitle): Checked<Box | undefined> => {
  const targets: LinkTargets = { targets: targetsOf(records.cycles), photos: photosOf(sources) };
  const settings = linkSettings(records.box, targets);
  const context: LinkContext = {
    ...targets,
    settings: cycleSettingsOf(settings.value, records.box),
    sayTitle,
  };
  const between = addressFindings(
    records.cycles.flatMap(({ id, cycle }) =>
      cycle?.value
        ? [{ address: addressOf(id, cycle.value), location: () => cycle.locationOf(['address']) }]
        : [],
    ),
  );
  const cycles = records.cycles.map((written) => linkCycle(written, context));
  const searches = linkSearches(records, sources.texts);
  return {
    value: settings.value && {
      settings: settings.value,
      cycles: cycles.flatMap(({ value }) => value ?? []),
      searches: searches.value,
    },
    diagnostics: [
      ...settings.diagnostics,
      ...between,
      ...cycles.flatMap(({ diagnostics }) => diagnostics),
      ...searches.diagnostics,
    ],
  };
};
