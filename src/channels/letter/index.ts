/**
 * The letter: a cycle's reveal as an e-mail, in the back room, for the owner's sending service to send. Its pictures
 * are in the site, because a reader's program fetches them; a public channel makes them, which knows no sealed cycle.
 */
import type { PlanningChannel } from '../channel.ts';
import { planLetterPictures, planLetters } from './plan.ts';

/** Four files for each cycle of a box that makes the letter. */
export const letter: PlanningChannel<'backroom'> = { name: 'letter', where: 'backroom', plan: planLetters };

/** The files of pictures that letters of unsealed cycles name. */
export const letterPictures: PlanningChannel<'site'> = {
  name: 'letter pictures',
  where: 'site',
  plan: planLetterPictures,
};
