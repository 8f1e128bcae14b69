/** The public keys that a reader trusts, as named on a command line. */
import { readFileSync } from 'node:fs';
import { isKeyName } from './key.ts';

/** Each is a key, or a file in which every word is a key or stands behind `#`. */
export function keysNamed(given: readonly string[]): { list: string[] } | { wrong: string } {
  const list: string[] = [];
  for (const one of given) {
    if (isKeyName(one)) {
      list.push(one);
      continue;
    }
    if (one.startsWith('ed25519:')) return { wrong: `"${one}" is no key: 43 letters follow ed25519:.` };
    let text: string;
    try {
      text = readFileSync(one, 'utf8');
    } catch {
      return { wrong: `"${one}" is neither a key nor a file that can be read.` };
    }
    const words = text.replace(/#.*$/gm, '').split(/\s+/).filter(Boolean);
    const stranger = words.find((w) => !isKeyName(w));
    if (stranger !== undefined || words.length === 0) return { wrong: `"${one}" holds something else than keys.` };
    list.push(...words);
  }
  return { list };
}
