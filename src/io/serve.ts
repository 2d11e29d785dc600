/** A small server for pages of this machine: requests as data in, answers as data out. */
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { networkInterfaces } from 'node:os';
import { codeOf } from '../text/error-code.ts';

/** A file that was sent with a form. */
export interface SentFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What a form holds: each field's values in their order. */
export interface SentForm {
  readonly fields: ReadonlyMap<string, readonly string[]>;
  readonly files: ReadonlyMap<string, readonly SentFile[]>;
}

/** A request. */
export interface Asked {
  readonly method: string;
  /** Decoded, beginning with a slash. */
  readonly path: string;
  readonly query: URLSearchParams;
  /** By lower-case name. */
  readonly headers: Readonly<Record<string, string | undefined>>;
  /** The form that came with it, or why it cannot be read. `most` is the bytes that it may have. */
  readonly form: (most: number) => Promise<SentForm | 'too large' | 'unreadable'>;
}

/** Hears of news until the function that it is given back is called. */
export type Subscribe = (send: (name: string, data: string) => void) => () => void;

/** An answer: a body, or news for as long as somebody listens. */
export interface Answer {
  readonly status: number;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string | Uint8Array;
  readonly news?: Subscribe;
}

export interface ServeOptions {
  /** The first port to try; 0 for any. */
  readonly port: number;
  /** How many further ports are tried where it is taken. */
  readonly others: number;
  /** Whether other machines of the network are served. */
  readonly toNetwork: boolean;
  readonly handle: (asked: Asked) => Promise<Answer>;
  /** Hears of our own bugs. */
  readonly onBug: (error: unknown) => void;
}

export interface Served {
  readonly port: number;
  /** Lets nobody in any more, and ends what is open. */
  readonly close: () => Promise<void>;
}

/** IPv4 addresses of this machine in its networks. */
export const networkHosts = (): readonly string[] =>
  Object.values(networkInterfaces()).flatMap((some) =>
    (some ?? [])
      .filter(({ family, internal }) => family === 'IPv4' && !internal)
      .map(({ address }) => address),
  );

/** Milliseconds from one sign of life to the next, so that nothing between takes the line for dead. */
const BEAT = 20_000;

const readBody = async (request: IncomingMessage, most: number): Promise<Uint8Array | undefined> => {
  if (Number(request.headers['content-length'] ?? 0) > most) return undefined;
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of request) {
    size += (chunk as Buffer).length;
    if (size > most) return undefined;
    chunks.push(chunk as Buffer);
  }
  return Buffer.concat(chunks);
};

const add = <Value>(map: Map<string, Value[]>, key: string, value: Value): void => {
  const some = map.get(key);
  if (some) some.push(value);
  else map.set(key, [value]);
};

const formOf =
  (request: IncomingMessage) =>
  async (most: number): Promise<SentForm | 'too large' | 'unreadable'> => {
    const body = await readBody(request, most);
    if (!body) return 'too large';
    try {
      const type = request.headers['content-type'] ?? '';
      const data = await new Response(body, { headers: { 'content-type': type } }).formData();
      const fields = new Map<string, string[]>();
      const files = new Map<string, SentFile[]>();
      for (const [key, value] of data)
        if (typeof value === 'string') add(fields, key, value);
        else if (value.size > 0 || value.name !== '')
          add(files, key, { name: value.name, bytes: new Uint8Array(await value.arrayBuffer()) });
      return { fields, files };
    } catch {
      return 'unreadable';
    }
  };

const askedOf = (request: IncomingMessage): Asked | undefined => {
  try {
    const url = new URL(request.url ?? '/', 'http://desk.invalid');
    const headers = Object.fromEntries(
      Object.entries(request.headers).map(([name, value]) => [
        name,
        Array.isArray(value) ? value.join(', ') : value,
      ]),
    );
    return {
      method: request.method ?? 'GET',
      path: decodeURIComponent(url.pathname),
      query: url.searchParams,
      headers,
      form: formOf(request),
    };
  } catch {
    return undefined;
  }
};

const listen = (response: ServerResponse, subscribe: Subscribe): void => {
  response.write(': here\n\n');
  const stop = subscribe((name, data) => response.write(`event: ${name}\ndata: ${data}\n\n`));
  const beat = setInterval(() => response.write(': still here\n\n'), BEAT);
  response.on('close', () => {
    clearInterval(beat);
    stop();
  });
};

const send = (request: IncomingMessage, response: ServerResponse, answer: Answer): void => {
  const { status, headers = {}, body = '', news } = answer;
  response.writeHead(status, headers);
  if (request.method === 'HEAD') response.end();
  else if (news) listen(response, news);
  else response.end(body);
  // What was sent and not read must not keep the line busy.
  if (!request.complete) request.resume();
};

/** Serves until it is closed. Rejects where no port is free, or the system refuses. */
export const serve = async (options: ServeOptions): Promise<Served> => {
  const { handle, onBug, toNetwork, others } = options;
  const server = createServer({ requestTimeout: 120_000 }, (request, response) => {
    const asked = askedOf(request);
    if (!asked) {
      send(request, response, { status: 400 });
      return;
    }
    handle(asked).then(
      (answer) => send(request, response, answer),
      (error) => {
        onBug(error);
        if (!response.headersSent) send(request, response, { status: 500 });
      },
    );
  });
  const tryPort = (port: number): Promise<boolean> =>
    new Promise((resolve, reject) => {
      const refused = (error: Error): void => {
        if (codeOf(error) === 'EADDRINUSE') resolve(false);
        else reject(error);
      };
      server.once('error', refused);
      server.listen(port, toNetwork ? '0.0.0.0' : '127.0.0.1', () => {
        server.off('error', refused);
        resolve(true);
      });
    });
  let isHeard = false;
  for (let port = options.port; !isHeard && port <= options.port + others; port += 1)
    isHeard = await tryPort(port);
  if (!isHeard)
    throw Object.assign(new Error(`Ports ${options.port} to ${options.port + others} are taken`), {
      code: 'EADDRINUSE',
    });
  return {
    port: (server.address() as AddressInfo).port,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
};
