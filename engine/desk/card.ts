/** One line of the list of calls. */
import { TranscriptCorrupt, TranscriptMismatch } from '../errors.ts';
import { asOf, memoryOf, placeIdOf, planOf } from '../replay.ts';
import type { Prompt } from '../schema.ts';
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
  training: false,
});

/** `p` is the prompt of this file at this time. */
export function cardOf(job: string, file: File, at: string, p: Prompt): JobCard {
  const standing = asOf(file.standing, at);
  const memory = memoryOf(standing);
  const here = placeIdOf(standing);
  const states: Record<string, JobCard['state']> = { '!emergency': 'emergency', '!paused': 'paused', '!held': 'held' };
  const ended = planOf(standing).endings.includes(here);
  return {
    job,
    title: memory.title === null ? '' : (file.texts.get(memory.title.ref) ?? '(removed)'),
    state: memory.signed ? 'signed' : ended ? 'finished' : (states[here] ?? 'under-way'),
    where: p.title,
    assigned: [...memory.assigned],
    verdict: p.verdicts.at(-1)?.title ?? null,
    updated: memory.at,
    isolation: p.isolation.map((l) => `${l.cabinet}: ${l.words}`).join(' · '),
    training: memory.training,
  };
}
