/** What every working paper of the back room begins with. */
export const backRoomPage = {
  home: (name: string) => `Back room of ${name}`,
  isPrivate: 'Private: this folder is never published.',
  /** The title of the window. */
  windowTitle: (heading: string, theme: string, name: string) => `${heading}, ${theme} · ${name}`,
};
