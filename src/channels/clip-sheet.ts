/** The clip sheet: the short vertical video shot by shot, its subtitles as files, and the post it goes out with. */

import type { Box, Cycle, Moment } from '../model/box.ts';
import { monthName } from '../model/calendar.ts';
import { callFor } from '../model/calls.ts';
import { cautionsOf } from '../model/cautions.ts';
import { type Clip, clipFindings, clipOf, fastestReading, type Shot } from '../model/clip.ts';
import { LINE_LENGTH, LINES, READING_SPEED } from '../model/overlay.ts';
import { makesPiece } from '../model/pieces.ts';
import { isSealed } from '../model/seal.ts';
import { clockText, speechOf } from '../model/speaking.ts';
import { shortName } from '../model/title.ts';
import { subRip, type TimedText, webVtt } from '../render/captions.ts';
import { documentText, schemeElement } from '../render/document.ts';
import { embeddedFonts } from '../render/embedded-fonts.ts';
import type { TextOutput } from '../render/output.ts';
import { pageLang } from '../render/page-lang.ts';
import type { Templates } from '../render/templates.ts';
import { typeset } from '../render/typeset.ts';
import { graphemeCount, wordCount } from '../text/segments.ts';
import type { Channel } from './channel.ts';

export interface ClipContext {
  readonly box: Box;
  readonly cycle: Cycle;
  readonly asOf: Moment;
  readonly templates: Templates;
}

/** "4.8 s" */
const secondsText = (milliseconds: number): string => `${(milliseconds / 1000).toFixed(1)} s`;

/** The post's own text: the hook, the things by name, the call, and what must be said of them. */
export const postText = ({ shots }: Clip, { box, cycle, asOf }: ClipContext): string => {
  const { lang } = box.settings;
  const call = callFor(box, cycle, asOf);
  const hook = shots.find(({ kind }) => kind === 'hook')?.say ?? '';
  const cautions = cycle.items.flatMap((item) => {
    const lines = cautionsOf(item)
      .filter(({ sort }) => sort !== 'ingredients')
      .flatMap((caution) => caution.lines);
    return lines.length > 0 ? [`${shortName(item.name)}: ${lines.join(' ')}`] : [];
  });
  const parts = [
    hook,
    `${cycle.theme}, the ${monthName(cycle, lang)} box from ${box.settings.name}:\n${cycle.items.map(({ name }) => `– ${name}`).join('\n')}`,
    call && `${call.text}: ${call.address}`,
    cautions.length > 0 && `Please note\n${cautions.join('\n')}`,
  ];
  return parts
    .filter((part): part is string => Boolean(part))
    .map((part) => typeset(part, lang))
    .join('\n\n');
};

const timedTexts = ({ shots }: Clip): readonly TimedText[] =>
  shots
    .flatMap(({ overlays }) => overlays)
    .map(({ start, end, lines }, i) => ({ id: String(i + 1), start, end, lines }));

const shotView = (shot: Shot, number: number, lang: string) => ({
  number,
  lead: shot.item?.lead ?? false,
  title: shot.item
    ? typeset(shot.item.name, lang)
    : { hook: 'The hook', item: '', whole: 'The whole box', call: 'The call' }[shot.kind],
  from: (shot.start / 1000).toFixed(1),
  length: secondsText(shot.end - shot.start),
  film: typeset(shot.film, lang),
  say: shot.say,
  overlays: shot.overlays.map(({ start, end, lines }) => ({ length: secondsText(end - start), lines })),
  still: shot.still && {
    file: shot.still.file.slice(shot.still.file.lastIndexOf('/') + 1),
    alt: typeset(shot.still.alt, lang),
  },
});

/** The clip sheet of one cycle and its subtitles, as files of the back room. */
export const clipFiles = (clip: Clip, context: ClipContext): readonly TextOutput[] => {
  const { box, cycle, asOf, templates } = context;
  const { settings } = box;
  const { lang } = settings;
  const own = pageLang(lang);
  const said = clip.shots.map(({ say }) => say).filter(Boolean);
  const post = postText(clip, context);
  const page = templates.render('clip-sheet', {
    lang: own,
    textLang: lang,
    name: typeset(settings.name, lang),
    month: monthName(cycle, own),
    theme: typeset(cycle.theme, lang),
    scheme: schemeElement(cycle.palette),
    fonts: embeddedFonts(templates),
    sealed: isSealed(cycle, asOf),
    length: secondsText(clip.length).replace('.0 s', ' s'),
    clock: clockText(clip.length / 1000),
    wanted: clip.wanted,
    tooLong: clip.length > clip.wanted * 1000,
    words: wordCount(said.join(' '), lang),
    pace: speechOf(settings).pace,
    fastest: fastestReading(clip, lang).toFixed(1),
    limits: { lines: LINES, length: LINE_LENGTH, speed: READING_SPEED },
    said,
    shots: clip.shots.map((shot, i) => shotView(shot, i + 1, lang)),
    post,
    postLength: graphemeCount(post, lang),
    // Words of people who had it for less are an advertisement unless that is said (US 16 CFR 255.5).
    given: cycle.voices.filter((voice) => voice.given).map((voice) => typeset(voice.name, lang)),
  });
  const texts = timedTexts(clip);
  const file = (path: string, text: string): TextOutput => ({
    where: 'backroom',
    path: `${cycle.id}/${path}`,
    text,
  });
  return [
    file('clip-sheet.html', documentText(page)),
    file('clip.vtt', webVtt(texts)),
    file('clip.srt', subRip(texts)),
  ];
};

export const clipSheet: Channel<'backroom'> = {
  name: 'clip-sheet',
  where: 'backroom',
  make: ({ box, asOf, templates }) => {
    if (!makesPiece(box.settings, 'clip')) return { outputs: [], diagnostics: [] };
    const clips = box.cycles.map((cycle) => ({
      cycle,
      clip: clipOf(box, cycle, asOf, (text) => typeset(text, box.settings.lang)),
    }));
    return {
      outputs: clips.flatMap(({ cycle, clip }) => clipFiles(clip, { box, cycle, asOf, templates })),
      diagnostics: clips.flatMap(({ cycle, clip }) => clipFindings(clip, cycle, asOf)),
    };
  },
};
