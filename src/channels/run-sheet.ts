/** The run sheet: a live reveal beat by beat, to print, to read and to be led by; and the recording's chapters. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { locationText } from '../diagnostics/diagnostic.ts';
import { type Beat, type Live, liveOf } from '../model/beats.ts';
import type { Box, Cycle, Moment } from '../model/box.ts';
import { monthName, revealDay } from '../model/calendar.ts';
import { chaptersOf } from '../model/chapters.ts';
import { liveFindings } from '../model/live-findings.ts';
import { makesPiece } from '../model/pieces.ts';
import { isSealed } from '../model/seal.ts';
import { clockText, speechOf } from '../model/speaking.ts';
import { webVtt } from '../render/captions.ts';
import { documentText, schemeElement } from '../render/document.ts';
import { embeddedFonts } from '../render/embedded-fonts.ts';
import { findingViews } from '../render/findings.ts';
import type { TextOutput } from '../render/output.ts';
import { pageLang } from '../render/page-lang.ts';
import type { Templates } from '../render/templates.ts';
import { typeset } from '../render/typeset.ts';
import { wordingFor } from '../wording/wording.ts';
import type { Channel } from './channel.ts';

export interface RunSheetContext {
  readonly box: Box;
  readonly cycle: Cycle;
  readonly asOf: Moment;
  readonly templates: Templates;
  readonly findings: readonly Diagnostic[];
}

const beatView = (beat: Beat, lang: string) => {
  const set = (text: string): string => typeset(text, lang);
  const { item } = beat;
  const words = beat.say.map(set);
  return {
    name: beat.name,
    title: set(beat.title),
    start: beat.start,
    seconds: beat.seconds,
    clock: clockText(beat.start),
    length: clockText(beat.seconds),
    room: beat.room > 0 && clockText(beat.room),
    before: beat.kind === 'stage',
    asks: beat.kind === 'greet' || beat.kind === 'questions',
    lead: item?.lead ?? false,
    say: words,
    show: beat.show.map(set),
    cautions: beat.cautions.map(({ label, lines }) => ({ label, lines: lines.map(set) })),
    // What somebody will ask while it is held up.
    facts:
      item &&
      [item.brand, item.material.join(', '), item.size, item.weight]
        .filter(Boolean)
        .map((fact) => set(fact as string)),
    from: beat.from && locationText(beat.from).replace(/:\d+$/, ''),
    field: beat.field,
  };
};

const lengthWords = ({ seconds, needed, wanted }: Live): string => {
  const plan = `Words and handling take ${clockText(needed)}`;
  if (wanted === undefined) return `${plan}. Say how long it should last with “live: {minutes: …}”.`;
  if (needed > wanted)
    return `${plan}, which is ${clockText(needed - wanted)} more than the ${clockText(wanted)} wanted.`;
  return `${plan} of the ${clockText(seconds)} wanted; the other ${clockText(seconds - needed)} are shared out for questions and looking.`;
};

/** The run sheet of one cycle as a file of the back room. */
export const runSheetPage = (live: Live, context: RunSheetContext): TextOutput => {
  const { box, cycle, asOf, templates, findings } = context;
  const { settings } = box;
  const { lang, timeZone } = settings;
  const own = pageLang(lang);
  const chapters = chaptersOf(cycle);
  const page = templates.render('run-sheet', {
    lang: own,
    textLang: lang,
    name: typeset(settings.name, lang),
    month: monthName(cycle, own),
    theme: typeset(cycle.theme, lang),
    scheme: schemeElement(cycle.palette),
    fonts: embeddedFonts(templates),
    sealed: isSealed(cycle, asOf),
    reveal: revealDay(cycle, timeZone, own),
    length: lengthWords(live),
    total: clockText(live.seconds),
    pace: speechOf(settings).pace,
    beats: live.beats.map((beat) => beatView(beat, lang)),
    chapters: chapters.map(({ start, title }) => ({ clock: clockText(start), title: typeset(title, lang) })),
    findings: findingViews(findings, wordingFor(own).findings),
  });
  return {
    where: 'backroom',
    path: `${cycle.id}/run-sheet.html`,
    text: documentText(page),
  };
};

/** The recording's chapters for a player: WebVTT, one cue a chapter. */
const chaptersFile = (cycle: Cycle, lang: string): readonly TextOutput[] => {
  const chapters = chaptersOf(cycle);
  if (chapters.length === 0) return [];
  const text = webVtt(
    chapters.map(({ name, title, start, end }) => ({
      id: name,
      start: start * 1000,
      end: end * 1000,
      lines: [typeset(title, lang)],
    })),
  );
  return [{ where: 'backroom', path: `${cycle.id}/chapters.vtt`, text }];
};

export const runSheet: Channel<'backroom'> = {
  name: 'run-sheet',
  where: 'backroom',
  make: ({ box, asOf, templates }) => {
    if (!makesPiece(box.settings, 'live')) return { outputs: [], diagnostics: [] };
    const sheets = box.cycles.map((cycle) => {
      const live = liveOf(box, cycle, asOf);
      const findings = liveFindings(live, cycle, asOf);
      const page = runSheetPage(live, { box, cycle, asOf, templates, findings });
      return { outputs: [page, ...chaptersFile(cycle, box.settings.lang)], findings };
    });
    return {
      outputs: sheets.flatMap(({ outputs }) => outputs),
      diagnostics: sheets.flatMap(({ findings }) => findings),
    };
  },
};
