import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import * as z from 'zod/mini';
import { Units } from '../../../engine/index.ts';
import type { Built } from '../built.ts';
import { plainDocument } from '../document.tsx';
import type { WebParts } from '../parts.ts';
import { sessionOf, signedIn } from '../session.ts';
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

/** Units as one word of a form: `°C kPa`; `shop` takes the shop's setting. */
const Chosen = z.object({ units: z.string().check(z.regex(/^(shop|°[FC] (psig|kPa|bar))$/)) });
const CHOICES = ['°F', '°C'].flatMap((degrees) => ['psig', 'kPa', 'bar'].map((pressure) => `${degrees} ${pressure}`));
function unitsIn(chosen: string): Units | null {
  const [temperature, pressure] = chosen.split(' ');
  const read = z.safeParse(Units, { temperature, pressure });
  return read.success ? read.data : null;
}

const spanOf = ({ made, expires }: z.infer<typeof Device>): string =>
  `${made === null ? '' : `since ${made.slice(0, 10)}, `}until ${expires.slice(0, 10)}`;

/**
 * What is one's own: where people are signed in, one’s own devices and for the owner everybody’s, each ended by itself;
 * and the units that one prefers to be shown.
 */
export const devices =
  (parts: WebParts, built: Built): FastifyPluginAsyncZod =>
  async (app) => {
    const { desk } = parts;
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

    app.post(
      '/api/me/units',
      {
        schema: {
          summary: 'Which units I am shown beside °F and psig; null: as the shop has it',
          body: z.strictObject({ units: z.nullable(Units) }),
          ...Done,
        },
      },
      async (request) => {
        await desk.shop.saveUnits(signedIn(request).id, request.body.units);
        return { ok: true };
      },
    );

    app.get('/devices', { schema: { hide: true } }, async (request, reply) => {
      const me = signedIn(request);
      const now = me.units === undefined ? 'shop' : `${me.units.temperature} ${me.units.pressure}`;
      const found = await desk.shop.devices(me.id, me.id);
      const here = sessionOf(parts, request);
      reply.type('text/html');
      return plainDocument(
        built,
        'Where you are signed in',
        <>
          <ul class="cards">
            {found.map((one) => (
              <li key={one.id}>
                <p>
                  {`${one.id === here ? `This ${one.device ?? 'device'}` : (one.device ?? 'a device')}, ${spanOf(one)}`}
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
          <h2>Units shown to you</h2>
          <p>
            Readings are asked for and kept in °F and psig; what you prefer is shown beside them. A figure that you type
            with its unit is taken in any unit, and one without is °F or psig.
          </p>
          <form method="post" action="/devices/units" class="give">
            <label for="units">Temperature and pressure</label>
            <select id="units" name="units">
              <option value="shop" selected={now === 'shop'}>
                As the shop has it
              </option>
              {CHOICES.map((each) => (
                <option key={each} value={each} selected={now === each}>
                  {each.replace(' ', ' and ')}
                </option>
              ))}
            </select>
            <button type="submit" class="key">
              Save the units
            </button>
          </form>
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
    app.post(
      '/devices/units',
      { schema: { hide: true, body: Chosen }, config: { form: 'from-here' } },
      async (request, reply) => {
        await desk.shop.saveUnits(signedIn(request).id, unitsIn(request.body.units));
        return reply.redirect('/devices', 303);
      },
    );
  };
