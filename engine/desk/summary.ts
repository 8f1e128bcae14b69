/**
 * A job's card as the store keeps it beside the record, so that the list of calls reads no records. It is made anew where
 * the record has grown, where time has changed it, and where this program would say it in other words.
 */
import { SEMANTICS } from '../fingerprint.ts';
import { memoryOf } from '../replay.ts';
import { countsOf } from '../report/counts.ts';
import { attention } from '../review/attention.ts';
import { type Attention, queuePlace, type Stand } from '../review/risk.ts';
import type { Prompt } from '../schema.ts';
import type { Summary } from '../store/port.ts';
import { cardOf } from './card.ts';
import { concernsOf, type File } from './files.ts';
import type { JobCard } from './types.ts';

/** Raised when a card says something else of the same record. */
const FORM = `6.${SEMANTICS}`;

export interface KeptCard {
  readonly card: JobCard;
  /** Whoever takes part without a right to see every job. */
  readonly takesPart: readonly string[];
  /** What a senior should look at, the gravest first; none on a training job, which never counts. */
  readonly attention: readonly Attention[];
  /** Nothing goes on until a senior has approved. */
  readonly waits: boolean;
}
interface Kept extends KeptCard {
  readonly form: string;
  /** Up to when it is right: then an isolation is too old. null: until somebody writes. */
  readonly until: string | null;
}

/** Whoever is assigned, and whom the job is being handed to: they have to see it to take it. */
export function takesPart(file: File): string[] {
  const { assigned, handover } = memoryOf(file.standing);
  return [...assigned, ...(handover ? [handover.to] : [])];
}

/** `shown` is the prompt of this file at this time. */
export function summaryOf(job: string, file: File, at: string, shown: Prompt): { kept: KeptCard; summary: Summary } {
  const deadlines = shown.isolation.flatMap((line) => (line.until === null ? [] : [line.until]));
  const kept: Kept = {
    form: FORM,
    until: deadlines.sort()[0] ?? null,
    card: cardOf(job, file, at, shown),
    takesPart: takesPart(file),
    attention: memoryOf(file.standing).training ? [] : attentionOf(file),
    waits: waits(shown),
  };
  const { state, training } = kept.card;
  // A call that was taken has said all it had to say: what becomes of it is the job's.
  const done = state === 'taken' || state === 'put-away';
  const review =
    done || state === 'taking' ? null : queuePlace({ at: standOf(state, shown), training }, kept.attention);
  const counts = countsOf(file.standing, file.entries);
  const summary = {
    ...{ closed: state === 'signed' || done, card: JSON.stringify(kept), review },
    ...(counts ? { counts } : {}),
  };
  return { kept, summary };
}

export const attentionOf = (file: File): Attention[] =>
  attention(file.standing, concernsOf(file), ({ ref }) => file.texts.get(ref) ?? '(removed)', file.fast);

/** What the order of the queue asks of a job. */
function standOf(state: JobCard['state'], { kind }: Prompt): Stand['at'] {
  if (state === 'emergency' || state === 'finished' || state === 'signed') return state;
  return waits({ kind }) ? 'waits' : 'under-way';
}
const waits = ({ kind }: Pick<Prompt, 'kind'>): boolean => kind === 'waiting' || kind === 'held';

/** null where it has to be made anew, also where it is no card: nothing rests on it. */
export function readSummary(text: string | null, at: string): KeptCard | null {
  const kept = text === null ? null : parsed(text);
  return kept?.form === FORM && (kept.until === null || at <= kept.until) ? kept : null;
}
function parsed(text: string): Kept | null {
  try {
    return JSON.parse(text) as Kept;
  } catch {
    return null;
  }
}
