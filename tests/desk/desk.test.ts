/** The desk on a real SQLite file: one way in for every surface, durable, once, and for those who may. */
import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { verifyChain } from '../../engine/chain.ts';
import { createDesk, NoRight, NotFound, NotKept } from '../../engine/desk/index.ts';
import { TranscriptCorrupt, TranscriptMismatch } from '../../engine/errors.ts';
import type { Entry } from '../../engine/schema.ts';
import { SHELF } from '../../flows/index.ts';
import { PEOPLE, TO_READINGS } from '../people.ts';
import { bundle } from '../process.ts';
import { personOf, Shop } from './shop.ts';

let shop: Shop;
beforeEach(async () => {
  shop = await Shop.open();
});
afterEach(() => shop.close());
const kinds = (entries: readonly Entry[]): string[] => entries.map((e) => e.kind);
const record = async (job: string): Promise<Entry[]> => (await shop.store.read(job)).entries;

describe('given a call, when it is opened', () => {
  test('by a technician, then it is theirs; by the dispatcher, then whose she says', async () => {
    const own = await shop.desk.open('ines', { title: 'Warm air', client: 'o1' });
    expect([own.view.title, own.entries.at(-1)?.body]).toEqual(['Warm air', { to: 'ines' }]);
    const sent = await shop.desk.open('dana', { title: 'Hum', assign: 'tomas', client: 'o2' });
    expect([kinds(sent.entries), sent.entries.at(-1)?.body]).toEqual([['opened', 'set', 'assigned'], { to: 'tomas' }]);
    expect(kinds((await shop.desk.open('dana', { title: 'Later', client: 'o3' })).entries)).toEqual(['opened', 'set']);
  });
  test('a technician assigns it to nobody else, and nobody to somebody who isn’t there', async () => {
    await expect(shop.desk.open('ines', { title: 'x', assign: 'tomas', client: 'o1' })).rejects.toThrow(NoRight);
    await expect(shop.desk.open('dana', { title: 'x', assign: 'nobody', client: 'o2' })).rejects.toThrow(NotFound);
    expect(await shop.desk.jobs('otto')).toEqual([]);
  });
  test('twice with the same client id, then it is one job and the same response', async () => {
    const first = await shop.desk.open('dana', { title: 'x', assign: 'ines', client: 'o1' });
    const again = await shop.desk.open('dana', { title: 'x', assign: 'ines', client: 'o1' });
    expect([again.view, (await shop.desk.jobs('dana')).length]).toEqual([first.view, 1]);
  });
});

describe('given a job of Ines', () => {
  test('then another technician sees and answers nothing of it; senior, dispatcher and owner see it', async () => {
    const job = await shop.call();
    await expect(shop.desk.look('tomas', job)).rejects.toThrow(NoRight);
    await expect(shop.desk.reply('tomas', job, await shop.line(job, 'd'))).rejects.toThrow(NoRight);
    await expect(shop.desk.watch('tomas', job, 0, () => {})).rejects.toThrow(NoRight);
    for (const by of ['ines', 'ruth', 'dana', 'otto']) expect((await shop.desk.look(by, job)).job).toBe(job);
    expect((await Promise.all(['ines', 'tomas', 'ruth'].map((by) => shop.desk.jobs(by)))).map((j) => j.length)).toEqual(
      [1, 0, 1],
    );
  });
  test('when somebody outside the job smells smoke, says stop or reports power, then they are heard', async () => {
    const job = await shop.call();
    const said = async (text: string): Promise<string[]> =>
      (await shop.desk.reply('tomas', job, await shop.line(job, text))).entries.map((e) => e.kind);
    expect(await said('note the gate is open')).toEqual(['noted']);
    expect(await said('stop')).toEqual(['paused']);
    expect(await said('I smell smoke')).toEqual(['alarmed']);
    await expect(shop.desk.reply('tomas', job, await shop.line(job, 'go on'))).rejects.toThrow(NoRight);
  });
  test('then the dispatcher answers no question, a senior answers eyes steps and becomes no holder from afar', async () => {
    const job = await shop.call();
    expect((await shop.type(job, 'd', 'dana')).refusal?.code).toBe('no-right');
    expect(kinds((await shop.type(job, 'd', 'ruth')).entries)).toEqual(['answered']);
    await shop.type(job, 'psc');
    expect((await shop.type(job, 'yes', 'ruth')).refusal?.code).toBe('no-right');
  });
  test('when it is handed over, then the next one sees it, takes it, and begins at the first prompt', async () => {
    const job = await shop.call();
    await shop.types(job, [...TO_READINGS, 'hand over tomas']);
    expect((await shop.desk.look('tomas', job)).prompt.kind).toBe('taking-over');
    const turn = await shop.types(job, ['take over'], 'tomas');
    expect([turn.view.prompt.place, turn.view.prompt.holder]).toEqual(['dead:outdoor/fit', 'tomas']);
    expect((await shop.desk.jobs('tomas'))[0]?.assigned).toEqual(['ines', 'tomas']);
  });
  test('then her meter is on the record before her first reading, once, and the board says where it stands', async () => {
    const job = await shop.call();
    await shop.types(job, [...TO_READINGS, 'herm 36.1 fan 5.02 hf 4.4 case ol']);
    const entries = await record(job);
    const meters = entries.filter((e) => e.kind === 'set' && e.body.what === 'meter');
    expect([meters.length, (meters[0]?.seq ?? 99) < (entries.find((e) => e.kind === 'answered')?.seq ?? 0)]).toEqual([
      1,
      true,
    ]);
    expect((await shop.desk.jobs('ruth'))[0]).toMatchObject({
      state: 'under-way',
      verdict: 'The run capacitor is out of its label: replace it',
      isolation: 'Outdoor unit: PROVED DEAD',
      assigned: ['ines'],
    });
  });
  test('when nobody types for 31 minutes, then it isn’t shown as proved, and nothing is written', async () => {
    const job = await shop.call();
    await shop.types(job, TO_READINGS);
    const before = (await record(job)).length;
    shop.now += 31 * 60_000;
    expect((await shop.desk.look('ines', job)).prompt.place).toBe('dead:outdoor/proving');
    expect((await shop.desk.jobs('ruth'))[0]?.isolation).not.toContain('PROVED DEAD');
    expect((await record(job)).length).toBe(before);
  });
  test('when the clock goes back, then the record does not', async () => {
    const job = await shop.call();
    await shop.type(job, 'd');
    shop.now -= 3_600_000;
    await shop.type(job, 'psc');
    const times = (await record(job)).map((e) => e.at);
    expect(times).toEqual([...times].sort());
  });
  test('when somebody is unknown or has left, or there is no such job, then it is not found', async () => {
    const job = await shop.call();
    await shop.store.savePerson(personOf(PEOPLE.tomas, { active: false }));
    for (const by of ['tomas', 'nobody']) await expect(shop.desk.look(by, job)).rejects.toThrow(NotFound);
    await expect(shop.desk.look('ines', 'no-job')).rejects.toThrow(NotFound);
  });
});

describe('given a reply, when it is sent again, then it has one effect and the same response', () => {
  test.each([
    ['an answer', [], 'd'],
    ['words nobody reads', [], 'the thing on the left'],
    ['a command', ['d'], 'senior'],
    ['a reading with a verdict', [...TO_READINGS], 'herm 36.1 fan 5.02 hf 4.4 case ol'],
    ['back with a figure', [...TO_READINGS, 'herm 36.1 fan 5.02 hf 4.4 case ol'], 'back herm 36.2'],
  ])('%s', async (_, before, text) => {
    const job = await shop.call();
    if (before.length > 0) await shop.types(job, before);
    const reply = await shop.line(job, text);
    const first = await shop.desk.reply('ines', job, reply);
    expect(first.entries.length).toBeGreaterThan(0);
    expect(await shop.desk.reply('ines', job, reply)).toEqual(first);
    expect(await (await shop.another()).reply('ines', job, reply)).toEqual(first);
    expect((await record(job)).at(-1)?.seq).toBe(first.entries.at(-1)?.seq);
  });
  test('the same client id of another person is another reply', async () => {
    const job = await shop.call();
    const reply = { kind: 'command', client: 'same', name: 'note', text: 'on my way' } as const;
    await shop.desk.reply('ines', job, reply);
    expect(kinds((await shop.desk.reply('ruth', job, reply)).entries)).toEqual(['noted']);
  });
});

describe('given two at once', () => {
  test('on one desk or two, then one answer is kept, the other is told and shown what stands', async () => {
    const second = await shop.another();
    for (const other of [shop.desk, second]) {
      const job = await shop.call();
      const turns = await Promise.all([
        shop.desk.reply('ines', job, await shop.line(job, 'd')),
        other.reply('ruth', job, await shop.line(job, 'a', 'ruth')),
      ]);
      expect(turns.map((t) => t.refusal?.code ?? 'kept').sort()).toEqual(['kept', 'stale']);
      expect((await record(job)).filter((e) => e.kind === 'answered')).toHaveLength(1);
      expect(verifyChain(await record(job))).toEqual({ ok: true });
    }
  });
  test('ten notes, then all are kept, in one chain', async () => {
    const job = await shop.call();
    const desks = [shop.desk, await shop.another()];
    for (const pair of [0, 2, 4, 6, 8])
      await Promise.all(
        desks.map((desk, i) =>
          desk.reply('ruth', job, {
            kind: 'command',
            client: `n${pair + i}`,
            name: 'note',
            text: `number ${pair + i}`,
          }),
        ),
      );
    expect([kinds(await record(job)).filter((k) => k === 'noted').length, verifyChain(await record(job))]).toEqual([
      10,
      { ok: true },
    ]);
  });
  test('a watcher gets each entry from where it stood on, in order, until it leaves', async () => {
    const job = await shop.call();
    const seen: number[] = [];
    const stop = await shop.desk.watch('ruth', job, 1, (e) => seen.push(e.seq));
    await shop.types(job, ['d', 'psc']);
    stop();
    await shop.type(job, 'yes');
    expect(seen).toEqual([2, 3, 4, 5, 6]);
  });
  test('a process of its own at the same file sees the job, goes on, and is seen', async () => {
    const job = await shop.call();
    await shop.types(job, ['d']);
    const program = await bundle(new URL('./second-desk.ts', import.meta.url));
    const { stdout } = await promisify(execFile)(process.execPath, [program, shop.file, 'ines', job, 'psc']);
    expect(JSON.parse(stdout)).toEqual({ saw: 'round~1/class', now: 'dead:outdoor/fit', refusal: null });
    expect((await shop.desk.look('ines', job)).prompt.place).toBe('dead:outdoor/fit');
    expect((await shop.types(job, ['yes'])).view.prompt.place).toBe('dead:outdoor/means');
  }, 60_000);
});

describe('given trouble', () => {
  test('when the database is locked, then the reply is not kept and not shown as kept; sent again, it is', async () => {
    const job = await shop.call();
    const reply = await shop.line(job, 'd');
    const other = new Database(shop.file);
    other.exec('begin immediate');
    await expect(shop.desk.reply('ines', job, reply)).rejects.toThrow(NotKept);
    expect((await shop.desk.look('ines', job)).prompt.place).toBe('round~1/observation');
    other.exec('rollback');
    other.close();
    expect((await shop.desk.reply('ines', job, reply)).view.prompt.place).toBe('round~1/class');
  });
  test('when the text holds half a surrogate or NUL, then it is kept as far as it is text, and hashes', async () => {
    const job = await shop.call();
    await shop.type(job, 'the \ud800 thing \u0000 here');
    const { entries, texts } = await shop.store.read(job);
    expect([texts.at(-1)?.text, verifyChain(entries)]).toEqual(['the \ufffd thing \ufffd here', { ok: true }]);
  });
  test('when a row was altered, then the record is corrupt; when its manual is not on the shelf, then foreign', async () => {
    const job = await shop.call();
    await shop.type(job, 'd');
    const none = [{ ...SHELF[0], title: 'Another manual' }] as const;
    const elsewhere = createDesk({
      store: shop.store,
      shelf: none,
      clock: () => new Date(shop.now),
      random: () => 'r',
    });
    await expect(elsewhere.look('ines', job)).rejects.toThrow(TranscriptMismatch);
    const db = new Database(shop.file);
    db.exec(`drop trigger entry_is_not_changed; update entry set "by" = 'tomas' where kind = 'answered'`);
    db.close();
    await expect((await shop.another()).look('ines', job)).rejects.toThrow(TranscriptCorrupt);
  });
});
