/** What is piped in. */
import { utf8Bytes } from '../text/utf8.ts';
import type { InputStream } from './environment.ts';

/** All of it, to its end. */
export const bytesOf = async (source: InputStream): Promise<Uint8Array> => {
  const chunks: Uint8Array[] = [];
  for await (const chunk of source) chunks.push(typeof chunk === 'string' ? utf8Bytes(chunk) : chunk);
  return Buffer.concat(chunks);
};
