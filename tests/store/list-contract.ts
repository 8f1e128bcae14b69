/** The part of the contract that is about what may be thrown away or removed: the list, words and people, photos. */
import { setImmediate } from 'node:timers/promises';
import { beforeEach, describe, expect, test } from 'vitest';
import { GENESIS, seal, textRef, verifyChain } from '../../engine/chain.ts';
import { checkShop } from '../../engine/store/check.ts';
import type { Store } from '../../engine/store/port.ts';
import { beginningsOf } from '../../engine/store/sought.ts';
import { type Ground, onGround } from './ground.ts';
import { record, type Written, written } from './written.ts';

export function listContract(name: string, makeGround: () => Promise<Ground>): void {
  describe(`what can be thrown away, in the store on ${name}`, () => {
    const { open, close, sql } = onGround(makeGround);
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    const begin = async (job: string, entries: number, closed?: boolean): Promise<Written> => {
      const whole = record(job, entries);
      const summary = closed === undefined ? undefined : { closed, card: `the card of ${job}` };
      await store.create(job, whole.entries, whole.texts, summary);
      return whole;
    };
    /** As somebody who may do anything, past the triggers. */
    const past = (statement: string): Promise<unknown> =>
      sql(
        `${name === 'SQLite' ? 'drop trigger if exists entry_is_not_removed' : 'set session_replication_role = replica'}; ${statement}`,
      );
    const line = async (): Promise<[string, number, boolean, string | null][]> =>
      (await store.board(2)).map(({ job, lastSeq, closed, card }) => [job, lastSeq, closed, card]);

    describe('the list of jobs', () => {
      test('holds all that are open and the last that are closed, each with its card, the latest first', async () => {
        for (const [i, job] of ['a', 'b', 'c', 'd', 'e'].entries()) await begin(job, i + 1, job !== 'b');
        expect(await line()).toEqual([
          ['e', 5, true, 'the card of e'],
          ['d', 4, true, 'the card of d'],
          ['b', 2, false, 'the card of b'],
        ]);
      });

      test('has no card for a job that has grown without one, and takes one made of its last entry', async () => {
        const { entries } = await begin('a', 1, true);
        const next = written('a', entries[0]);
        await store.append('a', 1, next.entries, next.texts);
        expect(await line()).toEqual([['a', 2, false, null]]);
        await store.saveSummary('a', 1, { closed: true, card: 'too old' });
        expect(await line()).toEqual([['a', 2, false, null]]);
        await store.saveSummary('a', 2, { closed: true, card: 'made anew' });
        expect(await line()).toEqual([['a', 2, true, 'made anew']]);
      });

      test('gives those that are to be reviewed, page by page, the smaller place first, then what has waited longer', async () => {
        const place: Record<string, number | null> = { a: 7, b: null, c: 3, d: 7, e: 7 };
        for (const [job, review] of Object.entries(place)) {
          const { entries, texts } = record(job, 2);
          await store.create(job, entries, texts, { closed: false, card: `the card of ${job}`, review });
        }
        // Nobody knows what a job without a card needs: it comes first. What a senior has signed is not asked about.
        await begin('f', 1);
        await begin('g', 1, true);
        const first = await store.queue(null, 3);
        expect(first.map(({ job, review, card }) => [job, review, card])).toEqual([
          ['f', 0, null],
          ['c', 3, 'the card of c'],
          ['a', 7, 'the card of a'],
        ]);
        const rest = await store.queue(first.at(-1) ?? null, 3);
        expect(rest.map(({ job }) => job)).toEqual(['d', 'e']);
        expect(await store.queue(rest.at(-1) ?? null, 3)).toEqual([]);
        await store.saveSummary('f', 1, { closed: false, card: 'made anew', review: 5 });
        expect((await store.queue(null, 9)).map(({ job }) => job)).toEqual(['c', 'f', 'a', 'd', 'e']);
        expect((await store.board(0)).find(({ job }) => job === 'f')).toMatchObject({ review: 5 });
      });

      test('counts what ended under what and when; each count again under others; and names the jobs behind it', async () => {
        const ended = (day: string, verdict: string, person: string) => ({
          closed: true,
          card: '{}',
          counts: { day, under: [{ by: 'verdict', what: verdict } as const, { by: 'person', what: person } as const] },
        });
        const make = async (job: string, summary: ReturnType<typeof ended>) => {
          const { entries, texts } = record(job, 1);
          await store.create(job, entries, texts, summary);
        };
        await make('a', ended('2026-07-01', 'weak', 'ines'));
        await make('b', ended('2026-07-02', 'weak', 'tomas'));
        await make('c', ended('2026-07-03', 'good', 'ines'));
        await begin('under way', 1, false);
        const all = { from: '2026-07-01', to: '2026-07-03', also: [] };
        const counted = async (...given: Parameters<Store['counts']>) =>
          (await store.counts(...given)).map(({ what, jobs }) => `${what} ${jobs}`);
        expect(await counted('verdict', all)).toEqual(['weak 2', 'good 1']);
        expect(await counted('verdict', { ...all, from: '2026-07-02' })).toEqual(['good 1', 'weak 1']);
        const hers = { ...all, also: [{ by: 'person', what: 'ines' } as const] };
        expect(await counted('verdict', hers)).toEqual(['good 1', 'weak 1']);
        expect((await store.countedJobs(hers, 9)).map(({ job }) => job)).toEqual(['c', 'a']);
        const both = { ...all, also: [...hers.also, { by: 'verdict', what: 'weak' } as const] };
        expect((await store.countedJobs(both, 9)).map(({ job }) => job)).toEqual(['a']);
        expect((await store.countedJobs(hers, 1)).map(({ job }) => job)).toEqual(['c']);
        expect(await store.countedJobs(all, 9)).toEqual([]);
        // Made anew, begun again, forgotten, emptied: the counts follow the list, and the list alone.
        await store.saveSummary('a', 1, ended('2026-07-01', 'good', 'ines'));
        expect(await counted('verdict', all)).toEqual(['good 2', 'weak 1']);
        await store.saveSummary('b', 1, { closed: false, card: '{}' });
        expect(await counted('verdict', all)).toEqual(['good 2']);
        await store.forget({ job: 'c' });
        expect(await counted('verdict', all)).toEqual(['good 1']);
        await sql('delete from board');
        expect(await counted('verdict', all)).toEqual([]);
      });

      test('a conflict changes no card', async () => {
        const { entries } = await begin('a', 2, false);
        const late = written('a', entries[0]);
        const summary = { closed: true, card: 'of an answer that came too late' };
        expect(await store.append('a', 1, late.entries, late.texts, summary)).toBe('conflict');
        expect(await line()).toEqual([['a', 2, false, 'the card of a']]);
      });

      test('comes back from the records when it was emptied; what ends with a signature is closed', async () => {
        await begin('a', 2, false);
        const b = await begin('b', 3, true);
        const end = b.entries[2];
        const signed = seal([{ kind: 'signed', body: {} }], {
          ...{ job: 'b', seq: 3, prev: end?.hash ?? GENESIS, by: 'ruth', at: end?.at ?? '', said: null, client: 's' },
        });
        await store.append('b', 3, signed, []);
        await close(store);
        await sql('delete from board');
        store = await open();
        expect(await line()).toEqual([
          ['b', 4, true, null],
          ['a', 2, false, null],
        ]);
      });
    });

    describe('forgetting', () => {
      const words = async (job: string): Promise<string[]> => (await store.read(job)).texts.map(({ text }) => text);

      test('a job: its words, photos and card go; its entries stay, and the chain verifies', async () => {
        const hash = await store.savePhoto(Buffer.from('a photo of a house'));
        const other = await store.savePhoto(Buffer.from('a photo of another house'));
        const [a, b] = [await begin('a', 2, false), await begin('b', 2, false)];
        const photo = seal([{ kind: 'answered', body: { place: 'p', parts: { photo: { kind: 'photo', hash } } } }], {
          ...{ job: 'a', seq: 2, prev: a.entries[1]?.hash ?? '', by: 'ines', at: a.entries[1]?.at ?? '' },
          ...{ said: null, client: 'p' },
        });
        await store.append('a', 2, photo, [], { closed: true, card: 'Leak at the Marlows’' });
        const about = (id: string) => ({ id, name: '', version: 1, facts: {}, history: [] });
        const unit = seal([{ kind: 'set', body: { what: 'equipment', equipment: about('u1') } }], {
          ...{ job: 'a', seq: 3, prev: photo[0]?.hash ?? '', by: 'ines', at: photo[0]?.at ?? '' },
          ...{ said: null, client: 'u' },
        });
        await store.append('a', 3, unit, []);
        const sheet = { name: 'The Marlows, 2 Mill Lane', facts: {}, history: [{ job: 'a', herm: '44.9' }] };
        for (const id of ['u1', 'u2']) await store.saveSheet('equipment', id, 0, sheet);
        expect(await store.forget({ job: 'a' })).toBe(2);
        // Whose unit it is and where goes; what was read on it, and every other unit, stays.
        expect(await store.sheet('equipment', 'u1')).toMatchObject({ body: { ...sheet, name: '(removed)' } });
        expect(await store.sheet('equipment', 'u2')).toMatchObject({ version: 1, body: sheet });
        expect([await words('a'), (await words('b')).length]).toEqual([[], 2]);
        const { entries } = await store.read('a');
        expect(entries).toEqual([...a.entries, ...photo, ...unit]);
        expect(verifyChain(entries)).toEqual({ ok: true });
        expect([await store.photo(hash), await store.photo(other)]).toEqual([null, expect.anything()]);
        expect((await line()).find(([job]) => job === 'a')).toEqual(['a', 4, false, null]);
        expect(await store.read('b')).toEqual(b);
        expect((await checkShop(store)).trouble).toEqual([]);
        expect(await store.forget({ job: 'a' })).toBe(0);
        expect(await store.forget({ job: 'nowhere' })).toBe(0);
      });

      test('a job: a photo that another job names as well stays, until that one is forgotten too', async () => {
        const hash = await store.savePhoto(Buffer.from('a photo of two houses'));
        for (const job of ['a', 'b']) {
          const { entries } = await begin(job, 1, false);
          const photo = seal([{ kind: 'answered', body: { place: 'p', parts: { photo: { kind: 'photo', hash } } } }], {
            ...{ job, seq: 1, prev: entries[0]?.hash ?? '', by: 'ines', at: entries[0]?.at ?? '' },
            ...{ said: null, client: 'p' },
          });
          await store.append(job, 1, photo, []);
        }
        await store.forget({ job: 'a' });
        expect(await store.photo(hash)).not.toBeNull();
        await store.forget({ job: 'b' });
        expect(await store.photo(hash)).toBeNull();
      });

      test('each removal is counted, also for a process that only looks on', async () => {
        await begin('a', 1);
        const other = await open();
        const counts = () => Promise.all([store, other].map((one) => one.removals()));
        const seen = [await counts()];
        // The one that removes and the one that doesn't, by turns: neither may answer from what it knew before.
        for (const one of [store, other, other, store]) {
          await one.forget({ job: 'a' });
          await setImmediate();
          seen.push(await counts());
        }
        const [first] = seen[0] ?? [];
        expect(seen.flat().map((n) => n - (first ?? 0))).toEqual([0, 0, 1, 1, 2, 2, 3, 3, 4, 4]);
      });

      test('a person: what they typed on any job, their name, their sign-ins; every chain verifies', async () => {
        const person = {
          id: 'tomas',
          name: 'Tomas Reed',
          initials: 'TR',
          roles: ['technician'],
          certified: true,
        } as const;
        await store.savePerson({ ...person, meter: null, active: true });
        await store.saveLink('l', 'tomas', '2027-01-01T00:00:00.000Z');
        await store.saveSession('s', 'tomas', '2027-01-01T00:00:00.000Z');
        await store.saveSession('s2', 'ines', '2027-01-01T00:00:00.000Z');
        for (const job of ['a', 'b']) {
          const { entries } = await begin(job, 1, false);
          const his = written(job, entries[0], { by: 'tomas', words: 'Typed by Tomas.' });
          await store.append(job, 1, his.entries, his.texts, { closed: false, card: 'Typed by Tomas.' });
        }
        expect(await store.forget({ person: 'tomas' })).toBe(2);
        for (const job of ['a', 'b']) {
          expect(await words(job)).toEqual(['Rust under the fan leads.']);
          expect(verifyChain((await store.read(job)).entries)).toEqual({ ok: true });
        }
        expect(await store.people()).toEqual([
          { ...person, name: '(removed)', initials: '–', certified: false, meter: null, active: false },
        ]);
        const now = '2026-11-01T00:00:00.000Z';
        expect(await Promise.all([store.session('s', now), store.useLink('l', now), store.session('s2', now)])).toEqual(
          [null, null, 'ines'],
        );
        expect((await line()).map(([, , , card]) => card)).toEqual([null, null]);
      });
    });

    describe('what is found by words', () => {
      const named = async (job: string, words: string, by = 'ines'): Promise<void> => {
        const { entries, texts } = written(job, undefined, { words, by });
        await store.create(job, entries, texts, { closed: job === 'c', card: `the card of ${job}` });
      };
      const found = async (typed: string, in_ = store): Promise<string[]> =>
        (await in_.find(beginningsOf(typed), 10)).map(({ job }) => job);
      const units = async (typed: string, in_ = store): Promise<string[]> =>
        (await in_.findUnits(beginningsOf(typed), 10)).map(({ id }) => id);

      test('jobs with each of the words, by their beginnings, without regard to case, accents and the spaces of a number', async () => {
        await named('a', 'Brook Terrace 7: José, (555) 014-2233');
        await named('b', 'Brook Lane 12, no air');
        await named('c', 'Terrace Mill 9');
        const wanted: [string, string[]][] = [
          ['brook', ['a', 'b']],
          ['terr', ['a', 'c']],
          ['BROOK terr', ['a']],
          ['jose', ['a']],
          ['5550142', ['a']],
          ['555 014 22', ['a']],
          ['12', ['b']],
          ['ook', []],
          ['', []],
        ];
        for (const [typed, jobs] of wanted) expect((await found(typed)).sort(), typed).toEqual(jobs);
        expect((await store.find(beginningsOf('brook'), 1)).length).toBe(1);
        expect((await store.find(beginningsOf('terrace mill'), 5))[0]).toMatchObject({
          closed: true,
          card: 'the card of c',
        });
      });

      test('units by their name as it is now', async () => {
        await store.saveSheet('equipment', 'u1', 0, { name: 'Mill Lane 2' });
        await store.saveSheet('truck', 't1', 0, { name: 'Mill van' });
        expect([await units('mill'), await units('van')]).toEqual([['u1'], []]);
        await store.saveSheet('equipment', 'u1', 1, { name: 'Weir Road 2' });
        expect([await units('mill'), await units('weir')]).toEqual([[], ['u1']]);
      });

      test('not any more once it was forgotten: of a job, of a person', async () => {
        await named('a', 'Brook Terrace');
        await named('b', 'Brook Lane', 'dana');
        await store.forget({ job: 'a' });
        expect([await found('terrace'), await found('lane')]).toEqual([[], ['b']]);
        await store.forget({ person: 'dana' });
        expect(await found('lane')).toEqual([]);
      });

      test('again, where the words were looked up by nobody before: a shop of an earlier version', async () => {
        await named('a', 'Brook Terrace');
        await store.saveSheet('equipment', 'u1', 0, { name: 'Mill Lane 2' });
        await sql('delete from sought');
        await sql(`delete from meta where key = 'sought'`);
        expect(await found('brook')).toEqual([]);
        const later = await open();
        expect([await found('brook', later), await units('mill', later)]).toEqual([['a'], ['u1']]);
      });
    });

    test('whoever is signed out is so everywhere, and their links open nothing', async () => {
      for (const [i, who] of ['ines', 'ines', 'ruth'].entries()) {
        await store.saveLink(`l${i}`, who, '2099');
        await store.saveSession(`s${i}`, who, '2099');
      }
      expect(await store.signOut('ines')).toBe(4);
      expect(await Promise.all(['s0', 's1', 's2'].map((s) => store.session(s, '2026')))).toEqual([null, null, 'ruth']);
      expect([await store.useLink('l0', '2026'), await store.useLink('l2', '2026')]).toEqual([null, 'ruth']);
    });

    test('photos are kept by the hash of their bytes, once', async () => {
      const bytes = Uint8Array.from({ length: 5000 }, (_, i) => (i * 7919) % 256);
      const hash = await store.savePhoto(bytes);
      expect(await store.savePhoto(bytes)).toBe(hash);
      expect(hash).toMatch(/^[0-9a-f]{64}$/);
      const other = await open();
      expect(await other.photo(hash)).toEqual(bytes);
      expect(await other.photos()).toEqual([hash]);
      expect(await other.photo('0'.repeat(64))).toBeNull();
    });

    test('a photo whose bytes have changed is found and said; the others are read', async () => {
      const [a, b] = [await store.savePhoto(Buffer.from('one')), await store.savePhoto(Buffer.from('two'))];
      // Taken out and put in as another: no database lets it be changed in place.
      await sql(`delete from photo where hash = '${a}'`);
      await sql(`insert into photo select '${a}', bytes from photo where hash = '${b}'`);
      await expect(store.photo(a)).rejects.toThrow(`The photo ${a.slice(0, 12)} is damaged.`);
      expect(await store.photo(b)).toEqual(new Uint8Array(Buffer.from('two')));
      expect((await checkShop(store)).trouble).toEqual([`The photo ${a.slice(0, 12)} is damaged.`]);
    });

    test('for a copy: of words and photos only those that are named stay, with what was made of them', async () => {
      const [a, b] = [await begin('a', 3, true), await begin('b', 1, true)];
      const photo = await store.savePhoto(Buffer.from('one'));
      await store.savePhoto(Buffer.from('two'));
      const refs = a.texts.map(({ ref }) => ref);
      expect([await store.onlyWords('a', refs), await store.onlyWords('nowhere', [])]).toEqual([0, 0]);
      expect((await line())[0]).toEqual(['a', 3, true, 'the card of a']);
      expect(await store.onlyWords('a', refs.slice(0, 1))).toBe(2);
      expect(await store.read('a')).toEqual({ entries: a.entries, texts: a.texts.slice(0, 1) });
      expect(await store.read('b')).toEqual(b);
      expect((await line()).find(([job]) => job === 'a')).toEqual(['a', 3, false, null]);
      expect([await store.onlyPhotos([photo]), await store.photos()]).toEqual([1, [photo]]);
      expect(await store.onlyPhotos([])).toBe(1);
    });

    test('entries cut off at the end, with their photo, are found and said', async () => {
      const hash = await store.savePhoto(Buffer.from('the plate'));
      for (const job of ['a', 'b', 'c']) {
        const { entries } = await begin(job, 1, false);
        const photo = seal([{ kind: 'answered', body: { place: 'p', parts: { photo: { kind: 'photo', hash } } } }], {
          ...{ job, seq: 1, prev: entries[0]?.hash ?? '', by: 'ines', at: entries[0]?.at ?? '' },
          ...{ said: null, client: 'p' },
        });
        await store.append(job, 1, photo, []);
      }
      await store.forget({ job: 'c' });
      expect((await checkShop(store)).trouble).toEqual([]);
      await past(`delete from photo`);
      await past(`delete from entry where job = (select key from job where id = 'a') and seq = 2`);
      const gone = `The photo ${hash.slice(0, 12)} is missing`;
      // What was forgotten is not missed.
      expect([...(await checkShop(store)).trouble].sort()).toEqual([
        'Entries are missing at the end, 1 of 2 (job a, entry 2).',
        `${gone} (job b, entry 2).`,
      ]);
      await past(`delete from words`);
      await past(`delete from entry where job = (select key from job where id = 'a')`);
      expect((await checkShop(store)).trouble).toEqual(['Entries are missing at the end, 2 of 2 (job a, entry 1).']);
    });

    test('words put in the place of others are found and said', async () => {
      const { texts } = await begin('a', 2);
      const { row } = textRef('Other words.', texts[0]?.salt ?? '', texts[0]?.ref ?? '');
      await sql(`delete from words where ref = '${row.ref}'`);
      await sql(`insert into words (job, ref, seq, salt, text)
        select key, '${row.ref}', 1, '${row.salt}', '"Other words."' from job where id = 'a'`);
      expect((await checkShop(store)).trouble).toEqual(['Words are not those that were typed (job a, entry 1).']);
    });

    test('of many who claim a small fact at once, in two stores, all get the same', async () => {
      const other = await open();
      const got = await Promise.all([store, other, store, other].map((s, i) => s.claim('opening', `job-${i}`)));
      expect(new Set(got).size).toBe(1);
      expect(await store.meta('opening')).toBe(got[0]);
    });

    test('a share opens until it expires or is ended; forgetting its job ends it too', async () => {
      await begin('a', 1, false);
      const share = { job: 'a', audience: 'customer', by: 'ines', made: '2026-07-14', expires: '2026-08-14' } as const;
      await store.saveShare({ ...share, hash: 'one' });
      await store.saveShare({ ...share, hash: 'two', made: '2026-07-15', audience: 'shop' });
      await store.saveShare({ ...share, hash: 'other', job: 'b' });
      const other = await open();
      expect(await other.share('one', '2026-08-13')).toEqual({ ...share, hash: 'one' });
      expect([await other.share('one', '2026-08-14'), await other.share('none', '2026')]).toEqual([null, null]);
      const names = async (job: string, now = '2026') => (await other.shares(job, now)).map(({ hash }) => hash);
      expect([await names('a'), await names('a', '2026-08-14')]).toEqual([['two', 'one'], []]);
      await store.endShare('two');
      expect(await names('a')).toEqual(['one']);
      await store.forget({ job: 'a' });
      expect([await names('a'), await names('b')]).toEqual([[], ['other']]);
      expect(await store.expire('2026-09-01')).toBe(1);
      expect((await store.shop()).shares).toEqual([]);
    });

    test('links and sessions that have expired are cleared, the others stay', async () => {
      const [past, now, future] = ['2026-07-14T14:00:00.000Z', '2026-07-14T15:00:00.000Z', '2026-07-14T16:00:00.000Z'];
      for (const [i, at] of [past, now, future].entries()) {
        await store.saveLink(`l${i}`, 'ines', at);
        await store.saveSession(`s${i}`, 'ines', at);
      }
      expect(await store.expire(now)).toBe(4);
      expect(await store.expire(now)).toBe(0);
      const { links, sessions } = await store.shop();
      expect([links, sessions].map((all) => all.map(({ hash }) => hash))).toEqual([['l2'], ['s2']]);
    });
  });
}
