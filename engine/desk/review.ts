/** The review desk: which jobs a senior reads next and why, and one job with all its evidence. */
import { memoryOf, placeIdOf, planOf } from '../replay.ts';
import { recomputed } from '../report/on-the-spot.ts';
import { evidence } from '../review/evidence.ts';
import { trendsOf } from '../review/trends.ts';
import type { CommandName, Equipment } from '../schema.ts';
import type { BoardRow, QueueMark, Store } from '../store/port.ts';
import { isUnreadable, unreadable } from './card.ts';
import type { File } from './files.ts';
import { may } from './rights.ts';
import { cardFor, evidenceFor, unitsOf } from './shown-to.ts';
import { attentionOf, type KeptCard } from './summary.ts';
import {
  type AwaitedLine,
  type CountBy,
  type EvidenceRow,
  type JobView,
  NoRight,
  type Person,
  type ReviewCard,
  type ReviewDesk,
} from './types.ts';

interface ReviewParts {
  readonly store: Store;
  readonly personOf: (id: string) => Promise<Person>;
  /** The card of a line of the board, made anew where it was missing or old. */
  readonly cardIn: (row: BoardRow) => Promise<KeptCard & { readonly anew: boolean }>;
  readonly load: (job: string) => Promise<File>;
  /** The unit's sheet, which has what was read at other calls. */
  readonly equipment: (id: string) => Promise<Equipment | null>;
  /** The job as a surface draws it. */
  readonly viewOf: (by: string, job: string, file: File) => Promise<JobView>;
}

/** Jobs on one page of the queue. */
const PAGE = 20;
/** How often a page is read again because cards on it were made anew and may belong elsewhere. */
const READINGS = 50;
/** Jobs shown behind a count. */
const COUNTED_JOBS = 50;
const COUNTED: readonly CountBy[] = ['verdict', 'person', 'part', 'unit'];
const nameOf = async (
  by: CountBy,
  what: string,
  names: ReadonlyMap<string, string>,
  equipment: ReviewParts['equipment'],
): Promise<string> => {
  if (by === 'person') return names.get(what) ?? what;
  return by === 'unit' ? ((await equipment(what))?.name ?? what) : what;
};
const NOBODY = { own: false, holder: false, gate: false, reason: false, participates: false };

export function createReview({ store, personOf, cardIn, load, viewOf, equipment }: ReviewParts): ReviewDesk {
  const mustReview = async (id: string): Promise<Person> => {
    const person = await personOf(id);
    if (!may(person.roles, 'review', NOBODY)) throw new NoRight('Only a senior or the owner reviews jobs.');
    return person;
  };
  const cardOf = async (row: BoardRow): Promise<{ card: ReviewCard; anew: boolean }> => {
    try {
      const { card, attention, anew } = await cardIn(row);
      return { card: { ...card, attention: [...attention] }, anew };
    } catch (error) {
      // One record that can't be read hides no other, and is for a senior to know of.
      if (!isUnreadable(error)) throw error;
      return { card: { ...unreadable(row, error), attention: [] }, anew: false };
    }
  };

  return {
    async queue(by, after) {
      const units = unitsOf(await mustReview(by), await store.settings());
      const mark = after === undefined ? null : markIn(after);
      for (let reading = 1; ; reading++) {
        const rows = await store.queue(mark, PAGE + 1);
        const shown = rows.slice(0, PAGE);
        const cards: Awaited<ReturnType<typeof cardOf>>[] = [];
        for (const row of shown) cards.push(await cardOf(row));
        // A card that was made anew may stand elsewhere in the queue, or not at all any more.
        if (cards.some(({ anew }) => anew) && reading < READINGS) continue;
        const last = shown.at(-1);
        return {
          jobs: cards.map(({ card }) => cardFor(card, units)),
          next: rows.length > PAGE && last ? written(last) : null,
        };
      }
    },

    async awaited(by) {
      const person = await mustReview(by);
      const [units, crew] = [unitsOf(person, await store.settings()), await store.people()];
      const lines: AwaitedLine[] = [];
      for (const row of await store.board(0)) {
        // A record that can't be read is told of in the queue.
        const kept = await cardIn(row).catch((error: unknown) => {
          if (isUnreadable(error)) return null;
          throw error;
        });
        // Nobody approves on a call of their own.
        if (!kept?.waits || kept.takesPart.includes(by)) continue;
        const { job, title, assigned, where, updated } = cardFor(kept.card, units);
        const who = assigned.map((id) => crew.find((one) => one.id === id)?.name ?? id);
        lines.push({ job, title, who, what: where, since: updated });
      }
      return lines.sort((a, b) => (a.since < b.since ? -1 : 1));
    },

    async counts(by, { from, to, also }) {
      const units = unitsOf(await mustReview(by), await store.settings());
      const filter = { from, to, also };
      const names = new Map((await store.people()).map(({ id, name }) => [id, name]));
      const groups = [];
      for (const kind of COUNTED) {
        const counts = await store.counts(kind, filter);
        const named: { what: string; name: string; jobs: number }[] = [];
        for (const { what, jobs } of counts)
          named.push({ what, jobs, name: await nameOf(kind, what, names, equipment) });
        groups.push({ by: kind, counts: named });
      }
      const rows = await store.countedJobs(filter, COUNTED_JOBS);
      const cards = await Promise.all(rows.map(cardOf));
      return { groups, jobs: cards.map(({ card: { attention: _, ...card } }) => cardFor(card, units)) };
    },

    async look(by, job) {
      const person = await mustReview(by);
      const file = await load(job);
      const view = await viewOf(by, job, file);
      const units = unitsOf(person, memoryOf(file.standing).settings);
      const unit = memoryOf(file.standing).equipment;
      const sheet = unit && (await equipment(unit.id));
      return {
        ...{
          view,
          attention: attentionOf(file),
          evidence: rowsOf(file, view).map((row) => evidenceFor(row, units)),
          may: mayNow(person, file, view),
        },
        trends: sheet ? trendsOf(sheet.history, planOf(file.standing).manual.cabinets, units) : [],
      };
    },

    async recompute(by, job) {
      await mustReview(by);
      const { standing } = await load(job);
      // As it is kept now, not as this process remembers it.
      return recomputed(standing.machine, (await store.read(job)).entries);
    },
  };
}

function rowsOf({ standing, entries }: File, { ticket }: JobView): EvidenceRow[] {
  const found = evidence(standing.machine, entries);
  const { places } = planOf(standing);
  const failed = new Set(memoryOf(standing).failed.map(({ seq }) => seq));
  const takenBack = new Set(entries.flatMap((e) => (e.kind === 'withdrawn' ? e.body.of : [])));
  return ticket.flatMap((line): EvidenceRow[] => {
    if (line.kind !== 'answered' || line.place === null) return [];
    const gate = places.get(line.place)?.gate ?? false;
    const ended = failed.has(line.seq)
      ? 'not accepted'
      : takenBack.has(line.seq)
        ? 'taken back'
        : gate && line.standing === 'fallen'
          ? 'stood until its isolation ended'
          : null;
    return [{ ...line, gate, ended, findings: found.get(line.seq) ?? [] }];
  });
}

/** What a senior does with a job, by the table of rights and by where it stands. `decide` has the last word. */
function mayNow({ id, roles }: Person, { standing }: File, { prompt, question }: JobView): CommandName[] {
  const memory = memoryOf(standing);
  const holder = Object.values(memory.isolations).some((isolation) => isolation.holder === id);
  const right = (use: Parameters<typeof may>[1]): boolean => may(roles, use, { ...NOBODY, holder });
  const ended = planOf(standing).endings.includes(placeIdOf(standing));
  const now: readonly (readonly [CommandName, boolean])[] = [
    ['release', memory.alarm !== null && right('release')],
    ['approve', (prompt.kind === 'waiting' || prompt.kind === 'held') && right('approve')],
    ['ask', question === null && right('ask')],
    ['sign', ended && !memory.signed && right('sign')],
    ['send back', ended && right('send-back')],
  ];
  return now.flatMap(([name, can]) => (can ? name : []));
}

const written = ({ review, nr, updated }: QueueMark): string => `${review}.${nr}.${updated}`;
function markIn(text: string): QueueMark | null {
  const found = /^(\d{1,9})\.(\d{1,15})\.(\d{4}-[\d:.TZ-]{1,30})$/.exec(text);
  return found ? { review: Number(found[1]), nr: Number(found[2]), updated: found[3] ?? '' } : null;
}
