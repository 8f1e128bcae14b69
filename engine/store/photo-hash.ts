/** A photo is named by what is in it, so that damage shows. */
import { createHash } from 'node:crypto';
import { Damaged } from './port.ts';

export const photoHash = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** The bytes, or Damaged where they are no longer those the hash was made of. */
export function soundPhoto(hash: string, bytes: Uint8Array): Uint8Array {
  if (photoHash(bytes) !== hash) throw new Damaged(`The photo ${hash.slice(0, 12)} is damaged.`);
  return bytes;
}
