/** The words that work everywhere, as keys. What each does is the engine's; which are shown is decided here. */
import type { JobView } from '../../../engine/desk/types.ts';
import type { CommandName } from '../../../engine/index.ts';
import { isSenior, type Me } from '../state.ts';

export interface CommandKey {
  readonly name: CommandName;
  readonly label: string;
  /** Asked for words first; `optional` words may be left out. */
  readonly words?: { readonly ask: string; readonly send: string; readonly optional?: boolean };
}

/** Always in view. */
export const FIRST: readonly CommandKey[] = [
  { name: 'alarm', label: 'Emergency' },
  { name: 'stop', label: 'Stop' },
  { name: 'why', label: 'Why' },
];

const EVERYBODY: readonly CommandKey[] = [
  { name: 'power is back', label: 'Power is back' },
  { name: 'lock is off', label: 'Lock is off' },
  { name: 'where', label: 'Where am I' },
  { name: 'back', label: 'Back: change the last answer' },
  {
    name: 'senior',
    label: 'Senior',
    words: { ask: 'What should the senior know?', send: 'Call a senior', optional: true },
  },
  {
    name: 'take back',
    label: 'Take back the last answer',
    words: { ask: 'What rests on it is asked again. Reason:', send: 'Take back', optional: true },
  },
  { name: 'note', label: 'Note', words: { ask: 'Note', send: 'Keep the note' } },
  { name: 'hand over', label: 'Hand over', words: { ask: 'To whom? A name.', send: 'Hand over' } },
  { name: 'help', label: 'Help' },
];

const SKIP: CommandKey = { name: 'skip', label: 'Skip', words: { ask: 'Why is it skipped?', send: 'Skip' } };
const APPROVE: CommandKey = {
  name: 'approve',
  label: 'Approve',
  words: { ask: 'Reason', send: 'Approve', optional: true },
};
const RELEASE: CommandKey = {
  name: 'release',
  label: 'Release the emergency',
  words: { ask: 'Why is it safe again?', send: 'Release' },
};
const ASK: CommandKey = { name: 'ask', label: 'Ask', words: { ask: 'Your question', send: 'Ask' } };
const SIGN: CommandKey = { name: 'sign', label: 'Sign' };
const SEND_BACK: CommandKey = {
  name: 'send back',
  label: 'Send back',
  words: { ask: 'What is missing?', send: 'Send back' },
};

/** What a senior does with a job, by the word that does it. */
export const SENIOR_KEYS: Readonly<Partial<Record<CommandName, CommandKey>>> = {
  release: RELEASE,
  approve: APPROVE,
  ask: ASK,
  sign: SIGN,
  'send back': SEND_BACK,
};

/** What is behind "More", what this moment asks for first. */
export function moreKeys({ prompt }: JobView, me: Me): readonly CommandKey[] {
  const now: CommandKey[] = [];
  if (isSenior(me)) {
    if (prompt.kind === 'waiting' || prompt.kind === 'held') now.push(APPROVE);
    if (prompt.kind === 'emergency') now.push(RELEASE);
    if (prompt.kind === 'finished') now.push(SIGN, SEND_BACK);
    now.push(ASK);
  }
  return [...now, ...(prompt.skippable ? [SKIP] : []), ...EVERYBODY];
}
