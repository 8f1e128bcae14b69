/** The life of a job on the review desk: it follows what happens on site, and what is decided here goes to the desk. */
import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { Recomputed, ReviewView } from '../../../engine/desk/types.ts';
import type { CommandName } from '../../../engine/index.ts';
import { getReview, postRecompute, postReply, type Trouble } from '../net/api.ts';
import { clientId } from '../net/client-id.ts';
import { type Received, receivedNow, serverTime } from '../net/clock.ts';
import { listen } from '../net/feed.ts';

/** Milliseconds before a view that didn't come is asked for again. */
const AGAIN = 5_000;

export interface ReviewNow {
  readonly review: ReviewView;
  readonly received: Received;
  readonly contact: boolean;
  readonly busy: boolean;
  /** What came of the last thing that was done here. */
  readonly said: string | null;
  readonly recomputed: Recomputed | null;
}
interface Reviewing extends ReviewNow {
  readonly command: (name: CommandName, words: string) => Promise<boolean>;
  readonly recompute: () => Promise<void>;
  readonly refresh: () => Promise<void>;
}

export function useReview(first: ReviewView): Reviewing {
  const [now, setNow] = useState<ReviewNow>(() => ({
    ...{ review: first, received: receivedNow(), contact: true, busy: false, said: null, recomputed: null },
  }));
  const latest = useRef(now);
  latest.current = now;
  const change = useCallback((part: Partial<ReviewNow>) => setNow((was) => ({ ...was, ...part })), []);
  const { job } = first.view;

  const retry = useRef<ReturnType<typeof setTimeout>>(undefined);
  const refresh = useCallback(async (): Promise<void> => {
    clearTimeout(retry.current);
    const got = await getReview(job);
    if (got.ok) return setNow((was) => newer(was, got.value));
    if (got.why === 'signed-out' || got.why === 'refused') return change({ said: got.what });
    change({ contact: false });
    retry.current = setTimeout(() => void refresh(), AGAIN);
  }, [job, change]);

  useEffect(() => {
    const stop = listen(job, first.view.prompt.last, {
      news: (seq) => {
        if (seq > latest.current.review.view.prompt.last) void refresh();
      },
      contact: (contact) => {
        if (contact && !latest.current.contact) void refresh();
        else change({ contact });
      },
    });
    return () => {
      stop();
      clearTimeout(retry.current);
    };
  }, [job, first, refresh, change]);

  const whole = async <T>(work: () => Promise<T>): Promise<T | null> => {
    if (latest.current.busy) return null;
    change({ busy: true, said: null });
    try {
      return await work();
    } finally {
      change({ busy: false });
    }
  };
  return {
    ...now,
    refresh,
    async command(name, words) {
      const { review, received } = latest.current;
      const said = new Date(serverTime(review.view.now, received)).toISOString();
      const text = words === '' ? {} : { text: words };
      const done = await whole(async () => {
        const sent = await postReply(job, { kind: 'command', name, client: clientId(), said, ...text });
        if (!sent.ok) {
          change({ said: troubleWords(sent) });
          return false;
        }
        change({ said: sent.value.refusal?.text ?? DONE[name] ?? 'Done.' });
        await refresh();
        return sent.value.refusal === null;
      });
      return done ?? false;
    },
    async recompute() {
      await whole(async () => {
        const got = await postRecompute(job);
        change(got.ok ? { recomputed: got.value } : { said: troubleWords(got) });
      });
    },
  };
}

const DONE: Readonly<Partial<Record<CommandName, string>>> = {
  ask: 'Asked. The answer comes here as soon as it is given.',
  sign: 'Signed.',
  'send back': 'Sent back.',
  approve: 'Approved.',
  release: 'Released.',
};
const troubleWords = ({ why, what }: Trouble): string =>
  why === 'lost' ? 'No answer came. Nobody knows whether it was kept: look below before you do it again.' : what;

/** A later view replaces an earlier one, never the other way round. What was recomputed of fewer entries is old. */
function newer(was: ReviewNow, review: ReviewView): ReviewNow {
  const [old, next] = [was.review.view, review.view];
  if (next.prompt.last < old.prompt.last || (next.prompt.last === old.prompt.last && next.now < old.now)) return was;
  const recomputed = next.prompt.last > old.prompt.last ? null : was.recomputed;
  return { ...was, review, received: receivedNow(), contact: true, recomputed };
}
