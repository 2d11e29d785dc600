/** Where the list of addresses stands in the content folder: the one file there that a build adds to. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checksum } from './checksum.ts';

/** Its path in the content folder. */
export const ADDRESSES_FILE = 'addresses.csv';

/** `checksumOfAddresses` before and after a build added to the file. */
export interface Added {
  readonly from: string;
  readonly to: string;
}

/** Checksum of the list in a content folder; where there is none, of nothing. */
export const checksumOfAddresses = (content: string): string => {
  try {
    return checksum(readFileSync(join(content, ADDRESSES_FILE)));
  } catch {
    return checksum(new Uint8Array());
  }
};
