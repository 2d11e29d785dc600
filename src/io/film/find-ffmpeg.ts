/** Where the machine has an encoder. */
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The program's path; undefined where there is none. `path` is the search path, as the environment has it. */
export const findFfmpeg = (path: string | undefined): string | undefined => {
  const names = process.platform === 'win32' ? ['ffmpeg.exe'] : ['ffmpeg'];
  for (const folder of (path ?? '').split(delimiter).filter((one) => one !== ''))
    for (const name of names) {
      const file = join(folder, name);
      try {
        accessSync(file, constants.X_OK);
        if (statSync(file).isFile()) return file;
      } catch {
        // Not here.
      }
    }
  return undefined;
};
