/**
 * The service worker: pages that were opened once open again without contact, as they were then, and say so. It keeps
 * what the page is drawn from and nothing else; replies are kept and sent by the page itself (kept/outbox.ts). It imports
 * nothing, so that it is one file; the server writes the names of the files to keep in front of it.
 */
interface Extendable extends Event {
  waitUntil(until: Promise<unknown>): void;
}
interface Fetching extends Extendable {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}
interface Told extends Extendable {
  readonly data: { readonly keep?: readonly string[] };
}
interface Worker {
  readonly SHELL: { readonly build: string; readonly files: readonly string[] };
  readonly location: Location;
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(name: 'install' | 'activate', call: (event: Extendable) => void): void;
  addEventListener(name: 'fetch', call: (event: Fetching) => void): void;
  addEventListener(name: 'message', call: (event: Told) => void): void;
}
const worker = self as unknown as Worker;

const { build, files } = worker.SHELL;
const SHELLS = 'nocool-shell-';
const SHELL = SHELLS + build;
const PAGES = 'nocool-pages';
/** When a page was kept, in milliseconds by this device's clock: a header here, a meta element in what is shown. */
const KEPT = 'x-nocool-kept';
const OFFLINE = '/offline';
/** How many pages are kept, the latest ones. */
const MOST = 40;
/** Milliseconds that a weak signal gets before the kept page is shown; what comes later is kept for the next time. */
const PATIENCE = 4_000;

worker.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(SHELL)
      .then((shell) => shell.addAll([...files]))
      .then(() => worker.skipWaiting()),
  );
});

worker.addEventListener('activate', (event) => {
  event.waitUntil(Promise.all([dropOldShells(), worker.clients.claim()]));
});

worker.addEventListener('message', (event) => {
  event.waitUntil(Promise.all((event.data.keep ?? []).map(keepUnlessKept)));
});

worker.addEventListener('fetch', (event) => {
  const { method, mode, url } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== 'GET' || origin !== worker.location.origin) return;
  if (pathname.startsWith('/assets/')) event.respondWith(asset(event.request));
  else if (mode === 'navigate') event.respondWith(page(event, pathname));
});

const mayBeKept = (pathname: string): boolean => pathname === '/' || /^\/jobs\/[^/]+$/.test(pathname);

/** Named by its content: what is kept is right. */
const asset = async (request: Request): Promise<Response> => (await caches.match(request)) ?? fetch(request);

async function page(event: Fetching, pathname: string): Promise<Response> {
  // Somebody is about to sign in: what the last person saw is theirs alone.
  if (pathname.startsWith('/sign-in')) await caches.delete(PAGES);
  const coming = fetch(event.request).then(async (response) => {
    if (response.status === 401) await caches.delete(PAGES);
    if (response.ok && !response.redirected && mayBeKept(pathname)) await keep(pathname, response.clone());
    return response;
  });
  event.waitUntil(coming.catch(() => undefined));
  const kept = mayBeKept(pathname) ? await (await caches.open(PAGES)).match(pathname) : undefined;
  try {
    const come = await (kept ? Promise.race([coming, after(PATIENCE)]) : coming);
    return kept && (come === null || come.status >= 500) ? await asKept(kept) : (come ?? (await coming));
  } catch {
    return kept ? asKept(kept) : ((await caches.match(OFFLINE)) ?? Response.error());
  }
}

async function keep(pathname: string, response: Response): Promise<void> {
  const headers = new Headers(response.headers);
  headers.set(KEPT, String(Date.now()));
  // The body comes unpacked.
  headers.delete('content-encoding');
  headers.delete('content-length');
  const pages = await caches.open(PAGES);
  await pages.delete(pathname);
  await pages.put(pathname, new Response(await response.text(), { headers }));
  const known = await pages.keys();
  await Promise.all(known.slice(0, Math.max(0, known.length - MOST)).map((old) => pages.delete(old)));
}

/** The first visit came before the worker. */
async function keepUnlessKept(pathname: string): Promise<void> {
  if (!mayBeKept(pathname) || (await (await caches.open(PAGES)).match(pathname))) return;
  const response = await fetch(pathname).catch(() => null);
  if (response?.ok) await keep(pathname, response);
}

/** The page says by itself that it is an old one. */
async function asKept(kept: Response): Promise<Response> {
  const html = await kept.text();
  const mark = `<head><meta name="${KEPT}" content="${kept.headers.get(KEPT) ?? '0'}">`;
  return new Response(html.replace('<head>', mark), { headers: kept.headers });
}

/** The shell before this one stays: kept pages may still name its files. */
async function dropOldShells(): Promise<void> {
  const old = (await caches.keys()).filter((name) => name.startsWith(SHELLS) && name !== SHELL);
  await Promise.all(old.slice(0, -1).map((name) => caches.delete(name)));
}

const after = (ms: number): Promise<null> => new Promise((resolve) => setTimeout(() => resolve(null), ms));

export {};
