import { Exact, type Range } from '../../calc/exact.ts';
import type { Scale } from '../../picture/data.ts';
import type { Finding, Parts } from '../../schema.ts';
import { pictured, scaleFigures } from '../figures.ts';
import { type Force, judgement } from '../judgement.ts';
import { chose, over, past, print, read, untaken } from '../probing.ts';
import { confirmed, printOf, readingOf } from '../read.ts';
import { finding, say, sayRange } from '../say.ts';
import { type Judged, judgeStart, sayStart, startRange, startReading, startRule } from './look.ts';

const OUTCOMES = ['pass', 'repeat', 'low', 'high', 'leads', 'open', 'shorted', 'undecided'] as const;
type Outcome = (typeof OUTCOMES)[number];

/**
 * The value of a start capacitor, µF, by the range printed on it with the meter's doubt; wires and bleed resistor off.
 * Below the range it fails; above, it is read twice and flagged. One section has no other to compare with, so next to
 * nothing is open only where the leads read another capacitor or a short right then. OL is no verdict: ohms decide.
 */
export const startCapacitor = judgement({
  id: 'start-capacitor',
  semantics: 1,
  takes: ['label', 'readings', 'earlier', 'ohms', 'leads'],
  limits: ['openShare', 'shorted'],
  outcomes: OUTCOMES,
  run({ label, readings, earlier, ohms, leads }, limits, force) {
    const reading = startReading(readings);
    const shorts = readingOf(ohms, 'start', 'Ω');
    const shorted = shorts.kind === 'figure' && shorts.value.abs().lt(limits.shorted.value);
    const charges = reading.kind === 'figure' && reading.value.gt(0);
    if (shorted && !charges) {
      const text = `The start capacitor reads ${say(shorts.value, 'Ω')}, steady near zero. It is shorted.`;
      const limit = `shorted below ${say(limits.shorted.value, 'Ω')}`;
      const reading = say(shorts.value, 'Ω');
      const of = { name: 'Start capacitor, ohms', reading, limits: limit, word: 'shorted', text };
      return { outcome: 'shorted', findings: [finding({ ...of, source: limits.shorted.source })] };
    }
    const part = printOf(label);
    const shown = reading.kind === 'figure' ? say(reading.value, 'µF') : reading.kind === 'over' ? 'OL' : 'no reading';
    const plain = (outcome: Outcome, word: string, text: string) => ({
      outcome,
      findings: [finding({ name: 'Start capacitor', reading: shown, word, text })],
    });
    if (part === null)
      return plain('undecided', 'undecided', 'The range is not known, so there is no verdict on the value.');
    const before = startReading(earlier);
    if (reading.kind === 'over') {
      const text =
        'The start capacitor reads OL. That is no verdict: over range, shorted, charged, or a resistor in parallel.';
      if (before.kind !== 'over') return plain('repeat', 'no verdict', text);
      return plain('undecided', 'no verdict', `${text} It read OL in the try before. Ohms decide.`);
    }
    const range = startRange(part);
    const now = judgeStart(reading, range, limits.openShare, force);
    const was = judgeStart(before, range, limits.openShare, force);
    if (now === null) return plain('undecided', 'not read', 'The start capacitor was not read.');
    const outcome = decide(now, was, leads);
    const findings: Finding[] = [
      finding({
        name: 'Start capacitor',
        reading: shown,
        limits: sayRange(range, 'µF', 4, 0),
        doubt: sayRange(now.window, 'µF', 2),
        word: now.odd === null ? now.word : outcome === 'open' ? 'open' : 'no verdict',
        text: [...textOf(now, outcome), ...twice(now, was, outcome)].join(' '),
        source: now.odd === null ? startRule(force) : limits.openShare.source,
        ...(now.odd === null ? pictured(scaleOf(now, range, force)) : {}),
      }),
    ];
    return { outcome, findings };

    function textOf(now: Judged, outcome: Outcome): string[] {
      if (now.odd === null) return [sayStart(now, range, force)];
      const nothing = `The start capacitor reads ${shown} for ${sayRange(range, 'µF', 4, 0)}.`;
      if (outcome === 'open') return [nothing, 'The leads read another capacitor or a short. It is open.'];
      return [nothing, 'That is no verdict: look at the wires, the leads and the range first.'];
    }
  },
  probe({ openShare, shorted }) {
    const [low, high] = ['189', '227'];
    const label = print({ herm: high, fan: null, below: '16.7401', above: '0', volts: '330', range: { low, high } });
    const of = (microfarads: Parameters<typeof past>[0]): Parts => ({ start: read(microfarads, 'µF') });
    const open = new Exact(low).times(openShare.value).div(100);
    const next = past(open, '-0.0001');
    const ohms = (value: Parameters<typeof past>[0]): Parts => ({ start: read(value, 'Ω') });
    return [
      ...['208', low, high, '188.9999', '227.0001', '150', '300', '700'].map((v) => ({ label, readings: of(v) })),
      ...['188.9999', '208', '150'].map((v) => ({ label, readings: of(v), earlier: of('188.9999') })),
      ...['227.0001', '300'].map((v) => ({ label, readings: of(v), earlier: of('300') })),
      { label, readings: of(open) },
      { label, readings: of(next) },
      { label, readings: of(next), leads: { ok: chose('yes') } },
      { label, readings: of(next), leads: { ok: chose('no') } },
      { label, readings: of('700'), earlier: of('700') },
      { label, readings: { start: over } },
      { label, readings: { start: over }, earlier: { start: over } },
      { label, readings: { start: over }, ohms: ohms(past(shorted.value, '-0.001')) },
      { label, readings: { start: over }, earlier: { start: over }, ohms: ohms(shorted.value) },
      { label, readings: { start: untaken } },
      { readings: of('208') },
      {},
    ];
  },
});

const scaleOf = (now: Judged, limits: Range, force: Force): Scale =>
  scaleFigures({
    ...{ name: 'Start capacitor', unit: 'µF', word: now.word, limits, reading: now.value },
    doubt: force.settings.rule === 'plain' ? null : now.window,
  });

function decide(now: Judged, was: Judged | null, leads: Parts | undefined): Outcome {
  if (now.odd === 'nothing') return leads === undefined ? 'leads' : confirmed(leads) ? 'open' : 'undecided';
  if (now.odd === 'absurd') return was?.odd === 'absurd' ? 'undecided' : 'repeat';
  if (now.side === 'inside') return 'pass';
  const again = was !== null && was.odd === null && was.side === now.side;
  if (now.side === 'above') return again ? 'high' : 'repeat';
  return now.word === 'fail' || again ? 'low' : 'repeat';
}

function twice(now: Judged, was: Judged | null, outcome: Outcome): string[] {
  if (was === null || was.odd !== null || now.odd !== null) return [];
  const before = say(was.value, 'µF');
  if (outcome === 'high') return [`The try before read ${before}. Above the range twice: a senior sees this.`];
  if (was.side === 'inside') return [`The try before read ${before}, inside.`];
  return [`The try before read ${before}, ${was.side} the range. Both are recorded.`];
}
