/** A job finishes on the version it began on, whatever is published meanwhile. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { createDesk, type Desk, type Turn } from '../../engine/desk/index.ts';
import { TranscriptMismatch } from '../../engine/errors.ts';
import { fingerprint } from '../../engine/fingerprint.ts';
import { openKey } from '../../engine/report/key.ts';
import { wordOf } from '../../engine/report/outcome.ts';
import { createVerifier } from '../../engine/report/verify.ts';
import type { Manual } from '../../engine/vocabulary.ts';
import { Shop } from '../desk/shop.ts';
import { PROVES, TO_FIGURES, TO_READINGS } from '../people.ts';
import { bytesOf, opened, signedBy } from '../report/forge.ts';
import { FIRST, SECOND } from './second.ts';

/** 4.55 µF where 5 µF is printed and no tolerance: out of ±6 %, within ±10 %. */
const NO_TOLERANCE = TO_READINGS.map((line) => line.replace('6% ', ''));
const READINGS = 'herm 44.6 fan 4.55 hf 4.13 case ol';
let shop: Shop;
let chance = 0;
const deskOf = (...shelf: [Manual, ...Manual[]]): Desk =>
  createDesk({
    store: shop.store,
    shelf,
    clock: () => new Date(shop.now),
    random: (n) => (++chance).toString(16).padStart(2 * n, '0'),
  });
async function types(desk: Desk, job: string, ...lines: string[]): Promise<Turn> {
  let turn: Turn | null = null;
  for (const text of lines) {
    const { seq } = (await desk.look('ines', job)).prompt;
    turn = await desk.reply('ines', job, { kind: 'text', client: shop.client(), seq, text });
    if (turn.refusal) throw new Error(`"${text}": ${turn.refusal.text}`);
  }
  if (!turn) throw new Error('nothing was typed');
  return turn;
}
const call = async (desk: Desk): Promise<string> =>
  (await desk.open('dana', { title: 'Warm air', assign: 'ines', client: shop.client() })).view.job;
const fan = ({ entries }: Turn): string | undefined =>
  entries.flatMap((e) => (e.kind === 'concluded' ? e.body.findings.filter((f) => f.name === 'FAN') : []))[0]?.word;
const pinned = async (job: string): Promise<unknown> => (await shop.store.read(job)).entries[0]?.body;

let begunBefore: string;
let begunAfter: string;
beforeAll(async () => {
  shop = await Shop.open();
  const before = deskOf(FIRST);
  begunBefore = await call(before);
  await types(before, begunBefore, ...NO_TOLERANCE);
  const after = deskOf(SECOND, FIRST);
  begunAfter = await call(after);
  await types(after, begunAfter, ...NO_TOLERANCE);
});
afterAll(() => shop?.close());

describe('given a second version on the shelf before the first', () => {
  test('a new job is pinned to the second, one under way to the first', async () => {
    expect(fingerprint(SECOND)).not.toBe(fingerprint(FIRST));
    expect(await pinned(begunBefore)).toMatchObject({ version: FIRST.version, fingerprint: fingerprint(FIRST) });
    expect(await pinned(begunAfter)).toMatchObject({ version: SECOND.version, fingerprint: fingerprint(SECOND) });
  });

  test('the same reading gets the word of each job’s own version, and each file verifies', async () => {
    const desk = deskOf(SECOND, FIRST);
    expect(fan(await types(desk, begunBefore, READINGS))).toBe('fail');
    expect(fan(await types(desk, begunAfter, READINGS))).toBe('conditional pass');
    const key = openKey(`${shop.file}.key`);
    const both = createVerifier([SECOND, FIRST], [key.name]);
    for (const job of [begunBefore, begunAfter]) {
      const file = opened(await desk.exportJob('otto', job));
      expect(both.verify(bytesOf(signedBy(key, file))).troubles).toEqual([]);
      expect(wordOf(both.verify(bytesOf(file)))).toBe('signature missing');
    }
  });

  test('one under way on the first is finished and signed on it, by limits that the second has no more', async () => {
    const desk = deskOf(SECOND, FIRST);
    const { view } = await types(desk, begunBefore, ...TO_FIGURES, PROVES);
    // 241 V at the restart: above the limit of the second.
    expect([view.prompt.kind, view.prompt.verdicts.at(-1)?.title]).toEqual(['finished', 'The repair is proven']);
    const signed = await desk.reply('otto', begunBefore, { kind: 'command', name: 'sign', client: shop.client() });
    expect([signed.refusal, signed.view.prompt.kind]).toEqual([null, 'signed']);
    expect(await pinned(begunBefore)).toMatchObject({ version: FIRST.version });
    const file = opened(await desk.exportJob('otto', begunBefore));
    expect(wordOf(createVerifier([SECOND, FIRST], []).verify(bytesOf(file)))).toBe('signature missing');
  });

  test('taken off the shelf, the first takes only its own jobs with it', async () => {
    const desk = deskOf(SECOND);
    await expect(desk.look('otto', begunBefore)).rejects.toThrow(TranscriptMismatch);
    expect((await desk.look('otto', begunAfter)).prompt.kind).toBeTruthy();
    const file = opened(await deskOf(FIRST).exportJob('otto', begunBefore));
    const words = createVerifier([SECOND], [])
      .verify(bytesOf(file))
      .troubles.map((t) => t.word);
    expect(words).toContain('unknown flow version');
  });
});
