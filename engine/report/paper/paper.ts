/** A finished call as a page to be read, printed or kept: for the customer, or the shop's record. What is on it is the same as HTML, PDF and JSON. */
import { givenAt } from '../../facts.ts';
import type { Finding } from '../../schema.ts';
import { askedAt, type Closed } from '../closed.ts';
import { customerSays, measured, type PlainReading } from '../customer.ts';
import { shopSays } from '../shop.ts';
import { type Drawing, drawingsOf } from './drawings.ts';

export type Audience = 'customer' | 'shop';
export interface Row {
  readonly cells: readonly string[];
  /** Said of the whole row, under it. */
  readonly note: string | null;
}
export type Block =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'line'; readonly text: string }
  | {
      readonly kind: 'table';
      readonly caption: string;
      readonly head: readonly string[];
      readonly rows: readonly Row[];
    }
  | { readonly kind: 'drawings'; readonly drawings: readonly Drawing[] }
  | { readonly kind: 'photo'; readonly hash: string; readonly says: string };
export interface Paper {
  readonly audience: Audience;
  readonly title: string;
  /** What and where, as the call was named. */
  readonly about: string;
  /** What has to be seen before anything else is read: not signed, a training job. */
  readonly stamps: readonly string[];
  readonly signed: { readonly by: string; readonly at: string } | null;
  readonly blocks: readonly Block[];
  /** The job, the number of its entries and the start of its last hash, so that a page can be told from another. */
  readonly foot: string;
}

export function paperOf(job: Closed, audience: Audience): Paper {
  const { memory, entries, signed } = job;
  const last = entries.at(-1);
  return {
    audience,
    title: audience === 'customer' ? 'Service report' : 'Record of the call',
    about: memory.title === null ? 'No title' : job.resolve(memory.title),
    stamps: [
      ...(signed ? [] : ['NOT SIGNED: no senior has read this record yet. What it says may still change.']),
      ...(memory.training ? ['TRAINING CALL: it never counts.'] : []),
    ],
    signed: signed && { by: job.name(signed.by), at: signed.at },
    blocks: [...(audience === 'customer' ? customerBlocks(job) : shopBlocks(job)), ...photos(job)],
    foot: last
      ? `Call ${last.job.slice(0, 8)}, ${entries.length} entries, ${last.hash.slice(0, 12)}, ${job.when.moment(last.at)}`
      : '',
  };
}

function customerBlocks(job: Closed): Block[] {
  const blocks: Block[] = [{ kind: 'heading', text: 'What was found and done' }];
  const readings: PlainReading[] = [];
  const settle = (): void => {
    if (readings.length > 0) blocks.push(readingTable(readings.splice(0)));
  };
  for (const said of customerSays(job)) {
    // Whether a part was replaced decides the columns.
    if (typeof said !== 'string') {
      if (readings[0] && (readings[0].before === null) !== (said.before === null)) settle();
      readings.push(said);
    } else {
      settle();
      blocks.push({ kind: 'line', text: said });
    }
  }
  settle();
  const seen = new Set<string>();
  const drawn = drawnBlock(measured(job).flatMap((v) => drawingsOf(job, v, seen)));
  return drawn.length === 0 ? blocks : [...blocks, { kind: 'heading', text: 'Where it was measured' }, ...drawn];
}
const drawnBlock = (drawings: readonly Drawing[]): Block[] =>
  drawings.length === 0 ? [] : [{ kind: 'drawings', drawings }];

function readingTable(readings: readonly PlainReading[]): Block {
  const replaced = readings[0]?.before !== null;
  const [caption, head] = replaced
    ? ['Readings of the old and the new part', ['Part', 'Before', 'New part', 'Allowed']]
    : ['Readings', ['What was read', 'Reading', 'Allowed', 'Result']];
  const rows = readings.map(({ name, before, reading, allowed, lies }) => ({
    cells: replaced ? [name, before || '–', reading, allowed ?? '–'] : [name, reading, allowed ?? '–', lies ?? '–'],
    note: null,
  }));
  return { kind: 'table', caption, head, rows };
}

function shopBlocks(job: Closed): Block[] {
  const seen = new Set<string>();
  return shopSays(job).flatMap(({ title, says, of }): Block[] => {
    const findings = says.filter((said) => typeof said !== 'string');
    const first = says.findIndex((said) => typeof said !== 'string');
    const line = (text: string | Finding): Block[] => (typeof text === 'string' ? [{ kind: 'line', text }] : []);
    const [before, after] = first < 0 ? [says, []] : [says.slice(0, first), says.slice(first)];
    return [
      { kind: 'heading', text: title },
      ...before.flatMap(line),
      ...(findings.length > 0 ? [findingTable(findings)] : []),
      ...(of ? drawnBlock(drawingsOf(job, of, seen)) : []),
      ...after.flatMap(line),
    ];
  });
}

const findingTable = (findings: readonly Finding[]): Block => ({
  kind: 'table',
  caption: 'What it rests on',
  head: ['Part', 'Reading', 'Limits', 'Doubt', 'Result'],
  rows: findings.map((f) => ({
    cells: [f.name, f.reading, f.limits ?? 'no limits', f.doubt ?? '–', f.word],
    note: f.source === null ? f.text : `${f.text} Source: ${f.source}.`,
  })),
});

/** Photos of answers that stand, each with its question, its time and who took it. */
function photos(job: Closed): Block[] {
  const found = Object.entries(job.memory.facts).flatMap(([place, fact]) =>
    Object.values(fact.body.parts).flatMap((value) =>
      value.kind === 'photo' ? [{ place, fact, hash: value.hash }] : [],
    ),
  );
  const shown = found
    .sort((a, b) => a.fact.seq - b.fact.seq)
    .map(({ place, fact, hash }): Block => {
      const asked = askedAt(job, place)?.say ?? 'Photo';
      return { kind: 'photo', hash, says: `${asked} ${job.when.moment(givenAt(fact))}, ${job.name(fact.by)}` };
    });
  return shown.length === 0 ? [] : [{ kind: 'heading', text: 'Photos' }, ...shown];
}
