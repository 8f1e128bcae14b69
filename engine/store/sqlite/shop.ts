/** What belongs to the shop and not to a job: its people, its settings, who is signed in. */
import type { Database } from 'better-sqlite3';
import type { Person } from '../../desk/types.ts';
import { DEFAULT_SETTINGS } from '../../memory.ts';
import type { Settings } from '../../schema.ts';
import type { Session, Sheet, ShopRows, SignIn, Store } from '../port.ts';
import { json } from '../rows.ts';
import type { Commits } from './commits.ts';
import type { Ends } from './ends.ts';
import { createSayings, type Sayings } from './sayings.ts';
import { everyShare, putShare, type Shares } from './shares.ts';
import { soughtWriter } from './sought.ts';
import { guarded } from './trouble.ts';

/** The methods of the shop; the rest of the port is about jobs. */
export type Shop = Omit<
  Store,
  JobMethod | keyof Sayings | keyof Shares | 'savePhoto' | 'photo' | 'photos' | 'onlyWords' | 'onlyPhotos'
>;
type JobMethod =
  | ('create' | 'read' | 'readAfter' | 'append' | 'byClient' | 'jobs' | 'watch' | 'close')
  | (
      | 'counts'
      | 'countedJobs'
      | 'board'
      | 'queue'
      | 'saveSummary'
      | 'forget'
      | 'removals'
      | 'scrub'
      | 'find'
      | 'findUnits'
    );

interface SheetRow {
  readonly id: string;
  readonly version: number;
  readonly body: string;
}
const toSheet = ({ id, version, body }: SheetRow): Sheet => ({ id, version, body: json(body) });

export function createShop(db: Database, commits: Commits, ends: Ends): Shop {
  const one = (sql: string) => db.prepare<unknown[], string>(sql).pluck();
  const upsert = (table: string, key: string, value: string) =>
    db.prepare(
      `insert into ${table} (${key}, ${value}) values (?, ?) on conflict do update set ${value} = excluded.${value}`,
    );
  const people = one('select body from person order by rowid');
  const savePerson = upsert('person', 'id', 'body');
  // Every turn asks for the people several times, and they change once a month: read anew only after a write.
  let known: { at: number | null; people: readonly Person[] } = { at: null, people: [] };
  const crew = (): readonly Person[] => {
    const at = ends.version();
    if (at === null || known.at !== at)
      known = { at, people: people.all().map((body) => Object.freeze(json(body) as Person)) };
    return known.people;
  };
  const settings = one('select body from settings');
  const saveSettings = upsert('settings', 'key', 'body');
  const meta = one('select value from meta where key = ?');
  const setMeta = upsert('meta', 'key', 'value');
  const sheet = db.prepare<[string, string], SheetRow>('select id, version, body from sheet where list = ? and id = ?');
  const sheets = db.prepare<[string], SheetRow>('select id, version, body from sheet where list = ? order by id');
  const newSheet = db.prepare('insert into sheet (list, id, version, body) values (?, ?, 1, ?) on conflict do nothing');
  const nextSheet = db.prepare(
    'update sheet set body = ?, version = version + 1 where list = ? and id = ? and version = ?',
  );
  const saveLink = db.prepare('insert into link (hash, person, expires) values (?, ?, ?) on conflict do nothing');
  // One statement: of two uses at the same moment, in whatever process, one finds it gone.
  const useLink = db.prepare<[string], { person: string; expires: string }>(
    'delete from link where hash = ? returning person, expires',
  );
  const saveSession = db.prepare(
    'insert into session (hash, person, expires, made, device) values (?, ?, ?, ?, ?) on conflict do nothing',
  );
  const session = one('select person from session where hash = ? and expires > ?');
  const sought = soughtWriter(db);
  const signOut = ['link', 'session'].map((table) => db.prepare(`delete from ${table} where person = ?`));
  const endSession = db.prepare('delete from session where hash = ?');
  const expireLinks = db.prepare('delete from link where expires <= ?');
  const expireSessions = db.prepare('delete from session where expires <= ?');
  const claim = db.prepare('insert into meta (key, value) values (?, ?) on conflict do nothing');
  const links = db.prepare<[], SignIn>('select hash, person, expires from link order by hash');
  const sessions = db.prepare<[], Session>('select hash, person, expires, made, device from session order by hash');
  const devices = db.prepare<[string, string], Session>(
    `select hash, person, expires, made, device from session where person = ? and expires > ? order by expires desc, hash`,
  );
  const allSheets = db.prepare<[], SheetRow & Pick<ShopRows['sheets'][number], 'list'>>(
    'select list, id, version, body from sheet order by list, id',
  );
  const putSheet = db.prepare(`insert into sheet (list, id, version, body) values (?, ?, ?, ?)
    on conflict do update set version = excluded.version, body = excluded.body`);
  const clear = ['link', 'session', 'share', 'saying', 'heard'].map((table) => db.prepare(`delete from ${table}`));
  const saveShop = (rows: ShopRows): void => {
    for (const table of clear) table.run();
    for (const p of rows.people) savePerson.run(p.id, JSON.stringify(p));
    if (rows.settings) saveSettings.run(1, JSON.stringify(rows.settings));
    for (const s of rows.sheets) {
      putSheet.run(s.list, s.id, s.version, JSON.stringify(s.body));
      if (s.list === 'equipment') sought.name(s.id, s.body);
    }
    for (const { hash, person, expires } of rows.links) saveLink.run(hash, person, expires);
    for (const s of rows.sessions) saveSession.run(s.hash, s.person, s.expires, s.made, s.device);
    for (const { key, value } of rows.meta) setMeta.run(key, value);
    said.putAll(rows);
    for (const share of rows.shares) addShare(share);
  };
  const metas = db.prepare<[], { key: string; value: string }>('select key, value from meta order by key');
  const said = createSayings(db);
  const addShare = putShare(db);
  const expireShares = db.prepare('delete from share where expires <= ?');
  const write = (statement: { run(...params: unknown[]): unknown }, ...params: unknown[]): Promise<void> =>
    commits.write(() => {
      statement.run(...params);
    });

  return {
    people: () => guarded(() => [...crew()]),
    savePerson: (person) =>
      commits.write(() => {
        known = { at: null, people: [] };
        savePerson.run(person.id, JSON.stringify(person));
      }),
    settings: () =>
      guarded(() => {
        const body = settings.get();
        return body === undefined ? DEFAULT_SETTINGS : (json(body) as Settings);
      }),
    saveSettings: (body) => write(saveSettings, 1, JSON.stringify(body)),
    sheet: (list, id) =>
      guarded(() => {
        const row = sheet.get(list, id);
        return row ? toSheet(row) : null;
      }),
    sheets: (list) => guarded(() => sheets.all(list).map(toSheet)),
    saveSheet: (list, id, version, body) =>
      commits.write(() => {
        const text = JSON.stringify(body);
        const done = version === 0 ? newSheet.run(list, id, text) : nextSheet.run(text, list, id, version);
        if (done.changes === 1 && list === 'equipment') sought.name(id, body);
        return done.changes === 1;
      }),
    saveLink: (hash, person, expires) => write(saveLink, hash, person, expires),
    useLink: (hash, now) =>
      commits.write(() => {
        const link = useLink.get(hash);
        return link !== undefined && now < link.expires ? link.person : null;
      }),
    saveSession: (hash, person, expires, began) =>
      write(saveSession, hash, person, expires, began?.made ?? null, began?.device ?? null),
    session: (hash, now) => guarded(() => session.get(hash, now) ?? null),
    endSession: (hash) => write(endSession, hash),
    devices: (person, now) => guarded(() => devices.all(person, now)),
    signOut: (person) => commits.write(() => signOut.reduce((n, out) => n + out.run(person).changes, 0)),
    meta: (key) => guarded(() => meta.get(key) ?? null),
    setMeta: (key, value) => write(setMeta, key, value),
    expire: (now) =>
      commits.write(() =>
        [expireLinks, expireSessions, expireShares].reduce((sum, each) => sum + each.run(now).changes, 0),
      ),
    claim: (key, value) =>
      commits.write(() => {
        claim.run(key, value);
        return meta.get(key) ?? value;
      }),
    shop: () =>
      guarded(() => {
        const body = settings.get();
        return {
          people: people.all().map((row) => json(row) as Person),
          settings: body === undefined ? null : (json(body) as Settings),
          links: links.all(),
          sessions: sessions.all(),
          sheets: allSheets.all().map((row) => ({ list: row.list, ...toSheet(row) })),
          meta: metas.all(),
          ...said.all(),
          shares: everyShare(db),
        };
      }),
    saveShop: (rows) =>
      commits.write(() => {
        known = { at: null, people: [] };
        saveShop(rows);
      }),
  };
}
