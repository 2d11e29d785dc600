/** What search engines are told in words of our own. */
export const structuredData = {
  /** The catalogue's step in the way from the first page down. */
  catalogue: 'Catalogue',
};
