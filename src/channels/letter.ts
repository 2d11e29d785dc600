/** The letter: a cycle's reveal as an e-mail. */
import type { Channel } from './channel.ts';

export const letterPictures: Channel = {
  name: 'letter pictures',
  where: 'site',
  make: () => ({ outputs: [], diagnostics: [] }),
};

export const letter: Channel = {
  name: 'letter',
  where: 'backroom',
  make: () => ({ outputs: [], diagnostics: [] }),
};
