import type { FastifyPluginAsync } from 'fastify';
import { type Built, OFFLINE } from '../built.ts';
import { plainDocument } from '../document.tsx';

/** What a browser keeps so that the page opens without contact. Nobody has to be signed in for it. */
export const offline =
  (built: Built): FastifyPluginAsync =>
  async (app) => {
    app.get('/worker.js', { schema: { hide: true } }, (_request, reply) =>
      reply.type('text/javascript; charset=utf-8').send(built.worker),
    );
    app.get(OFFLINE, { schema: { hide: true } }, (_request, reply) =>
      reply.type('text/html').send(
        plainDocument(
          built,
          'No contact',
          <>
            <p>This page was not opened on this device before. Calls that were opened here still are.</p>
            <p>
              <a class="key" href="/">
                To the list of calls
              </a>
            </p>
          </>,
        ),
      ),
    );
  };
