import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import * as z from 'zod/mini';
import type { Built } from '../built.ts';
import { plainDocument } from '../document.tsx';
import type { WebParts } from '../parts.ts';
import { signIn, signOut } from '../session.ts';

const token = z.string().check(z.regex(/^[\w-]{20,100}$/));
const Token = z.object({ token });
/** A page of ours that a link leads to; of anything else the first page opens. */
const to = z.catch(
  z.optional(z.string().check(z.regex(/^\/(jobs|review|calls)\/[\w-]{1,100}$|^\/(board|review)$/))),
  undefined,
);
const To = z.object({ to });

/** A link opens a page with one button, because whatever previews links would use it up. */
export const signing =
  (parts: WebParts, built: Built): FastifyPluginAsyncZod =>
  async (app) => {
    app.get(
      '/sign-in/:token',
      { schema: { hide: true, params: Token, querystring: To }, config: { opens: true } },
      async (request, reply) => {
        reply.type('text/html');
        return plainDocument(
          built,
          'Sign in',
          <>
            <p>This link signs you in on this device. It works once.</p>
            <form method="post" action="/sign-in">
              <input type="hidden" name="token" value={request.params.token} />
              {request.query.to !== undefined && <input type="hidden" name="to" value={request.query.to} />}
              <button type="submit" class="key wide">
                Sign in
              </button>
            </form>
          </>,
        );
      },
    );

    app.post(
      '/sign-in',
      { schema: { hide: true, body: z.object({ token, to }) }, config: { form: 'token', opens: true } },
      async (request, reply) => {
        if (await signIn(parts, request, reply, request.body.token)) return reply.redirect(request.body.to ?? '/', 303);
        reply.code(401).type('text/html');
        return plainDocument(
          built,
          'This link doesn’t work any more',
          <p>It was used already, or it is too old. Ask your shop for a new one.</p>,
        );
      },
    );

    app.post(
      '/sign-out',
      { schema: { summary: 'End this session', response: { 200: z.object({ ok: z.boolean() }) } } },
      async (request, reply) => {
        await signOut(parts, request, reply);
        return { ok: true };
      },
    );
  };
