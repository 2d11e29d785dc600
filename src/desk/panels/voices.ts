/** Voices: what people wrote in the live is pasted, and who agreed becomes a voice of the record. */
import { valueAt } from '../../content/field-path.ts';
import { isFieldList } from '../../content/write-yaml.ts';
import type { SentForm } from '../../io/serve.ts';
import { dateInZone } from '../../model/calendar.ts';
import { longDate } from '../../text/long-date.ts';
import { addressOf, type Context, type Outcome, type Panel, sent } from '../context.ts';
import { openRecord } from '../record.ts';
import { writeKeys } from './cycle.ts';

/** A line that somebody wrote, with their name where the line has one. */
export interface Comment {
  readonly name: string;
  readonly text: string;
}

interface VoicesView {
  readonly words: Context['words'];
  readonly token: string;
  readonly at: string;
  readonly pasted: string;
  readonly comments: readonly (Comment & { readonly shownAs: string; readonly number: number })[];
  readonly today: string;
  readonly voices: readonly { readonly text: string; readonly told: string }[];
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    'desk/voices': VoicesView;
  }
}

const MOST_NAME = 40;
const TIME = /^[[(]?\d{1,2}:\d{2}(?::\d{2})?(?:\s?[ap]m)?[\])]?\s*[-–—]?\s*/i;

/** What was written, a line each: a time before it is left out, and a name stands before a colon. */
export const commentsIn = (pasted: string): readonly Comment[] =>
  pasted
    .split(/\r?\n/)
    .map((line) => line.trim().replace(TIME, ''))
    .filter(Boolean)
    .map((line) => {
      const [, name = '', text = ''] = /^([^:“"]{1,60}?)\s*:\s+(.+)$/.exec(line) ?? [];
      const isName =
        name !== '' && name.length <= MOST_NAME && name.split(/\s+/).length <= 5 && !/^https?$/i.test(name);
      return isName ? { name, text } : { name: '', text: line };
    });

/** A name as it may be shown: without what stands for a name in a network, and the last name as its first letter. */
export const shortName = (name: string): string => {
  const plain = name.replace(/^@/, '').replace(/[_.]+/g, ' ').trim();
  const parts = plain.split(/\s+/);
  const [first = '', ...rest] = parts;
  const last = rest.at(-1);
  const capital = first.charAt(0).toUpperCase() + first.slice(1);
  return last === undefined ? capital : `${capital} ${last.charAt(0).toUpperCase()}.`;
};

const page = (context: Context, pasted: string): Outcome => {
  const { table, words, lang, id, token, cycle, settings } = context;
  const body = table.templates().render('desk/voices', {
    words,
    token,
    at: addressOf('voices', id),
    pasted,
    comments: commentsIn(pasted)
      .slice(0, 200)
      .map((comment, number) => ({ ...comment, number, shownAs: shortName(comment.name) })),
    today: dateInZone(table.now(), settings?.timeZone ?? 'UTC'),
    voices: (cycle?.voices ?? []).map(({ text, name, consent }) => ({
      text,
      told: words.voices.consent(name, longDate(consent, lang)),
    })),
  });
  return { kind: 'page', heading: words.panels.voices, body };
};

const act = async (context: Context, form: SentForm): Promise<Outcome> => {
  const { table, id } = context;
  if (sent(form, 'do') === 'look') return page(context, sent(form, 'pasted') ?? '');
  const path = `cycles/${id}/cycle.md`;
  const record = openRecord(table, path);
  if (!record || record === 'other encoding') return { kind: 'go', to: addressOf('voices', id) };
  const now = valueAt(record.values, ['voices']);
  const count = now === undefined || now === null ? 0 : isFieldList(now) ? now.length : 1;
  const consent = sent(form, 'on') ?? '';
  const chosen = [...form.fields.keys()].flatMap((name) => {
    const number = /^agreed\.(\d+)$/.exec(name)?.[1];
    const text = number === undefined ? '' : (sent(form, `text.${number}`) ?? '').trim();
    const called = number === undefined ? '' : (sent(form, `name.${number}`) ?? '').trim();
    if (text === '' || called === '') return [];
    return [
      { text, name: called, consent, ...(sent(form, `given.${number}`) !== undefined && { given: true }) },
    ];
  });
  const saved =
    chosen.length > 0 &&
    (await writeKeys(
      context,
      path,
      chosen.map((voice, i) => ({ path: ['voices', count + i], value: voice })),
    ));
  return { kind: 'go', to: addressOf('voices', id), said: saved ? 'voice' : 'same' };
};

/** Voices. */
export const voicesPanel: Panel = { show: async (context) => page(context, ''), act };
