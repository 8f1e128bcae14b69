/**
 * Listens to one job and says what is not allowed by the rules of the trade: reads the entries that were appended, the
 * prompts that were shown and the replies that were acknowledged, and nothing else. What carries a verdict is the one
 * thing that it takes from the proof (`unproven`), which has it from the rules too.
 */
import { unproven } from '../../../prove/rules/verdicts.ts';
import type { Entry, Prompt, Refusal } from '../../../schema.ts';
import type { Role } from '../../types.ts';
import { type Cabinet, cabinetAt, isFailedLine, notDead, unitOf } from './dead.ts';
import { type Heard, handsIn, isGate, standing } from './heard.ts';

export interface Breach {
  readonly rule: string;
  readonly what: string;
}
/** Who works here, and the words on the strip for each cabinet. */
export interface Known {
  readonly roles: Readonly<Record<string, readonly Role[]>>;
  readonly certified: readonly string[];
  readonly cabinets: Readonly<Record<string, string>>;
}
/** A reply that came back with an answer. */
export interface Acknowledged {
  readonly by: string;
  readonly client: string;
  readonly kind: 'answer' | 'text' | 'other';
  /** Place of the question that the reply names by its seq, as it was shown; null where none was. */
  readonly place: string | null;
  /** What the words mean by rule 4 and 5, where they mean something. */
  readonly means: 'danger' | 'stop' | null;
  readonly refusal: Refusal | null;
  readonly entries: readonly Entry[];
}

const OVER: readonly string[] = ['emergency'];
const STOPS: readonly string[] = ['stopping', 'paused', 'hazard-question', 'emergency'];

export class Watch {
  readonly heard: Heard[] = [];
  readonly breaches: Breach[] = [];
  private failed = 0;
  private opened = 0;

  constructor(private readonly known: Known) {}

  /** Entries in the order of the record, with the stopwatch. */
  hear(entries: readonly Entry[], at: number): void {
    for (const entry of entries) {
      this.entry(entry, at);
      this.heard.push({ entry, at });
      if (isFailedLine(this.heard)) this.failed++;
      if (entry.kind === 'approved' && entry.body.what === 'tries') this.opened++;
    }
  }

  /** A prompt that was shown at this moment, made of the record up to `prompt.last`. */
  shown(prompt: Prompt, now: number): void {
    const heard = prompt.last === this.heard.length ? this.heard : this.heard.slice(0, prompt.last);
    for (const line of prompt.isolation) {
      if (line.state !== 'proved' && line.state !== 'control-live') continue;
      const cabinet = this.known.cabinets[line.cabinet] as Cabinet;
      const lacks = notDead(heard, cabinet, line.holder ?? '', now);
      if (lacks !== null) this.say('dead', `${line.cabinet} is shown as ${line.words}, though ${lacks}`);
      if (prompt.class === 'live' && prompt.kind === 'step')
        this.say('live', `${line.cabinet} stands while ${prompt.place} asks for power`);
    }
    const alarm = alarmIn(heard);
    if (alarm !== null) {
      if (!OVER.includes(prompt.kind))
        this.say('emergency', `an emergency is open, and what is shown is ${prompt.kind} ${prompt.place}`);
      if (prompt.isolation.some((l) => l.state === 'proved'))
        this.say('emergency', 'an isolation outlives the emergency');
    }
    if (prompt.kind !== 'step') return;
    if (this.failed >= 3 * (1 + this.opened) && prompt.last === this.heard.length)
      this.say('tries', `${this.failed} lines of what is left were not accepted, and ${prompt.place} is asked`);
    if (prompt.class === 'inside' || prompt.class === 'control live')
      this.mayTouch(heard, prompt.place, prompt.holder ?? '', now, 'is asked');
    if (
      prompt.place.startsWith('dead:outdoor/') &&
      ['inverter', 'unsure', 'out-of-scope', ''].includes(unitOf(standing(heard)))
    )
      this.say('inverter', `${prompt.place} is asked on a unit of class "${unitOf(standing(heard))}"`);
  }

  acknowledged(one: Acknowledged, after: Prompt): void {
    const { entries, refusal } = one;
    const answered = entries.flatMap((e) => (e.kind === 'answered' ? [e.body.place] : []));
    if (refusal && entries.some((e) => !['noted', 'voided', 'set'].includes(e.kind)))
      this.say(
        'refused',
        `refused with ${refusal.code}, and yet on the record: ${entries.map((e) => e.kind).join(', ')}`,
      );
    if (refusal?.code === 'unclear' && one.kind === 'text' && !entries.some((e) => e.kind === 'noted'))
      this.say('kept', 'words that were not understood are not on the record');
    if (one.kind === 'answer' && answered.some((place) => place !== one.place))
      this.say('stale', `an answer to ${one.place ?? 'no question'} was taken at ${answered.join(', ')}`);
    if (one.means === 'danger' && !OVER.includes(after.kind))
      this.say('emergency', `danger was said, and what is shown is ${after.kind} ${after.place}`);
    if (one.means === 'stop' && !STOPS.includes(after.kind))
      this.say('stop', `stop was said, and what is shown is ${after.kind} ${after.place}`);
  }

  say(rule: string, what: string): void {
    this.breaches.push({ rule, what });
  }

  /** What must hold before an entry may come. */
  private entry(entry: Entry, at: number): void {
    const roles = this.known.roles[entry.by] ?? [];
    const leads = roles.includes('senior') || roles.includes('owner');
    switch (entry.kind) {
      case 'answered': {
        const { place, parts, skipped } = entry.body;
        const holds = holderOf(this.heard, cabinetAt(place));
        if (isGate(place) && holds !== null && holds !== entry.by)
          this.say('holder', `${entry.by} answers ${place}, the lock is ${holds}’s`);
        if (isGate(place) && !roles.some((r) => r !== 'dispatcher'))
          this.say('holder', `a dispatcher answers ${place}`);
        if (skipped !== undefined) break;
        if (handsIn(place, parts) || isOn24(place, entry))
          this.mayTouch(this.heard, place, entry.by, at, 'is answered');
        if (
          Object.values(parts).some((v) => v.kind === 'figure' && v.unit === 'psig') &&
          !this.known.certified.includes(entry.by)
        )
          this.say('certified', `a pressure by ${entry.by}, who is not certified`);
        break;
      }
      case 'concluded': {
        const lacks = unproven(
          entry.body,
          this.heard.map((h) => h.entry).filter((e) => !isLaterTry(e, entry.body.place)),
        );
        if (lacks !== null) this.say('verdict', `${entry.body.verdict}: ${lacks}`);
        break;
      }
      case 'released': {
        const alarm = this.heard.find((h) => h.entry.seq === entry.body.of)?.entry;
        if (!leads && !(entry.body.as === 'not-here' && alarm?.by === entry.by))
          this.say('emergency', `${entry.by} releases it`);
        break;
      }
      case 'approved':
      case 'signed':
        if (!leads) this.say('senior', `${entry.kind} by ${entry.by}`);
    }
    const before = this.heard.at(-1)?.entry;
    if (before && entry.at < before.at) this.say('time', `entry ${entry.seq} is earlier than the one before it`);
  }

  private mayTouch(heard: readonly Heard[], place: string, by: string, at: number, how: string): void {
    const lacks = notDead(heard, cabinetAt(place), by, at);
    if (lacks !== null) this.say('dead', `${place} ${how}, hands inside, by ${by || 'nobody'}: ${lacks}`);
  }
}

const isOn24 = (place: string, entry: Entry & { kind: 'answered' }): boolean =>
  place.endsWith('24') && Object.values(entry.body.parts).some((v) => v.kind === 'figure' && v.unit === 'V');

/** An answer at a later try of a page than the one that a verdict stands at: it was set aside, and carries nothing. */
function isLaterTry(entry: Entry, verdict: string): boolean {
  if (entry.kind !== 'answered') return false;
  const [own, other] = [verdict, entry.body.place].map((place) => /^(round~\d+\/.*)~(\d+)\//.exec(place));
  return own?.[1] !== undefined && own[1] === other?.[1] && Number(other[2]) > Number(own[2]);
}

/** Whose lock it is: who answered a gate of this cabinet first, or took the job over once somebody had. */
function holderOf(heard: readonly Heard[], cabinet: Cabinet): string | null {
  let holder: string | null = null;
  let given: number | null = null;
  let begun = false;
  for (const { entry } of heard) {
    if (entry.kind === 'handed-over') [holder, given] = [null, entry.seq];
    if (entry.kind === 'acknowledged' && entry.body.of === given && begun) holder = entry.by;
    if (entry.kind !== 'answered' || !isGate(entry.body.place) || cabinetAt(entry.body.place) !== cabinet) continue;
    holder ??= entry.by;
    begun = true;
  }
  return holder;
}

/** seq of an emergency that nobody has released. */
function alarmIn(heard: readonly Heard[]): number | null {
  let open: number | null = null;
  for (const { entry } of heard) {
    if (entry.kind === 'alarmed') open ??= entry.seq;
    if (entry.kind === 'released') open = null;
  }
  return open;
}
