/** One desk for a content folder: the one that is open says where it is. */
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { codeOf } from '../text/error-code.ts';

/** A desk that is open. */
export interface OpenDesk {
  readonly pid: number;
  readonly address: string;
}

const lives = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return codeOf(error) === 'EPERM';
  }
};

/** The desk that a file names, where it is still open. */
export const deskThatIsOpen = (file: string): OpenDesk | undefined => {
  try {
    const { pid, address }: Partial<OpenDesk> = JSON.parse(readFileSync(file, 'utf8'));
    if (typeof pid !== 'number' || typeof address !== 'string' || !/^http:\/\/[\w.:]+\//.test(address))
      return undefined;
    return pid !== process.pid && lives(pid) ? { pid, address } : undefined;
  } catch {
    return undefined;
  }
};

/** Says in a file that this process has the desk open; what it gives back takes that away. */
export const sayDeskIsOpen = (file: string, address: string): (() => void) => {
  try {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, JSON.stringify({ pid: process.pid, address }), { mode: 0o600 });
  } catch {
    // Where nothing can be written, nothing can be saved either, and two desks do no harm.
  }
  return () => rmSync(file, { force: true });
};
