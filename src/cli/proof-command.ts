/** `lidlore proof`. */

import { mustFixAny } from '../diagnostics/diagnostic.ts';
import { programDigest } from '../io/program.ts';
import { DEFAULT_AIM } from '../pipeline/defaults.ts';
import type { Coverage } from '../pipeline/proof.ts';
import { commandLine } from '../wording/en/command-line.ts';
import { coverage as said } from '../wording/en/coverage.ts';
import type { Proven } from '../workspace/prove-cycle.ts';
import { findContentFolder, readMoment } from './content-folder.ts';
import type { Environment, Operands, Values } from './environment.ts';
import { EXIT } from './exit-status.ts';
import { nearestCycle } from './nearest-cycle.ts';
import { progress } from './progress.ts';
import { diagnosticsCount, diagnosticsReport } from './report.ts';
import { FILE_WIDTH } from './widths.ts';

const { mistakes, nothing, help } = commandLine;

/** A share above 0 and below 1, or undefined. */
const readAim = (text: string): number | undefined => {
  const aim = /^(?:0?\.\d+)$/.test(text.trim()) ? Number(text) : undefined;
  return aim !== undefined && aim > 0 ? aim : undefined;
};

/** The coverage without the article's own text: every mention says where it stands. Facts have their sentences beside them. */
const asJson = ({ passages: _text, digest: _digest, items, limits, advice, ...rest }: Coverage): object => ({
  ...rest,
  limits: limits.map((limit) => said.limits[limit]),
  advice: advice.map((edit) => ({ ...edit, words: said.instruction(edit) })),
  items: items.map(({ phrases, ...item }) => ({
    ...item,
    phrases: phrases.map(({ phrase, rival, ...found }) => ({
      text: phrase.text,
      origins: phrase.origins.map((origin) => ({ ...origin, words: said.origin(origin) })),
      weight: phrase.weight,
      ...found,
      ...(rival && { rival: { ...rival, why: said.rivalReason(rival.reason) } }),
    })),
  })),
});

interface Answer {
  readonly stdout?: string;
  readonly stderr?: string;
  readonly status: number;
}

/** Proves, reports, and gives the exit status. */
export const proofCommand = async (
  values: Values,
  environment: Environment,
  [cycle]: Operands,
): Promise<number> => {
  const refuse = (mistake: string): number => {
    environment.stderr.write(`${mistake}\n${help.see('proof')}\n`);
    return EXIT.usage;
  };
  const aim = typeof values.aim === 'string' ? readAim(values.aim) : undefined;
  if (values.aim !== undefined && aim === undefined)
    return refuse(mistakes.aim(String(values.aim), DEFAULT_AIM));
  const place = findContentFolder(values, environment.cwd);
  if ('mistake' in place) return refuse(place.mistake);
  const moment = await readMoment(values);
  if ('mistake' in moment) return refuse(moment.mistake);
  const { root, showFile } = place;

  const answer = async ({ coverage, diagnostics, cycles }: Proven): Promise<Answer> => {
    if (cycle !== undefined && !cycles.includes(cycle)) {
      const newest = cycles.at(-1);
      const mistake =
        mistakes.noCycle(cycle, root, nearestCycle(cycle, cycles)) +
        (newest === undefined ? '' : mistakes.newestCycle(newest));
      return { stderr: `${mistake}\n${help.see('proof')}\n`, status: EXIT.usage };
    }
    const missed = coverage?.items.some((item) => !isFound(item, coverage.aim)) ?? true;
    const ok = !missed && !mustFixAny(diagnostics);
    const status = ok ? EXIT.done : EXIT.mustFix;
    if (values.json === true) {
      const stdout = `${JSON.stringify({ ok, ...(coverage ? asJson(coverage) : {}), diagnostics })}\n`;
      return { stdout, status };
    }
    if (coverage) {
      const { proofReport } = await import('./proof-report.ts');
      const form = { width: environment.columns ?? FILE_WIDTH, showFile };
      return { stdout: proofReport(coverage, diagnostics, form), status };
    }
    const nothingProved =
      diagnostics.length > 0
        ? `\n${nothing.noProof(diagnosticsCount(diagnostics))}\n`
        : `${nothing.noCycles(root)}${nothing.beginCycle(root)}\n`;
    return { stderr: diagnosticsReport(diagnostics, showFile) + nothingProved, status };
  };

  const [{ withMemory }, { proveCycle }, { isFound }] = await Promise.all([
    import('./with-memory.ts'),
    import('../workspace/prove-cycle.ts'),
    import('../pipeline/proof.ts'),
  ]);
  // The answer is put into words while the memory is open, because a proof is read out of it bit by bit.
  const { stdout, stderr, status } = await withMemory(place.memory, async (memory) => ({
    value: await answer(
      await proveCycle({
        path: place.content,
        memory,
        asOf: moment.asOf,
        program: programDigest(),
        onPhotos: progress(environment, commandLine.progress.photos),
        ...(cycle === undefined ? {} : { cycle }),
        ...(aim === undefined ? {} : { aim }),
      }),
    ),
    isWhole: false,
  }));
  if (stdout !== undefined) environment.stdout.write(stdout);
  if (stderr !== undefined) environment.stderr.write(stderr);
  return status;
};
