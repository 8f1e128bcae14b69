/** The rules, asked of every entry, of where the job stands, and of what may come at any time. */
import { strip } from '../../prompt.ts';
import { asOf, memoryOf, placeIdOf, planOf, type Standing } from '../../replay.ts';
import { route } from '../../route.ts';
import type { Entry } from '../../schema.ts';
import { instant, SENIOR, type State, type Turn } from '../bench.ts';
import { isProved, type Node } from '../key.ts';
import { DEAD } from '../scope.ts';
import {
  CABINETS,
  type Cabinet,
  cabinetOf,
  chosen,
  isControl,
  isDead,
  isInside,
  turnsOn,
  type Watched,
} from './evidence.ts';
import { unproven } from './verdicts.ts';

export type Rule = 'R1' | 'R2' | 'R3' | 'R4' | 'R5' | 'R6' | 'R7' | 'R8' | 'R9' | 'R10' | 'R12' | 'R13' | 'opinion';

/** R13: what each cabinet's hands may touch. A unit with a bus, or one that nobody is sure of, has its own procedure. */
const OPENED: Readonly<Record<Cabinet, readonly string[]>> = {
  outdoor: ['psc', 'ecm', 'three-phase', 'refrigeration'],
  indoor: ['psc', 'ecm'],
  inverter: ['inverter', 'unsure'],
};

/** A high-pressure switch was laid to the fan in this round, and it was not reset behind a fan that was put right. */
function unexplained(place: string, record: readonly Entry[]): boolean {
  const round = /^round~\d+/.exec(place)?.[0] ?? '';
  const concluded = record.flatMap((e) =>
    e.kind === 'concluded' && e.body.place.startsWith(round) ? [e.body.verdict] : [],
  );
  return concluded.some((v) => /high-pressure-fan$/.test(v)) && !concluded.includes('high-pressure-reset');
}

/** In this round a breaker tripped, as it was seen, or a fuse read open. */
function isOfATrip(place: string, record: readonly Entry[]): boolean {
  const round = /^round~\d+/.exec(place)?.[0] ?? '';
  const seen = record.findLast((e) => e.kind === 'answered' && e.body.place === `${round}/observation`);
  const tripped = seen?.kind === 'answered' && chosen(seen.body.parts.choice)[0] === 'h';
  return (
    tripped ||
    record.some((e) => e.kind === 'answered' && e.body.place === `${round}/trips/fast`) ||
    record.some((e) => e.kind === 'concluded' && e.body.verdict === 'fuse-blown' && e.body.place.startsWith(round))
  );
}

/** Rules about an entry as it comes. */
export function watch(
  entry: Entry,
  all: Watched,
  record: readonly Entry[],
  say: (rule: Rule, what: string) => void,
): void {
  if (entry.kind === 'answered' && entry.body.skipped === undefined) {
    const { place, parts } = entry.body;
    const e = all[cabinetOf(place)];
    const inside = isInside(place, parts) || isControl(place, parts);
    if (inside) {
      const lacks = isDead(e, entry.by, Date.parse(entry.at), cabinetOf(place));
      if (lacks !== null) say(ruleOf(lacks, record), `hands inside at ${place}: ${lacks}`);
      if (e.wound) say('R1', `hands inside at ${place}: an insulation test’s charge, and no residual within its limit`);
    }
    if ((inside || place.startsWith(DEAD)) && !OPENED[cabinetOf(place)].includes(e.unitClass ?? '')) {
      say('R13', `${place} on a unit of class ${e.unitClass ?? 'unknown'}`);
    }
    if (inside && e.unitClass === 'refrigeration' && !e.calm)
      say('R4', `hands inside at ${place} beside a refrigerant that may burn`);
    // 6.3: live control beside a locked line is 24 V that come from another cabinet.
    if (isControl(place, parts) && cabinetOf(place) === 'outdoor' && !e.apart)
      say('R2', `control live at ${place} on a coil that nobody said is on 24 V from outside`);
    // After a trip or a fuse the insulation test decides, and what read low in ohms is never energised.
    if (place.endsWith('/breaker/start') && !chosen(parts.choice).includes('off')) {
      if (!e.insulated) say('R7', 'started after a trip without an insulation test that holds');
      if (e.grounded) say('R7', 'started with a compressor that read low to ground at its own leads');
    }
    if (cabinetOf(place) === 'outdoor' && turnsOn(place, parts) && isOfATrip(place, record) && !e.insulated)
      say('R7', `power at ${place} after a trip or a fuse without an insulation test that holds`);
    if (place.endsWith('/restart/closed') && chosen(parts.ok)[0] === 'yes' && unexplained(place, record))
      say('R7', 'started behind a high-pressure switch that nothing explains');
    if (Object.values(parts).some((v) => v.kind === 'figure' && v.unit === 'psig') && entry.by !== SENIOR)
      say('R9', `a pressure at ${place} by somebody who is not certified`);
  }
  if (entry.kind === 'concluded') {
    const lacks = unproven(entry.body, record);
    if (lacks !== null)
      say(
        entry.body.verdict === 'section-fails-value' || entry.body.verdict.startsWith('capacitor-') ? 'R8' : 'R7',
        lacks,
      );
  }
}
/** The same gap is R2 after live work, R3 after what makes stale, else R1. */
function ruleOf(lacks: string, record: readonly Entry[]): Rule {
  if (lacks.includes('older than')) return 'R3';
  const ends = record.findLast(
    (x) =>
      ['alarmed', 'handed-over', 'voided', 'withdrawn', 'amended'].includes(x.kind) ||
      (x.kind === 'answered' && (x.body.place.endsWith('/figures') || turnsOn(x.body.place, x.body.parts))),
  );
  if (ends === undefined) return 'R1';
  return ends.kind === 'answered' ? 'R2' : 'R3';
}

/** Rules about where the job stands after a turn: the strip never says dead without the evidence. */
export function standing(state: State, all: Watched, say: (rule: Rule, what: string) => void): void {
  const now = instant(state.minute);
  for (const line of strip(asOf(state.standing, now))) {
    if (line.state !== 'proved' && line.state !== 'control-live') continue;
    const cabinet = cabinetNamed(state.standing, line.cabinet);
    const e = all[cabinet];
    const lacks = isDead(e, e.holder ?? '', Date.parse(now), cabinet);
    if (lacks !== null) say(ruleOf(lacks, state.entries), `${line.cabinet}: PROVED DEAD is shown while ${lacks}`);
  }
  const opinion = route(planOf(state.standing), memoryOf(state.standing));
  if (opinion.place !== placeIdOf(state.standing))
    say('opinion', `the machine stands at ${placeIdOf(state.standing)}, the second opinion at ${opinion.place}`);
}

const cabinetNamed = (s: Standing, words: string): Cabinet =>
  CABINETS.find((c) => planOf(s).manual.cabinets[c] === words) ?? 'outdoor';

/** R4, R5, R6: what must hold for a kind of message at any state. */
export function always(
  before: Node,
  t: Turn,
  added: readonly Entry[],
  after: State,
  say: (rule: Rule, what: string) => void,
): void {
  const was = placeIdOf(before.state.standing);
  const here = placeIdOf(after.standing);
  if (t.reply.kind === 'text' && t.reply.text === 'I smell smoke') {
    if (was !== '!emergency' && !added.some((x) => x.kind === 'alarmed'))
      say('R4', `"I smell smoke" raises nothing at ${was}`);
    if (here !== '!emergency') say('R4', `after "I smell smoke" the job stands at ${here}`);
    if (isProved(after.standing)) say('R4', 'an isolation outlives the emergency');
  }
  if (
    t.reply.kind === 'text' &&
    t.reply.text === 'stop' &&
    !['!emergency', '!hazard', '!stopping', '!paused'].includes(was) &&
    here !== '!stopping'
  ) {
    say('R5', `stop is not taken at ${was}`);
  }
  if (t.reply.kind === 'text' && t.reply.text.startsWith('skip') && was.startsWith(DEAD)) {
    if (!isProved(before.state.standing) && isProved(after.standing))
      say('R6', `skip at the gate ${was} proves the isolation`);
    const place = planOf(after.standing).places.get(was);
    if (place?.cant === null && added.some((x) => x.kind === 'answered')) say('R6', `the gate ${was} is skipped`);
  }
}
