/** `lidlore parcels`. */

import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import { mustFixAny } from '../diagnostics/diagnostic.ts';
import { programDigest } from '../io/program.ts';
import { DEFAULT_SHARE } from '../pipeline/defaults.ts';
import type { ParcelsFacts, Step } from '../pipeline/parcels.ts';
import { commandLine } from '../wording/en/command-line.ts';
import { findContentFolder, readMoment } from './content-folder.ts';
import type { Environment, Operands, Values } from './environment.ts';
import { EXIT } from './exit-status.ts';
import { nearestCycle } from './nearest-cycle.ts';
import { diagnosticsCount, diagnosticsReport } from './report.ts';
import { FILE_WIDTH } from './widths.ts';

const { mistakes, nothing, help } = commandLine;

/** A share above 0 and below 1, also as `90%`; undefined for anything else. */
const readShare = (text: string): number | undefined => {
  const written = text.trim();
  const share = /^0?\.\d+$/.test(written)
    ? Number(written)
    : /^\d{1,2}(?:\.\d+)?\s?%$/.test(written)
      ? Number.parseFloat(written) / 100
      : undefined;
  return share !== undefined && share > 0 && share < 1 ? share : undefined;
};

/** The facts as plain JSON: days since shipping as numbers, dates `YYYY-MM-DD`, moments ISO 8601 in UTC. */
const asJson = async (facts: ParcelsFacts): Promise<object> => {
  const { dateOfDay, logLogLimits, standardError } = await import('../pipeline/parcels.ts');
  const instant = (moment: number): string => new Date(moment).toISOString();
  const steps = (all: readonly Step[]): readonly object[] =>
    all.map((step) => {
      const limits = logLogLimits(step);
      return {
        day: step.day,
        atRisk: step.atRisk,
        delivered: step.delivered,
        share: 1 - step.missing,
        ...(limits && {
          standardError: standardError(step),
          lower: 1 - limits.upper,
          upper: 1 - limits.lower,
        }),
      };
    });
  const { outlook, reveal, sendings, overdue, tally, asOf, curve, carriers, regions, evenings, ...rest } =
    facts;
  const groups = (some: typeof carriers): readonly object[] =>
    some.map(({ newest, ...group }) => ({
      ...group,
      ...(newest !== undefined && { newest: dateOfDay(newest) }),
    }));
  const dates = Object.fromEntries(
    Object.entries(outlook.dates).map(([key, day]) => [key, dateOfDay(day as number)]),
  );
  return {
    ...rest,
    asOf: instant(asOf),
    ...tally,
    sendings: sendings.map(({ shipped, count }) => ({ shipped: dateOfDay(shipped), count })),
    curve: steps(curve.steps),
    outlook: { ...outlook, dates, curve: steps(outlook.curve.steps) },
    ...(overdue && {
      overdue: {
        ...overdue,
        days: overdue.days.map((day) => ({ ...day, shipped: dateOfDay(day.shipped) })),
      },
    }),
    carriers: groups(carriers),
    regions: groups(regions),
    reveal: {
      verdict: reveal.verdict,
      ...(reveal.planned !== undefined && { planned: instant(reveal.planned) }),
      proposed: evenings.map(({ moment, share }) => ({ moment: instant(moment), share })),
      ...(reveal.surely !== undefined && { surely: instant(reveal.surely) }),
    },
  };
};

/** Reads the shipments, reports, and gives the exit status. */
export const parcelsCommand = async (
  values: Values,
  environment: Environment,
  [operand]: Operands,
): Promise<number> => {
  const refuse = (mistake: string): number => {
    environment.stderr.write(`${mistake}\n${help.see('parcels')}\n`);
    return EXIT.usage;
  };
  const share = typeof values.share === 'string' ? readShare(values.share) : undefined;
  if (values.share !== undefined && share === undefined)
    return refuse(mistakes.share(String(values.share), DEFAULT_SHARE));
  const place = findContentFolder(values, environment.cwd);
  if ('mistake' in place) return refuse(place.mistake);
  const moment = await readMoment(values);
  if ('mistake' in moment) return refuse(moment.mistake);
  const { root, showFile } = place;
  const csv = operand !== undefined && /\.(csv|tsv|txt)$/i.test(operand) ? operand : undefined;
  const file = csv === undefined ? undefined : resolve(environment.cwd, csv);
  if (csv !== undefined && file !== undefined && !statSync(file, { throwIfNoEntry: false })?.isFile())
    return refuse(mistakes.noFile(csv));

  const [{ withMemory }, { askParcels }] = await Promise.all([
    import('./with-memory.ts'),
    import('../workspace/ask-parcels.ts'),
  ]);
  const { facts, diagnostics, cycles } = await withMemory(place.memory, async (memory) => ({
    value: await askParcels({
      path: place.content,
      memory,
      program: programDigest(),
      asOf: moment.asOf,
      ...(csv !== undefined && file !== undefined
        ? { file: { path: file, name: csv } }
        : operand === undefined
          ? {}
          : { cycle: operand }),
      ...(share === undefined ? {} : { share }),
    }),
    isWhole: false,
  }));
  if (csv === undefined && operand !== undefined && !cycles.includes(operand)) {
    return refuse(mistakes.noCycle(operand, root, nearestCycle(operand, cycles)) + mistakes.fileByEnding);
  }
  const ok = facts !== undefined && !mustFixAny(diagnostics);
  const show = (name: string): string => (name === csv ? name : showFile(name));
  if (values.json === true)
    environment.stdout.write(
      `${JSON.stringify({ ok, ...(facts ? await asJson(facts) : {}), diagnostics })}\n`,
    );
  else {
    environment.stderr.write(diagnosticsReport(diagnostics, show));
    if (facts) {
      const { parcelsReport } = await import('./parcels-report.ts');
      const columns = environment.columns ?? FILE_WIDTH;
      environment.stdout.write(parcelsReport(facts, { columns, showFile: show, lang: 'en-GB' }));
    } else
      environment.stderr.write(
        diagnostics.length > 0
          ? `\n${nothing.noFigures(diagnosticsCount(diagnostics))}\n`
          : `${nothing.noCycles(root)}\n`,
      );
  }
  return ok ? EXIT.done : EXIT.mustFix;
};
