/**
 * A job as one file: what is in it, how it is written, how it is read. JSON, one entry a line, each in its RFC 8785 form,
 * so that two exports can be compared by eye and by any tool for texts.
 */
import * as z from 'zod/mini';
import { canonicalJson } from '../canonical.ts';
import { type Entry, type Parts, Settings, Text, type TextRef } from '../schema.ts';

const hex64 = z.string().check(z.regex(/^[0-9a-f]{64}$/));
const id = z.string().check(z.minLength(1), z.maxLength(200));
const count = z.number().check(z.int(), z.gte(1));

/** Which manual the job was pinned to: its first entry says so, and the file says it again where a person looks. */
const FlowName = z.strictObject({ manual: id, version: z.number(), fingerprint: z.string(), semantics: z.number() });
export type FlowName = z.infer<typeof FlowName>;

/** What stood after a turn: the place, and the hash of what was asked there (`asked.ts`). */
export const Shown = z.strictObject({ seq: count, place: id, asks: hex64 });
export type Shown = z.infer<typeof Shown>;

/** What the shop's key vouches for: this job, so long, ending on this hash, and these questions. */
export const Seal = z.strictObject({
  key: id,
  length: count,
  head: hex64,
  /** SHA-256 over the RFC 8785 JSON of `shown`. */
  shown: hex64,
  signature: z.string().check(z.maxLength(200)),
});
export type Seal = z.infer<typeof Seal>;

const Shape = z.strictObject({
  nocool: z.literal('job'),
  v: z.literal(1),
  job: id,
  flow: FlowName,
  /** Those in force at the end; every change of them is an entry. */
  settings: z.nullable(Settings),
  /** SHA-256 of each photo that an entry names, in the order of the entries. */
  photos: z.array(hex64),
  /** null: exported without a key. Cut out altogether it is the same: what was never signed, or is signed no more. */
  seal: z._default(z.nullable(Seal), null),
  shown: z.array(Shown),
  /** The words beside the entries; those that were removed are not here, and the chain verifies without them. */
  texts: z.array(Text),
  entries: z.array(z.unknown()),
});
/** As read: whether the entries are entries is for the chain to say. */
export type JobFile = z.infer<typeof Shape>;

/** Bytes of the largest file that is read; a job of a whole summer has some hundred kilobytes. */
export const LARGEST = 64 * 1024 * 1024;

/** The same job gives the same bytes, whichever database it comes from. */
export function writeJobFile(file: JobFile): string {
  const lines = (list: readonly unknown[]): string =>
    list.length === 0 ? '[]' : `[\n${list.map((one) => canonicalJson(one)).join(',\n')}\n]`;
  const { shown, texts, entries, ...head } = file;
  const parts = Object.entries(head).map(([name, value]) => `${canonicalJson(name)}:${canonicalJson(value)}`);
  return `{${[...parts, `"shown":${lines(shown)}`, `"texts":${lines(texts)}`, `"entries":${lines(entries)}`].join(',\n')}}\n`;
}

/** The file, or in one line why these bytes are none. */
export function readJobFile(bytes: Uint8Array): JobFile | { wrong: string } {
  if (bytes.byteLength > LARGEST) return { wrong: `larger than ${LARGEST / 1024 / 1024}\u2009MB` };
  let text: string;
  let data: unknown;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return { wrong: 'not UTF-8 text' };
  }
  try {
    data = JSON.parse(text);
  } catch (error) {
    return { wrong: text.trim() === '' ? 'empty' : `not JSON (${error instanceof Error ? error.message : ''})` };
  }
  const read = Shape.safeParse(data);
  if (!read.success) {
    const issue = read.error.issues[0];
    return { wrong: `not an exported job (${[...(issue?.path ?? [])].join('.') || 'the whole'})` };
  }
  if (hasHiddenName(data)) return { wrong: 'a name in it, __proto__, is none that an entry has' };
  // With a name twice, one reader sees the first value and another the last: nobody could say what was verified.
  if (colons(text) !== names(data)) return { wrong: 'a name stands twice in one object' };
  return read.data;
}

/** Colons outside strings: as many as names were written. */
function colons(json: string): number {
  let found = 0;
  let inside = false;
  for (let i = 0; i < json.length; i++) {
    const c = json[i];
    if (c === '"') inside = !inside;
    else if (c === '\\') i++;
    else if (c === ':' && !inside) found++;
  }
  return found;
}
/** Every object and list of a file; without recursion, since it may be nested as deep as it likes. */
function* objectsIn(data: unknown): Generator<object> {
  const open: unknown[] = [data];
  while (open.length > 0) {
    const one = open.pop();
    if (typeof one !== 'object' || one === null) continue;
    yield one;
    for (const inner of Object.values(one)) open.push(inner);
  }
}
/** Readers differ about this name: some leave it out, and what hangs on it was never looked at. */
function hasHiddenName(data: unknown): boolean {
  for (const one of objectsIn(data)) if (Object.hasOwn(one, '__proto__')) return true;
  return false;
}
/** Names as they were read. */
function names(data: unknown): number {
  let found = 0;
  for (const one of objectsIn(data)) if (!Array.isArray(one)) found += Object.keys(one).length;
  return found;
}

/** Every answer of an entry. */
const partsOf = (entry: Entry): Parts => {
  if (entry.kind === 'answered' || entry.kind === 'amended') return entry.body.parts;
  return entry.kind === 'paused' ? (entry.body.safe ?? {}) : {};
};
export const photosOf = (entries: readonly Entry[]): string[] => [
  ...new Set(entries.flatMap((e) => Object.values(partsOf(e)).flatMap((v) => (v.kind === 'photo' ? [v.hash] : [])))),
];
export const settingsOf = (entries: readonly Entry[]): Settings | null =>
  entries.reduce<Settings | null>(
    (was, e) => (e.kind === 'set' && e.body.what === 'settings' ? e.body.settings : was),
    null,
  );
export function flowOf(entries: readonly Entry[]): FlowName | null {
  const first = entries[0];
  if (first?.kind !== 'opened') return null;
  const { manual, version, fingerprint, semantics } = first.body;
  return { manual, version, fingerprint, semantics };
}

/** Every reference to words in an entry, wherever it stands. */
export function textRefsOf(entry: Entry): TextRef[] {
  const found: TextRef[] = [];
  const look = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if ('ref' in value && 'hash' in value) found.push(value as TextRef);
    else for (const inner of Object.values(value)) look(inner);
  };
  look(entry.body);
  return found;
}
