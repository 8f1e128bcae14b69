/** The real server in a process of its own, with the page built for it. */
import { type ChildProcess, spawn } from 'node:child_process';
import { createHash, randomBytes, randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { cpSync, existsSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Store } from '../../engine/store/index.ts';
import { bundle } from '../process.ts';
import { buildPage } from '../web-chat/browser.ts';

export interface ServerProgram {
  readonly path: string;
  remove(): void;
}
/** Laid out as `npm run build` does: the server finds the page two folders up. */
export async function serverProgram(): Promise<ServerProgram> {
  const program = await bundle(new URL('../../web-chat/server/main.ts', import.meta.url));
  // Any page does; where `npm test` has built one, it isn't built again.
  const built = fileURLToPath(new URL('../../dist/page', import.meta.url));
  const page = existsSync(join(built, '.vite')) ? built : await buildPage();
  const home = join(dirname(program), '..', randomUUID());
  const path = join(home, 'web-chat', 'server', 'main.mjs');
  cpSync(dirname(program), dirname(path), { recursive: true });
  cpSync(page, join(home, 'page'), { recursive: true });
  if (page !== built) rmSync(page, { recursive: true });
  return { path, remove: () => rmSync(home, { recursive: true }) };
}

export interface Server {
  readonly url: string;
  readonly child: ChildProcess;
  readonly output: () => string;
  /** Resolves with exit code and signal. */
  readonly ended: Promise<[number | null, string | null]>;
}
export async function startServer(program: ServerProgram, env: Record<string, string>): Promise<Server> {
  const port = await freePort();
  const { DATABASE_URL: _, ...rest } = process.env;
  const child = spawn(process.execPath, [program.path], {
    env: { ...rest, NOCOOL_PORT: String(port), NOCOOL_HOST: '127.0.0.1', NOCOOL_LOG: 'warn', NOCOOL_RATE: '0', ...env },
  });
  let output = '';
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (text) => {
      output += text;
    });
  const ended = once(child, 'close') as Promise<[number | null, string | null]>;
  await new Promise<void>((resolve, reject) => {
    child.stdout.on('data', () => {
      if (output.includes('nocool is at')) resolve();
    });
    ended.then(() => reject(new Error(output)));
  });
  return { url: `http://127.0.0.1:${port}`, child, output: () => output, ended };
}

/** Signs somebody in past the page, as the server would: it keeps the hash of what the cookie holds. */
export async function cookieFor(store: Store, person: string): Promise<string> {
  const token = randomBytes(32).toString('base64url');
  const hash = createHash('sha256').update(token).digest('hex');
  await store.saveSession(hash, person, '2099-01-01T00:00:00.000Z');
  return `nocool=${token}`;
}

async function freePort(): Promise<number> {
  const probe = createServer().listen(0, '127.0.0.1');
  await once(probe, 'listening');
  const address = probe.address();
  probe.close();
  if (address === null || typeof address === 'string') throw new Error('no port');
  return address.port;
}
