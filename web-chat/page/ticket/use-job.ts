/** The life of an open ticket: what stands, what is being sent, what came back. The server's view is the truth. */
import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { JobView, TicketLine, Turn } from '../../../engine/desk/types.ts';
import type { Prompt, Refusal, Reply } from '../../../engine/index.ts';
import { openShelf } from '../kept/shelf.ts';
import { useOutbox, type Waiting } from '../kept/use-outbox.ts';
import { mayWait } from '../kept/when.ts';
import { getView, postReply, type Trouble } from '../net/api.ts';
import { type Received, receivedAt, receivedNow } from '../net/clock.ts';
import { listen } from '../net/feed.ts';
import type { Photos } from '../parts/values.ts';
import { keptAt } from '../worker/register.ts';

/** Milliseconds before a view that didn't come is asked for again. */
const AGAIN = 5_000;

export interface JobNow {
  readonly view: JobView;
  readonly received: Received;
  /** An earlier answer as a question again. */
  readonly again: Prompt | null;
  readonly refusal: Refusal | null;
  readonly info: readonly string[] | null;
  /** Lines of the ticket that counted before the last change and don't now. */
  readonly fell: readonly TicketLine[];
  readonly sending: boolean;
  /** A reply that makes sense only in contact, and had no answer. */
  readonly unsure: Reply | null;
  readonly trouble: Trouble | null;
  /** Whether news would arrive; false means that what is shown may be old. */
  readonly contact: boolean;
}

/** A reply with the words that it is shown by while it waits. */
export interface Given {
  readonly reply: Reply;
  readonly title: string;
  readonly says: string;
  readonly photos?: Photos;
}

export interface Job extends JobNow {
  /** What waits on this phone for this job, or came back. */
  readonly outbox: Waiting;
  /** True where it was taken or is kept to be sent; a refusal is false, and so is a lost one that can't wait. */
  readonly send: (given: Given) => Promise<boolean>;
  /** The same reply once more, with the same client id. */
  readonly resend: () => Promise<boolean>;
  /** Lines to show as an answer to `why`. */
  readonly tell: (info: readonly string[]) => void;
  readonly leaveUnsure: () => void;
  readonly leaveAgain: () => void;
  readonly refresh: () => Promise<void>;
}

export function useJob(first: JobView, me: string): Job {
  const [now, setNow] = useState<JobNow>(() => ({
    view: first,
    received: receivedNow(),
    again: null,
    refusal: null,
    info: null,
    fell: [],
    sending: false,
    unsure: null,
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

  const outbox = useOutbox(me, (kept, turn, fresh) => {
    if (kept.job !== first.job) return;
    // What comes back late is shown beside what stands; only a fresh refusal belongs to the controls.
    setNow((was) => (fresh ? afterTurn(was, turn) : withView({ ...was, contact: true }, turn.view)));
    // Somebody else's entry may have come while this one was on its way.
    if (heard.current > turn.view.prompt.last) void refresh();
  });

  const ask = useCallback(
    async (reply: Reply): Promise<boolean> => {
      const sent = await postReply(first.job, reply);
      if (sent.ok) {
        setNow((was) => afterTurn(was, sent.value));
        return sent.value.refusal === null;
      }
      change({ trouble: sent, unsure: sent.why === 'refused' ? null : reply });
      if (sent.why === 'lost') void refresh();
      return false;
    },
    [first.job, change, refresh],
  );

  const send = async ({ reply, title, says, photos = {} }: Given): Promise<boolean> => {
    if (busy.current) return false;
    busy.current = true;
    change({ sending: true, trouble: null, unsure: null });
    try {
      if (!mayWait(reply)) return await ask(reply);
      const offline = !latest.current.contact || !navigator.onLine;
      const given = { person: me, job: first.job, reply, title, says, photos, given: Date.now(), offline, back: null };
      const outcome = await outbox.give(given);
      if ('turn' in outcome) return outcome.turn.refusal === null;
      if ('waits' in outcome && outcome.waits?.why === 'lost') void refresh();
      change({ again: null, refusal: null, info: null });
      return true;
    } finally {
      busy.current = false;
      change({ sending: false });
    }
  };

  // A page that the phone kept is an old one: at least as new as the last view that came, and without contact so far.
  useEffect(() => {
    const at = keptAt();
    if (at === null) return;
    change({ contact: false, received: receivedAt(at) });
    void openShelf()
      .then((shelf) => shelf.view(me, first.job))
      .then((kept) => {
        if (!kept || kept.view.now < first.now) return;
        setNow((was) => ({ ...withView(was, kept.view), received: receivedAt(kept.at) }));
      });
  }, [first, me, change]);
  useEffect(() => {
    if (keptAt() !== null && now.view === first) return;
    void openShelf().then((shelf) => shelf.keepView(me, now.view, now.received.wall));
  }, [me, first, now.view, now.received]);

  const { flush } = outbox;
  const sendAll = useRef(flush);
  sendAll.current = flush;
  useEffect(() => {
    const { job, prompt } = first;
    const inContact = () => {
      void refresh();
      void sendAll.current();
    };
    const stop = listen(job, prompt.last, {
      news: (seq) => {
        heard.current = seq;
        if (seq > latest.current.view.prompt.last && !busy.current) void refresh();
      },
      contact: (contact) => {
        // What happened in between comes with the feed; what time did to the isolation comes with the view.
        if (contact && !latest.current.contact) inContact();
        else change({ contact });
      },
    });
    const back = () => document.visibilityState === 'visible' && inContact();
    const away = () => change({ contact: false });
    document.addEventListener('visibilitychange', back);
    window.addEventListener('online', back);
    window.addEventListener('offline', away);
    return () => {
      stop();
      clearTimeout(retry.current);
      document.removeEventListener('visibilitychange', back);
      window.removeEventListener('online', back);
      window.removeEventListener('offline', away);
    };
  }, [first, refresh, change]);

  return {
    ...now,
    outbox,
    send,
    resend: async () => {
      const { unsure } = latest.current;
      change({ trouble: null, unsure: null });
      return unsure ? ask(unsure) : false;
    },
    tell: (info) => change({ info }),
    leaveUnsure: () => change({ unsure: null, trouble: null }),
    leaveAgain: () => change({ again: null, refusal: null }),
    refresh,
  };
}

/** A later view replaces an earlier one, never the other way round. */
function withView(was: JobNow, view: JobView): JobNow {
  const [old, next] = [was.view.prompt, view.prompt];
  if (next.last < old.last || (next.last === old.last && view.now < was.view.now)) return was;
  const moved = next.seq !== old.seq || next.place !== old.place;
  return {
    ...was,
    view,
    received: receivedNow(),
    again: moved ? null : was.again,
    refusal: moved ? null : was.refusal,
    fell: next.last > old.last ? fallen(was.view, view) : was.fell,
  };
}

/** What an amended answer, a withdrawn one or the end of an isolation did to lines that counted. */
function fallen(was: JobView, view: JobView): TicketLine[] {
  const counted = new Set(was.ticket.filter((line) => line.standing === 'kept').map((line) => line.seq));
  return view.ticket.filter((line) => counted.has(line.seq) && line.standing !== 'kept');
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
    unsure: null,
    trouble: null,
    contact: true,
  };
}
