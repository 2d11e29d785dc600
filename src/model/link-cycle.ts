/** One cycle's records → the cycle. */
import { isUsable, type Usable, type WrittenCycle } from '../content/read.ts';
import { type CycleRecord, type PictureRecord, WHEN_DELIVERED } from '../content/schemas.ts';
import type { Checked, Diagnostic, ReportFinding } from '../diagnostics/diagnostic.ts';
import { defined, exact } from '../text/defined.ts';
import type { CaseOf } from '../text/letter-case.ts';
import type { Cycle, Item, Moment, Peek, Picture } from './box.ts';
import { momentOf } from './calendar.ts';
import { dateFindings } from './date-findings.ts';
import type { TextUse } from './in-text.ts';
import { linkItem } from './link-item.ts';
import { liveWordsOf, movedOf, replayOf } from './link-live.ts';
import { type CycleSettings, callWithoutAddress } from './link-settings.ts';
import { type LinkTargets, linkStory, sourceOf } from './link-stories.ts';
import { boxValueOf } from './link-value.ts';
import { paragraphsOf } from './paragraphs.ts';
import { recordPicture } from './pictures.ts';
import { addressOf, setFindings, slugFor } from './set-findings.ts';
import { takeOf } from './take.ts';
import { type TitleWords, titlesOf } from './title.ts';

/** What a cycle's linking depends on besides its own files. */
export interface LinkContext extends LinkTargets {
  readonly settings: CycleSettings;
  readonly titleWords: TitleWords;
  /** Whether that makes a title in the box's language; else a title is asked for. */
  readonly isTitleWorded: boolean;
  /** What a dictionary of the box's language knows; where there is none it knows nothing. */
  readonly caseOf: CaseOf;
}

/** Shortest and longest summary that a list of search results shows whole. Common practice, no source. */
const SUMMARY_LENGTH = { least: 70, most: 160 } as const;

const reportSummaryLength = ({ value, locationOf }: Usable<CycleRecord>, report: ReportFinding): void => {
  const { length } = [...value.summary];
  if (length >= SUMMARY_LENGTH.least && length <= SUMMARY_LENGTH.most) return;
  report({
    weight: 'look at',
    rule: 'summary-length',
    location: locationOf(['summary']),
    message: `Unexpected summary of ${length} characters, expected ${SUMMARY_LENGTH.least} to ${SUMMARY_LENGTH.most}`,
    fix: 'Name the things that are in the box, in a sentence or two',
  });
};

const reportTitle = ({ locationOf }: Usable<CycleRecord>, lang: string, report: ReportFinding): void =>
  report({
    weight: 'look at',
    rule: 'title-language',
    location: locationOf(['theme']),
    adds: 'title',
    message: `Unexpected cycle without a \`title\` in a box in \`${lang}\`, expected one: there are no words for it in that language yet, and the things stand beside the month`,
    fix: 'Add `title: …` in the language of the box',
  });

const checkedMoment = (text: string, timeZone: string): Moment => {
  const moment = momentOf(text, timeZone);
  if (moment === undefined) throw new Error(`A checked reveal must be a moment, found ${text}`);
  return moment;
};

/** The moment of a reveal; none where the parcels decide, which are not known here. */
const revealOf = (
  reveal: CycleRecord['reveal'],
  timeZone: string,
): Pick<Cycle, 'reveal' | 'whenDelivered'> => {
  if (typeof reveal !== 'string')
    return { reveal: undefined, whenDelivered: { notBefore: checkedMoment(reveal.notBefore, timeZone) } };
  return reveal === WHEN_DELIVERED
    ? { reveal: undefined, whenDelivered: {} }
    : { reveal: checkedMoment(reveal, timeZone) };
};

/** Year and month of a folder's name, `2026-03`. */
const monthOf = (id: string): { readonly year: number; readonly month: number } => {
  const [year, month] = id.split('-').map(Number);
  if (year === undefined || month === undefined) throw new Error(`Expected a month, found ${id}`);
  return { year, month };
};

/** Fields that are titles, where capitals say nothing of a word. */
const TITLES: ReadonlySet<string> = new Set(['name', 'brand', 'title', 'theme', 'author']);

const stringsIn = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, field]) => (TITLES.has(key) ? [] : stringsIn(field)));
};

/** How a cycle speaks of its things: every text of its records, and the language. */
const useIn = ({ cycle, items }: WrittenCycle, { settings, caseOf }: LinkContext): TextUse => ({
  lang: settings.lang,
  caseOf,
  texts: [...(cycle ? [cycle] : []), ...items].flatMap(({ file, data, body }) => [
    ...stringsIn(data),
    ...paragraphsOf(body, file).map(({ text }) => text),
  ]),
});

/** The items that are records, lead item first. A record at fault keeps its place among the numbers. */
const itemsOf = (written: WrittenCycle, context: LinkContext, report: ReportFinding): readonly Item[] => {
  const { id, items } = written;
  const { currency } = context.settings;
  const use = useIn(written, context);
  return [...items]
    .sort((a, b) => Number(b.value?.lead ?? false) - Number(a.value?.lead ?? false))
    .flatMap((item, i) => {
      if (!isUsable(item)) return [];
      const { value, diagnostics } = linkItem(item, { cycle: id, number: i + 1, currency }, context, use);
      diagnostics.forEach(report);
      return [value];
    });
};

const cycleOf = (
  written: WrittenCycle,
  record: Usable<CycleRecord>,
  context: LinkContext,
  report: ReportFinding,
): Cycle => {
  const { id } = written;
  const { value } = record;
  const { settings } = context;
  const { year, month } = monthOf(id);
  const pictureOf = (named: PictureRecord | undefined, ...path: string[]): Picture | undefined =>
    named &&
    recordPicture(context.photos, `cycles/${id}/`, named, record.locationOf([...path, 'file']), report);

  const items = itemsOf(written, context, report);
  const wholeBox = pictureOf(value.photo, 'photo');
  const hero = pictureOf(value.hero, 'hero') ?? items[0]?.pictures[0] ?? wholeBox;
  reportSummaryLength(record, report);
  if (value.title === undefined && !context.isTitleWorded) reportTitle(record, settings.lang, report);
  if (value.call && !settings.calls.includes(value.call))
    report(callWithoutAddress(value.call, record.locationOf(['call'])));
  const peek =
    value.peek &&
    exact<Peek>({ text: value.peek.text, picture: pictureOf(value.peek.picture, 'peek', 'picture') });
  const { reveal, whenDelivered } = revealOf(value.reveal, settings.timeZone);
  dateFindings(record, { id, year, month, reveal }, settings, report);
  const titles = titlesOf(
    items.map(({ inText }) => inText),
    { year, month, theme: value.theme },
    settings.lang,
    context.titleWords,
  );
  const facts = exact<Omit<Cycle, 'reveal'>>({
    id,
    year,
    month,
    theme: value.theme,
    title: value.title ?? titles[0],
    titles: value.title === undefined ? titles : undefined,
    summary: value.summary,
    address: addressOf(id, value),
    formerly: value.formerly,
    shipped: value.shipped,
    whenDelivered,
    author: value.author ?? settings.author,
    palette: value.palette ?? settings.palette,
    voices: (value.voices ?? []).map((voice) => ({ ...voice, given: voice.given ?? false })),
    updated: value.updated,
    moved: value.moved && movedOf(record, value.moved, settings.timeZone, report),
    wholeBox,
    hero,
    replay: replayOf(record, value, items, report),
    live: liveWordsOf(record, value, items, report),
    clip: value.clip,
    takes: value.takes && defined({ hook: takeOf(value.takes.hook), whole: takeOf(value.takes.whole) }),
    cards: value.cards && defined(value.cards),
    peek,
    call: value.call,
    value: value.value && boxValueOf(record, value.value, items, settings.currency, report),
    letter: value.letter && defined(value.letter),
    invitation: value.invitation && defined(value.invitation),
    made: value.made && defined(value.made),
    items,
    itemsAtFault: written.items.length - items.length || undefined,
    story: linkStory(
      record,
      context,
      items.map((item) => item.slug),
      report,
    ),
    source: sourceOf(record),
  });
  return { ...facts, reveal };
};

/**
 * The cycle with every link resolved, and every finding about it, also where its record is at fault and it is
 * undefined therefore. Depends on the cycle's own records; on the context's settings; on what its links lead to in
 * `targets`; and on the photos at the paths that it names. Where there is no photo at such a path, the finding
 * depends on the names in that folder too, because it suggests one. What compares cycles is not here.
 */
export const linkCycle = (written: WrittenCycle, context: LinkContext): Checked<Cycle | undefined> => {
  const diagnostics: Diagnostic[] = [];
  const report = (diagnostic: Diagnostic): void => {
    diagnostics.push(diagnostic);
  };
  const { id, cycle, items } = written;
  setFindings(written, report);
  // A record at fault keeps nothing from being said of the text below it.
  for (const item of items) if (!isUsable(item)) linkStory(item, context, undefined, report);
  if (cycle && isUsable(cycle)) return { value: cycleOf(written, cycle, context, report), diagnostics };
  if (cycle) linkStory(cycle, context, items.map(slugFor), report);
  // The items are still looked at, in the order of their files, though there is no telling to number them by.
  const { currency } = context.settings;
  const use = useIn(written, context);
  const found = items
    .filter(isUsable)
    .flatMap((item, i) => linkItem(item, { cycle: id, number: i + 1, currency }, context, use).diagnostics);
  return { value: undefined, diagnostics: [...diagnostics, ...found] };
};
