/** What has to be said in a chat outside, and where it stands once it was. */
import type { Heard, ShopRows } from '../port.ts';
import { fromSaying, SAYING_COLUMNS, type SayingRow, toSaying } from '../rows.ts';
import type { Sayings } from '../sqlite/sayings.ts';
import type { Link } from './link.ts';

type SayingRows = Pick<ShopRows, 'sayings' | 'heard'>;
type HeardRow = [chat: string, lane: string, seq: number];
const MARK = `insert into heard (chat, lane, seq) values ($1, $2, $3)
  on conflict (chat, lane) do update set seq = greatest(heard.seq, excluded.seq)`;
const ADD = 'insert into saying (id, chat, lane, body) values ($1, $2, $3, $4) on conflict do nothing';
const PUT = `insert into saying (${SAYING_COLUMNS}) values ($1, $2, $3, $4, $5, $6)
  on conflict (id) do update set tries = excluded.tries, at = excluded.at`;
const toHeard = ([chat, lane, seq]: HeardRow): Heard => ({ chat, lane, seq });

export function createSayings(link: Link): Sayings {
  const read = async (name: string, where: string, ...values: string[]) =>
    (await link.read<SayingRow>(name, `select ${SAYING_COLUMNS} from saying ${where}`, values)).map(toSaying);
  return {
    async willSay({ chat, lane, seq }, sayings) {
      const adds = sayings.map(({ id, body }) => ({ text: ADD, values: [id, chat, lane, JSON.stringify(body)] }));
      await link.together([...adds, { text: MARK, values: [chat, lane, seq] }]);
    },
    heard: async (chat) =>
      (await link.read<HeardRow>('heard', 'select chat, lane, seq from heard where chat = $1', [chat])).map(toHeard),
    unsaid: (chat) =>
      read(
        'unsaid',
        `where nr in (select min(nr) from saying where chat = $1 and at is null group by lane) order by nr`,
        chat,
      ),
    async takeSaying(id, now, until) {
      // Asked again where the connection is lost, it may find its own mark: it is tried a little later then.
      const text = `update saying set tries = tries + 1, taken = $3
        where id = $1 and at is null and (taken is null or taken <= $2) returning id, chat, lane, body, tries - 1, at`;
      const [row] = await link.again<SayingRow>('take-saying', text, [id, now, until]);
      return row === undefined ? null : toSaying(row);
    },
    async letGo(id) {
      await link.again('let-go', 'update saying set taken = null where id = $1', [id]);
    },
    async said(id, at) {
      if (at === null) await link.again('said', 'delete from saying where id = $1', [id]);
      else await link.again('stands', 'update saying set at = $2, taken = null where id = $1', [id, at]);
    },
    sayings: (chat, lane) => read('sayings', 'where chat = $1 and lane = $2 order by nr', chat, lane),
    sayingAt: async (chat, at) => (await read('saying-at', 'where chat = $1 and at = $2', chat, at))[0] ?? null,
  };
}

/** All of it, for a copy. */
export async function everySaying(link: Link): Promise<SayingRows> {
  const sayings = await link.read<SayingRow>('all-sayings', `select ${SAYING_COLUMNS} from saying order by nr`);
  const heard = await link.read<HeardRow>('all-heard', 'select chat, lane, seq from heard order by chat, lane');
  return { sayings: sayings.map(toSaying), heard: heard.map(toHeard) };
}
export const putSayings = (rows: SayingRows) => [
  ...rows.sayings.map((saying) => ({ text: PUT, values: fromSaying(saying) as unknown[] })),
  ...rows.heard.map(({ chat, lane, seq }) => ({ text: MARK, values: [chat, lane, seq] as unknown[] })),
];
