/** A record's form as a browser sends it, before anybody has typed anything. */
import type { FieldView } from '../../src/desk/form-view.ts';
import { fieldViews } from '../../src/desk/form-view.ts';
import { type OpenRecord, STORY, STORY_AFTER, STORY_BEFORE } from '../../src/desk/record.ts';
import { desk as words } from '../../src/wording/en/desk.ts';

/** Line ends as a form sends them (HTML, 4.10.21.4). */
const sentText = (text: string): string => text.replace(/\r\n?|\n/g, '\r\n');

/** What a line of text in a browser holds: no line ends (HTML, 4.10.5.1.2). */
const oneLine = (text: string): string => text.replace(/[\r\n]/g, '');

/** Names and values of all that a form sends. */
export const sentForm = (record: OpenRecord): Map<string, string> => {
  const form = new Map<string, string>();
  const visit = (view: FieldView): void => {
    if (view.control === 'line') form.set(view.name, oneLine(view.value));
    else if (view.control === 'lines' || view.control === 'colours')
      form.set(view.name, sentText(view.value));
    else if (view.control === 'choice')
      form.set(view.name, view.choices.find(({ isChosen }) => isChosen)?.value ?? '');
    else if (view.control === 'choices')
      form.set(
        view.name,
        view.choices
          .filter(({ isChosen }) => isChosen)
          .map(({ value }) => value)
          .join('\n'),
      );
    view.fields.forEach(visit);
  };
  for (const view of fieldViews(record.fields, record.values, {
    words,
    findings: new Map(),
    photo: () => '',
  }))
    visit(view);
  const { parts } = record;
  if (parts) {
    form.set(STORY_BEFORE, sentText(parts.before));
    form.set(STORY, sentText(parts.text));
    form.set(STORY_AFTER, sentText(parts.after));
  }
  return form;
};

/** Every leaf of a form that is one line or several of text. */
export const textLeaves = (record: OpenRecord): readonly string[] => {
  const names: string[] = [];
  const visit = (view: FieldView): void => {
    if ((view.control === 'line' && view.type === 'text') || view.control === 'lines') names.push(view.name);
    view.fields.forEach(visit);
  };
  for (const view of fieldViews(record.fields, record.values, {
    words,
    findings: new Map(),
    photo: () => '',
  }))
    visit(view);
  return names;
};
