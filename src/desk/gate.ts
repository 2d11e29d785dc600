/**
 * Who may ask what. The desk is read and written in its owner's own browser, and any page of the web may try to ask that
 * browser to ask us: so an address by another name is refused (a name can be pointed here), and so is a request that does
 * not come from a page of ours.
 */
import type { Asked } from '../io/serve.ts';

export interface Gate {
  /** Names and addresses that the desk is asked by, with the port: `127.0.0.1:4747`. */
  readonly hosts: ReadonlySet<string>;
  /** What every form of ours sends along. */
  readonly token: string;
  /** What another machine's browser has to have been given; absent where this machine alone is served. */
  readonly key?: string;
}

/** Why a request is refused. */
export type Refusal = 'method' | 'host' | 'origin' | 'key' | 'token' | 'too large' | 'unreadable';

/** Where the key is kept once it was given. */
const COOKIE = 'lidlore-desk-key';

/** Compares all of two texts whatever they have in common, so that the time tells nothing. */
const isSame = (given: string | undefined, wanted: string): boolean => {
  if (given === undefined || given.length !== wanted.length) return false;
  let differs = 0;
  for (let i = 0; i < wanted.length; i += 1) differs |= given.charCodeAt(i) ^ wanted.charCodeAt(i);
  return differs === 0;
};

const cookieIn = (header: string | undefined): string | undefined =>
  (header ?? '')
    .split(';')
    .map((one) => one.trim().split('='))
    .find(([name]) => name === COOKIE)?.[1];

/** The line that lets a browser keep the key, where it was given in the address. */
export const keyCookie = ({ key }: Gate, { query }: Asked): string | undefined =>
  key !== undefined && isSame(query.get('key') ?? undefined, key)
    ? `${COOKIE}=${key}; Path=/; HttpOnly; SameSite=Strict`
    : undefined;

const isOwnOrigin = (origin: string, { hosts }: Gate): boolean =>
  origin.startsWith('http://') && hosts.has(origin.slice('http://'.length));

/** Why a request is refused before anything of it is read; undefined for one that may be answered. */
export const refusalOf = (asked: Asked, gate: Gate): Refusal | undefined => {
  const { method, headers } = asked;
  if (!['GET', 'HEAD', 'POST'].includes(method)) return 'method';
  if (!gate.hosts.has(headers.host ?? '')) return 'host';
  const { origin } = headers;
  const from = headers['sec-fetch-site'];
  // A page elsewhere may lead here as a link does, and in no other way.
  const isLink =
    method !== 'POST' && headers['sec-fetch-mode'] === 'navigate' && headers['sec-fetch-dest'] === 'document';
  if (from !== undefined && from !== 'same-origin' && from !== 'none' && !isLink) return 'origin';
  if (origin !== undefined && !isOwnOrigin(origin, gate)) return 'origin';
  if (method === 'POST' && origin === undefined && from !== 'same-origin') return 'origin';
  if (gate.key !== undefined && !isSame(cookieIn(headers.cookie), gate.key)) return 'key';
  return undefined;
};

/** Whether a form is one of ours. */
export const hasToken = (given: string | undefined, { token }: Gate): boolean => isSame(given, token);
