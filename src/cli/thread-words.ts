/** The words after the program's name that begin its threads; whoever types one is told that there is no such command. */
export const FILM_THREAD = 'film thread';
export const PICTURES_THREAD = 'pictures thread';
