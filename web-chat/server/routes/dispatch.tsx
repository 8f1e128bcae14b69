import type { OutgoingHttpHeaders } from 'node:http';
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import * as z from 'zod/mini';
import type { Built } from '../built.ts';
import { pageDocument } from '../document.tsx';
import { Feeds } from '../feed.ts';
import { AlarmLine, Board, Known } from '../office-shapes.ts';
import type { WebParts } from '../parts.ts';
import { signedIn, whoAsks } from '../session.ts';
import { ClientId, changeTroubles, JobCard, JobParams, Turn, troubles } from '../shapes.ts';
import { meOf } from './api.ts';

const client = ClientId;
const named = z.string().check(z.minLength(1), z.maxLength(200));
const Words = z.string().check(z.maxLength(200));

/** Calls, the board, and emergencies. Whose they are, the desk decides; a caller's words come in bodies alone. */
export const dispatch =
  (parts: WebParts, built: Built): FastifyPluginAsyncZod =>
  async (app) => {
    const { desk } = parts;
    const feeds = new Feeds(parts.heartbeat, parts.metrics?.feed);
    app.addHook('preClose', async () => feeds.endAll());

    app.get('/calls/:job', { schema: { hide: true, params: JobParams } }, async (request, reply) => {
      const person = signedIn(request);
      const view = await desk.look(person.id, request.params.job);
      reply.type('text/html');
      return pageDocument(built, 'A call', { page: 'call', build: built.build, me: meOf(person), view });
    });
    app.get('/board', { schema: { hide: true } }, async (request, reply) => {
      const person = signedIn(request);
      const board = await desk.dispatch.board(person.id);
      reply.type('text/html');
      return pageDocument(built, 'Board', { page: 'board', build: built.build, me: meOf(person), board });
    });

    app.post(
      '/api/calls',
      {
        schema: {
          summary: 'Take a call, with the caller on the line; its end opens a job',
          body: z.strictObject({ client, training: z.optional(z.boolean()) }),
          response: { 201: Turn, ...changeTroubles },
        },
      },
      async (request, reply) => {
        const { training = false, client: own } = request.body;
        reply.code(201);
        return desk.dispatch.take(signedIn(request).id, { client: own, training });
      },
    );
    app.post(
      '/api/calls/:job/unit',
      {
        schema: {
          summary: 'The call is about this unit of the shop',
          params: JobParams,
          body: z.strictObject({ unit: named, client }),
          response: { 200: Turn, ...changeTroubles },
        },
      },
      (request) => desk.dispatch.pick(signedIn(request).id, request.params.job, request.body.unit, request.body.client),
    );
    app.post(
      '/api/known',
      {
        schema: {
          summary: 'Open calls and units that a number, a place or a name belongs to, while it is typed',
          body: z.strictObject({ typed: Words }),
          response: { 200: Known, ...changeTroubles },
        },
      },
      (request) => desk.dispatch.known(signedIn(request).id, request.body.typed),
    );
    app.get(
      '/api/board',
      { schema: { summary: 'The board, the most urgent first', response: { 200: Board, ...troubles } } },
      (request) => desk.dispatch.board(signedIn(request).id),
    );
    app.post(
      '/api/find',
      {
        schema: {
          summary: 'Jobs by the beginnings of words: caller, place, unit, verdict',
          body: z.strictObject({ words: Words }),
          response: { 200: z.array(JobCard), ...changeTroubles },
        },
      },
      (request) => desk.dispatch.find(signedIn(request).id, request.body.words),
    );
    app.post(
      '/api/jobs/:job/assign',
      {
        schema: {
          summary: 'Say who goes; of a job that has somebody, it is a hand-over',
          params: JobParams,
          body: z.strictObject({ to: named, client }),
          response: { 200: Turn, ...changeTroubles },
        },
      },
      (request) => desk.dispatch.assign(signedIn(request).id, request.params.job, request.body.to, request.body.client),
    );
    app.get(
      '/api/alarms',
      {
        config: { last: true },
        schema: {
          summary: 'Emergencies that this person has to know of',
          response: { 200: z.array(AlarmLine), ...troubles },
        },
      },
      (request) => desk.dispatch.alarms(signedIn(request).id),
    );
    app.get(
      '/api/feed',
      {
        schema: {
          summary: 'Whatever happens on jobs this person may see, as server-sent events: data {job, seq, kind}',
          description: 'From now on; whoever connects again looks at what there is.',
          response: { 200: z.string(), ...troubles },
        },
      },
      async (request, reply) => {
        const { id, roles } = signedIn(request);
        // What somebody hears rests on their roles: whose roles change begins anew.
        const waiting = feeds.prepare(id, async () => {
          const now = await whoAsks(parts, request);
          return now?.id === id && now.roles.join() === roles.join();
        });
        const stop = await desk.dispatch.watch(id, (news) => waiting.event(news.seq, news)).catch(waiting.failed);
        reply.hijack();
        waiting.open(reply.raw, reply.getHeaders() as OutgoingHttpHeaders, stop);
      },
    );
  };
