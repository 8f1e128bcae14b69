/** What a question is headed with where it is more than the next step: the same words in every door. */
import type { Prompt } from './schema.ts';

const KINDS: Readonly<Record<Prompt['kind'], string | null>> = {
  step: null,
  waiting: 'WAITING FOR A SENIOR',
  emergency: 'EMERGENCY',
  'hazard-question': 'DANGER OR AN OLD MARK',
  stopping: 'STOPPING',
  paused: 'PAUSED',
  'taking-over': 'CHANGING HANDS',
  held: 'HELD',
  finished: 'FINISHED',
  signed: 'SIGNED',
};

/** Null where nothing needs to be said. */
export const sayKind = ({ kind, amends }: Prompt): string | null =>
  amends === null ? KINDS[kind] : 'AN EARLIER ANSWER';
