/** Records → the box: what each names is found, and what does not fit together is reported. */

import { currencyDecimals } from '../content/codes.ts';
import type { Records, Written, WrittenCycle } from '../content/read.ts';
import {
  type BoxRecord,
  type CycleRecord,
  type ItemRecord,
  type PictureRecord,
  WEEKDAYS,
  WHEN_DELIVERED,
} from '../content/schemas.ts';
import { readSearches } from '../content/searches.ts';
import type { Sources } from '../content/sources.ts';
import type { Checked, Diagnostic, Location } from '../diagnostics/diagnostic.ts';
import type { Box, BoxSettings, Cycle, Item, Moment, Picture, RevealHabit } from './box.ts';
import { momentOf } from './calendar.ts';
import { hazardFindings, hazardsOf } from './hazards.ts';
import { liveWordsOf, movedOf, replayOf } from './link-live.ts';
import { type LinkTargets, linkStory } from './link-stories.ts';
import { boxValueOf } from './link-value.ts';
import { moneyOf } from './money.ts';
import { photosOf, recordPicture } from './pictures.ts';
import { addressFindings, addressOf, setFindings, slugFor } from './set-findings.ts';
import type { Target } from './story.ts';
import { titleOf } from './title.ts';

type Report = (diagnostic: Diagnostic) => void;

/** Keys whose value is there; an absent key stays absent. */
const present = <T extends object>(facts: T): { [K in keyof T]?: Exclude<T[K], undefined> } =>
  Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined)) as never;

const DEFAULT_PALETTE = ['#5f7358'] as const;

/** Every record's file → what a link to it means. */
const targetsIn = (records: Records): ReadonlyMap<string, Target> =>
  new Map(
    records.cycles.flatMap(({ id, items }): (readonly [string, Target])[] => [
      [`cycles/${id}/cycle.md`, { cycle: id }],
      ...items.map((item): readonly [string, Target] => [item.file, { cycle: id, item: slugFor(item) }]),
    ]),
  );

const itemOf = (
  record: Written<ItemRecord>,
  value: ItemRecord,
  context: { id: string; number: number; currency: string; targets: LinkTargets; report: Report },
): Item => {
  const { id, number, currency, targets, report } = context;
  const dir = `cycles/${id}/`;
  const pictures = (value.image ?? []).flatMap((image: PictureRecord, i: number) => {
    const picture = recordPicture(
      targets.photos,
      dir,
      image,
      record.locationOf(['image', i, 'file']),
      report,
    );
    return picture ? [picture] : [];
  });
  for (const finding of hazardFindings(record)) report(finding);
  const own = value.priceCurrency ?? currency;
  return {
    slug: slugFor(record),
    cycle: id,
    number,
    lead: value.lead ?? false,
    name: value.name,
    kind: value.kind,
    also: value.also ?? [],
    brand: value.brand,
    description: value.description,
    material: value.material ?? [],
    ...present({
      color: value.color,
      size: value.size,
      weight: value.weight,
      care: value.care,
      countryOfOrigin: value.countryOfOrigin,
      price:
        value.price === undefined
          ? undefined
          : moneyOf(value.price, own, record.locationOf(['price']), report),
      sku: value.sku,
      gtin: value.gtin,
      goesWith: value.goesWith,
      spare: value.spare && {
        count: value.spare.count,
        price: moneyOf(value.spare.price, own, record.locationOf(['spare', 'price']), report),
        address: value.spare.address,
        ...present({ until: value.spare.until }),
      },
    }),
    pictures,
    hazards: hazardsOf(value),
    story: linkStory(record.file, record.body, targets, undefined, report),
    source: { file: record.file, fields: record.fields, text: record.text },
  } as Item;
};

/** Shortest and longest summary that a list of search results shows whole. Common practice, no source. */
const SUMMARY_LENGTH = { least: 70, most: 160 } as const;

const cycleOf = (
  written: WrittenCycle,
  record: Written<CycleRecord>,
  value: CycleRecord,
  settings: BoxSettings,
  targets: LinkTargets,
  report: Report,
): Cycle => {
  const { id } = written;
  const [year, month] = id.split('-').map(Number) as [number, number];
  const dir = `cycles/${id}/`;
  const told = [...written.items].sort(
    (a, b) => Number(b.value?.lead ?? false) - Number(a.value?.lead ?? false),
  );
  const items = told.flatMap((item, i) =>
    item.value
      ? [itemOf(item, item.value, { id, number: i + 1, currency: settings.currency, targets, report })]
      : [],
  );
  const picture = (key: 'photo' | 'hero'): Picture | undefined => {
    const named = value[key];
    return named && recordPicture(targets.photos, dir, named, record.locationOf([key, 'file']), report);
  };
  const wholeBox = picture('photo');
  const hero = picture('hero') ?? items[0]?.pictures[0] ?? wholeBox;
  const length = [...value.summary].length;
  if (length < SUMMARY_LENGTH.least || length > SUMMARY_LENGTH.most) {
    report({
      weight: 'look at',
      rule: 'summary-length',
      location: record.locationOf(['summary']),
      message: `Unexpected summary of ${length} characters, expected ${SUMMARY_LENGTH.least} to ${SUMMARY_LENGTH.most}`,
      fix: 'Name the things that are in the box, in a sentence or two',
    });
  }
  if (value.call && !settings.calls[value.call])
    report(callWithoutAddress(value.call, record.locationOf(['call'])));
  const peekPicture =
    value.peek?.picture &&
    recordPicture(
      targets.photos,
      dir,
      value.peek.picture,
      record.locationOf(['peek', 'picture', 'file']),
      report,
    );
  return {
    id,
    year,
    month,
    theme: value.theme,
    title:
      value.title ??
      titleOf(
        items.map((item) => item.name),
        { year, month, theme: value.theme },
        settings.lang,
      ),
    summary: value.summary,
    address: addressOf(id, value),
    shipped: value.shipped,
    ...revealOf(value.reveal, settings.timeZone),
    author: value.author ?? settings.author,
    palette: value.palette ?? settings.palette,
    voices: (value.voices ?? []).map((voice) => ({ ...voice, given: voice.given ?? false })),
    ...present({
      updated: value.updated,
      moved: value.moved && movedOf(record, value.moved, settings.timeZone, report),
      wholeBox,
      hero,
      replay: replayOf(record, value, items, report),
      live: liveWordsOf(record, value, items, report),
      clip: value.clip,
      peek: value.peek && { text: value.peek.text, ...present({ picture: peekPicture }) },
      call: value.call,
      value: value.value && boxValueOf(record, value.value, items, settings.currency, report),
      letter: value.letter,
      invitation: value.invitation,
      made: value.made,
    }),
    items,
    story: linkStory(
      record.file,
      record.body,
      targets,
      items.map((item) => item.slug),
      report,
    ),
    source: { file: record.file, fields: record.fields, text: record.text },
  } as Cycle;
};

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

const callWithoutAddress = (call: string, location: Location): Diagnostic => ({
  weight: 'must fix',
  rule: 'call-address',
  location,
  message: `Unexpected call \`${call}\` without an address, expected \`calls: {${call}: {address, text}}\` in box.md`,
  fix: `Add the address and the text of \`${call}\` to \`calls\` in box.md`,
});

const habitOf = ({ share, weekdays, time }: NonNullable<BoxRecord['reveal']>): RevealHabit =>
  present({
    share,
    weekdays: weekdays?.map((name) => WEEKDAYS.indexOf(name.toLowerCase()) + 1),
    time,
  });

const settingsOf = (records: Records, targets: LinkTargets, report: Report): BoxSettings | undefined => {
  const record = records.box;
  const value = record?.value;
  if (!record || !value) return undefined;
  const call = value.call ?? 'join';
  const calls = value.calls ?? {};
  if (value.call && !calls[value.call]) report(callWithoutAddress(value.call, record.locationOf(['call'])));
  if (!calls[call] && !value.call) {
    report({
      weight: 'look at',
      rule: 'call-missing',
      location: record.locationOf(['name']),
      message: 'Unexpected box without a call, expected what a visitor can do now',
      fix: 'Add `calls: {join: {address: …, text: …}}` and `call: join`',
    });
  }
  const { subscription } = value;
  const image = subscription?.image;
  const named = typeof image === 'string' ? { file: image, alt: subscription?.name ?? value.name } : image;
  return {
    name: value.name,
    url: value.url.endsWith('/') ? value.url : `${value.url}/`,
    lang: value.lang,
    timeZone: value.timeZone,
    currency: value.currency,
    description: value.description,
    author: value.author,
    everyMonths: Number(/\d+/.exec(value.every ?? 'P1M')?.[0] ?? 1),
    palette: value.palette ?? DEFAULT_PALETTE,
    calls,
    call,
    profiles: value.profiles ?? [],
    ...present({
      email: value.email,
      postalAddress: value.postalAddress,
      revealHabit: value.reveal && habitOf(value.reveal),
      unsubscribe: value.unsubscribe,
      pieces: value.pieces,
      pace: value.pace,
      clip: value.clip,
      subscription: subscription && {
        name: subscription.name,
        price: moneyOf(
          subscription.price,
          value.currency,
          record.locationOf(['subscription', 'price']),
          report,
        ),
        ...present({
          description: subscription.description,
          image:
            named &&
            recordPicture(targets.photos, '', named, record.locationOf(['subscription', 'image']), report),
        }),
      },
    }),
    story: linkStory(record.file, record.body, targets, undefined, report),
    source: { file: record.file, fields: record.fields, text: record.text },
  } as BoxSettings;
};

/** Stands in for a box.md that cannot be used, so that the cycles' own faults are reported in the same run. */
const STAND_IN: Omit<BoxSettings, 'story' | 'source'> = {
  name: '',
  url: 'https://box.invalid/',
  lang: 'en',
  timeZone: 'UTC',
  currency: 'EUR',
  description: '',
  author: '',
  everyMonths: 1,
  palette: DEFAULT_PALETTE,
  calls: {
    join: { address: '', text: '' },
    waitList: { address: '', text: '' },
    spare: { address: '', text: '' },
  },
  call: 'join',
  profiles: [],
};

/** The box, or undefined where box.md is no record; findings of every cycle either way. */
export const linkBox = (records: Records, sources: Sources): Checked<Box | undefined> => {
  const diagnostics: Diagnostic[] = [];
  const report: Report = (diagnostic) => diagnostics.push(diagnostic);
  const targets: LinkTargets = { byFile: targetsIn(records), photos: photosOf(sources) };
  const settings = settingsOf(records, targets, report);
  const written = String(records.box?.data?.currency);
  const stand: BoxSettings = settings ?? {
    ...STAND_IN,
    currency: currencyDecimals(written) === undefined ? STAND_IN.currency : written,
    story: { file: 'box.md', tree: { type: 'root', children: [] } },
    source: { file: 'box.md', fields: new Map(), text: '' },
  };
  addressFindings(records, report);
  const cycles = records.cycles.flatMap((written) => {
    setFindings(written, report);
    // A record at fault keeps nothing from being said of the text below it.
    for (const item of written.items)
      if (!item.value) linkStory(item.file, item.body, targets, undefined, report);
    if (written.cycle && !written.cycle.value)
      linkStory(written.cycle.file, written.cycle.body, targets, written.items.map(slugFor), report);
    const value = written.cycle?.value;
    if (written.cycle && value) return [cycleOf(written, written.cycle, value, stand, targets, report)];
    // The cycle's own record is at fault: its items are still looked at, and not kept.
    written.items.forEach((item, i) => {
      if (item.value)
        itemOf(item, item.value, {
          id: written.id,
          number: i + 1,
          currency: stand.currency,
          targets,
          report,
        });
    });
    return [];
  });
  const named = records.box?.value?.searches;
  const { value: searches, diagnostics: faults } = readSearches(
    sources.texts.find(({ path }) => path === 'searches.csv'),
    named && { ...named, location: records.box?.locationOf(['searches']) as Location },
  );
  diagnostics.push(...faults);
  return { value: settings && { settings, cycles, searches }, diagnostics };
};
