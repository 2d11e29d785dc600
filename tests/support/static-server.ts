/** nginx with plain static settings over a folder. */
import { spawn } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface StaticServer {
  /** Address of the folder, ending in `/`. */
  readonly base: string;
  readonly stop: () => Promise<void>;
}

const freePort = (): Promise<number> =>
  new Promise((done) => {
    const probe = createServer().listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => done(typeof address === 'object' && address ? address.port : 0));
    });
  });

/** What of nginx's settings is the test's own: where it writes, and that it ends with the test. */
const surroundings = (dir: string, http: string): string =>
  `${process.getuid?.() === 0 ? 'user root;' : ''} daemon off; pid ${dir}/pid; error_log stderr;
events {} http {
access_log off; client_body_temp_path ${dir}/a; proxy_temp_path ${dir}/b; fastcgi_temp_path ${dir}/c; uwsgi_temp_path ${dir}/d; scgi_temp_path ${dir}/e;
${http} }`;

/**
 * Runs nginx with what `http` gives for a port of this machine to stand in its `http` block; `path` is one that it must
 * answer. Rejects when it does not.
 */
export const serveWith = async (http: (port: number) => string, path = '/'): Promise<StaticServer> => {
  const dir = await mkdtemp(join(tmpdir(), 'lidlore-nginx-'));
  const port = await freePort();
  const base = `http://127.0.0.1:${port}${path}`;
  await writeFile(join(dir, 'nginx.conf'), surroundings(dir, http(port)));
  const server = spawn('nginx', ['-p', dir, '-c', join(dir, 'nginx.conf')], { stdio: 'ignore' });
  const stop = async (): Promise<void> => {
    server.kill();
    await rm(dir, { recursive: true, force: true });
  };
  for (let tries = 0; tries < 50; tries++) {
    if (
      await fetch(base).then(
        (answer) => answer.ok,
        () => false,
      )
    )
      return { base, stop };
    await new Promise((done) => setTimeout(done, 100));
  }
  await stop();
  throw new Error('nginx did not answer');
};

/** Serves a folder under a path that begins and ends in `/`, compressed as hosts do. Rejects when nginx does not answer. */
export const serveFolder = (folder: string, path = '/'): Promise<StaticServer> =>
  serveWith(
    (
      port,
    ) => `types { text/html html; text/css css; text/javascript js; image/svg+xml svg; image/avif avif; image/webp webp; image/jpeg jpg; font/woff2 woff2; application/xml xml; application/json json; text/plain txt; }
charset utf-8; charset_types text/html text/css text/javascript application/xml application/json text/plain;
gzip on; gzip_comp_level 6; gzip_types text/css text/javascript image/svg+xml application/xml application/json text/plain;
server { listen 127.0.0.1:${port};
location ${path} { alias ${folder}/; }
${path === '/' ? `location /assets/ { alias ${folder}/assets/; expires max; }` : ''} }`,
    path,
  );
