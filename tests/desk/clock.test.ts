/** The machine's clock set back, while the server runs and while it doesn't. Real time is handed in. */
import { setTimeout } from 'node:timers/promises';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { verifyChain } from '../../engine/chain.ts';
import { clockFor, steadyClock, type Ticks } from '../../engine/desk/clock.ts';
import { createDesk, type Desk, randomHex } from '../../engine/desk/index.ts';
import { SHELF } from '../../flows/index.ts';
import { TO_READINGS } from '../people.ts';
import { Shop } from './shop.ts';

const MINUTE = 60_000;
const START = Date.parse('2026-07-14T15:00:00.000Z');
/** What the wall says, and what has really passed. */
let time: { wall: number; passed: number };
const ticks: Ticks = { wall: () => time.wall, passed: () => time.passed };
const later = (minutes: number): void => {
  time.wall += minutes * MINUTE;
  time.passed += minutes * MINUTE;
};
let shop: Shop;
beforeAll(async () => {
  shop = await Shop.open();
});
afterAll(() => shop.close());
let week = 0;
beforeEach(() => {
  time = { wall: START + week++ * 7 * 24 * 60 * MINUTE, passed: 5_000 };
});

const deskBy = (clock: () => Date): Desk => createDesk({ store: shop.store, shelf: SHELF, clock, random: randomHex });
const state = async (desk: Desk, job: string): Promise<string | undefined> =>
  (await desk.look('ines', job)).prompt.isolation[0]?.state;
async function types(desk: Desk, job: string, lines: readonly string[]): Promise<void> {
  for (const text of lines) {
    const { seq } = (await desk.look('ines', job)).prompt;
    const { refusal } = await desk.reply('ines', job, { kind: 'text', client: shop.client(), seq, text });
    expect(refusal, text).toBeNull();
  }
}
async function proved(desk: Desk): Promise<string> {
  const { view } = await desk.open('dana', { title: 'Warm air', assign: 'ines', client: shop.client() });
  await types(desk, view.job, TO_READINGS);
  expect(await state(desk, view.job)).toBe('proved');
  return view.job;
}
const times = async (job: string): Promise<string[]> => (await shop.store.read(job)).entries.map((e) => e.at);

describe('given a proof of dead and a clock that is set back two hours', () => {
  test('it is too old after its thirty real minutes, and the record never goes back', async () => {
    const desk = deskBy(steadyClock(0, ticks));
    const job = await proved(desk);
    time.wall -= 120 * MINUTE;
    later(29);
    expect(await state(desk, job)).toBe('proved');
    later(2);
    expect(await state(desk, job)).not.toBe('proved');
    await types(desk, job, ['note the clock was wrong']);
    const entries = (await shop.store.read(job)).entries;
    expect(entries.filter((e) => e.kind === 'voided').map((e) => e.body.reason)).toEqual(['age']);
    expect(await times(job)).toEqual([...(await times(job))].sort());
    expect(verifyChain(entries)).toEqual({ ok: true });
  });

  test('while the server was down, then nothing that was proved before counts', async () => {
    const job = await proved(deskBy(await clockFor(shop.store, ticks)));
    time.wall -= 120 * MINUTE;
    const after = deskBy(await clockFor(shop.store, ticks));
    expect(await state(after, job)).not.toBe('proved');
  });

  test('while it runs, and then it is started anew: what the first clock knew to be too old stays so', async () => {
    const first = await clockFor(shop.store, ticks);
    const job = await proved(deskBy(first));
    later(31);
    expect(await state(deskBy(first), job)).not.toBe('proved');
    await setTimeout(10);
    time.wall -= 20 * MINUTE;
    const after = deskBy(await clockFor(shop.store, ticks));
    expect(await state(after, job)).not.toBe('proved');
  });

  test('then a process that was started before it reckons with the later time of one started after', async () => {
    const first = await clockFor(shop.store, ticks);
    first();
    await setTimeout(10);
    time.wall -= 120 * MINUTE;
    later(1);
    const second = await clockFor(shop.store, ticks);
    expect(second().getTime()).toBeGreaterThan(first().getTime() + 20 * 60 * MINUTE);
    const job = await proved(deskBy(second));
    later(31);
    // As the timer of a server that nobody writes to does.
    for (const clock of [second, first]) {
      clock();
      await setTimeout(10);
    }
    expect(await state(deskBy(first), job)).not.toBe('proved');
  });

  test('and two processes, then what one of them proves by the later time of the other grows old for both', async () => {
    const first = await clockFor(shop.store, ticks);
    first();
    await setTimeout(10);
    time.wall -= 31 * MINUTE;
    const second = await clockFor(shop.store, ticks);
    const { view } = await deskBy(second).open('dana', { title: 'Warm air', assign: 'ines', client: shop.client() });
    const desk = deskBy(first);
    // Behind the record at first, and then behind no more.
    await types(desk, view.job, TO_READINGS.slice(0, 1));
    const ticking = async (minutes: number): Promise<void> => {
      later(minutes);
      for (const clock of [first, second, first]) {
        clock();
        await setTimeout(10);
      }
    };
    await ticking(1);
    await types(desk, view.job, TO_READINGS.slice(1));
    expect(await state(desk, view.job)).toBe('proved');

    await ticking(31);
    expect(await state(deskBy(second), view.job)).not.toBe('proved');
  });

  test('it is set on by a day once, and not again at each start; the time between two starts is counted', async () => {
    const first = await clockFor(shop.store, ticks);
    await proved(deskBy(first));
    await setTimeout(10);
    time.wall -= 120 * MINUTE;
    const starts: number[] = [];
    for (let i = 0; i < 4; i++) {
      const clock = await clockFor(shop.store, ticks);
      starts.push(clock().getTime());
      await setTimeout(10);
      later(10);
    }
    expect(starts.map((at) => (at - (starts[0] ?? 0)) / MINUTE)).toEqual([0, 10, 20, 30]);
    expect((starts[0] ?? 0) - time.wall).toBeGreaterThan(24 * 60 * MINUTE);
    // And set back once more between two starts: again nobody knows how long.
    time.wall -= 120 * MINUTE;
    const again = (await clockFor(shop.store, ticks))().getTime();
    expect((again - (starts[3] ?? 0)) / MINUTE).toBeGreaterThanOrEqual(24 * 60);
  });

  test('by what a time server puts right, then it stands as long as it would have', async () => {
    const job = await proved(deskBy(await clockFor(shop.store, ticks)));
    time.wall -= MINUTE;
    const after = deskBy(await clockFor(shop.store, ticks));
    expect(await state(after, job)).toBe('proved');
    later(31);
    expect(await state(after, job)).not.toBe('proved');
  });
});

test('where nobody sets it, it is the machine’s clock', () => {
  const clock = steadyClock(0, ticks);
  later(3);
  expect(clock()).toEqual(new Date(time.wall));
  time.wall += 60 * MINUTE;
  expect(clock()).toEqual(new Date(time.wall));
});

test('a desk whose clock is behind the record goes on from the record, so that what was proved there grows old here too', async () => {
  const [ahead, behind] = [deskBy(() => new Date(time.wall + 90_000)), deskBy(() => new Date(time.wall))];
  const job = await proved(ahead);
  expect(await state(behind, job)).toBe('proved');
  later(30.5);
  expect(await state(behind, job)).not.toBe('proved');
});
