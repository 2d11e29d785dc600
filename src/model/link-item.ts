/** An item's record → the item. */
import type { Usable } from '../content/read.ts';
import type { ItemRecord } from '../content/schemas.ts';
import type { Checked, Diagnostic } from '../diagnostics/diagnostic.ts';
import { exact } from '../text/defined.ts';
import type { Item, Money, Spare } from './box.ts';
import { hazardFindings, hazardsOf } from './hazards.ts';
import { inTextOf, type TextUse } from './in-text.ts';
import { type LinkTargets, linkStory, sourceOf } from './link-stories.ts';
import { moneyOf } from './money.ts';
import { recordPicture } from './pictures.ts';
import { slugFor } from './set-findings.ts';
import { takeOf } from './take.ts';

/** The cycle that an item is in, as far as the item depends on it. */
interface ItemPlace {
  /** The cycle's id. */
  readonly cycle: string;
  /** Place in the telling, from 1. */
  readonly number: number;
  /** ISO 4217, for an item that names no currency of its own. */
  readonly currency: string;
}

/**
 * The item with its pictures, links and prices resolved, and every finding about what its record names. `use` is how
 * its cycle speaks.
 */
export const linkItem = (
  record: Usable<ItemRecord>,
  { cycle, number, currency }: ItemPlace,
  targets: LinkTargets,
  use: TextUse,
): Checked<Item> => {
  const { value } = record;
  const diagnostics: Diagnostic[] = [];
  const report = (diagnostic: Diagnostic): void => {
    diagnostics.push(diagnostic);
  };
  const pictures = (value.image ?? []).flatMap((image, i) => {
    const location = record.locationOf(['image', i, 'file']);
    return recordPicture(targets.photos, `cycles/${cycle}/`, image, location, report) ?? [];
  });
  diagnostics.push(...hazardFindings(record));
  const priced = (amount: string, path: readonly string[]): Money =>
    moneyOf(amount, value.priceCurrency ?? currency, record.locationOf(path), report);
  const price = value.price === undefined ? undefined : priced(value.price, ['price']);
  const spare =
    value.spare &&
    exact<Spare>({
      ...value.spare,
      until: value.spare.until,
      price: priced(value.spare.price, ['spare', 'price']),
    });
  const item = exact<Item>({
    slug: slugFor(record),
    formerly: value.formerly,
    cycle,
    number,
    lead: value.lead ?? false,
    name: value.name,
    kind: value.kind,
    inText: inTextOf(value, use),
    also: value.also ?? [],
    brand: value.brand,
    description: value.description,
    material: value.material ?? [],
    color: value.color,
    size: value.size,
    weight: value.weight,
    care: value.care,
    countryOfOrigin: value.countryOfOrigin,
    price,
    sku: value.sku,
    gtin: value.gtin,
    pictures,
    goesWith: value.goesWith,
    take: takeOf(value.take),
    spare,
    hazards: hazardsOf(value),
    story: linkStory(record, targets, undefined, report),
    source: sourceOf(record),
  });
  return { value: item, diagnostics };
};
