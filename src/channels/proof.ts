/** The proof as a page of the back room: an article read for whether it will be found, before it is published. */

import type {
  Coverage,
  Edit,
  Grade,
  ItemCoverage,
  OverRepetition,
  PhraseCoverage,
  SharedPassage,
} from '../analysis/coverage/coverage.ts';
import type { Passage } from '../analysis/coverage/text/passage.ts';
import { type Zone, zones, zoneWords } from '../analysis/coverage/text/zones.ts';
import { type Diagnostic, type Location, locationText } from '../diagnostics/diagnostic.ts';
import type { Box, Cycle, Moment } from '../model/box.ts';
import { dateInZone, longDate, monthName, revealDay } from '../model/calendar.ts';
import { isSealed } from '../model/seal.ts';
import { documentText, schemeElement } from '../render/document.ts';
import { findingViews } from '../render/findings.ts';
import { type Html, html, joinHtml } from '../render/html.ts';
import { type MarkedMention, markedText, underlineOf } from '../render/marked-text.ts';
import type { Output, TextOutput } from '../render/output.ts';
import {
  abridged,
  addingUp,
  alsoLine,
  briefName,
  broughtWords,
  gradeMeanings,
  isAtAim,
  linkMarkdown,
  ordinalWord,
  readingWords,
  saysItself,
  standingText,
  verdictWords,
} from '../render/proof-words.ts';
import { shareBar, squareMark } from '../render/quiet-marks.ts';
import type { Templates } from '../render/templates.ts';
import { typeset } from '../render/typeset.ts';
import { listed } from '../text/counting-words.ts';
import type { Channel } from './channel.ts';

export interface ProofContext {
  readonly box: Box;
  readonly cycle: Cycle;
  readonly asOf: Moment;
  readonly templates: Templates;
  /** Findings of the cycle's records. */
  readonly diagnostics: readonly Diagnostic[];
  /** Of everything the proof is made from: it stands in the page's head, so that an unchanged one is known. */
  readonly textHash: string;
}

/** Grades in which a phrase is not met as such. */
const WEAK: readonly Grade[] = ['scattered', 'head only'];

const best = (some: readonly Grade[]): Grade =>
  gradeMeanings.find(([grade]) => some.includes(grade))?.[0] ?? 'absent';

/** Names of things as the page's anchors have them. Items and phrases are counted as they are told, from 1. */
const anchors = {
  passage: (index: number) => `text-${index + 1}`,
  edit: (index: number) => `edit-${index + 1}`,
  mention: (item: number, phrase: number, mention: number) => `said-${item}-${phrase}-${mention}`,
  account: (item: number, phrase: number) => `account-${item}-${phrase}`,
};

/** The file as it is called inside its cycle's folder. */
const shortFile = (file: string, cycle: string): string => {
  const folder = file.lastIndexOf(`${cycle}/`);
  return folder < 0 ? file : file.slice(folder + cycle.length + 1).replace(/^items\//, '');
};

const linesOf = (passage: Passage): { readonly first: number; readonly last: number } => {
  const lines = passage.words.map(({ line }) => line);
  return lines.length === 0
    ? { first: 0, last: -1 }
    : { first: Math.min(...lines), last: Math.max(...lines) };
};

/** The passage that a place of a file is in: one with text of the wanted kind, else any, else none. */
const passageAt = ({ passages }: Coverage, { file, line }: Location, place?: Zone): number | undefined => {
  const there = passages.flatMap((passage, index) => {
    const { first, last } = linesOf(passage);
    return passage.file === file && line >= first && line <= last ? [{ passage, index }] : [];
  });
  const written = there.filter(({ passage }) => passage.written);
  const wanted = written.find(({ passage }) => passage.words.some((word) => word.zone === place));
  return (wanted ?? written[0] ?? there[0])?.index;
};

const nameOf = ({ items }: Coverage, slug: string): string =>
  items.find((item) => item.slug === slug)?.name ?? slug;

/** Links to a phrase's mentions in one place, by file: "cycle.md 14, 17:3, 17:40". */
const mentionLinks = (
  coverage: Coverage,
  phrase: PhraseCoverage,
  place: Zone,
  anchorOf: (mention: number) => string,
): Html => {
  const here = phrase.mentions.flatMap((mention, index) =>
    mention.zone === place ? [{ ...mention.at, index }] : [],
  );
  const links = [...new Set(here.map(({ file }) => file))].map((name) => {
    const inFile = here.filter(({ file }) => file === name);
    const each = inFile.map(({ line, column, index }) => {
      const alone = inFile.filter((other) => other.line === line).length === 1;
      return html`<a href="#${anchorOf(index)}">${alone ? line : `${line}:${column}`}</a>`;
    });
    return html`${shortFile(name, coverage.cycle)} ${joinHtml(each, ', ')}`;
  });
  return joinHtml(links, '; ');
};

const phraseView = (coverage: Coverage, item: number, phrase: PhraseCoverage, index: number) => {
  const { parts, mentions, standing } = phrase;
  const given = parts.reduce((sum, { gives }) => sum + gives, 0);
  const sums = addingUp(
    parts.map(({ gives }) => gives),
    given,
  );
  // Of the figures as they are shown, so that the subtraction can be checked too.
  const beyond = Number(given.toFixed(3)) - Number(standing.toFixed(3));
  const nowhere = parts.filter((one) => one.mentions === 0);
  const anchorOf = (mention: number): string => anchors.mention(item, index + 1, mention + 1);
  return {
    id: `${item}-${index + 1}`,
    text: phrase.phrase.text,
    origins: phrase.phrase.origins.map(({ words }) => words).join('; '),
    count: mentions.length,
    first: mentions.length > 0 && anchorOf(0),
    standing: standingText(standing, coverage.aim),
    sum: standing.toFixed(3),
    beyond: beyond > 0.0005 && beyond.toFixed(3),
    bar: shareBar(standing, coverage.aim),
    account: anchors.account(item, index + 1),
    parts: parts.map(({ zone: place, worth, grade, mentions: count }, i) => ({
      place: zoneWords[place],
      worth: worth.toFixed(2),
      grade,
      mark: squareMark(grade),
      count,
      where: mentionLinks(coverage, phrase, place, anchorOf),
      gives: sums[i],
    })),
    // Places that give nothing share a line of the account, or it would be mostly noughts.
    without: nowhere.length > 0 && {
      places: listed(nowhere.map(({ zone: place }) => zoneWords[place])),
      worth: nowhere.reduce((sum, { worth }) => sum + worth, 0).toFixed(2),
      mark: squareMark('absent'),
    },
    parent: mentions.find(({ within, grade }) => within !== undefined && !WEAK.includes(grade))?.within,
  };
};

const itemView = (coverage: Coverage) => (item: ItemCoverage) => {
  const { number, phrases, standing } = item;
  const weights = phrases.reduce((sum, { phrase }) => sum + phrase.weight, 0);
  const shares = phrases.map(({ phrase }) => phrase.weight / weights);
  const shown = addingUp(shares, 1);
  const gives = addingUp(
    phrases.map((phrase, i) => (shares[i] as number) * phrase.standing),
    standing,
  );
  const views = phrases.map((phrase, i) => phraseView(coverage, number, phrase, i));
  return {
    number,
    name: typeset(item.name, coverage.lang),
    short: item.kind,
    standing: standingText(standing, coverage.aim),
    sum: standing.toFixed(3),
    below: !isAtAim(standing, coverage.aim),
    promised: standingText(item.promised, coverage.aim),
    bar: shareBar(standing, coverage.aim),
    underline: underlineOf(number),
    marks: zones.map((_, i) => {
      const grade = best(phrases.map(({ parts }) => parts[i]?.grade ?? 'absent'));
      return { grade, mark: squareMark(grade) };
    }),
    phrases: views.map((view, i) => ({ ...view, share: shown[i], adds: gives[i] })),
  };
};

/** What is said in each passage. */
const saidByPassage = (coverage: Coverage): ReadonlyMap<number, readonly MarkedMention[]> => {
  const said = new Map<number, MarkedMention[]>();
  for (const { number, phrases } of coverage.items)
    phrases.forEach(({ mentions }, p) => {
      mentions.forEach((mention, m) => {
        const { words = [] } = coverage.passages[mention.passage] ?? {};
        const [from, to] = [words[mention.from], words[mention.to]];
        if (!from || !to) throw new Error(`Expected the words of a mention in passage ${mention.passage}`);
        const at = `${shortFile(mention.at.file, coverage.cycle)} line ${mention.at.line}`;
        const part = mention.within === undefined ? '' : `, part of “${mention.within}”`;
        const one: MarkedMention = {
          start: from.start,
          end: to.end,
          item: number,
          anchor: anchors.mention(number, p + 1, m + 1),
          weak: WEAK.includes(mention.grade),
          words: `${mention.grade}${part}, ${zoneWords[mention.zone]}, ${at}`,
        };
        said.set(mention.passage, [...(said.get(mention.passage) ?? []), one]);
      });
    });
  return said;
};

/** Where the opening ends inside a passage: an offset, or none. */
const endOfOpening = ({ words }: Passage): number | undefined => {
  const after = words.findIndex(
    ({ zone: place }, i) => place !== 'opening' && words[i - 1]?.zone === 'opening',
  );
  return words[after]?.start;
};

/** Forms that are read, and so are set as the article sets them; the others are shown letter for letter. */
const READ: readonly Passage['form'][] = ['title', 'heading', 'paragraph', 'caption', 'picture'];

const passageHtml = (passage: Passage, said: readonly MarkedMention[], lang: string): Html => {
  const at = endOfOpening(passage);
  return markedText(passage.text, said, {
    lang,
    asIs: !READ.includes(passage.form),
    ...(at !== undefined && { border: { at, words: 'the opening ends here' } }),
  });
};

/** What a passage is, where its setting does not show it. */
const labelOf = ({ form, words }: Passage): string => {
  const place = words[0]?.zone;
  if (form === 'caption') return form;
  if (place !== undefined && place !== 'body' && place !== 'section') return zoneWords[place];
  return form === 'fact' ? form : '';
};

const textView = (coverage: Coverage) => {
  const said = saidByPassage(coverage);
  const placed = coverage.advice.map((edit) => passageAt(coverage, edit.at, edit.zone));
  const labels = coverage.passages.map(labelOf);
  return coverage.passages.map((passage, index) => {
    const { first, last } = linesOf(passage);
    const lines = last > first ? `${first}–${last}` : first;
    return {
      id: anchors.passage(index),
      form: passage.form,
      where: last < 0 ? '' : `${shortFile(passage.file, coverage.cycle)}:${lines}`,
      // Said once for a run of the same: twenty values of structured data need no twenty labels.
      label: labels[index] === labels[index - 1] ? '' : labels[index],
      text: passageHtml(passage, said.get(index) ?? [], coverage.lang),
      edits: coverage.advice.flatMap(({ words, write }, i) =>
        placed[i] === index ? [{ number: i + 1, href: `#${anchors.edit(i)}`, words, write }] : [],
      ),
    };
  });
};

/** A place as words, and where the page shows it, if it does. */
const placeView = (coverage: Coverage, at: Location, place?: Zone) => {
  const passage = passageAt(coverage, at, place);
  return { words: locationText(at), href: passage !== undefined && `#${anchors.passage(passage)}` };
};

const editView = (coverage: Coverage) => (edit: Edit, index: number) => {
  const items = new Set([...edit.serves, ...edit.brings].map(({ item }) => item));
  return {
    id: anchors.edit(index),
    words: edit.words,
    write: !saysItself(edit) && edit.write,
    at: placeView(coverage, edit.at, edit.zone),
    items: [...items].map((slug) => {
      const served = edit.serves.filter(({ item }) => item === slug).map(({ phrase }) => `“${phrase}”`);
      const brought = edit.brings.find(({ item }) => item === slug);
      return {
        name: briefName(nameOf(coverage, slug)),
        phrases: listed(abridged(served)),
        brought: brought && broughtWords(brought, coverage.aim),
      };
    }),
  };
};

const rivalViews = (coverage: Coverage) =>
  coverage.items.flatMap(({ name, phrases }) =>
    phrases.flatMap(({ phrase, rival }) =>
      rival
        ? [
            {
              ...rival,
              name: briefName(name),
              rank: ordinalWord(rival.rank),
              phrase: phrase.text,
              scores: [rival.score.toFixed(2), rival.own.toFixed(2)],
              at: locationText(rival.link.at),
              markdown: linkMarkdown(rival.link),
            },
          ]
        : [],
    ),
  );

const crowdingView = (coverage: Coverage) => (crowding: OverRepetition) => ({
  ...crowding,
  name: briefName(nameOf(coverage, crowding.item)),
  rate: crowding.rate.toFixed(1),
  dispersion: crowding.dispersion.toFixed(2),
  sentences: crowding.sentences.map((sentence) => ({
    ...sentence,
    at: placeView(coverage, sentence.at),
  })),
});

const sharedView = (shared: SharedPassage) => ({
  ...shared,
  resemblance: shared.resemblance.toFixed(2),
  at: { words: locationText(shared.at), href: `#${anchors.passage(shared.passage)}` },
  otherAt: locationText(shared.other.at),
});

const otherNamesView = (coverage: Coverage, cycle: Cycle) =>
  coverage.items.flatMap(({ slug, name, otherNames }) => {
    if (otherNames.length === 0) return [];
    const record = cycle.items.find((item) => item.slug === slug);
    const names = [...(record?.also ?? []), ...otherNames];
    const place = record?.source.fields.get('also') ?? record?.source.fields.get('kind');
    return [
      {
        name,
        names: listed(otherNames.map((other) => `“${other}”`)),
        line: alsoLine(names),
        at: place && locationText(place),
      },
    ];
  });

/** The proof of one cycle as a file of the back room. */
export const proofPage = (coverage: Coverage, context: ProofContext): TextOutput => {
  const { box, cycle, asOf, templates, diagnostics, textHash } = context;
  const { settings } = box;
  // The page is in English; the article on it may not be.
  const lang = /^en\b/i.test(settings.lang) ? settings.lang : 'en';
  const findings = findingViews(diagnostics);
  const page = templates.render('proof', {
    lang,
    textLang: coverage.lang,
    textHash,
    name: typeset(settings.name, lang),
    month: monthName(cycle, lang),
    theme: typeset(coverage.theme, coverage.lang),
    title: typeset(coverage.title, coverage.lang),
    scheme: schemeElement(cycle.palette),
    asOf: longDate(dateInZone(asOf, settings.timeZone), lang),
    sealed: isSealed(cycle, asOf),
    reveal: revealDay(cycle, settings.timeZone, lang),
    aim: coverage.aim,
    verdict: verdictWords(coverage),
    reading: readingWords(coverage.reading, lang),
    limits: coverage.limits,
    legend: gradeMeanings.map(([grade, meaning]) => ({ grade, mark: squareMark(grade), meaning })),
    places: zones.map((place) => zoneWords[place]),
    weakWords: listed(WEAK),
    items: coverage.items.map(itemView(coverage)),
    advice: coverage.advice.map(editView(coverage)),
    text: textView(coverage),
    rivals: rivalViews(coverage),
    crowded: coverage.overRepeated.map(crowdingView(coverage)),
    shared: coverage.shared.map(sharedView),
    otherNames: otherNamesView(coverage, cycle),
    folder: `cycles/${cycle.id}/`,
    mustFix: findings.filter(({ weight }) => weight === 'must fix'),
    findings: findings.filter(({ weight }) => weight !== 'must fix'),
  });
  return {
    where: 'backroom',
    path: `${cycle.id}/proof.html`,
    text: documentText(page),
  };
};

const pathOf = (cycle: Cycle): string => `${cycle.id}/proof.html`;

/** A page for each cycle: made anew where there is a proof, else the one of an earlier build. */
export const proof: Channel = {
  name: 'proof',
  where: 'backroom',
  make: ({ box, asOf, templates, proofs }) => ({
    outputs: box.cycles.map((cycle): Output => {
      const found = proofs.get(cycle.id);
      if (!found) return { where: 'backroom', path: pathOf(cycle), kept: true };
      const { coverage, diagnostics, textHash } = found;
      return proofPage(coverage, { box, cycle, asOf, templates, diagnostics, textHash });
    }),
    diagnostics: [],
  }),
};
