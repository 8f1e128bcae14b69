import { createHash, timingSafeEqual } from 'node:crypto';
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import * as z from 'zod/mini';
import type { WebParts } from '../parts.ts';
import { Problem } from '../problem.ts';

const Health = z.object({
  ok: z.boolean(),
  chats: z.optional(z.record(z.string(), z.object({ state: z.string(), contact: z.nullable(z.string()) }))),
});
const Ready = z.object({ ok: z.boolean() });
/** Milliseconds that the database may take to answer whoever asks whether this server is ready. */
const PATIENCE = 2_000;

/** For whoever looks after the machine: is it alive, may it be asked, how is it. Nobody has to be signed in. */
export const machine =
  ({ chats, isReady, metrics, metricsToken }: WebParts): FastifyPluginAsyncZod =>
  async (app) => {
    const config = { always: true };
    let stopping = false;
    app.addHook('preClose', async () => {
      stopping = true;
    });
    app.get(
      '/healthz',
      { config, schema: { summary: 'Alive, and how the chats outside are', response: { 200: Health } } },
      () => ({ ok: true, ...(chats ? { chats: chats() } : {}) }),
    );
    app.get(
      '/readyz',
      {
        config,
        schema: {
          summary: 'May be asked: its database answers, and it isn’t stopping',
          response: { 200: Ready, 503: Ready },
        },
      },
      async (_request, reply) => {
        const late = new Promise<false>((done) => setTimeout(done, PATIENCE, false).unref());
        const ok = !stopping && (await Promise.race([isReady ? isReady().catch(() => false) : true, late]));
        return reply.code(ok ? 200 : 503).send({ ok });
      },
    );
    if (!metrics || metricsToken === undefined) return;
    const wanted = hashOf(`Bearer ${metricsToken}`);
    app.get('/metrics', { config, schema: { hide: true } }, async (request, reply) => {
      if (!timingSafeEqual(hashOf(request.headers.authorization ?? ''), wanted))
        throw new Problem(401, 'not-signed-in', 'This takes the token of the setting NOCOOL_METRICS_TOKEN.');
      return reply.type(metrics.contentType).send(await metrics.text());
    });
  };
const hashOf = (text: string): Buffer => createHash('sha256').update(text).digest();
