/** Requests to a desk as anybody may write them, which `fetch` would not send. */
import { request } from 'node:http';

export interface Sent {
  readonly port: number;
  readonly method?: string;
  readonly path: string;
  readonly headers?: Record<string, string>;
  readonly body?: string | Uint8Array;
}

export interface Got {
  readonly status: number;
  readonly headers: Record<string, string | string[] | undefined>;
  readonly text: string;
}

/** Sends one request to this machine; rejects where the line breaks off. */
export const ask = ({ port, method = 'GET', path, headers = {}, body }: Sent): Promise<Got> =>
  new Promise((resolve, reject) => {
    const one = request(
      { host: '127.0.0.1', port, method, path, headers: { host: `127.0.0.1:${port}`, ...headers } },
      (answer) => {
        let text = '';
        answer.setEncoding('utf8').on('data', (some: string) => (text += some));
        answer.on('end', () => resolve({ status: answer.statusCode ?? 0, headers: answer.headers, text }));
        answer.on('error', reject);
      },
    );
    one.on('error', reject);
    one.end(body);
  });

/** What a browser says of a form of the desk's own pages. */
export const ownHeaders = (port: number) => ({
  origin: `http://127.0.0.1:${port}`,
  'sec-fetch-site': 'same-origin',
  'content-type': 'application/x-www-form-urlencoded',
});
