/** Content hashes for published names. Pure: the same bytes give the same name on every machine. */
import { createHash } from 'node:crypto';

/** The first ten hexadecimal digits of SHA-256: enough that two of a site's files never share a name. */
export const shortHash = (content: string | Uint8Array): string =>
  createHash('sha256').update(content).digest('hex').slice(0, 10);
