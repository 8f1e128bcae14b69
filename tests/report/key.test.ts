/** The shop's key: made once, kept to its owner, renewed without losing the old one. */
import { generateKeyPairSync, verify } from 'node:crypto';
import { chmodSync, chownSync, existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { isSignedBy, KeyTrouble, keyPlace, knownKeys, openKey, renewKey, revokeKey } from '../../engine/report/key.ts';

let folder: string;
let place: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'nocool-key-'));
  place = join(folder, 'data', 'shop.db.key');
});
afterEach(() => rmSync(folder, { recursive: true }));
const pem = (type: 'ed25519' | 'x25519'): string =>
  generateKeyPairSync(type as 'ed25519')
    .privateKey.export({ type: 'pkcs8', format: 'pem' })
    .toString();

describe('the first time', () => {
  test('it is made for its owner alone, and found again', () => {
    const key = openKey(place);
    expect(statSync(place).mode & 0o777).toBe(0o600);
    expect(openKey(place).name).toBe(key.name);
    expect(key.name).toMatch(/^ed25519:[\w-]{43}$/);
    expect(knownKeys(place)).toEqual([key.name]);
  });
  test('nothing is left beside it but the public half, which holds no private one', () => {
    openKey(place);
    expect(readFileSync(`${place}s`, 'utf8')).not.toContain('PRIVATE');
    expect(existsSync(`${place}.${process.pid}.new`)).toBe(false);
  });
  test('asking for known keys makes none', () => {
    expect([knownKeys(place), existsSync(place)]).toEqual([[], false]);
  });
});

describe('what it signs', () => {
  // RFC 8032 §7.1, TEST 1 (an empty message) and TEST 2 (one byte, 0x72): key and signature as printed there.
  test.each([
    [
      '',
      'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a',
      'e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b',
    ],
    [
      'r',
      '3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c',
      '92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00',
    ],
  ])('is Ed25519 as the standard has it: %j', (text, key, signature) => {
    const name = `ed25519:${Buffer.from(key, 'hex').toString('base64url')}`;
    const signed = Buffer.from(signature, 'hex').toString('base64url');
    expect(isSignedBy(name, text, signed)).toBe(true);
    expect(isSignedBy(name, `${text}.`, signed)).toBe(false);
  });
  test('holds for this text, this key and this way of writing it', () => {
    const key = openKey(place);
    const signature = key.sign('µF');
    expect(isSignedBy(key.name, 'µF', signature)).toBe(true);
    for (const other of [`${signature}=`, `${signature}A`, signature.slice(1), '', signature.toUpperCase()])
      expect(isSignedBy(key.name, 'µF', other)).toBe(false);
    for (const name of [renewKey(place).name, 'ed25519:', `ed25519:${'A'.repeat(43)}`, 'someone'])
      expect(isSignedBy(name, 'µF', signature)).toBe(false);
    expect(verify(null, Buffer.from('µF'), readFileSync(place, 'utf8'), Buffer.from(signature, 'base64url'))).toBe(
      false,
    );
  });
});

describe('another key', () => {
  test('takes the place, and the old one stays known', () => {
    const old = openKey(place);
    const key = renewKey(place);
    expect(key.name).not.toBe(old.name);
    expect(openKey(place).name).toBe(key.name);
    expect(knownKeys(place)).toEqual([old.name, key.name]);
    expect(statSync(place).mode & 0o777).toBe(0o600);
  });
  test('an old one that somebody else may have is revoked; the one in use and a strange one are not', () => {
    const old = openKey(place);
    expect(() => revokeKey(place, old.name)).toThrow(/in use/);
    const [middle, key] = [renewKey(place), renewKey(place)];
    revokeKey(place, old.name);
    expect(knownKeys(place)).toEqual([middle.name, key.name]);
    expect(() => revokeKey(place, old.name)).toThrow(/no key that this shop has had/);
    expect(openKey(place).name).toBe(key.name);
    expect(knownKeys(place)).toEqual([middle.name, key.name]);
  });
});

describe('by the environment', () => {
  test('a file, or the key itself with its line breaks escaped; then nothing is written', () => {
    const text = pem('ed25519');
    expect(keyPlace({}, 'a.db')).toBe('a.db.key');
    expect(keyPlace({ NOCOOL_KEY: 'k' }, 'a.db')).toBe('k');
    const key = openKey(text.replaceAll('\n', '\\n'));
    expect(key.name).toBe(openKey(text).name);
    expect(knownKeys(text)).toEqual([key.name]);
    expect(() => renewKey(text)).toThrow(KeyTrouble);
  });
});

test('in a folder where nothing can be written beside it, it is used as it is, and known by itself', () => {
  const made = openKey(place);
  rmSync(`${place}s`);
  const root = process.geteuid?.() === 0;
  chownSync(place, root ? 65534 : (process.geteuid?.() ?? 0), -1);
  for (const [path, mode] of [
    [folder, 0o755],
    [dirname(place), 0o555],
  ] as const)
    chmodSync(path, mode);
  if (root) process.seteuid?.(65534);
  try {
    expect([openKey(place).name, knownKeys(place)]).toEqual([made.name, [made.name]]);
  } finally {
    if (root) process.seteuid?.(0);
    chmodSync(dirname(place), 0o755);
  }
  expect(existsSync(`${place}s`)).toBe(false);
});

describe('trouble is one line that says what to do', () => {
  test('a file that others can read; another key mends that', () => {
    const { name } = openKey(place);
    chmodSync(place, 0o640);
    expect(() => openKey(place)).toThrow(/chmod 600/);
    expect(knownKeys(place)).toEqual([name]);
    expect(renewKey(place).name).not.toBe(name);
    expect(knownKeys(place)).toHaveLength(2);
  });
  test.each([
    ['no key', () => 'hello'],
    ['another kind of key', () => pem('x25519')],
  ])('a file that holds %s', (_, text) => {
    const file = join(folder, 'key');
    writeFileSync(file, text(), { mode: 0o600 });
    expect(() => openKey(file)).toThrow(KeyTrouble);
  });
  test('a place where nothing can be written', () => {
    writeFileSync(join(folder, 'file'), '');
    expect(() => openKey(join(folder, 'file', 'key'))).toThrow(KeyTrouble);
  });
});
