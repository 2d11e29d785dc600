/** A rising step curve with its limits, drawn so that it reads in black on paper. */
import { percent } from '../text/counting-words.ts';
import { type Html, html, joinHtml } from './html.ts';

/** A height that holds from a day on, 0 to 1, with its limits where there are any. */
export interface CurveStep {
  readonly day: number;
  readonly height: number;
  readonly lower?: number;
  readonly upper?: number;
}

interface CurveDrawing {
  /** What the picture shows, in words, for those who do not see it. */
  readonly label: string;
  readonly steps: readonly CurveStep[];
  /** Day up to which the curve is known. */
  readonly end: number;
  /** The curve from there on, as it is expected; it begins at `end`. */
  readonly expected?: readonly CurveStep[];
  /** A height that is waited for, and the day on which the curve comes to it. */
  readonly wanted: { readonly height: number; readonly label: string; readonly day?: number };
  /** A day that is marked, with its words. */
  readonly mark?: { readonly day: number; readonly label: string };
  /** What is counted along the foot. */
  readonly foot: string;
}

const [WIDTH, HEIGHT] = [720, 360];
const PLOT = { left: 52, right: 700, top: 30, bottom: 312 } as const;

/** Distances between ticks, in days, of which the first that gives few enough is taken. */
const TICKS = [1, 2, 5, 7, 10, 14, 28, 56] as const;
const MOST_TICKS = 16;

const points = (value: number): string => value.toFixed(1);
const y = (height: number): string => points(PLOT.bottom - height * (PLOT.bottom - PLOT.top));

/** The line of a step curve from (`from`, `start`) to the day `end`. */
const stepLine = (
  steps: readonly { readonly day: number; readonly height: number }[],
  from: number,
  start: number,
  end: number,
  x: (day: number) => string,
): string =>
  `M${x(from)} ${y(start)}${steps.map(({ day, height }) => `H${x(day)}V${y(height)}`).join('')}H${x(end)}`;

/** The area between the limits, day by day; steps without limits leave it out. */
const bandPath = (steps: readonly CurveStep[], end: number, x: (day: number) => string): string =>
  steps
    .flatMap(({ day, lower, upper }, i) => {
      if (lower === undefined || upper === undefined) return [];
      const until = steps[i + 1]?.day ?? end;
      return [`M${x(day)} ${y(lower)}H${x(until)}V${y(upper)}H${x(day)}Z`];
    })
    .join('');

/** The lines of both limits over a band. */
const limitLines = (steps: readonly CurveStep[], end: number, x: (day: number) => string): string =>
  (['lower', 'upper'] as const)
    .map((key) => {
      const heights = steps.flatMap(({ day, [key]: height }) =>
        height === undefined ? [] : [{ day, height }],
      );
      const [first] = heights;
      return first ? stepLine(heights.slice(1), first.day, first.height, end, x) : '';
    })
    .join('');

/** The curve as an SVG of 720 by 360 units, styled by the classes of the page it stands on. */
export const stepCurve = (drawing: CurveDrawing): Html => {
  const { steps, end, expected = [], wanted, mark } = drawing;
  const last = Math.max(end, expected.at(-1)?.day ?? 0, mark?.day ?? 0, wanted.day ?? 0, 7) + 1;
  const x = (day: number): string => points(PLOT.left + (day / last) * (PLOT.right - PLOT.left));
  const every = TICKS.find((one) => last / one <= MOST_TICKS) ?? 112;
  const ticks = Array.from({ length: Math.floor(last / every) + 1 }, (_, i) => i * every);
  const known = steps.filter(({ day }) => day <= end);
  const top = known.at(-1)?.height ?? 0;
  // The limits of the last day that is known hold until the first that is expected.
  const bridge = known.at(-1);
  const coming = expected.length > 0 && bridge ? [{ ...bridge, day: end }, ...expected] : expected;
  const markAtRight = mark !== undefined && mark.day > last * 0.6;
  return html`<svg class="curve" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${drawing.label}">
<path class="grid" d="${[0.25, 0.5, 0.75, 1].map((height) => `M${PLOT.left} ${y(height)}H${PLOT.right}`).join('')}"/>
<path class="axis" d="M${PLOT.left} ${PLOT.top}V${PLOT.bottom}H${PLOT.right}${ticks.map((day) => `M${x(day)} ${PLOT.bottom}v5`).join('')}"/>
${joinHtml([0, 0.25, 0.5, 0.75, 1].map((height) => html`<text class="up" x="${PLOT.left - 8}" y="${Number(y(height)) + 4}">${percent(height)}</text>`))}
${joinHtml(ticks.map((day) => html`<text class="along" x="${x(day)}" y="${PLOT.bottom + 19}">${day}</text>`))}
<text class="foot" x="${PLOT.right}" y="${HEIGHT - 12}">${drawing.foot}</text>
<path class="band" d="${bandPath(known, end, x)}${bandPath(coming, last, x)}"/>
<path class="limit" d="${limitLines(known, end, x)}${limitLines(coming, last, x)}"/>
<path class="wanted" d="M${PLOT.left} ${y(wanted.height)}H${PLOT.right}${wanted.day === undefined ? '' : `M${x(wanted.day)} ${y(wanted.height)}V${PLOT.bottom}`}"/>
<text class="says" x="${PLOT.left + 8}" y="${Number(y(wanted.height)) - 6}">${wanted.label}</text>
${mark && html`<path class="mark" d="M${x(mark.day)} ${PLOT.top - 10}V${PLOT.bottom}"/><text class="says${markAtRight ? ' before' : ''}" x="${Number(x(mark.day)) + (markAtRight ? -6 : 6)}" y="${PLOT.top - 12}">${mark.label}</text>`}
${expected.length > 0 && html`<path class="coming" d="${stepLine(expected, Math.max(end, 0), top, last, x)}"/>`}
${known.length > 0 && html`<path class="known" d="${stepLine(known, 0, 0, end, x)}"/>`}
${wanted.day !== undefined && html`<circle class="met" cx="${x(wanted.day)}" cy="${y(wanted.height)}" r="4"/>`}
</svg>`;
};
