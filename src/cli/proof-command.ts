/** `lidlore proof`. */

import { mustFixAny } from '../diagnostics/diagnostic.ts';
import { nearest } from '../diagnostics/nearest.ts';
import type { Coverage } from '../pipeline/proof.ts';
import { readContentFolder } from './content-folder.ts';
import type { Environment, Operands, Values } from './environment.ts';
import { EXIT } from './exit-status.ts';
import { progress } from './progress.ts';
import { diagnosticsCount, diagnosticsReport } from './report.ts';

/** Columns of a report that goes to a file. */
const FILE_WIDTH = 100;

/** A share above 0 and below 1, or undefined. */
const readAim = (text: string): number | undefined => {
  const aim = /^(?:0?\.\d+)$/.test(text.trim()) ? Number(text) : undefined;
  return aim !== undefined && aim > 0 ? aim : undefined;
};

/** The coverage without the article's own text: every mention says where it stands. */
const asJson = ({ passages: _, items, ...rest }: Coverage): object => ({
  ...rest,
  items: items.map(({ phrases, ...item }) => ({
    ...item,
    phrases: phrases.map(({ phrase, ...found }) => ({
      text: phrase.text,
      origins: phrase.origins,
      weight: phrase.weight,
      ...found,
    })),
  })),
});

/** Proves, reports, and gives the exit status. */
export const proofCommand = async (values: Values, edge: Environment, [cycle]: Operands): Promise<number> => {
  const refuse = (mistake: string): number => {
    edge.stderr.write(`${mistake}\nSee: lidlore proof --help\n`);
    return EXIT.usage;
  };
  const aim = typeof values.aim === 'string' ? readAim(values.aim) : undefined;
  if (values.aim !== undefined && aim === undefined)
    return refuse(`Unexpected --aim ${values.aim}, expected a standing between 0 and 1, as 0.7.`);
  const place = await readContentFolder(values, edge.cwd);
  if ('mistake' in place) return refuse(place.mistake);
  const { content, root, cache, asOf, showFile } = place;

  const [{ readContent }, { readNameMemory }, { readerOf }, { isAtAim, proofOf }] = await Promise.all([
    import('../io/read-content.ts'),
    import('../io/name-memory.ts'),
    import('./record-files.ts'),
    import('../pipeline/proof.ts'),
  ]);
  const sources = await readContent(content, cache, progress(edge, 'Looking at photos'), root);
  const readFile = await readerOf(sources, cache);
  const memory = await readNameMemory(cache);
  const { coverage, diagnostics, cycles } = await proofOf({
    sources,
    readFile,
    asOf,
    names: memory.names,
    readParcels: async () => {
      const { readLists } = await import('./parcels-lists.ts');
      return readLists(content, sources, readFile, asOf);
    },
    ...(cycle === undefined ? {} : { cycle }),
    ...(aim === undefined ? {} : { aim }),
  });
  // What cannot be remembered is looked up again next time.
  await memory.keep().catch(() => undefined);
  if (cycle !== undefined && !cycles.includes(cycle)) {
    const meant = nearest(cycle, cycles);
    return refuse(
      `There is no cycle ${cycle} in ${root}.${meant ? ` Did you mean ${meant}?` : ''}${cycles.length > 0 ? ` The newest is ${cycles.at(-1)}.` : ''}`,
    );
  }
  const missed = coverage?.items.some(({ standing }) => !isAtAim(standing, coverage.aim)) ?? true;
  const ok = !missed && !mustFixAny(diagnostics);
  if (values.json === true) {
    edge.stdout.write(`${JSON.stringify({ ok, ...(coverage ? asJson(coverage) : {}), diagnostics })}\n`);
  } else if (coverage) {
    const { proofReport } = await import('./proof-report.ts');
    edge.stdout.write(proofReport(coverage, diagnostics, { width: edge.columns ?? FILE_WIDTH, showFile }));
  } else {
    edge.stderr.write(diagnosticsReport(diagnostics, showFile));
    edge.stderr.write(
      diagnostics.length > 0
        ? `\n${diagnosticsCount(diagnostics)}. There is no proof before these are mended.\n`
        : `There is no cycle in ${root} yet. Begin with ${root}/cycles/2026-03/cycle.md, in a folder named for its month.\n`,
    );
  }
  return ok ? EXIT.done : EXIT.mustFix;
};
