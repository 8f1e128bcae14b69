/** What has to be said of a job by now, from its record and from what was said before. Pure. */
import { sha256 } from '../../report/digest.ts';
import type { Entry, Prompt } from '../../schema.ts';
import type { Saying } from '../../store/port.ts';
import type { JobView, Person } from '../types.ts';
import type { What } from './types.ts';

export type Due = { readonly id: string; readonly body: What };
interface Lane {
  readonly id: string;
  readonly what: What;
}

/** Told to the thread as a line. What is answered closes its question; what is computed is a verdict of its own. */
const EVENTS: ReadonlySet<Entry['kind']> = new Set([
  'assigned',
  'amended',
  'withdrawn',
  'voided',
  'paused',
  'resumed',
  'handed-over',
  'raised',
  'alarmed',
  'acknowledged',
  'released',
  'asked',
  'replied',
  'approved',
  'signed',
  'sent-back',
  'noted',
]);
/** Words that stand in the thread already, where they were typed there. */
const SAID_HERE: ReadonlySet<Entry['kind']> = new Set(['asked', 'replied', 'noted']);

/** Tells two questions apart: place and turn, whose it is, and what is read before it. */
export const printOf = (p: Prompt): string =>
  sha256(
    JSON.stringify([p.seq, p.place, p.kind, p.holder, p.question?.seq ?? null, p.notices, p.body, p.callouts]),
  ).slice(0, 16);

/**
 * `entries`: those that were not heard yet. `typedHere`: whether a client id belongs to a line typed in this chat. `crew`:
 * those who can be told there; `stockTo`: those of them who hear of what runs low.
 */
export function due(
  chat: string,
  view: JobView,
  entries: readonly Entry[],
  said: readonly Saying[],
  crew: readonly Person[],
  typedHere: (client: string | null) => boolean,
  stockTo: readonly string[],
): Due[] {
  const id = (name: string): string => `${chat}.${view.job}.${name}`;
  const lane: Lane[] = said.map((saying) => ({ id: saying.id, what: saying.body as What }));
  const out: Due[] = [];
  const add = (name: string, body: What): void => void out.push({ id: id(name), body });

  if (!view.calling && !lane.some(({ what }) => what.kind === 'head')) add('head', { kind: 'head' });
  const pictures = (of: string | null, name: string): void => {
    const drawn = view.prompt.pictures.filter(({ verdict }) => verdict === of);
    for (const [n] of drawn.entries()) add(`${name}.picture.${n}`, { kind: 'picture', of, n });
  };
  for (const entry of entries) {
    const { kind, seq } = entry;
    if (kind === 'concluded') {
      add(`verdict.${seq}`, { kind: 'verdict', seq });
      pictures(entry.body.place, `verdict.${seq}`);
    } else if (EVENTS.has(kind) && !(SAID_HERE.has(kind) && typedHere(entry.client)))
      add(`event.${seq}`, { kind: 'event', seq });
    if (kind === 'counted' && !view.training)
      for (const to of stockTo) add(`low.${seq}.${to}`, { kind: 'low', seq, to });
    for (const to of heedsIt(entry, view, crew)) add(`attention.${seq}.${to}`, { kind: 'attention', seq, to });
  }
  for (const { seq, round } of alarmRound(view))
    for (const to of toldOfAlarm(crew, view.alarm?.by))
      add(`attention.${seq}.${to}.again.${round}`, { kind: 'attention', seq, to });
  // Who calls, and from where, is nothing for a channel that the whole crew reads.
  if (view.calling) return out.filter(({ body }) => body.kind === 'attention');
  const print = printOf(view.prompt);
  const { last } = view.prompt;
  const questions = lane.flatMap(({ id: of, what }) => (what.kind === 'question' ? [{ of, what }] : []));
  const closed = new Set(lane.flatMap(({ what }) => (what.kind === 'close' ? [what.of] : [])));
  const standing = questions.at(-1);
  const moved = standing?.what.print !== print;
  if (moved) {
    for (const { of, what } of questions)
      if (!closed.has(of)) add(`close.${of}`, { kind: 'close', of, after: what.last, to: last });
    pictures(null, `question.${last}.${print}`);
    add(`question.${last}.${print}`, { kind: 'question', last, print });
    if (view.prompt.kind === 'finished')
      for (const { id: to } of seniors(crew)) add(`attention.${last}.end.${to}`, { kind: 'attention', seq: last, to });
  }
  if ((moved || entries.length > 0) && lane.length > 0) add(`redraw.${last}.${print}`, { kind: 'redraw' });
  return out;
}

const MINUTE = 60_000;
/** Minutes after an emergency at which it is said again: each of the first ten, then each tenth. */
const roundAt = (minutes: number): number => (minutes <= 10 ? minutes : Math.floor(minutes / 10) * 10);

/** The round of saying an emergency again that is due by now; none in the first minute, or once somebody told has seen it. */
function alarmRound({ alarm, now }: JobView): { seq: number; round: number }[] {
  if (!alarm || alarm.seen.some((who) => who !== alarm.by)) return [];
  const round = roundAt(Math.floor((Date.parse(now) - Date.parse(alarm.at)) / MINUTE));
  return round < 1 ? [] : [{ seq: alarm.seq, round }];
}
/** When an emergency that nobody has seen is said again, in milliseconds since 1970; null where none waits. */
export function nextRound({ alarm, now }: JobView): number | null {
  if (!alarm || alarm.seen.some((who) => who !== alarm.by)) return null;
  const from = Date.parse(alarm.at);
  const minutes = Math.max(0, Math.floor((Date.parse(now) - from) / MINUTE));
  return from + (minutes < 10 ? minutes + 1 : roundAt(minutes) + 10) * MINUTE;
}
/** Everybody who has to know of an emergency, but whoever raised it. */
const toldOfAlarm = (crew: readonly Person[], by: string | undefined): string[] =>
  crew.flatMap(({ id, roles }) => (id !== by && roles.some((role) => role !== 'technician') ? [id] : []));

const seniors = (crew: readonly Person[]): Person[] =>
  crew.filter(({ roles }) => roles.includes('senior') || roles.includes('owner'));

/**
 * Who is told by themselves, wherever they are: a senior when somebody needs one, the dispatcher of an emergency too, and
 * whoever asked of the answer.
 */
function heedsIt(entry: Entry, view: JobView, crew: readonly Person[]): string[] {
  if (entry.kind === 'alarmed') return toldOfAlarm(crew, entry.by);
  if (entry.kind === 'replied') {
    const asker = view.ticket.find(({ seq }) => seq === entry.body.of)?.by;
    return crew.flatMap(({ id }) => (id === asker && id !== entry.by ? [id] : []));
  }
  return entry.kind === 'raised' ? seniors(crew).flatMap(({ id }) => (id === entry.by ? [] : [id])) : [];
}
