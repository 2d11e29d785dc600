import { parseFile } from '../../src/content/front-matter.ts';
import { type FileReader, frontMatterOf } from '../../src/content/record-file.ts';

/** A reader that parses each file it is asked for and remembers none. */
export const readFrontMatter: FileReader = (source) => frontMatterOf(source, parseFile(source));
