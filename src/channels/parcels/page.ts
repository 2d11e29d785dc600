/** The paper on one cycle's parcels: how many have arrived, and when the box may be shown. */
import type { Group } from '../../analysis/parcels/compare.ts';
import { dayOfShare, logLogLimits, type Step } from '../../analysis/parcels/incidence.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { dateInZone, monthName } from '../../model/calendar.ts';
import { documentText } from '../../render/document.ts';
import { type FindingView, findingViews } from '../../render/findings.ts';
import type { Html } from '../../render/html.ts';
import type { MadeDocument } from '../../render/output.ts';
import { pageLang } from '../../render/page-lang.ts';
import { paperStyle } from '../../render/paper.ts';
import { type CurveStep, stepCurve } from '../../render/step-curve.ts';
import { typeset } from '../../render/typeset.ts';
import { dayOfDate } from '../../text/days.ts';
import { longDate, longDay } from '../../text/long-date.ts';
import type { Wording } from '../../wording/wording.ts';
import type { Tools } from '../channel.ts';
import type { ParcelsData } from './plan.ts';

type Words = Wording['parcels'];

interface RowView {
  readonly day: number;
  readonly atRisk: number;
  readonly delivered: number;
  readonly share: string;
  readonly limits: string | undefined;
}

interface GroupView extends Omit<Group, 'share' | 'newest' | 'pace'> {
  readonly share: string;
  readonly newest: string | false;
  /** How it is behind, in a word; empty where it is not. */
  readonly pace: string;
}

/** What the template is given. */
interface ParcelsView {
  readonly words: Words;
  readonly paper: Wording['backRoomPage'];
  readonly fixLabel: string;
  readonly lang: string;
  readonly name: string;
  readonly month: string;
  readonly theme: string;
  readonly scheme: Html;
  readonly asOf: string;
  readonly file: string | undefined;
  readonly headline: string;
  readonly state: string;
  readonly explained: readonly string[];
  readonly reveal: readonly string[];
  readonly proposed: readonly { readonly words: string; readonly share: string }[];
  readonly drawing: Html;
  /** The day from which the drawing counts, where parcels left on several. */
  readonly first: string | undefined;
  readonly steps: readonly RowView[];
  /** Steps that earlier cycles give, after those of this one. */
  readonly coming: readonly RowView[];
  readonly pooled: readonly string[];
  readonly overdue:
    | false
    | {
        readonly words: string;
        readonly days: readonly {
          readonly shipped: string;
          readonly days: number;
          readonly count: number;
          readonly lines: string;
        }[];
      };
  readonly groups: readonly {
    readonly kind: 'carrier' | 'region';
    readonly title: string;
    readonly words: readonly string[];
    /** Whether any has parcels that have yet to leave. */
    readonly areSomeToLeave: boolean;
    readonly rows: readonly GroupView[];
  }[];
  readonly findings: readonly FindingView[];
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    parcels: ParcelsView;
  }
}

const curveStep = (step: Step): CurveStep => {
  const limits = logLogLimits(step);
  return {
    day: step.day,
    height: 1 - step.missing,
    ...(limits && { lower: 1 - limits.upper, upper: 1 - limits.lower }),
  };
};

const rowView = (step: Step): RowView => {
  const limits = logLogLimits(step);
  return {
    day: step.day,
    atRisk: step.atRisk,
    delivered: step.delivered,
    share: (1 - step.missing).toFixed(3),
    limits: limits && `${(1 - limits.upper).toFixed(3)}–${(1 - limits.lower).toFixed(3)}`,
  };
};

const groupView = (group: Group, lang: string, words: Words): GroupView => ({
  ...group,
  name: group.name || words.unnamed,
  share: words.percent(group.share),
  newest: group.newest !== undefined && longDay(group.newest, lang),
  pace: words.paces[group.pace],
});

/** Steps that earlier cycles give, after those of this one. */
const comingSteps = ({ outlook }: ParcelsData['facts']): readonly Step[] =>
  outlook.source === 'both' || outlook.source === 'earlier'
    ? outlook.curve.steps.filter(({ day }) => day > outlook.horizon)
    : [];

/** Day the first parcels left: days along the foot of the drawing are counted from it. */
const firstDay = ({ facts: { sendings }, cycle }: ParcelsData): number =>
  sendings[0]?.shipped ?? dayOfDate(cycle.shipped);

const drawingOf = (data: ParcelsData, lang: string, words: Words): Html => {
  const { facts } = data;
  const { curve, outlook, aim, reveal, timeZone } = facts;
  const met = outlook.source === 'none' ? undefined : dayOfShare(outlook.curve, aim);
  const coming = comingSteps(facts).map(curveStep);
  const evening = reveal.planned === undefined ? undefined : dateInZone(reveal.planned, timeZone);
  const planned = evening === undefined ? -1 : dayOfDate(evening) - firstDay(data);
  const mark =
    evening === undefined || planned < 0
      ? undefined
      : { day: planned, label: words.page.revealMark(longDate(evening, lang)) };
  const own = coming.length > 0 ? Math.max(0, outlook.horizon) : curve.last;
  // What comes long after everything that is asked about would press the rest together.
  const far = Math.max(mark?.day ?? 0, met ?? 0, curve.steps.at(-1)?.day ?? 0) + 4;
  return stepCurve({
    label: [words.state(facts), ...words.outlook(facts, lang)].join(' '),
    steps: curve.steps.map(curveStep),
    end: Math.min(own, far),
    expected: coming.filter(({ day }) => day <= far),
    wanted: {
      height: aim,
      label: words.share(aim),
      ...(met !== undefined && { day: met }),
    },
    ...(mark && { mark }),
    foot: words.page.foot,
  });
};

/** The paper on the parcels of one cycle. */
export const parcelsPage = (data: ParcelsData, { templates, wording }: Tools): MadeDocument<Diagnostic> => {
  const { facts, settings, cycle, diagnostics } = data;
  const { parcels: words } = wording;
  const { page } = words;
  // The page is in English, whatever language the articles are in.
  const lang = pageLang(settings.lang);
  const [headline = '', ...explained] = words.outlook(facts, lang);
  const { outlook } = facts;
  const coming = comingSteps(facts);
  const groups = [
    ['carrier', facts.carriers],
    ['region', facts.regions],
  ] as const;
  const document = templates.render('parcels', {
    words,
    paper: wording.backRoomPage,
    fixLabel: wording.findings.fixLabel,
    lang,
    name: typeset(settings.name, lang),
    month: monthName(cycle, lang),
    theme: typeset(cycle.theme, settings.lang),
    scheme: paperStyle(cycle.palette, templates),
    asOf: longDate(facts.asOfDate, lang),
    file: facts.file,
    headline,
    state: words.state(facts),
    explained: [...explained, words.never(facts)].filter(Boolean),
    reveal: words.reveal(facts, lang),
    proposed: facts.evenings.map(({ moment, share }) => ({
      words: words.evening(moment, facts.timeZone, lang),
      share: words.percent(share, facts.aim),
    })),
    drawing: drawingOf(data, lang, words),
    first: facts.sendings.length > 1 ? longDay(firstDay(data), lang) : undefined,
    steps: facts.curve.steps.filter(({ day }) => coming.length === 0 || day <= outlook.horizon).map(rowView),
    coming: coming.map(rowView),
    pooled: outlook.cycles,
    overdue: facts.parcels > 0 && {
      words: words.overdue(facts),
      days: (facts.overdue?.days ?? []).map(({ shipped, days, count, lines }) => ({
        shipped: longDay(shipped, lang),
        days,
        count,
        lines: lines.join(', ') + (count > lines.length ? page.andMore : ''),
      })),
    },
    groups: groups
      .filter(([, all]) => all.length > 0)
      .map(([kind, all]) => ({
        kind,
        title: page.groups[kind],
        words: words.pace(all, kind, lang),
        areSomeToLeave: all.some(({ toLeave }) => toLeave > 0),
        rows: all.map((group) => groupView(group, lang, words)),
      })),
    findings: findingViews(diagnostics, wording.findings),
  });
  return { content: documentText(document) };
};
