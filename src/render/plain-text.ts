/** Running text for what is read without markup. */

const PARAGRAPH_WIDTH = 72;

/**
 * Text in lines of at most 72 characters, each begun with `indent`; a word that is longer, such as an address, has a
 * line to itself. 72 is common practice: a reply adds its marks and still fits 80.
 */
export const wrapped = (text: string, indent = ''): string => {
  const lines: string[] = [];
  let line = '';
  // No-break spaces stay where they are.
  for (const word of text.split(/[ \t\r\n]+/).filter(Boolean)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && [...indent, ...longer].length > PARAGRAPH_WIDTH) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  if (line !== '') lines.push(line);
  return lines.map((one) => indent + one).join('\n');
};
