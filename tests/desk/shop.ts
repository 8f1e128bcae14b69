/** A shop with people on a real SQLite file, and a clock that the test moves. */
import { randomBytes } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createDesk, type Desk, type Person, type Turn } from '../../engine/desk/index.ts';
import type { Reply } from '../../engine/schema.ts';
import { openSqlite, type Store } from '../../engine/store/index.ts';
import { SHELF } from '../../flows/index.ts';
import { METER, PEOPLE, type PersonId } from '../people.ts';

export class Shop {
  now = Date.parse('2026-07-14T15:00:00.000Z');
  readonly file: string;
  readonly store: Store;
  readonly desk: Desk;
  private readonly folder: string;
  private readonly stores: Store[] = [];
  private count = 0;

  private constructor(folder: string, file: string, store: Store) {
    [this.folder, this.file, this.store] = [folder, file, store];
    this.desk = this.deskOn(store);
    this.stores.push(store);
  }
  static async open(): Promise<Shop> {
    const folder = await mkdtemp(join(tmpdir(), 'nocool-desk-'));
    const file = join(folder, 'shop.sqlite');
    const store = await openSqlite(file, { busyMs: 50 });
    for (const p of Object.values(PEOPLE)) await store.savePerson(personOf(p));
    return new Shop(folder, file, store);
  }
  deskOn(store: Store): Desk {
    const random = (n: number): string => randomBytes(n).toString('hex');
    return createDesk({ store, shelf: SHELF, clock: () => new Date(this.now), random });
  }
  /** A desk with a connection and a memory of its own, as another process would have. */
  async another(): Promise<Desk> {
    const store = await openSqlite(this.file, { busyMs: 50 });
    this.stores.push(store);
    return this.deskOn(store);
  }
  async close(): Promise<void> {
    for (const store of this.stores) await store.close();
    await rm(this.folder, { recursive: true });
  }
  client(): string {
    return `c${++this.count}`;
  }
  /** A call of Ines, opened by the dispatcher. */
  async call(assign: PersonId = 'ines', title = 'Fan runs, warm air'): Promise<string> {
    return (await this.desk.open('dana', { title, assign, client: this.client() })).view.job;
  }
  async line(job: string, text: string, by: PersonId = 'ines'): Promise<Reply> {
    return { kind: 'text', client: this.client(), seq: (await this.desk.look(by, job)).prompt.seq, text };
  }
  async type(job: string, text: string, by: PersonId = 'ines'): Promise<Turn> {
    return this.desk.reply(by, job, await this.line(job, text, by));
  }
  async types(job: string, lines: readonly string[], by: PersonId = 'ines'): Promise<Turn> {
    let turn: Turn | undefined;
    for (const text of lines) {
      turn = await this.type(job, text, by);
      if (turn.refusal) throw new Error(`"${text}": ${turn.refusal.text}`);
    }
    if (!turn) throw new Error('no line was typed');
    return turn;
  }
}

export const personOf = (p: (typeof PEOPLE)[PersonId], more: Partial<Person> = {}): Person => ({
  id: p.id,
  name: p.name,
  initials: p.name.replace(/[^A-Z]/g, ''),
  roles: p.roles,
  certified: false,
  meter: p.id === 'ines' ? METER : null,
  active: true,
  ...more,
});
