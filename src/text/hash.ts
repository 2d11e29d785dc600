/** Hashes of content. Pure: the same bytes give the same name on every machine. */
import { createHash } from 'node:crypto';

/** SHA-256, FIPS 180-4, as 64 hexadecimal digits. */
export const sha256 = (content: string | Uint8Array): string =>
  createHash('sha256').update(content).digest('hex');

/** The first ten hexadecimal digits of SHA-256: enough that two of a site's files never share a name. */
export const shortHash = (content: string | Uint8Array): string => sha256(content).slice(0, 10);

/** SHA-256 in base64, as a Content-Security-Policy names a script (CSP 3, 2.3.1). */
export const sha256Base64 = (content: string | Uint8Array): string =>
  createHash('sha256').update(content).digest('base64');
