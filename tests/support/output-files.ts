/** A channel's files by path, without its pictures. */
import type { Output } from './carried-out.ts';

/** The content of each file, in the order they were made. */
export const outputFiles = (outputs: readonly Output[]): ReadonlyMap<string, string | Uint8Array> =>
  new Map(
    outputs.flatMap((output): readonly (readonly [string, string | Uint8Array])[] => {
      if ('text' in output) return [[output.path, output.text]];
      return 'bytes' in output ? [[output.path, output.bytes]] : [];
    }),
  );
