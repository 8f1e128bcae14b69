/** Random bytes of the machine, drawn many at a time: each draw is a call of the system, and each text takes a salt. */
import { randomFillSync } from 'node:crypto';

const pool = Buffer.alloc(4096);
let used = pool.length;

/** So many random bytes as hex. None is ever handed out twice. */
export function randomHex(bytes: number): string {
  if (bytes > pool.length) throw new Error(`${bytes} random bytes at once`);
  if (used + bytes > pool.length) {
    randomFillSync(pool);
    used = 0;
  }
  used += bytes;
  return pool.toString('hex', used - bytes, used);
}
