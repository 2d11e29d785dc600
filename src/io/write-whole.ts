/** Writes a file whole or not at all. */
import { mkdir, rename, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';

/** The text goes to a file beside it first, which then takes its name: no other run reads half of it. */
export const writeWhole = async (file: string, text: string): Promise<void> => {
  await mkdir(dirname(file), { recursive: true });
  await writeFile(`${file}.${process.pid}`, text);
  await rename(`${file}.${process.pid}`, file);
};
