/** The live's papers as files: the run sheet, and the recording's chapters for a player. */
import { type Diagnostic, locationText } from '../../diagnostics/diagnostic.ts';
import { type Beat, type Live, liveOf } from '../../model/beats.ts';
import { revealDay } from '../../model/calendar.ts';
import { type Chapter, chaptersOf } from '../../model/chapters.ts';
import type { LiveInput } from '../../model/cues.ts';
import { clockText, speechOf } from '../../model/speaking.ts';
import { webVtt } from '../../render/captions.ts';
import { documentText } from '../../render/document.ts';
import { findingViews } from '../../render/findings.ts';
import type { MadeDocument } from '../../render/output.ts';
import { pageLang } from '../../render/page-lang.ts';
import { paperHead } from '../../render/paper.ts';
import { spokenWordsFor } from '../../render/spoken-words.ts';
import { typeset } from '../../render/typeset.ts';
import type { Wording } from '../../wording/wording.ts';
import type { Tools } from '../channel.ts';
import { liveFindings } from './findings.ts';

declare module '../../render/templates.ts' {
  interface TemplateData {
    'run-sheet': ReturnType<typeof sheetView>;
  }
}

/** What a run sheet is made of. */
interface RunSheetData extends LiveInput {
  readonly sealed: boolean;
}

const beatView = (beat: Beat, lang: string, { live, cautions }: Wording) => {
  const set = (text: string): string => typeset(text, lang);
  const { item } = beat;
  return {
    name: beat.name,
    title: set(live.beatTitle(beat)),
    start: beat.start,
    seconds: beat.seconds,
    clock: clockText(beat.start),
    length: clockText(beat.seconds),
    room: beat.room > 0 && clockText(beat.room),
    before: beat.kind === 'stage',
    asks: beat.kind === 'greet' || beat.kind === 'questions',
    lead: item?.lead ?? false,
    say: beat.say.map(set),
    show: beat.show.map((one) => set(live.direction(one))),
    cautions: beat.cautions.map(({ sort, lines }) => ({
      label: cautions.labels[sort],
      lines: lines.map(set),
    })),
    // What somebody will ask while it is held up.
    facts:
      item &&
      [item.brand, item.material.join(', '), item.size, item.weight]
        .filter((fact) => fact !== undefined && fact !== '')
        .map((fact) => set(fact ?? '')),
    from: beat.from && locationText(beat.from).replace(/:\d+$/, ''),
    field: beat.field,
  };
};

const lengthText = ({ seconds, needed, wanted }: Live, words: Wording['live']): string =>
  words.length(
    wanted === undefined
      ? { plan: 'open' }
      : needed > wanted
        ? { plan: 'too long', wanted: clockText(wanted), over: clockText(needed - wanted) }
        : { plan: 'with room', needed: clockText(needed), left: clockText(seconds - needed) },
  );

const chapterLines = (chapters: readonly Chapter[], lang: string, words: Wording['live']) =>
  chapters.map((chapter) => ({
    clock: clockText(chapter.start),
    title: typeset(words.chapterTitle(chapter), lang),
  }));

const sheetView = (live: Live, data: RunSheetData, tools: Tools, findings: readonly Diagnostic[]) => {
  const { wording } = tools;
  const { cycle, settings, sealed } = data;
  const { lang, timeZone } = settings;
  const own = pageLang(lang);
  const words = wording.live;
  return {
    ...paperHead(data, words, tools),
    sealed: sealed && wording.calendar.sealedUntil(revealDay(cycle, timeZone, own)),
    length: lengthText(live, words),
    total: clockText(live.seconds),
    pace: words.pace(speechOf(settings).pace),
    beats: live.beats.map((beat) => beatView(beat, lang, wording)),
    chapters: chapterLines(chaptersOf(cycle), lang, words),
    findings: findingViews(findings, wording.findings),
  };
};

/** The run sheet as HTML, with the findings about the live that it shows. */
export const runSheetPage = (data: RunSheetData, tools: Tools): MadeDocument<Diagnostic> => {
  const { wording, templates } = tools;
  const live = liveOf(data, spokenWordsFor(wording, data.settings.lang));
  const diagnostics = liveFindings(live, data, wording.live.beatTitle);
  const page = templates.render('run-sheet', sheetView(live, data, tools, diagnostics));
  return { content: documentText(page), diagnostics };
};

/** A recording's chapters as WebVTT, one cue a chapter. */
export const chaptersFile = (
  { chapters, lang }: { readonly chapters: readonly Chapter[]; readonly lang: string },
  { wording }: Tools,
): MadeDocument<Diagnostic> => ({
  content: webVtt(
    chapters.map((chapter) => ({
      id: chapter.name,
      start: chapter.start * 1000,
      end: chapter.end * 1000,
      lines: [typeset(wording.live.chapterTitle(chapter), lang)],
    })),
  ),
});
