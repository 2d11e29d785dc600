/** A record's fields as its form shows them. */

import { type FieldPath, valueAt } from '../content/field-path.ts';
import type { FormField, FormSort } from '../content/form-fields.ts';
import { groupsIn, inputName, removalName, shownText, showsGroup } from '../content/form-values.ts';
import { type FieldValue, isFieldScalar } from '../content/write-yaml.ts';
import type { FindingView } from '../render/findings.ts';
import type { Wording } from '../wording/wording.ts';

/** A field as a form shows it. */
export interface FieldView {
  readonly id: string;
  readonly name: string;
  readonly label: string;
  readonly hint: string;
  readonly example: string;
  readonly isNeeded: boolean;
  readonly control:
    | 'line'
    | 'lines'
    | 'choice'
    | 'choices'
    | 'group'
    | 'groups'
    | 'kept'
    | 'colours'
    | 'picture';
  readonly type: 'text' | 'date';
  readonly value: string;
  readonly rows: number;
  readonly choices: readonly { readonly value: string; readonly label: string; readonly isChosen: boolean }[];
  readonly fields: readonly FieldView[];
  /** The name of the mark that takes this thing of a list out. */
  readonly removal: string;
  readonly findings: readonly FindingView[];
  /** Whether there is anything in it. */
  readonly isFilled: boolean;
  /** Whether it is unfolded, because something was found in it. */
  readonly isOpen: boolean;
  /** Address of the photo that it names. */
  readonly photo: string;
}

export interface FormWords {
  readonly words: Wording['desk'];
  /** Findings by the dotted path of their field. */
  readonly findings: ReadonlyMap<string, readonly FindingView[]>;
  /** Address of a photo by its file's name. */
  readonly photo: (file: string) => string;
}

const DATE = /^\d{4}-\d{2}-\d{2}$/;

const isThere = (value: FieldValue | undefined): boolean =>
  value !== undefined && value !== null && (isFieldScalar(value) || Object.keys(value).length > 0);

/** Lines that a text takes in a box of some seventy signs. */
const rowsFor = (value: string, sort: FormSort): number => {
  const lines = value.split('\n').reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / 62)), 0);
  return Math.min(12, Math.max(sort === 'text' ? 2 : 1, lines));
};

const here = (path: FieldPath, at: FieldPath): FieldPath => [...at, ...path.slice(at.length)];

const isPicture = ({ fields = [] }: FormField): boolean => fields.some(({ key }) => key === 'focus');

/** Fields of a record, or of a group at a path in it. */
export const fieldViews = (
  fields: readonly FormField[],
  values: FieldValue | undefined,
  given: FormWords,
  at: FieldPath = [],
): readonly FieldView[] => fields.map((field) => fieldView(field, here(field.path, at), values, given));

const fieldView = (
  field: FormField,
  path: FieldPath,
  values: FieldValue | undefined,
  given: FormWords,
): FieldView => {
  const { words, findings } = given;
  const { sort, key, isNeeded, about, example = '', choices = [] } = field;
  const value = valueAt(values, path);
  const dotted = path.join('.');
  const text = shownText(field, value);
  const asGroup = sort === 'group' || (sort === 'text or group' && showsGroup(value));
  const base = {
    id: `field-${dotted.replaceAll('.', '-')}`,
    name: inputName(path),
    label: words.label(key),
    hint: words.form.about(words.label(key), about),
    example: example.split('\n')[0] ?? '',
    isNeeded,
    type: 'text' as const,
    value: text ?? '',
    rows: 1,
    choices: [],
    fields: [],
    removal: '',
    findings: findings.get(dotted) ?? [],
    isFilled: isThere(value),
    isOpen: false,
    photo: '',
  };
  if (asGroup) return groupView(field, path, values, given, base);
  if (sort === 'groups') {
    const things = groupsIn(value);
    const all = [...things.keys(), things.length].map((i) => {
      const thing = groupView(field, [...path, i], values, given, {
        ...base,
        id: `${base.id}-${i}`,
        findings: findings.get(`${dotted}.${i}`) ?? [],
        isFilled: i < things.length,
        label:
          i < things.length ? words.form.one(words.label(key), i + 1) : words.form.another(words.label(key)),
      });
      return { ...thing, isNeeded: false, removal: i < things.length ? removalName([...path, i]) : '' };
    });
    return { ...base, control: 'groups', fields: all };
  }
  if (text === undefined) return { ...base, control: 'kept' };
  if (sort === 'choice' || sort === 'yes or no') {
    const offered = sort === 'choice' ? choices : ['true', 'false'];
    const known = text === '' || offered.includes(text) ? offered : [...offered, text];
    return {
      ...base,
      control: 'choice',
      hint: words.form.yes(about),
      choices: ['', ...known].map((one) => ({
        value: one,
        label: one === '' ? words.form.unsaid : words.choice(one),
        isChosen: one === text,
      })),
    };
  }
  if (sort === 'choices') {
    const taken = text.split('\n').filter(Boolean);
    const all = [...choices, ...taken.filter((one) => !choices.includes(one))];
    return {
      ...base,
      control: 'choices',
      choices: all.map((one) => ({ value: one, label: words.choice(one), isChosen: taken.includes(one) })),
    };
  }
  if (sort === 'colours') return { ...base, control: 'colours', rows: Math.max(2, rowsFor(text, sort)) };
  if (sort === 'date')
    return { ...base, control: 'line', type: text === '' || DATE.test(text) ? 'date' : 'text' };
  if (sort === 'list' || sort === 'lines')
    return {
      ...base,
      control: 'lines',
      rows: Math.max(2, rowsFor(text, sort)),
      hint: words.form.aLineEach(base.hint),
    };
  const isLines = field.isLong || text.includes('\n') || text.length > 60;
  return isLines ? { ...base, control: 'lines', rows: rowsFor(text, sort) } : { ...base, control: 'line' };
};

const groupView = (
  field: FormField,
  path: FieldPath,
  values: FieldValue | undefined,
  given: FormWords,
  base: Omit<FieldView, 'control'>,
): FieldView => {
  const file = valueAt(values, [...path, 'file']);
  const fields = fieldViews(field.fields ?? [], values, given, path);
  return {
    ...base,
    isOpen: base.findings.length > 0 || fields.some(hasFindings),
    control: isPicture(field) ? 'picture' : 'group',
    fields,
    photo: typeof file === 'string' ? given.photo(file) : '',
  };
};

/** A field and those in it that have findings, so that nothing found is folded away. */
export const hasFindings = ({ findings, fields }: FieldView): boolean =>
  findings.length > 0 || fields.some(hasFindings);

/** Fields in two heaps: those that are filled or have to be, and others that may be. */
export const inHeaps = (views: readonly FieldView[]) => ({
  told: views.filter((view) => view.isNeeded || view.isFilled || hasFindings(view)),
  more: views.filter((view) => !(view.isNeeded || view.isFilled || hasFindings(view))),
});
