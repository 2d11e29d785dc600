/** A filmed piece as a record names it: "seed-tray.mov 0:04". */
import type { Cycle, Take } from './box.ts';
import { secondsOf } from './link-live.ts';

export const takeOf = (written: string | undefined): Take | undefined => {
  const [, name, from = '0'] = /^(.*?\.\w+)(?: +([\d:]+))?$/.exec(written?.trim() ?? '') ?? [];
  return name === undefined ? undefined : { name, from: secondsOf(from) };
};

/** Whether a file of the content folder is a filmed piece that no record of its cycle names; of the cycles given. */
export const isUnnamedTake = (path: string, cycles: readonly Cycle[]): boolean => {
  const [, id, name] = /^cycles\/([^/]+)\/takes\/([^/]+)$/.exec(path) ?? [];
  const cycle = cycles.find((one) => one.id === id);
  if (!cycle) return false;
  const { items, takes } = cycle;
  return ![takes?.hook, takes?.whole, ...items.map(({ take }) => take)].some((take) => take?.name === name);
};
