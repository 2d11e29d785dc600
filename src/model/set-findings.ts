/** What does not fit together in a cycle's set of records, or between cycles. */
import { isUsable, type Written, type WrittenCycle } from '../content/read.ts';
import type { CycleRecord, ItemRecord } from '../content/schemas.ts';
import type { Location, ReportFinding } from '../diagnostics/diagnostic.ts';
import { slugOf } from './slug.ts';

/** Last part of a cycle's address, the record's own or made from month and theme. */
export const addressOf = (id: string, value: CycleRecord): string =>
  value.address ?? [id, slugOf(value.theme)].filter(Boolean).join('-');

/** An item's anchor, the record's own or made from the file's name without its number. */
export const slugFor = (record: Written<ItemRecord>): string => {
  const name = record.file.slice(record.file.lastIndexOf('/') + 1).replace(/\.md$/, '');
  return record.value?.slug ?? slugOf(name.replace(/^\d+-/, ''));
};

/** Anchors of the article's own parts. */
export const RESERVED_SLUGS: ReadonlySet<string> = new Set([
  'call',
  'main',
  'packed',
  'peek',
  'voices',
  'whole-box',
]);

/** Anchors that items had before: each has to lead to one place of the page, and be an id that stands there once. */
const formerAnchorFindings = (items: readonly Written<ItemRecord>[], report: ReportFinding): void => {
  const living = new Map(
    items.flatMap((item) => [
      [slugFor(item), item],
      [`${slugFor(item)}-name`, item],
    ]),
  );
  const claimed = new Map<string, Location>();
  for (const item of items)
    for (const [i, slug] of (item.value?.formerly ?? []).entries()) {
      const location = item.locationOf(['formerly', i]);
      const owner = living.get(slug);
      const before = claimed.get(slug);
      const related = owner
        ? { location: owner.locationOf(['slug']), message: 'this item has it now' }
        : before && { location: before, message: 'it is claimed here' };
      if (owner || before || RESERVED_SLUGS.has(slug))
        report({
          weight: 'must fix',
          rule: 'formerly-taken',
          location,
          message: `Unexpected former anchor \`${slug}\`, expected one that nothing else on the page has`,
          fix: `Take \`${slug}\` out of \`formerly\``,
          ...(related && { related }),
        });
      else claimed.set(slug, location);
    }
};

/** Names, lead item and ties of one cycle's items. */
export const setFindings = ({ items, cycle }: WrittenCycle, report: ReportFinding): void => {
  const bySlug = new Map<string, Written<ItemRecord>>();
  for (const item of items) {
    const slug = slugFor(item);
    const other = bySlug.get(slug);
    if (slug === '' || RESERVED_SLUGS.has(slug)) {
      report({
        weight: 'must fix',
        rule: 'slug',
        location: item.locationOf(['slug']),
        message: `Unexpected item name \`${slug}\`, expected ${slug ? 'one that the page does not use itself' : 'letters in the file’s name after the number'}`,
        fix: 'Rename the file, as 03-seed-tin.md, or give the record a `slug`',
      });
    }
    if (other) {
      report({
        weight: 'must fix',
        rule: 'slug-twice',
        location: item.locationOf(['slug']),
        message: `Unexpected second item \`${slug}\` in the cycle, expected each name once`,
        fix: 'Rename the file, or give one of them a `slug` of its own',
        related: { location: other.locationOf(['slug']), message: 'the first is here' },
      });
    } else bySlug.set(slug, item);
  }
  formerAnchorFindings(items, report);
  const read = items.filter(isUsable);
  const [first] = read;
  const [lead, ...extraLeads] = read.filter((item) => item.value.lead);
  const claimed = items.some(({ data }) => data?.lead !== undefined && data.lead !== false);
  if (first && !lead && read.length === items.length && !claimed) {
    report({
      weight: 'must fix',
      rule: 'lead-missing',
      location: cycle?.locationOf(['theme']) ?? first.locationOf([]),
      message: 'Unexpected cycle without a lead item, expected one item with `lead: true`',
      fix: 'Add `lead: true` to the piece the box was built around',
    });
  }
  for (const extra of extraLeads) {
    report({
      weight: 'must fix',
      rule: 'lead-twice',
      location: extra.locationOf(['lead']),
      message: 'Unexpected second lead item, expected one in a cycle',
      fix: 'Take `lead: true` out of all but one',
      ...(lead && { related: { location: lead.locationOf(['lead']), message: 'the first is here' } }),
    });
  }
  for (const item of read) {
    // A `lead` or `goesWith` that is there and at fault was reported as such.
    const maybeLead = item.data?.lead !== undefined && item.data.lead !== false;
    if (!maybeLead && item.data?.goesWith === undefined) {
      report({
        weight: 'look at',
        rule: 'goes-with',
        location: item.locationOf(['name']),
        adds: 'goesWith',
        message: 'Unexpected item without `goesWith`, expected how it goes with the lead item',
        fix: 'Add `goesWith: …`, a sentence',
      });
    }
  }
};
