/** The demo, built once for the whole run as `npm start` builds it; its pictures come from the project's cache. */
import { cp, mkdir, mkdtemp, rm, symlink } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { lidlore } from '../cli/terminal.ts';

declare module 'vitest' {
  interface ProvidedContext {
    demoSite: string;
  }
}

export const setup = async (project: TestProject): Promise<() => Promise<void>> => {
  const dir = await mkdtemp(join(tmpdir(), 'lidlore-demo-'));
  const root = join(import.meta.dirname, '../..');
  await cp(join(root, 'content'), join(dir, 'content'), { recursive: true, preserveTimestamps: true });
  await mkdir(join(root, '.lidlore'), { recursive: true });
  await symlink(join(root, '.lidlore'), join(dir, '.lidlore'));
  const { status, stderr } = await lidlore(dir, 'build', '--as-of', '2026-03-27', '--without', 'film');
  if (status !== 0) throw new Error(`The demo did not build:\n${stderr}`);
  project.provide('demoSite', join(dir, 'site'));
  return () => rm(dir, { recursive: true, force: true });
};
