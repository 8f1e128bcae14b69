import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import * as z from 'zod/mini';
import type { Built } from '../built.ts';
import { pageDocument } from '../document.tsx';
import type { WebParts } from '../parts.ts';
import { AwaitedLine, Recomputed, ReviewQueue, ReviewView } from '../review-shapes.ts';
import { signedIn } from '../session.ts';
import { changeTroubles, JobParams, troubles } from '../shapes.ts';
import { meOf } from './api.ts';

const After = z.object({ after: z.optional(z.string().check(z.maxLength(100))) });

/** The review desk: pages and API. Whose it is, the desk decides. */
export const review =
  ({ desk }: WebParts, built: Built): FastifyPluginAsyncZod =>
  async (app) => {
    app.get('/review', { schema: { hide: true } }, async (request, reply) => {
      const person = signedIn(request);
      const queue = await desk.review.queue(person.id);
      reply.type('text/html');
      return pageDocument(built, 'Review', { page: 'queue', build: built.build, me: meOf(person), queue });
    });

    app.get('/review/:job', { schema: { hide: true, params: JobParams } }, async (request, reply) => {
      const person = signedIn(request);
      const review = await desk.review.look(person.id, request.params.job);
      reply.type('text/html');
      const title = `Review: ${review.view.title}`;
      return pageDocument(built, title, { page: 'desk', build: built.build, me: meOf(person), review });
    });

    app.get(
      '/api/review',
      {
        schema: {
          summary: 'Jobs to be reviewed, the most pressing first, a page at a time',
          querystring: After,
          response: { 200: ReviewQueue, ...troubles },
        },
      },
      (request) => desk.review.queue(signedIn(request).id, request.query.after),
    );

    app.get(
      '/api/awaited',
      {
        config: { last: true },
        schema: {
          summary: 'Where somebody waits for this person’s approval, the longest first',
          response: { 200: z.array(AwaitedLine), ...troubles },
        },
      },
      (request) => desk.review.awaited(signedIn(request).id),
    );

    app.get(
      '/api/review/:job',
      {
        schema: {
          summary: 'A job with its evidence and what needs attention',
          params: JobParams,
          response: { 200: ReviewView, ...troubles },
        },
      },
      (request) => desk.review.look(signedIn(request).id, request.params.job),
    );

    app.post(
      '/api/review/:job/recompute',
      {
        schema: {
          summary: 'Go over the record anew: the same verdicts byte for byte, or where it differs',
          params: JobParams,
          response: { 200: Recomputed, ...changeTroubles },
        },
      },
      (request) => desk.review.recompute(signedIn(request).id, request.params.job),
    );
  };
