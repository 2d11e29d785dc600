/** The least that an article asks: its Markdown files parsed and rendered, and nothing else. `node … CYCLE OUT` */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import matter from 'gray-matter';
import { gfmFootnoteFromMarkdown } from 'mdast-util-gfm-footnote';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmFootnote } from 'micromark-extension-gfm-footnote';
import { gfmTable } from 'micromark-extension-gfm-table';
import remarkDirective from 'remark-directive';
import remarkHtml from 'remark-html';
import remarkParse from 'remark-parse';
import { type Processor, unified } from 'unified';

const [cycle = '', out = ''] = process.argv.slice(2);

function gfmTablesAndFootnotes(this: Processor): void {
  const data = this.data();
  data.micromarkExtensions = [...(data.micromarkExtensions ?? []), gfmTable(), gfmFootnote()];
  data.fromMarkdownExtensions = [
    ...(data.fromMarkdownExtensions ?? []),
    gfmTableFromMarkdown(),
    gfmFootnoteFromMarkdown(),
  ];
}

const processor = unified()
  .use(remarkParse)
  .use(gfmTablesAndFootnotes)
  .use(remarkDirective)
  .use(remarkHtml)
  .freeze();

const items = readdirSync(join(cycle, 'items')).sort();
const html = ['cycle.md', ...items.map((item) => join('items', item))]
  .map((file) => {
    const { content, data } = matter(readFileSync(join(cycle, file), 'utf8'), {});
    return `<h2>${String(data.name ?? data.theme)}</h2>\n${String(processor.processSync(content))}`;
  })
  .join('\n');
writeFileSync(out, html);
