import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import * as z from 'zod/mini';
import type { WebParts } from '../parts.ts';
import { Problem } from '../problem.ts';
import { signedIn } from '../session.ts';
import { changeTroubles, JobParams, troubles } from '../shapes.ts';

/** Bytes. The page sends some 300 kB; a camera's own file is larger, and is no use on a weak signal. */
const LARGEST = 4 * 1024 * 1024;
const Photo = z.extend(JobParams, { hash: z.string().check(z.regex(/^[0-9a-f]{64}$/)) });

export const photos =
  ({ desk }: WebParts): FastifyPluginAsyncZod =>
  async (app) => {
    app.addContentTypeParser('image/jpeg', { parseAs: 'buffer', bodyLimit: LARGEST }, (_request, body, done) =>
      done(null, body),
    );

    app.post(
      '/api/jobs/:job/photos',
      {
        bodyLimit: LARGEST,
        schema: {
          summary: 'Keep a photo for an answer: image/jpeg in, its hash out',
          description: 'Kept without metadata. The hash is what the answer then gives for its photo part.',
          params: JobParams,
          response: { 201: z.object({ hash: z.string() }), ...changeTroubles },
        },
      },
      async (request, reply) => {
        const { id } = signedIn(request);
        const bytes = request.body;
        const hash = bytes instanceof Uint8Array ? await desk.savePhoto(id, request.params.job, bytes) : null;
        if (hash === null) throw new Problem(400, 'no-photo', 'That is no photo that can be kept. Send a JPEG.');
        return reply.code(201).send({ hash });
      },
    );

    app.get(
      '/api/jobs/:job/photos/:hash',
      {
        schema: { summary: 'A photo of this job', params: Photo, response: { 200: z.instanceof(Buffer), ...troubles } },
      },
      async (request, reply) => {
        const bytes = await desk.photo(signedIn(request).id, request.params.job, request.params.hash);
        // Named by its content; for this person's browser alone.
        reply.type('image/jpeg').header('cache-control', 'private, max-age=31536000, immutable');
        return reply.send(Buffer.from(bytes));
      },
    );
  };
