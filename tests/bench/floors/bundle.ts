/** The floors, each bundled into one file. */
import { join } from 'node:path';
import { build } from 'rolldown';

/** Bundles `floors/NAME.ts` into the folder `to`; gives the bundle's path. */
export const bundleFloor = async (name: string, to: string): Promise<string> => {
  const file = join(to, `${name}.cjs`);
  await build({
    input: join(import.meta.dirname, `${name}.ts`),
    platform: 'node',
    external: ['sharp'],
    output: { file, format: 'cjs', minify: true, codeSplitting: false },
    checks: { eval: false },
    logLevel: 'warn',
  });
  return file;
};
