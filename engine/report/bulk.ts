/** Many files, one after another: names of files and folders in, what was found of each out. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { LARGEST } from './file.ts';
import type { Trouble, Verified } from './outcome.ts';
import type { Verifier } from './verify.ts';

export interface Of extends Verified {
  readonly file: string;
}

const NOTHING = { job: null, flow: null, entries: 0, removed: 0, key: null };
const failed = (file: string, word: Trouble['word'], says: string): Of => ({
  ...NOTHING,
  file,
  troubles: [{ word, at: null, old: null, now: null, says }],
});

/** Folders stand for every `.json` in them, at any depth. One file at a time is held in memory. */
export function* verifyFiles(verifier: Verifier, paths: readonly string[]): Generator<Of> {
  for (const path of paths) {
    const files = filesAt(path);
    if ('wrong' in files) yield failed(path, 'unreadable', files.wrong);
    else for (const file of files.list) yield verifyFile(verifier, file);
  }
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

function verifyFile(verifier: Verifier, file: string): Of {
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
