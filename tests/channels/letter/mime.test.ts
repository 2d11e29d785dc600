import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { messageText } from '../../../src/channels/letter/message.ts';
import { encodedWords, foldedHeader, quotedPrintable } from '../../../src/channels/letter/mime.ts';
import { bodiesOf, messageFaults } from '../../support/message-faults.ts';
import { readMessage } from '../../support/read-message.ts';

const text = fc.string({ unit: 'grapheme', maxLength: 400 }).map((words) => words.replace(/\r\n?/g, '\n'));

describe('quoted-printable', () => {
  // RFC 2045 §6.7.
  test.each([
    ['a=b', 'a=3Db'],
    ['Grüße', 'Gr=C3=BC=C3=9Fe'],
    ['end \nnext\t', 'end=20\r\nnext=09'],
    ['a b\tc', 'a b\tc'],
    ['\u0000\u007f', '=00=7F'],
    ['x\ry', 'x=0Dy'],
  ])('of %j is %j', (given, encoded) => {
    expect(quotedPrintable(given)).toBe(encoded);
  });

  test('has lines of at most 76 characters, and breaks inside no escape and no character', () => {
    for (const unit of ['ü', '温', '🌱', 'a', 'a=', 'ab ']) {
      for (let length = 60; length < 100; length += 1) {
        const lines = quotedPrintable(unit.repeat(length)).split('\r\n');
        expect(lines.length).toBeGreaterThan(0);
        for (const line of lines) {
          expect(line.length).toBeLessThanOrEqual(76);
          const bytes = line.replace(/=$/, '').replace(/=([\dA-F]{2})/g, (_, hex) => `%${hex}`);
          expect(() => decodeURIComponent(bytes)).not.toThrow();
        }
      }
    }
  });

  test('puts a soft break after a word where one ends near', () => {
    const [first, second] = quotedPrintable(`${'garden '.repeat(20)}`).split('\r\n');
    expect(first).toMatch(/ =$/);
    expect(second).toMatch(/^garden/);
  });
});

describe('a header', () => {
  // RFC 2047 §2: at most 75 characters; §5 (3): whole characters.
  test('is written in encoded words that each stand for whole characters', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 120 }), (given) => {
        const words = encodedWords(given).split(' ');
        const read = words.map((word) => {
          expect(word.length).toBeLessThanOrEqual(75);
          const bytes = Buffer.from(/^=\?UTF-8\?B\?([\w+/=]+)\?=$/.exec(word)?.[1] ?? '', 'base64');
          return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
        });
        expect(read.join('')).toBe(given);
      }),
    );
  });

  test('is broken before spaces and nowhere else, and loses nothing', () => {
    const words = fc.array(fc.stringMatching(/^[a-z]{1,100}$/), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(words, (given) => {
        const line = `Subject: ${given.join(' ')}`;
        const folded = foldedHeader(line);
        expect(folded.replaceAll('\r\n', '')).toBe(line);
        for (const part of folded.split('\r\n'))
          expect(part.length < 76 || !part.trimStart().includes(' ')).toBe(true);
      }),
    );
  });
});

// Two readers of mail, mailparser and postal-mime, and the byte checks of our own.
test('any message is read as it was written', async () => {
  const any = fc.record({ subject: text, name: text, body: text, html: text });
  await fc.assert(
    fc.asyncProperty(any, async ({ subject, name, body, html }) => {
      const message = messageText({
        from: { name: `Box ${name}`, address: 'post@gruen.example' },
        date: 'Thu, 19 Mar 2026 19:00:00 +0000',
        id: '2026-03.letter@gruen.example',
        subject: `Box ${subject}`,
        lang: 'de-DE',
        text: `${body}\n`,
        html: `<!doctype html>\n<p>${html}</p>\n`,
      });
      expect(messageFaults(message)).toEqual([]);
      expect(bodiesOf(message)).toEqual([`${body}\n`, `<!doctype html>\n<p>${html}</p>\n`]);
      const { mailparser, postalMime } = await readMessage(message);
      expect(postalMime.subject).toBe(mailparser.subject);
    }),
    { numRuns: 50 },
  );
});
