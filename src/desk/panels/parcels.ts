/** Parcels: a carrier's list is dropped, its columns are shown for a yes, and then the paper on it. */
import { PARCEL_COLUMNS, type ParcelColumn } from '../../content/parcel-row.ts';
import { formatOf, type ParcelShape, parcelShapeOf } from '../../content/parcel-shape.ts';
import type { FieldValue } from '../../content/write-yaml.ts';
import type { SentForm } from '../../io/serve.ts';
import { type FindingView, findingViews } from '../../render/findings.ts';
import { foldCase } from '../../text/fold.ts';
import { listText, tryParcels } from '../../workspace/try-parcels.ts';
import { addressOf, type Context, type Outcome, type Panel, sent, shownAddress } from '../context.ts';
import { edited, openRecord, saveText } from '../record.ts';
import type { Upload } from '../uploads.ts';

interface ColumnView {
  readonly name: string;
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly label: string; readonly isChosen: boolean }[];
}

interface ParcelsPanelView {
  readonly words: Context['words'];
  readonly token: string;
  readonly at: string;
  readonly paper: string | undefined;
  readonly look:
    | undefined
    | {
        readonly id: string;
        readonly title: string;
        readonly columns: readonly ColumnView[];
        readonly dates: readonly {
          readonly value: string;
          readonly label: string;
          readonly isChosen: boolean;
        }[];
        readonly isUnsure: boolean;
        readonly heads: readonly string[];
        readonly rows: readonly (readonly string[])[];
        readonly told: readonly string[];
        readonly findings: readonly FindingView[];
        readonly canTake: boolean;
      };
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    'desk/parcels': ParcelsPanelView;
  }
}

/** A year of a large box is some 10 MB; ten times that is a mistake. */
export const MOST_LIST_BYTES = 100_000_000;
const ISO_DATES = '';

interface Choice {
  readonly columns: ParcelShape['columns'];
  readonly dates: string | undefined;
}

/** What was chosen in the form, or else what box.md says already where the list has it, or else what is proposed. */
const choiceOf = (context: Context, shape: ParcelShape, form: SentForm | undefined): Choice => {
  if (form && sent(form, 'dates') !== undefined) {
    const columns = Object.fromEntries(
      PARCEL_COLUMNS.flatMap((key) => {
        const head = sent(form, `column.${key}`);
        return head !== undefined && shape.heads.includes(head) ? [[key, head]] : [];
      }),
    );
    return { columns, dates: sent(form, 'dates') || undefined };
  }
  const { format } = context.table.snapshot().facts.parcels;
  const known = (key: ParcelColumn): string | undefined =>
    shape.heads.find((head) => foldCase(head) === foldCase(format[key] ?? key));
  const isDescribed = known('shipped') !== undefined && known('delivered') !== undefined;
  if (!isDescribed) return { columns: shape.columns, dates: shape.dates[0] };
  return {
    columns: Object.fromEntries(
      PARCEL_COLUMNS.flatMap((key) => {
        const head = known(key) ?? shape.columns[key];
        return head === undefined ? [] : [[key, head]];
      }),
    ),
    dates: format.dates !== undefined && shape.dates.includes(format.dates) ? format.dates : shape.dates[0],
  };
};

const lookAt = async (
  context: Context,
  id: string,
  upload: Upload,
  form?: SentForm,
): Promise<ParcelsPanelView['look']> => {
  const { table, words, wording, lang } = context;
  const shape = parcelShapeOf(listText(upload.bytes));
  if (!shape) return undefined;
  const choice = choiceOf(context, shape, form);
  const known = table.snapshot().facts.parcels.format;
  const tried = await tryParcels(table.workspace(), {
    cycle: context.id,
    bytes: upload.bytes,
    format: {
      lost: known.lost,
      returned: known.returned,
      travelling: known.travelling,
      ...formatOf(choice.columns, choice.dates),
    },
    asOf: table.now(),
  });
  const { facts } = tried;
  const forms = [
    ISO_DATES,
    ...new Set([...shape.dates, ...(choice.dates === undefined ? [] : [choice.dates])]),
  ];
  return {
    id,
    title: words.parcels.seen(upload.name),
    columns: PARCEL_COLUMNS.map((key) => ({
      name: `column.${key}`,
      label: words.parcels.columns[key],
      options: ['', ...shape.heads].map((head) => ({
        value: head,
        label: head === '' ? words.parcels.noColumn : head,
        isChosen: (choice.columns[key] ?? '') === head,
      })),
    })),
    dates: forms.map((form) => ({
      value: form,
      label: form === ISO_DATES ? words.parcels.isoDates : form,
      isChosen: (choice.dates ?? ISO_DATES) === form,
    })),
    isUnsure: shape.dates.length > 1 && known.dates === undefined,
    heads: shape.heads,
    rows: shape.rows,
    told: facts
      ? [
          wording.parcels.state(facts),
          ...wording.parcels.outlook(facts, lang),
          ...wording.parcels.reveal(facts, lang),
        ]
      : [],
    findings: findingViews(tried.diagnostics, wording.findings),
    canTake: facts !== undefined,
  };
};

const page = async (context: Context, look: ParcelsPanelView['look']): Promise<Outcome> => {
  const { table, words, id, token } = context;
  const asOf = Math.floor(table.now() / 60_000) * 60_000;
  const place = `backroom/${id}/parcels.html`;
  const isThere = (await table.shown(asOf)).files.has(place);
  const body = table.templates().render('desk/parcels', {
    words,
    token,
    at: addressOf('parcels', id),
    paper: isThere ? shownAddress(asOf, place) : undefined,
    look,
  });
  return { kind: 'page', heading: words.panels.parcels, body };
};

const show = async (context: Context): Promise<Outcome> => {
  const { uploads, asked } = context;
  const asking = asked.query.get('look') ?? '';
  const upload = uploads.of(asking);
  return page(context, upload && (await lookAt(context, asking, upload)));
};

/** Puts the list in its place, and says in box.md how it is written. */
const take = async (context: Context, upload: Upload, form: SentForm): Promise<boolean> => {
  const { table, id } = context;
  const shape = parcelShapeOf(listText(upload.bytes));
  const box = openRecord(table, 'box.md');
  if (!shape || !box || box === 'other encoding') return false;
  const choice = choiceOf(context, shape, form);
  const wanted = formatOf(choice.columns, choice.dates);
  const known = table.snapshot().facts.parcels.format;
  const changes = ([...PARCEL_COLUMNS, 'dates'] as const).flatMap((key) => {
    const value: FieldValue | undefined = wanted[key];
    const isKnown =
      key !== 'dates' &&
      value === undefined &&
      known[key] !== undefined &&
      choice.columns[key] === undefined &&
      key !== 'shipped' &&
      key !== 'delivered';
    // A column that this list lacks, and earlier ones had, must not be asked for here.
    return value === known[key] ? [] : [{ path: ['parcels', key], value: isKnown ? undefined : value }];
  });
  const result = edited(box, changes);
  if (result.kind === 'refused') return false;
  const path =
    [...table.snapshot().files.keys()].find((file) => file.toLowerCase() === `cycles/${id}/parcels.csv`) ??
    `cycles/${id}/parcels.csv`;
  const seen = table.read(path)?.hash ?? null;
  const written = await table.save({ path, seen, bytes: upload.bytes, about: ['parcels'] });
  if (written.kind !== 'written') return false;
  if (result.text !== box.text) await saveText(table, box, result.text, result.about);
  return true;
};

const act = async (context: Context, form: SentForm): Promise<Outcome> => {
  const { uploads, id, words } = context;
  const back = addressOf('parcels', id);
  const action = sent(form, 'do');
  if (action === 'look') {
    const [file] = form.files.get('list') ?? [];
    if (!file || file.bytes.length > MOST_LIST_BYTES) return { kind: 'go', to: back };
    const asked = uploads.keep({ name: file.name, bytes: file.bytes });
    if (parcelShapeOf(listText(file.bytes))) return { kind: 'go', to: `${back}?look=${asked}` };
    const shown = await page(context, undefined);
    return shown.kind === 'page' ? { ...shown, said: words.parcels.noList } : shown;
  }
  const asked = sent(form, 'look') ?? '';
  const upload = uploads.of(asked);
  if (!upload) return { kind: 'go', to: back };
  if (action === 'take')
    return { kind: 'go', to: back, said: (await take(context, upload, form)) ? 'parcels' : 'same' };
  return page(context, await lookAt(context, asked, upload, form));
};

/** Parcels. */
export const parcelsPanel: Panel = { show, act };
