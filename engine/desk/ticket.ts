/** The ticket so far: every entry as a line a person reads, with whether it still counts. */

import { unreachable } from '../errors.ts';
import type { Plan } from '../flatten.ts';
import { memoryOf, planOf, type Standing } from '../replay.ts';
import { route } from '../route.ts';
import type { Entry, Units } from '../schema.ts';
import { besideText } from '../units/beside.ts';
import { conclusionIn } from '../units/shown.ts';
import { answerWords, NOTED, type Resolve } from '../words.ts';
import { callLines } from './dispatch/call-lines.ts';
import { photosIn } from './photo.ts';
import type { TicketLine } from './types.ts';

/** How a line is put in words: those behind a reference, a person's name, what is shown beside °F and psig. */
export interface Said {
  readonly resolve: Resolve;
  readonly name: (id: string) => string;
  readonly units?: Units | undefined;
}

/** Lines as they were put in words so far, which stays the same: a turn words only what it has added. */
export interface Worded {
  readonly lines: TicketLine[];
  /** Of which lines something may be otherwise tomorrow, as places in `lines`: whether an answer counts, a name. */
  readonly changing: number[];
  /** How many entries are in them; some have no line. */
  upTo: number;
}
export const nothingWorded = (): Worded => ({ lines: [], changing: [], upTo: 0 });

/** @param known to be added to; it may hold more than these entries, as they have grown for somebody else. */
export function ticket(
  s: Standing,
  entries: readonly Entry[],
  said: Said,
  known: Worded = nothingWorded(),
): TicketLine[] {
  const [plan, memory] = [planOf(s), memoryOf(s)];
  for (; known.upTo < entries.length; known.upTo++) {
    const line = lineOf(plan, entries[known.upTo] as Entry, entries, said);
    if (line === null) continue;
    if (line.place !== null || NAMING.has(line.kind)) known.changing.push(known.lines.length);
    known.lines.push(line);
  }
  const lines = [...known.lines];
  while ((lines.at(-1)?.seq ?? 0) > entries.length) lines.pop();
  const onTheWay = new Set(route(plan, memory).passed.map((p) => p.id));
  const standing = new Set(Object.values(memory.facts).map((fact) => fact.seq));
  for (const i of known.changing) {
    const line = lines[i];
    if (!line) continue;
    if (line.place === null) {
      lines[i] = lineOf(plan, entries[line.seq - 1] as Entry, entries, said) ?? line;
      continue;
    }
    const stands = standing.has(line.seq);
    const counts = (plan.places.get(line.place)?.gate ?? false) || onTheWay.has(line.place);
    lines[i] = {
      ...line,
      standing: !stands ? 'fallen' : counts ? 'kept' : 'set-aside',
      amendable: stands && !memory.signed,
    };
  }
  return lines;
}

/** Entries whose line names a person besides whoever made it. */
const NAMING: ReadonlySet<string> = new Set<Entry['kind']>(['assigned', 'handed-over']);

/** An answer's line as if it had fallen: whether it counts changes. */
function lineOf(plan: Plan, entry: Entry, all: readonly Entry[], how: Said): TicketLine | null {
  const said = words(plan, entry, all, how);
  const place = entry.kind === 'answered' ? entry.body.place : null;
  const { seq, at, by, kind } = entry;
  return said === null
    ? null
    : {
        ...{ seq, at, by, title: said[0], says: said[1], kind, place },
        standing: place === null ? 'event' : 'fallen',
        amendable: false,
        photos: photosIn(entry),
      };
}

function words(plan: Plan, e: Entry, all: readonly Entry[], { resolve, name, units }: Said): [string, string[]] | null {
  const text = 'text' in e.body && e.body.text ? [resolve(e.body.text)] : [];
  const reason =
    'reason' in e.body && e.body.reason !== undefined && typeof e.body.reason !== 'string'
      ? [resolve(e.body.reason)]
      : [];
  switch (e.kind) {
    case 'opened':
      return ['Call opened', [resolve(e.body.title), ...(e.body.training ? ['Training job: never counts.'] : [])]];
    case 'set':
      return e.body.what === 'call' ? ['The call, as it was taken', callLines(e.body.call, resolve, units)] : null;
    case 'assigned':
      return ['Assigned', [name(e.body.to)]];
    case 'answered': {
      const step = plan.places.get(e.body.place)?.step;
      if (!step || !('parts' in step)) return [e.body.place, []];
      const skipped = e.body.skipped ? [`Skipped: ${resolve(e.body.skipped)}`] : [];
      const offline = e.body.offline ? ['Answered without contact: kept as a finding, authorises nothing.'] : [];
      return [
        besideText(step.say, units),
        [...skipped, ...answerWords(step, e.body.parts, resolve, units), ...offline],
      ];
    }
    case 'amended': {
      const of = all.find((x) => x.seq === e.body.of);
      const step = of?.kind === 'answered' ? plan.places.get(of.body.place)?.step : undefined;
      return [
        'Changed',
        [...(step && 'parts' in step ? answerWords(step, e.body.parts, resolve, units) : []), ...reason],
      ];
    }
    case 'withdrawn':
      return ['Taken back', reason];
    case 'voided':
      return ['Isolation ended', [VOIDED[e.body.reason], ...text]];
    case 'concluded': {
      const { title, findings, says } = conclusionIn(e.body, units);
      return [`Verdict: ${title}`, [...findings.map((f) => f.text), ...says]];
    }
    case 'paused':
      return e.body.safe
        ? [
            'Made safe',
            Object.entries(e.body.safe).map(([k, v]) => `${k}: ${v.kind === 'choice' ? v.chosen.join(', ') : ''}`),
          ]
        : ['Stop', []];
    case 'resumed':
      return ['Going on', []];
    case 'handed-over':
      return ['Handed over', [`to ${name(e.body.to)}`]];
    case 'raised':
      return ['Raised to a senior', text];
    case 'alarmed':
      return ['EMERGENCY', text];
    case 'acknowledged': {
      const of = all.find((x) => x.seq === e.body.of);
      return [of?.kind === 'handed-over' ? 'Taken over' : 'Emergency seen', []];
    }
    case 'released':
      return [e.body.as === 'clear' ? 'Emergency released' : 'Heard of, not here', reason];
    case 'asked':
      return ['Asked', text];
    case 'replied':
      return ['Reply', text];
    case 'approved':
      return [e.body.what === 'tries' ? 'Approved: three more lines' : 'Approved: how the means is held open', reason];
    case 'signed':
      return ['Signed', []];
    case 'sent-back':
      return ['Sent back', reason];
    case 'counted':
      return ['Stock', [`${itemName(all, e)}: ${e.body.left} left`]];
    case 'noted':
      return [NOTED[e.body.as], text];
    default:
      return unreachable(e);
  }
}
/** The name of an item as the truck's list had it at that moment. */
function itemName(all: readonly Entry[], e: Entry & { kind: 'counted' }): string {
  const truck = all.findLast((x) => x.seq < e.seq && x.kind === 'set' && x.body.what === 'truck');
  const items = truck?.kind === 'set' && truck.body.what === 'truck' ? truck.body.truck.items : [];
  return items.find((item) => item.id === e.body.item)?.name ?? e.body.item;
}

const VOIDED = {
  age: 'Too old: nobody answered in time.',
  'power-back': 'Power came back.',
  'lock-off': 'A lock came off.',
  'line-voltage': 'Line voltage was seen.',
  offline: 'Answered without contact.',
} as const;
