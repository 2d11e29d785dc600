/** The clip's papers as files: the sheet with the post, and the subtitles. */
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { monthName } from '../../model/calendar.ts';
import { cautionsOf, isDanger } from '../../model/cautions.ts';
import type { LiveInput } from '../../model/cues.ts';
import { speechOf } from '../../model/speaking.ts';
import { subRip, type TimedText, webVtt } from '../../render/captions.ts';
import { clipFor } from '../../render/clip.ts';
import { LINE_LENGTH, LINES, READING_SPEED } from '../../render/clip-overlay.ts';
import { type Clip, fastestReading, isTooWide, leftUpright, type Shot } from '../../render/clip-shots.ts';
import { documentText } from '../../render/document.ts';
import type { MadeDocument } from '../../render/output.ts';
import { paperHead } from '../../render/paper.ts';
import { typeset } from '../../render/typeset.ts';
import { percent } from '../../text/counting-words.ts';
import { graphemeCount, wordCount } from '../../text/segments.ts';
import { joinsFor } from '../../wording/joins.ts';
import type { Wording } from '../../wording/wording.ts';
import type { Tools } from '../channel.ts';
import { filmOutput } from './film.ts';
import { clipFindings } from './findings.ts';

declare module '../../render/templates.ts' {
  interface TemplateData {
    'clip-sheet': ReturnType<typeof sheetView>;
  }
}

/** What a clip sheet is made of. */
interface ClipSheetData {
  readonly told: LiveInput;
  readonly sealed: boolean;
}

/** "4.8", of milliseconds */
const tenths = (milliseconds: number): string => (milliseconds / 1000).toFixed(1);

/** The post's own text: the hook, the things by name, the call, and what must be said of them. */
const postText = (
  { shots }: Clip,
  { cycle, settings, call }: LiveInput,
  { clip, cautions }: Wording,
): string => {
  const { lang } = settings;
  const hook = shots.find(({ kind }) => kind === 'hook')?.say ?? '';
  const dangers = cycle.items.flatMap((item) => {
    const lines = cautionsOf(item)
      .filter(isDanger)
      .flatMap((caution) => cautions.text(caution).lines);
    return lines.length > 0 ? [`${item.inText.short}: ${lines.join(' ')}`] : [];
  });
  const contents = joinsFor(lang).post(cycle.theme, monthName(cycle, lang), settings.name);
  const parts = [
    hook,
    [contents, ...cycle.items.map(({ name }) => `– ${name}`)].join('\n'),
    call ? `${call.text}: ${call.address}` : '',
    dangers.length > 0 ? [clip.post.cautions, ...dangers].join('\n') : '',
  ];
  return parts
    .filter((part) => part !== '')
    .map((part) => typeset(part, lang))
    .join('\n\n');
};

const timedTexts = ({ shots }: Clip): readonly TimedText[] =>
  shots
    .flatMap(({ overlays }) => overlays)
    .map(({ start, end, lines }, i) => ({ id: String(i + 1), start, end, lines }));

const shotView = (shot: Shot, number: number, lang: string, words: Wording['clip']) => ({
  number,
  lead: shot.item?.lead ?? false,
  title: shot.item ? typeset(shot.item.name, lang) : words.shotTitles[shot.kind],
  times: words.from(tenths(shot.start), words.seconds(tenths(shot.end - shot.start))),
  film: typeset(words.film(shot.film), lang),
  overlays: shot.overlays.map(({ start, end, lines }) => ({
    length: words.seconds(tenths(end - start)),
    lines,
  })),
  still: shot.still && {
    file: shot.still.file.slice(shot.still.file.lastIndexOf('/') + 1),
    alt: typeset(shot.still.alt, lang),
    wide: isTooWide(shot.still) && words.wideStill(percent(leftUpright(shot.still))),
  },
});

const sheetView = (clip: Clip, data: ClipSheetData, tools: Tools) => {
  const { wording } = tools;
  const { told, sealed } = data;
  const { cycle, settings } = told;
  const { lang } = settings;
  const words = wording.clip;
  const said = clip.shots.map(({ say }) => say).filter(Boolean);
  const post = postText(clip, told, wording);
  // Words of people who had it for less are an advertisement unless that is said (US 16 CFR 255.5).
  const given = cycle.voices.filter((voice) => voice.given).map((voice) => typeset(voice.name, lang));
  return {
    ...paperHead(told, words, tools),
    sealed,
    length: words.seconds(tenths(clip.length).replace(/\.0$/, '')),
    plan: words.plan(clip.shots.length, wordCount(said.join(' '), lang), speechOf(settings).pace),
    tooLong: clip.length > clip.wanted * 1000 && words.tooLong(clip.wanted),
    limits: words.limits(LINES, LINE_LENGTH, READING_SPEED, fastestReading(clip, lang).toFixed(1)),
    said,
    shots: clip.shots.map((shot, i) => shotView(shot, i + 1, lang, words)),
    post,
    postLength: words.post.length(graphemeCount(post, lang)),
    given: given.length > 0 && words.post.given(given),
  };
};

/** The clip sheet as HTML, with the findings about the clip. */
export const clipSheetPage = (data: ClipSheetData, tools: Tools): MadeDocument<Diagnostic> => {
  const clip = clipFor(data.told, tools.wording);
  const page = tools.templates.render('clip-sheet', sheetView(clip, data, tools));
  return {
    content: documentText(page),
    films: filmOutput(clip, data.told),
    diagnostics: clipFindings(clip, { cycle: data.told.cycle, sealed: data.sealed }),
  };
};

/** The words over the clip's pictures as WebVTT. */
export const webVttFile = (input: LiveInput, { wording }: Tools): MadeDocument<Diagnostic> => ({
  content: webVtt(timedTexts(clipFor(input, wording))),
});

/** The same as SubRip. */
export const subRipFile = (input: LiveInput, { wording }: Tools): MadeDocument<Diagnostic> => ({
  content: subRip(timedTexts(clipFor(input, wording))),
});
