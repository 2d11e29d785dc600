/** To mend: everything that was found, by the record it is in, each with the way to its field. */
import { type Diagnostic, heaviestFirst } from '../../diagnostics/diagnostic.ts';
import type { FindingView } from '../../render/findings.ts';
import { addressOf, type Context, momentToSee, type Outcome, openedOf, type Panel } from '../context.ts';
import { openRecord, recordName } from '../record.ts';
import { toldInList } from '../told.ts';
import { placeAddress } from './proof.ts';

/** A finding with the address of its field; empty where no form has it. */
export type LinkedFinding = FindingView & {
  readonly href?: string;
  /** The record that it is in, where that is not said above it. */
  readonly where?: string;
};

interface RecordFindings {
  readonly name: string;
  /** Address of its form; empty where it has none. */
  readonly href: string;
  readonly findings: readonly LinkedFinding[];
}

interface FindingsView {
  readonly words: Context['words'];
  readonly wording: Context['wording'];
  readonly mustFix: number;
  readonly heaps: readonly { readonly heading: string; readonly records: readonly RecordFindings[] }[];
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    'desk/findings': FindingsView;
  }
}

const hasForm = ({ table }: Context, path: string): boolean => openRecord(table, path) !== undefined;

/** Findings, the heaviest first, with the way to the field of each. */
export const linkedFindings = (
  context: Context,
  diagnostics: readonly Diagnostic[],
): readonly LinkedFinding[] =>
  heaviestFirst(diagnostics).map((diagnostic) => {
    const { location } = diagnostic;
    const record = openRecord(context.table, location.file);
    return {
      ...toldInList(context, record === 'other encoding' ? undefined : record, diagnostic),
      href: record === undefined ? '' : placeAddress(context, location, diagnostic),
      where: record === undefined ? location.file : recordName(context, location.file),
    };
  });

/** By their records: the one that has the heaviest first. */
const byRecord = (context: Context, diagnostics: readonly Diagnostic[]): readonly RecordFindings[] =>
  [...new Set(heaviestFirst(diagnostics).map(({ location }) => location.file))].map((file) => ({
    name: hasForm(context, file) ? recordName(context, file) : file,
    href: hasForm(context, file) ? addressOf('write', file) : '',
    findings: linkedFindings(
      context,
      diagnostics.filter(({ location }) => location.file === file),
    ).map(({ where: _, ...finding }) => finding),
  }));

const show = async (context: Context): Promise<Outcome> => {
  const { table, words, wording, id } = context;
  const all = await table.findings(momentToSee(context), openedOf(context));
  const isOwn = ({ location }: Diagnostic): boolean => location.file.startsWith(`cycles/${id}/`);
  const heaps = [
    { heading: words.findings.ofThis, records: byRecord(context, all.filter(isOwn)) },
    {
      heading: words.findings.elsewhere,
      records: byRecord(
        context,
        all.filter((one) => !isOwn(one)),
      ),
    },
  ].filter(({ records }) => records.length > 0);
  const mustFix = all.filter(({ weight }) => weight === 'must fix').length;
  return {
    kind: 'page',
    heading: words.panels.findings,
    body: table.templates().render('desk/findings', { words, wording, heaps, mustFix }),
  };
};

/** To mend. */
export const findingsPanel: Panel = { show };
