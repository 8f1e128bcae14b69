/**
 * Replies on their way: each is on the phone before it is sent, and leaves it when the server has answered. They are
 * sent one after the other, in the order in which they were given, by one tab at a time. A reply keeps its client id, so
 * however often it is sent it counts once. What comes back without being taken stays here until the person has seen it.
 */
import type { Turn } from '../../../engine/desk/types.ts';
import type { Reply } from '../../../engine/index.ts';
import { isOutdated, postPhoto, postReply, type Sent, type Trouble } from '../net/api.ts';
import { type KeptReply, type NewReply, openShelf, type Shelf } from './shelf.ts';

/** Milliseconds between attempts: the first waits, doubled up to the last. */
const [SOON, LATE] = [3_000, 30_000];
/** Milliseconds after which a reply that is still under way was given without contact, whatever the page believed. */
const IN_CONTACT = 30_000;
const CHANNEL = 'nocool-outbox';

/** What came of a reply that was given now. `waits`: it is kept and will be sent. */
export type Outcome = { readonly turn: Turn } | { readonly waits: Trouble | null } | { readonly back: string };

interface Heard {
  /** Something is kept, sent, or came back. */
  readonly changed: (replies: readonly KeptReply[]) => void;
  /** The server answered a reply; `fresh` where whoever gave it is still waiting for it. */
  readonly answered: (reply: KeptReply, turn: Turn, fresh: boolean) => void;
  /** No answer came, or nobody is signed in. Null: all is sent. */
  readonly trouble: (trouble: Trouble | null) => void;
}

export class Outbox {
  readonly #person: string;
  readonly #heard: Heard;
  readonly #channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel(CHANNEL) : null;
  readonly #outcomes = new Map<number, Outcome>();
  readonly #fresh = new Set<number>();
  #running: Promise<void> | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #wait = SOON;

  constructor(person: string, heard: Heard) {
    this.#person = person;
    this.#heard = heard;
    if (this.#channel) this.#channel.onmessage = () => void this.#show();
  }

  /** Shows what is kept and begins to send it. */
  async start(): Promise<void> {
    await this.#show();
    await this.flush();
  }
  stop(): void {
    clearTimeout(this.#timer);
    this.#channel?.close();
  }

  /** Keeps a reply, sends it with whatever waits before it, and says what came of it. */
  async give(reply: NewReply): Promise<Outcome> {
    const { order } = await (await openShelf()).add(reply);
    this.#fresh.add(order);
    await this.#changed();
    await this.flush();
    this.#fresh.delete(order);
    const outcome = this.#outcomes.get(order) ?? { waits: null };
    this.#outcomes.delete(order);
    return outcome;
  }

  /** The person doesn't want it sent, or has seen that it came back. */
  async drop(order: number): Promise<void> {
    await (await openShelf()).remove(order);
    await this.#changed();
  }

  /** Sends what waits, now. */
  async flush(): Promise<void> {
    clearTimeout(this.#timer);
    // What was added while others were sent is sent by the same run, or by the next.
    while (this.#running) await this.#running;
    this.#running = exclusive(() => this.#sendAll()).finally(() => {
      this.#running = null;
    });
    await this.#running;
  }

  async #sendAll(): Promise<void> {
    const shelf = await openShelf();
    for (;;) {
      const next = (await shelf.all(this.#person)).find((each) => each.back === null);
      if (!next) break;
      const sent = await deliver(next);
      if (sent.ok) await this.#settle(shelf, next, sent.value);
      // A newer server may not understand this page; after a reload it is sent by one that it understands.
      else if (sent.why === 'refused' && !isOutdated()) await this.#returned(shelf, next, 'refused', sent.what);
      else return this.#later(next, sent);
    }
    this.#wait = SOON;
    this.#heard.trouble(null);
  }

  async #settle(shelf: Shelf, reply: KeptReply, turn: Turn): Promise<void> {
    const { refusal } = turn;
    const fresh = this.#fresh.has(reply.order);
    if (refusal === null || fresh) {
      await shelf.remove(reply.order);
      this.#outcomes.set(reply.order, { turn });
      await this.#changed();
    } else await this.#returned(shelf, reply, refusal.code, refusal.text);
    this.#heard.answered(reply, turn, fresh);
  }

  async #returned(shelf: Shelf, reply: KeptReply, code: string, text: string): Promise<void> {
    await shelf.change({ ...reply, back: { code, text } });
    this.#outcomes.set(reply.order, { back: text });
    await this.#changed();
  }

  #later(reply: KeptReply, trouble: Trouble): void {
    this.#outcomes.set(reply.order, { waits: trouble });
    // From now on nobody waits for it at the controls.
    this.#fresh.clear();
    this.#heard.trouble(trouble);
    this.#timer = setTimeout(() => void this.flush(), this.#wait);
    this.#wait = Math.min(this.#wait * 2, LATE);
  }

  async #changed(): Promise<void> {
    this.#channel?.postMessage('changed');
    await this.#show();
  }
  async #show(): Promise<void> {
    this.#heard.changed(await (await openShelf()).all(this.#person));
  }
}

/** One tab at a time, where the browser can say so. Where it can't, a reply sent twice still counts once. */
function exclusive(run: () => Promise<void>): Promise<void> {
  return 'locks' in navigator ? navigator.locks.request(CHANNEL, run) : run();
}

/** Photos first: the answer carries their hashes. */
async function deliver({ job, reply, photos, given, offline }: KeptReply): Promise<Sent<Turn>> {
  const hashes: Record<string, string> = {};
  for (const [part, photo] of Object.entries(photos)) {
    const sent = await postPhoto(job, photo);
    if (!sent.ok) return sent;
    hashes[part] = sent.value.hash;
  }
  return postReply(job, marked('parts' in reply ? { ...reply, parts: { ...reply.parts, ...hashes } } : reply));

  function marked(whole: Reply): Reply {
    const late = offline || Date.now() - given > IN_CONTACT;
    return late && (whole.kind === 'answer' || whole.kind === 'text') ? { ...whole, offline: true } : whole;
  }
}
