/**
 * Leaking refrigerant. Outdoors and not flammable it is a note; a flammable kind, or any kind in a closed room, is
 * danger: it burns, or takes the air.
 */
import type { Word } from './text.ts';

/** Where a leak of that kind is named; -1 where none is. */
export function refrigerantLeak(words: readonly Word[]): number {
  let from = 0;
  for (let i = 0; i <= words.length; i++) {
    const ends = i === words.length || /[.!?;\n]/.test(words[i]?.marks ?? '');
    if (!ends) continue;
    const at = leakIn(words, from, i);
    if (at >= 0) return at;
    from = i;
  }
  return -1;
}

function leakIn(words: readonly Word[], from: number, to: number): number {
  let leak = -1;
  let named = false;
  let closed = false;
  for (let i = from; i < to; i++) {
    const [text, next] = [words[i]?.text ?? '', words[i + 1]?.text ?? ''];
    if (LEAKS.has(text) && leak < 0 && !NOUNS.has(next) && !isDenied(words, i, from)) leak = i;
    // "R-32" is two words.
    const kind = text === 'r' ? `r${next}` : text;
    named ||= NAMES.has(kind) || REFRIGERANT.test(kind) || FLAMMABLE.has(kind);
    closed ||=
      FLAMMABLE.has(kind) ||
      ROOMS.has(text) ||
      ROOMS.has(text + next) ||
      (text === 'inside' && next === 'the') ||
      `${text} ${next}` === 'air handler';
  }
  return named && closed ? leak : -1;
}

function isDenied(words: readonly Word[], at: number, from: number): boolean {
  for (let i = at - 1; i >= from && at - i <= 3; i--) if (DENYING.has(words[i]?.text ?? '')) return true;
  return false;
}

const words = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));
const LEAKS = words('leak leaks leaking leaked venting hissing escaping spraying fuga fugando');
/** "leak check" tells of none. */
const NOUNS = words('check checked test tested tests detector detectors search searched free rate sealer sealant dye');
const DENYING = words(
  'no not without zero isnt arent dont didnt doesnt never stopped fixed repaired sin ningun ninguna',
);
const NAMES = words('refrigerant refrigerants refrigerante ref');
const REFRIGERANT = /^r\d{2,4}[a-f]{0,2}$/;
/** Class A2L, A3 and B2L of ASHRAE 34, as people name them. */
const FLAMMABLE = words(
  'a2l a2ls a3 b2l r32 r454a r454b r454c r455a r1234yf r1234ze r290 r600a r1270 r717 flammable isobutane butane propane',
);
const ROOMS =
  words(`indoor indoors attic basement closet crawlspace garage kitchen bedroom bathroom hallway house home building office
  store room cooler freezer walkin adentro casa cuarto`);
