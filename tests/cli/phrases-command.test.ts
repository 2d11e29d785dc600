import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { temporary } from '../io/temporary.ts';
import { lidlore, lidloreWith } from './terminal.ts';

const CAN = 'Sage enamel watering can, 1.2 litre';

/** What `npm test` compiles before the tests. */
const MAIN = join(import.meta.dirname, '../../dist/cli/main.js');

describe('lidlore phrases', () => {
  it('takes a name apart and says where each phrase is from', async () => {
    const { status, stdout, stderr } = await lidlore('.', 'phrases', CAN);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout).toMatch(new RegExp(`^${CAN}\n {2}head {2}can\\b`));
    expect(stdout).toMatch(/\n {2}kind {2}watering can\n/);
    expect(stdout).toMatch(/\n {4}enamel watering can {2,}\S/);
  });

  it('gives JSON in the order of the names', async () => {
    const { status, stdout } = await lidlore('.', 'phrases', '--json', 'Tea towel', CAN);
    expect(status).toBe(0);
    const names = JSON.parse(stdout);
    expect(names.map(({ name }: { name: string }) => name)).toEqual(['Tea towel', CAN]);
    expect(names[1]).toMatchObject({ head: 'can', kind: 'watering can' });
    expect(Object.keys(names[1])).toEqual(['name', 'head', 'kind', 'phrases']);
    for (const phrase of names[1].phrases)
      expect(phrase).toEqual({ text: expect.any(String), origin: expect.any(String) });
  });

  it('reads names as lines when none is given, empty ones left out', async () => {
    const piped = await lidloreWith(`\ufeffTea towel\r\n\n  ${CAN}  `, '.', 'phrases', '--json');
    expect(piped).toEqual(await lidlore('.', 'phrases', '--json', 'Tea towel', CAN));
  });

  it('does not read what is piped in when names are given', async () => {
    const { stdout } = await lidloreWith('Oak spoon', '.', 'phrases', 'Tea towel');
    expect(stdout).toContain('Tea towel');
    expect(stdout).not.toContain('spoon');
  });

  it('takes a name that begins with a hyphen after --', async () => {
    const { status, stdout } = await lidlore('.', 'phrases', '--', '--oak spoon');
    expect(status).toBe(0);
    expect(stdout).toContain('--oak spoon');
  });

  it('has nothing to say of a name without words, and says so', async () => {
    const { status, stdout } = await lidlore('.', 'phrases', '!!!');
    expect(status).toBe(0);
    expect(stdout).toContain('no word');
  });

  it('gives the noun phrases of a text with their offsets in the file', async () => {
    const text = '\r\nThe watering can 😀\r\nholds two litres.\r\n';
    const dir = await temporary({ 'article.txt': text });
    const { status, stdout } = await lidlore(dir, 'phrases', '--text', 'article.txt', '--json');
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toEqual([
      { start: 6, end: 18, text: 'watering can' },
      { start: 29, end: 39, text: 'two litres' },
    ]);
    expect(text.slice(29, 39)).toBe('two litres');
    expect(await lidloreWith(text, dir, 'phrases', '--text', '-', '--json')).toMatchObject({ stdout });
  });

  it('prints a text as a table, a line a phrase', async () => {
    const { stdout } = await lidloreWith('with a brass\n hose nozzle', '.', 'phrases', '--text', '-');
    expect(stdout).toMatch(/^start +end +noun phrase\n +7 +25 +brass hose nozzle\n\n1 noun phrase\./);
  });

  it.skipIf(!existsSync(MAIN))('does not mind a reader that leaves early (compiled program)', async () => {
    const child = spawn(process.execPath, [MAIN, 'phrases', '--json'], { stdio: ['pipe', 'pipe', 'pipe'] });
    let stderr = '';
    child.stderr.on('data', (said) => (stderr += said));
    child.stdout.once('data', () => child.stdout.destroy());
    child.stdin.end(Array.from({ length: 5000 }, (_, i) => `Oak spoon, ${i} g`).join('\n'));
    const [status] = await once(child, 'close');
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  });

  it('fits a narrow terminal', async () => {
    const long = `${CAN} with a removable brass rose and a very long spout`;
    const { stdout } = await lidloreWith('', '.', 'phrases', long);
    expect(stdout.split('\n').some((line) => line.length > 60)).toBe(true);
    const { run } = await import('../../src/cli/run.ts');
    let narrow = '';
    await run(['phrases', long], {
      stdin: { async *[Symbol.asyncIterator]() {} },
      stdout: { write: (said) => (narrow += said) },
      stderr: { write: () => {} },
      cwd: '.',
      env: {},
      isTTY: true,
      columns: 60,
    });
    expect(narrow.split('\n').filter((line) => line.length > 60)).toEqual([]);
    expect(narrow.replace(/\s+/g, ' ')).toBe(stdout.replace(/\s+/g, ' '));
  });

  it.each([
    [['phrases'], 'Standard input is empty'],
    [['phrases', ' '], 'Missing name'],
    [['phrases', '--text', 'absent.txt'], 'There is no file absent.txt.'],
    [['phrases', '--text', '.'], '. is a folder'],
    [['phrases', '--text', 'empty.txt'], 'empty.txt is empty'],
    [['phrases', '--text', 'picture.bin'], 'picture.bin is not a text'],
    [['phrases', '--text', '-'], 'Standard input is empty'],
    [['phrases', '--text', 'empty.txt', 'Spoon'], 'Unexpected Spoon'],
    [['phrases', '--text'], 'Missing value: --text FILE'],
    [['phrases', '--txt', 'x'], 'Did you mean --text?'],
  ])('%j is met with advice', async (words, advice) => {
    const dir = await temporary({ 'empty.txt': ' \n' });
    await writeFile(join(dir, 'picture.bin'), new Uint8Array([0x89, 0x50, 0, 0, 1]));
    const { status, stdout, stderr } = await lidlore(dir, ...words);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain(advice);
    expect(stderr).toMatch(/^.+\nSee: lidlore phrases --help\n$/);
  });
});
