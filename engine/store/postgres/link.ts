/** The connections to one database: made when needed, given up when lost, tried again within limits. */
import { setTimeout } from 'node:timers/promises';
import pg from 'pg';
import { asTrouble, isLost } from './trouble.ts';

/** Milliseconds to wait before each further try: a restart of the database takes some seconds. */
export const PAUSES = [50, 100, 200, 400, 800, 1600] as const;
/** Whoever has no more rights than these can't change or remove an entry, whatever the triggers say. */
export const APP_ROLE = 'nocool_app';

export interface Link {
  /** One statement that reads: tried again where the connection is lost. Rejects with the port's errors. */
  read<T extends unknown[]>(name: string, text: string, values?: readonly unknown[]): Promise<T[]>;
  /** One statement that may be sent twice without harm. */
  readonly again: Link['read'];
  /** One statement, once, with the database's own errors. */
  once<T extends unknown[]>(name: string, text: string, values?: readonly unknown[]): Promise<T[]>;
  /** Several statements that all happen or none. */
  together(statements: readonly { text: string; values: readonly unknown[] }[]): Promise<number[]>;
  /**
   * Whatever the work asks happens, or nothing of it. On a connection of its own, without a limit of time: for what is rare
   * and may take long.
   */
  long<T>(work: (ask: Ask) => Promise<T>): Promise<T>;
  /** A connection of its own, for listening. */
  alone(): pg.Client;
  readonly pool: pg.Pool;
  /** From now on every connection has this role's rights and no others. */
  actAs(role: string): void;
  end(): Promise<void>;
}

/** The rows that a statement gives, and how many it touched. */
export type Ask = <T extends unknown[]>(
  text: string,
  values: readonly unknown[],
) => Promise<{ rows: T[]; count: number }>;

export interface Limits {
  /** Connections of this process, one more listens. */
  readonly connections: number;
  /** Milliseconds a statement may take. */
  readonly statementMs: number;
}

export function createLink(url: string, limits: Limits): Link {
  const config: pg.ClientConfig = {
    connectionString: url,
    connectionTimeoutMillis: 5_000,
    statement_timeout: limits.statementMs,
    // Longer than the database's own limit: it strikes only where the other side no longer answers at all.
    query_timeout: limits.statementMs + 2_000,
    keepAlive: true,
    application_name: 'nocool',
  };
  const pool = new pg.Pool({ ...config, max: limits.connections, idleTimeoutMillis: 30_000 });
  // An idle connection that breaks is replaced at the next use; without this line it would end the process.
  pool.on('error', () => undefined);
  // The same for one that breaks between two statements while it is in use: the next statement says so.
  pool.on('connect', (client) => client.on('error', () => undefined));

  let role: string | null = null;
  const ready = new WeakMap<pg.PoolClient, string | null>();
  // On, whatever the server is set to: an acknowledged reply survives a power cut.
  const asWho = (): string => `set synchronous_commit = on${role === null ? '' : `; set role ${role}`}`;
  const connect = async (): Promise<pg.PoolClient> => {
    const client = await pool.connect();
    if (ready.get(client) === role) return client;
    try {
      await client.query(asWho());
    } catch (error) {
      client.release(true);
      throw error;
    }
    ready.set(client, role);
    return client;
  };
  const once: Link['once'] = async <T extends unknown[]>(
    name: string,
    text: string,
    values: readonly unknown[] = [],
  ) => {
    const query = { name, text, values: [...values], rowMode: 'array' as const };
    const client = await connect();
    try {
      const { rows } = await client.query<T>(query);
      client.release();
      return rows;
    } catch (error) {
      client.release(isLost(error));
      throw error;
    }
  };
  const read: Link['read'] = async <T extends unknown[]>(name: string, text: string, values?: readonly unknown[]) => {
    for (const pause of [...PAUSES, null]) {
      try {
        return await once<T>(name, text, values);
      } catch (error) {
        if (pause === null || !isLost(error)) throw asTrouble(error);
        await setTimeout(pause);
      }
    }
    return [];
  };
  return {
    read,
    again: read,
    once,
    async together(statements) {
      const client = await connect().catch((error: unknown) => {
        throw asTrouble(error);
      });
      try {
        await client.query('begin');
        const counts: number[] = [];
        for (const { text, values } of statements) counts.push((await client.query(text, [...values])).rowCount ?? 0);
        await client.query('commit');
        client.release();
        return counts;
      } catch (error) {
        // Let go of the connection with whatever is open on it: the database undoes that by itself.
        client.release(true);
        throw asTrouble(error);
      }
    },
    async long(work) {
      const client = new pg.Client({ ...config, statement_timeout: 0, query_timeout: undefined });
      client.on('error', () => undefined);
      try {
        await client.connect();
        await client.query(`${asWho()}; set statement_timeout = 0; begin`);
        const done = await work(async <T extends unknown[]>(text: string, values: readonly unknown[]) => {
          const { rows, rowCount } = await client.query<T>({ text, values: [...values], rowMode: 'array' });
          return { rows, count: rowCount ?? 0 };
        });
        await client.query('commit');
        return done;
      } catch (error) {
        throw asTrouble(error);
      } finally {
        // With whatever is open on it: the database undoes that by itself.
        await client.end().catch(() => undefined);
      }
    },
    alone: () => new pg.Client({ ...config, query_timeout: undefined }),
    pool,
    actAs(name) {
      role = name;
    },
    end: () => pool.end(),
  };
}
