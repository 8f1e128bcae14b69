/** A record gone over again: is each answer one to the question that stood, each verdict the one that follows? */
import { canonicalJson } from '../canonical.ts';
import { TranscriptMismatch } from '../errors.ts';
import type { Place } from '../flatten.ts';
import { isConcluded } from '../known.ts';
import { begin, memoryOf, placeIdOf, planOf, type Standing, take } from '../replay.ts';
import { concludeAt, route } from '../route.ts';
import type { Conclusion, Entry } from '../schema.ts';
import { endsTurn, shownAfter } from './asked.ts';
import type { Shown } from './file.ts';

/** `old` is what the file says, `now` what is computed from its entries. */
export interface Difference {
  readonly at: number;
  readonly old: string;
  readonly now: string;
}

/** A verdict as recorded and as computed again, each in its RFC 8785 form. */
type OnVerdict = (seq: number, recorded: string, computed: string) => void;

/**
 * The first entry that computes differently, or null. `shown` is what the file says was asked; null where nobody wrote
 * that down, and only answers and verdicts are compared.
 */
export function recompute(
  machine: Standing['machine'],
  entries: readonly Entry[],
  shown: readonly Shown[] | null,
  onVerdict: OnVerdict = () => undefined,
): Difference | null {
  const asked = new Map((shown ?? []).map((s) => [s.seq, s]));
  let standing = begin(machine, entries[0]?.job ?? '');
  for (const [i, entry] of entries.entries()) {
    const different = answerFits(standing, entry) ?? verdictFits(standing, entry, onVerdict);
    if (different) return different;
    try {
      standing = take(standing, entry);
    } catch (error) {
      if (!(error instanceof TranscriptMismatch)) throw error;
      return { at: entry.seq, old: entry.kind, now: error.message };
    }
    if (!endsTurn(entry, entries[i + 1])) continue;
    const due = dueVerdict(standing);
    if (due) {
      const now = concludeAt(planOf(standing), due, memoryOf(standing));
      return { at: entry.seq, old: 'no verdict', now: verdictWords(now) };
    }
    if (shown === null) continue;
    const was = asked.get(entry.seq);
    const now = shownAfter(standing, entry);
    asked.delete(entry.seq);
    if (was?.place !== now.place)
      return { at: entry.seq, old: `asks ${was?.place ?? 'nothing'}`, now: `asks ${now.place}` };
    if (was.asks !== now.asks)
      return {
        at: entry.seq,
        old: `asks ${was.place} as ${was.asks.slice(0, 12)}`,
        now: `as ${now.asks.slice(0, 12)}`,
      };
  }
  const [left] = asked.values();
  return left ? { at: left.seq, old: `asks ${left.place}`, now: 'no turn ends here' } : null;
}

function answerFits(standing: Standing, entry: Entry): Difference | null {
  if (entry.kind !== 'answered') return null;
  const here = placeIdOf(standing);
  return here === entry.body.place ? null : { at: entry.seq, old: `answers ${entry.body.place}`, now: `asks ${here}` };
}

function verdictFits(standing: Standing, entry: Entry, onVerdict: OnVerdict): Difference | null {
  if (entry.kind !== 'concluded') return null;
  const due = dueVerdict(standing);
  const old = verdictWords(entry.body);
  if (!due) return { at: entry.seq, old, now: 'no verdict' };
  const body = concludeAt(planOf(standing), due, memoryOf(standing));
  const [recorded, computed] = [canonicalJson(entry.body), canonicalJson(body)];
  onVerdict(entry.seq, recorded, computed);
  if (computed === recorded) return null;
  const now = verdictWords(body);
  if (old !== now) return { at: entry.seq, old, now };
  const [path, a, b] = firstDifference(entry.body, body, 'verdict');
  return { at: entry.seq, old: `${path} ${a}`, now: `${path} ${b}` };
}

/** The verdict on the way that is not on the record yet, or was drawn from answers that have changed since. */
export function dueVerdict(s: Standing): Place | undefined {
  const { passed } = route(planOf(s), memoryOf(s));
  return passed.find((p) => p.step.verb === 'verdict' && !isConcluded(p, memoryOf(s)));
}

/** A verdict in one line: its id, its title, and the word of each finding. */
export function verdictWords(c: Conclusion): string {
  const words = c.findings.map((f) => `${f.name} ${f.word}`).join(', ');
  return `${c.verdict} "${c.title}"${words === '' ? '' : ` (${words})`}`;
}

function firstDifference(a: unknown, b: unknown, path: string): [path: string, a: string, b: string] {
  if (isObject(a) && isObject(b)) {
    for (const key of new Set([...Object.keys(a), ...Object.keys(b)])) {
      if (words(a[key]) !== words(b[key])) return firstDifference(a[key], b[key], `${path}.${key}`);
    }
  }
  return [path, words(a), words(b)];
}
const words = (value: unknown): string => (value === undefined ? 'nothing' : canonicalJson(value));
const isObject = (v: unknown): v is Record<string, unknown> => typeof v === 'object' && v !== null;
