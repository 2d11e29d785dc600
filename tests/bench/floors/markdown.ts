/** The least that a box of text asks: all its Markdown parsed and rendered in one process. `node … CONTENT OUT` */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import remarkHtml from 'remark-html';
import remarkParse from 'remark-parse';
import { unified } from 'unified';

const [content = '', out = ''] = process.argv.slice(2);

const processor = unified().use(remarkParse).use(remarkHtml).freeze();

const pages = readdirSync(content, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.md'))
  .sort()
  .map((file) => {
    const text = readFileSync(join(content, file), 'utf8').replace(/^---\n[\s\S]*?\n---\n/, '');
    return String(processor.processSync(text));
  });
writeFileSync(out, pages.join('\n'));
