/** Opens an address in the person's own browser. */
import { spawn } from 'node:child_process';

const OPENERS: Readonly<Partial<Record<NodeJS.Platform, readonly [string, ...string[]]>>> = {
  darwin: ['open'],
  // `start` is no program; its first words in quotes would be a title.
  win32: ['cmd', '/c', 'start', ''],
};

/** Opens it, or does nothing where there is nothing to open it with: the address is printed too. */
export const openAddress = (address: string): void => {
  const [program, ...words] = OPENERS[process.platform] ?? ['xdg-open'];
  const child = spawn(program, [...words, address], { stdio: 'ignore', detached: true });
  child.on('error', () => undefined);
  child.unref();
};
