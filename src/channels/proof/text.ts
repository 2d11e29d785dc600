/** The article's text with every mention underlined, and the advice in its margin. */
import type { Passage, PassageForm } from '../../analysis/coverage/text/passage.ts';
import { type Highlight, highlightedText } from '../../render/highlights.ts';
import type { Html } from '../../render/html.ts';
import { anchors, linesOf, passageAt, type Sheet, shortFile, WEAK } from './sheet.ts';

/** A passage as it is shown. */
export interface PassageView {
  readonly id: string;
  readonly form: PassageForm;
  /** The file and lines it was written in. */
  readonly where: string;
  /** What it is, where its setting does not show that. */
  readonly label: string;
  readonly text: Html;
  readonly edits: readonly { readonly number: number; readonly href: string; readonly words: string }[];
}

/** What is said in each passage, by the passage's index. */
const highlightsByPassage = ({ coverage, page, words }: Sheet): ReadonlyMap<number, readonly Highlight[]> => {
  const said = new Map<number, Highlight[]>();
  for (const { number, phrases } of coverage.items)
    phrases.forEach(({ mentions }, p) => {
      mentions.forEach((mention, m) => {
        const passage = coverage.passages[mention.passage];
        const [from, to] = [passage?.words[mention.from], passage?.words[mention.to]];
        if (!from || !to) throw new Error(`Expected the words of a mention in passage ${mention.passage}`);
        const { grade, within, zone, at } = mention;
        const one: Highlight = {
          start: from.start,
          end: to.end,
          item: number,
          anchor: anchors.mention(number, p + 1, m + 1),
          weak: WEAK.includes(grade),
          words: page.text.mention(
            grade,
            within,
            words.zones[zone],
            shortFile(at.file, coverage.cycle),
            at.line,
          ),
        };
        said.set(mention.passage, [...(said.get(mention.passage) ?? []), one]);
      });
    });
  return said;
};

/** Where the opening ends inside a passage: an offset, or none. */
const endOfOpening = ({ words }: Passage): number | undefined => {
  const after = words.findIndex(({ zone }, i) => zone !== 'opening' && words[i - 1]?.zone === 'opening');
  return words[after]?.start;
};

/** Forms that are read, and so are set as the article sets them; the others are shown letter for letter. */
const READ: readonly PassageForm[] = ['title', 'heading', 'paragraph', 'caption', 'picture'];

const passageHtml = (passage: Passage, said: readonly Highlight[], { coverage, page }: Sheet): Html => {
  const at = endOfOpening(passage);
  return highlightedText(passage.text, said, {
    lang: coverage.lang,
    asIs: !READ.includes(passage.form),
    ...(at !== undefined && { border: { at, words: page.text.openingEnds } }),
  });
};

const labelOf = ({ form, words: [first] }: Passage, { page, words }: Sheet): string => {
  const zone = first?.zone;
  if (form !== 'caption' && zone !== undefined && zone !== 'body' && zone !== 'section')
    return words.zones[zone];
  return page.text.forms[form] ?? '';
};

/** Every passage, in the order it is read. */
export const textView = (sheet: Sheet): readonly PassageView[] => {
  const { coverage, words } = sheet;
  const said = highlightsByPassage(sheet);
  const placed = coverage.advice.map((edit) => passageAt(coverage, edit.at, edit.zone));
  const labels = coverage.passages.map((passage) => labelOf(passage, sheet));
  return coverage.passages.map((passage, index) => {
    const { first, last } = linesOf(passage);
    const lines = last > first ? `${first}–${last}` : first;
    const label = labels[index] ?? '';
    return {
      id: anchors.passage(index),
      form: passage.form,
      where: last < 0 ? '' : `${shortFile(passage.file, coverage.cycle)}:${lines}`,
      // Said once for a run of the same: twenty values of structured data need no twenty labels.
      label: label === labels[index - 1] ? '' : label,
      text: passageHtml(passage, said.get(index) ?? [], sheet),
      edits: coverage.advice.flatMap((edit, i) =>
        placed[i] === index
          ? [{ number: i + 1, href: `#${anchors.edit(i)}`, words: words.instruction(edit) }]
          : [],
      ),
    };
  });
};
