/** The letter as files: as it is read, without markup, as a whole message, and the sheet for sending it. */

import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { BoxSettings, Cycle, Moment } from '../../model/box.ts';
import { mailDate, monthName, revealDay } from '../../model/calendar.ts';
import { documentText } from '../../render/document.ts';
import { lastingId } from '../../render/lasting-id.ts';
import type { MadeDocument } from '../../render/output.ts';
import { pageLang } from '../../render/page-lang.ts';
import { backRoomLine, paperStyle } from '../../render/paper.ts';
import { typeset } from '../../render/typeset.ts';
import { rememberedFor } from '../../text/remembered.ts';
import { utf8Length } from '../../text/utf8.ts';
import { joinsFor } from '../../wording/joins.ts';
import type { Tools } from '../channel.ts';
import { LETTER_BYTES, sizeFinding } from './findings.ts';
import { type LetterHead, letterHtml } from './html.ts';
import { type Letter, type LetterInput, letterOf } from './letter.ts';
import { mailAddress, messageText } from './message.ts';
import { inPreview, letterFiles, previewFiles } from './pictures.ts';
import { letterText } from './plain-text.ts';
import { type Line, PREHEADER_LENGTH, preheadersOf, SUBJECT_LENGTH, subjectsOf } from './subjects.ts';

declare module '../../render/templates.ts' {
  interface TemplateData {
    'letter-sheet': ReturnType<typeof sheetView>;
  }
}

/** What a whole message is made of. */
interface MessageData {
  readonly told: LetterInput;
  /** The moment of its Date header. */
  readonly sent: Moment;
}

/** What the sheet is made of. */
interface LetterSheetData {
  readonly told: LetterInput;
  readonly sealed: boolean;
  /** Whether there is a preview to look at. */
  readonly preview: boolean;
}

/** A letter with what lists of mail show of it, the chosen line first. */
interface Headed {
  readonly letter: Letter;
  readonly subjects: readonly Line[];
  readonly preheaders: readonly Line[];
}

const headed = rememberedFor((input: LetterInput, { wording }: Tools): Headed => {
  const { cycle, settings } = input;
  const lines = joinsFor(settings.lang).letter;
  const letter = letterOf(input, wording.cautions.text);
  return {
    letter,
    subjects: subjectsOf(cycle, settings, lines),
    preheaders: preheadersOf(cycle, letter, lines),
  };
});

const headOf = ({ subjects, preheaders }: Headed, { palette }: Cycle): LetterHead => ({
  subject: subjects[0]?.text ?? '',
  preheader: preheaders[0]?.text ?? '',
  palette,
});

const htmlOf = rememberedFor((input: LetterInput, tools: Tools): string => {
  const made = headed(input, tools);
  return letterHtml(made.letter, headOf(made, input.cycle), tools);
});

/** The one https address of RFC 8058, as a header can bear it; a placeholder is none. */
const oneClick = ({ unsubscribe }: BoxSettings): string | undefined =>
  unsubscribe !== undefined && /^https:\/\/\S+$/i.test(unsubscribe) && URL.canParse(unsubscribe)
    ? new URL(unsubscribe).href
    : undefined;

/** What a message comes from: the box's address, or a stand-in where no header can bear it. */
const senderOf = ({ email, url }: BoxSettings): string =>
  (email === undefined ? undefined : mailAddress(email)) ?? `letter@${new URL(url).hostname}`;

/** The letter as HTML. */
export const letterPage = (input: LetterInput, tools: Tools): MadeDocument<Diagnostic> => ({
  content: htmlOf(input, tools),
});

/** The letter to look at before the site is published: the same, but for its window's title and its own pictures. */
export const letterPreview = (input: LetterInput, tools: Tools): MadeDocument<Diagnostic> => {
  const { cycle, settings } = input;
  const { wording } = tools;
  const head = headOf(headed(input, tools), cycle);
  const subject = wording.letter.page.preview(head.subject);
  return {
    content: letterHtml(
      letterOf(input, wording.cautions.text, inPreview(cycle)),
      { ...head, subject },
      tools,
    ),
    pictures: previewFiles(settings, cycle),
  };
};

/** The letter without markup. */
export const plainLetter = (input: LetterInput, tools: Tools): MadeDocument<Diagnostic> => ({
  content: letterText(headed(input, tools).letter, tools.wording.letter),
});

/** Both forms in one message, addressed to nobody. */
export const wholeMessage = (data: MessageData, tools: Tools): MadeDocument<Diagnostic> => {
  const { told, sent } = data;
  const { cycle, settings } = told;
  const { letter, subjects } = headed(told, tools);
  const unsubscribe = oneClick(settings);
  const content = messageText({
    from: { name: settings.name, address: senderOf(settings) },
    date: mailDate(sent, settings.timeZone),
    id: lastingId(settings, cycle, 'letter'),
    subject: subjects[0]?.text ?? '',
    lang: settings.lang,
    ...(unsubscribe ? { unsubscribe } : {}),
    text: letterText(letter, tools.wording.letter),
    html: htmlOf(told, tools),
  });
  return { content };
};

const linesView = (heading: string, lines: readonly Line[], most: number) => ({
  heading,
  wordings: lines.map(({ text, length }) => ({ text, length, isCutOff: length > most })),
});

const sheetView = (
  { told, sealed, preview }: LetterSheetData,
  made: Headed,
  bytes: number,
  { templates, wording }: Tools,
) => {
  const { cycle, settings, call } = told;
  const { lang, timeZone } = settings;
  const words = wording.letter.sheet;
  const month = monthName(cycle, pageLang(lang));
  return {
    words,
    /** Of the sheet, which is in the wording's own language. */
    lang: wording.lang,
    pageTitle: words.title(month, typeset(settings.name, lang)),
    ...backRoomLine(settings, wording),
    heading: words.heading(month),
    theme: typeset(cycle.theme, lang),
    scheme: paperStyle(cycle.palette, templates),
    sealed: sealed && wording.calendar.sealedUntil(revealDay(cycle, timeZone, pageLang(lang))),
    lists: [
      linesView(words.subjects, made.subjects, SUBJECT_LENGTH),
      linesView(words.preheaders, made.preheaders, PREHEADER_LENGTH),
    ],
    publishFirst: words.publishFirst(letterFiles(settings, cycle).length),
    formsEnd: words.forms.end(`${settings.name} <${senderOf(settings)}>`),
    oneClick: oneClick(settings),
    placeholder: settings.unsubscribe,
    size: words.size(
      words.kilobytes((bytes / 1000).toFixed(1)),
      words.kilobytes(String(LETTER_BYTES / 1000)),
    ),
    preview,
    replay: cycle.replay?.address,
    call: call && { address: call.address, words: words.test.callWords(call.text) },
  };
};

/** The sheet for sending it, with a finding about the letter's length. */
export const letterSheet = (data: LetterSheetData, tools: Tools): MadeDocument<Diagnostic> => {
  const { told } = data;
  const bytes = utf8Length(htmlOf(told, tools));
  const view = sheetView(data, headed(told, tools), bytes, tools);
  const sheet = tools.templates.render('letter-sheet', view);
  return { content: documentText(sheet), diagnostics: sizeFinding(told.cycle, bytes) };
};
