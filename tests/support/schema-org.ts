/**
 * Checks a JSON-LD graph against the published schema.org vocabulary (release 29.4, as `@vocabulary/schema`
 * ships it), offline. The context is derived from the vocabulary by the rule of schema.org's own: a range with
 * Text is not coerced; else URL is an `@id`; else Date, DateTime and Time are typed.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import jsonld from 'jsonld';
import { Parser } from 'n3';

const S = 'http://schema.org/';
const RDF_TYPE = 'http://www.w3.org/1999/02/22-rdf-syntax-ns#type';
const RDFS = 'http://www.w3.org/2000/01/rdf-schema#';

interface Vocabulary {
  readonly classes: ReadonlySet<string>;
  readonly supers: ReadonlyMap<string, readonly string[]>;
  readonly domains: ReadonlyMap<string, readonly string[]>;
  readonly ranges: ReadonlyMap<string, readonly string[]>;
  readonly superseded: ReadonlySet<string>;
  /** Members of enumerations and their types. */
  readonly members: ReadonlyMap<string, readonly string[]>;
}

let read: Vocabulary | undefined;

const vocabulary = (): Vocabulary => {
  if (read) return read;
  const main = createRequire(import.meta.url).resolve('@vocabulary/schema/package.json');
  const quads = new Parser({ format: 'application/n-quads' }).parse(
    readFileSync(join(dirname(main), 'schema.nq'), 'utf8'),
  );
  const classes = new Set<string>();
  const superseded = new Set<string>();
  const supers = new Map<string, string[]>();
  const domains = new Map<string, string[]>();
  const ranges = new Map<string, string[]>();
  const members = new Map<string, string[]>();
  const put = (map: Map<string, string[]>, key: string, value: string) => {
    map.set(key, [...(map.get(key) ?? []), value]);
  };
  for (const { subject, predicate, object } of quads) {
    const [s, p, o] = [subject.value, predicate.value, object.value];
    if (p === RDF_TYPE && o === `${RDFS}Class`) classes.add(s);
    else if (p === RDF_TYPE && o.startsWith(S)) put(members, s, o);
    else if (p === `${RDFS}subClassOf`) put(supers, s, o);
    else if (p === `${S}domainIncludes`) put(domains, s, o);
    else if (p === `${S}rangeIncludes`) put(ranges, s, o);
    else if (p === `${S}supersededBy`) superseded.add(s);
  }
  read = { classes, supers, domains, ranges, superseded, members };
  return read;
};

const withSupers = (type: string): ReadonlySet<string> => {
  const { supers } = vocabulary();
  const seen = new Set<string>();
  const walk = (name: string): void => {
    if (seen.has(name)) return;
    seen.add(name);
    for (const above of supers.get(name) ?? []) walk(above);
  };
  walk(type);
  return seen;
};

const derivedContext = (): Record<string, unknown> => {
  const { ranges } = vocabulary();
  const context: Record<string, unknown> = { '@vocab': S };
  for (const [property, range] of ranges) {
    const id = property;
    const name = property.slice(S.length);
    if (range.includes(`${S}Text`)) context[name] = { '@id': id };
    else if (range.includes(`${S}URL`)) context[name] = { '@id': id, '@type': '@id' };
    else if (range.includes(`${S}Date`)) context[name] = { '@id': id, '@type': `${S}Date` };
    else if (range.includes(`${S}DateTime`)) context[name] = { '@id': id, '@type': `${S}DateTime` };
  }
  return context;
};

type Expanded = Record<string, unknown>;

const TEXTUAL = ['Text', 'URL', 'CssSelectorType', 'PronounceableText', 'XPathType'].map((name) => S + name);
const NUMERIC = ['Number', 'Integer', 'Float'].map((name) => S + name);
const TEMPORAL = ['Date', 'DateTime', 'Time', 'Duration'].map((name) => S + name);

const short = (address: string): string => address.replace(S, '');

const literalFits = (value: unknown, range: readonly string[]): boolean => {
  const some = (types: readonly string[]) => types.some((type) => range.includes(type));
  if (typeof value === 'number') return some(NUMERIC) || some(TEXTUAL);
  if (typeof value === 'boolean') return range.includes(`${S}Boolean`);
  const text = String(value);
  if (some(TEXTUAL)) return true;
  if (some(TEMPORAL) && /^(\d{4}-\d{2}-\d{2}([T ]\S+)?|P\S+|\d{2}:\d{2}.*)$/.test(text)) return true;
  if (some(NUMERIC) && /^-?\d+(\.\d+)?$/.test(text)) return true;
  return false;
};

const checkNode = (node: Expanded, typesById: ReadonlyMap<string, readonly string[]>): string[] => {
  const { classes, domains, ranges, superseded, members } = vocabulary();
  const problems: string[] = [];
  const types = (node['@type'] as string[] | undefined) ?? [];
  for (const type of types) if (!classes.has(type)) problems.push(`unknown type ${short(type)}`);
  const mine = new Set(types.flatMap((type) => [...withSupers(type)]));
  const called = types.map(short).join(', ');
  for (const [property, values] of Object.entries(node)) {
    if (property.startsWith('@')) continue;
    const domain = domains.get(property);
    if (!domain) {
      problems.push(`unknown property ${short(property)} of ${called}`);
      continue;
    }
    if (superseded.has(property)) problems.push(`superseded property ${short(property)} of ${called}`);
    if (!domain.some((type) => mine.has(type)))
      problems.push(`${short(property)} does not belong to ${called}`);
    const range = ranges.get(property) ?? [];
    const misfit = (found: string) => problems.push(`${short(property)} of ${called} may not be ${found}`);
    for (const value of values as Expanded[]) {
      if ('@list' in value) continue;
      if ('@value' in value) {
        const literal = value['@value'];
        const member = typeof literal === 'string' ? literal.replace('https://schema.org/', S) : undefined;
        const memberTypes = member === undefined ? undefined : members.get(member);
        const fits = memberTypes
          ? memberTypes.some((type) => range.includes(type))
          : literalFits(literal, range);
        if (!fits) misfit(`"${String(literal)}"`);
        continue;
      }
      const id = value['@id'] as string | undefined;
      const own = value['@type'] as string[] | undefined;
      const known = own ?? (id === undefined ? undefined : typesById.get(id));
      if (known) {
        const all = known.flatMap((type) => [...withSupers(type)]);
        const isAddress = own === undefined && range.includes(`${S}URL`);
        if (!isAddress && !all.some((type) => range.includes(type))) misfit(known.map(short).join(', '));
      } else if (id !== undefined) {
        const memberTypes = members.get(id.replace('https://schema.org/', S));
        const fits = memberTypes
          ? memberTypes.some((type) => range.includes(type))
          : range.includes(`${S}URL`) && !id.replace('https://schema.org/', S).startsWith(S);
        if (!fits) misfit(`<${id}>`);
      }
      problems.push(...checkNode(value, typesById));
    }
  }
  return problems;
};

const nodesOf = (value: unknown): Expanded[] => {
  if (Array.isArray(value)) return value.flatMap(nodesOf);
  if (typeof value !== 'object' || value === null) return [];
  return [value as Expanded, ...Object.values(value).flatMap(nodesOf)];
};

/** What is wrong with a graph by the vocabulary: unknown types and properties, domains and ranges that misfit. */
export const checkJsonLd = async (graph: object): Promise<string[]> => {
  const documentLoader = async (url: string) => {
    if (!/^https?:\/\/schema\.org\/?$/.test(url)) throw new Error(`The check is offline: ${url}`);
    return { contextUrl: undefined, documentUrl: url, document: { '@context': derivedContext() } };
  };
  const expanded = (await jsonld.expand(graph, { documentLoader, safe: true })) as Expanded[];
  const typesById = new Map<string, readonly string[]>();
  for (const node of nodesOf(expanded)) {
    if (node['@id'] && node['@type']) typesById.set(node['@id'] as string, node['@type'] as string[]);
  }
  return expanded.flatMap((node) => checkNode(node, typesById));
};
