import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { BRIEF_COOKIE, FONTS_COOKIE } from '../../page/state.ts';
import type { Built } from '../built.ts';
import { pageDocument } from '../document.tsx';
import type { WebParts } from '../parts.ts';
import { signedIn } from '../session.ts';
import { JobParams } from '../shapes.ts';
import { meOf } from './api.ts';

/** The pages that a browser opens, whole before any script runs. */
export const pages =
  ({ desk }: WebParts, built: Built): FastifyPluginAsyncZod =>
  async (app) => {
    app.get('/', { schema: { hide: true } }, async (request, reply) => {
      const person = signedIn(request);
      const [jobs, crew] = await Promise.all([desk.jobs(person.id), desk.people()]);
      const shown = crew.map(({ id, name, roles, active }) => ({
        id,
        name,
        technician: active && roles.includes('technician'),
      }));
      reply.type('text/html');
      return pageDocument(built, 'Calls', { page: 'jobs', build: built.build, me: meOf(person), jobs, crew: shown });
    });

    app.get('/jobs/:job', { schema: { hide: true, params: JobParams } }, async (request, reply) => {
      const person = signedIn(request);
      const view = await desk.look(person.id, request.params.job);
      reply.type('text/html');
      const brief = request.cookies[BRIEF_COOKIE] === '1';
      const fonts = request.cookies[FONTS_COOKIE] === '1';
      const state = { page: 'ticket', build: built.build, brief, me: meOf(person), view } as const;
      return pageDocument(built, view.title, state, fonts);
    });
  };
