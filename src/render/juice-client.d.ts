/** The part of juice that reads no disk, which comes without types. */
declare module 'juice/client.js' {
  const juice: {
    /** `html` with the rules of `css` on the elements they match; style elements of its own stay as they are. */
    inlineContent(html: string, css: string): string;
  };
  // biome-ignore lint/style/noDefaultExport: the package has one
  export default juice;
}
