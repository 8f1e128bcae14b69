/** One line of the list of calls. */
import { TranscriptCorrupt, TranscriptMismatch } from '../errors.ts';
import type { Memory } from '../memory.ts';
import { asOf, memoryOf, placeIdOf, planOf } from '../replay.ts';
import type { Prompt, TextRef } from '../schema.ts';
import { Damaged } from '../store/port.ts';
import type { File } from './files.ts';
import type { JobCard } from './types.ts';

export const isUnreadable = (error: unknown): error is Error =>
  error instanceof TranscriptMismatch || error instanceof TranscriptCorrupt || error instanceof Damaged;
export const unreadable = (row: { job: string; updated: string }, error: Error): JobCard => ({
  job: row.job,
  title: `Call ${row.job.slice(0, 8)}`,
  state: 'unreadable',
  where: `This record can’t be read: ${error.message}`,
  assigned: [],
  verdict: null,
  updated: row.updated,
  isolation: '',
  until: null,
  training: false,
  opened: row.updated,
  begun: true,
  urgency: null,
  certified: false,
  causes: [],
  load: [],
  alarm: null,
});

/** `p` is the prompt of this file at this time. */
export function cardOf(job: string, file: File, at: string, p: Prompt): JobCard {
  const standing = asOf(file.standing, at);
  const memory = memoryOf(standing);
  const here = placeIdOf(standing);
  const manual = planOf(standing).manual;
  const ended = planOf(standing).endings.includes(here);
  const words = (ref: TextRef | undefined): string | null => (ref ? (file.texts.get(ref.ref) ?? '(removed)') : null);
  const title = words(memory.title ?? undefined) ?? '';
  const { call } = memory;
  return {
    job,
    title: manual.caller ? (whose(memory, words) ?? title) : title,
    state: stateOf(memory.signed, ended, here, manual.caller !== undefined),
    where: p.title,
    assigned: [...memory.assigned],
    verdict: p.verdicts.at(-1)?.title ?? null,
    updated: memory.at,
    isolation: p.isolation.map((l) => `${l.cabinet}: ${l.words}`).join(' · '),
    until: p.isolation.flatMap((l) => (l.until === null ? [] : [l.until])).sort()[0] ?? null,
    training: memory.training,
    opened: file.entries[0]?.at ?? memory.at,
    begun: Object.keys(memory.facts).length > 0,
    urgency: call?.urgency ? { level: call.urgency, why: call.reasons.join(' ') } : null,
    certified: call?.certified ?? false,
    causes: (call?.causes ?? []).map(({ cause }) => cause),
    load: [...(call?.load ?? [])],
    alarm: alarmOf(memory, file),
  };
}

const STATES: Readonly<Record<string, JobCard['state']>> = {
  '!emergency': 'emergency',
  '!paused': 'paused',
  '!held': 'held',
};
function stateOf(signed: boolean, ended: boolean, here: string, calling: boolean): JobCard['state'] {
  if (calling) return ended ? 'taken' : here === '!paused' ? 'put-away' : 'taking';
  return signed ? 'signed' : ended ? 'finished' : (STATES[here] ?? 'under-way');
}

/** A call that is being taken goes by where it comes from, as soon as that was said. */
function whose({ job }: Memory, words: (ref: TextRef | undefined) => string | null): string | null {
  const said = ['caller:address', 'caller:name'].map((name) => job[name]?.value);
  const text = said.find((value) => value?.kind === 'text');
  return text?.kind === 'text' ? words(text.text) : null;
}

export function alarmOf({ alarm }: Memory, file: Pick<File, 'entries'>): JobCard['alarm'] {
  if (!alarm) return null;
  const { seq, by, hazard, seen } = alarm;
  return { seq, at: file.entries[seq - 1]?.at ?? '', by, hazard, seen: [...seen] };
}
