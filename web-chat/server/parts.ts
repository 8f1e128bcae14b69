import type { FastifyBaseLogger } from 'fastify';
import type { Desk } from '../../engine/desk/index.ts';
import type { ChatHealth } from './chats.ts';
import type { Metrics } from './metrics.ts';

/** What the web chat keeps of sign-ins; the store has these functions. Hashes only, instants as ISO 8601 in UTC. */
export interface Sessions {
  saveLink(hash: string, person: string, until: string): Promise<void>;
  /** The person, once; null where the link is unknown, used or past its time. */
  useLink(hash: string, at: string): Promise<string | null>;
  saveSession(hash: string, person: string, until: string, began: { made: string; device: string }): Promise<void>;
  session(hash: string, at: string): Promise<string | null>;
  endSession(hash: string): Promise<void>;
}

/** What the server is put together from. */
export interface WebParts {
  readonly desk: Desk;
  readonly store: Sessions;
  readonly clock: () => Date;
  readonly log: FastifyBaseLogger;
  /** True behind https: cookies are sent over https alone. */
  readonly secureCookies: boolean;
  /** Where people reach it, for links and for the check of Origin. */
  readonly publicUrl: string;
  /** How the chats outside are, by their names; none where none is started. */
  readonly chats?: () => Readonly<Record<string, ChatHealth>>;
  /** Whether the database answers; it is taken to when left out. */
  readonly isReady?: () => Promise<boolean>;
  readonly metrics?: Metrics;
  /** What opens /metrics; it isn’t there when left out. */
  readonly metricsToken?: string;
  /** Milliseconds between signs of life on a feed; 15 s when left out. */
  readonly heartbeat?: number;
  /** Requests that one person may make in a minute; 600 when left out, 0 counts nothing. */
  readonly perPerson?: number;
  /** Milliseconds of lag from which on reading is put off; 1000 when left out. */
  readonly mostLag?: number;
  /** How many proxies stand in front and say whose address it was; none when left out. */
  readonly proxies?: number;
  /** Folder of the built page; found by itself when left out. */
  readonly pageFolder?: string;
}
