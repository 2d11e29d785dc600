/**
 * Makes `dist/` out of `src/`, whose types are checked already. Outside the rooms: it runs when the program is
 * compiled, not when it runs.
 */
import { rmSync, writeFileSync } from 'node:fs';
import { keepCompiled } from './bundling/keep-compiled.mjs';
import { noticesOf } from './bundling/notices.mjs';
import { bundleProgram } from './bundling/program.mjs';
import { bundleScripts } from './bundling/scripts.mjs';

const dist = new URL('../dist/', import.meta.url);

rmSync(dist, { recursive: true, force: true });
const modules = [...(await bundleProgram()), ...(await bundleScripts())];
// The package as a whole holds modules; what is bundled of it does not.
writeFileSync(new URL('package.json', dist), '{ "type": "commonjs" }\n');
writeFileSync(new URL('NOTICES.txt', dist), noticesOf(modules));
await keepCompiled();
