/** Which program this is: what another one made of the same content is not this one's. */
import { fileURLToPath } from 'node:url';
import { digestOf } from '../text/digest.ts';
import { lazily } from '../text/lazy.ts';
import { listFiles } from './list-files.ts';

/** The digest of all sources, put in place where the program is bundled. */
declare const PROGRAM_DIGEST: string | undefined;

/** Where the program runs uncompiled, its sources may change at any time. */
const ofSources = lazily(() =>
  digestOf(listFiles(fileURLToPath(new URL('..', import.meta.url))).map(({ path, stamp }) => [path, stamp])),
);

/** 32 hexadecimal digits that are the same for the same program alone. */
export const programDigest = (): string =>
  typeof PROGRAM_DIGEST === 'string' ? PROGRAM_DIGEST : ofSources();
