/** The people of the tests, and a conversation that is typed and tapped through the engine alone: no store, no clock. */
import { seal } from '../engine/chain.ts';
import { compile } from '../engine/compile.ts';
import { decide } from '../engine/decide/decide.ts';
import type { Decision } from '../engine/decide/types.ts';
import { may, useOn } from '../engine/desk/rights.ts';
import type { Role } from '../engine/desk/types.ts';
import { fingerprint, SEMANTICS } from '../engine/fingerprint.ts';
import { DEFAULT_SETTINGS } from '../engine/memory.ts';
import { prompt } from '../engine/prompt.ts';
import { begin, memoryOf, placeIdOf, planOf, type Standing, take } from '../engine/replay.ts';
import { route } from '../engine/route.ts';
import type {
  Draft,
  Entry,
  EntryKind,
  Equipment,
  GivenParts,
  Meter,
  Prompt,
  Refusal,
  Reply,
  Settings,
  StockItem,
  Text,
} from '../engine/schema.ts';
import { SHELF } from '../flows/index.ts';

/** ±(1.9 % + 2 counts), 0.1 µF from 10 µF up, 0.01 below. */
export const METER: Meter = { percent: '1.9', counts: 2, fine: '0.01', coarse: '0.1', split: '10', known: true };
export const PEOPLE = {
  ines: { id: 'ines', name: 'Ines Vale', roles: ['technician'] },
  tomas: { id: 'tomas', name: 'Tomas Brook', roles: ['technician'] },
  ruth: { id: 'ruth', name: 'Ruth Marlow', roles: ['senior'] },
  dana: { id: 'dana', name: 'Dana Quill', roles: ['dispatcher'] },
  otto: { id: 'otto', name: 'Otto Farrow', roles: ['owner'] },
} as const satisfies Record<string, { id: string; name: string; roles: readonly Role[] }>;
export type PersonId = keyof typeof PEOPLE;

export const machine = compile(SHELF[0]);

/** Nameplate amps as the unit’s record keeps them. */
export const plate = (rla: string, lra: string, fla: string): Equipment['facts'] =>
  Object.fromEntries(
    Object.entries({ rla, lra, fla }).map(([k, value]) => [k, { kind: 'figure', value, unit: 'A', typed: value }]),
  );
/** A run capacitor on the truck: "45+5", 440. */
export const stocked = (sections: string, volts: string, count = 1): StockItem => ({
  id: `run-${sections.replace('+', '-').replace('.', 'p')}-${volts}`,
  name: `Bin ${sections}`,
  kind: 'run',
  sections: sections.split('+'),
  volts,
  range: null,
  protection: null,
  life: null,
  count,
  low: 0,
});

/** One job under way. Every call returns what came of it; nothing is hidden. */
export class Conversation {
  entries: Entry[] = [];
  texts: Text[] = [];
  standing: Standing;
  now = Date.parse('2026-07-14T15:00:00.000Z');
  last: Decision | null = null;
  private count = 0;

  constructor(
    options: {
      settings?: Partial<Settings>;
      meter?: Meter | null;
      /** EPA 608 on file for whoever is assigned. */
      certified?: boolean;
      assigned?: readonly PersonId[];
      /** What the unit’s own record says, and what the truck carries. */
      equipment?: Partial<Equipment>;
      truck?: readonly StockItem[];
      machine?: typeof machine;
    } = {},
  ) {
    const on = options.machine ?? machine;
    this.standing = begin(on, 'job-1');
    const { manual } = on.plan;
    const opened: Draft[] = [
      {
        kind: 'opened',
        body: {
          manual: manual.id,
          version: manual.version,
          fingerprint: fingerprint(manual),
          semantics: SEMANTICS,
          title: { ref: 'title', hash: '0'.repeat(64) },
          training: false,
        },
      },
      { kind: 'set', body: { what: 'settings', settings: { ...DEFAULT_SETTINGS, ...options.settings } } },
    ];
    if (options.equipment) {
      const equipment = { id: 'unit-1', name: 'Unit 1', version: 1, facts: {}, history: [], ...options.equipment };
      opened.push({ kind: 'set', body: { what: 'equipment', equipment } });
    }
    if (options.truck) {
      const truck = { id: 'van-1', name: 'Van 1', version: 1, items: [...options.truck] };
      opened.push({ kind: 'set', body: { what: 'truck', truck } });
    }
    for (const to of options.assigned ?? ['ines']) {
      opened.push({ kind: 'assigned', body: { to } });
      const meter = options.meter === undefined ? METER : options.meter;
      if (meter) opened.push({ kind: 'set', body: { what: 'meter', person: to, meter } });
      if (options.certified) opened.push({ kind: 'set', body: { what: 'certified', person: to, certified: true } });
    }
    this.keep(opened, 'dana', 'c0');
  }

  get at(): string {
    return new Date(this.now).toISOString();
  }
  get place(): string {
    return placeIdOf(this.standing);
  }
  prompt(): Prompt {
    return prompt(this.standing, this.at);
  }
  /** Lets time pass. */
  wait(minutes: number, seconds = 0): this {
    this.now += minutes * 60_000 + seconds * 1000;
    return this;
  }
  /** What a person types. Whoever says that it has rested, was left alone, or that five minutes are over, has let it. */
  type(text: string, by: PersonId = 'ines', more: Partial<Extract<Reply, { kind: 'text' }>> = {}): this {
    if (/^(rested|left alone|five minutes)\b/.test(text)) this.wait(5);
    return this.send({ kind: 'text', client: this.client(), seq: this.prompt().seq, text, ...more }, by);
  }
  /** Several lines, one after another; each has to be taken. */
  types(...lines: string[]): this {
    for (const line of lines) {
      this.type(line);
      if (this.refusal) throw new Error(`"${line}" at ${this.place}: ${this.refusal.code} ${this.refusal.text}`);
    }
    return this;
  }
  tap(parts: GivenParts, by: PersonId = 'ines'): this {
    return this.send({ kind: 'answer', client: this.client(), seq: this.prompt().seq, parts }, by);
  }
  send(reply: Reply, by: PersonId = 'ines'): this {
    const person = PEOPLE[by];
    const decision = decide(this.standing, reply, {
      by,
      at: this.at,
      said: reply.said ?? null,
      client: reply.client,
      may: (use, to) =>
        may(person.roles, useOn(planOf(this.standing).manual, use), {
          ...to,
          participates: memoryOf(this.standing).assigned.includes(by),
        }),
      salt: () => (++this.count).toString(16).padStart(32, '0'),
      people: Object.values(PEOPLE),
    });
    this.last = decision;
    this.texts.push(...decision.texts);
    this.keep(decision.drafts, by, reply.client, reply.said ?? null);
    return this;
  }
  get refusal(): Refusal | null {
    return this.last?.refusal ?? null;
  }
  /** Kinds of the entries that the last reply put on the record. */
  get kinds(): EntryKind[] {
    return (this.last?.drafts ?? []).map((d) => d.kind);
  }
  get verdicts(): string[] {
    return this.entries.flatMap((e) => (e.kind === 'concluded' ? [e.body.verdict] : []));
  }
  get notices(): string {
    return this.prompt()
      .notices.map((n) => n.text)
      .join('\n');
  }
  seqOf(place: string): number {
    const found = this.entries.findLast((e) => e.kind === 'answered' && e.body.place.endsWith(place));
    if (!found) throw new Error(`nothing was answered at ${place}`);
    return found.seq;
  }
  client(): string {
    return `c${++this.count}`;
  }
  private keep(drafts: readonly Draft[], by: string, client: string, said: string | null = null): void {
    const head = {
      job: 'job-1',
      seq: this.entries.length,
      prev: this.standing.lastHash,
      by,
      at: this.at,
      said,
      client,
    };
    const sealed = seal(drafts, head);
    this.entries.push(...sealed);
    this.standing = sealed.reduce(take, this.standing);
    secondOpinion(this.standing);
  }
}

/** The machine and the plain second opinion stand at the same place with the same facts. */
export function secondOpinion(s: Standing): void {
  const opinion = route(planOf(s), memoryOf(s));
  if (opinion.place !== placeIdOf(s)) throw new Error(`machine at ${placeIdOf(s)}, second opinion at ${opinion.place}`);
}

/** From the observation to wires off, as a technician types it. */
export const TO_READINGS = [
  'd',
  'psc',
  'yes',
  'pull-out, breaker, no other feed, two legs, outlet',
  'yes',
  'clean, 1 cap, 45+5 6% 440',
  '121 / 0.2 0 0.1 / 0 0 / 121',
  '9.3 / 0.6 0.1 0.5 / 9.3',
  'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol',
  'no diagram',
  'done',
] as const;
/** From the readings of a weak HERM section to the live figures. */
export const TO_FIGURES = [
  'spin free',
  'cr .9 cs 2.7 sr 3.6 g ol',
  'nothing',
  'other 45+5 440 herm 45.3 fan 5.04',
  'fitted',
  'wires back',
  'rla 17.9 lra 96 fla 1.2',
  'closed',
] as const;
/** All live figures in one line. */
export const PROVES = '241 240 comp 13.1 fan .9 split 19';
