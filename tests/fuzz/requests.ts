/**
 * Requests made of the server’s own OpenAPI document: what it says it takes, and then bent. Nothing of a route is written
 * here, so a new one is tried as soon as it is in the document.
 */

import type { Chance } from './chance.ts';
import { HOSTILE } from './strings.ts';

export interface Schema {
  readonly $ref?: string;
  readonly type?: string;
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly allOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
  readonly additionalProperties?: Schema | boolean;
  readonly pattern?: string;
}
export interface Operation {
  readonly method: string;
  readonly path: string;
  readonly parameters: readonly { readonly name: string; readonly in: string; readonly schema: Schema }[];
  readonly body: Schema | null;
}
export interface Document {
  readonly paths: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  readonly components?: { readonly schemas?: Readonly<Record<string, Schema>> };
}
export interface Request {
  readonly method: string;
  readonly url: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly payload?: string;
}

export function operationsOf({ paths }: Document): Operation[] {
  return Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, said]): Operation => {
      const { parameters = [], requestBody } = said as {
        parameters?: Operation['parameters'];
        requestBody?: { content?: Record<string, { schema?: Schema }> };
      };
      const body = Object.values(requestBody?.content ?? {})[0]?.schema ?? null;
      return { method: method.toUpperCase(), path, parameters, body };
    }),
  );
}

const WORDS: readonly string[] = Object.values(HOSTILE);
const SCALARS: readonly unknown[] = [
  ...[null, true, false, 0, -1, 1, 1.5, 1e308, 2 ** 53, '', ' ', [], {}, [[]], '0', 'true', '\u0000', 'NaN'],
  ...['2026-07-14T15:00:00.000Z', '9999-99-99', 'a'.repeat(20_000), ['x'.repeat(300)], { $ne: null }],
];
/** What people type at a call, so that the requests come further than its first question. */
const LINES = [
  'd',
  'psc',
  'yes',
  'stop',
  'why',
  'back',
  'go on',
  'cover on, lock stays',
  'note x',
  'sign',
  'smoke',
  'release ok',
];

/** A value that this schema takes, as far as that can be told; `ids` are of things that are there. */
export function valueFor(schema: Schema, within: Document, chance: Chance, ids: readonly string[], depth = 0): unknown {
  if (schema.$ref) {
    const name = schema.$ref.split('/').at(-1) ?? '';
    return valueFor(within.components?.schemas?.[name] ?? {}, within, chance, ids, depth + 1);
  }
  const either = schema.anyOf ?? schema.oneOf ?? schema.allOf;
  if (either && either.length > 0) return valueFor(chance.of(either), within, chance, ids, depth + 1);
  if (schema.const !== undefined) return schema.const;
  if (schema.enum) return chance.of(schema.enum);
  if (depth > 12) return null;
  switch (schema.type) {
    case 'object': {
      const known = Object.entries(schema.properties ?? {}).filter(
        ([name]) => schema.required?.includes(name) || chance.often(0.4),
      );
      const made = Object.fromEntries(
        known.map(([name, of]) => [
          name,
          name === 'client' ? `z${chance.below(1e9)}` : valueFor(of, within, chance, ids, depth + 1),
        ]),
      );
      if (typeof schema.additionalProperties === 'object' && chance.often(0.7))
        made[chance.of(['choice', 'ok', 'means', 'herm'])] = valueFor(
          schema.additionalProperties,
          within,
          chance,
          ids,
          depth + 1,
        );
      return made;
    }
    case 'array':
      return Array.from({ length: chance.below(3) }, () =>
        valueFor(schema.items ?? {}, within, chance, ids, depth + 1),
      );
    case 'integer':
    case 'number':
      return chance.of([1, 2, 3, 4, 5, 6, 8, 12]);
    case 'boolean':
      return chance.often(0.5);
    case 'null':
      return null;
    default:
      return chance.often(0.5) ? chance.of(LINES) : chance.of(ids);
  }
}

/** The same with something put in its place, added, or taken away. */
function bent(value: unknown, chance: Chance): unknown {
  if (typeof value !== 'object' || value === null || chance.often(0.3))
    return chance.often(0.5) ? chance.of(WORDS) : chance.of(SCALARS);
  if (Array.isArray(value))
    return [...value.map((each) => (chance.often(0.5) ? bent(each, chance) : each)), chance.of(SCALARS)];
  const names = Object.keys(value);
  const at = names[chance.below(Math.max(1, names.length))];
  const { [at ?? '']: old, ...rest } = value as Record<string, unknown>;
  if (at === undefined || chance.often(0.2)) return { ...value, [chance.of(WORDS).slice(0, 50)]: chance.of(SCALARS) };
  return chance.often(0.2) ? rest : { ...rest, [at]: bent(old, chance) };
}

/** JSON text, and sometimes something that is nearly JSON. */
function written(value: unknown, chance: Chance): string {
  const text = JSON.stringify(value) ?? '';
  if (!chance.often(0.08)) return text;
  return chance.of([
    text.slice(0, chance.below(text.length + 1)),
    `${text}${text}`,
    text.replace('{', '{"__proto__":{"polluted":1},'),
    `${'['.repeat(chance.below(5_000))}${text}`,
    `\ufeff${text}`,
    text.replaceAll('"', "'"),
  ]);
}

const TYPES = [
  'text/plain',
  'application/x-www-form-urlencoded',
  'image/jpeg',
  'multipart/form-data; boundary=x',
  'a/b;;',
  '',
];
const HEADERS: readonly (readonly [string, string])[] = [
  ...([
    ['accept-encoding', 'br;q=9, *'],
    ['if-none-match', '*'],
    ['range', 'bytes=0-'],
    ['expect', '200-ok'],
  ] as const),
  ...([
    ['x-forwarded-for', '::1, \'"<x>'],
    ['origin', 'null'],
    ['last-event-id', '-1'],
    ['content-encoding', 'gzip'],
  ] as const),
  ...([
    ['cookie', 'nocool=%00; nocool=;;=;'],
    ['x-http-method-override', 'DELETE'],
    ['referer', 'x'.repeat(2_000)],
  ] as const),
];

export function requestOf(
  operations: readonly Operation[],
  within: Document,
  chance: Chance,
  there: { readonly ids: readonly string[]; readonly cookies: readonly string[]; readonly paths: readonly string[] },
): Request {
  const { method, path, parameters, body } = chance.of(operations);
  const segment = (): string => {
    const words = chance.often(0.8) ? chance.of(there.ids) : chance.of(WORDS).slice(0, 300);
    return chance.often(0.95)
      ? encodeURIComponent(words.replace(/[\ud800-\udfff]/g, ''))
      : words.replace(/[^!-~]/g, '%');
  };
  const query = parameters
    .filter((each) => each.in === 'query' && chance.often(0.6))
    .map(
      ({ name, schema }) =>
        `${name}=${encodeURIComponent(String(valueFor(schema, within, chance, there.ids))).slice(0, 500)}`,
    );
  const filled = chance.often(0.95) ? path.replace(/\{[^}]+\}/g, segment) : `${chance.of(there.paths)}/${segment()}`;
  const url = query.length > 0 ? `${filled}?${query.join('&')}` : filled;
  const sends = method === 'POST' || method === 'DELETE';
  const right = valueFor(body ?? { type: 'object' }, within, chance, there.ids);
  const value = chance.often(0.5) ? right : bent(right, chance);
  const headers = {
    cookie: chance.of(there.cookies),
    ...(sends && chance.often(0.98) ? { 'x-nocool': '1' } : {}),
    ...(sends ? { 'content-type': chance.often(0.95) ? 'application/json' : chance.of(TYPES) } : {}),
    ...(chance.often(0.05) ? Object.fromEntries([chance.of(HEADERS)]) : {}),
  };
  const as = chance.often(0.98) ? method : chance.of(['PUT', 'PATCH', 'OPTIONS', 'HEAD', 'TRACE', 'DELETE']);
  return { method: as, url, headers, ...(sends ? { payload: written(value, chance) } : {}) };
}
