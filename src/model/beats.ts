/**
 * A live reveal as a list of beats: what is said, what is held up, how long it takes. Drawn from the same records and
 * stories as the article; the owner's own words in `live` of cycle.md go first.
 */
import type { Location } from '../diagnostics/diagnostic.ts';
import { defined } from '../text/defined.ts';
import { type BeatKind, beatTitles } from './beat-names.ts';
import type { Box, Cycle, Item, LiveWords, Moment } from './box.ts';
import { callFor } from './calls.ts';
import { type Caution, cautionsOf } from './cautions.ts';
import { passageThatTells } from './live-passages.ts';
import { type StockWords, saidAddress, stockWords } from './live-words.ts';
import { type Paragraph, paragraphsOf, sentencesOf } from './sentences.ts';
import { firstSentences, type Speech, secondsToSay, speechOf } from './speaking.ts';
import { tellingOf } from './telling.ts';
import { nameInSentence, namesInLine, shortName } from './title.ts';

/** What a beat says and shows, before the clock. */
interface Cue {
  readonly kind: BeatKind;
  /** As cycle.md names it in `live` and in `replay.beats`: `hook`, `questions-2`, an item's slug. */
  readonly name: string;
  readonly title: string;
  readonly item?: Item;
  /** Sentences in the order in which they are said. */
  readonly say: readonly string[];
  /** What to hold up or do. */
  readonly show: readonly string[];
  /** What must be said as well. */
  readonly cautions: readonly Caution[];
  /** Where the words come from; undefined for words that no author wrote. */
  readonly from?: Location;
  /** Where the owner may write others: the key in cycle.md. */
  readonly field: string;
}

export interface Beat extends Cue {
  /** Seconds that the words take, cautions included; not rounded. */
  readonly speaking: number;
  /** Seconds for holding up, showing how, waiting for answers. */
  readonly handling: number;
  /** Seconds left over from the wanted length, for questions and looking. */
  readonly room: number;
  /** Whole seconds from the start of the live; the stage is set before it and starts at 0 with none. */
  readonly start: number;
  /** Whole seconds: words, handling and room. */
  readonly seconds: number;
}

export interface Live {
  readonly beats: readonly Beat[];
  /** Whole seconds from the hook to the end of the call. */
  readonly seconds: number;
  /** Whole seconds of words and handling alone. */
  readonly needed: number;
  /** Seconds the live should last, where anybody said so. */
  readonly wanted?: number;
}

/** The hook has to be over when people decide whether they stay. Common practice, no source. */
export const HOOK_SECONDS = 15;

/** Seconds of words that are drawn from a story where the owner wrote none. Common practice, no source. */
const DRAWN = { about: 20, chosen: 25, mishap: 40, lead: 32, item: 20, whole: 25, peek: 25 } as const;

/** Seconds beside the words. Common practice, no source. */
const HANDLING: Readonly<Record<BeatKind | 'lead', number>> = {
  stage: 0,
  hook: 0,
  greet: 22,
  about: 0,
  chosen: 0,
  mishap: 5,
  lead: 60,
  item: 40,
  questions: 45,
  whole: 30,
  peek: 5,
  call: 10,
};

/** After so many items somebody else should have a say. */
const ITEMS_BETWEEN_QUESTIONS = 2;

interface Context {
  readonly box: Box;
  readonly cycle: Cycle;
  readonly asOf: Moment;
  readonly speech: Speech;
  readonly stock: StockWords;
  readonly live: LiveWords;
}

const fieldPlace = ({ cycle }: Context, ...keys: readonly string[]): Location | undefined =>
  keys.map((key) => cycle.source.fields.get(key)).find((location) => location !== undefined);

const locationOf = ({ file, line }: Paragraph): Location => ({ file, line, column: 1 });

const cue = (kind: Exclude<BeatKind, 'item'>, more: Partial<Cue> & { readonly say: Cue['say'] }): Cue => ({
  kind,
  name: kind,
  title: beatTitles[kind],
  show: [],
  cautions: [],
  field: `live.${kind}`,
  ...more,
});

/** The owner's own words for a beat, if there are any. */
const ownWords = (context: Context, kind: keyof LiveWords): Pick<Cue, 'say' | 'from'> | undefined => {
  const written = context.live[kind];
  if (typeof written !== 'string') return undefined;
  return {
    say: sentencesOf(written, context.speech.lang),
    ...defined({ from: fieldPlace(context, `live.${kind}`) }),
  };
};

const stageCue = (context: Context): Cue => {
  const { cycle, box, asOf, live } = context;
  const [lead, ...others] = cycle.items;
  const kinds = new Set(cycle.items.flatMap(({ hazards }) => hazards.categories));
  const call = callFor(box, cycle, asOf);
  const usual = [
    'The box, closed again as it was posted.',
    ...(lead ? [`Nearest your hand: ${lead.name}.`] : []),
    ...(others.length > 0 ? [`In the order of telling: ${others.map(({ name }) => name).join('; ')}.`] : []),
    ...(kinds.has('candle') ? ['A lid and a damp cloth, in reach of the flame.'] : []),
    ...(kinds.has('blade') ? ['A board to cut on.'] : []),
    ...(call ? [`A card with the address, large: ${saidAddress(call.address)}`] : []),
  ];
  return cue('stage', {
    say: [],
    show: [
      ...(live.layOut ?? usual),
      live.wear ?? 'Wear one plain colour that the things stand out against, and nothing that rattles.',
    ],
    field: 'live.layOut',
  });
};

const hookCue = (context: Context, opening: Paragraph | undefined): Cue => {
  const show = ['Look up. The box stays shut.'];
  const own = ownWords(context, 'hook');
  if (own) return cue('hook', { ...own, show });
  const say = opening ? firstSentences(opening.text, HOOK_SECONDS, context.speech) : [];
  return cue('hook', { say, show, ...(opening && { from: locationOf(opening) }) });
};

const aboutCue = (context: Context): Cue => {
  const own = ownWords(context, 'about');
  if (own) return cue('about', own);
  const { settings } = context.box;
  return cue('about', {
    say: firstSentences(
      context.stock.about(settings.name, settings.description),
      DRAWN.about,
      context.speech,
    ),
    ...defined({ from: settings.source.fields.get('description') }),
  });
};

/** Words of the paragraph that tells it and, for a mishap, of those after it, without what was said already. */
const toldCue = (
  context: Context,
  kind: 'chosen' | 'mishap',
  paragraphs: readonly Paragraph[],
  said: ReadonlySet<string>,
): Cue => {
  const own = ownWords(context, kind);
  if (own) return cue(kind, own);
  const fresh = paragraphs.flatMap((paragraph) => {
    const text = sentencesOf(paragraph.text, context.speech.lang)
      .filter((sentence) => !said.has(sentence))
      .join(' ');
    return text === '' ? [] : [{ ...paragraph, text }];
  });
  const told = passageThatTells(fresh, kind, context.speech.lang);
  if (!told) return cue(kind, { say: [] });
  const from = fresh.indexOf(told);
  const text = fresh
    .slice(from, kind === 'mishap' ? undefined : from + 1)
    .map((paragraph) => paragraph.text)
    .join(' ');
  return cue(kind, { say: firstSentences(text, DRAWN[kind], context.speech), from: locationOf(told) });
};

/**
 * What is said of an item's dangers. Ingredients are read on the card, not aloud; what was said of an earlier item in
 * the same words is pointed back to.
 */
const spokenCautions = ({ items }: Cycle, item: Item): readonly Caution[] =>
  cautionsOf(item)
    .filter(({ sort }) => sort !== 'ingredients')
    .map((caution) => {
      const words = caution.lines.join(' ');
      const earlier = items
        .slice(0, items.indexOf(item))
        .find((other) => cautionsOf(other).some(({ lines }) => lines.join(' ') === words));
      // A short line is sooner said again.
      if (!earlier || caution.lines.length < 2) return caution;
      return { ...caution, lines: [`All that was said of “${shortName(earlier.name)}” holds here too.`] };
    });

/** What to do with an item. */
const showOf = ({ items }: Cycle, item: Item): readonly string[] => {
  const [lead] = items;
  const beside = lead && lead !== item ? `, then put it by the ${lead.kind}` : '';
  return [`Hold it up${beside}.`];
};

const itemCue = (context: Context, item: Item): Cue => {
  const { live, speech } = context;
  const own = live.items?.[item.slug];
  const [first] = paragraphsOf(item.story.tree, item.story.file);
  const drawn = firstSentences(first?.text ?? item.description, item.lead ? DRAWN.lead : DRAWN.item, speech);
  const goesWith = item.goesWith === undefined ? [] : sentencesOf(item.goesWith, speech.lang);
  return {
    kind: 'item',
    name: item.slug,
    title: item.name,
    item,
    say: own === undefined ? [...drawn, ...goesWith] : sentencesOf(own, speech.lang),
    show: showOf(context.cycle, item),
    cautions: spokenCautions(context.cycle, item),
    field: `live.items.${item.slug}`,
    ...defined({
      from:
        own === undefined
          ? first
            ? locationOf(first)
            : item.source.fields.get('description')
          : fieldPlace(context, `live.items.${item.slug}`),
    }),
  };
};

/** Items with questions after every second one; a box of one or two has them at its end. */
const itemCues = (context: Context): readonly Cue[] => {
  const { items } = context.cycle;
  const gaps = items.flatMap((_, i) =>
    (i + 1) % ITEMS_BETWEEN_QUESTIONS === 0 && i + 1 < items.length ? [i] : [],
  );
  const after = gaps.length > 0 ? gaps : [items.length - 1];
  const written = context.live.questions;
  return items.flatMap((item, i) => {
    const turn = after.indexOf(i);
    if (turn < 0) return [itemCue(context, item)];
    // The owner's questions are dealt out in order, one more to the earlier gaps where they do not come out even.
    const own = written?.filter((_, n) => Math.floor((n * after.length) / written.length) === turn);
    const earlier = items[i - 1];
    const name = (one: Item): string => nameInSentence(one.name, context.speech.lang);
    const stock = context.stock.question(earlier && name(earlier), name(item));
    return [
      itemCue(context, item),
      cue('questions', {
        name: after.length > 1 ? `questions-${turn + 1}` : 'questions',
        say: own ?? (stock === '' ? [] : [stock]),
        show: ['Read two or three answers out, with the names.'],
        ...defined({ from: own && fieldPlace(context, 'live.questions') }),
      }),
    ];
  });
};

const wholeCue = (context: Context): Cue => {
  const { cycle, speech, stock } = context;
  const show = ['Everything into the picture, as it lay in the box.'];
  const own = ownWords(context, 'whole');
  if (own) return cue('whole', { ...own, show });
  const names = namesInLine(
    cycle.items.map(({ name }) => name),
    speech.lang,
  );
  const caption = cycle.wholeBox?.caption ?? '';
  const say = firstSentences(`${stock.whole(names)} ${caption}`, DRAWN.whole, speech);
  return cue('whole', { say, show, ...defined({ from: fieldPlace(context, 'photo.caption', 'photo') }) });
};

const peekCue = (context: Context): Cue => {
  const { peek } = context.cycle;
  const show = [peek?.picture ? `Show the picture: ${peek.picture.alt}` : 'Hands empty. Say it slowly.'];
  const own = ownWords(context, 'peek');
  if (own) return cue('peek', { ...own, show });
  const say = firstSentences(peek?.text ?? '', DRAWN.peek, context.speech);
  return cue('peek', { say, show, ...defined({ from: fieldPlace(context, 'peek.text', 'peek') }) });
};

const callCue = (context: Context): Cue => {
  const { box, cycle, asOf, stock } = context;
  const call = callFor(box, cycle, asOf);
  const address = call && saidAddress(call.address);
  const show = address === undefined ? [] : [`Hold up the card: ${address}`];
  const own = ownWords(context, 'call');
  if (own) return cue('call', { ...own, show });
  return cue('call', {
    say: call && address !== undefined ? stock.call(call, address) : [],
    show,
    ...defined({ from: call && box.settings.source.fields.get(`calls.${call.kind}.text`) }),
  });
};

const cuesOf = (context: Context): readonly Cue[] => {
  const { cycle, live, stock } = context;
  const paragraphs = tellingOf(cycle).parts.flatMap((part) =>
    part.part === 'prose' ? paragraphsOf(part.tree, cycle.story.file) : [],
  );
  const hook = hookCue(context, paragraphs[0]);
  const mishap = toldCue(context, 'mishap', paragraphs, new Set(hook.say));
  const chosen = toldCue(context, 'chosen', paragraphs, new Set([...hook.say, ...mishap.say]));
  return [
    stageCue(context),
    hook,
    cue('greet', {
      say: live.greet ?? stock.greet,
      show: ['Open the box while they type.'],
      ...defined({ from: fieldPlace(context, 'live.greet') }),
    }),
    aboutCue(context),
    chosen,
    mishap,
    ...itemCues(context),
    wholeCue(context),
    peekCue(context),
    callCue(context),
  ];
};

/** Beats in which there is something to look at or to answer: they share what is left of the wanted length. */
const TAKES_ROOM: ReadonlySet<BeatKind> = new Set(['item', 'questions', 'whole']);

const timed = (cues: readonly Cue[], speech: Speech, wanted: number | undefined): Live => {
  const own = cues.map((one) => {
    const words = [...one.say, ...one.cautions.flatMap(({ lines }) => lines)];
    const speaking = words.reduce((sum, sentence) => sum + secondsToSay(sentence, speech), 0);
    const handling = HANDLING[one.item?.lead ? 'lead' : one.kind];
    return { ...one, speaking, handling, least: Math.ceil(speaking + handling) };
  });
  const needed = own.reduce((sum, { least }) => sum + least, 0);
  const spare = Math.max(0, (wanted ?? needed) - needed);
  const takers = own.filter(({ kind }) => TAKES_ROOM.has(kind)).length;
  let start = 0;
  let taken = 0;
  const beats = own.map(({ least, ...one }): Beat => {
    let room = 0;
    if (TAKES_ROOM.has(one.kind)) {
      // Of shares that do not come out even, the earlier ones have the second more.
      room = Math.floor(spare / takers) + (taken < spare % takers ? 1 : 0);
      taken += 1;
    }
    const beat = { ...one, room, start, seconds: least + room };
    start += beat.seconds;
    return beat;
  });
  return { beats, seconds: start, needed, ...(wanted === undefined ? {} : { wanted }) };
};

/** The live of a cycle, beat by beat. */
export const liveOf = (box: Box, cycle: Cycle, asOf: Moment): Live => {
  const speech = speechOf(box.settings);
  const live = cycle.live ?? {};
  const stock = stockWords(speech.lang);
  const minutes = live.minutes ?? cycle.replay?.minutes;
  return timed(
    cuesOf({ box, cycle, asOf, speech, stock, live }),
    speech,
    minutes === undefined ? undefined : minutes * 60,
  );
};
