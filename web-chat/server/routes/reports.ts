import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import * as z from 'zod/mini';
import type { Built } from '../built.ts';
import { readyDocument } from '../document.tsx';
import type { WebParts } from '../parts.ts';
import { links, PaperSize, sendJson, sendPdf } from '../report.ts';
import { signedIn } from '../session.ts';
import { changeTroubles, JobParams, troubles } from '../shapes.ts';

const Audience = z.enum(['customer', 'shop']);
const ReportParams = z.extend(JobParams, { audience: Audience });
const ShareParams = z.extend(JobParams, { id: z.string().check(z.regex(/^[0-9a-f]{64}$/)) });
const NewShare = z.strictObject({ for: Audience, days: z.number().check(z.int(), z.gte(1), z.lte(90)) });
const SharedLink = z.object({
  id: z.string(),
  audience: Audience,
  by: z.string(),
  made: z.string(),
  expires: z.string(),
});

/** Reports for those who are signed in, and the links by which they give one to somebody else. */
export const reports =
  ({ desk, publicUrl }: WebParts, built: Built): FastifyPluginAsyncZod =>
  async (app) => {
    const path = '/jobs/:job/report/:audience';
    app.get(path, { schema: { hide: true, params: ReportParams } }, async (request, reply) => {
      const { job, audience } = request.params;
      const report = await desk.reports.read(signedIn(request).id, job, audience);
      const at = `/jobs/${encodeURIComponent(job)}`;
      const inside = report.html((hash) => `/api${at}/photos/${hash}`) + links(`${at}/report/${audience}`, at);
      reply.type('text/html');
      return readyDocument(built, report.title, inside);
    });
    const query = { hide: true, params: ReportParams, querystring: PaperSize };
    app.get(`${path}/pdf`, { schema: query }, async (request, reply) => {
      const { job, audience } = request.params;
      return sendPdf(reply, await desk.reports.read(signedIn(request).id, job, audience), request.query.size);
    });
    app.get(
      `${path}/json`,
      {
        schema: {
          summary: 'The report as data: customer or shop',
          params: ReportParams,
          response: { 200: z.string(), ...troubles },
        },
      },
      async (request, reply) => {
        const { job, audience } = request.params;
        return sendJson(reply, await desk.reports.read(signedIn(request).id, job, audience));
      },
    );

    app.get(
      '/api/jobs/:job/shares',
      {
        schema: {
          summary: 'Links to its reports that are still open',
          params: JobParams,
          response: { 200: z.array(SharedLink), ...troubles },
        },
      },
      (request) => desk.reports.shares(signedIn(request).id, request.params.job),
    );
    app.post(
      '/api/jobs/:job/shares',
      {
        schema: {
          summary: 'A link that opens one report for so many days',
          description: 'The address is shown this once; only its hash is kept.',
          params: JobParams,
          body: NewShare,
          response: { 201: z.object({ url: z.string(), link: SharedLink }), ...changeTroubles },
        },
      },
      async (request, reply) => {
        const { for: audience, days } = request.body;
        const made = await desk.reports.share(signedIn(request).id, request.params.job, audience, days);
        return reply.code(201).send({ url: `${publicUrl}/report/${made.token}`, link: made.link });
      },
    );
    app.delete(
      '/api/jobs/:job/shares/:id',
      {
        schema: {
          summary: 'Take a link back',
          params: ShareParams,
          response: { 200: z.object({ ok: z.boolean() }), ...changeTroubles },
        },
      },
      async (request) => {
        await desk.reports.endShare(signedIn(request).id, request.params.job, request.params.id);
        return { ok: true };
      },
    );
  };
