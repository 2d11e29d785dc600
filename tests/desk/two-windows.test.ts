/**
 * Two windows of one desk and another program at once on one box. The desk is the compiled program in a process of its
 * own, closed and killed (SIGKILL) between; files and history are held against a model after each step.
 */
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { recordOf } from '../../src/desk/record.ts';
import { CONTENT, listFiles } from '../../src/io/list-files.ts';
import { escapeHtml } from '../../src/render/html.ts';
import { sha256 } from '../../src/text/hash.ts';
import { begin as beginWords } from '../../src/wording/en/begin.ts';
import { writeFiles } from '../io/temporary.ts';
import { ask, type Got, ownHeaders } from '../support/ask-desk.ts';
import { type DeskModel, deskModel, type ModelChange, ordersOf } from '../support/desk-model.ts';
import { closedDesk, type DeskProcess, openedDesk } from '../support/open-desk.ts';
import { type Chance, seeded } from '../support/seeded.ts';
import { sentForm } from '../support/typed-form.ts';

const { hints } = beginWords;

/** More by hand: `LIDLORE_EDITS=2000 npx vitest run --project parts tests/desk/two-windows.test.ts`. */
const EDITS = Number(process.env.LIDLORE_EDITS ?? 90);
const SEED = Number(process.env.LIDLORE_SEED ?? 14);
/** Steps from one end of the desk to the next. */
const LIFE = 45;

const CYCLE = 'cycles/2026-03';
const item = (name: string, more = ''): string => `---
name: ${name}
kind: proving basket
${more}brand: Fenn Weavers
description: A round basket of cane that shapes one loaf while it rises.
size: 22 cm    # of the rim
material: [cane]
category: none
---

Dust it with rice flour.

Beat it on a board.
`;

const FILES: Readonly<Record<string, string>> = {
  'box.md': `---
name: Crumb & Co
url: https://crumb.example/
lang: en-GB
timeZone: Europe/London
currency: GBP
# what is said of us elsewhere
description: A small box of baking tools, with the story of each.
author: Ada Crumb
every: P1M
calls:
  join: {address: "https://crumb.example/join", text: Join for the next box}
call: join
---

One good baking tool a month.
`,
  [`${CYCLE}/cycle.md`]: `---
theme: Proving
summary: A round cane proving basket for one loaf of bread, told from the willow bed to the first crust.
shipped: 2026-03-03
reveal: 2026-03-19T19:00
---

We looked for a basket for a year.
`,
  [`${CYCLE}/items/01-basket.md`]: item('Cane basket', 'lead: true\n'),
  // As another system writes it.
  [`${CYCLE}/items/02-scraper.md`]: item('Dough scraper').replaceAll('\n', '\r\n'),
  [`${CYCLE}/items/03-cloth.md`]: item('Linen cloth'),
};

const KEYS = ['name', 'brand', 'description', 'size', 'theme', 'summary', 'author'];

const line = (key: string): RegExp => new RegExp(`^(${key}: )([^#\\r\\n]*?)((?: +#[^\\r\\n]*)?\\r?)$`, 'm');
const keysIn = (text: string): readonly string[] => KEYS.filter((key) => line(key).test(text));
const heldIn = (text: string, key: string): string => line(key).exec(text)?.[2] ?? '';
const withValue = (text: string, key: string, value: string): string =>
  text.replace(line(key), (_, head, __, tail) => head + value + tail);
/** The fields with their fences and the empty lines after them, and the story. */
const partsOf = (text: string): readonly [head: string, story: string] => {
  const head = /^---\r?\n[\s\S]*?\n---(?:\r?\n)+/.exec(text)?.[0] ?? '';
  return [head, text.slice(head.length)];
};
/** What asks for a story in a thing that was begun: it stands beside the field, and goes with the first words. */
const ASKED = `<!-- ${hints.itemBody} -->`;
const shownStory = (text: string): string =>
  partsOf(text)[1].replaceAll('\r\n', '\n').replace(ASKED, '').trimStart();
const asIn = (text: string, words: string): string =>
  text.includes('\r\n') ? words.replace(/\r?\n/g, '\r\n') : words;

/** What is typed in one window, and what becomes of a file by it. */
interface Typing {
  readonly form: ReadonlyMap<string, string>;
  readonly words: string;
  readonly on: (text: string) => string;
}

/** A record as a window shows it. */
interface Page {
  readonly text: string;
  readonly seen: string;
}

type Window = Map<string, Page>;

test(`${EDITS} edits by two windows and another program: none is lost, none is written over, each is taken back to the very bytes`, async () => {
  const folder = await mkdtemp(join(tmpdir(), 'lidlore-windows-'));
  let desk: DeskProcess | undefined;
  onTestFinished(async () => {
    desk?.child.kill('SIGKILL');
    await rm(folder, { recursive: true, force: true });
  });
  const content = join(folder, 'content');
  const historyFolder = join(folder, '.lidlore/history');
  await writeFiles(content, FILES);
  const model: DeskModel = deskModel(FILES);
  const chance: Chance = seeded(SEED);
  const windows: readonly Window[] = [new Map(), new Map()];
  const counts: Record<string, number> = {};
  const count = (what: string): void => {
    counts[what] = (counts[what] ?? 0) + 1;
  };
  let word = 0;
  const newWords = (): string => {
    word += 1;
    return `words ${word} ${chance.one(['of ash', 'in linen', 'by the fen', 'and flour'])}`;
  };

  let port = 0;
  let token = '';
  /** Texts that this desk has shown, by hash. */
  let shown = new Set<string>();
  const begin = async (): Promise<void> => {
    desk = await openedDesk(folder, ['--as-of', '2026-03-27', '--port', '4930']);
    port = Number(new URL(desk.address).port);
    shown = new Set();
    const { text } = await ask({ port, path: '/findings/2026-03' });
    token = /data-token="([^"]+)"/.exec(text)?.[1] ?? '';
  };

  const post = (path: string, fields: Iterable<readonly [string, string]>, isQuiet: boolean): Promise<Got> =>
    ask({
      port,
      method: 'POST',
      path,
      headers: { ...ownHeaders(port), ...(isQuiet && { 'x-desk-quiet': '1' }) },
      body: new URLSearchParams(
        [['token', token] as const, ...fields].map(([name, value]) => [name, value] as [string, string]),
      ).toString(),
    });

  /** Numbers of the changes in the order of the model's. */
  const ids: number[] = [];
  const entriesSince = (id: number) =>
    readdirSync(historyFolder)
      .flatMap((name) => {
        const number = Number(/^(\d{8})\.json$/.exec(name)?.[1] ?? 0);
        return number > id ? [number] : [];
      })
      .sort((a, b) => a - b)
      .map((number) => {
        const file = join(historyFolder, `${String(number).padStart(8, '0')}.json`);
        const { path, before, after, undoes } = JSON.parse(readFileSync(file, 'utf8'));
        return { id: number, path, before, after, undoes };
      });
  const hashOf = (text: string | null): string | null => (text === null ? null : sha256(Buffer.from(text)));
  const asEntry = ({ path, before, after, reverses }: ModelChange) => ({
    path,
    before: hashOf(before),
    after: hashOf(after),
    undoes: reverses && ids[model.changes.indexOf(reverses)],
  });

  /** Files and history are as the model has them. */
  const compare = (after: string): void => {
    const found = Object.fromEntries(
      listFiles(content, CONTENT).map(({ path }) => [path, readFileSync(join(content, path), 'utf8')]),
    );
    expect(found, after).toEqual(Object.fromEntries(model.files));
    const entries = entriesSince(ids.at(-1) ?? 0);
    const told = model.changes.slice(ids.length);
    ids.push(...entries.map(({ id }) => id));
    expect(
      entries.map(({ id, ...entry }) => entry),
      after,
    ).toEqual(told.map(asEntry));
  };

  const write = (path: string, text: string | null, byRename: boolean): void => {
    const file = join(content, path);
    mkdirSync(dirname(file), { recursive: true });
    if (text === null) rmSync(file);
    else if (byRename) {
      writeFileSync(`${dirname(file)}/.theirs.tmp`, text);
      renameSync(`${dirname(file)}/.theirs.tmp`, file);
    } else writeFileSync(file, text);
  };

  const paths = (): readonly string[] => [...new Set([...Object.keys(FILES), ...model.files.keys()])];

  /** Loads a record's page; what it shows is what the file holds. */
  const load = async (window: Window, path: string): Promise<Page | undefined> => {
    const { status, text } = await ask({ port, path: `/write/${path}` });
    const held = model.textOf(path);
    window.delete(path);
    expect(status).toBe(held === null ? 303 : 200);
    if (held === null) return undefined;
    expect(/name="seen" value="(\w*)"/.exec(text)?.[1]).toBe(hashOf(held));
    expect(text).toContain(escapeHtml(shownStory(held).trimEnd()));
    if (held.includes(ASKED)) expect(text).toContain(hints.itemBody);
    for (const key of keysIn(held)) expect(text).toContain(escapeHtml(heldIn(held, key)));
    const page = { text: held, seen: hashOf(held) ?? '' };
    shown.add(page.seen);
    window.set(path, page);
    return page;
  };
  const pageOf = async (window: Window, path: string): Promise<Page | undefined> =>
    window.get(path) ?? (await load(window, path));

  /** Somebody types into the form of a page: a field, the story, or the whole text. */
  const typingIn = (path: string, { text, seen }: Page): Typing => {
    const words = newWords();
    const sent = sentForm(recordOf(path, text, seen));
    const what = chance.below(10);
    if (what === 0) {
      const whole = `${text.replaceAll('\r\n', '\n')}${words}\n`;
      return { form: new Map([['whole', whole]]), words, on: (now) => asIn(now, whole) };
    }
    if (what < 4) {
      const story = `${words}\n\n${shownStory(text)}`;
      sent.set('story', story.replaceAll('\n', '\r\n'));
      return { form: sent, words, on: (now) => partsOf(now)[0] + asIn(now, story) };
    }
    const key = chance.one(keysIn(text));
    sent.set(`f.${key}`, words);
    return { form: sent, words, on: (now) => withValue(now, key, words) };
  };

  const send = (path: string, { seen }: Page, { form }: Typing): Promise<Got> =>
    post(`/write/${path}`, [['seen', seen], ...form], true);

  /** Whether the desk can still tell what the words were typed into. */
  const isKnown = (hash: string): boolean =>
    shown.has(hash) ||
    model.changes.some(({ before, after }) => hash === hashOf(before) || hash === hashOf(after));

  /** All that a form held, put over a text. */
  const withAll = (now: string, { text }: Page): string =>
    partsOf(keysIn(text).reduce((done, key) => withValue(done, key, heldIn(text, key)), now))[0] +
    asIn(now, partsOf(text)[1].replaceAll('\r\n', '\n'));

  const saved = (window: Window, path: string, { status, text }: Got, expected: string): void => {
    expect(status).toBe(200);
    const { seen } = JSON.parse(text);
    expect(seen).toBe(hashOf(expected));
    window.set(path, { text: expected, seen });
  };

  const save = async (window: Window, path: string): Promise<void> => {
    const page = await pageOf(window, path);
    if (!page) return;
    const typing = typingIn(path, page);
    const answer = await send(path, page, typing);
    const now = model.textOf(path);
    if (hashOf(now) === page.seen && now !== null) {
      model.save(path, typing.on(now));
      saved(window, path, answer, model.textOf(path) ?? '');
      count('saves');
      return;
    }
    count('refused over another change');
    expect(answer.status).toBe(409);
    expect(answer.text).toContain(typing.words);
    compare('a save that was refused');
    if (now === null || chance.below(4) === 0) {
      await load(window, path);
      return;
    }
    const named = (name: string): string =>
      new RegExp(`name="${name}" value="(\\w*)"`).exec(answer.text)?.[1] ?? '';
    expect(named('seen')).toBe(hashOf(now));
    const again = await post(
      `/write/${path}`,
      [['seen', named('seen')], ['base', named('base')], ...typing.form],
      true,
    );
    const isWhole = typing.form.has('whole');
    model.save(path, typing.on(isWhole || isKnown(page.seen) ? now : withAll(now, page)));
    // What is on the screen after that is the newer page.
    saved(window, path, again, model.textOf(path) ?? '');
    count('put over it knowingly');
  };

  const elsewhere = (): void => {
    const path = chance.one(paths());
    const now = model.textOf(path);
    const words = newWords();
    const isGone = now !== null && path.includes('/items/') && chance.below(12) === 0;
    const text =
      now === null
        ? (FILES[path] ?? '---\nname: Back again\n---\n\n')
        : chance.below(2) === 0
          ? withValue(now, chance.one(keysIn(now)), words)
          : `${now}${asIn(now, `\n${words}\n`)}`;
    write(path, isGone ? null : text, chance.below(2) === 0);
    model.outside(path, isGone ? null : text);
    count('edits by another program');
  };

  const takeBack = async (action: 'undo' | 'redo', path?: string): Promise<void> => {
    const wanted = action === 'undo' ? model.undoable(path) : model.redoable();
    const answer = await post(
      '/history/2026-03',
      [
        ['do', action],
        ['back', '/findings/2026-03'],
        ...(path === undefined ? [] : [['path', path] as const]),
      ],
      false,
    );
    expect(answer.headers.location).toContain(
      wanted ? `said=${action === 'undo' ? 'undone' : 'redone'}` : 'said=nothing',
    );
    if (wanted) {
      model.reverse(wanted);
      count(action === 'undo' ? 'taken back' : 'brought again');
    }
  };

  /** A press on what a page that was loaded long ago offers. */
  const takeBackOld = async (): Promise<void> => {
    const from = Math.max(0, model.changes.length - 30);
    const offered = model.changes
      .slice(from)
      .map((change, i) => ({ change, id: ids[from + i] }))
      .filter(({ change }) => !change.reverses && !model.isReversed(change));
    if (offered.length === 0) return;
    const { change, id } = chance.one(offered);
    const isRestore = change.before !== null && chance.below(3) === 0;
    const answer = await post(
      '/history/2026-03',
      [
        ['do', isRestore ? 'restore' : 'undo'],
        ['entry', String(id)],
      ],
      false,
    );
    if (isRestore) model.save(change.path, change.before);
    else if (model.textOf(change.path) === change.after) model.reverse(change);
    else {
      expect(answer.headers.location).toContain('said=cannot');
      count('takings back refused');
      return;
    }
    expect(answer.headers.location).toContain(isRestore ? 'said=saved' : 'said=undone');
    count(isRestore ? 'earlier versions put back' : 'taken back');
  };

  const addThing = async (): Promise<void> => {
    const name = newWords();
    const { headers } = await post(
      '/write/box.md',
      [
        ['do', 'add thing'],
        ['name', name],
      ],
      false,
    );
    const path = /^\/write\/(.*)\?said=made$/.exec(String(headers.location))?.[1];
    // The number may be that of a file which came back a moment ago: then nothing is made.
    if (path === undefined) return;
    expect(model.textOf(path)).toBeNull();
    // Its lines are those of the planner, which has tests of its own.
    const text = readFileSync(join(content, path), 'utf8');
    expect(text).toContain(`---\nname: ${name}\n`);
    model.save(path, text);
    count('things begun');
  };

  /** Two windows and another program on one file at once: what comes of it is what some order of the three gives. */
  const atOnce = async (): Promise<void> => {
    const path = chance.one(paths());
    const pages: (Page | undefined)[] = [];
    for (const window of windows) {
      const held = window.get(path);
      pages.push(held && held.seen === hashOf(model.textOf(path)) ? held : await load(window, path));
    }
    const [one, other] = pages;
    const before = model.textOf(path);
    if (!one || !other || before === null) return;
    const typed = [typingIn(path, one), typingIn(path, other)];
    const theirs = `${before}${asIn(before, `\n${newWords()}\n`)}`;
    const wait = chance.share() * 12;
    const isTheirs = chance.below(4) > 0;
    const byRename = chance.below(2) === 0;
    const [answers] = await Promise.all([
      Promise.all(typed.map((typing, i) => send(path, pages[i] ?? one, typing))),
      new Promise<void>((resolve) =>
        setTimeout(() => {
          if (isTheirs) write(path, theirs, byRename);
          resolve();
        }, wait),
      ),
    ]);
    const made = answers.map(({ status }) => status === 200);
    for (const { status } of answers) expect([200, 409]).toContain(status);
    const found = readFileSync(join(content, path), 'utf8');
    const order = ordersOf(isTheirs ? [0, 1, 2] : [0, 1]).find((steps) => {
      let now = before;
      const done = [false, false];
      for (const step of steps) {
        if (step === 2) now = theirs;
        else if (now === before) {
          now = typed[step]?.on(now) ?? '';
          done[step] = true;
        }
      }
      return now === found && done[0] === made[0] && done[1] === made[1];
    });
    expect({ order, made, found }, 'what was done at once').toEqual({
      order: expect.anything(),
      made,
      found,
    });
    for (const step of order ?? [])
      if (step === 2) model.outside(path, theirs);
      else if (made[step]) model.save(path, typed[step]?.on(before) ?? '');
    for (const window of windows) window.delete(path);
    count('done at once');
  };

  /** The desk ends, by Ctrl-C or in the middle of a save, and is opened again. */
  const endDesk = async (): Promise<void> => {
    if (!desk) return;
    if (chance.below(3) === 0) {
      expect(await closedDesk(desk)).toBe(0);
      count('closed');
    } else {
      const path = `${CYCLE}/cycle.md`;
      const page = await load(windows[0] as Window, path);
      if (!page) return;
      const typing = typingIn(path, page);
      const answer = send(path, page, typing).catch(() => undefined);
      await new Promise((resolve) => setTimeout(resolve, chance.share() * 60));
      await closedDesk(desk, 'SIGKILL');
      const got = await answer;
      const after = typing.on(page.text);
      const found = readFileSync(join(content, path), 'utf8');
      expect([page.text, after]).toContain(found);
      if (got?.status === 200) expect(found).toBe(after);
      const isNoted = entriesSince(ids.at(-1) ?? 0).length > 0;
      // A change that a stop prevented is noted, and its file is as it was.
      if (isNoted) model.save(path, after);
      model.outside(path, found);
      count(found === after ? 'killed after the change' : 'killed before the change');
    }
    await begin();
  };

  await begin();
  for (let edit = 1; edit <= EDITS; edit += 1) {
    const kind = chance.below(100);
    const window = chance.one(windows);
    if (edit % LIFE === 0) await endDesk();
    else if (kind < 42) await save(window, chance.one(paths()));
    else if (kind < 47) await load(window, chance.one(paths()));
    else if (kind < 64) elsewhere();
    else if (kind < 76) await takeBack('undo', chance.below(3) === 0 ? chance.one(paths()) : undefined);
    else if (kind < 83) await takeBack('redo');
    else if (kind < 90) await takeBackOld();
    else if (kind < 91 && model.files.size < 9) await addThing();
    else await atOnce();
    compare(`edit ${edit} (${kind})`);
  }
  process.stderr.write(
    `${EDITS} edits, seed ${SEED}: ${Object.entries(counts)
      .map(([what, many]) => `${many} ${what}`)
      .join(', ')}; ${model.changes.length} changes in the history\n`,
  );
  expect(counts.saves).toBeGreaterThan(EDITS / 10);
  expect(counts['taken back']).toBeGreaterThan(EDITS / 50);
}, 1_800_000);
