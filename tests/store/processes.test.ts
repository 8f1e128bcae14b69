/** Several processes on one file: killed at any moment, writing at once, opening at once, on a disk that refuses. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { verifyChain } from '../../engine/chain.ts';
import type { Store } from '../../engine/store/index.ts';
import { bundle } from '../process.ts';
import { type SqliteGround, sqliteGround } from './sqlite-ground.ts';
import { record, written } from './written.ts';

let ground: SqliteGround;
let store: Store | undefined;
beforeEach(async () => {
  ground = await sqliteGround();
});

describe('processes of their own', () => {
  let appender: string;
  const children: ChildProcess[] = [];
  beforeAll(async () => {
    appender = await bundle(new URL('./appender.ts', import.meta.url));
  });
  afterEach(async () => {
    for (const child of children.splice(0)) child.kill('SIGKILL');
    await store?.close();
    store = undefined;
    await ground.remove();
  });

  /** A child that waits for its start, and the lines it acknowledges. */
  async function start(who: string, wanted: number, jobs: readonly string[], limit = '') {
    const args = [appender, ground.file, who, String(wanted), ...jobs];
    const child = spawn('bash', ['-c', `${limit} exec "$0" "$@"`, process.execPath, ...args], {
      stdio: ['pipe', 'pipe', 'pipe'],
    });
    children.push(child);
    const lines = createInterface({ input: child.stdout });
    const acknowledged: string[] = [];
    let errors = '';
    child.stderr.on('data', (data) => {
      errors += data;
    });
    const exit = once(child, 'close') as Promise<[number | null, string | null]>;
    await once(lines, 'line');
    const enough = (n: number): Promise<void> =>
      new Promise((resolve) => {
        lines.on('line', (line) => {
          acknowledged.push(line);
          if (acknowledged.length === n) resolve();
        });
        exit.then(() => resolve());
      });
    return { child, acknowledged, exit, enough, errors: () => errors, go: () => child.stdin.write('go\n') };
  }

  const everyLineIsKept = async (lines: readonly string[], jobs: readonly string[]): Promise<void> => {
    const reader = await ground.open();
    const found = new Set<string>();
    for (const job of jobs) {
      const { entries, texts } = await reader.read(job);
      expect(verifyChain(entries)).toEqual({ ok: true });
      expect(texts).toHaveLength(entries.length);
      for (const e of entries) found.add(`${job} ${e.seq} ${e.hash}`);
    }
    await reader.close();
    expect(lines.filter((line) => !found.has(line))).toEqual([]);
  };

  test('killed at any moment: every acknowledged entry is there, each chain verifies', async () => {
    const all: string[] = [];
    const jobs: string[] = [];
    for (let round = 0; round < 10; round++) {
      const mine = Array.from({ length: 6 }, (_, i) => `round-${round}-${i}`);
      jobs.push(...mine);
      const run = await start('ines', 0, mine);
      const enough = run.enough(5 + 23 * round);
      run.go();
      await enough;
      run.child.kill('SIGKILL');
      expect(await run.exit).toEqual([null, 'SIGKILL']);
      expect(run.acknowledged.length).toBeGreaterThan(4);
      all.push(...run.acknowledged);
      await everyLineIsKept(all, jobs);
    }
  }, 120_000);

  test('two that write on one job: no gap, nothing lost, nothing twice', async () => {
    const runs = [await start('ines', 60, ['ours', 'a']), await start('tomas', 60, ['ours', 'b'])];
    // The job they share is there before: only one could open it.
    const first = record('ours', 1);
    store = await ground.open();
    await store.create('ours', first.entries, first.texts);
    const done = runs.map((run) => run.enough(Number.POSITIVE_INFINITY));
    for (const run of runs) run.go();
    await Promise.all(done);
    expect(await Promise.all(runs.map((run) => run.exit))).toEqual(runs.map(() => [0, null]));
    const lines = runs.flatMap((run) => run.acknowledged);
    expect(lines).toHaveLength(240);
    expect(new Set(lines.map((line) => line.split(' ').slice(0, 2).join(' '))).size).toBe(240);
    await everyLineIsKept(lines, ['ours', 'a', 'b']);
    expect(await store.jobs()).toEqual(
      expect.arrayContaining([expect.objectContaining({ job: 'ours', lastSeq: 121 })]),
    );
  }, 60_000);

  test('three that open a new file at one moment all find it in order', async () => {
    const runs = await Promise.all([start('ines', 5, ['a']), start('tomas', 5, ['b']), start('ruth', 5, ['c'])]);
    const done = runs.map((run) => run.enough(5));
    for (const run of runs) run.go();
    await Promise.all(done);
    expect(runs.map((run) => run.errors())).toEqual(['', '', '']);
    await everyLineIsKept(
      runs.flatMap((run) => run.acknowledged),
      ['a', 'b', 'c'],
    );
    expect(runs.map((run) => run.acknowledged.length)).toEqual([5, 5, 5]);
  });

  test('one sees what another wrote, and a conflict where it did not know of it', async () => {
    store = await ground.open();
    const { entries, texts } = record('ours', 1);
    await store.create('ours', entries, texts);
    const run = await start('tomas', 3, ['ours']);
    const done = run.enough(Number.POSITIVE_INFINITY);
    run.go();
    await done;
    const mine = written('ours', entries[0]);
    expect(await store.append('ours', 1, mine.entries, mine.texts)).toBe('conflict');
    expect((await store.readAfter('ours', 1)).entries.map((e) => e.by)).toEqual(['tomas', 'tomas', 'tomas']);
  });

  test('one whose writes the disk refuses ends with NotKept, and what it acknowledged is there', async () => {
    // ulimit -f counts blocks of 1024 bytes: beyond it every write fails, as on a failing disk.
    const run = await start('ines', 0, ['a', 'b', 'c'], 'ulimit -f 300;');
    const done = run.enough(Number.POSITIVE_INFINITY);
    run.go();
    await done;
    expect((await run.exit)[0]).not.toBe(0);
    expect(run.errors()).toContain('NotKept: The disk');
    expect(run.acknowledged.length).toBeGreaterThan(4);
    await everyLineIsKept(run.acknowledged, ['a', 'b', 'c']);
  });
});
