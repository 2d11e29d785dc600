/**
 * Which photo shows which thing: by the words of its file's name, by a number, and last by the order in which the photos
 * were taken. Rules for names as phones and people give them; common practice, no source.
 */
import { editDistance } from '../../text/edit-distance.ts';
import { fold } from '../../text/fold.ts';
import { singularOf } from '../../text/singular.ts';

/** A photo that is to be matched. */
export interface DroppedPhoto {
  /** The file's own name. */
  readonly name: string;
  /** When it was taken, in milliseconds since 1970 as far as anybody knows. */
  readonly taken: number;
}

/** A thing that photos may show. */
export interface PhotographedThing {
  readonly name: string;
  readonly kind: string;
  /** Whether its record has a picture already: then no order gives it one. */
  readonly hasPicture: boolean;
}

/** What a photo is taken to show: a thing by its place from 0, the whole box, or nothing yet; and what said so. */
export interface PhotoMatch {
  readonly photo: DroppedPhoto;
  readonly shows: number | 'box' | undefined;
  readonly by: 'name' | 'number' | 'order' | 'none';
}

/** What cameras, phones and programs put into a file's name, and what people add that names no thing. */
const NO_WORDS = new Set(
  `img image dsc dscn dscf pxl photo picture pic foto bild whatsapp screenshot screen shot snapchat signal telegram mvimg
  burst cover portrait edit edited copy final new heic jpeg jpg png at am pm on of the a an and with in from for to my our
  p mp night hdr pano detail close up closeup closer front back side top left right small large web lores hires crop
  cropped bw v raw scan untitled file main hero shop studio white background bg light dark table desk`
    .split(/\s+/)
    .filter(Boolean),
);

/** Words for all things at once. */
const WHOLE =
  /(?:^|\b)(?:whole|entire|complete|full|open(?:ed)?|all|everything|contents?|flat ?lay|unbox(?:ed|ing)?|group|together|spread|overview|lid|packed|box(?:es)?)\b/;
/** Of these one is enough; "all" and "open" may be of one thing. */
const SURELY_WHOLE =
  /\b(?:(?:whole|entire|complete|full|open(?:ed)?|packed|the|may|june|july|january|february|march|april|august|september|october|november|december|\d{4} \d{1,2}) (?:\w+ )?box|box (?:open(?:ed)?|contents?|overview|\d{4} \d{1,2})|all (?:the )?(?:things|items|products|together|of it)|everything|contents|flat ?lay|unbox(?:ed|ing)?|group(?: shot)?|all together|overview|the lot)\b/;

/** Words that a name or a file's name is made of: "IMG_20260312_tray-2.JPG" is tray. */
const wordsOf = (text: string): readonly string[] =>
  fold(text)
    .replace(/[^\p{L}\p{M}']+/gu, ' ')
    .split(' ')
    .map((word) => singularOf(word.replaceAll("'", '')))
    .filter((word) => word.length > 1 && !NO_WORDS.has(word));

/** The name without its ending, and SeedTray in two words. */
const bareName = (file: string): string =>
  file.replace(/\.[^.]*$/, '').replace(/(?<=\p{Ll})(?=\p{Lu})/gu, ' ');

/** A shorter word may have its slip in a letter that makes it another word. */
const LEAST_FOR_SLIP = 5;

const isAlike = (a: string, b: string): boolean =>
  a === b ||
  (Math.min(a.length, b.length) >= LEAST_FOR_SLIP && a[0] === b[0] && editDistance(a, b) <= 1) ||
  // Scripts without blanks between words, and words that people write as one or as two.
  (/[^\p{Script=Latin}]/u.test(b) && b.length > 1 && a.includes(b));

/** How much of a thing's words a file's name has, each by how few things share it; the head counts twice. */
const likeness = (
  words: readonly string[],
  joined: string,
  { all, head }: { readonly all: readonly string[]; readonly head: string | undefined },
  sharing: (word: string) => number,
): number =>
  [...new Set(all)].reduce((sum, word) => {
    const isThere =
      words.some((one) => isAlike(one, word) || isAlike(word, one)) ||
      (word.length >= LEAST_FOR_SLIP - 1 && joined.includes(word));
    return isThere ? sum + (word === head ? 2 : 1) / sharing(word) : sum;
  }, 0);

/** The thing that a file's name names more clearly than any other; undefined where two are as likely. */
const namedBy = (
  file: string,
  things: readonly PhotographedThing[],
): { readonly at: number; readonly score: number } | undefined => {
  const words = wordsOf(bareName(file));
  const joined = words.join('');
  const parts = things.map(({ name, kind }) => {
    const kindWords = wordsOf(kind);
    return { all: [...wordsOf(name.replace(/[,(].*$/, '')), ...kindWords], head: kindWords.at(-1) };
  });
  const sharing = (word: string): number => parts.filter(({ all }) => all.includes(word)).length;
  const scores = parts
    .map((part, at) => ({ at, score: likeness(words, joined, part, sharing) }))
    .sort((a, b) => b.score - a.score);
  const [best, second] = scores;
  return best && best.score > 0 && best.score > (second?.score ?? 0) ? best : undefined;
};

/** A file that is called by a number and little else: "3.jpg", "03a.heic", "item 2". No camera counts so low. */
const numberOf = (file: string): number | undefined => {
  const found =
    /^(?:item|thing|no\.?|nr\.?|number|product|#)?[ _-]*0?(\d{1,2})(?:[ _-]?[a-z]|[ _-]\d|\s?\(\d+\))?$/i.exec(
      file.replace(/\.[^.]*$/, '').trim(),
    );
  return found ? Number(found[1]) : undefined;
};

/** The number that people put before a name: "02 - brass thing.jpg". */
const leadingNumber = (file: string): number | undefined => {
  const found = /^0?(\d{1,2})[ _.)-]+(?=\p{L})/u.exec(file);
  return found ? Number(found[1]) : undefined;
};

const collator = new Intl.Collator('en', { numeric: true });

/** By when they were taken, and where that says nothing by their names, with numbers as numbers. */
const inOrder = (photos: readonly PhotoMatch[]): readonly PhotoMatch[] =>
  [...photos].sort((a, b) => a.photo.taken - b.photo.taken || collator.compare(a.photo.name, b.photo.name));

/** Runs of photos with `count - 1` breaks where most time passed between two; undefined where no break is clear. */
const bursts = (
  photos: readonly PhotoMatch[],
  count: number,
): readonly (readonly PhotoMatch[])[] | undefined => {
  if (photos.length === count) return photos.map((one) => [one]);
  if (count < 1 || photos.length < count) return undefined;
  const gaps = photos
    .slice(1)
    .map(({ photo }, i) => ({ at: i + 1, gap: photo.taken - (photos[i]?.photo.taken ?? 0) }));
  const sorted = [...gaps].sort((a, b) => b.gap - a.gap);
  const [least, next] = [sorted[count - 2]?.gap ?? 0, sorted[count - 1]?.gap ?? 0];
  // Between things one lays down and picks up; between two pictures of one thing one only presses again.
  if (count > 1 && least < Math.max(next * CLEARLY, LEAST_GAP)) return undefined;
  const breaks = sorted
    .slice(0, count - 1)
    .map(({ at }) => at)
    .sort((a, b) => a - b);
  return [0, ...breaks].map((from, i) => photos.slice(from, breaks[i] ?? photos.length));
};
const CLEARLY = 2;
/** In milliseconds. */
const LEAST_GAP = 20_000;

/** What each photo shows, in the order of the files' names. */
export const matchPhotos = (
  photos: readonly DroppedPhoto[],
  things: readonly PhotographedThing[],
  hasWholeBox = false,
): readonly PhotoMatch[] => {
  const sorted = [...photos].sort((a, b) => collator.compare(a.name, b.name));
  const first = sorted.map((photo): PhotoMatch => {
    const bare = fold(bareName(photo.name)).replace(/[_\-.]+/g, ' ');
    const named = namedBy(photo.name, things);
    const whole = SURELY_WHOLE.test(bare);
    // "seed box open.jpg" in a box with a seed box shows that.
    if (whole && namedBy(bare.replace(SURELY_WHOLE, ' '), things) === undefined)
      return { photo, shows: 'box', by: 'name' };
    if (named) return { photo, shows: named.at, by: 'name' };
    if (WHOLE.test(bare)) return { photo, shows: 'box', by: 'name' };
    const number = numberOf(photo.name) ?? leadingNumber(photo.name);
    if (number !== undefined && number >= 1 && number <= things.length)
      return { photo, shows: number - 1, by: 'number' };
    return { photo, shows: undefined, by: 'none' };
  });
  const left = inOrder(first.filter(({ shows }) => shows === undefined));
  const shown = new Set(first.map(({ shows }) => shows));
  const bare = things.flatMap((thing, at) => (thing.hasPicture || shown.has(at) ? [] : [at]));
  const guessed = new Map<DroppedPhoto, number | 'box'>();
  const targets: readonly (readonly (number | 'box')[])[] = [
    bare,
    // One run more than things: the box is opened first.
    ...(shown.has('box') || hasWholeBox ? [] : [['box' as const, ...bare]]),
  ];
  for (const target of targets) {
    if (target.length === 0 || guessed.size > 0) continue;
    bursts(left, target.length)?.forEach((run, i) => {
      for (const { photo } of run) guessed.set(photo, target[i] as number | 'box');
    });
  }
  return first.map((match) => {
    const shows = guessed.get(match.photo);
    return shows === undefined ? match : { ...match, shows, by: 'order' };
  });
};
