/** A paper on each cycle's parcels: how many have arrived, and when the box may be shown. */

import type { Group } from '../analysis/parcels/compare.ts';
import type { ParcelsFacts } from '../analysis/parcels/facts.ts';
import { logLogLimits, type Step } from '../analysis/parcels/kaplan-meier.ts';
import {
  eveningWords,
  neverWords,
  outlookWords,
  overdueWords,
  paceWords,
  percent,
  revealWords,
  shareWords,
  stateWords,
} from '../analysis/parcels/words.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Box, Cycle, Moment } from '../model/box.ts';
import { dateInZone, longDate, monthName } from '../model/calendar.ts';
import { documentText, schemeElement } from '../render/document.ts';
import { findingViews } from '../render/findings.ts';
import type { TextOutput } from '../render/output.ts';
import { type CurveStep, stepCurve } from '../render/step-curve.ts';
import type { Templates } from '../render/templates.ts';
import { typeset } from '../render/typeset.ts';
import { dateOfDay, dayOfDate } from '../text/days.ts';
import type { Channel } from './channel.ts';

export interface ParcelsContext {
  readonly box: Box;
  readonly cycle: Cycle;
  readonly asOf: Moment;
  readonly templates: Templates;
  /** Findings of the cycle's list. */
  readonly diagnostics: readonly Diagnostic[];
}

const curveStep = (step: Step): CurveStep => {
  const limits = logLogLimits(step);
  return {
    day: step.day,
    height: 1 - step.waiting,
    ...(limits && { lower: 1 - limits.upper, upper: 1 - limits.lower }),
  };
};

const rowView = (step: Step) => {
  const limits = logLogLimits(step);
  return {
    day: step.day,
    atRisk: step.atRisk,
    delivered: step.delivered,
    share: (1 - step.waiting).toFixed(3),
    limits: limits && `${(1 - limits.upper).toFixed(3)}–${(1 - limits.lower).toFixed(3)}`,
  };
};

const groupView = (group: Group, lang: string) => ({
  ...group,
  name: group.name || 'not named',
  share: percent(group.share),
  half: group.half.day,
  newest: group.newest !== undefined && longDate(dateOfDay(group.newest), lang),
});

/** Steps that earlier cycles give, after those of this one. */
const comingSteps = ({ outlook }: ParcelsFacts): readonly Step[] =>
  outlook.source === 'both' || outlook.source === 'earlier'
    ? outlook.curve.steps.filter(({ day }) => day > outlook.horizon)
    : [];

/** Day the first parcels left: days along the foot of the drawing are counted from it. */
const firstDay = ({ sendings }: ParcelsFacts, cycle: Cycle): number =>
  sendings[0]?.shipped ?? dayOfDate(cycle.shipped);

const drawingOf = (facts: ParcelsFacts, cycle: Cycle, timeZone: string, lang: string) => {
  const { curve, outlook, wanted, reveal } = facts;
  const coming = comingSteps(facts).map(curveStep);
  const planned =
    reveal.planned === undefined
      ? undefined
      : dayOfDate(dateInZone(reveal.planned, timeZone)) - firstDay(facts, cycle);
  const mark =
    planned === undefined || planned < 0
      ? undefined
      : { day: planned, label: `Reveal, ${longDate(dateInZone(reveal.planned as Moment, timeZone), lang)}` };
  const own = coming.length > 0 ? Math.max(0, outlook.horizon) : curve.last;
  // What comes long after everything that is asked about would press the rest together.
  const far = Math.max(mark?.day ?? 0, outlook.days.day ?? 0, curve.steps.at(-1)?.day ?? 0) + 4;
  return stepCurve({
    label: [stateWords(facts), ...outlookWords(facts, lang)].join(' '),
    steps: curve.steps.map(curveStep),
    end: Math.min(own, far),
    expected: coming.filter(({ day }) => day <= far),
    wanted: {
      height: wanted,
      label: shareWords(wanted),
      ...(outlook.days.day !== undefined && { day: outlook.days.day }),
    },
    ...(mark && { mark }),
    foot: 'days since they left',
  });
};

/** The page is in English, whatever language the articles are in. */
const pageLang = (lang: string): string => (/^en\b/i.test(lang) ? lang : 'en');

/** The paper of one cycle as a file of the back room. */
export const parcelsPage = (facts: ParcelsFacts, context: ParcelsContext): TextOutput => {
  const { box, cycle, templates, diagnostics } = context;
  const { settings } = box;
  const lang = pageLang(settings.lang);
  const { timeZone } = settings;
  const [headline = '', ...explained] = outlookWords(facts, lang);
  const { outlook } = facts;
  const coming = comingSteps(facts);
  const page = templates.render('parcels', {
    lang,
    name: typeset(settings.name, lang),
    month: monthName(cycle, lang),
    theme: typeset(cycle.theme, settings.lang),
    scheme: schemeElement(cycle.palette),
    asOf: longDate(facts.asOfDate, lang),
    file: facts.file,
    headline,
    state: stateWords(facts),
    explained: [...explained, neverWords(facts)].filter(Boolean),
    reveal: revealWords(facts, lang),
    proposed: facts.evenings.map(({ moment, share }) => ({
      words: eveningWords(moment, timeZone, lang),
      share: percent(share, facts.wanted),
    })),
    drawing: drawingOf(facts, cycle, timeZone, lang),
    first: facts.sendings.length > 1 && longDate(dateOfDay(firstDay(facts, cycle)), lang),
    steps: facts.curve.steps.filter(({ day }) => coming.length === 0 || day <= outlook.horizon).map(rowView),
    coming: coming.map(rowView),
    pooled: outlook.cycles.join(', '),
    overdue: facts.parcels > 0 && {
      words: overdueWords(facts),
      days: (facts.overdue?.days ?? []).map(({ shipped, ...day }) => ({
        ...day,
        shipped: longDate(dateOfDay(shipped), lang),
        lines: day.lines.join(', ') + (day.count > day.lines.length ? ' and more' : ''),
      })),
    },
    groups: (
      [
        ['carrier', 'Carriers', facts.carriers],
        ['region', 'Regions', facts.regions],
      ] as const
    )
      .filter(([, , groups]) => groups.length > 0)
      .map(([kind, title, groups]) => ({
        kind,
        title,
        words: paceWords(groups, kind, lang),
        rows: groups.map((group) => groupView(group, lang)),
      })),
    findings: findingViews(diagnostics),
  });
  return {
    where: 'backroom',
    path: `${cycle.id}/parcels.html`,
    text: documentText(page),
  };
};

export const parcels: Channel = {
  name: 'parcels',
  where: 'backroom',
  make: ({ box, asOf, templates, parcels: reports }) => ({
    outputs: box.cycles.flatMap((cycle) => {
      const report = reports.get(cycle.id);
      return report
        ? [parcelsPage(report.facts, { box, cycle, asOf, templates, diagnostics: report.diagnostics })]
        : [];
    }),
    diagnostics: [],
  }),
};
