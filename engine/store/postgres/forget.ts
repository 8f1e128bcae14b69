/** Removal of words and personal data. What the database keeps of removed rows goes with its next VACUUM. */
import type { Person } from '../../desk/types.ts';
import type { Entry } from '../../schema.ts';
import { FORGETS, forgotten, photosNamed, unitsNamed, unnamed } from '../forgotten.ts';
import type { Store } from '../port.ts';
import { json } from '../rows.ts';
import type { Link } from './link.ts';

// Words came with the last entry of an append, and one append is one person's.
const BY_PERSON = `from words where (job, seq) in (select job, seq from entry where "by" = $1)`;
const ON_JOB = 'where job = (select key from job where id = $1)';

const MARK = {
  text: `insert into meta (key, value) values ($1, '1')
    on conflict (key) do update set value = (meta.value::integer + 1)::text`,
  values: [FORGETS],
};

export function createForget(link: Link): Pick<Store, 'forget' | 'removals' | 'scrub'> {
  const onJob = async (job: string): Promise<number> => {
    const rows = await link.read<[string]>(
      'bodies',
      `select body from entry ${ON_JOB} and kind in ('answered', 'amended', 'set')`,
      [job],
    );
    const bodies = rows.map(([body]) => json(body, job) as Entry['body']);
    const photos = bodies.flatMap(photosNamed);
    const units = await link.read<[string, string]>(
      'units',
      `select id, body from sheet where list = 'equipment' and id = any($1::text[])`,
      [bodies.flatMap(unitsNamed)],
    );
    const [words] = await link.together([
      { text: `delete from words ${ON_JOB}`, values: [job] },
      { text: `update board set closed = 0, card = null, review = 0, counts = null ${ON_JOB}`, values: [job] },
      { text: 'delete from share where job = $1', values: [job] },
      // Another job may name the same picture: it is that job's evidence too.
      {
        text: `delete from photo where hash = any($1::text[]) and not exists (
          select 1 from entry where job <> (select key from job where id = $2) and kind in ('answered', 'amended')
            and position(photo.hash in entry.body::text) > 0)`,
        values: [photos, job],
      },
      MARK,
      { text: `delete from sought where list = 'job' and id = $1`, values: [job] },
      {
        text: `delete from sought where list = 'equipment' and id = any($1::text[])`,
        values: [bodies.flatMap(unitsNamed)],
      },
      ...units.map(([id, body]) => ({
        text: `update sheet set body = $2, version = version + 1 where list = 'equipment' and id = $1`,
        values: [id, unnamed(body)],
      })),
    ]);
    return words ?? 0;
  };
  const ofPerson = async (id: string): Promise<number> => {
    const [row] = await link.read<[string]>('person', 'select body from person where id = $1', [id]);
    const body = row === undefined ? null : JSON.stringify(forgotten(json(row[0]) as Person));
    const [, words] = await link.together([
      {
        text: `update board set closed = 0, card = null, review = 0, counts = null where job in (select job ${BY_PERSON})`,
        values: [id],
      },
      { text: `delete ${BY_PERSON}`, values: [id] },
      { text: 'update person set body = $2 where id = $1 and $2::text is not null', values: [id, body] },
      {
        text: `delete from sought where list = 'job' and (id, seq) in
          (select job.id, entry.seq from entry join job on job.key = entry.job where entry."by" = $1)`,
        values: [id],
      },
      { text: 'delete from link where person = $1', values: [id] },
      { text: 'delete from session where person = $1', values: [id] },
      MARK,
    ]);
    return words ?? 0;
  };
  return {
    forget: (whose) => ('job' in whose ? onJob(whose.job) : ofPerson(whose.person)),
    async removals() {
      const [row] = await link.read<[string]>('removals', 'select value from meta where key = $1', [FORGETS]);
      return Number(row?.[0] ?? 0);
    },
    scrub: () => Promise.resolve(false),
  };
}
