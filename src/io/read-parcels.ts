/** Streams a text file into a reader, in chunks, whatever program saved it. */
import { createReadStream } from 'node:fs';
import { TextDecoder } from 'node:util';

/** Bytes read at once: large enough that the disk is not waited for, small enough not to be felt. */
const CHUNK = 262_144;

const stream = async (path: string, decoder: TextDecoder, write: (text: string) => void): Promise<void> => {
  for await (const bytes of createReadStream(path, { highWaterMark: CHUNK }))
    write(decoder.decode(bytes as Buffer, { stream: true }));
  write(decoder.decode());
};

const isUtf16 = async (path: string): Promise<boolean> => {
  for await (const bytes of createReadStream(path, { end: 1 }))
    return (bytes as Buffer)[0] === 0xff && (bytes as Buffer)[1] === 0xfe;
  return false;
};

/**
 * Writes the file's text into a reader made by `begin`, and gives that reader. UTF-8, UTF-16 with a mark, else
 * windows-1252, as `decodeText`; a file that turns out not to be UTF-8 is read again into a new reader.
 */
export const readInto = async <Reader extends { readonly write: (text: string) => void }>(
  path: string,
  begin: () => Reader,
): Promise<Reader> => {
  const utf16 = await isUtf16(path);
  const reader = begin();
  try {
    await stream(path, new TextDecoder(utf16 ? 'utf-16le' : 'utf-8', { fatal: !utf16 }), reader.write);
    return reader;
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    const again = begin();
    await stream(path, new TextDecoder('windows-1252'), again.write);
    return again;
  }
};
