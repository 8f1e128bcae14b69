/** What has to be said in a chat outside, and where it stands once it was. */
import type { Database } from 'better-sqlite3';
import type { Heard, Saying, ShopRows, Store } from '../port.ts';
import { fromSaying, SAYING_COLUMNS, type SayingRow, toSaying } from '../rows.ts';
import { guarded } from './trouble.ts';

export type Sayings = Pick<
  Store,
  'willSay' | 'heard' | 'unsaid' | 'takeSaying' | 'letGo' | 'said' | 'sayings' | 'sayingAt'
>;
type SayingRows = Pick<ShopRows, 'sayings' | 'heard'>;

export function createSayings(db: Database) {
  const rows = <P extends unknown[]>(sql: string) => db.prepare<P, SayingRow>(sql).raw();
  const add = db.prepare('insert into saying (id, chat, lane, body) values (?, ?, ?, ?) on conflict do nothing');
  const put = db.prepare(`insert into saying (${SAYING_COLUMNS}) values (?, ?, ?, ?, ?, ?)
    on conflict (id) do update set tries = excluded.tries, at = excluded.at`);
  const mark = db.prepare(`insert into heard (chat, lane, seq) values (?, ?, ?)
    on conflict do update set seq = max(seq, excluded.seq)`);
  const marks = db.prepare<[string], Heard>('select chat, lane, seq from heard where chat = ?');
  const unsaid = rows<[string]>(`select ${SAYING_COLUMNS} from saying where nr in (
    select min(nr) from saying where chat = ? and at is null group by lane) order by nr`);
  const take = rows<[string, string, string]>(`update saying set tries = tries + 1, taken = ?
    where id = ? and at is null and (taken is null or taken <= ?) returning id, chat, lane, body, tries - 1, at`);
  const stands = db.prepare('update saying set at = ?, taken = null where id = ?');
  const leave = db.prepare('update saying set taken = null where id = ?');
  const remove = db.prepare('delete from saying where id = ?');
  const ofLane = rows<[string, string]>(`select ${SAYING_COLUMNS} from saying where chat = ? and lane = ? order by nr`);
  const byPlace = rows<[string, string]>(`select ${SAYING_COLUMNS} from saying where chat = ? and at = ?`);
  const everySaying = rows<[]>(`select ${SAYING_COLUMNS} from saying order by nr`);
  const everyMark = db.prepare<[], Heard>('select chat, lane, seq from heard order by chat, lane');
  const willSay = db.transaction(({ chat, lane, seq }: Heard, sayings: readonly Pick<Saying, 'id' | 'body'>[]) => {
    for (const { id, body } of sayings) add.run(id, chat, lane, JSON.stringify(body));
    mark.run(chat, lane, seq);
  }).immediate;

  const port: Sayings = {
    willSay: (heard, sayings) => guarded(() => willSay(heard, sayings)),
    heard: (chat) => guarded(() => marks.all(chat)),
    unsaid: (chat) => guarded(() => unsaid.all(chat).map(toSaying)),
    takeSaying: (id, now, until) =>
      guarded(() => {
        const row = take.get(until, id, now);
        return row === undefined ? null : toSaying(row);
      }),
    letGo: (id) => guarded(() => void leave.run(id)),
    said: (id, at) => guarded(() => void (at === null ? remove.run(id) : stands.run(at, id))),
    sayings: (chat, lane) => guarded(() => ofLane.all(chat, lane).map(toSaying)),
    sayingAt: (chat, at) =>
      guarded(() => {
        const row = byPlace.get(chat, at);
        return row === undefined ? null : toSaying(row);
      }),
  };
  return {
    port,
    all: (): SayingRows => ({ sayings: everySaying.all().map(toSaying), heard: everyMark.all() }),
    /** Inside a transaction of the caller. */
    putAll(rows: SayingRows): void {
      for (const saying of rows.sayings) put.run(...fromSaying(saying));
      for (const { chat, lane, seq } of rows.heard) mark.run(chat, lane, seq);
    },
  };
}
