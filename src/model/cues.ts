/**
 * What is said and shown at each beat of a live, in the order of telling. Drawn from the same records and stories as the
 * article; the owner's own words in `live` of cycle.md go first.
 */

import { suggestedCategory } from '../content/hurtful-kinds.ts';
import type { Location } from '../diagnostics/diagnostic.ts';
import { defined } from '../text/defined.ts';
import { ownValue } from '../text/own-value.ts';
import { sentencesOf } from '../text/sentences.ts';
import type { BeatKind } from './beat-names.ts';
import type { BoxSettings, Category, Cycle, Item, LiveWords } from './box.ts';
import { monthAlone, spokenDay } from './calendar.ts';
import { type Call, saidAddress } from './calls.ts';
import { cautionsOf, isDanger } from './cautions.ts';
import { passageThatTells } from './live-passages.ts';
import type { Direction, SpokenCaution, SpokenWords } from './live-words.ts';
import { type Paragraph, paragraphsOf } from './paragraphs.ts';
import type { NextBox } from './relations.ts';
import { firstSentences, type Speech } from './speaking.ts';
import { tellingOf } from './telling.ts';
import { namesInLine } from './title.ts';

/** What a beat says and shows, before the clock. */
export interface Cue {
  readonly kind: BeatKind;
  /** As cycle.md names it in `live` and in `replay.beats`: `hook`, `questions-2`, an item's slug. */
  readonly name: string;
  readonly item?: Item;
  /** Sentences in the order in which they are said. */
  readonly say: readonly string[];
  /** What to hold up or do. */
  readonly show: readonly Direction[];
  /** What must be said as well. */
  readonly cautions: readonly SpokenCaution[];
  /** Where the words come from; undefined for words that no author wrote. */
  readonly from?: Location;
  /** Where the owner may write others: the key in cycle.md. */
  readonly field: string;
}

/** The hook has to be over when people decide whether they stay. Common practice, no source. */
export const HOOK_SECONDS = 15;

/** Seconds of words that are drawn from a story where the owner wrote none. Common practice, no source. */
const DRAWN = { about: 20, chosen: 25, mishap: 40, lead: 32, item: 20, whole: 25, peek: 25 } as const;

/** After so many items somebody else should have a say. */
const ITEMS_BETWEEN_QUESTIONS = 2;

/** What a live is made of. */
export interface LiveInput {
  readonly cycle: Cycle;
  readonly settings: BoxSettings;
  /** The call that holds when it is held. */
  readonly call: Call | undefined;
  /** The box that follows, to be named at the end. */
  readonly next?: NextBox;
}

/** What cues are written from. */
interface CueContext extends LiveInput {
  readonly speech: Speech;
  readonly words: SpokenWords;
  readonly live: LiveWords;
}

const fieldPlace = ({ cycle }: CueContext, ...keys: readonly string[]): Location | undefined =>
  keys.map((key) => cycle.source.fields.get(key)).find((location) => location !== undefined);

const locationOf = ({ file, line }: Paragraph): Location => ({ file, line, column: 1 });

const cue = (kind: Exclude<BeatKind, 'item'>, more: Partial<Cue> & { readonly say: Cue['say'] }): Cue => ({
  kind,
  name: kind,
  show: [],
  cautions: [],
  field: `live.${kind}`,
  ...more,
});

/** Beats for which the owner may write a text of their own. */
type OwnWords = 'hook' | 'about' | 'chosen' | 'mishap' | 'whole' | 'peek' | 'call' | 'goodbye';

/** The owner's own words for a beat, if there are any. */
const ownWords = (context: CueContext, kind: OwnWords): Pick<Cue, 'say' | 'from'> | undefined => {
  const written = context.live[kind];
  if (written === undefined) return undefined;
  return {
    say: sentencesOf(written, context.speech.lang),
    ...defined({ from: fieldPlace(context, `live.${kind}`) }),
  };
};

const stageCue = (context: CueContext): Cue => {
  const { cycle, call, live } = context;
  const [lead, ...others] = cycle.items;
  const kinds = new Set(cycle.items.flatMap(({ hazards }) => hazards.categories));
  const own = (text: string): Direction => ({ direction: 'own', text });
  const usual: readonly Direction[] = [
    { direction: 'box closed' },
    ...(lead ? [{ direction: 'nearest', name: lead.name } as const] : []),
    ...(others.length > 0 ? [{ direction: 'in order', names: others.map(({ name }) => name) } as const] : []),
    ...(kinds.has('candle') ? [{ direction: 'lid' } as const] : []),
    ...(kinds.has('blade') ? [{ direction: 'board' } as const] : []),
    ...(call ? [{ direction: 'address card', address: saidAddress(call.address) } as const] : []),
  ];
  return cue('stage', {
    say: [],
    show: [
      ...(live.layOut?.map(own) ?? usual),
      live.wear === undefined ? { direction: 'plain clothes' } : own(live.wear),
    ],
    field: 'live.layOut',
  });
};

const hookCue = (context: CueContext, opening: Paragraph | undefined): Cue => {
  const show: Cue['show'] = [{ direction: 'look up' }];
  const own = ownWords(context, 'hook');
  if (own) return cue('hook', { ...own, show });
  const say = opening ? firstSentences(opening.text, HOOK_SECONDS, context.speech) : [];
  return cue('hook', { say, show, ...(opening && { from: locationOf(opening) }) });
};

const aboutCue = (context: CueContext): Cue => {
  const own = ownWords(context, 'about');
  if (own) return cue('about', own);
  const { settings, words, speech } = context;
  return cue('about', {
    say: firstSentences(words.stock.about(settings.name, settings.description), DRAWN.about, speech),
    ...defined({ from: settings.source.fields.get('description') }),
  });
};

/** Words of the paragraph that tells it and, for a mishap, of those after it, without what was said already. */
const toldCue = (
  context: CueContext,
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

/** What was said of an earlier item in the same words is pointed back to. */
const spokenCautions = ({ cycle, words }: CueContext, item: Item): readonly SpokenCaution[] => {
  const saidOf = (other: Item): readonly SpokenCaution[] =>
    cautionsOf(other).map((caution) => ({ sort: caution.sort, lines: words.caution(caution).lines }));
  const before = cycle.items.slice(0, cycle.items.indexOf(item));
  return cautionsOf(item)
    .filter(isDanger)
    .map((caution) => {
      const { sort } = caution;
      const { lines } = words.caution(caution);
      const said = lines.join(' ');
      const earlier = before.find((other) => saidOf(other).some((one) => one.lines.join(' ') === said));
      // A short line is sooner said again.
      if (!earlier || lines.length < 2) return { sort, lines };
      return { sort, lines: [words.sameCautions(earlier.inText.short)] };
    });
};

/** What to do with an item. */
const showOf = ({ items }: Cycle, item: Item): readonly Direction[] => {
  const [lead] = items;
  return [{ direction: 'hold up', ...(lead && lead !== item ? { beside: lead.inText.kind } : {}) }];
};

const itemCue = (context: CueContext, item: Item): Cue => {
  const { live, speech } = context;
  const own = ownValue(live.items, item.slug);
  const [first] = paragraphsOf(item.story.tree, item.story.file);
  const drawn = firstSentences(first?.text ?? item.description, item.lead ? DRAWN.lead : DRAWN.item, speech);
  const goesWith = item.goesWith === undefined ? [] : sentencesOf(item.goesWith, speech.lang);
  return {
    kind: 'item',
    name: item.slug,
    item,
    say: own === undefined ? [...drawn, ...goesWith] : sentencesOf(own, speech.lang),
    show: showOf(context.cycle, item),
    cautions: spokenCautions(context, item),
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

/**
 * What becomes of a thing: only two of which the same becomes are asked about together, since nobody chooses between
 * flour and a cutter. What is eaten and what is drunk are one.
 */
const useOf = ({ hazards, kind }: Item): Category | 'tool' => {
  const [category = suggestedCategory(kind) ?? 'tool'] = hazards.categories;
  if (category === 'drink') return 'food';
  return category === 'blade' || category === 'children' ? 'tool' : category;
};

/** Items with questions after every second one; a box of one or two has them at its end. */
const itemCues = (context: CueContext): readonly Cue[] => {
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
    const beside = earlier && useOf(earlier) === useOf(item) ? earlier.inText.name : undefined;
    const stock = context.words.stock.question(beside, item.inText.name, useOf(item) === 'food');
    return [
      itemCue(context, item),
      cue('questions', {
        name: after.length > 1 ? `questions-${turn + 1}` : 'questions',
        say: own ?? (stock === '' ? [] : [stock]),
        show: [{ direction: 'read answers' }],
        ...defined({ from: own && fieldPlace(context, 'live.questions') }),
      }),
    ];
  });
};

const wholeCue = (context: CueContext): Cue => {
  const { cycle, speech, words } = context;
  const show: Cue['show'] = [{ direction: 'everything' }];
  const own = ownWords(context, 'whole');
  if (own) return cue('whole', { ...own, show });
  const names = namesInLine(
    cycle.items.map(({ inText }) => inText),
    speech.lang,
  );
  const caption = cycle.wholeBox?.caption ?? '';
  const say = firstSentences(`${words.stock.whole(names)} ${caption}`, DRAWN.whole, speech);
  return cue('whole', { say, show, ...defined({ from: fieldPlace(context, 'photo.caption', 'photo') }) });
};

const peekCue = (context: CueContext): Cue => {
  const { peek } = context.cycle;
  const show: Cue['show'] = [
    peek?.picture ? { direction: 'picture', alt: peek.picture.alt } : { direction: 'empty hands' },
  ];
  const own = ownWords(context, 'peek');
  if (own) return cue('peek', { ...own, show });
  const say = firstSentences(peek?.text ?? '', DRAWN.peek, context.speech);
  return cue('peek', { say, show, ...defined({ from: fieldPlace(context, 'peek.text', 'peek') }) });
};

const callCue = (context: CueContext): Cue => {
  const { settings, call, words } = context;
  const address = call && saidAddress(call.address);
  const show: Cue['show'] = address === undefined ? [] : [{ direction: 'hold card', address }];
  const own = ownWords(context, 'call');
  if (own) return cue('call', { ...own, show });
  return cue('call', {
    say: call && address !== undefined ? words.stock.call(call, address) : [],
    show,
    ...defined({ from: call && settings.source.fields.get(`calls.${call.kind}.text`) }),
  });
};

const goodbyeCue = (context: CueContext): Cue => {
  const own = ownWords(context, 'goodbye');
  if (own) return cue('goodbye', own);
  const { next, settings, words } = context;
  const { lang, timeZone } = settings;
  return cue('goodbye', {
    say: words.stock.goodbye(
      next && monthAlone(next, lang),
      next?.reveal === undefined ? undefined : spokenDay(next.reveal, timeZone, lang),
    ),
  });
};

/** Every cue of a live in the order of telling, the stage first. */
export const cuesOf = (context: CueContext): readonly Cue[] => {
  const { cycle, live, words } = context;
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
      say: live.greet ?? words.stock.greet,
      show: [{ direction: 'open box' }],
      ...defined({ from: fieldPlace(context, 'live.greet') }),
    }),
    aboutCue(context),
    chosen,
    mishap,
    ...itemCues(context),
    wholeCue(context),
    peekCue(context),
    callCue(context),
    goodbyeCue(context),
  ];
};
