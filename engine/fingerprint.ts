/** What a job is pinned to: everything of a manual that can change a prompt or a verdict. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import { flatten, type Place } from './flatten.ts';
import { judgementOf } from './known.ts';
import type { Manual } from './vocabulary.ts';

/** Rules of the engine itself: raised when compile, fold or rounding change what an old record means. */
export const SEMANTICS = 1;

const prints = new WeakMap<Manual, string>();

/** SHA-256 over the RFC 8785 JSON of the flattened manual with its English, limits, sources and `id@semantics`. */
export function fingerprint(manual: Manual): string {
  const known = prints.get(manual);
  if (known !== undefined) return known;
  const plan = flatten(manual);
  const places = [...plan.places.values()];
  const used = new Set<string>();
  for (const { step } of places) {
    if (step.verb === 'judge') used.add(step.judgement);
    if ('shows' in step) for (const s of step.shows ?? []) used.add(s.judgement);
  }
  const { page: _, ...isolation } = manual.isolation;
  const body = {
    id: manual.id,
    version: manual.version,
    title: manual.title,
    cabinets: manual.cabinets,
    endings: manual.endings,
    fromRecord: manual.fromRecord,
    labelTolerance: manual.labelTolerance,
    isolation,
    ...(manual.caller ? { caller: manual.caller } : {}),
    start: plan.start,
    places: places.map(withoutPicture),
    judgements: [...used].sort().map((id) => `${id}@${judgementOf(id).semantics}`),
  };
  const json = canonicalize(JSON.parse(JSON.stringify(body)));
  if (json === undefined) throw new Error('a manual that is no data');
  const print = bytesToHex(sha256(utf8ToBytes(json)));
  prints.set(manual, print);
  return print;
}

/** A picture shows what the words say; drawing it otherwise changes no prompt and no verdict. */
function withoutPicture(place: Place): Place {
  if (!('picture' in place.step)) return place;
  const { picture: _, ...step } = place.step;
  return { ...place, step };
}
