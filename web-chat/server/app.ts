/**
 * The web chat's server: pages, JSON API, live feed. It decides nothing; the desk does.
 *
 *   const app = buildServer({ desk, store, clock: () => new Date(), log, secureCookies: false, publicUrl });
 *   await app.listen({ port: 8080 });
 *
 * Throws where the page was not built. `issueLink` of the desk makes the links that sign people in.
 */
import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { constants } from 'node:zlib';
import compress from '@fastify/compress';
import cookie from '@fastify/cookie';
import files from '@fastify/static';
import swagger from '@fastify/swagger';
import { type FastifyInstance, type FastifyReply, fastify, LogController } from 'fastify';
import { jsonSchemaTransform, validatorCompiler } from 'fastify-type-provider-zod';
import { readBuilt } from './built.ts';
import { problemDocument } from './document.tsx';
import { ASSETS, guard, headersOf } from './guard.ts';
import type { WebParts } from './parts.ts';
import { answerProblem, Problem } from './problem.ts';
import { limitRates, MOST_LAG, PER_PERSON } from './rates.ts';
import { api } from './routes/api.ts';
import { counts } from './routes/counts.tsx';
import { devices } from './routes/devices.tsx';
import { dispatch } from './routes/dispatch.tsx';
import { feed } from './routes/feed.ts';
import { machine } from './routes/machine.ts';
import { offline } from './routes/offline.tsx';
import { pages } from './routes/pages.tsx';
import { photos } from './routes/photos.ts';
import { reports } from './routes/reports.ts';
import { reportsByLink } from './routes/reports-by-link.tsx';
import { review } from './routes/review.tsx';
import { shop } from './routes/shop.tsx';
import { signing } from './routes/sign-in.tsx';
import { signedIn, whoAsks } from './session.ts';

/** Bytes; the longest reply is a text of 10,000 characters. */
const BODY_LIMIT = 128 * 1024;
/** Bytes of a plain form, which sends a token or the name of a device. */
const FORM_LIMIT = 4096;

/** Milliseconds for a whole request, and of silence on a connection: a photo on a weak signal takes long. */
const SLOWEST = 120_000;
/** Milliseconds for its head alone, which is small, and how often that is looked at; bytes of all headers together. */
const [HEADERS_TIME, LOOK_EVERY, HEADERS_LIMIT] = [15_000, 5_000, 8 * 1024];

/** Brotli at 5 of 11: nearly as small, and made in a millisecond. */
const QUICK = { [constants.BROTLI_PARAM_QUALITY]: 5 };

export function buildServer(parts: WebParts): FastifyInstance {
  const built = readBuilt(parts.pageFolder);
  // Requests are logged by their route, below: an address may carry a one-time token.
  const app = fastify({
    loggerInstance: parts.log,
    logController: new LogController({ disableRequestLogging: true }),
    bodyLimit: BODY_LIMIT,
    trustProxy: (_address, hop) => hop < (parts.proxies ?? 0),
    // Told apart among several servers, and given to whoever asks, so that a report of trouble finds its lines.
    genReqId: () => randomBytes(8).toString('hex'),
    // An address that no route can have, such as one with a broken sign in it.
    frameworkErrors: (_error, request, reply) => {
      const { code, message } = new Problem(400, 'bad-request', 'There is no such address.');
      const answer = reply as FastifyReply;
      answer.code(400).headers(headersOf(request.url, parts)).type('application/json; charset=utf-8');
      answer.send(JSON.stringify({ error: code, what: message }));
    },
    requestTimeout: SLOWEST,
    connectionTimeout: SLOWEST,
    http: { headersTimeout: HEADERS_TIME, maxHeaderSize: HEADERS_LIMIT, connectionsCheckingInterval: LOOK_EVERY },
  });
  app.setValidatorCompiler(validatorCompiler);
  // The response schemas are for the document; what the desk answers is right by its types.
  app.setSerializerCompiler(() => (data) => JSON.stringify(data));
  app.decorateRequest('person', null);

  // A page that is older than the server learns of it by any answer.
  app.addHook('onRequest', async (request, reply) => {
    reply.headers({ 'x-nocool-build': built.build, 'x-request-id': request.id });
  });
  app.addHook('onResponse', async (request, reply) => {
    const { method, routeOptions } = request;
    const ms = Math.round(reply.elapsedTime);
    const route = routeOptions.url ?? '(none)';
    request.log.info({ method, route, status: reply.statusCode, ms });
    parts.metrics?.answered(route, method, reply.statusCode, reply.elapsedTime);
  });
  app.setErrorHandler((error, request, reply) => {
    const problem = answerProblem(error, request, reply);
    reply.header('cache-control', 'no-store');
    if (wantsPage(request.url)) return reply.type('text/html').send(problemDocument(built, problem));
    return reply.type('application/json').send({ error: problem.code, what: problem.message });
  });
  app.setNotFoundHandler(() => {
    throw new Problem(404, 'not-found', 'There is nothing here.');
  });

  guard(app, parts);
  const withinRate = limitRates(app, parts.perPerson ?? PER_PERSON, parts.mostLag ?? MOST_LAG);
  app.register(compress, { encodings: ['br', 'gzip'], threshold: 1024, brotliOptions: { params: QUICK } });
  app.register(cookie);
  app.register(swagger, {
    openapi: {
      info: { title: 'nocool', version: '0.1.0', description: 'A no-cool call, step by step, with a record.' },
    },
    transform: jsonSchemaTransform,
  });
  app.register(files, {
    root: join(built.folder, 'assets'),
    prefix: ASSETS,
    cacheControl: false,
  });
  app.register(offline(built));
  app.register(machine(parts));
  app.register(reportsByLink(parts, built));
  app.register(async (inside) => {
    inside.addHook('onRequest', async (request, reply) => {
      request.person = await whoAsks(parts, request);
      await withinRate(request, reply);
    });
    inside.addContentTypeParser(
      'application/x-www-form-urlencoded',
      { parseAs: 'string', bodyLimit: FORM_LIMIT },
      (_request, body, done) => done(null, Object.fromEntries(new URLSearchParams(String(body)))),
    );
    inside.register(api(parts));
    inside.register(feed(parts));
    inside.register(photos(parts));
    inside.register(pages(parts, built));
    inside.register(review(parts, built));
    inside.register(counts(parts, built));
    inside.register(reports(parts, built));
    inside.register(dispatch(parts, built));
    inside.register(shop(parts, built));
    inside.register(signing(parts, built));
    inside.register(devices(parts, built));
    inside.get('/api/openapi.json', { schema: { hide: true } }, (request) => {
      signedIn(request);
      return app.swagger();
    });
  });
  return app;
}

const wantsPage = (url: string): boolean => !url.startsWith('/api/') && !url.startsWith(ASSETS);
