/** How records' files are parsed: the way from the edge to the content room. */
export { fileReaderFor, PARSING_VERSION } from '../content/record-file.ts';
