/** What is kept on this phone of one person, and what becomes of it while a page is open. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Turn } from '../../../engine/desk/types.ts';
import type { Trouble } from '../net/api.ts';
import { Outbox, type Outcome } from './outbox.ts';
import { type KeptReply, type NewReply, openShelf } from './shelf.ts';

export interface Waiting {
  readonly replies: readonly KeptReply[];
  readonly trouble: Trouble | null;
  /** False where a reload loses what is kept. */
  readonly lasts: boolean;
  readonly give: (reply: NewReply) => Promise<Outcome>;
  readonly drop: (order: number) => Promise<void>;
  readonly flush: () => Promise<void>;
}

/** `answered` hears of every reply that the server took or refused while this page is open. */
export function useOutbox(person: string, answered: (reply: KeptReply, turn: Turn, fresh: boolean) => void): Waiting {
  const [replies, setReplies] = useState<readonly KeptReply[]>([]);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const [lasts, setLasts] = useState(true);
  const hears = useRef(answered);
  hears.current = answered;
  const outbox = useRef<Outbox>(undefined);
  useEffect(() => {
    const made = new Outbox(person, {
      changed: setReplies,
      trouble: setTrouble,
      answered: (...what) => hears.current(...what),
    });
    outbox.current = made;
    void made.start();
    void openShelf().then((shelf) => setLasts(shelf.lasts));
    const flush = () => void made.flush();
    window.addEventListener('online', flush);
    return () => {
      window.removeEventListener('online', flush);
      made.stop();
    };
  }, [person]);
  return {
    replies,
    trouble,
    lasts,
    give: (reply) => outbox.current?.give(reply) ?? Promise.resolve({ waits: null }),
    drop: async (order) => outbox.current?.drop(order),
    flush: async () => outbox.current?.flush(),
  };
}
