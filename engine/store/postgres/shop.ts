/** What belongs to the shop and not to a job: its people, its settings, who is signed in. */
import type { Person } from '../../desk/types.ts';
import { DEFAULT_SETTINGS } from '../../memory.ts';
import type { Settings } from '../../schema.ts';
import { NotKept, type Session, type Sheet, type ShopRows, type Store } from '../port.ts';
import { json } from '../rows.ts';
import type { Shop } from '../sqlite/shop.ts';
import type { Link } from './link.ts';
import { everySaying, putSayings } from './sayings.ts';
import { everyShare, putShares } from './shares.ts';
import { naming } from './sought.ts';
import { asTrouble, isLost } from './trouble.ts';

const upsert = (table: string, key: string, value: string): string =>
  `insert into ${table} (${key}, ${value}) values ($1, $2) on conflict (${key}) do update set ${value} = excluded.${value}`;
const PUT = {
  person: upsert('person', 'id', 'body'),
  settings: upsert('settings', 'key', 'body'),
  meta: upsert('meta', 'key', 'value'),
  link: 'insert into link (hash, person, expires) values ($1, $2, $3) on conflict do nothing',
  session:
    'insert into session (hash, person, expires, made, device) values ($1, $2, $3, $4, $5) on conflict do nothing',
  sheet: `insert into sheet (list, id, version, body) values ($1, $2, $3, $4)
    on conflict (list, id) do update set version = excluded.version, body = excluded.body`,
} as const;
type SheetRow = [id: string, version: number, body: string];
const toSheet = ([id, version, body]: SheetRow): Sheet => ({ id, version, body: json(body) });

export function createShop(link: Link): Shop {
  const put = async (name: keyof typeof PUT, ...values: unknown[]): Promise<void> => {
    await link.again(`put-${name}`, PUT[name], values);
  };
  const one = async (name: string, text: string, ...values: unknown[]): Promise<string | null> =>
    (await link.read<[string]>(name, text, values))[0]?.[0] ?? null;
  const people = async (): Promise<Person[]> =>
    (await link.read<[string]>('people', 'select body from person order by nr')).map(([body]) => json(body) as Person);
  const settings = async (): Promise<Settings | null> => {
    const body = await one('settings', 'select body from settings');
    return body === null ? null : (json(body) as Settings);
  };
  const meta: Store['meta'] = (key) => one('meta', 'select value from meta where key = $1', key);
  type SessionRow = [hash: string, person: string, expires: string, made: string | null, device: string | null];
  const toSession = ([hash, person, expires, made, device]: SessionRow): Session => ({
    ...{ hash, person, expires, made, device },
  });
  const SESSION = 'select hash, person, expires, made, device from session';
  /** Not again where the connection is lost: it may have taken effect, and the second time would say otherwise. */
  const once = async <T extends unknown[]>(name: string, text: string, values: readonly unknown[]): Promise<T[]> =>
    link.once<T>(name, text, values).catch((error: unknown) => {
      throw isLost(error)
        ? new NotKept('The database can’t be reached. Look again.', { cause: error })
        : asTrouble(error);
    });

  return {
    people,
    savePerson: (person) => put('person', person.id, JSON.stringify(person)),
    settings: async () => (await settings()) ?? DEFAULT_SETTINGS,
    saveSettings: (body) => put('settings', 1, JSON.stringify(body)),
    async sheet(list, id) {
      const text = 'select id, version, body from sheet where list = $1 and id = $2';
      const [row] = await link.read<SheetRow>('sheet', text, [list, id]);
      return row ? toSheet(row) : null;
    },
    sheets: async (list) =>
      (
        await link.read<SheetRow>('sheets', 'select id, version, body from sheet where list = $1 order by id', [list])
      ).map(toSheet),
    async saveSheet(list, id, version, body) {
      const text =
        version === 0
          ? `insert into sheet (list, id, version, body) select $1, $2, 1, $4 where $3::int = 0
             on conflict do nothing returning 1`
          : `update sheet set body = $4, version = version + 1 where list = $1 and id = $2 and version = $3 returning 1`;
      const name = version === 0 ? 'new-sheet' : 'next-sheet';
      const kept = (await once(name, text, [list, id, version, JSON.stringify(body)])).length === 1;
      if (kept && list === 'equipment') await link.together(naming(id, body));
      return kept;
    },
    saveLink: (hash, person, expires) => put('link', hash, person, expires),
    async useLink(hash, now) {
      // One statement: of two uses at the same moment, in whatever process, one finds it gone.
      const text = 'delete from link where hash = $1 returning person, expires';
      const [row] = await once<[string, string]>('use-link', text, [hash]);
      return row !== undefined && now < row[1] ? row[0] : null;
    },
    saveSession: (hash, person, expires, began) =>
      put('session', hash, person, expires, began?.made ?? null, began?.device ?? null),
    session: (hash, now) => one('session', 'select person from session where hash = $1 and expires > $2', hash, now),
    async endSession(hash) {
      await link.again('end-session', 'delete from session where hash = $1', [hash]);
    },
    async devices(person, now) {
      const text = `${SESSION} where person = $1 and expires > $2 order by expires desc, hash`;
      return (await link.read<SessionRow>('devices', text, [person, now])).map(toSession);
    },
    async signOut(person) {
      const out = ['link', 'session'].map((t) => ({ text: `delete from ${t} where person = $1`, values: [person] }));
      return (await link.together(out)).reduce((a, b) => a + b, 0);
    },
    async expire(now) {
      const old = ['link', 'session', 'share'].map((t) => ({
        text: `delete from ${t} where expires <= $1`,
        values: [now],
      }));
      return (await link.together(old)).reduce((a, b) => a + b, 0);
    },
    meta,
    setMeta: (key, value) => put('meta', key, value),
    async claim(key, value) {
      await link.again('claim', 'insert into meta (key, value) values ($1, $2) on conflict do nothing', [key, value]);
      return (await meta(key)) ?? value;
    },
    async shop() {
      const sheets = await link.read<['equipment' | 'truck', ...SheetRow]>(
        'all-sheets',
        'select list, id, version, body from sheet order by list, id',
      );
      const metas = await link.read<[string, string]>('all-meta', 'select key, value from meta order by key');
      return {
        people: await people(),
        settings: await settings(),
        links: (
          await link.read<[string, string, string]>('all-links', 'select hash, person, expires from link order by hash')
        ).map(([hash, person, expires]) => ({ hash, person, expires })),
        sessions: (await link.read<SessionRow>('all-sessions', `${SESSION} order by hash`)).map(toSession),
        sheets: sheets.map(([list, ...row]) => ({ list, ...toSheet(row) })),
        meta: metas.map(([key, value]) => ({ key, value })),
        ...(await everySaying(link)),
        shares: await everyShare(link),
      };
    },
    async saveShop(rows: ShopRows) {
      const of = (name: keyof typeof PUT, ...values: unknown[]) => ({ text: PUT[name], values });
      await link.together([
        ...['link', 'session', 'share', 'saying', 'heard'].map((t) => ({ text: `delete from ${t}`, values: [] })),
        ...rows.people.map((p) => of('person', p.id, JSON.stringify(p))),
        ...(rows.settings ? [of('settings', 1, JSON.stringify(rows.settings))] : []),
        ...rows.sheets.map((s) => of('sheet', s.list, s.id, s.version, JSON.stringify(s.body))),
        ...rows.sheets.flatMap((s) => (s.list === 'equipment' ? naming(s.id, s.body) : [])),
        ...rows.links.map((l) => of('link', l.hash, l.person, l.expires)),
        ...rows.sessions.map((s) => of('session', s.hash, s.person, s.expires, s.made, s.device)),
        ...rows.meta.map((m) => of('meta', m.key, m.value)),
        ...putSayings(rows),
        ...putShares(rows.shares),
      ]);
    },
  };
}
