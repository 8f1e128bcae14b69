/**
 * A record as somebody hears it who knows the rules and nothing of the engine: each entry as it was appended, with the
 * listener's own stopwatch. From it the answers that still stand.
 */
import type { Entry, Parts, Value } from '../../../schema.ts';

/** `at`: milliseconds of the listener's stopwatch, which nobody can set. */
export interface Heard {
  readonly entry: Entry;
  readonly at: number;
}

/** An answer with the figures that it has now. */
export interface Answer {
  readonly seq: number;
  readonly by: string;
  readonly at: number;
  readonly place: string;
  /** The last part of the place: what the step is called. */
  readonly step: string;
  readonly parts: Parts;
  /** The parts as they were before anything was changed. */
  readonly first: Parts;
  /** seq of the last change, or the answer's own. */
  readonly changed: number;
  readonly skipped: boolean;
  readonly offline: boolean;
  /** A gate that was taken back: no earlier answer to it comes to count in its place. */
  readonly gone: boolean;
}

export const chosen = (v: Value | undefined): string => (v?.kind === 'choice' ? v.chosen.join('+') : '');
export const volts = (v: Value | undefined): number | null => (v?.kind === 'figure' ? Math.abs(Number(v.value)) : null);
export const isGate = (place: string): boolean => place.startsWith('dead:');
const stepOf = (place: string): string => place.slice(place.lastIndexOf('/') + 1);

/** The older of what the stopwatch and the person's own device say, rule 3. */
const since = ({ entry, at }: Heard): number =>
  entry.said === null ? at : at - Math.max(0, Date.parse(entry.at) - Date.parse(entry.said));

/** The last list that was gone over, and how long it was then: one moment is asked about several times. */
let known: { readonly of: readonly Heard[]; readonly length: number; readonly answers: readonly Answer[] } | null =
  null;

export function standing(heard: readonly Heard[]): readonly Answer[] {
  if (known?.of !== heard || known.length !== heard.length)
    known = { of: heard, length: heard.length, answers: standingIn(heard) };
  return known.answers;
}
function standingIn(heard: readonly Heard[]): readonly Answer[] {
  const answers = new Map<number, Answer>();
  for (const one of heard) {
    const { entry } = one;
    if (entry.kind === 'answered') {
      const { place, parts, skipped, offline } = entry.body;
      answers.set(entry.seq, {
        ...{ seq: entry.seq, by: entry.by, at: since(one), place, step: stepOf(place), parts, first: parts },
        ...{ changed: entry.seq, skipped: skipped !== undefined, offline: offline === true, gone: false },
      });
    }
    if (entry.kind !== 'withdrawn' && entry.kind !== 'amended') continue;
    const old = answers.get(entry.body.of);
    if (!old) continue;
    if (entry.kind === 'amended')
      answers.set(old.seq, { ...old, parts: { ...old.parts, ...entry.body.parts }, changed: entry.seq });
    else if (isGate(old.place)) answers.set(old.seq, { ...old, gone: true, changed: entry.seq });
    else answers.delete(old.seq);
  }
  return [...answers.values()];
}

/** Hands or leads on conductors, power off: µF, Ω or MΩ read, or an act done. */
export const handsIn = (place: string, parts: Parts): boolean =>
  !isGate(place) &&
  Object.entries(parts).some(
    ([key, v]) =>
      v.kind === 'over' ||
      (v.kind === 'figure' && ['µF', 'Ω', 'MΩ'].includes(v.unit)) ||
      (key === 'ok' && chosen(v) === 'done'),
  );

const PRINTED = ['rla', 'lra', 'fla', 'mca', 'mop', 'rating'];
const on24 = (place: string): boolean => place.endsWith('24');
/** Line voltage was there: volts or amps read outside make-dead that are neither printed nor of the 24 V circuit. */
export const isLive = (place: string, parts: Parts): boolean =>
  !isGate(place) &&
  !on24(place) &&
  Object.entries(parts).some(
    ([key, v]) => v.kind === 'figure' && (v.unit === 'V' || v.unit === 'A') && !PRINTED.includes(key),
  );
const POWER = ['probes', 'closed', 'shut', 'qualified'];
/** Rule 3: the lock comes off and power goes on, as the step says before its reading. */
export const turnsOn = (place: string, parts: Parts): boolean => {
  const [page = '', step = ''] = place.split('/').slice(-2);
  const said = chosen(parts.ok) || chosen(parts.choice);
  if (POWER.includes(step) || (step === 'ready' && (page === 'supply' || place.includes('runs-on/source/'))))
    return said === 'yes' || said === 'done';
  if (page.startsWith('coil-live') && step === 'call') return said === 'now' || said === 'earlier';
  return page === 'breaker' && step === 'panel' && said === 'yes';
};
/** Rule 3: a line terminal above 5 V or a control terminal above 30 V during control live. */
export const isTooMuch = (place: string, parts: Parts): boolean =>
  on24(place) &&
  Object.entries(parts).some(
    ([key, v]) => v.kind === 'figure' && v.unit === 'V' && (volts(v) ?? 0) > (key === 'l1l2' ? 5 : 30),
  );
