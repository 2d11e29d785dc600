/** Ready: the site is made, what of it is new since the time before, what an address serves of it, and what is left to do. */
import { compareServed, servedAt } from '../../io/compare-served.ts';
import { listedIfThere } from '../../io/list-files.ts';
import type { SentForm } from '../../io/serve.ts';
import type { BuildOutcome } from '../../workspace/build-into.ts';
import {
  addressOf,
  type ComparedAt,
  type Context,
  momentToSee,
  type Outcome,
  openedOf,
  type Panel,
  sent,
} from '../context.ts';
import { type WorkView, workView } from '../work-view.ts';
import { type LinkedFinding, linkedFindings } from './findings.ts';

interface ComparedView {
  readonly told: string;
  readonly same: string;
  /** Files that are not as they should be, by what is wrong with them. */
  readonly heaps: readonly {
    readonly told: string;
    readonly paths: readonly string[];
    readonly more: string;
  }[];
  readonly isSame: boolean;
}

interface CompareView {
  /** What to compare with. */
  readonly address: string;
  readonly canCompare: boolean;
  readonly notice: string;
  readonly work: WorkView | undefined;
  readonly found: ComparedView | undefined;
}

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
  readonly left: readonly LinkedFinding[];
  /** Whether what is left keeps the site from being made. */
  readonly isStopped: boolean;
  /** Said where it was asked for and nothing was made. */
  readonly notMade: string;
  readonly compare: CompareView;
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

/** The comparison goes on whatever cycle is looked at. */
const COMPARISON = 'site';

const comparedView = (
  { same, other, missing, unanswered, address }: ComparedAt,
  words: Context['words']['ready']['compare'],
): ComparedView => {
  const of = same + other.length + missing.length + unanswered.length;
  const heap = (paths: readonly string[], told: (count: number) => string) =>
    paths.length === 0
      ? []
      : [
          {
            told: told(paths.length),
            paths: paths.slice(0, MOST_NAMED),
            more: paths.length > MOST_NAMED ? words.more(paths.length - MOST_NAMED) : '',
          },
        ];
  const isSilent = unanswered.length === of;
  return {
    told: words.told(address),
    same: isSilent ? words.nobody : words.same(same, of),
    isSame: same === of,
    heaps: isSilent
      ? []
      : [...heap(other, words.other), ...heap(missing, words.missing), ...heap(unanswered, words.unanswered)],
  };
};

const compareView = ({ table, works, words, settings }: Context, wrong: string | undefined): CompareView => {
  const state = works.compared.stateOf(COMPARISON);
  const { compare: told } = words.ready;
  const canCompare = listedIfThere(table.folders.site).length > 0;
  const notices = [
    ...(wrong === undefined ? [] : [told.wrong]),
    ...(canCompare ? [] : [told.none]),
    ...(state?.kind === 'stopped' ? [told.stopped] : []),
    ...(state?.kind === 'failed' ? [told.failed(state.said)] : []),
  ];
  return {
    address: wrong ?? (state?.kind === 'done' ? state.value.address : undefined) ?? settings?.url ?? '',
    canCompare,
    notice: notices.join(' '),
    work: state?.kind === 'at work' ? workView(state, told.at, words) : undefined,
    found: state?.kind === 'done' ? comparedView(state.value, told) : undefined,
  };
};

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

const page = async (context: Context, made: Made | undefined, wrong?: string): Promise<Outcome> => {
  const { table, words, wording, id, token } = context;
  const diagnostics =
    made?.outcome.diagnostics ?? (await table.findings(momentToSee(context), openedOf(context)));
  const mustFix = diagnostics.filter(({ weight }) => weight === 'must fix');
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
    left: linkedFindings(context, mustFix.length > 0 ? mustFix : diagnostics),
    isStopped: mustFix.length > 0,
    notMade:
      made && made.outcome.kind !== 'published' && mustFix.length > 0
        ? words.ready.notMade(mustFix.length)
        : '',
    compare: compareView(context, wrong),
  });
  return { kind: 'page', heading: words.panels.ready, body };
};

const compare = (context: Context, typed: string): Promise<Outcome> | Outcome => {
  const { table, works, id } = context;
  const base = servedAt(typed);
  if (!base) return page(context, undefined, typed);
  const { site: folder } = table.folders;
  works.compared.start(COMPARISON, async (working) => ({
    address: base.href,
    ...(await compareServed(base, {
      folder,
      paths: listedIfThere(folder).map(({ path }) => path),
      ...working,
    })),
  }));
  return { kind: 'go', to: `${addressOf('ready', id)}#compare` };
};

const act = async (context: Context, form: SentForm): Promise<Outcome> => {
  const action = sent(form, 'do');
  if (action === 'compare') return compare(context, sent(form, 'address') ?? '');
  if (action === 'stop') {
    context.works.compared.stop(COMPARISON);
    return { kind: 'go', to: `${addressOf('ready', context.id)}#compare` };
  }
  const { site } = context.table.folders;
  const before = new Map(listedIfThere(site).map(({ path, stamp }) => [path, stamp]));
  const outcome = await context.table.build();
  const after = new Map(listedIfThere(site).map(({ path, stamp }) => [path, stamp]));
  const changed = [...after].flatMap(([path, stamp]) => (before.get(path) === stamp ? [] : [path]));
  return page(context, { outcome, changed, gone: [...before.keys()].filter((path) => !after.has(path)) });
};

/** Ready. */
export const readyPanel: Panel = { show: (context) => page(context, undefined), act };
