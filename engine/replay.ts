/** Entries → Standing. The transcript is the only truth; a Standing may be thrown away at any time. */
import { type Digest, verifyChain } from './chain.ts';
import type { Machine, Position } from './compile.ts';
import { TranscriptCorrupt, TranscriptMismatch } from './errors.ts';
import { fingerprint, SEMANTICS } from './fingerprint.ts';
import type { Plan } from './flatten.ts';
import { isBegun } from './forget.ts';
import type { Memory } from './memory.ts';
import type { Entry } from './schema.ts';

export interface Standing {
  readonly machine: Machine;
  readonly position: Position;
  readonly job: string;
  readonly lastHash: string;
}
export const planOf = (s: Standing): Plan => s.machine.plan;
export const memoryOf = (s: Standing): Memory => s.position.memory;
export const placeIdOf = (s: Standing): string => s.position.place;

export const begin = (machine: Machine, job: string): Standing => ({
  machine,
  position: machine.initial,
  job,
  lastHash: '0'.repeat(64),
});
/** One entry more, already part of the record. */
export const take = (s: Standing, entry: Entry): Standing => ({
  ...s,
  position: s.machine.step(s.position, entry),
  lastHash: entry.hash,
});

/**
 * Throws TranscriptCorrupt where the chain is damaged, TranscriptMismatch where the record was written on another
 * manual, version or computation. `onEntry` sees each entry with where the job stood when it came.
 */
export function replay(
  machine: Machine,
  entries: readonly Entry[],
  digest?: Digest,
  onEntry: (before: Standing, entry: Entry) => void = () => undefined,
): Standing {
  const first = entries[0];
  if (first?.kind !== 'opened') throw new TranscriptCorrupt('the record does not begin with "opened"');
  const chain = verifyChain(entries, digest);
  if (!chain.ok) throw new TranscriptCorrupt(`entry ${chain.at}: ${chain.why}`);
  const { manual } = machine.plan;
  const print = fingerprint(manual);
  const { body } = first;
  if (
    body.manual !== manual.id ||
    body.version !== manual.version ||
    body.fingerprint !== print ||
    body.semantics !== SEMANTICS
  ) {
    throw new TranscriptMismatch(
      `written on ${body.manual} ${body.version} (${body.fingerprint.slice(0, 12)}), read on ${manual.id} ${manual.version} (${print.slice(0, 12)})`,
    );
  }
  return entries.reduce(
    (standing, entry) => {
      onEntry(standing, entry);
      return take(standing, entry);
    },
    begin(machine, first.job),
  );
}

/** When a lock or a proved isolation goes stale if its holder stays silent; null where there is none. */
export function deadlineOf(plan: Plan, memory: Memory, cabinet: string): string | null {
  const isolation = memory.isolations[cabinet];
  if (!isolation?.lastAt || !isBegun(plan, memory, cabinet)) return null;
  if (isolation.again && !isBegun(plan, memory, cabinet, 'age')) return null;
  // A shop may want it sooner; nobody gets it later.
  const minutes = Math.min(
    Number(plan.regions[cabinet]?.rules.minutes.value),
    memory.settings.minutes ?? Number.POSITIVE_INFINITY,
  );
  return new Date(Date.parse(isolation.lastAt) + minutes * 60_000).toISOString();
}

/** The first deadline that has passed, or null. Exactly on the deadline the isolation still stands. */
export function overdue(s: Standing, now: string): string | null {
  const passed = Object.keys(planOf(s).regions)
    .map((c) => deadlineOf(planOf(s), memoryOf(s), c))
    .filter((d): d is string => d !== null && now > d);
  return passed.sort()[0] ?? null;
}

/** Standing as of now: an isolation past its age is not proved, whether or not anybody typed. */
export function asOf(s: Standing, now: string): Standing {
  const since = overdue(s, now);
  if (since === null) return s;
  const seq = memoryOf(s).last + 1;
  const voided: Entry = {
    v: 1,
    job: s.job,
    seq,
    by: 'nocool',
    at: now,
    said: null,
    client: null,
    prev: '',
    hash: '',
    kind: 'voided',
    body: { reason: 'age', since },
  };
  const moved = take(s, voided);
  // The record has no such entry yet; the question stands since the one that would be written.
  const memory = { ...moved.position.memory, last: seq - 1 };
  return { ...moved, lastHash: s.lastHash, position: { ...moved.position, memory } };
}
