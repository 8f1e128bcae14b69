import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import * as z from 'zod/mini';
import type { Report } from '../../../engine/desk/index.ts';
import type { Built } from '../built.ts';
import { plainDocument, readyDocument } from '../document.tsx';
import type { WebParts } from '../parts.ts';
import { Problem } from '../problem.ts';
import { links, PaperSize, sendJson, sendPdf } from '../report.ts';

// Anything may be tried: what opens nothing is answered as what opens nothing any more.
const Token = z.object({ token: z.string().check(z.maxLength(200)) });
const Photo = z.extend(Token, { hash: z.string().check(z.regex(/^[0-9a-f]{64}$/)) });

/** A report for whoever has the link: nobody signs in, and the link opens nothing else. */
export const reportsByLink =
  ({ desk }: WebParts, built: Built): FastifyPluginAsyncZod =>
  async (app) => {
    app.addHook('onRequest', async (_request, reply) => void reply.header('x-robots-tag', 'noindex, nofollow'));
    const mustOpen = async (token: string): Promise<Report> => {
      const report = await desk.reports.shared(token);
      if (!report) throw new Problem(404, 'not-found', 'This link opens no report, or no longer.');
      return report;
    };

    app.get(
      '/report/:token',
      { schema: { hide: true, params: Token }, config: { opens: true } },
      async (request, reply) => {
        const { token } = request.params;
        const report = await desk.reports.shared(token);
        reply.type('text/html');
        if (!report) {
          reply.code(404);
          return plainDocument(
            built,
            'This link opens no report',
            <p>It is too old, was taken back, or was not copied whole. Ask the shop for a new one.</p>,
          );
        }
        const at = `/report/${token}`;
        return readyDocument(built, report.title, report.html((hash) => `${at}/photos/${hash}`) + links(at, null));
      },
    );
    app.get(
      '/report/:token/pdf',
      { schema: { hide: true, params: Token, querystring: PaperSize }, config: { opens: true } },
      async (request, reply) => sendPdf(reply, await mustOpen(request.params.token), request.query.size),
    );
    app.get('/report/:token/json', { schema: { hide: true, params: Token } }, async (request, reply) =>
      sendJson(reply, await mustOpen(request.params.token)),
    );
    app.get('/report/:token/photos/:hash', { schema: { hide: true, params: Photo } }, async (request, reply) => {
      const bytes = await (await mustOpen(request.params.token)).photo(request.params.hash);
      if (!bytes) throw new Problem(404, 'not-found', 'There is no such photo on this report.');
      reply.type('image/jpeg');
      return reply.send(Buffer.from(bytes));
    });
  };
