/** Whether the visitor's browser cuts and stems words as the build did: the script that is published, run here. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createContext, runInContext } from 'node:vm';
import { describe, expect, test } from 'vitest';
import { type Language, languageFor } from '../../src/analysis/language/language.ts';
import { checksFile } from '../support/checks-folder.ts';
import { rowsOf } from '../support/language-checks.ts';

const scripts = join(import.meta.dirname, '../../dist/browser');

const publishedLanguage = async (script: string, tag: string): Promise<Language> => {
  // A page without a search form, on which the script does nothing but be there.
  const page = createContext({
    document: { documentElement: { lang: 'en-GB' }, getElementById: () => null },
    HTMLFormElement: class {},
    Intl,
  });
  runInContext(readFileSync(join(scripts, script), 'utf8'), page);
  return (page.lidloreSearch as { languageFor: typeof languageFor }).languageFor(tag);
};

const TEXT = `The gardener’s "knives", vases & gloves; watering-cans. Macramé, crème brûlée, naïve Søren, Łódź, straße.
  30 × 12 cm, 1.5 litres — don’t; U.S.A., e-mail, 冬の茶, أبريق, чайник, ﬁgs, soft\u00adhyphen, Ångström`;

describe.skipIf(!existsSync(scripts))('the published script', () => {
  const columns = (path: string): readonly string[] => {
    const file = checksFile(path);
    return file ? rowsOf(file).flat() : [];
  };
  const words = [
    ...TEXT.split(/\s+/),
    ...columns('language/porter-sample-300.tsv'),
    ...rowsOf(join(import.meta.dirname, '../fixtures/language/goods-plurals.tsv')).flat(),
    ...columns('language/porter-natural-departures.tsv'),
    ...['scissors', 'leaves', 'brioches', 'bookies', 'irises', 'tomatoes', 'safaris', 'glasses', 'dibbers'],
  ];

  test('reads English as the analyser does, word for word', async () => {
    const [here, there] = [await languageFor('en-GB'), await publishedLanguage('search.en.js', 'en-GB')];
    const all = words.join(' ');
    expect(there.words(all)).toEqual(here.words(all));
    expect(here.words(all).length).toBeGreaterThan(60);
  });

  test.each(['de', 'es', 'fr', 'it', 'nl', 'nb', 'no', 'pt', 'ru', 'sv', 'uk'])(
    'reads %s as the analyser does',
    async (tag) => {
      const [here, there] = [await languageFor(tag), await publishedLanguage(`search.${tag}.js`, tag)];
      expect(there.words(TEXT)).toEqual(here.words(TEXT));
      expect(there.stems).toBe(true);
    },
  );

  test('reads a language without a stemmer as the analyser does', async () => {
    const [here, there] = [await languageFor('ja'), await publishedLanguage('search.js', 'ja')];
    expect(there.words(TEXT)).toEqual(here.words(TEXT));
  });
});
