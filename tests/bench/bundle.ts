/** What a bench runs beside the program, each bundled into one file. */
import { basename, join } from 'node:path';
import { build } from 'rolldown';
import manifest from '../../package.json' with { type: 'json' };

const installed = Object.keys(manifest.dependencies);

/** Bundles `NAME.ts` of this folder into the folder `to`; gives the bundle's path. */
export const bundleScript = async (name: string, to: string): Promise<string> => {
  const file = join(to, `${basename(name)}.cjs`);
  await build({
    input: join(import.meta.dirname, `${name}.ts`),
    platform: 'node',
    external: (specifier) => installed.some((one) => specifier === one || specifier.startsWith(`${one}/`)),
    output: { file, format: 'cjs', minify: true, codeSplitting: false },
    checks: { eval: false },
    logLevel: 'warn',
  });
  return file;
};
