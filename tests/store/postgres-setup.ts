/** For the whole test run: starts PostgreSQL when a test first asks for it, and stops it at the end. */
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { type PostgresServer, startPostgres } from './postgres-server.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Whoever connects to this socket is told the server's address. */
    postgres: string;
  }
}

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const folder = mkdtempSync(join(tmpdir(), 'nocool-ask-'));
  const path = join(folder, 'postgres');
  let started: Promise<PostgresServer> | null = null;
  const door = createServer((socket) => {
    socket.on('error', () => undefined);
    started ??= startPostgres();
    started.then(
      ({ url }) => socket.end(url),
      (error: unknown) => socket.end(`failed: ${error}`),
    );
  }).listen(path);
  await once(door, 'listening');
  project.provide('postgres', path);
  return async () => {
    door.close();
    await (await started?.catch(() => null))?.stop();
    rmSync(folder, { recursive: true });
  };
}
