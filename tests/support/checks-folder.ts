/** Where outside data lies that may not live in the repository. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';

const folder = process.env.LIDLORE_CHECKS ?? join(import.meta.dirname, '../../../shared/checks');

/** The path of a file of outside data (`language/porter-sample-300.tsv`), or undefined where it is absent. */
export const checksFile = (path: string): string | undefined => {
  const file = join(folder, path);
  return existsSync(file) ? file : undefined;
};
