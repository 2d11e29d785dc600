/** Stems, one language at a time. */
import { fold } from '../../text/fold.ts';

type Stemmer = { stem(word: string): string };

/**
 * natural's stemmer of each language, by the primary subtag of BCP 47. A stemmer wants its language's own
 * accents, which folding has taken from both sides alike; what it then misses, it misses on both sides.
 */
const STEMMERS: Readonly<Record<string, () => Promise<{ readonly default: Stemmer }>>> = {
  en: () => import('natural/lib/natural/stemmers/porter_stemmer.js'),
  de: () => import('natural/lib/natural/stemmers/porter_stemmer_de.js'),
  es: () => import('natural/lib/natural/stemmers/porter_stemmer_es.js'),
  fr: () => import('natural/lib/natural/stemmers/porter_stemmer_fr.js'),
  it: () => import('natural/lib/natural/stemmers/porter_stemmer_it.js'),
  nl: () => import('natural/lib/natural/stemmers/porter_stemmer_nl.js'),
  no: () => import('natural/lib/natural/stemmers/porter_stemmer_no.js'),
  nb: () => import('natural/lib/natural/stemmers/porter_stemmer_no.js'),
  pt: () => import('natural/lib/natural/stemmers/porter_stemmer_pt.js'),
  ru: () => import('natural/lib/natural/stemmers/porter_stemmer_ru.js'),
  sv: () => import('natural/lib/natural/stemmers/porter_stemmer_sv.js'),
  uk: () => import('natural/lib/natural/stemmers/porter_stemmer_uk.js'),
};

/** The stemmer of a language, loaded now; undefined where natural has none. */
export const stemmerFor = async (primary: string): Promise<((folded: string) => string) | undefined> => {
  const load = STEMMERS[primary];
  if (!load) return undefined;
  const { default: stemmer } = await load();
  return (folded) => fold(stemmer.stem(folded));
};
