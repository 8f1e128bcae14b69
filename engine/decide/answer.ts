/** An answer to the question that stands: read part by part, refused with a reason, or put on the record. */
import { Decimal } from 'decimal.js';
import { isHalt } from '../compile.ts';
import { heardAt } from '../facts.ts';
import type { Place, Plan } from '../flatten.ts';
import { isAnyBegun } from '../forget.ts';
import { haltCard } from '../halts.ts';
import { chosenOf } from '../judgements/read.ts';
import { asAsked, isAsked } from '../known.ts';
import type { Memory } from '../memory.ts';
import { toPart } from '../prompt.ts';
import { memoryOf, placeIdOf, planOf, type Standing } from '../replay.ts';
import type { Draft, Given, GivenParts, Part, Parts, Refusal, Value } from '../schema.ts';
import { readField, readLabel, readPlate, sayPlate } from '../understand/index.ts';
import type { AskStep, PartSpec } from '../vocabulary.ts';
import { asText, type Context, NOBODY, refuse, type Scribe, type Wish } from './types.ts';

type Trouble = { code: Refusal['code']; text: string };
export type Read = { parts: Parts /** Typed for a part that isn't asked. */; idle: string[] } | { refusal: Wish };

/** Reads what was sent for a place. Good parts come back as a draft where another one is refused. */
export function readParts(place: Place, given: GivenParts, memory: Memory, s: Standing, keep: Scribe): Read {
  const step = place.step as AskStep;
  const parts: Record<string, Value> = {};
  const good: Record<string, Given> = {};
  const idle: Record<string, string> = {};
  const wrong: string[] = [];
  const missing: string[] = [];
  let trouble: Trouble | null = null;
  for (const [key, part] of Object.entries(step.parts)) {
    const spec = asAsked(place, key, part, memory);
    const raw = given[key];
    if (!isAsked(place, spec, memory, parts)) {
      if (typeof raw === 'string' && raw.trim() !== '') idle[key] = raw;
      continue;
    }
    if (asText(raw).trim() === '') {
      if (spec.optional) parts[key] = { kind: 'untaken' };
      else missing.push(key);
      continue;
    }
    const read = readPart(key, spec, raw as Given, s, keep);
    if ('code' in read) {
      trouble ??= read;
      wrong.push(key);
    } else {
      parts[key] = read;
      good[key] = raw as Given;
    }
  }
  const unknown = Object.keys(given).filter((k) => !Object.hasOwn(step.parts, k));
  if (unknown.length > 0)
    return refused({ code: 'unknown-option', text: `Nothing here is called ${unknown.join(', ')}.` }, unknown, {});
  // A line that proves is taken whole: a reading counts only between its own two provings.
  const draft = place.class === 'proving' ? {} : { ...good, ...idle };
  if (trouble) return refused(trouble, wrong, draft);
  if (missing.length > 0) {
    const asks = missing.map((k) => (step.parts[k]?.ask ?? k).replace(/[.?]$/, '')).join('; ');
    const whole = place.class === 'proving' ? ' Send the whole line again.' : '';
    return refused({ code: 'missing', text: `Still needed: ${asks}.${whole}` }, missing, draft);
  }
  return { parts, idle: Object.values(idle) };
}
const refused = (t: Trouble, parts: readonly string[], draft: GivenParts): Read => ({
  refusal: refuse(t.code, t.text, { parts, draft }),
});

function readPart(key: string, spec: PartSpec, raw: Given, s: Standing, keep: Scribe): Value | Trouble {
  const text = asText(raw).trim();
  switch (spec.part) {
    case 'field': {
      const read = readField(text, toPart(key, spec) as Extract<Part, { kind: 'field' }>);
      return 'value' in read ? read.value : { code: read.problem, text: read.text };
    }
    case 'label': {
      const tolerance = planOf(s).manual.labelTolerance.value;
      const read = readLabel(text, { tolerance, ...(spec.start ? { start: true } : {}) });
      return 'label' in read
        ? { kind: 'label', label: read.label, typed: keep.keep(text) }
        : { code: 'unclear', text: [read.problem, takenFor(text)].join(' ').trim() };
    }
    case 'note':
      return { kind: 'text', text: keep.keep(text) };
    case 'photo':
      return /^[0-9a-f]{64}$/.test(text)
        ? { kind: 'photo', hash: text }
        : { code: 'unclear', text: 'A photo is sent by the camera button.' };
    default:
      return readChoice(spec, raw);
  }
}

/** What a refused print was taken for, so that a plate of another part is seen to be one. */
function takenFor(text: string): string {
  const plate = readPlate(text);
  return plate.parts.length === 0 ? '' : sayPlate(plate);
}

function readChoice(
  spec: Extract<PartSpec, { part: 'choose' | 'confirm' | 'act' | 'label' | 'photo' | 'note' }>,
  raw: Given,
): Value | Trouble {
  const options = spec.options ?? {};
  const ids = Object.keys(options);
  const asked = new Set(Array.isArray(raw) ? raw : [raw]);
  const stranger = [...asked].find((id) => !ids.includes(id));
  const list = ids.map((id) => options[id]?.label ?? id).join(' · ');
  if (stranger !== undefined)
    return { code: 'unknown-option', text: `"${stranger}" is not offered here. Choose: ${list}.` };
  const chosen = ids.filter((id) => asked.has(id));
  const many = spec.part === 'choose' && spec.several;
  if (!many && chosen.length > 1) return { code: 'unknown-option', text: `One of these only: ${list}.` };
  const alone = chosen.find((id) => options[id]?.alone);
  if (alone !== undefined && chosen.length > 1) {
    return { code: 'unknown-option', text: `"${options[alone]?.label ?? alone}" goes with nothing else.` };
  }
  return { kind: 'choice', chosen };
}

/** Whether this person may answer this place now; a refusal where not. */
export function mayAnswer(place: Place, memory: Memory, c: Context): Wish | null {
  const held = place.gate || place.class !== 'eyes';
  if (!held) {
    return c.may('answer', NOBODY)
      ? null
      : refuse('no-right', 'Only somebody who takes part in this job answers here.');
  }
  const holder = memory.isolations[place.cabinet]?.holder ?? null;
  if (holder !== null && holder !== c.by) {
    return refuse(
      'not-holder',
      'Only the person whose lock it is answers here. Type hand over and a name to change hands.',
    );
  }
  return c.may('hold', { ...NOBODY, holder: holder === c.by })
    ? null
    : refuse('no-right', 'Only a technician, a senior or the owner who takes part in this job answers here.');
}

/** What is left of a wait that somebody says is over, by the record's own times; 0 where it is, or where none was begun. */
function secondsLeft(place: Place, parts: Parts, memory: Memory, at: string): number {
  const { waits } = place.step as AskStep;
  if (!waits || !chosenOf(parts, 'ok').includes('yes')) return 0;
  const since = (place.refs[waits.since] ?? []).flatMap((id) => memory.facts[id] ?? [])[0];
  if (!since || !chosenOf(since.body.parts, 'choice').includes('now')) return 0;
  const gone = Math.floor((Date.parse(at) - Date.parse(heardAt(since))) / 1000);
  return Math.max(0, Number(waits.least.value) * 60 - gone);
}
const sayLeft = (seconds: number): string =>
  seconds < 60 ? `${seconds} s` : `${Math.floor(seconds / 60)} min ${seconds % 60} s`;

const isRefrigerant = ({ step }: Place): boolean => 'circuit' in step && step.circuit === 'refrigerant';

/** What was read on a control circuit is too much for one: line voltage is there, and the isolation ends. */
export function endsByVolts(plan: Plan, place: Place, parts: Parts, at: string): Draft[] {
  const most = plan.regions[place.cabinet]?.rules.controlMost;
  if (place.class !== 'control live' || most === undefined || !('parts' in place.step)) return [];
  const over = Object.entries(place.step.parts).some(([key, spec]) => {
    const value = parts[key];
    if (spec.part !== 'field' || value?.kind !== 'figure' || value.unit !== 'V') return false;
    return new Decimal(value.value).abs().gt((spec.most ?? most).value);
  });
  return over ? [{ kind: 'voided', body: { reason: 'line-voltage', since: at } }] : [];
}

export function decideAnswer(s: Standing, given: GivenParts, offline: boolean, c: Context, keep: Scribe): Wish {
  const [memory, here] = [memoryOf(s), placeIdOf(s)];
  if (isHalt(here)) return haltAnswer(s, given);
  const place = planOf(s).places.get(here);
  if (!place) return refuse('closed', 'This job is finished. Notes are still taken.');
  if (!('parts' in place.step))
    return refuse('held', 'This waits for a senior. Type stop to leave it off and come back.');
  const barred = mayAnswer(place, memory, c);
  if (barred) return barred;
  // Leaving it out is open to everybody: that is how it gets to a certified person.
  if (isRefrigerant(place) && !memory.certified.includes(c.by)) {
    return refuse(
      'not-certified',
      'Refrigerant takes a certified person, EPA 608 on file with the shop. Type can’t, and it goes to one.',
    );
  }
  if (offline && place.gate) {
    return refuse('gate', 'A gate answered without contact authorises nothing. Answer it again now.');
  }
  const read = readParts(place, given, memory, s, keep);
  if ('refusal' in read) return read.refusal;
  const left = offline ? 0 : secondsLeft(place, read.parts, memory, c.at);
  if (left > 0) return refuse('too-early', `By this record ${sayLeft(left)} are left of it. Wait, then answer again.`);
  const begun = isAnyBegun(planOf(s), memory);
  return {
    drafts: [
      {
        kind: 'answered',
        body: { place: place.id, parts: read.parts, ...(offline ? { offline: true as const } : {}) },
      },
      ...read.idle.map((text): Draft => ({ kind: 'noted', body: { as: 'note', text: keep.keep(text) } })),
      ...endsByVolts(planOf(s), place, read.parts, c.at),
      ...(offline && begun ? [{ kind: 'voided' as const, body: { reason: 'offline' as const, since: c.at } }] : []),
    ],
  };
}

/** A tap on a halt's card, as the command it stands for. */
export interface HaltAnswer extends Wish {
  readonly command?: 'happening' | 'old mark' | 'seen' | 'not here' | 'go on' | 'take over' | 'made safe';
  readonly safe?: Parts;
}
export function haltAnswer(s: Standing, given: GivenParts): HaltAnswer {
  const here = placeIdOf(s);
  if (!isHalt(here)) return {};
  const card = haltCard(here, planOf(s), memoryOf(s));
  const safe: Record<string, Value> = {};
  for (const part of card.parts) {
    if (!('options' in part)) continue;
    const id = asText(given[part.key]);
    if (id === '') return refuse('missing', `Still needed: ${part.ask}.`, { parts: [part.key], draft: given });
    if (!part.options.some((o) => o.id === id)) {
      return refuse('unknown-option', `Choose: ${part.options.map((o) => o.label).join(' · ')}.`, {
        parts: [part.key],
      });
    }
    safe[part.key] = { kind: 'choice', chosen: [id] };
  }
  const choice = asText(given.choice);
  switch (here) {
    case '!hazard':
      return { command: choice === 'happening' ? 'happening' : 'old mark' };
    case '!emergency':
      return { command: choice === 'seen' ? 'seen' : 'not here' };
    case '!stopping':
      return { command: 'made safe', safe };
    case '!paused':
      return { command: 'go on' };
    case '!taking-over':
      return { command: 'take over' };
    case '!held':
      return refuse(
        'held',
        'Held until a senior or the owner opens another three lines. Leave it off, close it, come back.',
      );
  }
}
