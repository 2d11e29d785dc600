/** `lidlore desk`: opens the writing table, and closes it on Ctrl-C. */
import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { drawFirst, openDesk } from '../desk/desk.ts';
import type { Gate } from '../desk/gate.ts';
import { layTable } from '../desk/table.ts';
import { findFfmpeg } from '../io/film/find-ffmpeg.ts';
import { openHistory } from '../io/history.ts';
import { type LastingMemory, openMemory } from '../io/memory/open-memory.ts';
import { rememberedPictures } from '../io/memory/remembered-pictures.ts';
import { deskThatIsOpen, sayDeskIsOpen } from '../io/one-desk.ts';
import { openAddress } from '../io/open-address.ts';
import { programDigest } from '../io/program.ts';
import { refusal } from '../io/publish/index.ts';
import { readTemplates } from '../io/read-templates.ts';
import { networkHosts, type Served, serve } from '../io/serve.ts';
import { watchFolders } from '../io/watch-folders.ts';
import { type AsOf, momentFor } from '../pipeline/as-of.ts';
import { codeOf } from '../text/error-code.ts';
import { commandLine } from '../wording/en/command-line.ts';
import { desk as words } from '../wording/en/desk.ts';
import { openWorkspace, type Workspace } from '../workspace/workspace.ts';
import { type ContentFolder, findContentFolder, readMoment } from './content-folder.ts';
import type { Environment, Values } from './environment.ts';
import { EXIT } from './exit-status.ts';
import { makeFilmInThread } from './film-in-thread.ts';
import { picturesInThread } from './pictures-in-thread.ts';
import { progress } from './progress.ts';
import { isFromOutside } from './with-memory.ts';

const { help } = commandLine;

const OWN_TEMPLATES = fileURLToPath(new URL('../../templates', import.meta.url));
const OWN_SCRIPTS = fileURLToPath(new URL('../../dist/browser', import.meta.url));

/** A port of ours; where it is taken, the next ones. */
const PORT = 4747;
const MORE_PORTS = 20;

/** `--port 5000`; undefined for what is none. */
const readPort = (value: string | true | undefined): number | undefined => {
  if (value === undefined) return PORT;
  const port = typeof value === 'string' && /^\d{1,5}$/.test(value.trim()) ? Number(value) : 0;
  return port >= 1024 && port <= 65_535 - MORE_PORTS ? port : undefined;
};

const newKey = (): string => randomBytes(24).toString('base64url');

interface DeskRun {
  readonly place: ContentFolder;
  readonly environment: Environment;
  readonly asOf: AsOf;
  readonly hasMoment: boolean;
  readonly port: number;
  readonly isShared: boolean;
  readonly opens: boolean;
}

/** Waits until the person has had enough. */
const untilStopped = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => resolve());
  });

const runDesk = async ({
  place,
  environment,
  asOf,
  hasMoment,
  port,
  isShared,
  opens,
}: DeskRun): Promise<number> => {
  const say = (text: string): unknown => environment.stdout.write(`${text}\n`);
  const { content, memory: memoryFolder, beside } = place;
  // What was drawn over an earlier one may still read from it.
  const memories: LastingMemory[] = [];
  const openOver = (memory: LastingMemory): Promise<Workspace> => {
    memories.push(memory);
    return openWorkspace({
      path: content,
      memory,
      program: programDigest(),
      onPhotos: progress(environment, commandLine.progress.photos),
    });
  };
  const closeMemories = (): void => {
    for (const memory of memories) memory.close();
  };
  const openAnew = async (error: unknown): Promise<Workspace | undefined> =>
    isFromOutside(error) || memories.length > 1 ? undefined : openOver(openMemory(memoryFolder, false));
  const orAnew = async (error: unknown): Promise<Workspace> => {
    const other = await openAnew(error);
    if (!other) throw error;
    return other;
  };
  const workspace = await openOver(openMemory(memoryFolder)).catch(orAnew);
  const { facts } = workspace.snapshot();
  const ffmpeg = findFfmpeg(environment.env.PATH);
  const table = layTable({
    workspace,
    openAnew,
    history: openHistory(join(memoryFolder, 'history'), content),
    pictures: rememberedPictures(join(memoryFolder, 'pictures')),
    films: rememberedPictures(join(memoryFolder, 'films')),
    ...(ffmpeg !== undefined && { ffmpeg }),
    makeFilm: makeFilmInThread,
    makePictures: picturesInThread(),
    readTemplates: () =>
      readTemplates({ own: OWN_TEMPLATES, theirs: beside('templates'), scripts: OWN_SCRIPTS }),
    folders: { site: beside('site'), backroom: beside('backroom') },
    now: hasMoment ? () => momentFor(asOf, facts.timeZone) : () => Date.now(),
    publicUntil: () => Date.now(),
  });
  const closing = new AbortController();
  const token = newKey();
  const key = isShared ? newKey() : undefined;
  let gate: Gate = { hosts: new Set(), token };
  let served: Served;
  try {
    served = await serve({
      port,
      others: MORE_PORTS,
      toNetwork: isShared,
      handle: openDesk(table, () => gate, closing.signal),
      onBug: (error) => {
        const stack = error instanceof Error ? (error.stack ?? error.message) : String(error);
        environment.stderr.write(`${commandLine.failures.bug(stack, false)}\n`);
      },
    });
  } catch (error) {
    closeMemories();
    if (codeOf(error) !== 'EADDRINUSE') throw error;
    environment.stderr.write(`${words.terminal.noPort(port, port + MORE_PORTS)}\n`);
    return EXIT.usage;
  }
  const networks = isShared ? networkHosts() : [];
  gate = {
    hosts: new Set(['127.0.0.1', 'localhost', ...networks].map((host) => `${host}:${served.port}`)),
    token,
    ...(key !== undefined && { key }),
  };
  const query = key === undefined ? '' : `?key=${key}`;
  const address = `http://127.0.0.1:${served.port}/${query}`;
  const leave = sayDeskIsOpen(join(memoryFolder, 'desk.json'), address);
  const watched = watchFolders(
    content,
    [beside('templates')],
    () => {
      table.refresh().catch((error: unknown) => environment.stderr.write(`${String(error)}\n`));
    },
    (path) => table.snapshot().files.get(path)?.stamp,
  );
  if (served.port !== port) say(words.terminal.portTaken(port, served.port));
  say(words.terminal.open(address));
  if (networks.length > 0)
    say(words.terminal.share(networks.map((host) => `http://${host}:${served.port}/${query}`)));
  say(words.terminal.stop);
  // Made ready while the browser starts.
  void drawFirst(table).catch(() => undefined);
  if (opens) openAddress(address);
  await untilStopped();
  closing.abort();
  watched.close();
  leave();
  await served.close();
  table.workspace().folder.remember();
  closeMemories();
  say(words.terminal.closed);
  return EXIT.done;
};

/** Opens the desk, and gives the exit status once it is closed. */
export const deskCommand = async (values: Values, environment: Environment): Promise<number> => {
  const refuse = (mistake: string): number => {
    environment.stderr.write(`${mistake}\n${help.see('desk')}\n`);
    return EXIT.usage;
  };
  const port = readPort(values.port);
  if (port === undefined) return refuse(words.terminal.port(String(values.port)));
  const place = findContentFolder(values, environment.cwd);
  if ('mistake' in place) return refuse(place.mistake);
  const moment = await readMoment(values);
  if ('mistake' in moment) return refuse(moment.mistake);
  const refusedFolders = await refusal({
    content: place.content,
    out: place.beside('site'),
    backroom: place.beside('backroom'),
  });
  if (refusedFolders) return refuse(refusedFolders);
  const opens = values['no-open'] === undefined;
  const open = deskThatIsOpen(join(place.memory, 'desk.json'));
  if (open) {
    environment.stdout.write(`${words.terminal.isOpen(open.address)}\n`);
    if (opens) openAddress(open.address);
    return EXIT.done;
  }
  return runDesk({
    place,
    environment,
    asOf: moment.asOf,
    hasMoment: values['as-of'] !== undefined,
    port,
    isShared: values.share === true,
    opens,
  });
};
