/** What a link from one record to another may lead to. */
import type { WrittenCycle } from '../content/read.ts';
import { slugFor } from './set-findings.ts';
import type { Target } from './story.ts';

/** Every record's file → what a link to it means; records at fault are among them, because they will be mended. */
export const targetsOf = (cycles: readonly WrittenCycle[]): ReadonlyMap<string, Target> =>
  new Map(
    cycles.flatMap(({ id, items }): (readonly [string, Target])[] => [
      [`cycles/${id}/cycle.md`, { cycle: id }],
      ...items.map((item): readonly [string, Target] => [item.file, { cycle: id, item: slugFor(item) }]),
    ]),
  );
