/** What every database behind the port has to do. Run on each real one through a ground of its own. */
import { beforeEach, describe, expect, test } from 'vitest';
import { verifyChain, verifyText } from '../../engine/chain.ts';
import type { Entry } from '../../engine/schema.ts';
import { Damaged, NotKept, type Store } from '../../engine/store/port.ts';
import { type Ground, onGround } from './ground.ts';
import { shopContract } from './shop-contract.ts';
import { record, type Written, written } from './written.ts';

export function storeContract(name: string, makeGround: () => Promise<Ground>): void {
  describe(`the store on ${name}`, () => {
    const { open, close, sql } = onGround(makeGround);
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    /** Opens a job and notes something on it. */
    const begin = async (job: string, entries = 2): Promise<Written> => {
      const whole = record(job, entries);
      await store.create(job, whole.entries, whole.texts);
      return whole;
    };
    const lastOf = (entries: readonly Entry[]): Entry => {
      const last = entries.at(-1);
      if (!last) throw new Error('no entry');
      return last;
    };

    describe('a record', () => {
      test('comes back as it was given, to the byte, after the store is opened again', async () => {
        const { entries, texts } = await begin('job', 3);
        const more = written('job', entries.at(-1));
        expect(await store.append('job', 3, more.entries, more.texts)).toBe('kept');
        const given = { entries: [...entries, ...more.entries], texts: [...texts, ...more.texts] };
        for (const reader of [store, await open()]) {
          const back = await reader.read('job');
          expect(JSON.stringify(back)).toBe(JSON.stringify(given));
          expect(verifyChain(back.entries)).toEqual({ ok: true });
        }
      });

      test.each([
        ['µF, Ω, thin\u2009space, ≥, “quoted”'],
        ['e\u0301 is not é; 漢字; עברית; 🧰🪛'],
        ['a NUL \0, a bell \x07, CR LF \r\n, a line separator \u2028'],
        ['half a pair \ud83d of a surrogate'],
        [`'); drop table entry; -- ? :name @name $1`],
        [''],
        ['x'.repeat(10_000)],
      ])('keeps any words a person types: %j', async (words) => {
        const { entries, texts } = written('job', undefined, { words });
        await store.create('job', entries, texts);
        const back = await store.read('job');
        expect(back.texts).toEqual(texts);
        const [entry, row] = [back.entries[0], back.texts[0]];
        expect(entry?.kind === 'opened' && row && verifyText(entry.body.title, row)).toBe(true);
      });

      test('keeps each in its own job', async () => {
        const [a, b] = [await begin('a'), await begin('b')];
        expect(await store.read('a')).toEqual(a);
        expect(await store.read('b')).toEqual(b);
      });

      test('is empty for a job that does not exist, and can’t be written on', async () => {
        const { entries, texts } = written('job', undefined);
        expect(await store.read('job')).toEqual({ entries: [], texts: [] });
        await expect(store.append('job', 0, entries, texts)).rejects.toThrow('no job job');
      });

      test('is not opened twice', async () => {
        const before = await begin('job');
        const second = record('job', 1);
        await expect(store.create('job', second.entries, second.texts)).rejects.toThrow();
        expect(await store.read('job')).toEqual(before);
      });

      test('is read on from any entry, with the words', async () => {
        const { entries } = await begin('job', 2);
        const one = written('job', entries.at(-1));
        const two = written('job', one.entries.at(-1));
        const both = { entries: [...one.entries, ...two.entries], texts: [...one.texts, ...two.texts] };
        await store.append('job', 2, both.entries, both.texts);
        expect(await store.readAfter('job', 2)).toEqual(both);
        const last = await store.readAfter('job', 3);
        expect(last.entries).toEqual(two.entries);
        expect(last.texts).toEqual(expect.arrayContaining(two.texts));
        expect(await store.readAfter('job', 4)).toEqual({ entries: [], texts: [] });
      });

      test('is found by the client id of the reply, in its own job only', async () => {
        const a = await begin('a');
        await begin('b');
        const reply = written('a', a.entries.at(-1), { client: 'again' });
        await store.append('a', 2, reply.entries, reply.texts);
        expect(await store.byClient('a', 'again')).toEqual(reply.entries);
        expect(await store.byClient('b', 'again')).toEqual([]);
        expect(await store.byClient('a', 'never')).toEqual([]);
      });

      test('has its line among all jobs, the one that grew last first', async () => {
        expect(await store.jobs()).toEqual([]);
        const a = await begin('a', 2);
        const b = await begin('b', 3);
        const row = (job: string, { entries }: Written) => {
          const { seq, at } = lastOf(entries);
          return { job, lastSeq: seq, updated: at };
        };
        expect(await store.jobs()).toEqual([row('b', b), row('a', a)]);
        let last = lastOf(a.entries);
        for (let i = 0; i < 5; i++) {
          const next = written('a', last);
          await store.append('a', last.seq, next.entries, next.texts);
          last = lastOf(next.entries);
        }
        expect(await store.jobs()).toEqual([{ job: 'a', lastSeq: 7, updated: last.at }, row('b', b)]);
      });
    });

    describe('an append', () => {
      test('that expects another end is a conflict and leaves nothing', async () => {
        const { entries, texts } = await begin('job', 2);
        const next = written('job', entries.at(-1));
        for (const expected of [0, 1, 3]) {
          const elsewhere = next.entries.map((e) => ({ ...e, seq: expected + 1 }));
          expect(await store.append('job', expected, elsewhere, next.texts)).toBe('conflict');
        }
        expect(await store.read('job')).toEqual({ entries, texts });
        expect(await store.append('job', 2, next.entries, next.texts)).toBe('kept');
      });

      test('of many at once on one job: one wins, and the record has no gap', async () => {
        const { entries } = await begin('job', 1);
        const rivals = Array.from({ length: 40 }, (_, i) => written('job', entries[0], { by: `p${i}` }));
        const results = await Promise.all(rivals.map((r) => store.append('job', 1, r.entries, r.texts)));
        expect(results.filter((r) => r === 'kept')).toHaveLength(1);
        const back = await store.read('job');
        expect(back.entries[1]).toEqual(rivals[results.indexOf('kept')]?.entries[0]);
        expect(back.entries).toHaveLength(2);
        expect(back.texts).toHaveLength(2);
      });

      test('of many at once on many jobs, from two connections: all are kept, each chain verifies', async () => {
        const other = await open();
        const grow = async (job: string, through: Store): Promise<void> => {
          let next = written(job, undefined);
          await through.create(job, next.entries, next.texts);
          for (let seq = 1; seq < 10; seq++) {
            next = written(job, next.entries[0]);
            expect(await through.append(job, seq, next.entries, next.texts)).toBe('kept');
          }
        };
        const jobs = Array.from({ length: 60 }, (_, i) => `job-${i}`);
        await Promise.all(jobs.map((job, i) => grow(job, i % 2 === 0 ? store : other)));
        for (const job of jobs) {
          const { entries, texts } = await store.read(job);
          expect([entries.length, texts.length, verifyChain(entries)]).toEqual([10, 10, { ok: true }]);
        }
      });

      test('through one connection is found through the other, whose last look found nothing new', async () => {
        const other = await open();
        let { entries } = await begin('job', 1);
        for (let seq = 1; seq < 12; seq++) {
          // Each looks at where it knows the record to end; one writes, then the other, and again the other.
          for (const one of [store, other]) expect((await one.readAfter('job', seq)).entries).toEqual([]);
          const next = written('job', entries[0]);
          const writes = seq % 3 === 0 ? other : store;
          expect(await writes.append('job', seq, next.entries, next.texts)).toBe('kept');
          for (const one of [other, store]) expect(await one.readAfter('job', seq)).toEqual(next);
          ({ entries } = next);
        }
        const last = written('job', entries[0]);
        const both = [store, other].map((one) =>
          one.append('job', 12, last.entries, last.texts).catch(() => 'conflict'),
        );
        expect((await Promise.all(both)).sort()).toEqual(['conflict', 'kept']);
        for (const one of [store, other]) expect((await one.readAfter('job', 12)).entries).toEqual(last.entries);
      });

      test('that is a bug takes nobody with it, and none of it stays', async () => {
        const [a, b, c] = [await begin('a'), await begin('b'), await begin('c')];
        const good = [written('a', a.entries.at(-1)), written('c', c.entries.at(-1))] as const;
        const bad = written('b', b.entries.at(-1));
        const same = [...bad.texts, ...bad.texts];
        const results = await Promise.allSettled([
          store.append('a', 2, good[0].entries, good[0].texts),
          store.append('b', 2, bad.entries, same),
          store.append('b', 1, bad.entries, bad.texts),
          store.append('b', 2, good[0].entries, []),
          store.append('c', 2, good[1].entries, good[1].texts),
        ]);
        expect(results.map((r) => (r.status === 'fulfilled' ? r.value : 'bug'))).toEqual([
          'kept',
          'bug',
          'conflict',
          'bug',
          'kept',
        ]);
        for (const r of results) if (r.status === 'rejected') expect(r.reason).not.toBeInstanceOf(NotKept);
        expect(await store.read('b')).toEqual(b);
        expect((await store.read('a')).entries).toHaveLength(3);
        expect((await store.read('c')).entries).toHaveLength(3);
      });

      test('of entries that don’t follow each other is a bug', async () => {
        const { entries } = await begin('job', 1);
        const two = written('job', entries[0]);
        const three = written('job', two.entries[0]);
        await expect(store.append('job', 1, three.entries, [])).rejects.toThrow("can't follow");
        await expect(store.append('job', 1, [...three.entries, ...two.entries], [])).rejects.toThrow("can't follow");
        expect((await store.read('job')).entries).toEqual(entries);
      });
    });

    describe('the database itself', () => {
      test.each([
        `update entry set body = '{}' where seq = 1`,
        'update entry set seq = 9 where seq = 2',
        'delete from entry where seq = 2',
        'delete from entry',
        'delete from job',
        `update words set text = '"other"'`,
        `insert into entry select job, 7, v, kind, "by", at, said, client, body, prev, hash from entry where seq = 2`,
        `insert into entry select job, 2, v, kind, "by", at, said, client, body, prev, hash from entry where seq = 1`,
      ])('refuses: %s', async (statement) => {
        const before = await begin('job', 2);
        await expect(sql(statement)).rejects.toThrow();
        expect(await store.read('job')).toEqual(before);
      });

      test('lets words be removed: the chain still verifies', async () => {
        const { entries } = await begin('job', 2);
        await sql('delete from words');
        expect(await store.read('job')).toEqual({ entries, texts: [] });
        expect(verifyChain((await store.read('job')).entries)).toEqual({ ok: true });
      });
    });

    describe('a watcher', () => {
      test('hears each entry once, in order, when it can already be read', async () => {
        const heard: string[] = [];
        const reads: Promise<void>[] = [];
        const other = await open();
        store.watch((job, entry) => {
          heard.push(`${job} ${entry.seq}`);
          reads.push(other.read(job).then(({ entries }) => expect(entries).toContainEqual(entry)));
        });
        const a = await begin('a', 2);
        const next = [written('a', a.entries.at(-1)), written('a', a.entries.at(-1))] as const;
        const done = store.append('a', 2, next[0].entries, next[0].texts).then(() => heard.length);
        await Promise.all([store.append('a', 2, next[1].entries, next[1].texts), begin('b', 1)]);
        expect(heard).toEqual(['a 1', 'a 2', 'a 3', 'b 1']);
        // Told before the one who wrote goes on.
        expect(await done).toBeGreaterThanOrEqual(3);
        await Promise.all(reads);
        expect(reads).toHaveLength(4);
      });

      test('hears nothing more after it left, and others go on hearing', async () => {
        const [gone, stays]: [number[], number[]] = [[], []];
        const leave = store.watch((_, e) => gone.push(e.seq));
        store.watch((_, e) => {
          stays.push(e.seq);
          leave();
        });
        await begin('a', 1);
        await begin('b', 1);
        expect([gone, stays]).toEqual([[1], [1, 1]]);
      });
    });

    test('a watcher that throws takes nothing from the others, and its bug surfaces', async () => {
      const usual = process.listeners('uncaughtException');
      process.removeAllListeners('uncaughtException');
      const surfaced = new Promise((resolve) => process.once('uncaughtException', resolve));
      const heard: number[] = [];
      store.watch(() => {
        throw new Error('a bug of the watcher');
      });
      store.watch((_, e) => heard.push(e.seq));
      await begin('job', 1);
      expect(String(await surfaced)).toBe('Error: a bug of the watcher');
      for (const listener of usual) process.on('uncaughtException', listener);
      expect(heard).toEqual([1]);
    });

    test('closing keeps what waits', async () => {
      const { entries, texts } = record('job', 2);
      const waits = store.create('job', entries, texts);
      await close(store);
      await waits;
      expect(await (await open()).read('job')).toEqual({ entries, texts });
    });

    test('the errors of the port are told apart', () => {
      expect(new Damaged('x', 'job', 3)).toMatchObject({ job: 'job', seq: 3, message: 'x (job job, entry 3)' });
      expect(new Damaged('x')).not.toBeInstanceOf(NotKept);
    });
  });
  shopContract(name, makeGround);
}
