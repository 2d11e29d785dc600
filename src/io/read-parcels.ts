/** Streams a text file into a reader, in chunks, whatever program saved it. */
import { createReadStream } from 'node:fs';
import { type Decoder, decoderOf, encodingAtBeginning, SAMPLE } from './decode-text.ts';

/** Bytes read at once: large enough that the disk is not waited for, small enough not to be felt. */
const CHUNK = 262_144;

const beginningOf = async (path: string): Promise<Uint8Array> => {
  const chunks: Uint8Array[] = [];
  for await (const bytes of createReadStream(path, { end: SAMPLE - 1 })) chunks.push(bytes as Buffer);
  return Buffer.concat(chunks);
};

/**
 * Writes the file's text into a reader made by `begin`, and gives that reader. Encodings as `decodeText`; a file that
 * turns out not to be UTF-8 is read again into a new reader. `chunk` is how many bytes are read at once.
 */
export const readInto = async <Reader extends { readonly write: (text: string) => void }>(
  path: string,
  begin: () => Reader,
  chunk = CHUNK,
): Promise<Reader> => {
  const stream = async (decoder: Decoder): Promise<Reader> => {
    const reader = begin();
    for await (const bytes of createReadStream(path, { highWaterMark: chunk }))
      reader.write(decoder.decode(bytes as Buffer, { stream: true }));
    reader.write(decoder.decode());
    return reader;
  };
  const sure = encodingAtBeginning(await beginningOf(path));
  if (sure) return stream(decoderOf(sure));
  try {
    return await stream(decoderOf('utf-8', true));
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    return stream(decoderOf('windows-1252'));
  }
};
