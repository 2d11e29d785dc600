/** The word after the program's name that begins its thread for a film; whoever types it is told that there is no such command. */
export const FILM_THREAD = 'film thread';
