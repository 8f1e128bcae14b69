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
 * those who can be told there.
 */
export function due(
  chat: string,
  view: JobView,
  entries: readonly Entry[],
  said: readonly Saying[],
  crew: readonly Person[],
  typedHere: (client: string | null) => boolean,
): Due[] {
  const id = (name: string): string => `${chat}.${view.job}.${name}`;
  const lane: Lane[] = said.map((saying) => ({ id: saying.id, what: saying.body as What }));
  const out: Due[] = [];
  const add = (name: string, body: What): void => void out.push({ id: id(name), body });

  if (!lane.some(({ what }) => what.kind === 'head')) add('head', { kind: 'head' });
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
    for (const to of heedsIt(entry, crew)) add(`attention.${seq}.${to}`, { kind: 'attention', seq, to });
  }
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

const seniors = (crew: readonly Person[]): Person[] =>
  crew.filter(({ roles }) => roles.includes('senior') || roles.includes('owner'));

/** Who is told by themselves, wherever they are: a senior when somebody needs one, the dispatcher of an emergency too. */
function heedsIt(entry: Entry, crew: readonly Person[]): string[] {
  if (entry.kind !== 'raised' && entry.kind !== 'alarmed') return [];
  const heeds = crew.filter(
    ({ id, roles }) =>
      id !== entry.by &&
      (roles.includes('senior') ||
        roles.includes('owner') ||
        (entry.kind === 'alarmed' && roles.includes('dispatcher'))),
  );
  return heeds.map(({ id }) => id);
}
