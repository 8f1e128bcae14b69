/**
 * How much one person or one address may ask, and what happens when the machine can’t keep up. Nothing collapses: whoever
 * asks too much or too early is told when to ask again, and a reply that was not taken stays on the phone.
 */
import rateLimit from '@fastify/rate-limit';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { ASSETS } from './guard.ts';
import { watchPressure } from './pressure.ts';
import { Problem } from './problem.ts';

declare module 'fastify' {
  interface FastifyContextConfig {
    /** What opens something without a session is asked for less often: nobody tries links by the thousand. */
    opens?: boolean;
    /** Asked by whoever looks after the machine, also while it is busy. */
    always?: boolean;
    /** What people say on a call, and who is told of a danger, goes through as long as anything does. */
    last?: boolean;
  }
}

/** Requests in a minute. A person at work makes some dozens; a phone that comes back sends what it kept at once. */
export const PER_PERSON = 600;
/** An address may be that of a whole shop. */
const ADDRESS_SHARE = 5;
/** Of these an address has so many: one person in a hurry opens a few links. */
const OPENS_SHARE = 1 / 20;
const MINUTE = 60_000;

/** Milliseconds by which the event loop lags, on average over a second. Ours. */
export const MOST_LAG = 1_000;
/** Replies are taken up to so many times that lag. */
const LAST = 20;
/** Seconds after which it is worth asking again. */
const AGAIN = 5;

/** Puts both on a server; `perPerson` 0 counts nothing, `mostLag` is in ms. Gives the check for whoever is signed in. */
export function limitRates(
  app: FastifyInstance,
  perPerson: number,
  mostLag: number,
): (request: FastifyRequest, reply: FastifyReply) => Promise<void> {
  type Check = ReturnType<FastifyInstance['createRateLimit']>;
  const checks = new Map<'person' | 'address' | 'opens', Check>();
  app.register(rateLimit, { global: false });
  app.after(() => {
    const by = (max: number, key?: (request: FastifyRequest) => string): Check =>
      app.createRateLimit({
        max: Math.max(1, Math.round(max)),
        timeWindow: MINUTE,
        ...(key ? { keyGenerator: key } : {}),
      });
    checks.set(
      'person',
      by(perPerson, ({ person }) => person?.id ?? ''),
    );
    checks.set('address', by(perPerson * ADDRESS_SHARE));
    checks.set('opens', by(perPerson * OPENS_SHARE));
  });
  const mustBeWithin = async (which: 'person' | 'address' | 'opens', request: FastifyRequest, reply: FastifyReply) => {
    const found = perPerson === 0 ? undefined : await checks.get(which)?.(request);
    if (!found || found.isAllowed || !found.isExceeded) return;
    reply.header('retry-after', found.ttlInSeconds);
    const what = `That is more than is taken in a minute. Wait ${found.ttlInSeconds} s and send it again; what was taken counts.`;
    throw new Problem(429, 'too-many', what);
  };
  app.addHook('onRequest', async (request, reply) => {
    if (request.url.startsWith(ASSETS) || request.routeOptions.config.always) return;
    await mustBeWithin(request.routeOptions.config.opens ? 'opens' : 'address', request, reply);
  });

  const pressure = watchPressure();
  app.addHook('onClose', async () => pressure.stop());
  app.addHook('onRequest', async (request, reply) => {
    const { always, last } = request.routeOptions.config;
    if (always || (pressure.lag() <= (last ? LAST * mostLag : mostLag) && !pressure.heapIsFull())) return;
    reply.header('retry-after', AGAIN);
    throw new Problem(503, 'busy', 'Too much is asked at once. Nothing was kept. Send it again in a few seconds.');
  });
  return (request, reply) => (request.person === null ? Promise.resolve() : mustBeWithin('person', request, reply));
}
