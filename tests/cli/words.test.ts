import { describe, expect, it } from 'vitest';
import { commands } from '../../src/cli/commands.ts';
import { optionHelp, wordsOf } from '../../src/cli/help.ts';
import { temporary } from '../io/temporary.ts';
import { lidlore } from './terminal.ts';

describe('the command line', () => {
  it('teaches on request', async () => {
    for (const words of [['--help'], ['help'], ['-h']]) {
      const { status, stdout, stderr } = await lidlore('.', ...words);
      expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
      for (const { name } of commands) expect(stdout).toContain(`  ${name} `);
      expect(stdout).toContain('Exit status:');
    }
    for (const command of commands) {
      const { status, stdout } = await lidlore('.', command.name, '--help');
      expect(status).toBe(0);
      for (const { name } of command.options) expect(stdout).toContain(`--${name}`);
      expect(stdout).toContain('Examples:');
      expect(stdout.split('\n').filter((line) => line.length > 80)).toEqual([]);
    }
  });

  it('names in its help the aim and the share that hold where none is given', async () => {
    const helpOn = async (command: string): Promise<string> =>
      (await lidlore('.', command, '--help')).stdout.replace(/\s+/g, ' ');
    expect(await helpOn('proof')).toContain('(default: 0.7)');
    expect(await helpOn('parcels')).toContain('(default: the share in box.md, or 0.9)');
  });

  it('has words for every command and every option', () => {
    for (const command of commands) {
      expect(wordsOf(command).summary).not.toBe('');
      const described = Object.keys(wordsOf(command).options).sort();
      expect(described).toEqual(command.options.map(({ name }) => name).sort());
      for (const option of command.options) expect(optionHelp(command, option)).not.toBe('');
    }
  });

  it('knows its version', async () => {
    expect(await lidlore('.', '--version')).toMatchObject({
      status: 0,
      stdout: expect.stringMatching(/^\d+\.\d+\.\d+\n$/),
    });
  });

  it.each([
    [[], 'Name a command.'],
    [['biuld'], 'Did you mean build?'],
    [['frobnicate'], 'Unknown command frobnicate.'],
    [['--versoin'], 'Did you mean --version?'],
    [['--out', 'x'], 'lidlore build --out'],
    [['build', '--ot', 'x'], 'Did you mean --out?'],
    [['build', '--as-off=2026-03-01'], 'Did you mean --as-of?'],
    [['build', '--out'], 'Missing value: --out DIR'],
    [['build', '--out='], 'Missing value: --out DIR'],
    [['build', '--out', '--json'], 'Missing value: --out DIR'],
    [['build', '--json=yes'], '--json takes none'],
    [['build', '--out', 'a', '--out', 'b'], 'second --out'],
    [['build', 'content'], 'Unexpected content, expected an option'],
  ])('%j is met with advice', async (words, advice) => {
    const { status, stdout, stderr } = await lidlore('.', ...words);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain(advice);
    expect(stderr).toMatch(/See: lidlore (build )?--help\n$/);
  });

  it.each([
    'yesterday',
    '2026-02-30',
    '2026-3-1',
    '2026-03-01T25:00',
    '2026-02-30T10:00Z',
    '2026-03-01 10:00',
  ])('the instant %s is refused', async (instant) => {
    const dir = await temporary({ 'content/box.md': '' });
    const { status, stderr } = await lidlore(dir, 'build', '--as-of', instant);
    expect(status).toBe(2);
    expect(stderr).toContain(`Unexpected --as-of ${instant}, expected a date`);
  });

  it('says so when there is no content folder', async () => {
    const dir = await temporary();
    expect(await lidlore(dir, 'build')).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('no folder content here'),
    });
  });
});
