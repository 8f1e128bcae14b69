/** Many files, one after another: names of files and folders in, what was found of each out. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { LARGEST } from './file.ts';
import { bySeriousness, codeOf, OUTCOMES, type Trouble, type Verified } from './outcome.ts';
import type { Verifier } from './verify.ts';

export interface Of extends Omit<Verified, 'hashes'> {
  readonly file: string;
}

const NOTHING = { job: null, flow: null, entries: 0, removed: 0, key: null, hashes: [] };
const failed = (file: string, word: Trouble['word'], says: string): Of & Pick<Verified, 'hashes'> => ({
  ...NOTHING,
  file,
  troubles: [{ word, at: null, old: null, now: null, says }],
});

/**
 * Folders stand for every `.json` in them, at any depth. One file at a time is held in memory; of each job, the hashes of
 * its longest record so far. Two of one job that part from each other can't both be what was recorded, however well each
 * fits and whoever signed it: the later one is called rewritten.
 */
export function* verifyFiles(verifier: Verifier, paths: readonly string[]): Generator<Of> {
  const seen = new Map<string, Seen>();
  for (const path of paths) {
    const files = filesAt(path);
    if ('wrong' in files) yield beside(seen, failed(path, 'unreadable', files.wrong));
    else for (const file of files.list) yield beside(seen, verifyFile(verifier, file));
  }
}

interface Seen {
  readonly file: string;
  /** Digits enough to tell two entries apart. */
  readonly hashes: readonly string[];
}
const DIGITS = 16;

function beside(seen: Map<string, Seen>, { hashes: all, ...of }: Of & Pick<Verified, 'hashes'>): Of {
  // One that nobody vouches for speaks against no other.
  if (of.job === null || codeOf(of) >= OUTCOMES['signature missing']) return of;
  const hashes = all.map((hash) => hash.slice(0, DIGITS));
  const other = seen.get(of.job);
  if (!other || other.hashes.length < hashes.length) seen.set(of.job, { file: of.file, hashes });
  const parts = other ? hashes.findIndex((hash, i) => i < other.hashes.length && hash !== other.hashes[i]) : -1;
  if (!other || parts < 0) return of;
  const says = `${other.file} is of the same job and goes on otherwise from here: one of them is not what was recorded.`;
  const found: Trouble = { word: 'rewritten', at: parts + 1, old: null, now: null, says };
  return { ...of, troubles: [found, ...of.troubles].sort(bySeriousness) };
}

export function filesAt(path: string): { list: string[] } | { wrong: string } {
  try {
    if (!statSync(path).isDirectory()) return { list: [path] };
    const list = readdirSync(path, { recursive: true, withFileTypes: true })
      .filter((e) => e.isFile() && e.name.endsWith('.json'))
      .map((e) => join(e.parentPath, e.name))
      .sort();
    return list.length === 0 ? { wrong: 'no .json file in this folder.' } : { list };
  } catch (error) {
    return { wrong: because(error) };
  }
}

function verifyFile(verifier: Verifier, file: string): Of & Pick<Verified, 'hashes'> {
  let bytes: Uint8Array;
  try {
    const found = statSync(file);
    if (!found.isFile()) return failed(file, 'unreadable', 'this is no file.');
    if (found.size > LARGEST) return failed(file, 'no job file', `larger than ${LARGEST / 1024 / 1024}\u2009MB.`);
    bytes = readFileSync(file);
  } catch (error) {
    return failed(file, 'unreadable', because(error));
  }
  return { file, ...verifier.verify(bytes) };
}

const because = (error: unknown): string => {
  const { code } = error as NodeJS.ErrnoException;
  if (code === 'ENOENT') return 'there is no such file.';
  if (code === 'EACCES') return 'it may not be read.';
  return error instanceof Error ? `${error.message}.` : String(error);
};
