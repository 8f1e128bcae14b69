import { setImmediate } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { expect, onTestFinished, test } from 'vitest';
import { createEnds } from '../../engine/store/sqlite/ends.ts';
import { sqliteGround } from './sqlite-ground.ts';

async function twoConnections() {
  const ground = await sqliteGround();
  const [mine, theirs] = [new Database(ground.file), new Database(ground.file)];
  onTestFinished(async () => {
    mine.close();
    theirs.close();
    await ground.remove();
  });
  mine.exec('create table if not exists here (n integer)');
  return { ends: createEnds(mine), mine, theirs };
}

test('an end is known until another connection writes, and our own writing makes it no less sure', async () => {
  const { ends, mine, theirs } = await twoConnections();
  ends.set('job', 5, ends.version());
  expect([ends.isEnd('job', 5), ends.isEnd('job', 4), ends.isEnd('other', 5)]).toEqual([true, false, false]);
  mine.exec('insert into here values (1)');
  await setImmediate();
  expect(ends.isEnd('job', 5)).toBe(true);
  theirs.exec('insert into here values (2)');
  await setImmediate();
  expect(ends.isEnd('job', 5)).toBe(false);
});

test('what another connection wrote between a look and what is made of it leaves the end unknown', async () => {
  const { ends, theirs } = await twoConnections();
  const at = ends.version();
  theirs.exec('insert into here values (1)');
  await setImmediate();
  ends.set('job', 5, at);
  expect(ends.isEnd('job', 5)).toBe(false);
  ends.set('job', 6, ends.version());
  expect(ends.isEnd('job', 6)).toBe(true);
});

test('only so many ends are kept, the last ones', async () => {
  const { ends } = await twoConnections();
  for (let i = 0; i <= 1_000; i++) ends.set(`job-${i}`, 1, ends.version());
  expect([ends.isEnd('job-0', 1), ends.isEnd('job-1', 1), ends.isEnd('job-1000', 1)]).toEqual([false, true, true]);
});
