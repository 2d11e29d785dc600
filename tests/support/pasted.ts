import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';

/** A text with the lines that a finding proposes pasted over those that it names. */
export const pasted = (text: string, { from, to, lines }: NonNullable<Diagnostic['instead']>): string =>
  text
    .split('\n')
    .toSpliced(from - 1, to - from + 1, ...lines)
    .join('\n');
