/** What a job is pinned to: everything of a manual that can change a prompt or a verdict. */
import { type Digest, digestOf } from './chain.ts';
import { flatten, type Place } from './flatten.ts';
import { judgementOf } from './known.ts';
import type { Manual } from './vocabulary.ts';

/** Rules of the engine itself: raised when compile, fold or rounding change what an old record means. */
export const SEMANTICS = 1;

const prints = new WeakMap<Manual, string>();

/**
 * SHA-256 over the RFC 8785 JSON of the flattened manual with its English, limits, sources and `id@semantics`. Throws
 * where a page holds what is no data.
 */
export function fingerprint(manual: Manual, digest: Digest = digestOf): string {
  const known = prints.get(manual);
  if (known !== undefined) return known;
  const plan = flatten(manual);
  const places = [...plan.places.values()];
  const used = new Set<string>();
  for (const { step } of places) {
    if (step.verb === 'judge') used.add(step.judgement);
    if ('shows' in step) for (const s of step.shows ?? []) used.add(s.judgement);
  }
  const rulesOf = ({ page: _, ...rules }: Manual['isolation']) => rules;
  const isolation = rulesOf(manual.isolation);
  const others = Object.entries(manual.isolations ?? {}).map(([cabinet, rules]) => [cabinet, rulesOf(rules)]);
  const body = {
    id: manual.id,
    version: manual.version,
    title: manual.title,
    cabinets: manual.cabinets,
    endings: manual.endings,
    fromRecord: manual.fromRecord,
    labelTolerance: manual.labelTolerance,
    isolation,
    ...(others.length > 0 ? { isolations: Object.fromEntries(others) } : {}),
    ...(manual.caller ? { caller: manual.caller } : {}),
    start: plan.start,
    steps: HERE,
    places: HERE,
    judgements: [...used].sort().map((id) => `${id}@${judgementOf(id).semantics}`),
  };
  // A step stands at several places, in each round and cabinet: it is written once, and its places say which it is.
  const steps = new Map<Place['step'], number>();
  const placeJson = (place: Place): string => {
    const step = steps.get(place.step) ?? steps.size;
    steps.set(place.step, step);
    return json({ ...place, step });
  };
  const laid = `[${places.map(placeJson).join(',')}]`;
  const written = `[${[...steps.keys()].map((step) => json(withoutPicture(step))).join(',')}]`;
  const print = digest(put(put(json(body), 'places', laid), 'steps', written));
  prints.set(manual, print);
  return print;
}

/** Stands for JSON that is put in afterwards. Within a text its quotes would be escaped, so it is nowhere else. */
const HERE = '\u0000';
const put = (whole: string, name: string, part: string): string =>
  whole.replace(`"${name}":${JSON.stringify(HERE)}`, () => `"${name}":${part}`);

/**
 * RFC 8785 JSON: the engine's own, several times as quick for so much at once. Names are put in order as texts: an object
 * would put those that look like numbers ("24", "115") first, by their size.
 */
function json(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(json).join(',')}]`;
  if (value !== null && typeof value === 'object') {
    const members = Object.entries(value).filter(([, v]) => v !== undefined);
    return `{${members
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([name, v]) => `${JSON.stringify(name)}:${json(v)}`)
      .join(',')}}`;
  }
  const text = JSON.stringify(value);
  if (text === undefined) throw new Error('a manual that is no data');
  return text;
}

/** A picture shows what the words say; drawing it otherwise changes no prompt and no verdict. */
function withoutPicture(step: Place['step']): object {
  if (!('picture' in step)) return step;
  const { picture: _, ...rest } = step;
  return rest;
}
