import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import * as z from 'zod/mini';
import type { Built } from '../built.ts';
import { plainDocument } from '../document.tsx';
import type { WebParts } from '../parts.ts';
import { signedIn } from '../session.ts';
import { changeTroubles, troubles } from '../shapes.ts';

const Device = z.object({
  id: z.string(),
  device: z.nullable(z.string()),
  made: z.nullable(z.string()),
  expires: z.string(),
});
const id = z.string().check(z.regex(/^[\w-]{1,60}$/));
const Whose = z.object({ id });
const device = z.string().check(z.regex(/^[0-9a-f]{64}$/));
const Which = z.object({ device });
const Done = { response: { 200: z.object({ ok: z.boolean() }), ...changeTroubles } };

/** Where people are signed in: one’s own devices, and for the owner everybody’s. Each is ended by itself. */
export const devices =
  ({ desk }: WebParts, built: Built): FastifyPluginAsyncZod =>
  async (app) => {
    const list = { response: { 200: z.array(Device), ...troubles } };
    app.get('/api/me/devices', { schema: { summary: 'Where I am signed in', ...list } }, (request) => {
      const me = signedIn(request).id;
      return desk.shop.devices(me, me);
    });
    app.post(
      '/api/me/devices/:device/revoke',
      { schema: { summary: 'Sign one of my devices out', params: Which, ...Done } },
      async (request) => {
        const me = signedIn(request).id;
        await desk.shop.endDevice(me, me, request.params.device);
        return { ok: true };
      },
    );
    app.get(
      '/api/shop/people/:id/devices',
      { schema: { summary: 'Where this person is signed in', params: Whose, ...list } },
      (request) => desk.shop.devices(signedIn(request).id, request.params.id),
    );
    app.post(
      '/api/shop/people/:id/devices/:device/revoke',
      { schema: { summary: 'Sign one device of this person out', params: z.extend(Whose, { device }), ...Done } },
      async (request) => {
        await desk.shop.endDevice(signedIn(request).id, request.params.id, request.params.device);
        return { ok: true };
      },
    );

    app.get('/devices', { schema: { hide: true } }, async (request, reply) => {
      const me = signedIn(request);
      const found = await desk.shop.devices(me.id, me.id);
      reply.type('text/html');
      return plainDocument(
        built,
        'Where you are signed in',
        <>
          <ul class="cards">
            {found.map((one) => (
              <li key={one.id}>
                <p>
                  {`${one.device ?? 'a device'}, ${one.made === null ? '' : `since ${one.made.slice(0, 10)}, `}until ${one.expires.slice(0, 10)}`}
                </p>
                <form method="post" action="/devices">
                  <input type="hidden" name="device" value={one.id} />
                  <button type="submit" class="key">
                    Sign it out
                  </button>
                </form>
              </li>
            ))}
          </ul>
          <p>
            <a class="key" href="/">
              To the list of calls
            </a>
          </p>
        </>,
      );
    });
    app.post(
      '/devices',
      { schema: { hide: true, body: Which }, config: { form: 'from-here' } },
      async (request, reply) => {
        const me = signedIn(request).id;
        await desk.shop.endDevice(me, me, request.body.device);
        return reply.redirect('/devices', 303);
      },
    );
  };
