/** Lists of shipments, each read once for the day as of which it is asked. */
import type { ParcelsReader } from '../content/parcels.ts';
import { PARCELS_FILE } from '../content/paths.ts';
import type { Checked } from '../diagnostics/diagnostic.ts';
import { hasContent } from '../io/list-files.ts';
import type { Moment, Parcels } from '../model/box.ts';
import { dateInZone } from '../model/calendar.ts';
import type { ParcelsByCycle } from '../pipeline/parcels.ts';
import { dayOfDate } from '../text/days.ts';
import { digestOf } from '../text/digest.ts';
import { keepData, recallData } from '../text/memory.ts';
import { survivesJson } from '../text/plain-data.ts';
import type { Workspace } from './workspace.ts';

const readerFor = async (
  { snapshot }: Workspace,
  file: string,
  asOf: Moment,
): Promise<() => ParcelsReader> => {
  const { parcelsReader } = await import('../content/parcels.ts');
  const { facts } = snapshot();
  const { timeZone, parcels } = facts;
  const day = dayOfDate(dateInZone(asOf, timeZone));
  return () => parcelsReader({ file, ...parcels, timeZone, asOf: day });
};

/** The lists in the content folder, by cycle, the oldest first, as of a moment in the box's zone. */
export const readLists = async (workspace: Workspace, asOf: Moment): Promise<ParcelsByCycle> => {
  const { facts, files } = workspace.snapshot();
  const { timeZone, parcels } = facts;
  const day = dateInZone(asOf, timeZone);
  const lists = new Map<string, Checked<Parcels | undefined>>();
  for (const file of files.values()) {
    const { path, hash } = file;
    const cycle = PARCELS_FILE.exec(path)?.[1];
    if (cycle === undefined || !hasContent(file)) continue;
    const key = digestOf('parcels', path, hash, parcels, timeZone, day);
    const before = recallData(workspace.memory, key) as Checked<Parcels | undefined> | undefined;
    const list = before ?? (await readListAt(workspace, path, path, asOf));
    if (!before && survivesJson(list)) keepData(workspace.memory, key, list);
    lists.set(cycle, list);
  }
  return lists;
};

/** The list at a path, which may lead out of the content folder, read as box.md describes lists; findings call it `file`. */
export const readListAt = async (
  workspace: Workspace,
  path: string,
  file: string,
  asOf: Moment,
): Promise<Checked<Parcels | undefined>> => {
  const reader = await workspace.folder.streamInto(path, await readerFor(workspace, file, asOf));
  return reader.end();
};
