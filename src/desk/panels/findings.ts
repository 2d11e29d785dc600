/** To mend: everything that was found, each with the way to its field. */
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { heaviestFirst } from '../../diagnostics/diagnostic.ts';
import { type FindingView, findingViews } from '../../render/findings.ts';
import { type Context, momentToSee, type Outcome, openedOf, type Panel } from '../context.ts';
import { isRecordPath } from '../record.ts';
import { placeAddress } from './proof.ts';

type LinkedFinding = FindingView & { readonly href: string };

interface FindingsView {
  readonly words: Context['words'];
  readonly wording: Context['wording'];
  readonly heaps: readonly { readonly heading: string; readonly findings: readonly LinkedFinding[] }[];
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    'desk/findings': FindingsView;
  }
}

const show = async (context: Context): Promise<Outcome> => {
  const { table, words, wording, id } = context;
  const all = heaviestFirst(await table.findings(momentToSee(context), openedOf(context)));
  const isOwn = ({ location }: Diagnostic): boolean => location.file.startsWith(`cycles/${id}/`);
  const views = (some: readonly Diagnostic[]): readonly LinkedFinding[] =>
    findingViews(some, wording.findings).map((view, i) => {
      const location = some[i]?.location;
      const href =
        location && isRecordPath(location.file) && table.read(location.file)
          ? placeAddress(context, location)
          : '';
      return { ...view, href };
    });
  const heaps = [
    { heading: words.findings.ofThis, findings: views(all.filter(isOwn)) },
    { heading: words.findings.elsewhere, findings: views(all.filter((one) => !isOwn(one))) },
  ].filter(({ findings }) => findings.length > 0);
  return {
    kind: 'page',
    heading: words.panels.findings,
    body: table.templates().render('desk/findings', { words, wording, heaps }),
  };
};

/** To mend. */
export const findingsPanel: Panel = { show };
