import type { OutgoingHttpHeaders } from 'node:http';
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import * as z from 'zod/mini';
import { Feeds } from '../feed.ts';
import type { WebParts } from '../parts.ts';
import { signedIn, whoAsks } from '../session.ts';
import { JobParams, troubles } from '../shapes.ts';

const seq = z.string().check(z.regex(/^\d{1,9}$/));

/** What happens on a job, as it happens. An event says that something is new; the view says what. */
export const feed =
  (parts: WebParts): FastifyPluginAsyncZod =>
  async (app) => {
    const feeds = new Feeds(parts.heartbeat, parts.metrics?.feed);
    app.addHook('preClose', async () => feeds.endAll());
    app.get(
      '/api/jobs/:job/feed',
      {
        schema: {
          summary: 'New entries as server-sent events: id is the seq, data {seq, kind, by}',
          description: 'Goes on after Last-Event-ID, or after `after`; from the beginning where neither is sent.',
          params: JobParams,
          querystring: z.object({ after: z.optional(seq) }),
          response: { 200: z.string(), ...troubles },
        },
      },
      async (request, reply) => {
        const { id } = signedIn(request);
        const sent = seq.safeParse(request.headers['last-event-id']);
        const after = Number(sent.success ? sent.data : (request.query.after ?? 0));
        const waiting = feeds.prepare(id, async () => {
          const stays = (await whoAsks(parts, request))?.id === id;
          return stays && parts.desk.sees(id, request.params.job);
        });
        const stop = await parts.desk
          .watch(id, request.params.job, after, (entry) =>
            waiting.event(entry.seq, { seq: entry.seq, kind: entry.kind, by: entry.by }),
          )
          .catch(waiting.failed);
        reply.hijack();
        waiting.open(reply.raw, reply.getHeaders() as OutgoingHttpHeaders, stop);
      },
    );
  };
