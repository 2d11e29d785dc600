/** box.md → the box's settings, and what of them its cycles depend on. */
import { currencyDecimals } from '../content/codes.ts';
import { exampleAt } from '../content/examples.ts';
import { isUsable, type Usable, type Written } from '../content/read.ts';
import { type BoxRecord, boxSchema, WEEKDAYS } from '../content/schemas.ts';
import { CALL_KINDS } from '../content/vocabulary.ts';
import type { Checked, Diagnostic, Location, ReportFinding } from '../diagnostics/diagnostic.ts';
import { defined, exact } from '../text/defined.ts';
import type { BoxSettings, CallKind, CallTerms, RevealHabit, Subscription } from './box.ts';
import { markFindings, marksOf } from './call-marks.ts';
import { linkLogo } from './link-logo.ts';
import { type LinkTargets, linkStory, sourceOf } from './link-stories.ts';
import { moneyOf } from './money.ts';
import { recordPicture } from './pictures.ts';

/** What a cycle takes from the box: it can be had without a box, because no address is in it. */
export interface CycleSettings
  extends Pick<BoxSettings, 'author' | 'currency' | 'everyMonths' | 'lang' | 'palette' | 'timeZone'> {
  /** The kinds of call that have their address in box.md. */
  readonly calls: readonly CallKind[];
}

const DEFAULT_PALETTE = ['#5f7358'] as const;

/** A call that box.md gives no address for; `location` is where it was asked for. */
export const callWithoutAddress = (call: CallKind, location: Location): Diagnostic => ({
  weight: 'must fix',
  rule: 'call-address',
  location,
  message: `Unexpected call \`${call}\` without an address, expected \`${call}\` under \`calls\` in box.md`,
  fix: `Add \`${call}\` under \`calls\` in box.md, with the lines \`address\` and \`text\` below it`,
  written: { lines: exampleAt(boxSchema, ['calls', call]), invented: true },
});

const habitOf = ({ share, weekdays, time }: NonNullable<BoxRecord['reveal']>): RevealHabit =>
  exact<RevealHabit>({
    share,
    weekdays: weekdays?.map((name) => WEEKDAYS.indexOf(name.toLowerCase()) + 1),
    time,
  });

const callsOf = (calls: NonNullable<BoxRecord['calls']>): BoxSettings['calls'] => {
  const terms = (call: (typeof calls)[CallKind]): CallTerms | undefined =>
    call && defined({ ...call, from: call.from && marksOf(call.from) });
  return exact<BoxSettings['calls']>({
    join: terms(calls.join),
    waitList: terms(calls.waitList),
    spare: terms(calls.spare),
  });
};

const subscriptionOf = (
  record: Usable<BoxRecord>,
  { name, price, description, image }: NonNullable<BoxRecord['subscription']>,
  { photos }: LinkTargets,
  report: ReportFinding,
): Subscription => {
  const at = (key: string): Location => record.locationOf(['subscription', key]);
  const named = typeof image === 'string' ? { file: image, alt: name } : image;
  return exact<Subscription>({
    name,
    price: moneyOf(price, record.value.currency, at('price'), report),
    description,
    image: named && recordPicture(photos, '', named, at('image'), report),
  });
};

const settingsOf = (record: Usable<BoxRecord>, targets: LinkTargets, report: ReportFinding): BoxSettings => {
  const { value } = record;
  const calls = callsOf(value.calls ?? {});
  for (const finding of markFindings(record)) report(finding);
  if (value.call && !calls[value.call]) report(callWithoutAddress(value.call, record.locationOf(['call'])));
  const call = value.call ?? 'join';
  if (!calls[call] && !value.call) {
    report({
      weight: 'look at',
      rule: 'call-missing',
      location: record.locationOf(['name']),
      message: 'Unexpected box without a call, expected what a visitor can do now',
      fix: 'Add `call: join`, and `calls` with `join` and its lines `address` and `text` below it',
      written: {
        lines: [...exampleAt(boxSchema, ['calls', 'join']), ...exampleAt(boxSchema, ['call'])],
        invented: true,
      },
    });
  }
  return exact<BoxSettings>({
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
    formerly: value.formerly,
    email: value.email,
    postalAddress: value.postalAddress && defined(value.postalAddress),
    revealHabit: value.reveal && habitOf(value.reveal),
    unsubscribe: value.unsubscribe,
    pieces: value.pieces,
    pace: value.pace,
    clip: value.clip,
    cards: value.cards && defined(value.cards),
    logo: value.logo === undefined ? undefined : linkLogo(record, value.logo, targets.photos, report),
    subscription: value.subscription && subscriptionOf(record, value.subscription, targets, report),
    story: linkStory(record, targets, undefined, report),
    source: sourceOf(record),
  });
};

/**
 * The box's settings with every finding about what box.md names; undefined where it is no record. Depends on box.md
 * and on the targets and photos that it names alone.
 */
export const linkSettings = (
  record: Written<BoxRecord> | undefined,
  targets: LinkTargets,
): Checked<BoxSettings | undefined> => {
  const diagnostics: Diagnostic[] = [];
  const value =
    record && isUsable(record)
      ? settingsOf(record, targets, (diagnostic) => diagnostics.push(diagnostic))
      : undefined;
  return { value, diagnostics };
};

/**
 * What cycles take from a box's settings. Where box.md is no record, something neutral takes their place, so that the
 * cycles' own faults are reported in the same run: nothing is published of a box without settings.
 */
export const cycleSettingsOf = (
  settings: BoxSettings | undefined,
  record: Written<BoxRecord> | undefined,
): CycleSettings => {
  if (settings) {
    const { calls, author, currency, everyMonths, lang, palette, timeZone } = settings;
    const own = { author, currency, everyMonths, lang, palette, timeZone };
    return { ...own, calls: CALL_KINDS.filter((kind) => calls[kind]) };
  }
  const written = String(record?.data?.currency);
  return {
    author: '',
    // Whatever is wrong with `calls` is said of box.md, and not again of each cycle.
    calls: CALL_KINDS,
    currency: currencyDecimals(written) === undefined ? 'EUR' : written,
    everyMonths: 1,
    lang: 'en',
    palette: DEFAULT_PALETTE,
    timeZone: 'UTC',
  };
};
