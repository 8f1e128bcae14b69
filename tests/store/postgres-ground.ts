/** A fresh database on the run's PostgreSQL server. */
import { randomUUID } from 'node:crypto';
import { createConnection } from 'node:net';
import { text } from 'node:stream/consumers';
import pg from 'pg';
import { inject } from 'vitest';
import { openPostgres } from '../../engine/store/postgres/open.ts';
import type { Ground } from './ground.ts';

export interface PostgresGround extends Ground {
  readonly url: string;
}

/** Of the superuser, without a database's name. Starts the server where nobody has asked before. */
export async function postgresServer(): Promise<string> {
  const told = await text(createConnection(inject('postgres')));
  if (!told.startsWith('postgres:')) throw new Error(told);
  return told;
}

async function ask(url: string, statement: string): Promise<unknown[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query(statement)).rows;
  } finally {
    await client.end();
  }
}

const TABLES =
  'job, entry, photo_of_job, words, board, photo, person, settings, sheet, link, session, meta, saying, heard';
/** Past every trigger, as only a superuser can. */
const EMPTY = `set session_replication_role = replica; truncate ${TABLES} restart identity`;
const idle: string[] = [];

/** Without tables. */
export async function newDatabase(): Promise<string> {
  const server = await postgresServer();
  const name = `g_${randomUUID().replaceAll('-', '')}`;
  await ask(`${server}postgres`, `create database ${name}`);
  return server + name;
}

async function withTables(url: string): Promise<string> {
  await (await openPostgres(url)).close();
  return url;
}

/** Databases are made once and emptied after each test: making one takes as long as ten tests. */
export async function postgresGround(): Promise<PostgresGround> {
  const url = idle.pop() ?? (await withTables(await newDatabase()));
  return {
    url,
    open: () => openPostgres(url, { connections: 4 }),
    sql: (statement) => ask(url, statement),
    async remove() {
      await ask(url, EMPTY);
      idle.push(url);
    },
  };
}
