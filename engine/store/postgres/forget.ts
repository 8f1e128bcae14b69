/** Removal of words and personal data. What the database keeps of removed rows goes with its next VACUUM. */
import type { Person } from '../../desk/types.ts';
import type { Entry } from '../../schema.ts';
import { FORGETS, forgotten, photosNamed, unitsNamed, unnamed } from '../forgotten.ts';
import type { Store } from '../port.ts';
import { json } from '../rows.ts';
import type { Link } from './link.ts';
import { SQL } from './sql.ts';

// Words came with the last entry of an append, and one append is one person's.
const BY_PERSON = `from words where (job, seq) in (select job, seq from entry where "by" = $1)`;
const ON_JOB = 'where job = (select key from job where id = $1)';

/** First of all: of two removals the second waits here for the first, and then sees what that one has left. */
const COUNT = `insert into meta (key, value) values ($1, '1')
  on conflict (key) do update set value = (meta.value::integer + 1)::text`;

export function createForget(link: Link): Pick<Store, 'forget' | 'removals' | 'scrub'> {
  const onJob = (job: string): Promise<number> =>
    link.long(async (ask) => {
      await ask(COUNT, [FORGETS]);
      // Before its entries are read: one that comes meanwhile is not forgotten.
      await ask(SQL.forgotten, [job]);
      const { rows } = await ask<[string]>(
        `select body from entry ${ON_JOB} and kind in ('answered', 'amended', 'set')`,
        [job],
      );
      const bodies = rows.map(([body]) => json(body, job) as Entry['body']);
      const units = bodies.flatMap(unitsNamed);
      const { count } = await ask(`delete from words ${ON_JOB}`, [job]);
      await ask(`update board set closed = 0, card = null, review = 0, counts = null ${ON_JOB}`, [job]);
      await ask('delete from share where job = $1', [job]);
      await ask(SQL.forgetPhotos, [bodies.flatMap(photosNamed), job]);
      await ask(`delete from sought where list = 'job' and id = $1`, [job]);
      await ask(`delete from sought where list = 'equipment' and id = any($1::text[])`, [units]);
      // Held until the commit: whoever changes such a sheet meanwhile finds it at another version.
      const { rows: sheets } = await ask<[string, string]>(
        `select id, body from sheet where list = 'equipment' and id = any($1::text[]) order by id for update`,
        [units],
      );
      for (const [id, body] of sheets)
        await ask(`update sheet set body = $2, version = version + 1 where list = 'equipment' and id = $1`, [
          id,
          unnamed(body),
        ]);
      return count;
    });
  const ofPerson = (id: string): Promise<number> =>
    link.long(async (ask) => {
      await ask(COUNT, [FORGETS]);
      const { rows } = await ask<[string]>('select body from person where id = $1 for update', [id]);
      const [[body] = []] = rows;
      if (body !== undefined)
        await ask('update person set body = $2 where id = $1', [id, JSON.stringify(forgotten(json(body) as Person))]);
      await ask(
        `update board set closed = 0, card = null, review = 0, counts = null where job in (select job ${BY_PERSON})`,
        [id],
      );
      const { count } = await ask(`delete ${BY_PERSON}`, [id]);
      await ask(
        `delete from sought where list = 'job' and (id, seq) in
          (select job.id, entry.seq from entry join job on job.key = entry.job where entry."by" = $1)`,
        [id],
      );
      await ask('delete from link where person = $1', [id]);
      await ask('delete from session where person = $1', [id]);
      return count;
    });
  return {
    forget: (whose) => ('job' in whose ? onJob(whose.job) : ofPerson(whose.person)),
    async removals() {
      const [row] = await link.read<[string]>('removals', 'select value from meta where key = $1', [FORGETS]);
      return Number(row?.[0] ?? 0);
    },
    scrub: () => Promise.resolve(false),
  };
}
