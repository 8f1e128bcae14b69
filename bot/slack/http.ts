/** The SDK's own receiver behind fastify: it verifies and parses, we hand it the request as it came. */
import { HTTPReceiver, type Logger } from '@slack/bolt';
import { type FastifyInstance, fastify } from 'fastify';

export const ENDPOINT = '/slack/events';
/** Seconds; the SDK refuses older stamps, and takes any from the future. */
const SKEW = 300;
const CLOSE_MS = 1_500;
const BODY_LIMIT = 1024 * 1024;

export const createHttpReceiver = (signingSecret: string, logger: Logger): HTTPReceiver =>
  new HTTPReceiver({ signingSecret, endpoints: ENDPOINT, logger, bodyLimit: BODY_LIMIT });

/** On an instance of its own or inside of another: nothing of it reaches the routes beside it. */
export const slackEvents =
  (receiver: HTTPReceiver, log: (what: string) => void) =>
  async (app: FastifyInstance): Promise<void> => {
    // The stream stays unread: the signature is over its very bytes.
    app.removeAllContentTypeParsers();
    app.addContentTypeParser('*', (_request, _payload, done) => done(null));
    app.addHook('onRequest', async (request, reply) => {
      const stamp = request.headers['x-slack-request-timestamp'];
      if (stamp !== undefined && Math.abs(Date.now() / 1000 - Number(stamp)) > SKEW) return reply.code(401).send();
    });
    app.post(ENDPOINT, (request, reply) => {
      reply.hijack();
      try {
        receiver.requestListener(request.raw, reply.raw);
      } catch (error) {
        log(error instanceof Error ? error.message : 'a request could not be handed on');
        if (!reply.raw.headersSent) reply.raw.writeHead(404);
        reply.raw.end();
      }
    });
  };

export async function listen(
  receiver: HTTPReceiver,
  { host, port }: { host: string; port: number },
  log: (what: string) => void,
) {
  const app = fastify();
  await app.register(slackEvents(receiver, log));
  await app.listen({ host, port });
  const address = app.server.address();
  const taken = typeof address === 'object' && address !== null ? address.port : port;
  return {
    url: `http://${host}:${taken}${ENDPOINT}`,
    async close(): Promise<void> {
      // What is under way gets its answer; a connection that hangs keeps nobody.
      const late = setTimeout(() => app.server.closeAllConnections(), CLOSE_MS);
      await app.close();
      clearTimeout(late);
    },
  };
}
