/** Underlines beneath the story's own text, kept in place while one types. */

type Mark = readonly [from: number, to: number, item: number, isFaint: 0 | 1];

interface MarkedStory {
  /** Takes the marks that the page has now. */
  readonly remark: () => void;
}

/** Marks moved by a change of the text between two ends that stayed; those that it touches are gone. */
const moved = (marks: readonly Mark[], before: string, after: string): readonly Mark[] => {
  let head = 0;
  while (head < before.length && head < after.length && before[head] === after[head]) head += 1;
  let tail = 0;
  while (
    tail < Math.min(before.length, after.length) - head &&
    before[before.length - 1 - tail] === after[after.length - 1 - tail]
  )
    tail += 1;
  const end = before.length - tail;
  const by = after.length - before.length;
  return marks.flatMap(([from, to, item, faint]): Mark[] =>
    to <= head ? [[from, to, item, faint]] : from >= end ? [[from + by, to + by, item, faint]] : [],
  );
};

/** The story of this page, where it has one. */
export const markedStory = (): MarkedStory => {
  const area = document.querySelector<HTMLTextAreaElement>('#story');
  const under = document.querySelector<HTMLElement>('.under');
  if (!area || !under) return { remark: () => undefined };
  let marks: readonly Mark[] = [];
  let text = area.value;
  const draw = (): void => {
    const pieces: Node[] = [];
    let done = 0;
    for (const [from, to, item, faint] of marks) {
      pieces.push(document.createTextNode(text.slice(done, from)));
      const run = document.createElement('span');
      run.className = `u u${((item - 1) % 5) + 1}${faint ? ' faint' : ''}`;
      run.textContent = text.slice(from, to);
      pieces.push(run);
      done = to;
    }
    pieces.push(document.createTextNode(`${text.slice(done)}\n`));
    under.replaceChildren(...pieces);
    under.scrollTop = area.scrollTop;
  };
  const remark = (): void => {
    const given: readonly Mark[] = JSON.parse(document.getElementById('marks')?.dataset.marks ?? '[]');
    // What was typed since it was sent has moved the places on.
    marks = sent === area.value ? given : moved(given, sent, area.value);
    text = area.value;
    draw();
  };
  let sent = area.value;
  area.form?.addEventListener('formdata', () => {
    sent = area.value;
  });
  area.addEventListener('input', () => {
    marks = moved(marks, text, area.value);
    text = area.value;
    draw();
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
