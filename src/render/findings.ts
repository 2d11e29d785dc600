/** Findings as a page shows them. */
import { type Diagnostic, heaviestFirst, locationText } from '../diagnostics/diagnostic.ts';
import type { Wording } from '../wording/wording.ts';
import { type Html, html, joinHtml } from './html.ts';

/** A finding as a page shows it. */
export interface FindingView {
  readonly isMustFix: boolean;
  /** Its weight in words. */
  readonly weight: string;
  readonly rule: string;
  /** `file:line:column` */
  readonly at: string;
  readonly message: Html;
  readonly fix?: Html;
  /** Lines to copy into the record, each set of them under what leads to it. */
  readonly lines: readonly { readonly label: string; readonly text: string }[];
  readonly related?: { readonly at: string; readonly message: Html };
}

/** Words with what stands in backticks set as code. */
const withCode = (text: string): Html =>
  joinHtml(text.split('`').map((piece, i) => (i % 2 === 1 ? html`<code>${piece}</code>` : html`${piece}`)));

/** The heaviest first; of one weight, in the order given. */
export const findingViews = (
  diagnostics: readonly Diagnostic[],
  words: Wording['findings'],
): readonly FindingView[] =>
  heaviestFirst(diagnostics).map(({ weight, rule, location, message, fix, instead, written, related }) => ({
    isMustFix: weight === 'must fix',
    weight: words.weights[weight],
    rule,
    at: locationText(location),
    message: withCode(message),
    ...(fix !== undefined && { fix: withCode(fix) }),
    lines: [
      ...(instead ? [{ label: words.instead(instead), text: instead.lines.join('\n') }] : []),
      ...(written ? [{ label: words.written(written), text: written.lines.join('\n') }] : []),
    ],
    ...(related && {
      related: { at: locationText(related.location), message: withCode(related.message) },
    }),
  }));
