/** The part of the contract that is about which jobs name a photo, and when it goes. */
import { beforeEach, describe, expect, test } from 'vitest';
import type { Entry } from '../../engine/schema.ts';
import { checkShop } from '../../engine/store/check.ts';
import { copyShop } from '../../engine/store/copy.ts';
import type { Store } from '../../engine/store/port.ts';
import { type Ground, onGround } from './ground.ts';
import { pictured, record } from './written.ts';

export function photoContract(name: string, makeGround: () => Promise<Ground>): void {
  describe(`photos of jobs in the store on ${name}`, () => {
    const { open, close, sql } = onGround(makeGround);
    let store: Store;
    let hash: string;
    beforeEach(async () => {
      store = await open();
      hash = await store.savePhoto(Buffer.from('a photo of two houses'));
    });
    const lastOf = async (job: string): Promise<Entry> => {
      const last = (await store.read(job)).entries.at(-1);
      if (!last) throw new Error('no entry');
      return last;
    };
    const names = async (job: string, ...hashes: string[]): Promise<void> => {
      const last = await lastOf(job);
      expect(await store.append(job, last.seq, pictured(job, last, ...hashes), [])).toBe('kept');
    };
    const begin = async (job: string, ...hashes: string[]): Promise<void> => {
      const { entries, texts } = record(job, 1);
      await store.create(job, entries, texts);
      await names(job, ...hashes);
    };
    const isThere = async (of = hash, at = store): Promise<boolean> => (await at.photo(of)) !== null;

    test.each([[['a', 'b', 'c']], [['c', 'a', 'b']]])(
      'a photo that several jobs name goes with the last of them: %j',
      async (order) => {
        for (const job of order.toSorted()) await begin(job, hash);
        const seen: boolean[] = [];
        for (const job of order) {
          await store.forget({ job });
          seen.push(await isThere());
        }
        expect(seen).toEqual([true, true, false]);
      },
    );

    test('of a batch of appends each is written down for its own job', async () => {
      const other = await store.savePhoto(Buffer.from('another'));
      const jobs = ['a', 'b', 'c', 'd'];
      for (const job of jobs) await store.create(job, record(job, 1).entries, []);
      await Promise.all(jobs.map((job) => (job === 'd' ? names(job, other) : names(job, hash, other))));
      await names('a', hash);
      for (const job of ['a', 'b', 'c']) {
        expect([await isThere(), await isThere(other)]).toEqual([true, true]);
        await store.forget({ job });
      }
      expect([await isThere(), await isThere(other)]).toEqual([false, true]);
      await store.forget({ job: 'd' });
      expect(await isThere(other)).toBe(false);
    });

    test('a job that goes on after it was forgotten, and names the photo anew, counts again', async () => {
      for (const job of ['a', 'b']) await begin(job, hash);
      await store.forget({ job: 'a' });
      await names('a', hash);
      await store.forget({ job: 'b' });
      expect(await isThere()).toBe(true);
      await store.forget({ job: 'a' });
      expect(await isThere()).toBe(false);
    });

    test('an append that is refused leaves nothing that holds a photo', async () => {
      await begin('a', hash);
      await store.create('b', record('b', 2).entries, []);
      const late = pictured('b', { ...(await lastOf('b')), seq: 1 }, hash);
      expect(await store.append('b', 1, late, [])).toBe('conflict');
      await store.forget({ job: 'a' });
      expect(await isThere()).toBe(false);
    });

    test('in a copy, what was forgotten before stays so', async () => {
      for (const job of ['a', 'b']) await begin(job, hash);
      await store.forget({ job: 'a' });
      const ground = await makeGround();
      const copy = await ground.open();
      try {
        await copyShop(store, copy);
        expect(await isThere(hash, copy)).toBe(true);
        await copy.forget({ job: 'b' });
        expect(await isThere(hash, copy)).toBe(false);
      } finally {
        await copy.close();
        await ground.remove();
      }
    });

    test('of a shop of an earlier version, what its jobs name is looked up once, whatever an entry of it says', async () => {
      for (const job of ['a', 'b']) await begin(job, hash);
      const alone = await store.savePhoto(Buffer.from('of c alone'));
      await begin('c', alone, hash);
      await begin('d');
      await sql(`insert into entry (job, seq, v, kind, "by", at, body, prev, hash)
        select job, 3, v, kind, "by", at, '{"kind":"photo"', prev, hash from entry
        where seq = 2 and job = (select key from job where id = 'd')`);
      await close(store);
      await sql('drop table photo_of_job');
      await sql(`delete from kysely_migration where name like '%-photos-of-jobs'`);
      await sql(`delete from meta where key = 'photos'`);
      store = await open();
      const seen: boolean[][] = [];
      for (const job of ['b', 'c', 'a']) {
        await store.forget({ job });
        seen.push([await isThere(), await isThere(alone)]);
      }
      expect(seen).toEqual([
        [true, true],
        [true, false],
        [false, false],
      ]);
      expect((await checkShop(store)).trouble).toEqual([expect.stringContaining('(job d, entry 3)')]);
    });
  });
}
