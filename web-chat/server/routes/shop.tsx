import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { renderSVG } from 'uqr';
import * as z from 'zod/mini';
import { Meter, Settings, Truck } from '../../../engine/index.ts';
import type { Built } from '../built.ts';
import { pageDocument } from '../document.tsx';
import type { WebParts } from '../parts.ts';
import { signedIn } from '../session.ts';
import { changeTroubles, troubles } from '../shapes.ts';
import { meOf } from './api.ts';

const id = z.string().check(z.regex(/^[\w-]{1,60}$/));
const PersonWish = z.strictObject({
  id,
  name: z.string().check(z.trim(), z.minLength(1), z.maxLength(100)),
  initials: z.string().check(z.trim(), z.minLength(1), z.maxLength(4)),
  roles: z.array(z.enum(['technician', 'senior', 'dispatcher', 'owner'])).check(z.minLength(1), z.maxLength(4)),
  certified: z.boolean(),
  active: z.boolean(),
  meter: z.optional(z.nullable(Meter)),
  truck: z.optional(id),
});
const ShopView = z.object({
  people: z.array(PersonWish),
  trucks: z.array(Truck),
  settings: Settings,
  mine: z.boolean(),
});
/** A truck as it is from now on; `gone` takes it out of service. */
const TruckWish = z.extend(Truck, { gone: z.optional(z.boolean()) });
const Whose = z.object({ id });

/** Crew, settings and stock: read by whoever sends people, changed by the owner. */
export const shop =
  (parts: WebParts, built: Built): FastifyPluginAsyncZod =>
  async (app) => {
    const { desk, publicUrl } = parts;
    const answer = { response: { 200: ShopView, ...changeTroubles } };
    app.get('/shop', { schema: { hide: true } }, async (request, reply) => {
      const person = signedIn(request);
      const view = await desk.shop.look(person.id);
      reply.type('text/html');
      return pageDocument(built, 'Crew and shop', { page: 'shop', build: built.build, me: meOf(person), shop: view });
    });
    app.get(
      '/api/shop',
      { schema: { summary: 'Crew, trucks and settings', response: { 200: ShopView, ...troubles } } },
      (request) => desk.shop.look(signedIn(request).id),
    );
    app.post(
      '/api/shop/people',
      { schema: { summary: 'Add or change a person', body: PersonWish, ...answer } },
      async (request) => {
        const by = signedIn(request).id;
        const { meter, truck, ...wish } = request.body;
        await desk.shop.savePerson(by, {
          ...wish,
          ...(meter === undefined ? {} : { meter }),
          ...(truck === undefined ? {} : { truck }),
        });
        return desk.shop.look(by);
      },
    );
    app.post(
      '/api/shop/settings',
      { schema: { summary: 'Settings for jobs from now on', body: Settings, ...answer } },
      async (request) => {
        const by = signedIn(request).id;
        await desk.shop.saveSettings(by, request.body);
        return desk.shop.look(by);
      },
    );
    app.post(
      '/api/shop/trucks',
      { schema: { summary: 'What a truck carries, whole; or that it is out of service', body: TruckWish, ...answer } },
      async (request) => {
        const by = signedIn(request).id;
        const { gone, ...truck } = request.body;
        await desk.shop.saveTruck(by, { ...truck, ...(gone ? { gone } : {}) });
        return desk.shop.look(by);
      },
    );
    app.post(
      '/api/shop/people/:id/link',
      {
        schema: {
          summary: 'A new link that signs this person in, once; also as a QR code',
          params: Whose,
          response: { 200: z.object({ url: z.string(), qr: z.string() }), ...changeTroubles },
        },
      },
      async (request) => {
        const url = new URL(await desk.shop.link(signedIn(request).id, request.params.id), publicUrl).href;
        return { url, qr: `data:image/svg+xml,${encodeURIComponent(renderSVG(url, { border: 2 }))}` };
      },
    );
    app.post(
      '/api/shop/people/:id/revoke',
      {
        schema: {
          summary: 'Sign this person out everywhere, and end their links',
          params: Whose,
          response: { 200: z.object({ ended: z.number() }), ...changeTroubles },
        },
      },
      async (request) => ({ ended: await desk.shop.revoke(signedIn(request).id, request.params.id) }),
    );
  };
