/** Calls, the board, who goes, and who is told of an emergency. */
import type { When } from '../../report/when.ts';
import type { Draft, Entry, Equipment, Text } from '../../schema.ts';
import { type BoardRow, Damaged, type Store } from '../../store/port.ts';
import { beginningsOf } from '../../store/sought.ts';
import type { Manual } from '../../vocabulary.ts';
import { isUnreadable, unreadable } from '../card.ts';
import type { File } from '../files.ts';
import { may } from '../rights.ts';
import type { Sheets } from '../sheets.ts';
import { cardFor, unitsOf } from '../shown-to.ts';
import { type KeptCard, takesPart } from '../summary.ts';
import {
  type AlarmLine,
  type DispatchDesk,
  type JobCard,
  NoRight,
  NotFound,
  type Person,
  type Turn,
} from '../types.ts';
import { byUrgency, crewLines, lowStock, ownBoard } from './board.ts';
import { openingOf, opensJob } from './opening.ts';

/** A record that is to begin: what stands after `opened`, and the words of it besides its title. */
export interface Beginning {
  readonly job: string;
  readonly by: string;
  readonly client: string;
  readonly manual: Manual;
  readonly title: string;
  readonly training: boolean;
  readonly drafts: readonly Draft[];
  readonly texts?: readonly Text[];
}
export interface DispatchParts {
  readonly store: Store;
  readonly sheets: Sheets;
  readonly shelf: readonly [Manual, ...Manual[]];
  readonly random: (bytes: number) => string;
  readonly now: () => string;
  readonly when: When;
  readonly personOf: (id: string) => Promise<Person>;
  readonly cardIn: (row: BoardRow) => Promise<KeptCard>;
  readonly load: (job: string) => Promise<File>;
  /** The record that begins, or the one that had begun under this id. */
  readonly begin: (beginning: Beginning) => Promise<Turn>;
  /** Puts drafts on a record as it stands. */
  readonly write: (by: string, job: string, client: string, drafts: (file: File) => Draft[]) => Promise<Turn>;
  readonly handOver: (by: string, job: string, to: string, client: string) => Promise<Turn>;
}
export interface Dispatch extends DispatchDesk {
  /** The job that a call which is over has opened: opened now, where it was not. */
  opened(call: string, file: File): Promise<string | null>;
}

const NOBODY = { own: false, holder: false, gate: false, reason: false, participates: false };
/** Signed jobs on the board; the older ones are found by words. */
const DONE_SHOWN = 20;
const FOUND = 30;
/** Shown while somebody types. */
const KNOWN = 6;
/** Done with, for whoever asks whether a call about this is open already. */
const ENDED: readonly JobCard['state'][] = ['signed', 'taken', 'finished'];

export function createDispatch(parts: DispatchParts): Dispatch {
  const { store, sheets, shelf, random, now, when, personOf, cardIn, load } = parts;

  const must = async (by: string, use: Parameters<typeof may>[1], what: string): Promise<Person> => {
    const person = await personOf(by);
    if (!may(person.roles, use, NOBODY)) throw new NoRight(what);
    return person;
  };
  const cardOf = async (row: BoardRow): Promise<KeptCard> => {
    try {
      return await cardIn(row);
    } catch (error) {
      if (!isUnreadable(error)) throw error;
      return { card: unreadable(row, error), takesPart: [], attention: [], waits: false };
    }
  };
  const cards = async (rows: readonly BoardRow[]): Promise<KeptCard[]> => {
    const out: KeptCard[] = [];
    for (const row of rows) out.push(await cardOf(row));
    return out;
  };
  const unitOf = async (id: string): Promise<Equipment> => {
    const unit = await sheets.equipment(id);
    if (!unit) throw new NotFound('There is no record of such a unit.');
    return unit;
  };

  const opened: Dispatch['opened'] = async (call, file) => {
    if (!opensJob(file)) return null;
    const job = await store.claim(`call:${call}`, random(16));
    if ((await store.readAfter(job, 0)).entries.length > 0) return job;
    const by = file.entries.at(-1)?.by ?? '';
    const known = file.standing.position.memory.equipment;
    const opening = openingOf(call, by, file, known ? await unitOf(known.id) : null, () => random(16));
    const { title, texts, training, newUnit } = opening;
    const drafts = [...opening.drafts];
    if (newUnit !== null) {
      const id = `unit-${job.slice(0, 16)}`;
      await sheets.saveEquipment(id, { name: newUnit, facts: {}, history: [] });
      const unit = await unitOf(id);
      drafts.splice(1, 0, { kind: 'set', body: { what: 'equipment', equipment: { ...unit, name: '' } } });
    }
    await parts.begin({ job, by, client: 'call', manual: shelf[0], title, training, drafts, texts });
    return job;
  };

  return {
    opened,
    async take(by, { client, training }) {
      await must(by, 'take-call', 'Calls are taken by a dispatcher, a senior or the owner.');
      const manual = shelf.find((one) => one.caller);
      if (!manual) throw new NotFound('There is no manual for callers on the shelf.');
      const job = await store.claim(`take:${by}:${client}`, random(16));
      return parts.begin({ job, by, client, manual, title: 'A call', training: training ?? false, drafts: [] });
    },
    async known(by, typed) {
      const person = await must(by, 'take-call', 'Only whoever takes calls looks up callers.');
      const inUnits = unitsOf(person, await store.settings());
      const beginnings = beginningsOf(typed);
      const calls = (await cards(await store.find(beginnings, FOUND))).map(({ card }) => cardFor(card, inUnits));
      const open = calls.filter(({ state }) => state !== 'taking' && !ENDED.includes(state));
      const found = await store.findUnits(beginnings, KNOWN);
      const units = await Promise.all(found.map(({ id }) => unitOf(id)));
      return { calls: open.slice(0, KNOWN), units: units.map(unitLine) };
    },
    async pick(by, call, unit, client) {
      await must(by, 'take-call', 'Only whoever takes calls says which unit it is.');
      const equipment = await unitOf(unit);
      return parts.write(by, call, client, ({ standing }) => {
        if (!standing.machine.plan.manual.caller) throw new NotFound('That is no call that is being taken.');
        return [{ kind: 'set', body: { what: 'equipment', equipment: { ...equipment, name: '' } } }];
      });
    },
    async board(by) {
      const person = await personOf(by);
      const units = unitsOf(person, await store.settings());
      const kept = await cards(await store.board(DONE_SHOWN));
      const crew = await store.people();
      if (!may(person.roles, 'board', NOBODY)) {
        const own = kept.flatMap(({ card, takesPart: these }) => (these.includes(by) ? cardFor(card, units) : []));
        return ownBoard(own, crew, by, now(), when);
      }
      const jobs = kept
        .map(({ card }) => cardFor(card, units))
        .filter(({ state }) => state !== 'taken' && state !== 'put-away');
      // A list that can't be read hides no call.
      const low = await sheets.trucks().then(lowStock, (error: unknown) => {
        if (error instanceof Damaged) return [];
        throw error;
      });
      return { jobs: [...jobs].sort(byUrgency), crew: crewLines(crew, jobs, now(), when), low, now: now() };
    },
    async find(by, words) {
      const person = await personOf(by);
      const kept = await cards(await store.find(beginningsOf(words), FOUND));
      const seen = kept.filter(({ takesPart: these }) =>
        may(person.roles, 'see', { ...NOBODY, participates: these.includes(by) }),
      );
      // What a call has opened stands for it.
      const units = unitsOf(person, await store.settings());
      return seen.map(({ card }) => cardFor(card, units)).filter(({ state }) => state !== 'taken');
    },
    async assign(by, job, to, client) {
      await must(by, 'assign', 'You can’t assign a call.');
      const person = await personOf(to);
      if (!person.roles.includes('technician')) throw new NotFound(`${person.name} is no technician.`);
      const { standing } = await load(job);
      if (standing.position.memory.assigned.length > 0) return parts.handOver(by, job, to, client);
      return parts.write(by, job, client, () => [{ kind: 'assigned', body: { to } }]);
    },
    async alarms(by) {
      const person = await personOf(by);
      if (!may(person.roles, 'told-of-alarms', NOBODY)) return [];
      const crew = await store.people();
      const name = (id: string): string => crew.find((p) => p.id === id)?.name ?? id;
      const kept = await cards(await store.board(0));
      const lines = kept.flatMap(({ card: { job, title, alarm } }): AlarmLine[] => {
        if (!alarm) return [];
        const { seq, at, hazard, seen } = alarm;
        return [{ job, title, seq, at, hazard, by: name(alarm.by), seen: seen.map(name), mine: seen.includes(by) }];
      });
      return lines.sort((a, b) => (a.at < b.at ? -1 : 1));
    },
    async watch(by, onNews) {
      const { roles } = await personOf(by);
      const all = may(roles, 'board', NOBODY);
      return store.watch((job, { seq, kind }: Entry) => {
        if (all) return onNews({ job, seq, kind });
        // A record that can't be read is nobody's news.
        void load(job).then(
          (file) => takesPart(file).includes(by) && onNews({ job, seq, kind }),
          () => undefined,
        );
      });
    },
  };
}

const unitLine = ({ id, name, history }: Equipment) => ({
  id,
  name,
  history: [...history].reverse().map(({ at, what, item, herm, fan }) => {
    const read = [herm, fan].filter((value) => value !== null).join(' and ');
    return `${at.slice(0, 10)}: ${item} ${what}${read === '' ? '' : `, ${read}\u2009µF`}`;
  }),
});
