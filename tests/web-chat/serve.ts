/** The web chat on a free port of this machine. */
import type { FastifyInstance } from 'fastify';
import type { Desk } from '../../engine/desk/index.ts';
import { issueLink } from '../../engine/desk/index.ts';
import { buildServer } from '../../web-chat/server/app.ts';
import { createLog } from '../../web-chat/server/log.ts';
import type { Metrics } from '../../web-chat/server/metrics.ts';
import type { Sessions } from '../../web-chat/server/parts.ts';

export interface Serving {
  readonly app: FastifyInstance;
  readonly url: string;
  /** Every line it logged. */
  readonly logged: readonly string[];
  readonly linkFor: (person: string) => Promise<string>;
  /** Signs in and gives the cookie to send. */
  readonly cookieFor: (person: string) => Promise<string>;
  readonly close: () => Promise<void>;
}

interface Given {
  readonly desk: Desk;
  readonly pageFolder: string;
  readonly store: Sessions;
  readonly clock?: () => Date;
  readonly secureCookies?: boolean;
  readonly heartbeat?: number;
  /** Requests a minute; without a limit when left out, for a test asks more than a person. */
  readonly perPerson?: number;
  /** Tests share a slow machine: far away when left out. */
  readonly mostLag?: number;
  readonly proxies?: number;
  readonly isReady?: () => Promise<boolean>;
  readonly metrics?: Metrics;
  readonly metricsToken?: string;
  /** A free one when left out. */
  readonly port?: number;
}

export async function serve({
  desk,
  pageFolder,
  store,
  clock = () => new Date(),
  secureCookies = false,
  port = 0,
  perPerson = 0,
  mostLag = 60_000,
  ...more
}: Given): Promise<Serving> {
  const logged: string[] = [];
  const log = createLog('info', { write: (line) => void logged.push(line) });
  const parts = {
    desk,
    store,
    clock,
    log,
    pageFolder,
    secureCookies,
    perPerson,
    mostLag,
    publicUrl: 'http://localhost',
    ...more,
  };
  const app = buildServer(parts);
  const url = await app.listen({ host: '127.0.0.1', port });
  const linkFor = (person: string) => issueLink({ ...parts, publicUrl: url }, person);
  const cookieFor = async (person: string): Promise<string> => {
    const token = (await linkFor(person)).split('/').at(-1) ?? '';
    const answer = await fetch(`${url}/sign-in`, {
      method: 'POST',
      body: new URLSearchParams({ token }),
      redirect: 'manual',
    });
    return answer.headers.getSetCookie()[0]?.split(';')[0] ?? '';
  };
  // A client that gave up a feed opens another connection at once and asks nothing on it: no server waits for that one.
  const close = async (): Promise<void> => {
    const rest = setTimeout(() => app.server.closeAllConnections(), 500);
    await app.close();
    clearTimeout(rest);
  };
  return { app, url, logged, linkFor, cookieFor, close };
}
