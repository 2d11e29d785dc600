/** Findings as a page shows them. */
import { type Diagnostic, locationText, WEIGHTS, type Weight } from '../diagnostics/diagnostic.ts';
import { type Html, html, joinHtml } from './html.ts';

export interface FindingView {
  readonly weight: Weight;
  readonly rule: string;
  /** `file:line:column` */
  readonly at: string;
  readonly message: Html;
  readonly fix?: Html;
  readonly related?: { readonly at: string; readonly message: Html };
}

/** Words with what stands in backticks set as code. */
const withCode = (text: string): Html =>
  joinHtml(text.split('`').map((piece, i) => (i % 2 === 1 ? html`<code>${piece}</code>` : html`${piece}`)));

/** The heaviest first; of one weight, in the order given. */
export const findingViews = (diagnostics: readonly Diagnostic[]): readonly FindingView[] =>
  WEIGHTS.flatMap((weight) =>
    diagnostics
      .filter((diagnostic) => diagnostic.weight === weight)
      .map(({ rule, location: place, message, fix, related }) => ({
        weight,
        rule,
        at: locationText(place),
        message: withCode(message),
        ...(fix !== undefined && { fix: withCode(fix) }),
        ...(related && {
          related: { at: locationText(related.location), message: withCode(related.message) },
        }),
      })),
  );
