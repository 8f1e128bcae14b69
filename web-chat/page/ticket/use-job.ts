/** The life of an open ticket: what stands, what is being sent, what came back. The server's view is the truth. */
import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { JobView, Turn } from '../../../engine/desk/types.ts';
import type { Prompt, Refusal, Reply } from '../../../engine/index.ts';
import { getView, postReply, type Sent } from '../net/api.ts';
import { listen } from '../net/feed.ts';

/** Everything about a reply that isn't the same for all. */
export type Trouble = { readonly why: Exclude<Sent<never>, { ok: true }>['why']; readonly what: string };

/** Milliseconds before a view that didn't come is asked for again. */
const AGAIN = 5_000;

export interface JobNow {
  readonly view: JobView;
  /** An earlier answer as a question again; it stands in front of the prompt. */
  readonly again: Prompt | null;
  readonly refusal: Refusal | null;
  readonly info: readonly string[] | null;
  readonly sending: boolean;
  readonly unsent: Reply | null;
  readonly trouble: Trouble | null;
  /** Whether news would arrive; false means that what is shown may be old. */
  readonly contact: boolean;
}

export interface Job extends JobNow {
  /** True where the reply was taken; a refusal and a lost reply are both false. */
  readonly send: (reply: Reply) => Promise<boolean>;
  /** The same reply once more, with the same client id. */
  readonly resend: () => Promise<boolean>;
  readonly restoreUnsent: (reply: Reply | null) => void;
  readonly leaveAgain: () => void;
  readonly refresh: () => Promise<void>;
}

export function useJob(first: JobView): Job {
  const [now, setNow] = useState<JobNow>(() => ({
    view: first,
    again: null,
    refusal: null,
    info: null,
    sending: false,
    unsent: null,
    trouble: null,
    contact: true,
  }));
  const latest = useRef(now);
  latest.current = now;
  const busy = useRef(false);
  /** The latest entry that the feed told of. */
  const heard = useRef(0);
  const change = useCallback((part: Partial<JobNow>) => setNow((was) => ({ ...was, ...part })), []);

  const retry = useRef<ReturnType<typeof setTimeout>>(undefined);
  // Not given up: until it comes, what is shown may be old, and the strip says so.
  const refresh = useCallback(async (): Promise<void> => {
    clearTimeout(retry.current);
    const got = await getView(first.job);
    if (got.ok) return setNow((was) => ({ ...withView(was, got.value), contact: true }));
    if (got.why === 'signed-out' || got.why === 'refused') return change({ trouble: got });
    change({ contact: false });
    clearTimeout(retry.current);
    retry.current = setTimeout(() => void refresh(), AGAIN);
  }, [first.job, change]);

  const send = useCallback(
    async (reply: Reply): Promise<boolean> => {
      if (busy.current) return false;
      busy.current = true;
      change({ sending: true, trouble: null, unsent: reply });
      const sent = await postReply(first.job, reply);
      busy.current = false;
      if (!sent.ok) {
        const mayRepeat = sent.why !== 'refused';
        change({ sending: false, trouble: sent, unsent: mayRepeat ? reply : null });
        return false;
      }
      setNow((was) => afterTurn(was, sent.value));
      // Somebody else's entry may have come while this one was on its way.
      if (heard.current > sent.value.view.prompt.last) void refresh();
      return sent.value.refusal === null;
    },
    [first.job, change, refresh],
  );

  useEffect(() => {
    const { job, prompt } = first;
    const stop = listen(job, prompt.last, {
      news: (seq) => {
        heard.current = seq;
        if (seq > latest.current.view.prompt.last && !busy.current) void refresh();
      },
      contact: (contact) => {
        // What happened in between comes with the feed; what time did to the isolation comes with the view.
        if (contact && !latest.current.contact) void refresh();
        else change({ contact });
      },
    });
    const back = () => document.visibilityState === 'visible' && void refresh();
    document.addEventListener('visibilitychange', back);
    window.addEventListener('online', back);
    return () => {
      stop();
      clearTimeout(retry.current);
      document.removeEventListener('visibilitychange', back);
      window.removeEventListener('online', back);
    };
  }, [first, refresh, change]);

  return {
    ...now,
    send,
    resend: () => (latest.current.unsent ? send(latest.current.unsent) : Promise.resolve(false)),
    restoreUnsent: (unsent) => change({ unsent, trouble: unsent ? { why: 'lost', what: '' } : null }),
    leaveAgain: () => change({ again: null, refusal: null }),
    refresh,
  };
}

/** A later view replaces an earlier one, never the other way round. */
function withView(was: JobNow, view: JobView): JobNow {
  const [old, next] = [was.view.prompt, view.prompt];
  if (next.last < old.last || (next.last === old.last && view.now < was.view.now)) return was;
  const moved = next.seq !== old.seq || next.place !== old.place;
  return { ...was, view, again: moved ? null : was.again, refusal: moved ? null : was.refusal };
}

function afterTurn(was: JobNow, turn: Turn): JobNow {
  const kept = withView(was, turn.view);
  // `why` and `where` answer beside an open change; anything taken closes it.
  const again = turn.again ?? (turn.entries.length === 0 ? was.again : null);
  return {
    ...kept,
    again: turn.refusal?.code === 'stale' ? null : again,
    refusal: turn.refusal,
    info: turn.info,
    sending: false,
    unsent: null,
    trouble: null,
  };
}
