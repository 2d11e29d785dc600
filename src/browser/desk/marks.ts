/** Underlines beneath the story's own text, kept in place while one types. */

type Mark = readonly [from: number, to: number, item: number, isFaint: 0 | 1];

interface MarkedStory {
  /** Takes the marks that the page has now. */
  readonly remark: () => void;
}

/** What was changed between two texts: where, how much went, and what came. */
interface Change {
  readonly from: number;
  readonly to: number;
  readonly by: string;
}

const changeBetween = (before: string, after: string): Change => {
  let head = 0;
  while (head < before.length && head < after.length && before[head] === after[head]) head += 1;
  let tail = 0;
  while (
    tail < Math.min(before.length, after.length) - head &&
    before[before.length - 1 - tail] === after[after.length - 1 - tail]
  )
    tail += 1;
  return { from: head, to: before.length - tail, by: after.slice(head, after.length - tail) };
};

/** Marks moved by a change of the text; those that it touches are gone. */
const moved = (marks: readonly Mark[], { from: first, to: end, by }: Change): readonly Mark[] => {
  const more = by.length - (end - first);
  return marks.flatMap(([from, to, item, faint]): Mark[] =>
    to <= first ? [[from, to, item, faint]] : from >= end ? [[from + more, to + more, item, faint]] : [],
  );
};

/** The story of this page, where it has one. */
export const markedStory = (): MarkedStory => {
  const area = document.querySelector<HTMLTextAreaElement>('#story');
  const under = document.querySelector<HTMLElement>('.under');
  if (!area || !under) return { remark: () => undefined };
  let marks: readonly Mark[] = [];
  let text = area.value;
  /** The runs of text between the marks, with where each begins. */
  let plain: (readonly [from: number, node: Text])[] = [];
  const draw = (): void => {
    const pieces: Node[] = [];
    plain = [];
    let done = 0;
    const between = (to?: number): void => {
      const run = document.createTextNode(text.slice(done, to));
      plain.push([done, run]);
      pieces.push(run);
    };
    for (const [from, to, item, faint] of marks) {
      between(from);
      const run = document.createElement('span');
      run.className = `u u${((item - 1) % 5) + 1}${faint ? ' faint' : ''}`;
      run.textContent = text.slice(from, to);
      pieces.push(run);
      done = to;
    }
    between();
    // A last line that is empty has no height of its own.
    pieces.push(document.createTextNode('\n'));
    under.replaceChildren(...pieces);
    under.scrollTop = area.scrollTop;
  };
  /** Changes one run where no mark is touched, because a browser lays out what it is given anew, and keys come fast. */
  const drawChange = ({ from, to, by }: Change): boolean => {
    const at = plain.findLastIndex(([first]) => first <= from);
    const [first = 0, run] = plain[at] ?? [];
    if (!run || to > first + run.length) return false;
    run.replaceData(from - first, to - from, by);
    const more = by.length - (to - from);
    plain = plain.map(([begin, node], i) => [i > at ? begin + more : begin, node]);
    return true;
  };
  const remark = (): void => {
    const { marks: places = '[]', begins = '' } = document.getElementById('marks')?.dataset ?? {};
    // A comment that was typed before the text stands in it here still, and beside it in a page that is loaded now.
    const first = Math.max(0, sent.indexOf(begins));
    const told: readonly Mark[] = JSON.parse(places);
    const given = told.map(([from, to, item, faint]): Mark => [from + first, to + first, item, faint]);
    // What was typed since it was sent has moved the places on.
    const now = sent === area.value ? given : moved(given, changeBetween(sent, area.value));
    if (plain.length > 0 && text === area.value && JSON.stringify(now) === JSON.stringify(marks)) return;
    marks = now;
    text = area.value;
    draw();
  };
  let sent = area.value;
  area.form?.addEventListener('formdata', () => {
    sent = area.value;
  });
  area.addEventListener('input', () => {
    const now = area.value;
    const change = changeBetween(text, now);
    const before = marks.length;
    marks = moved(marks, change);
    text = now;
    if (marks.length < before || !drawChange(change)) draw();
  });
  area.addEventListener('scroll', () => {
    under.scrollTop = area.scrollTop;
  });
  const goTo = (): void => {
    const [, line, column] = /^#story-(\d+)-(\d+)$/.exec(location.hash) ?? [];
    if (line === undefined || column === undefined) return;
    const first = Number(area.dataset.line ?? 1);
    const lines = area.value.split('\n');
    const start =
      lines.slice(0, Number(line) - first).reduce((sum, one) => sum + one.length + 1, 0) + Number(column) - 1;
    area.focus();
    area.setSelectionRange(start, start + (/^\S+/.exec(area.value.slice(start))?.[0].length ?? 0));
    const place = document.createRange();
    for (let left = start, i = 0; i < under.childNodes.length; i += 1) {
      const node = under.childNodes[i];
      const length = node?.textContent?.length ?? 0;
      const inner = node?.firstChild ?? node;
      if (left <= length && inner) {
        place.setStart(inner, Math.min(left, inner.textContent?.length ?? 0));
        break;
      }
      left -= length;
    }
    window.scrollBy(0, place.getBoundingClientRect().top - window.innerHeight / 3);
  };
  remark();
  goTo();
  addEventListener('hashchange', goTo);
  return { remark };
};
