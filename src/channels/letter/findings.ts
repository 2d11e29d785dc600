/** What is missing in a letter before it is sent. */
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { BoxSettings, Cycle } from '../../model/box.ts';
import { locationIn } from '../../model/location-in.ts';

/** Longer letters are cut off by some programs. Common practice, no source. */
export const LETTER_BYTES = 102_000;

/**
 * What the law asks of mail that sells: a postal address and a way to say no more, US 15 U.S.C. 7704(a)(5) and
 * 16 CFR 316; other countries have their own. Evidence that is missing is reported, compliance never declared.
 * `sender` is the address that a header can bear.
 */
export const settingsFindings = (
  settings: BoxSettings,
  sender: string | undefined,
): readonly Diagnostic[] => {
  const { source, postalAddress, unsubscribe, email } = settings;
  const missing = (rule: string, what: string, key: string, fix: string): Diagnostic => ({
    weight: 'look at',
    rule,
    location: locationIn(source, key, 'pieces', 'name'),
    adds: key,
    message: `Unexpected letter without ${what}, expected \`${key}\` in box.md`,
    fix,
  });
  return [
    ...(postalAddress && Object.values(postalAddress).some(Boolean)
      ? []
      : [
          missing(
            'letter-postal-address',
            'a postal address',
            'postalAddress',
            'Add `postalAddress` with its lines `streetAddress` and `addressLocality` below it; a P.O. box will do',
          ),
        ]),
    ...(unsubscribe === undefined
      ? [
          missing(
            'letter-unsubscribe',
            'a way to say no more',
            'unsubscribe',
            'Add `unsubscribe: …`, the https address, or the placeholder that your sending service fills',
          ),
        ]
      : []),
    ...(sender === undefined
      ? [
          missing(
            'letter-sender',
            email === undefined ? 'an address it comes from' : 'an address that every mail program takes',
            'email',
            'Add `email: hello@…`, its part before the @ in plain letters and digits',
          ),
        ]
      : []),
  ];
};

/** A note where a letter has no film to lead to. */
export const replayFinding = ({ source, replay }: Cycle): readonly Diagnostic[] =>
  replay
    ? []
    : [
        {
          weight: 'note',
          rule: 'letter-replay',
          location: locationIn(source, 'theme'),
          adds: 'replay',
          message: 'Unexpected letter without a film to watch, expected `replay` once the live is recorded',
          fix: 'Add `replay` with its `address` and `minutes` below it, or send it without',
        },
      ];

/** A finding where a letter's HTML has more bytes than some programs show. */
export const sizeFinding = ({ source }: Cycle, bytes: number): readonly Diagnostic[] =>
  bytes <= LETTER_BYTES
    ? []
    : [
        {
          weight: 'look at',
          rule: 'letter-size',
          location: locationIn(source, 'theme'),
          message: `Unexpected letter of ${Math.ceil(bytes / 1000)} kB, expected at most ${LETTER_BYTES / 1000} kB: some programs cut a longer one off`,
          fix: 'Shorten the longest cautions, voices or descriptions',
        },
      ];
