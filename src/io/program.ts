/** Which program this is: what another one made of the same content is not this one's. */
import { fileURLToPath } from 'node:url';
import { lazily } from '../text/lazy.ts';
import { listFiles } from './list-files.ts';

/** The digest of all sources, put in place where the program is bundled. */
declare const PROGRAM_DIGEST: string | undefined;

/** Where the program runs uncompiled, its sources may change at any time. */
const ofSources = lazily(() => {
  // Loaded here, because the compiled program knows its digest and shall not wait for it.
  const { createHash } = process.getBuiltinModule('node:crypto');
  const hash = createHash('sha256');
  for (const { path, stamp } of listFiles(fileURLToPath(new URL('..', import.meta.url))))
    hash.update(`${path}\0${stamp}\n`);
  return hash.digest('hex').slice(0, 32);
});

/** 32 hexadecimal digits that are the same for the same program alone. */
export const programDigest = (): string =>
  typeof PROGRAM_DIGEST === 'string' ? PROGRAM_DIGEST : ofSources();
