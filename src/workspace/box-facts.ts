/** What box.md says, in the parts that the rest of the workspace asks for. */
import type { ParcelFormat } from '../content/parcels.ts';
import type { Written } from '../content/read.ts';
import type { BoxRecord } from '../content/schemas.ts';
import type { SearchColumns } from '../content/searches.ts';
import type { Diagnostic, Location } from '../diagnostics/diagnostic.ts';
import type { BoxSettings } from '../model/box.ts';
import { type CycleSettings, cycleSettingsOf, linkSettings } from '../model/link-settings.ts';
import type { LinkTargets } from '../model/link-stories.ts';

export interface BoxFacts {
  /** Undefined where box.md is no record. */
  readonly settings: BoxSettings | undefined;
  /** What cycles take from it. */
  readonly forCycles: CycleSettings;
  /** How the columns of searches.csv are called, where it says so. */
  readonly searches: SearchColumns | undefined;
  /** How lists of parcels are written, and where it says so. */
  readonly parcels: { readonly format: ParcelFormat; readonly formatAt: Location | undefined };
  /** IANA zone of dates without one. */
  readonly timeZone: string;
  readonly diagnostics: readonly Diagnostic[];
}

const NOWHERE: LinkTargets = { targets: new Map(), photos: { byPath: new Map(), paths: new Set() } };

/** What cycles take from the box's record: what its own links lead to is no part of it. */
export const forCyclesOf = (record: Written<BoxRecord> | undefined): CycleSettings =>
  cycleSettingsOf(linkSettings(record, NOWHERE).value, record);

/** The facts of box.md. `found` is what reading it reported. */
export const boxFactsOf = (
  record: Written<BoxRecord> | undefined,
  targets: LinkTargets,
  found: readonly Diagnostic[],
): BoxFacts => {
  const { value: settings, diagnostics } = linkSettings(record, targets);
  const value = record?.value;
  return {
    settings,
    forCycles: cycleSettingsOf(settings, record),
    searches: value?.searches && record && { ...value.searches, location: record.locationOf(['searches']) },
    parcels: { format: value?.parcels ?? {}, formatAt: value?.parcels && record?.locationOf(['parcels']) },
    timeZone: value?.timeZone ?? 'UTC',
    diagnostics: [...found, ...diagnostics],
  };
};
