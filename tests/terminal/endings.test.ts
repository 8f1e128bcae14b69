/** Exit codes, one line each on stderr, and nothing but JSON on stdout. */
import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { OwnProcess, Program, run, runAlone } from './program.ts';

vi.setConfig({ testTimeout: 120_000 });

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'nocool-endings-'));
});
afterAll(() => rm(folder, { recursive: true }));
const at = (name: string): string => join(folder, name);

/** A database with one job under way, changed behind the program's back. */
async function changed(name: string, statement: string): Promise<string> {
  const terminal = new Program('--db', at(name));
  await terminal.next();
  await terminal.types('d', 'psc');
  await terminal.end();
  const db = new Database(at(name));
  db.exec(statement);
  db.close();
  return at(name);
}

describe('exit codes', () => {
  test('0: --help, on stdout, with every code', async () => {
    const { code, stdout, stderr } = await run(['--help']);
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(/Exit codes: 0 ended, 2 [\s\S]*3 [\s\S]*4 /);
  });

  test.each<[string, string[], RegExp]>([
    ['an option that there is not', ['--json', '--fly'], /fly/],
    ['a person whom nobody knows', ['--as', 'nobody'], /nobody called "nobody"\. People: Nell/],
    ['a job that there is not', ['--json', '--db', 'new.sqlite', '--job', 'abc'], /sees no job that begins with "abc"/],
  ])('2: %s', async (_, args, words) => {
    const { code, stdout, stderr } = await run(args.map((a) => (a === 'new.sqlite' ? at(a) : a)));
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(words);
    expect(stderr.trimEnd().split('\n')).toHaveLength(2);
  });

  test.each(['', 'file/under.sqlite'])('3: the database can’t be opened (%s)', async (path) => {
    await writeFile(at('file'), '');
    const { code, stdout, stderr } = await run(['--json', '--db', at(path)]);
    expect([code, stdout]).toEqual([3, '']);
    expect(stderr).toMatch(/^.*can’t be opened.*\n$/);
  });

  test('3: what was typed last was not kept, and was said so; once it is kept it is 0', async () => {
    const terminal = new Program('--db', at('busy'));
    await terminal.next();
    const lock = new Database(at('busy'));
    lock.exec('begin immediate');
    expect((await terminal.say('d')).error).toMatch(/locked.*Nothing was kept/);
    lock.exec('rollback');
    await terminal.types('d');
    lock.exec('begin immediate');
    expect((await terminal.say('psc')).error).toMatch(/Nothing was kept/);
    expect(await terminal.end()).toBe(3);
    lock.exec('rollback');
    lock.close();
    const again = new Program('--db', at('busy'));
    expect((await again.next()).prompt.title).toContain('What kind of unit');
    expect(await again.end()).toBe(0);
  });

  test('4: no database at all', async () => {
    await writeFile(at('garbage'), 'no database '.repeat(1000));
    const { code, stdout, stderr } = await run(['--json', '--db', at('garbage')]);
    expect([code, stdout]).toEqual([4, '']);
    expect(stderr).toMatch(/damaged/);
  });

  test('4: an entry that was changed', async () => {
    const file = await changed(
      'changed',
      `drop trigger entry_is_not_changed; update entry set body = substr(body, 1, 9) where seq = 4`,
    );
    const { code, stdout, stderr } = await run(['--db', file], 'd\n');
    expect([code, stdout, stderr.trimEnd().split('\n').length]).toEqual([4, '', 1]);
  });

  test('a reader who goes away ends it without a word', async () => {
    const terminal = new OwnProcess();
    await terminal.next();
    const ended = terminal.leave();
    terminal.set('d').set('psc');
    expect([await ended, terminal.stderr]).toEqual([0, '']);
  });
});

test('a script without --db leaves nothing in the temporary folder', async () => {
  const own = await mkdtemp(at('tmp-'));
  const { code } = await runAlone(['--json'], 'd\n', { TMPDIR: own });
  expect([code, await readdir(own)]).toEqual([0, []]);
});
