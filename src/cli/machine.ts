/** What the machine says of its owner: language, time zone, and the money that is paid with there. */

/** Currencies by region, ISO 3166-1 and ISO 4217: CLDR's supplemental data, from memory. */
const CURRENCIES: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    'AT BE CY DE EE ES FI FR GR HR IE IT LT LU LV MT NL PT SI SK'.split(' ').map((region) => [region, 'EUR']),
  ),
  AU: 'AUD',
  BG: 'BGN',
  BR: 'BRL',
  CA: 'CAD',
  CH: 'CHF',
  CL: 'CLP',
  CN: 'CNY',
  CO: 'COP',
  CZ: 'CZK',
  DK: 'DKK',
  GB: 'GBP',
  HK: 'HKD',
  HU: 'HUF',
  ID: 'IDR',
  IL: 'ILS',
  IN: 'INR',
  IS: 'ISK',
  JP: 'JPY',
  KR: 'KRW',
  MX: 'MXN',
  MY: 'MYR',
  NO: 'NOK',
  NZ: 'NZD',
  PH: 'PHP',
  PL: 'PLN',
  RO: 'RON',
  SE: 'SEK',
  SG: 'SGD',
  TH: 'THB',
  TR: 'TRY',
  TW: 'TWD',
  UA: 'UAH',
  US: 'USD',
  VN: 'VND',
  ZA: 'ZAR',
};

/** Currencies of those regions: what most people mean comes before what few do. */
export const FREQUENT: ReadonlySet<string> = new Set(Object.values(CURRENCIES));

/** Regions whose English has a name of its own. */
const ENGLISH = new Set(['AU', 'CA', 'GB', 'IE', 'IN', 'NZ', 'US', 'ZA']);

/** What was guessed; absent where nothing says it. */
export interface MachineGuess {
  /** BCP 47. */
  readonly language: string;
  /** IANA. */
  readonly zone: string;
  /** ISO 4217. */
  readonly currency?: string;
}

const isZone = (zone: string): boolean => {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: zone }).resolvedOptions().timeZone !== '';
  } catch {
    return false;
  }
};

/** `en_GB.UTF-8` as BCP 47; undefined for C and POSIX, which are nobody's language. */
const localeOf = (env: Readonly<Record<string, string | undefined>>): Intl.Locale | undefined => {
  const named = (env.LC_ALL || env.LC_MESSAGES || env.LANG || '').replace(/[.@].*$/, '').replaceAll('_', '-');
  if (!/^[a-z]{2,3}(?:-|$)/i.test(named)) return undefined;
  try {
    return new Intl.Locale(named);
  } catch {
    return undefined;
  }
};

/** The region whose clocks a zone is: Node 20 gives a region's zones, not a zone's region. */
const regionOfZone = (zone: string): string | undefined =>
  Object.keys(CURRENCIES).find((region) => {
    const locale = new Intl.Locale(`und-${region}`) as Intl.Locale & {
      readonly timeZones?: readonly string[];
      readonly getTimeZones?: () => readonly string[] | undefined;
    };
    return (locale.getTimeZones?.() ?? locale.timeZones ?? []).includes(zone);
  });

/** The guess by the environment's variables and the clock. Where somebody is says what they are paid in. */
export const guessMachine = (env: Readonly<Record<string, string | undefined>>): MachineGuess => {
  const zone = env.TZ && isZone(env.TZ) ? env.TZ : new Intl.DateTimeFormat('en').resolvedOptions().timeZone;
  const locale = localeOf(env);
  const region = regionOfZone(zone) ?? locale?.region;
  const currency = region === undefined ? undefined : CURRENCIES[region];
  const language =
    locale === undefined || locale.language === 'en'
      ? [locale?.region ?? region]
          .filter((one) => one !== undefined && ENGLISH.has(one))
          .map((one) => `en-${one}`)[0]
      : locale.baseName;
  return { zone, language: language ?? 'en', ...(currency !== undefined && { currency }) };
};
