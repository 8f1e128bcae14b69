/**
 * The shop's Ed25519 key. Its private half signs exports and stays with the shop, in a file of mode 0600 beside the
 * database; its public half is handed to whoever verifies. Another key may follow: the public halves of all stay known.
 */
import { createPrivateKey, createPublicKey, generateKeyPairSync, type KeyObject, sign, verify } from 'node:crypto';
import {
  appendFileSync,
  closeSync,
  existsSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { dirname } from 'node:path';

export interface ShopKey {
  /** As people pass it on: `ed25519:` and 43 letters. */
  readonly name: string;
  /** Base64url of the signature over the UTF-8 of a text. */
  sign(text: string): string;
}
/** The key can't be had; the message says what to do. */
export class KeyTrouble extends Error {
  override name = 'KeyTrouble';
}

const NAME = /^ed25519:[A-Za-z0-9_-]{43}$/;
export const isKeyName = (text: string): boolean => NAME.test(text);
const nameOf = (key: KeyObject): string => `ed25519:${createPublicKey(key).export({ format: 'jwk' }).x ?? ''}`;
const shopKey = (key: KeyObject): ShopKey => ({
  name: nameOf(key),
  sign: (text) => sign(null, Buffer.from(text), key).toString('base64url'),
});

/** Whether the key of this name signed this text. False for a name or a signature that is none. */
export function isSignedBy(name: string, text: string, signature: string): boolean {
  if (!isKeyName(name)) return false;
  const x = name.slice('ed25519:'.length);
  const bytes = Buffer.from(signature, 'base64url');
  // Only the one way of writing it: else a file could be changed without changing what it says.
  if (bytes.length !== 64 || bytes.toString('base64url') !== signature) return false;
  try {
    const key = createPublicKey({ key: { kty: 'OKP', crv: 'Ed25519', x }, format: 'jwk' });
    return verify(null, Buffer.from(text), key, bytes);
  } catch {
    return false;
  }
}

/** Where the key of the shop in this database is: named by the environment, or beside the database. */
export const keyPlace = (env: Readonly<Record<string, string | undefined>>, database: string): string =>
  env.NOCOOL_KEY || `${database}.key`;
const isPem = (place: string): boolean => place.startsWith('-----BEGIN');

/** The key at this place, or the key itself where `place` is one as PEM; made where there is none. Throws KeyTrouble. */
export function openKey(place: string): ShopKey {
  if (isPem(place)) return shopKey(fromPem(place.replaceAll('\\n', '\n'), 'NOCOOL_KEY'));
  return trouble(place, () => {
    if (!existsSync(place)) make(place, linkSync);
    const key = read(place);
    know(place, key.name);
    return key;
  });
}

/** A new key in its place. What the old one signed stays verifiable: its public half is kept. */
export function renewKey(place: string): ShopKey {
  if (isPem(place)) throw new KeyTrouble('the key comes by the environment: put another one there');
  return trouble(place, () => {
    // One that others could read is the very one to be replaced.
    if (existsSync(place)) know(place, shopKey(fromPem(readFileSync(place, 'utf8'), place)).name);
    make(place, renameSync);
    const key = read(place);
    know(place, key.name);
    return key;
  });
}

/** From now on nothing vouches for what this older key signed: somebody else may have it. Throws KeyTrouble. */
export function revokeKey(place: string, name: string): void {
  const known = knownKeys(place);
  if (isPem(place) || openKey(place).name === name)
    throw new KeyTrouble('that is the key in use: put another one in its place first (-- --renew)');
  if (!known.includes(name)) throw new KeyTrouble(`${name} is no key that this shop has had`);
  trouble(place, () => {
    writeFileSync(`${place}s.new`, known.flatMap((key) => (key === name ? [] : `${key}\n`)).join(''));
    renameSync(`${place}s.new`, `${place}s`);
  });
}

/**
 * The public halves of all keys this shop has had and not revoked, the newest last. Reads no private key, except where
 * the list could not be written beside it.
 */
export function knownKeys(place: string): string[] {
  if (isPem(place)) return [openKey(place).name];
  if (!existsSync(`${place}s`)) return existsSync(place) ? [openKey(place).name] : [];
  return trouble(place, () => readFileSync(`${place}s`, 'utf8').split(/\s+/).filter(isKeyName));
}

function know(place: string, name: string): void {
  const list = `${place}s`;
  if (existsSync(list) && knownKeys(place).includes(name)) return;
  try {
    appendFileSync(list, `${name}\n`);
  } catch (error) {
    // A key that is handed to the program in a folder of its own: there is one key then, and no list.
    if (existsSync(list) || !['EACCES', 'EROFS', 'EPERM'].includes((error as NodeJS.ErrnoException).code ?? ''))
      throw error;
  }
}

/** Written aside and moved whole, so that no other process ever reads half of it; the first of two is the one that counts. */
function make(place: string, put: (from: string, to: string) => void): void {
  mkdirSync(dirname(place), { recursive: true });
  const pem = generateKeyPairSync('ed25519').privateKey.export({ type: 'pkcs8', format: 'pem' });
  const aside = `${place}.${process.pid}.new`;
  const file = openSync(aside, 'wx', 0o600);
  try {
    writeSync(file, pem.toString());
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  try {
    put(aside, place);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
  } finally {
    rmSync(aside, { force: true });
  }
}

function read(place: string): ShopKey {
  const { mode } = statSync(place);
  if (process.platform !== 'win32' && (mode & 0o077) !== 0)
    throw new KeyTrouble(`${place} can be read by others than its owner: chmod 600 it, or renew it`);
  return shopKey(fromPem(readFileSync(place, 'utf8'), place));
}

function fromPem(pem: string, from: string): KeyObject {
  let key: KeyObject;
  try {
    key = createPrivateKey(pem);
  } catch (cause) {
    throw new KeyTrouble(`${from} holds no private key`, { cause });
  }
  if (key.asymmetricKeyType !== 'ed25519') throw new KeyTrouble(`${from} holds no Ed25519 key`);
  return key;
}

function trouble<T>(place: string, work: () => T): T {
  try {
    return work();
  } catch (cause) {
    if (cause instanceof KeyTrouble || !(cause instanceof Error) || !('code' in cause)) throw cause;
    throw new KeyTrouble(`the key ${place} can’t be had: ${cause.message}`, { cause });
  }
}
