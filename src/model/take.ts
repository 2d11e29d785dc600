/** A filmed piece as a record names it: "seed-tray.mov 0:04". */
import type { Take } from './box.ts';
import { secondsOf } from './link-live.ts';

export const takeOf = (written: string | undefined): Take | undefined => {
  const [, name, from = '0'] = /^(.*?\.\w+)(?: +([\d:]+))?$/.exec(written?.trim() ?? '') ?? [];
  return name === undefined ? undefined : { name, from: secondsOf(from) };
};
