/**
 * What a senior should look at before signing a job, each with its entry: computed from the record alone, so that the
 * same entries ask for the same on any machine.
 */

import type { PlainStep } from '../flatten.ts';
import { EXACT_VALUES } from '../judgements/section-findings.ts';
import type { Memory } from '../memory.ts';
import { memoryOf, planOf, type Standing } from '../replay.ts';
import { route } from '../route.ts';
import { sayUnit } from '../say-unit.ts';
import type { Conclusion, Entry, Finding, TextRef } from '../schema.ts';
import { answerWords, RAISED, type Resolve, VOIDED } from '../words.ts';
import type { FastGate } from './fast-gate.ts';
import { type Attention, HEADS, KINDS, type Kind } from './risk.ts';

const APPROVED = { 'lock-alternative': 'how the means is held open', tries: 'three more lines' } as const;

/** The gravest kind first, within a kind the oldest entry. `fast`: what `fastGate` said of the entries as they came. */
export function attention(
  standing: Standing,
  entries: readonly Entry[],
  resolve: Resolve,
  fast: readonly FastGate[],
): Attention[] {
  const found = [
    ...entries.filter(mayConcern).flatMap((e) => ofEntry(standing, e, resolve)),
    ...ofVerdicts(standing),
    ...fast.map(ofGate),
  ];
  return found
    .map((item) => ({ ...item, head: HEADS[item.kind] }))
    .sort((a, b) => KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind) || a.seq - b.seq);
}

type Item = Omit<Attention, 'head'>;
const CONCERNS: ReadonlySet<Entry['kind']> = new Set(['alarmed', 'voided', 'approved', 'raised', 'answered']);
/** The entries that a senior may have to look at: most of a long record is none of them. */
export const mayConcern = (e: Entry): boolean => CONCERNS.has(e.kind) || (e.kind === 'noted' && e.body.as === 'hazard');

function ofEntry(standing: Standing, e: Entry, resolve: Resolve): Item[] {
  const item = (kind: Kind, words: string): Item[] => [{ kind, seq: e.seq, words }];
  const typed = (text: TextRef | undefined): string => (text === undefined ? '' : `: ${resolve(text)}`);
  switch (e.kind) {
    case 'alarmed':
      return item('hazard', `Emergency, ${e.body.hazard}${typed(e.body.text)}`);
    case 'noted':
      return item('hazard', `A word that may mean danger${typed(e.body.text)}`);
    case 'voided':
      return item('voided', `The isolation ended, ${VOIDED[e.body.reason]}${typed(e.body.text)}`);
    case 'approved':
      return item('approved', `Approved, ${APPROVED[e.body.what]}${typed(e.body.reason)}`);
    case 'raised':
      return item('raised', `Raised to a senior, ${RAISED[e.body.why]}${typed(e.body.text)}`);
    case 'answered': {
      const step = planOf(standing).places.get(e.body.place)?.step;
      if (!step || !('parts' in step)) return [];
      if (e.body.skipped && step.mayLack) return [];
      if (e.body.skipped) return item('skipped', `Skipped: ${step.say} Reason: ${resolve(e.body.skipped)}`);
      const cant = Object.values(e.body.parts).some((v) => v.kind === 'choice' && v.chosen.includes('cant'));
      return cant
        ? item('skipped', `Not possible: ${step.say} ${answerWords(step, e.body.parts, resolve).join('; ')}`)
        : [];
    }
    default:
      return [];
  }
}

/** Of the verdicts that stand. One that was set aside by another reading rests on nothing any more. */
function ofVerdicts(standing: Standing): Item[] {
  const [plan, memory] = [planOf(standing), memoryOf(standing)];
  return route(plan, unhalted(memory)).passed.flatMap((place): Item[] => {
    const held = memory.concluded[place.id];
    const { step } = place;
    if (!held || step.verb !== 'verdict') return [];
    const { seq, body } = held;
    const by = step.judged.flatMap((ref) => judgementAt(plan.places.get(place.refs[ref]?.[0] ?? '')?.step) ?? []);
    const item = (kind: Kind, words: string): Item => ({ kind, seq, words });
    return [
      ...body.findings.flatMap((f) => ofFinding(f).map(([kind, words]) => item(kind, words))),
      ...(by.includes('history') ? [item('repeat', body.title)] : []),
      ...(isOfCompressor(body, by) ? [item('compressor', body.title)] : []),
    ];
  });
}
/** A card that is open hides no verdict: the way is looked at as it will be when the job goes on. */
function unhalted(m: Memory): Memory {
  const open = m.alarm || m.hazard || m.stop || m.handover || m.failed.length > 0;
  return open ? { ...m, alarm: null, hazard: null, stop: null, handover: null, failed: [] } : m;
}
const judgementAt = (step: PlainStep | undefined): string | undefined =>
  step?.verb === 'judge' ? step.judgement : undefined;
/** Drawn from its windings, whatever the page calls it. */
const isOfCompressor = (body: Conclusion, by: readonly string[]): boolean =>
  by.includes('compressor-windings') || body.verdict.startsWith('compressor');

function ofFinding(f: Finding): [Kind, string][] {
  const limits = f.limits === null ? '' : `, limits ${f.limits}`;
  const found: [Kind, string][] = [];
  if (f.word.startsWith('conditional')) found.push(['conditional', `${f.name}: ${f.reading}${limits}: ${f.word}`]);
  if (f.figures?.kind === 'scale' && f.figures.habit) {
    const { percent, low, high } = f.figures.habit;
    const unit = sayUnit(f.figures.unit);
    found.push([
      'habit',
      `${f.name}: ${f.reading} is ${f.word} by the label; the ±${percent}\u2009% habit (${low}–${high}\u2009${unit}) would say otherwise`,
    ]);
  }
  if (f.name === EXACT_VALUES) found.push(['exact', `${f.reading}: both readings are the label’s own figures`]);
  return found;
}

const ofGate = ({ seq, took, hold, pairs }: FastGate): Item => ({
  kind: 'fast',
  seq,
  words: `Discharge and residual line took ${seconds(took)}; ${pairs === 1 ? 'one pair' : `${pairs} pairs`} held ${seconds(hold)} each take ${seconds(hold * pairs)}`,
});
const seconds = (s: number): string => `${Math.round(s)}\u2009s`;
