/** Where the list of addresses stands in the content folder: the one file there that a build adds to. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { sha256 } from '../text/hash.ts';

/** Its path in the content folder. */
export const ADDRESSES_FILE = 'addresses.csv';

/** Hashes of the file before and after a build added to it. */
export interface Added {
  readonly from: string;
  readonly to: string;
}

/** Hash of the list in a content folder; where there is none, of nothing. */
export const hashOfAddresses = (content: string): string => {
  try {
    return sha256(readFileSync(join(content, ADDRESSES_FILE)));
  } catch {
    return sha256('');
  }
};
