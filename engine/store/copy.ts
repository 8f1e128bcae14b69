/** A whole shop from one database to another. Broken off and begun again, it goes on where it was; what was removed since goes there too. */
import type { Entry, Text } from '../schema.ts';
import { countsIn } from './appends.ts';
import { cutOff, everyJob, found, refsIn, type ShopCheck } from './check.ts';
import { type BoardRow, Damaged, type JobRow, NotKept, type Pages, type Store, type Summary } from './port.ts';

/** Jobs under way at a time, so that their appends share commits. */
const AT_ONCE = 64;

/**
 * Rejects with NotKept where the other database holds what is not in this one, with Damaged where something can't be read or
 * a job that was copied does not read as it did. Nothing may write to either meanwhile.
 *
 * @param allowed.damaged what can't be read is left out and listed, and all else is copied
 */
export async function copyShop(from: Store, to: Store, allowed: { damaged?: boolean } = {}): Promise<ShopCheck> {
  const trouble: string[] = [];
  const can = <T>(reading: Promise<T>): Promise<T | null> => (allowed.damaged ? found(reading, trouble) : reading);
  const jobs = await everyJob(from);
  const known = new Set(jobs.map(({ job }) => job));
  const strange = (await to.jobs()).find(({ job }) => !known.has(job));
  if (strange) throw new NotKept(`The other database holds a job of its own: ${strange.job}.`);
  const people = new Set((await from.people()).map(({ id }) => id));
  if ((await to.people()).some(({ id }) => !people.has(id)))
    throw new NotKept('The other database holds people of its own.');
  const list = await can(from.board(Number.MAX_SAFE_INTEGER));
  const cards = new Map((list ?? []).map((row) => [row.job, row]));
  // The oldest first, so that the list has the same order there.
  const waiting = [...jobs].reverse();
  let entries = 0;
  const work = async (): Promise<void> => {
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      const copied = await can(copyJob(next, from, to, cards.get(next.job)));
      entries += copied ?? 0;
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
  // After the jobs: what is photographed meanwhile is named by none of them.
  const photos = await from.photos();
  for (const hash of photos) {
    const bytes = await can(from.photo(hash));
    if (bytes) await to.savePhoto(bytes);
  }
  await to.onlyPhotos(photos);
  // Last: where a job is refused, those who are signed in there stay so.
  await to.saveShop(await from.shop());
  return { jobs: jobs.length, entries, photos: photos.length, trouble };
}

async function copyJob({ job, lastSeq }: JobRow, from: Store, to: Store, row: BoardRow | undefined): Promise<number> {
  const pages = await from.read(job);
  // A card that is older than the record is made anew by the desk.
  const current = row?.lastSeq === pages.entries.length && row.card !== null;
  const summary: Summary | undefined = current
    ? { closed: row.closed, card: row.card, review: row.review, ...counted(row.counts) }
    : undefined;
  const before = (await to.read(job)).entries;
  if (!before.every((entry, i) => entry.hash === pages.entries[i]?.hash))
    throw new NotKept(`The other database holds another record of job ${job}.`);
  for (const { entries, texts, last } of appends(pages, before.length)) {
    const seq = (entries[0]?.seq ?? 1) - 1;
    if (seq === 0) await to.create(job, entries, texts, last ? summary : undefined);
    else if ((await to.append(job, seq, entries, texts, last ? summary : undefined)) === 'conflict')
      throw new NotKept(`Somebody writes to job ${job} in the other database.`);
  }
  const copy = await to.read(job);
  const refs = new Set(pages.texts.map(({ ref }) => ref));
  if (copy.texts.some(({ ref }) => !refs.has(ref))) {
    await to.onlyWords(job, [...refs]);
    if (summary) await to.saveSummary(job, pages.entries.length, summary);
  }
  const words = copy.texts.filter(({ ref }) => refs.has(ref));
  if (words.length < refs.size)
    throw new NotKept(`Words of job ${job} were removed in the other database. They are not brought back.`);
  if (alike({ entries: copy.entries, texts: words }) !== alike(pages))
    throw new Damaged('The copy reads differently.', job);
  // What is left of it is there all the same.
  const cut = cutOff(job, lastSeq, pages);
  if (cut.length > 0) throw new Damaged(cut.join('\n'));
  return pages.entries.length;
}
const counted = (text: string | null): Pick<Summary, 'counts'> => {
  const counts = countsIn(text);
  return counts ? { counts } : {};
};

/** Words are a set: the order in which they came says nothing. */
const alike = ({ entries, texts }: Pages): string =>
  JSON.stringify([entries, [...texts].sort((a, b) => (a.ref < b.ref ? -1 : 1))]);

interface Append {
  readonly entries: Entry[];
  readonly texts: Text[];
  readonly last: boolean;
}
/** The entries after `done` as they were appended, each with the words it brought: whose they are rests on that. */
function appends({ entries, texts }: Pages, done: number): Append[] {
  const groups: Entry[][] = [];
  for (const entry of entries) {
    const group = groups.at(-1);
    const [a, b] = [group?.[0], entry];
    if (group && a && a.by === b.by && a.at === b.at && a.client === b.client) group.push(entry);
    else groups.push([entry]);
  }
  const written = new Set<string>();
  return groups
    .map((group, i) => {
      const named = new Set(group.flatMap(({ body }) => refsIn(body)).map(({ ref }) => ref));
      const last = i === groups.length - 1;
      const mine = texts.filter(({ ref }) => !written.has(ref) && (last || named.has(ref)));
      for (const { ref } of mine) written.add(ref);
      return { entries: group, texts: mine, last };
    })
    .filter(({ entries: [first] }) => (first?.seq ?? 0) > done);
}
