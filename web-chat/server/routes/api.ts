import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import * as z from 'zod/mini';
import type { Person } from '../../../engine/desk/index.ts';
import { Reply } from '../../../engine/index.ts';
import type { WebParts } from '../parts.ts';
import { signedIn } from '../session.ts';
import { ClientId, changeTroubles, JobCard, JobParams, JobView, Me, Turn, troubles } from '../shapes.ts';

const NewCall = z.strictObject({
  title: z.string().check(z.trim(), z.minLength(1), z.maxLength(200)),
  assign: z.optional(z.string().check(z.minLength(1), z.maxLength(200))),
  training: z.optional(z.boolean()),
  client: ClientId,
});

/** The desk's use cases over JSON. A refusal is an answer (200, `refusal` in the turn), not an error. */
export const api =
  ({ desk }: WebParts): FastifyPluginAsyncZod =>
  async (app) => {
    app.get('/api/me', { schema: { summary: 'Who is signed in', response: { 200: Me, ...troubles } } }, (request) =>
      meOf(signedIn(request)),
    );

    app.get(
      '/api/jobs',
      { schema: { summary: 'The jobs this person may see', response: { 200: z.array(JobCard), ...troubles } } },
      (request) => desk.jobs(signedIn(request).id),
    );

    app.post(
      '/api/jobs',
      { schema: { summary: 'Open a call', body: NewCall, response: { 201: Turn, ...changeTroubles } } },
      async (request, reply) => {
        const { title, client, assign, training } = request.body;
        const call = { title, client, ...(assign ? { assign } : {}), ...(training ? { training } : {}) };
        const turn = await desk.open(signedIn(request).id, call);
        reply.code(201).header('location', `/jobs/${encodeURIComponent(turn.view.job)}`);
        return turn;
      },
    );

    app.get(
      '/api/jobs/:job',
      {
        schema: {
          summary: 'A job as it stands: ticket and prompt',
          params: JobParams,
          response: { 200: JobView, ...troubles },
        },
      },
      (request) => desk.look(signedIn(request).id, request.params.job),
    );

    app.get(
      '/api/jobs/:job/export',
      {
        schema: {
          summary: 'The job as one signed file, for npm run verify',
          params: JobParams,
          response: { 200: z.string(), ...troubles },
        },
      },
      async (request, reply) => {
        const text = await desk.exportJob(signedIn(request).id, request.params.job);
        const name = request.params.job.replace(/[^A-Za-z0-9._-]/g, '_');
        reply
          .type('application/json; charset=utf-8')
          .header('content-disposition', `attachment; filename="${name}.json"`);
        return reply.send(text);
      },
    );

    app.post(
      '/api/jobs/:job/replies',
      {
        config: { last: true },
        schema: {
          summary: 'Answer, amend, take back, command, or plain text',
          description: 'The same client id has one effect. A refusal comes back in the turn and changes nothing.',
          params: JobParams,
          body: Reply,
          response: { 200: Turn, ...changeTroubles },
        },
      },
      (request) => desk.reply(signedIn(request).id, request.params.job, request.body),
    );
  };

export const meOf = ({ id, name, initials, roles, certified }: Person): z.infer<typeof Me> => ({
  id,
  name,
  initials,
  roles: [...roles],
  certified,
});
