/** Server-sent events over raw responses: events in order, a heartbeat, an end when the reader or the session goes. */
import type { OutgoingHttpHeaders, ServerResponse } from 'node:http';
import { Problem } from './problem.ts';

/** Milliseconds between heartbeats: shorter than the minute after which proxies hang up. */
const HEARTBEAT = 15_000;
/** Milliseconds after which a browser tries again. */
const RETRY = 2_000;
/** Feeds that one person may have open at once, in all tabs and on all devices. Ours. */
export const MOST = 50;
/** Bytes a reader may lag behind before it is let go; it resumes where it was. */
const LAG = 256 * 1024;

export class Feeds {
  readonly #open = new Set<Feed>();
  readonly #beat: number;
  /** How many each person has. */
  readonly #persons = new Map<string, number>();
  readonly #counted: (change: 1 | -1) => void;

  /** `beat`: milliseconds between signs of life. `counted`: told of each that begins and ends. */
  constructor(beat = HEARTBEAT, counted: (change: 1 | -1) => void = () => undefined) {
    this.#beat = beat;
    this.#counted = counted;
  }

  /**
   * A feed for this person that takes events from now on and writes them once it is opened. Throws where they have too many.
   */
  prepare(person: string, mayStay: () => Promise<boolean>): Feed {
    if ((this.#persons.get(person) ?? 0) >= MOST)
      throw new Problem(429, 'too-many', 'Too many pages of yours are open. Close some of them.');
    const feed = new Feed(this.#beat, mayStay, () => {
      if (this.#open.delete(feed)) this.#count(person, -1);
    });
    this.#open.add(feed);
    this.#count(person, 1);
    return feed;
  }

  #count(person: string, change: 1 | -1): void {
    const left = (this.#persons.get(person) ?? 0) + change;
    if (left === 0) this.#persons.delete(person);
    else this.#persons.set(person, left);
    this.#counted(change);
  }

  endAll(): void {
    for (const feed of [...this.#open]) feed.end();
  }
}

class Feed {
  readonly #every: number;
  readonly #mayStay: () => Promise<boolean>;
  readonly #ended: () => void;
  #to: ServerResponse | null = null;
  #early: string[] = [];
  #stop: () => void = () => undefined;
  #beat: NodeJS.Timeout | undefined;

  constructor(every: number, mayStay: () => Promise<boolean>, ended: () => void) {
    this.#every = every;
    this.#mayStay = mayStay;
    this.#ended = ended;
  }

  event(id: number, data: unknown): void {
    this.#write(`id: ${id}\ndata: ${JSON.stringify(data)}\n\n`);
  }

  open(to: ServerResponse, headers: OutgoingHttpHeaders, stop: () => void): void {
    this.#stop = stop;
    to.on('close', () => this.end());
    to.on('error', () => this.end());
    // A connection that has carried a feed is not used again: a server that stops need not wait for it.
    to.writeHead(200, {
      ...headers,
      connection: 'close',
      'content-type': 'text/event-stream',
      'x-accel-buffering': 'no',
    });
    to.write(`retry: ${RETRY}\n\n`);
    this.#to = to;
    for (const text of this.#early) to.write(text);
    this.#early = [];
    this.#beat = setInterval(() => void this.#heartbeat(), this.#every);
    this.#beat.unref();
    if (to.destroyed) this.end();
  }

  /** There was nothing to open: it is not kept waiting. */
  readonly failed = (error: unknown): never => {
    this.end();
    throw error;
  };

  end(): void {
    clearInterval(this.#beat);
    this.#stop();
    this.#stop = () => undefined;
    this.#to?.end();
    this.#ended();
  }

  /** A signed-out reader is let go at the next beat. */
  async #heartbeat(): Promise<void> {
    const stays = await this.#mayStay().catch(() => false);
    if (stays) this.#write('event: beat\ndata:\n\n');
    else this.end();
  }

  #write(text: string): void {
    if (!this.#to) this.#early.push(text);
    else if (this.#to.writableLength > LAG) this.end();
    else this.#to.write(text);
  }
}
