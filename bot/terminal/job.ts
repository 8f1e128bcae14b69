/** Which job this run is about: one that is named, the last one under way, or a new one. */
import type { Desk, JobView, Person } from '../../engine/desk/index.ts';
import type { Entry } from '../../engine/index.ts';
import type { Options } from './options.ts';

/** A job on the screen, and the entries that opening it made. */
export interface Begun {
  readonly view: JobView;
  readonly entries: readonly Entry[];
}
export type Begin = (person: Person) => Promise<Begun | { readonly wrong: string }>;

const TITLE = 'Call at the terminal';
const ENDED: ReadonlySet<string> = new Set(['finished', 'signed']);

export const beginWith =
  (desk: Desk, options: Pick<Options, 'job' | 'title' | 'db' | 'call'>, client: () => string): Begin =>
  async (person) => {
    const { job, title, db, call } = options;
    if (call) return desk.dispatch.take(person.id, { client: client() });
    const cards = title === null && db !== null ? await desk.jobs(person.id) : [];
    if (job !== null) {
      const [card, ...more] = cards.filter((c) => c.job.startsWith(job));
      if (!card || more.length > 0)
        return {
          wrong: `${card ? 'More than one job begins' : `${person.name} sees no job that begins`} with "${job}".`,
        };
      return { view: await desk.look(person.id, card.job), entries: [] };
    }
    // A record that can’t be read may be theirs: to look at it says so, to begin another would hide it.
    const last = cards.find((c) => c.state === 'unreadable' || (c.assigned.includes(person.id) && !ENDED.has(c.state)));
    if (last) return { view: await desk.look(person.id, last.job), entries: [] };
    return desk.open(person.id, { title: title ?? TITLE, client: client() });
  };
