/** npm run crew, as a process on a database of its own: adds somebody, prints links that work once, signs devices out. */
import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Store } from '../../engine/store/index.ts';
import { bundle } from '../process.ts';
import { type SqliteGround, sqliteGround } from '../store/sqlite-ground.ts';

let program: string;
let ground: SqliteGround;
let store: Store;
beforeAll(async () => {
  [program, ground] = await Promise.all([
    bundle(new URL('../../engine/desk/commands/crew.ts', import.meta.url)),
    sqliteGround(),
  ]);
  store = await ground.open();
}, 120_000);
afterAll(async () => {
  await store?.close();
  await ground?.remove();
});
const crew = (...args: string[]): Promise<{ code: number; out: string; err: string }> =>
  new Promise((done) => {
    const env = { ...process.env, NOCOOL_DB: ground.file, NOCOOL_URL: 'https://shop.example', DATABASE_URL: '' };
    execFile(process.execPath, [program, ...args], { env }, (error, out, err) =>
      done({ code: error ? Number(error.code) : 0, out, err }),
    );
  });
const now = '2026-07-14T15:00:00.000Z';
const hashOf = (link: string): string =>
  createHash('sha256')
    .update(link.trim().split('/').at(-1) ?? '')
    .digest('hex');

test('adds a person with a link, lists them, ends one device and then all there is', async () => {
  const added = await crew('add', 'Nell Harrow', 'technician', 'senior');
  expect(added.code).toBe(0);
  const [id = '', link = ''] = added.out.split('\n');
  expect([id, link]).toEqual([
    expect.stringMatching(/^p-[0-9a-f]{8}$/),
    expect.stringMatching(/^https:\/\/shop\.example\/sign-in\/[\w-]{43}$/),
  ]);
  // What is kept of the link is its hash, and it signs her in once.
  expect(await store.useLink(hashOf(link), now)).toBe(id);
  expect(await store.useLink(hashOf(link), now)).toBeNull();

  const until = '2099-01-01T00:00:00.000Z';
  for (const [n, device] of ['phone', 'computer'].entries())
    await store.saveSession(String(n).repeat(64), id, until, { made: now, device });
  const [list, devices, another] = await Promise.all([crew('list'), crew('devices', id), crew('link', id)]);
  expect(list.out).toBe(`${id} · Nell Harrow · technician and senior\n`);
  expect(devices.out.trim().split('\n').sort()).toEqual([
    `00000000 · phone · since ${now}`,
    `11111111 · computer · since ${now}`,
  ]);
  expect(hashOf(another.out)).not.toBe(hashOf(link));

  expect(await crew('revoke', id, '0000')).toMatchObject({ code: 0, out: '1 device signed out.\n' });
  expect((await store.devices(id, now)).map(({ device }) => device)).toEqual(['computer']);
  // The other device, and the link that nobody has used yet.
  expect(await crew('revoke', id)).toMatchObject({ code: 0, out: '2 sessions and links ended.\n' });
  expect([await store.devices(id, now), await store.useLink(hashOf(another.out), now)]).toEqual([[], null]);
});

test('says what is wrong: how it is used, and whom it does not know', async () => {
  const [bare, role, nobody] = await Promise.all([crew(), crew('add', 'Otto', 'king'), crew('link', 'p-none')]);
  expect([bare.code, role.code, nobody.code]).toEqual([2, 2, 3]);
  expect(role.err).toContain('Roles: technician, senior, dispatcher, owner');
  expect(nobody.err).toBe('nocool: There is nobody p-none of the crew.\n');
});
