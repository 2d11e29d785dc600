/** What records hold, one schema each: a record's own file says what each field is and may hold, and shows one. */
import type * as v from 'valibot';
import type { boxSchema } from './box-schema.ts';
import type { cycleSchema } from './cycle-schema.ts';
import type { picture } from './fields.ts';
import type { itemSchema } from './item-schema.ts';

export { boxSchema, WEEKDAYS } from './box-schema.ts';
export { cycleSchema, WHEN_DELIVERED } from './cycle-schema.ts';
export { itemSchema } from './item-schema.ts';

/** What box.md holds when it is sound. */
export type BoxRecord = v.InferOutput<typeof boxSchema>;
/** What a cycle.md holds when it is sound. */
export type CycleRecord = v.InferOutput<typeof cycleSchema>;
/** What an item’s file holds when it is sound. */
export type ItemRecord = v.InferOutput<typeof itemSchema>;
/** A picture as a record names it. */
export type PictureRecord = v.InferOutput<typeof picture>;
