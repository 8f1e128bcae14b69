/**
 * Figures for whoever watches the machine, as text that Prometheus reads. No name, no id and no word of anybody is in
 * them: labels are routes, kinds and codes.
 */
import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client';
import type { Desk } from '../../engine/desk/index.ts';
import type { Entry } from '../../engine/index.ts';

export interface Metrics {
  readonly contentType: string;
  text(): Promise<string>;
  answered(route: string, method: string, status: number, ms: number): void;
  /** A feed began (1) or ended (-1). */
  feed(change: 1 | -1): void;
  /** An entry was kept, by whatever server of the shop. */
  entry(entry: Entry): void;
  /** The same desk; its turns and refusals are counted. */
  desk(desk: Desk): Desk;
  /** The same store; how long each of its methods takes is measured. */
  store<T extends object>(store: T): T;
}
export interface MetricsParts {
  readonly clock: () => Date;
  /** Ids of what waits to be said in a chat outside. */
  readonly unsaid: () => Promise<readonly string[]>;
}
/** Seconds. */
const STEPS = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10];

export function createMetrics({ clock, unsaid }: MetricsParts): Metrics {
  const register = new Registry();
  const registers = [register];
  collectDefaultMetrics({ register, prefix: 'nocool_' });
  const answers = new Histogram({
    ...{ name: 'nocool_http_seconds', help: 'How long answers take', registers, buckets: STEPS },
    labelNames: ['route', 'method', 'status'] as const,
  });
  const turns = new Counter({
    ...{ name: 'nocool_turns_total', help: 'Replies to this server, by what became of them', registers },
    labelNames: ['result'] as const,
  });
  const refusals = new Counter({
    ...{ name: 'nocool_refusals_total', help: 'Replies that were not taken, by why', registers },
    labelNames: ['code'] as const,
  });
  const voids = new Counter({
    ...{ name: 'nocool_voids_total', help: 'Proofs of dead that ended, by why, on all servers', registers },
    labelNames: ['reason'] as const,
  });
  const feeds = new Gauge({ name: 'nocool_feed_clients', help: 'Live feeds that are open here', registers });
  const latency = new Histogram({
    ...{ name: 'nocool_store_seconds', help: 'How long the database takes', registers, buckets: STEPS },
    labelNames: ['method', 'result'] as const,
  });
  // Rows of what has to be said hold no time: an age counts from when it was first seen waiting here.
  const waiting = new Map<string, number>();
  new Gauge({
    ...{
      name: 'nocool_outbox_age_seconds',
      help: 'How long the oldest message to a chat outside has waited',
      registers,
    },
    async collect() {
      const now = clock().getTime();
      const ids = new Set(await unsaid().catch(() => [...waiting.keys()]));
      for (const id of waiting.keys()) if (!ids.has(id)) waiting.delete(id);
      for (const id of ids) if (!waiting.has(id)) waiting.set(id, now);
      this.set(Math.max(0, ...[...waiting.values()].map((since) => (now - since) / 1000)));
    },
  });

  return {
    contentType: register.contentType,
    text: () => register.metrics(),
    answered: (route, method, status, ms) => answers.observe({ route, method, status }, ms / 1000),
    feed: (change) => feeds.inc(change),
    entry(entry) {
      if (entry.kind === 'voided') voids.inc({ reason: entry.body.reason });
    },
    desk: (desk) => ({
      ...desk,
      async reply(by, job, reply) {
        const turn = await desk.reply(by, job, reply);
        turns.inc({ result: turn.refusal ? 'refused' : turn.entries.length > 0 ? 'kept' : 'told' });
        if (turn.refusal) refusals.inc({ code: turn.refusal.code });
        return turn;
      },
    }),
    store: (store) =>
      new Proxy(store, {
        get(of, name) {
          const value: unknown = Reflect.get(of, name);
          if (typeof value !== 'function' || typeof name === 'symbol' || name === 'watch') return value;
          return (...given: unknown[]): unknown => {
            const end = latency.startTimer({ method: name });
            const result: unknown = value.apply(of, given);
            if (result instanceof Promise)
              result.then(
                () => end({ result: 'done' }),
                () => end({ result: 'failed' }),
              );
            return result;
          };
        },
      }),
  };
}
