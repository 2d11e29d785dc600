/** The order of the stages, without a disk: Sources → outputs and findings. */
import { channels } from '../channels/index.ts';
import { readRecords } from '../content/read.ts';
import type { Sources } from '../content/sources.ts';
import { type Diagnostic, mustFixAny } from '../diagnostics/diagnostic.ts';
import type { Box, Moment } from '../model/box.ts';
import { dateInZone, longDate } from '../model/calendar.ts';
import { linkBox } from '../model/link.ts';
import { isSealed, unsealed } from '../model/seal.ts';
import type { Output } from '../render/output.ts';
import { type Asset, compileTemplates, type TemplateFile } from '../render/templates.ts';
import type { AsOf } from './as-of.ts';

/** `records`: texts are checked and linked; `pages`: channels make their files. */
export type Stage = 'records' | 'pages';

export interface BuildInput {
  readonly sources: Sources;
  readonly templates: { readonly files: readonly TemplateFile[]; readonly assets: readonly Asset[] };
  readonly asOf: AsOf;
  /** Called as each stage begins; the core has no clock, but the edge may time it so. */
  readonly onStage?: (stage: Stage) => void;
}

/** A cycle that is not shown yet. */
export interface SealedCycle {
  readonly cycle: string;
  readonly theme: string;
  readonly reveal: Moment;
  /** The day of the reveal in the box's zone, written out. */
  readonly revealDay: string;
}

export interface BuildResult {
  /** Empty when anything must be fixed. Paths are unique within `site` and within `backroom`. */
  readonly outputs: readonly Output[];
  readonly diagnostics: readonly Diagnostic[];
  /** Absent when the records do not make a box. */
  readonly box?: Box;
  readonly asOf?: Moment;
  readonly sealed: readonly SealedCycle[];
}

const sameContent = (a: Output, b: Output): boolean => {
  if ('text' in a) return 'text' in b && a.text === b.text;
  if ('bytes' in a) return 'bytes' in b && Buffer.compare(a.bytes, b.bytes) === 0;
  const key = ({ picture: { hash, width, height, focus, format } }: typeof a): string =>
    JSON.stringify([hash, width, height, focus?.x, focus?.y, format]);
  return 'picture' in b && key(a) === key(b);
};

/** One output a path; throws when two channels want different files in one place. */
const unique = (outputs: readonly Output[]): readonly Output[] => {
  const byPath = new Map<string, Output>();
  for (const output of outputs) {
    const key = `${output.where}/${output.path}`;
    const other = byPath.get(key);
    if (other && !sameContent(other, output)) throw new Error(`Two different files of one path: ${key}`);
    byPath.set(key, other ?? output);
  }
  return [...byPath.values()];
};

const sealedIn = (box: Box, asOf: Moment): readonly SealedCycle[] => {
  const { timeZone, lang } = box.settings;
  return box.cycles
    .filter((cycle) => isSealed(cycle, asOf))
    .map(({ id, theme, reveal }) => ({
      cycle: id,
      theme,
      reveal,
      revealDay: longDate(dateInZone(reveal, timeZone), lang),
    }));
};

/** All files of the site and the back room as of a moment, or what must be fixed first. */
export const buildSite = ({ sources, templates, asOf, onStage = () => {} }: BuildInput): BuildResult => {
  onStage('records');
  const records = readRecords(sources);
  const linked = linkBox(records.value, sources);
  const compiled = compileTemplates(templates.files, templates.assets);
  const found = [...records.diagnostics, ...linked.diagnostics, ...compiled.diagnostics];
  const box = linked.value;
  if (!box) return { outputs: [], diagnostics: found, sealed: [] };

  const moment = typeof asOf === 'number' ? asOf : asOf(box.settings.timeZone);
  const known = { box, asOf: moment, sealed: sealedIn(box, moment) };
  if (mustFixAny(found)) return { outputs: [], diagnostics: found, ...known };

  onStage('pages');
  const open = unsealed(box, moment);
  const results = channels.map(({ where, make }) =>
    make({ box: where === 'site' ? open : box, asOf: moment, templates: compiled.value }),
  );
  const diagnostics = [...found, ...results.flatMap((result) => result.diagnostics)];
  const outputs = mustFixAny(diagnostics) ? [] : unique(results.flatMap((result) => result.outputs));
  return { outputs, diagnostics, ...known };
};
