/**
 * Films as files: what an encoder gave is read out of its own file, piece by piece, and put together as one with a silent
 * sound track, everything that a player asks for first in front (ISO/IEC 14496-12 and -14, 14496-15 for H.264).
 */
import { underOneSetting } from './parameter-sets.ts';

/** A stretch of encoded pictures that begins with one that stands for itself. */
export interface Piece {
  /** What a decoder has to know first: the content of `avcC`. */
  readonly settings: Uint8Array;
  /** Each picture, coded. */
  readonly pictures: readonly Uint8Array[];
}

interface Box {
  readonly type: string;
  readonly from: number;
  readonly to: number;
}

const view = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

const boxesIn = (bytes: Uint8Array, from: number, to: number): Box[] => {
  const found: Box[] = [];
  const look = view(bytes);
  for (let at = from; at + 8 <= to; ) {
    const size = look.getUint32(at);
    const type = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    const isLarge = size === 1;
    const length = isLarge ? Number(look.getBigUint64(at + 8)) : size === 0 ? to - at : size;
    if (length < 8) break;
    found.push({ type, from: at + (isLarge ? 16 : 8), to: Math.min(to, at + length) });
    at += length;
  }
  return found;
};

/** The first box at the end of a way of types. */
const boxAt = (bytes: Uint8Array, way: readonly string[]): Box => {
  let box: Box = { type: '', from: 0, to: bytes.length };
  for (const type of way) {
    const next = boxesIn(bytes, box.from, box.to).find((one) => one.type === type);
    if (!next) throw new Error(`Expected a box ${type} in an encoded piece`);
    box = next;
  }
  return box;
};

const TABLES = ['moov', 'trak', 'mdia', 'minf', 'stbl'];
/** Bytes of `stsd` before its first entry, and of a visual sample entry before its boxes. */
const BEFORE_ENTRY = 8;
const BEFORE_BOXES = 78;

/** The pictures of a file with one track. */
export const piecesIn = (file: Uint8Array): Piece => {
  const look = view(file);
  const table = (type: string): Box => boxAt(file, [...TABLES, type]);
  const [entry] = boxesIn(file, table('stsd').from + BEFORE_ENTRY, table('stsd').to);
  const settings =
    entry && boxesIn(file, entry.from + BEFORE_BOXES, entry.to).find(({ type }) => type === 'avcC');
  if (!settings) throw new Error('Expected avcC in an encoded piece');

  const sizes = table('stsz').from;
  const same = look.getUint32(sizes + 4);
  const count = look.getUint32(sizes + 8);
  const sizeOf = (i: number): number => (same === 0 ? look.getUint32(sizes + 12 + i * 4) : same);

  const tables = boxAt(file, TABLES);
  const large = boxesIn(file, tables.from, tables.to).find(({ type }) => type === 'co64');
  const offsets = (large ?? table('stco')).from;
  const chunks = look.getUint32(offsets + 4);
  const offsetOf = (i: number): number =>
    large ? Number(look.getBigUint64(offsets + 8 + i * 8)) : look.getUint32(offsets + 8 + i * 4);

  const runs = table('stsc').from;
  const runCount = look.getUint32(runs + 4);
  const pictures: Uint8Array[] = [];
  for (let run = 0; run < runCount; run += 1) {
    const at = runs + 8 + run * 12;
    const first = look.getUint32(at) - 1;
    const end = run + 1 < runCount ? look.getUint32(at + 12) - 1 : chunks;
    for (let chunk = first; chunk < end; chunk += 1) {
      let place = offsetOf(chunk);
      for (let i = look.getUint32(at + 4); i > 0 && pictures.length < count; i -= 1) {
        const size = sizeOf(pictures.length);
        pictures.push(file.slice(place, place + size));
        place += size;
      }
    }
  }
  return { settings: file.slice(settings.from, settings.to), pictures };
};

const bytesOf = (...parts: readonly (number | string | Uint8Array)[]): Uint8Array => {
  const all = parts.map((part) =>
    typeof part === 'number' ? u32(part) : typeof part === 'string' ? Buffer.from(part, 'latin1') : part,
  );
  return Buffer.concat(all);
};
const u32 = (value: number): Uint8Array => {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32BE(value >>> 0);
  return bytes;
};
const u16 = (...values: readonly number[]): Uint8Array => {
  const bytes = Buffer.alloc(values.length * 2);
  values.forEach((value, i) => {
    bytes.writeUInt16BE(value, i * 2);
  });
  return bytes;
};
const u8 = (...values: readonly number[]): Uint8Array => Uint8Array.from(values);
const zeros = (count: number): Uint8Array => new Uint8Array(count);

const box = (type: string, ...parts: readonly (number | string | Uint8Array)[]): Uint8Array => {
  const content = bytesOf(...parts);
  return bytesOf(content.length + 8, type, content);
};
const fullBox = (type: string, flags: number, ...parts: readonly (number | string | Uint8Array)[]) =>
  box(type, flags, ...parts);

/** Ticks of the whole film a second. */
const FILM_CLOCK = 1000;
/** Samples of sound a second, and in each frame of it: AAC-LC, ISO/IEC 14496-3. */
const SOUND_CLOCK = 48_000;
const SOUND_FRAME = 1024;

/**
 * A frame of AAC-LC in which one channel is silent: a single channel element without a single scale factor band, and the
 * end (ISO/IEC 14496-3, 4.4.2.1). It is what encoders write for silence.
 */
const SILENCE = u8(0x01, 0x18, 0x20, 0x07);

/** ISO/IEC 14496-3, 1.6.2.1: AAC-LC (2), 48 kHz (index 3), one channel (1). */
const SOUND_SETTINGS = u8(0x11, 0x88);

/** A picture that is neither turned nor scaled. */
const MATRIX = bytesOf(0x10000, 0, 0, 0, 0x10000, 0, 0, 0, 0x40000000);

interface Track {
  readonly id: number;
  readonly clock: number;
  /** In ticks of its clock. */
  readonly duration: number;
  readonly handler: 'vide' | 'soun';
  readonly width: number;
  readonly height: number;
  readonly header: Uint8Array;
  readonly entry: Uint8Array;
  /** How many samples each take so many ticks. */
  readonly times: readonly (readonly [count: number, ticks: number])[];
  readonly sizes: readonly number[];
  /** Samples that stand for themselves, from 1; absent where all do. */
  readonly keys?: readonly number[];
  readonly chunks: readonly { readonly samples: number; readonly at: number }[];
}

const seconds = ({ duration, clock }: Pick<Track, 'duration' | 'clock'>): number =>
  Math.round((duration * FILM_CLOCK) / clock);

const trak = (track: Track): Uint8Array => {
  const { id, handler, width, height, chunks, keys, sizes, times } = track;
  const isSound = handler === 'soun';
  const stbl = box(
    'stbl',
    fullBox('stsd', 0, 1, track.entry),
    fullBox('stts', 0, times.length, ...times.flat()),
    ...(keys ? [fullBox('stss', 0, keys.length, ...keys)] : []),
    fullBox('stsc', 0, chunks.length, ...chunks.flatMap(({ samples }, i) => [i + 1, samples, 1])),
    fullBox('stsz', 0, 0, sizes.length, ...sizes),
    fullBox('stco', 0, chunks.length, ...chunks.map(({ at }) => at)),
  );
  const dinf = box('dinf', fullBox('dref', 0, 1, fullBox('url ', 1)));
  return box(
    'trak',
    // Flags: enabled, in the movie.
    fullBox(
      'tkhd',
      3,
      0,
      0,
      id,
      0,
      seconds(track),
      zeros(8),
      u16(0, 0, isSound ? 0x100 : 0, 0),
      MATRIX,
      width << 16,
      height << 16,
    ),
    box(
      'mdia',
      // 0x55c4: language undetermined.
      fullBox('mdhd', 0, 0, 0, track.clock, track.duration, u16(0x55c4, 0)),
      fullBox('hdlr', 0, 0, handler, zeros(12), u8(0)),
      box('minf', track.header, dinf, stbl),
    ),
  );
};

const videoEntry = (settings: Uint8Array, width: number, height: number): Uint8Array =>
  box(
    'avc1',
    zeros(6),
    u16(1),
    zeros(16),
    u16(width, height),
    0x480000,
    0x480000,
    0,
    u16(1),
    zeros(32),
    u16(24, 0xffff),
    box('avcC', settings),
    // BT.709 in the limited range, as the frames are made; ISO/IEC 23091-2.
    box('colr', 'nclx', u16(1, 1, 1), u8(0)),
    box('pasp', 1, 1),
  );

const soundEntry = (): Uint8Array => {
  // ISO/IEC 14496-1, 7.2.6: descriptors of the stream, its decoder (AAC, audio), its settings and its layer.
  const specific = bytesOf(u8(0x05, SOUND_SETTINGS.length), SOUND_SETTINGS);
  const decoder = bytesOf(u8(0x04, 13 + specific.length, 0x40, 0x15, 0, 0, 0), 1500, 1500, specific);
  const stream = bytesOf(u8(0x03, 3 + decoder.length + 3), u16(2), u8(0), decoder, u8(0x06, 1, 2));
  return box(
    'mp4a',
    zeros(6),
    u16(1),
    zeros(8),
    u16(1, 16, 0, 0),
    SOUND_CLOCK * 65_536,
    fullBox('esds', 0, stream),
  );
};

/** One film of pieces in order, `rate` pictures a second. Throws where they differ in more than their fineness. */
export const filmFile = (
  given: readonly Piece[],
  { width, height, rate }: { readonly width: number; readonly height: number; readonly rate: number },
): Uint8Array => {
  const pieces = underOneSetting(given);
  const [first] = pieces;
  if (!first) throw new Error('Expected a film to have pictures');
  const pictures = pieces.flatMap((piece) => piece.pictures);
  const keys: number[] = [];
  let counted = 1;
  for (const piece of pieces) {
    keys.push(counted);
    counted += piece.pictures.length;
  }
  const soundLength = Math.round((pictures.length * SOUND_CLOCK) / rate);
  const soundFrames = Math.ceil(soundLength / SOUND_FRAME);
  const lastFrame = soundLength - (soundFrames - 1) * SOUND_FRAME;

  // A second of pictures, then its sound, so that a player that has read a second can show it.
  const chunks: { readonly pictures: number; readonly frames: number }[] = [];
  for (let shown = 0, heard = 0; shown < pictures.length; ) {
    const some = Math.min(rate, pictures.length - shown);
    shown += some;
    const until =
      shown === pictures.length
        ? soundFrames
        : Math.min(soundFrames, Math.round((shown * SOUND_CLOCK) / rate / SOUND_FRAME));
    chunks.push({ pictures: some, frames: until - heard });
    heard = until;
  }

  const ftyp = box('ftyp', 'isom', 0x200, 'isom', 'iso2', 'avc1', 'mp41');
  const moovAt = (start: number): Uint8Array => {
    let at = start;
    let index = 0;
    const video: Track['chunks'][number][] = [];
    const sound: Track['chunks'][number][] = [];
    for (const chunk of chunks) {
      video.push({ samples: chunk.pictures, at });
      for (let i = 0; i < chunk.pictures; i += 1) at += pictures[index++]?.length ?? 0;
      if (chunk.frames === 0) continue;
      sound.push({ samples: chunk.frames, at });
      at += chunk.frames * SILENCE.length;
    }
    const seen: Track = {
      id: 1,
      clock: rate * 512,
      duration: pictures.length * 512,
      handler: 'vide',
      width,
      height,
      header: fullBox('vmhd', 1, zeros(8)),
      entry: videoEntry(first.settings, width, height),
      times: [[pictures.length, 512]],
      sizes: pictures.map(({ length }) => length),
      keys,
      chunks: video,
    };
    const heard: Track = {
      id: 2,
      clock: SOUND_CLOCK,
      duration: soundLength,
      handler: 'soun',
      width: 0,
      height: 0,
      header: fullBox('smhd', 0, 0),
      entry: soundEntry(),
      times: [...(soundFrames > 1 ? [[soundFrames - 1, SOUND_FRAME] as const] : []), [1, lastFrame] as const],
      sizes: new Array(soundFrames).fill(SILENCE.length),
      chunks: sound,
    };
    return box(
      'moov',
      fullBox(
        'mvhd',
        0,
        0,
        0,
        FILM_CLOCK,
        seconds(seen),
        0x10000,
        u16(0x100, 0),
        zeros(8),
        MATRIX,
        zeros(24),
        3,
      ),
      trak(seen),
      trak(heard),
    );
  };
  const start = ftyp.length + moovAt(0).length + 8;
  const parts: Uint8Array[] = [];
  let index = 0;
  for (const chunk of chunks) {
    parts.push(...pictures.slice(index, index + chunk.pictures));
    index += chunk.pictures;
    for (let i = 0; i < chunk.frames; i += 1) parts.push(SILENCE);
  }
  const length = parts.reduce((sum, part) => sum + part.length, 0);
  return Buffer.concat([ftyp, moovAt(start), bytesOf(length + 8, 'mdat'), ...parts]);
};
