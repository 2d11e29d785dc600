/** Which schema a file of the content folder is read by. */
import { boxSchema, cycleSchema, itemSchema } from './schemas.ts';

/** The schemas of all sorts of records. */
export const RECORD_SCHEMAS = [boxSchema, cycleSchema, itemSchema] as const;

/** The schema of a record by its path: box.md, a cycle.md, or anything else, which is an item. */
export const schemaOf = (path: string) => {
  if (path === 'box.md') return boxSchema;
  return path.endsWith('/cycle.md') ? cycleSchema : itemSchema;
};
