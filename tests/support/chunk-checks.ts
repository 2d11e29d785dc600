/** Measuring base noun phrases: sentences with gold spans, and how many of them a chunker finds. */

/** `start` and `end` are offsets in UTF-16 units, as `nounPhrases` gives them. */
export interface GoldSpan {
  readonly start: number;
  readonly end: number;
}

export interface GoldSentence {
  readonly text: string;
  readonly gold: readonly GoldSpan[];
}

/** One word of an annotated sentence; `tag` is of the Penn Treebank, `inside` is B, I or O. */
interface GoldToken {
  readonly text: string;
  readonly tag: string;
  readonly upos: string;
  readonly iob: string;
}

/** What stands before a phrase's content: determiners, possessives, pronouns and marks. */
const isFront = ({ tag, upos, text }: GoldToken): boolean =>
  /^(DT|PDT|WDT|PRP\$?|WP\$?|EX|POS)$/.test(tag) || upos === 'PRON' || !/[\p{L}\p{N}$]/u.test(text);

/** Tokens as one would write them: marks and clitics stick to the word before, brackets to the word after. */
const written = (tokens: readonly GoldToken[]): { text: string; spans: readonly GoldSpan[] } => {
  let text = '';
  let opened = false;
  const spans = tokens.map((token, i) => {
    const before = tokens[i - 1];
    const sticks =
      /^(\.+|!+|\?+|[,:;)%…])$/.test(token.text) && token.tag !== 'NFP'
        ? true
        : token.tag === 'POS' || /^(n['’]t|['’](s|re|ve|ll|d|m))$/i.test(token.text);
    const closing = token.tag === "''" || (token.text === '"' && opened);
    const afterOpening =
      before !== undefined && (before.tag === '``' || before.tag === '-LRB-' || before.tag === '$');
    const hyphen = token.tag === 'HYPH' || before?.tag === 'HYPH';
    if (token.tag === '``') opened = true;
    if (text !== '' && !sticks && !closing && !afterOpening && !hyphen) text += ' ';
    const start = text.length;
    text += token.text;
    return { start, end: text.length };
  });
  return { text, spans };
};

/**
 * Sentences of a table of tokens, an empty line between two: token, Penn tag, universal tag, IOB2 of base noun
 * phrases. Gold spans lose determiners and pronouns in front, and what is then empty is dropped, since
 * only content is measured.
 */
export const readIob = (table: string): readonly GoldSentence[] =>
  table
    .split(/\r?\n\r?\n/)
    .map((block) =>
      block
        .split(/\r?\n/)
        .filter((line) => line !== '' && !/^# /.test(line))
        .map((line) => {
          const [text = '', tag = '', upos = '', iob = ''] = line.split('\t');
          return { text, tag, upos, iob: iob.slice(0, 1) };
        }),
    )
    .filter((tokens) => tokens.length > 0)
    .map((tokens) => {
      const { text, spans } = written(tokens);
      const gold: GoldSpan[] = [];
      tokens.forEach((token, i) => {
        if (token.iob !== 'B') return;
        let end = i + 1;
        while (tokens[end]?.iob === 'I') end++;
        let start = i;
        while (start < end && isFront(tokens[start] as GoldToken)) start++;
        if (start < end)
          gold.push({ start: (spans[start] as GoldSpan).start, end: (spans[end - 1] as GoldSpan).end });
      });
      return { text, gold };
    });

/** Sentences of our own table: a half, a tab, the text with its phrases in square brackets. */
export const readBracketed = (table: string): readonly (GoldSentence & { readonly half: string })[] =>
  table
    .split(/\r?\n/)
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => {
      const [half = '', marked = ''] = line.split('\t');
      const gold: GoldSpan[] = [];
      let text = '';
      let start = 0;
      for (const sign of marked)
        if (sign === '[') start = text.length;
        else if (sign === ']') gold.push({ start, end: text.length });
        else text += sign;
      return { half, text, gold };
    });

export interface Score {
  readonly right: number;
  readonly found: number;
  readonly gold: number;
  /** Shares from 0 to 1. */
  readonly precision: number;
  readonly recall: number;
  readonly f1: number;
}

/**
 * Precision, recall and F1 of exact spans, counted over all sentences together: the measure of the CoNLL-2000
 * chunking task (Tjong Kim Sang and Buchholz 2000).
 */
export const scoreChunks = async (
  sentences: readonly GoldSentence[],
  chunk: (text: string) => Promise<readonly GoldSpan[]>,
): Promise<Score> => {
  let right = 0;
  let found = 0;
  let gold = 0;
  for (const sentence of sentences) {
    const spans = await chunk(sentence.text);
    const wanted = new Set(sentence.gold.map(({ start, end }) => `${start} ${end}`));
    found += spans.length;
    gold += wanted.size;
    right += spans.filter(({ start, end }) => wanted.has(`${start} ${end}`)).length;
  }
  const precision = found === 0 ? 0 : right / found;
  const recall = gold === 0 ? 0 : right / gold;
  return {
    right,
    found,
    gold,
    precision,
    recall,
    f1: right === 0 ? 0 : (2 * precision * recall) / (precision + recall),
  };
};
