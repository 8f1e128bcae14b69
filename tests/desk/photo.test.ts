/** Photos: kept without what a camera writes beside them, shown on the calls that name them and on no other. */
import { readFileSync } from 'node:fs';
import { crc32 } from 'node:zlib';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { NoRight, NotFound } from '../../engine/desk/index.ts';
import { drawnAnew } from '../../engine/desk/photo.ts';
import { TO_READINGS } from '../people.ts';
import { Shop } from './shop.ts';

const PHOTO = readFileSync(new URL('../web-chat/pictures/gate.jpg', import.meta.url));
const ascii = (text: string): number[] => [...new TextEncoder().encode(text)];
const SECRETS = ['Exif', 'GPS 47.5 N', 'camera 4711', 'a comment', 'a second picture'];
/** As a phone would write it: beside the picture where and on what it was taken, behind its end another one. */
async function taken(turned = false): Promise<Buffer> {
  const exif = { IFD0: { Make: 'camera 4711', ImageDescription: 'GPS 47.5 N' } };
  const written = await sharp({ create: { width: 60, height: 40, channels: 3, background: '#336699' } })
    .withExif(exif)
    .withMetadata(turned ? { orientation: 6 } : {})
    .jpeg()
    .toBuffer();
  const comment = ascii('a comment');
  const after = [0xff, 0xfe, 0, comment.length + 2, ...comment];
  return Buffer.concat([
    written.subarray(0, 2),
    Buffer.from(after),
    written.subarray(2),
    Buffer.from('a second picture'),
  ]);
}
const png = (width: number, height: number): Promise<Buffer> =>
  sharp({ create: { width, height, channels: 3, background: '#000000' } })
    .png()
    .toBuffer();
/** A few bytes that claim to be a wall of pixels: width and height as they say, and the check sum that fits. */
async function bomb(): Promise<Buffer> {
  const small = await png(8, 8);
  small.writeUInt32BE(60_000, 16);
  small.writeUInt32BE(60_000, 20);
  small.writeUInt32BE(crc32(small.subarray(12, 29)), 29);
  return small;
}

describe('a photo', () => {
  test('is drawn anew: place, camera, comment and what stands behind its end are gone, and it is the right way up', async () => {
    const bytes = await taken(true);
    expect(SECRETS.filter((secret) => !bytes.includes(secret))).toEqual([]);
    const kept = Buffer.from((await drawnAnew(bytes)) ?? []);
    expect(SECRETS.filter((secret) => kept.includes(secret))).toEqual([]);
    const { width, height, format, exif } = await sharp(kept).metadata();
    expect([width, height, format, exif]).toEqual([40, 60, 'jpeg', undefined]);
  });
  test('the same photo again is the same; a PNG becomes a JPEG; a large one is made smaller', async () => {
    expect(await drawnAnew(PHOTO)).toEqual(await drawnAnew(PHOTO));
    const { width, height, format } = await sharp((await drawnAnew(await png(2600, 1300))) ?? undefined).metadata();
    expect([width, height, format]).toEqual([2560, 1280, 'jpeg']);
  });
  test('of a few bytes that claim too many pixels is not drawn', async () => {
    const bytes = await bomb();
    expect((await sharp(bytes, { limitInputPixels: false }).metadata()).width).toBe(60_000);
    expect(await drawnAnew(bytes)).toBeNull();
  });
  const svg = '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>';
  test.each<[string, () => Uint8Array | Promise<Uint8Array>]>([
    ['nothing', () => Buffer.alloc(0)],
    ['a drawing with a script', () => Buffer.from(svg)],
    ['a GIF', () => sharp(PHOTO).resize(8).gif().toBuffer()],
    ['cut off', () => PHOTO.subarray(0, PHOTO.length / 2)],
    ['a beginning alone', () => Buffer.from([0xff, 0xd8, 0xff])],
    ['a page that begins as a JPEG', () => Buffer.concat([Buffer.from([0xff, 0xd8, 0xff]), Buffer.from(svg)])],
    ['a PNG that is a ZIP behind its first bytes', () => Buffer.from('\x89PNG\r\n\x1a\nPK\x03\x04', 'latin1')],
  ])('that is none is not kept: %s', async (_, bytes) => {
    expect(await drawnAnew(await bytes())).toBeNull();
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
    const hash = (await shop.desk.savePhoto('ines', job, PHOTO)) ?? '';
    await expect(shop.desk.photo('ines', job, hash)).rejects.toThrow(NotFound);
    const { prompt } = (await shop.desk.look('ines', job)) ?? {};
    const photo = prompt.parts.find((part) => part.kind === 'photo')?.key ?? '';
    const parts = { ok: ['done'], [photo]: hash };
    const turn = await shop.desk.reply('ines', job, { kind: 'answer', client: 'a', seq: prompt.seq, parts });
    expect(turn.refusal).toBeNull();
    expect(turn.view.ticket.findLast((line) => line.kind === 'answered')?.photos).toEqual([hash]);
    expect(await shop.desk.photo('ruth', job, hash)).toEqual(new Uint8Array((await drawnAnew(PHOTO)) ?? []));
    await expect(shop.desk.photo('ines', other, hash)).rejects.toThrow(NotFound);
    await expect(shop.desk.photo('tomas', job, hash)).rejects.toThrow(NoRight);
    await expect(shop.desk.savePhoto('tomas', job, PHOTO)).rejects.toThrow(NoRight);
    expect(await shop.desk.savePhoto('ines', job, Buffer.from([1]))).toBeNull();
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
