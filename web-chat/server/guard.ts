/** What every answer carries and every change needs, whatever the route. */
import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { WebParts } from './parts.ts';
import { Problem } from './problem.ts';

const POLICY = [
  `default-src 'none'`,
  `object-src 'none'`,
  `script-src 'self'`,
  `style-src 'self'`,
  `font-src 'self'`,
  `img-src 'self' data: blob:`,
  `worker-src 'self'`,
  `connect-src 'self'`,
  `form-action 'self'`,
  `base-uri 'none'`,
  `frame-ancestors 'none'`,
].join('; ');

/** A photo is taken by the camera’s own app; the page itself asks for nothing. */
const PERMISSIONS = [
  ...['accelerometer', 'autoplay', 'camera', 'display-capture', 'encrypted-media', 'geolocation', 'gyroscope', 'hid'],
  ...[
    'magnetometer',
    'microphone',
    'midi',
    'payment',
    'publickey-credentials-get',
    'serial',
    'usb',
    'xr-spatial-tracking',
  ],
]
  .map((name) => `${name}=()`)
  .join(', ');

export const ASSETS = '/assets/';

declare module 'fastify' {
  interface FastifyContextConfig {
    /** A plain form, which can't send a header: its one-time token stands for it, or that a browser says it is from here. */
    form?: 'token' | 'from-here';
  }
}

/** What goes with every answer, also where the router refuses an address before any route is found. */
export const headersOf = (url: string, { secureCookies }: Pick<WebParts, 'secureCookies'>): Record<string, string> => ({
  'content-security-policy': POLICY,
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  // Not `no-referrer`: a browser would then send `Origin: null` with the sign-in form.
  'referrer-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': PERMISSIONS,
  // Hashed names change with their content; anything else is as of now and for one person.
  'cache-control': url.startsWith(ASSETS) ? 'public, max-age=31536000, immutable' : 'no-store',
  ...(secureCookies ? { 'strict-transport-security': 'max-age=31536000; includeSubDomains' } : {}),
});

export function guard(app: FastifyInstance, parts: WebParts): void {
  const home = new URL(parts.publicUrl).host;
  app.addHook('onRequest', async (request, reply) => {
    reply.headers(headersOf(request.url, parts));
    if (changes(request)) mustComeFromHere(request, home);
  });
  app.addHook('onSend', async (_request, reply) => {
    if (reply.getHeader('content-type') === 'text/html') reply.type('text/html; charset=utf-8');
  });
}

const changes = ({ method }: FastifyRequest): boolean => method !== 'GET' && method !== 'HEAD' && method !== 'OPTIONS';

function mustComeFromHere(request: FastifyRequest, home: string): void {
  const { origin, host } = request.headers;
  if (origin !== undefined && !sameHost(origin, [home, host]))
    throw new Problem(403, 'elsewhere', 'This was sent from another site. Open this one and send it there.');
  const { form } = request.routeOptions.config;
  const plain = form === 'token' || (form === 'from-here' && origin !== undefined);
  if (!plain && request.headers['x-nocool'] !== '1')
    throw new Problem(403, 'header-missing', 'A change needs the header "x-nocool: 1".');
}

function sameHost(origin: string, hosts: readonly (string | undefined)[]): boolean {
  return URL.canParse(origin) && hosts.includes(new URL(origin).host);
}
