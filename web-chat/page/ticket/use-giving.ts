/** What a tap, a filled-in question, a typed line or a key becomes: a reply, with the words that it is shown by. */
import { useState } from 'preact/hooks';
import type { JobView } from '../../../engine/desk/types.ts';
import type { GivenParts, Prompt, Reply } from '../../../engine/index.ts';
import { clientId } from '../net/client-id.ts';
import { serverTime } from '../net/clock.ts';
import { spelledOut } from '../parts/values.ts';
import type { Me } from '../state.ts';
import type { CommandKey } from './commands.ts';
import type { Draft } from './use-draft.ts';
import type { Given, Job } from './use-job.ts';

type Bare<T> = T extends Reply ? Omit<T, 'client' | 'said'> : never;

interface Around {
  readonly job: Job;
  readonly me: Me;
  readonly prompt: Prompt;
  readonly draft: Draft;
  /** The next question may lead the eye. */
  readonly lead: () => void;
}

export interface Giving {
  readonly sendParts: (parts: GivenParts) => void;
  /** True where it was taken or is kept to be sent. */
  readonly sendText: (text: string, says?: string) => Promise<boolean>;
  readonly command: (key: Pick<CommandKey, 'name' | 'label'>, words: string) => void;
  readonly takeBack: (why: string) => void;
  /** An earlier answer as a question again. */
  readonly open: (seq: number) => void;
  /** What stood in the controls of a reply that was not taken. */
  readonly lost: string;
  readonly reason: string;
  readonly setReason: (reason: string) => void;
}

export function useGiving({ job, me, prompt, draft, lead }: Around): Giving {
  const [lost, setLost] = useState('');
  const [reason, setReason] = useState('');
  const { view, received, refusal } = job;

  const reply = async (bare: Bare<Reply>, shown: Omit<Given, 'reply'>): Promise<boolean> => {
    const had = spelledOut(prompt, draft.values);
    lead();
    setReason('');
    const said = new Date(serverTime(view.now, received)).toISOString();
    const taken = await job.send({ ...shown, reply: { ...bare, client: clientId(), said } as Reply });
    setLost(taken ? '' : had);
    return taken;
  };
  const sendText = (text: string, says = text): Promise<boolean> => {
    const unfinished = refusal?.draft ?? {};
    const rest = {
      ...(prompt.amends === null ? {} : { amends: prompt.amends }),
      ...(Object.keys(unfinished).length === 0 ? {} : { draft: unfinished }),
    };
    return reply({ kind: 'text', seq: prompt.seq, text, ...rest }, { title: '', says });
  };
  return {
    sendText,
    sendParts(parts) {
      const { seq, amends, title } = prompt;
      const why = reason.trim() === '' ? {} : { reason: reason.trim() };
      const shown = { title, says: spelledOut(prompt, { ...draft.values, ...parts }), photos: draft.photos };
      void reply(
        amends === null ? { kind: 'answer', seq, parts } : { kind: 'amend', of: amends, parts, ...why },
        shown,
      );
    },
    command({ name, label }, words) {
      const because = prompt.why === null ? [] : [prompt.why];
      const reasons = [...because, ...prompt.sources.map((each) => `Source: ${each}`)];
      // What came with the question needs no contact.
      if (name === 'why' && reasons.length > 0) return job.tell(reasons);
      const says = words === '' ? label : `${label}: ${words}`;
      // A skip belongs to its question, which a typed line carries with it.
      if (name === 'skip') return void sendText(`skip ${words}`, says);
      const of = name === 'take back' ? lastOwn(view, me.id) : null;
      const text = words === '' ? {} : { text: words };
      void reply({ kind: 'command', name, ...of, ...text }, { title: '', says });
    },
    takeBack(why) {
      const withReason = why === '' ? {} : { reason: why };
      const shown = { title: prompt.title, says: 'Take back' };
      void reply({ kind: 'withdraw', of: prompt.amends ?? 0, ...withReason }, shown);
    },
    open: (seq) => void reply({ kind: 'command', name: 'back', of: seq }, { title: '', says: '' }),
    lost,
    reason,
    setReason,
  };
}

/** The person's own last answer that stands: taken back late, it is still that one. */
function lastOwn({ ticket }: JobView, me: string): { of: number } | null {
  const line = ticket.findLast((each) => each.by === me && each.kind === 'answered' && each.standing !== 'fallen');
  return line ? { of: line.seq } : null;
}
