/** Photos: kept without what a camera writes beside them, shown on the calls that name them and on no other. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { NoRight, NotFound } from '../../engine/desk/index.ts';
import { plainJpeg } from '../../engine/desk/photo.ts';
import { TO_READINGS } from '../people.ts';
import { Shop } from './shop.ts';

const ascii = (text: string): number[] => [...new TextEncoder().encode(text)];
const segment = (marker: number, body: readonly number[]): number[] => [0xff, marker, 0, body.length + 2, ...body];
const START = [0xff, 0xd8];
const END = [0xff, 0xd9];
const JFIF = segment(0xe0, ascii('JFIF'));
const TABLES = segment(0xdb, [1, 2, 3]);
/** Scan data with a stuffed byte and a restart, which are no segments. */
const SCAN = [...segment(0xda, [9]), 7, 0xff, 0x00, 8, 0xff, 0xd0, 9];
const PLAIN = [...START, ...JFIF, ...TABLES, ...SCAN, ...END];
const TAKEN = [
  ...[...START, ...JFIF, ...segment(0xe1, ascii('Exif GPS 47.5 N')), ...segment(0xed, ascii('IPTC'))],
  ...[...segment(0xfe, ascii('a comment')), 0xff, ...TABLES, ...SCAN, ...END, ...ascii('a second picture behind it')],
];
const jpeg = (bytes: readonly number[]): Uint8Array => Uint8Array.from(bytes);

describe('a JPEG', () => {
  test('loses place, camera, comment, and what stands behind its end; the picture itself stays byte for byte', () => {
    expect([...(plainJpeg(jpeg(TAKEN)) ?? [])]).toEqual(PLAIN);
    expect([...(plainJpeg(jpeg(PLAIN)) ?? [])]).toEqual(PLAIN);
  });
  test.each([
    ['nothing', []],
    ['a PNG', [0x89, 0x50, 0x4e, 0x47]],
    ['cut off', PLAIN.slice(0, -2)],
    ['without a picture', [...START, ...JFIF, ...END]],
    ['a segment longer than the file', [...START, 0xff, 0xe0, 0xff, 0xff, 1]],
    ['a segment of no length', [...START, 0xff, 0xe0, 0, 1, ...SCAN, ...END]],
    ['something between segments', [...START, 1, ...SCAN, ...END]],
  ])('that is none is not kept: %s', (_, bytes) => {
    expect(plainJpeg(jpeg(bytes))).toBeNull();
  });
});

describe('a photo of an answer', () => {
  let shop: Shop;
  beforeAll(async () => {
    shop = await Shop.open();
  });
  afterAll(() => shop.close());

  test('stands on its line of the ticket, and is had from that call alone', async () => {
    const [job, other] = [await shop.call(), await shop.call()];
    await shop.types(job, TO_READINGS.slice(0, -1));
    const hash = (await shop.desk.savePhoto('ines', job, jpeg(TAKEN))) ?? '';
    await expect(shop.desk.photo('ines', job, hash)).rejects.toThrow(NotFound);
    const { prompt } = (await shop.desk.look('ines', job)) ?? {};
    const photo = prompt.parts.find((part) => part.kind === 'photo')?.key ?? '';
    const parts = { ok: ['done'], [photo]: hash };
    const turn = await shop.desk.reply('ines', job, { kind: 'answer', client: 'a', seq: prompt.seq, parts });
    expect(turn.refusal).toBeNull();
    expect(turn.view.ticket.findLast((line) => line.kind === 'answered')?.photos).toEqual([hash]);
    expect([...(await shop.desk.photo('ruth', job, hash))]).toEqual(PLAIN);
    await expect(shop.desk.photo('ines', other, hash)).rejects.toThrow(NotFound);
    await expect(shop.desk.photo('tomas', job, hash)).rejects.toThrow(NoRight);
    await expect(shop.desk.savePhoto('tomas', job, jpeg(TAKEN))).rejects.toThrow(NoRight);
    expect(await shop.desk.savePhoto('ines', job, jpeg([1]))).toBeNull();
  });

  test('sent again with the mark that it travelled without contact, what was kept at first still counts', async () => {
    const job = await shop.call();
    await shop.types(job, TO_READINGS.slice(0, 4));
    const { prompt } = await shop.desk.look('ines', job);
    const reply = { kind: 'answer' as const, client: 'lock', seq: prompt.seq, parts: { ok: ['yes'] } };
    const first = await shop.desk.reply('ines', job, reply);
    const again = await shop.desk.reply('ines', job, { ...reply, offline: true });
    expect([first.refusal, again.refusal]).toEqual([null, null]);
    expect(again.entries).toEqual(first.entries);
    expect((await shop.store.read(job)).entries.filter((e) => e.client === 'lock')).toHaveLength(1);
  });
});
