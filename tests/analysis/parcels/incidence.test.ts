import { execFileSync, spawnSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { histogramOf } from '../../../src/analysis/parcels/histogram.ts';
import { curveOf, dayOfShare, logLogLimits, standardError } from '../../../src/analysis/parcels/incidence.ts';
import type { ParcelCount } from '../../../src/model/box.ts';
import { arrivedBy, logLimits, PLACEBO, parcel, SIX_MP, seeded, times } from './parcels.ts';

const curve = (parcels: readonly ParcelCount[]) => curveOf(histogramOf(parcels));
const six = curve(times(SIX_MP));
const placebo = curve(times(PLACEBO));

describe('the leukaemia remission data (Freireich et al. 1963; R survival 3.5-3)', () => {
  test.each([
    [6, 21, 3, 0.857143, 0.07636, 0.719817, 1, 0.619718, 0.951552],
    [7, 17, 1, 0.806723, 0.086935, 0.653124, 0.996444, 0.563147, 0.922809],
    [10, 15, 1, 0.752941, 0.09635, 0.585919, 0.967575, 0.5032, 0.889362],
    [13, 12, 1, 0.690196, 0.106815, 0.509613, 0.934769, 0.43161, 0.849066],
    [16, 11, 1, 0.627451, 0.114054, 0.439394, 0.895995, 0.367511, 0.804912],
    [22, 7, 1, 0.537815, 0.128234, 0.337037, 0.858201, 0.267779, 0.746791],
    [23, 6, 1, 0.448179, 0.134591, 0.248788, 0.807372, 0.188052, 0.680143],
  ])('give the printed row of week %i', (day, atRisk, delivered, s, se, log0, log1, loglog0, loglog1) => {
    const step = six.steps.find((one) => one.day === day);
    if (!step) throw new Error(`no step at ${day}`);
    const [log, loglog] = [logLimits(step), logLogLimits(step)];
    const shown = [step.missing, standardError(step), log?.lower, log?.upper, loglog?.lower, loglog?.upper];
    expect([step.atRisk, step.delivered]).toEqual([atRisk, delivered]);
    expect(shown.map((one) => one?.toFixed(6))).toEqual(
      [s, se, log0, log1, loglog0, loglog1].map((one) => one.toFixed(6)),
    );
  });

  test('have just these steps', () => {
    expect(six.steps.map(({ day }) => day)).toEqual([6, 7, 10, 13, 16, 22, 23]);
  });

  test('give the printed medians', () => {
    expect([dayOfShare(six, 0.5), dayOfShare(placebo, 0.5)]).toEqual([23, 8]);
  });
});

describe('the day of a share', () => {
  // Therneau's own test of quantile.survfit (survival, tests/quantile.R): S = 6/7, 18/35, 9/35. Where a curve is level
  // at exactly the share R gives the middle of the stretch, and we its first day, as Hyndman & Fan's definition 1 does.
  const level = curve(times('9 1 1+ 6 6 8+ 10+'));
  test.each([
    [1 / 14, 1],
    [1 / 7, 1],
    [1 / 3, 6],
    [0.5, 9],
    [26 / 35, 9],
    [0.9, undefined],
  ])('of %d is the first by whose end it has arrived', (share, day) => {
    expect(dayOfShare(level, share)).toBe(day);
  });
});

const parcels = fc.array(
  fc.record({
    days: fc.integer({ min: 0, max: 40 }),
    state: fc.constantFrom('delivered', 'travelling', 'lost', 'returned'),
    count: fc.integer({ min: 1, max: 30 }),
  }),
  { minLength: 1, maxLength: 60 },
);
const made = (rows: readonly Pick<ParcelCount, 'days' | 'state' | 'count'>[]): readonly ParcelCount[] =>
  rows.map(({ days, state, count }) => parcel(days, state, { count }));

describe('any curve', () => {
  test('falls from 1 and never below 0, with its limits on either side', () => {
    fc.assert(
      fc.property(parcels, (rows) => {
        let before = 1;
        for (const step of curve(made(rows)).steps) {
          expect(step.missing).toBeLessThanOrEqual(before);
          expect(step.missing).toBeGreaterThanOrEqual(0);
          before = step.missing;
          for (const limits of [logLimits(step), logLogLimits(step)]) {
            if (!limits) continue;
            expect(limits.lower).toBeLessThanOrEqual(step.missing);
            expect(limits.upper).toBeGreaterThanOrEqual(step.missing);
            expect(limits.lower).toBeGreaterThanOrEqual(0);
            expect(limits.upper).toBeLessThanOrEqual(1);
          }
        }
      }),
    );
  });

  test('is the same whatever the order of the parcels, and whether they are counted or written out', () => {
    fc.assert(
      fc.property(parcels, (rows) => {
        const written = made(rows).flatMap((one) =>
          Array.from({ length: one.count }, () => ({ ...one, count: 1 })),
        );
        expect(curve(written.toReversed())).toEqual(curve(made(rows)));
      }),
    );
  });

  test('of parcels that have all arrived is the plain share, and its quantile R’s first kind', () => {
    // Hyndman & Fan (1996), definition 1: the inverse of the empirical distribution.
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 80 }),
        fc.integer({ min: 1, max: 99 }),
        (days, percent) => {
          const sorted = days.toSorted((a, b) => a - b);
          const all = curve(days.map((day) => parcel(day)));
          for (const day of [0, 5, 17, 40])
            expect(arrivedBy(all, day)).toBeCloseTo(
              sorted.filter((one) => one <= day).length / days.length,
              10,
            );
          const place = Math.ceil((sorted.length * percent) / 100 - 1e-9);
          expect(dayOfShare(all, percent / 100)).toBe(sorted[place - 1]);
        },
      ),
    );
  });
});

describe('parcels that never arrive', () => {
  test('give, read on one day, the cumulative incidence of Aalen and Johansen, whenever they were lost', () => {
    // Kalbfleisch & Prentice (2002), 8.2: F(t) = Σ S(u−) d(u) / n(u), S the product limit of any ending.
    fc.assert(
      fc.property(
        fc.array(fc.record({ day: fc.integer({ min: 1, max: 20 }), lost: fc.boolean() }), {
          minLength: 1,
          maxLength: 60,
        }),
        fc.integer({ min: 5, max: 20 }),
        (endings, read) => {
          let [alive, atRisk, incidence] = [1, endings.length, 0];
          for (let day = 1; day <= read; day += 1) {
            const ended = endings.filter((one) => one.day === day);
            if (ended.length === 0) continue;
            incidence += (alive * ended.filter(({ lost }) => !lost).length) / atRisk;
            alive *= 1 - ended.length / atRisk;
            atRisk -= ended.length;
          }
          const seen = endings.map(({ day, lost }) =>
            day > read ? parcel(read, 'travelling') : lost ? parcel(read, 'lost') : parcel(day),
          );
          expect(arrivedBy(curve(seen), read)).toBeCloseTo(incidence, 10);
        },
      ),
    );
  });

  test('promise less, or as much, the later they are taken to have been given up', () => {
    fc.assert(
      fc.property(
        parcels,
        fc.integer({ min: 0, max: 40 }),
        fc.integer({ min: 1, max: 20 }),
        (rows, day, more) => {
          const ends = (lostOn: number): number => {
            const one = curve([...made(rows), parcel(lostOn, 'lost', { count: 5 })]);
            return arrivedBy(one, one.last);
          };
          expect(ends(day + more)).toBeLessThanOrEqual(ends(day) + 1e-12);
        },
      ),
    );
  });

  test('keep the curve from ever coming to a share that they make impossible', () => {
    const some = [parcel(5, 'delivered', { count: 92 }), parcel(60, 'lost', { count: 8 })];
    expect(arrivedBy(curve(some), 60)).toBeCloseTo(0.92, 12);
    expect(dayOfShare(curve(some), 0.95)).toBeUndefined();
    // Nor where they left later than all that arrived, and were watched for a shorter time.
    const younger = [parcel(10, 'delivered', { count: 50 }), parcel(3, 'lost', { count: 50 })];
    expect(arrivedBy(curve(younger), 10)).toBeCloseTo(0.5, 12);
  });
});

describe('where nothing is lost but on the first day', () => {
  test('the share is that of the others times what may still come, and its variance that of the product', () => {
    // F = (1 − p) K with p binomial: K² p(1 − p)/n + (1 − p)² Greenwood, the two being independent.
    fc.assert(
      fc.property(parcels, (rows) => {
        const isGone = (state: string): boolean => state === 'lost' || state === 'returned';
        const all = made(rows.map((row) => ({ ...row, days: isGone(row.state) ? 0 : row.days + 1 })));
        const rest = curve(all.filter(({ state }) => state === 'delivered' || state === 'travelling'));
        const sum = (some: readonly ParcelCount[]): number => some.reduce((to, { count }) => to + count, 0);
        const n = sum(all);
        const never = sum(all.filter(({ state }) => state === 'lost' || state === 'returned')) / n;
        for (const [at, step] of curve(all).steps.entries()) {
          const other = rest.steps[at];
          if (!other) throw new Error('Expected the same days');
          const arrived = 1 - other.missing;
          expect(1 - step.missing).toBeCloseTo((1 - never) * arrived, 10);
          expect(step.variance).toBeCloseTo(
            (arrived ** 2 * never * (1 - never)) / n + (1 - never) ** 2 * other.variance,
            10,
          );
          expect(1 - step.missing).toBeLessThanOrEqual(1 - never + 1e-12);
        }
      }),
    );
  });
});

test('counting only what was delivered makes simulated parcels look faster than they are; the curve does not', () => {
  const random = seeded(20260303);
  // Parcels leave over eight days and take two days and an exponential wait; the file is read on the tenth day.
  const all = Array.from({ length: 40_000 }, () => ({
    age: 2 + Math.floor(random() * 8),
    takes: 2 + Math.floor(-Math.log(1 - random()) * 2.4),
  }));
  const sorted = all.map(({ takes }) => takes).sort((a, b) => a - b);
  const truth = sorted[Math.ceil(sorted.length * 0.9) - 1] as number;
  const delivered = all.filter(({ age, takes }) => takes <= age);
  const seen = all.map(({ age, takes }) => (takes <= age ? parcel(takes) : parcel(age, 'travelling')));
  const naive = dayOfShare(curve(delivered.map(({ takes }) => parcel(takes))), 0.9) as number;
  expect(truth).toBe(7);
  expect(naive).toBeLessThan(truth);
  expect(dayOfShare(curve(seen), 0.9)).toBe(truth);
});

const r = spawnSync('Rscript', ['-e', 'library(survival)']).status === 0;
test.skipIf(!r)('R’s survival, where it is installed, gives the same curve and quantiles', () => {
  const script = `
    library(survival)
    text <- strsplit("${SIX_MP}", " ")[[1]]
    fit <- survfit(Surv(as.numeric(sub("\\\\+", "", text)), !grepl("+", text, fixed = TRUE)) ~ 1, conf.type = "log-log")
    keep <- fit$n.event > 0
    cat(sprintf("%.10f", c(fit$surv[keep], fit$lower[keep], fit$upper[keep], quantile(fit, c(.1, .25, .5))$quantile)))`;
  const limits = six.steps.map(logLogLimits);
  const ours = [
    ...six.steps.map(({ missing }) => missing),
    ...limits.map((one) => one?.lower),
    ...limits.map((one) => one?.upper),
    ...[0.1, 0.25, 0.5].map((share) => dayOfShare(six, share)),
  ];
  const theirs = execFileSync('Rscript', ['-e', script], { encoding: 'utf8' }).trim().split(/\s+/);
  expect(ours.map((one) => one?.toFixed(10) ?? 'NA')).toEqual(theirs);
});

test.skipIf(!r)('R’s survival gives the same incidence where endings compete', () => {
  // Kyle et al. (2002), N Engl J Med 346, 564: 1,384 patients, progression beside death; mgus2 in R's survival, read as
  // its vignette on competing risks reads it.
  const script = `
    library(survival)
    time <- with(mgus2, ifelse(pstat == 0, futime, ptime))
    event <- factor(with(mgus2, ifelse(pstat == 0, 2 * death, 1)), 0:2, c("censor", "pcm", "death"))
    fit <- survfit(Surv(time, event) ~ 1)
    at <- which(fit$n.event[, 2] > 0)
    cat(paste(time, as.integer(event) - 1), sep = "\\n")
    cat("\\n--\\n")
    cat(sprintf("%g %.12f %.12f", fit$time[at], fit$pstate[at, 2], fit$std.err[at, 2]), sep = "\\n")`;
  const [given = '', told = ''] = execFileSync('Rscript', ['-e', script], { encoding: 'utf8' }).split('--');
  const states = ['travelling', 'delivered', 'lost'] as const;
  const rows = given
    .trim()
    .split('\n')
    .map((line) => line.trim().split(' ').map(Number));
  const own = curve(rows.map(([day = 0, state = 0]) => parcel(day, states[state])));
  expect(rows.length).toBe(1384);
  const theirs = told
    .trim()
    .split('\n')
    .map((line) => line.trim().split(/\s+/).map(Number));
  expect(theirs.length).toBeGreaterThan(50);
  for (const [day, share = 0, error = 0] of theirs) {
    const step = own.steps.find((one) => one.day === day);
    if (!step) throw new Error(`Expected a step on ${day}`);
    expect(1 - step.missing).toBeCloseTo(share, 10);
    // R takes the infinitesimal jackknife, which is the same sum arranged by patients instead of days.
    expect(standardError(step)).toBeCloseTo(error, 10);
  }
});
