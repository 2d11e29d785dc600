/** Ready: the site is made, what of it is new since the time before, and what is left to do. */
import { mustFixAny } from '../../diagnostics/diagnostic.ts';
import { listedIfThere } from '../../io/list-files.ts';
import { type FindingView, findingViews } from '../../render/findings.ts';
import type { BuildOutcome } from '../../workspace/build-into.ts';
import { addressOf, type Context, momentToSee, type Outcome, openedOf, type Panel } from '../context.ts';

interface ReadyView {
  readonly words: Context['words'];
  readonly wording: Context['wording'];
  readonly token: string;
  readonly at: string;
  readonly report: readonly string[];
  readonly isMade: boolean;
  readonly changed: readonly string[];
  readonly changedTold: string;
  readonly goneTold: string;
  readonly where: string;
  readonly left: readonly FindingView[];
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    'desk/ready': ReadyView;
  }
}

const MOST_NAMED = 200;

interface Made {
  readonly outcome: BuildOutcome;
  readonly changed: readonly string[];
  readonly gone: readonly string[];
}

/** The lines of a report, as the command says them. */
const reportLines = ({ wording }: Context, outcome: BuildOutcome): readonly string[] => {
  if (outcome.kind !== 'published') return [];
  const { build: words } = wording.commandLine;
  const { report } = outcome;
  const { pages, pictures, newPictures, files, bytes, sealed, next, proofs, kept, replaced } = report;
  return [
    words.made({ pages, pictures, newPictures, fromCache: pictures - newPictures, files, bytes }),
    ...sealed.map(({ cycle, theme, day }) => words.sealed(cycle, theme, words.until(day))),
    ...(next ? [words.again(words.next(next.when, next.changes))] : []),
    ...proofs.map(({ weakest, ...proof }) =>
      words.proved({ ...proof, ...(weakest && proof.atAim < proof.items && { weakest }) }),
    ),
    ...kept.map(words.kept),
    ...replaced.map(words.replaced),
  ];
};

const page = async (context: Context, made: Made | undefined): Promise<Outcome> => {
  const { table, words, wording, id, token } = context;
  const diagnostics =
    made?.outcome.diagnostics ?? (await table.findings(momentToSee(context), openedOf(context)));
  const changed = made?.changed ?? [];
  const body = table.templates().render('desk/ready', {
    words,
    wording,
    token,
    at: addressOf('ready', id),
    report: made ? reportLines(context, made.outcome) : [],
    isMade: made?.outcome.kind === 'published',
    changed: changed.slice(0, MOST_NAMED),
    changedTold: changed.length === 0 ? words.ready.unchanged : words.ready.changed(changed.length),
    goneTold: made && made.gone.length > 0 ? words.ready.gone(made.gone.length) : '',
    where: words.ready.where(table.folders.site),
    left: findingViews(
      mustFixAny(diagnostics) ? diagnostics.filter(({ weight }) => weight === 'must fix') : diagnostics,
      wording.findings,
    ),
  });
  return { kind: 'page', heading: words.panels.ready, body };
};

const act = async (context: Context): Promise<Outcome> => {
  const { site } = context.table.folders;
  const before = new Map(listedIfThere(site).map(({ path, stamp }) => [path, stamp]));
  const outcome = await context.table.build();
  const after = new Map(listedIfThere(site).map(({ path, stamp }) => [path, stamp]));
  const changed = [...after].flatMap(([path, stamp]) => (before.get(path) === stamp ? [] : [path]));
  return page(context, { outcome, changed, gone: [...before.keys()].filter((path) => !after.has(path)) });
};

/** Ready. */
export const readyPanel: Panel = { show: (context) => page(context, undefined), act };
