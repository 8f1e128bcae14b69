import type { Exact } from '../../calc/exact.ts';
import { doubtOhms, isAboveDoubt } from '../../calc/windings.ts';
import type { Finding, Parts } from '../../schema.ts';
import { judgement } from '../judgement.ts';
import { chose } from '../probing.ts';
import type { Reading } from '../read.ts';
import { finding, say } from '../say.ts';
import { FRAME_LIMITS, frameBand, frameEdges, frameFinding } from './frame.ts';
import {
  doubtBy,
  type Heat,
  heatOf,
  OHMMETER_LIMITS,
  type OhmmeterLimits,
  ohmsOf,
  sayOhms,
  sayReading,
} from './look.ts';
import { type Cell, leastAboveDoubt, less, more, ohmParts } from './probing.ts';

const OUTCOMES = [
  'good',
  'ask-warm',
  'until-cool',
  'protector-open',
  'open',
  'to-frame',
  'repeat',
  'undecided',
] as const;
/** From common to each speed lead, the fastest first. */
const TAPS = { high: 'high', med: 'medium', low: 'low' } as const;
type Tap = keyof typeof TAPS;
type State = 'missing' | 'all-open' | 'some-open' | 'near-zero' | 'disorder' | 'fits';

/**
 * The windings of a PSC blower with speed leads, Ω, leads off: common to each speed, and any of them to the frame. The
 * fastest speed has the least winding in its way, so the ohms rise from high to low. Open on a hot motor is its protector,
 * and of which nobody knows it, that is waited out.
 * An order that doesn't fit is mixed-up leads: it asks once for a repeat and never condemns.
 */
export const blowerWindings = judgement({
  id: 'blower-windings',
  semantics: 2,
  takes: ['readings', 'earlier', 'warm'],
  limits: [...OHMMETER_LIMITS, ...FRAME_LIMITS],
  outcomes: OUTCOMES,
  run({ readings, earlier, warm }, limits) {
    const now = stateOf(readings, limits);
    const before = stateOf(earlier, limits);
    const frame = ohmsOf(readings, 'frame');
    const band = frameBand(frame, limits);
    const heat = heatOf(warm);
    const outcome = ((): (typeof OUTCOMES)[number] => {
      if (band === 'low') return 'to-frame';
      if (now === 'all-open' || now === 'some-open') {
        if (heat === 'unknown') return warm === undefined ? 'ask-warm' : 'until-cool';
        return heat === 'hot' ? 'protector-open' : 'open';
      }
      if (now === 'missing') return 'undecided';
      if (now === 'fits') return band === 'clear' ? 'good' : 'undecided';
      return asksRepeat(before) ? 'undecided' : 'repeat';
    })();
    return {
      outcome,
      findings: [
        ...(before === 'missing'
          ? []
          : [speedsFinding('Windings, earlier', earlier, before, 'unknown', false, limits)]),
        speedsFinding('Windings', readings, now, heat, asksRepeat(before), limits),
        frameFinding('Frame', frame, limits),
      ],
    };
  },
  probe(limits) {
    const taps = (high: Cell, med: Cell, low: Cell, frame: Cell = 'OL') => ohmParts({ high, med, low, frame });
    const least = leastAboveDoubt(limits);
    const [open, some, mixed] = [taps('OL', 'OL', 'OL'), taps(6, 'OL', 11), taps(11, 8, 6)];
    const wide = doubtOhms(doubtBy(limits), 6).plus(6);
    return [
      ...[
        taps(6, 8, 11),
        taps(6, '_', 11),
        taps(6, '_', '_'),
        taps('_', 8, 11),
        taps(least, 8, 11),
        taps(less(least), 8, 11),
        taps(6, 6, 6),
        taps(more(wide.plus(1)), '_', 6),
        mixed,
        open,
        some,
        ...frameEdges(limits).map((frame) => taps(6, 8, 11, frame)),
        taps(6, 8, 11, '_'),
      ].map((readings) => ({ readings })),
      ...[open, some].flatMap((readings) =>
        ['hot', 'cool', 'cant'].map((heat) => ({ readings, warm: { choice: chose(heat) } })),
      ),
      { readings: mixed, earlier: mixed },
      { readings: mixed, earlier: open },
      { readings: taps(6, 8, 11), earlier: mixed },
      {},
    ];
  },
});

const asksRepeat = (is: State): boolean => is === 'near-zero' || is === 'disorder';

interface Read {
  readonly tap: Tap;
  readonly reading: Reading;
}
const readTaps = (parts: Parts | undefined): Read[] =>
  (Object.keys(TAPS) as Tap[])
    .map((tap) => ({ tap, reading: ohmsOf(parts, tap) }))
    .filter(({ reading }) => reading.kind !== 'none');

function stateOf(parts: Parts | undefined, limits: OhmmeterLimits): State {
  const taps = readTaps(parts);
  if (ohmsOf(parts, 'high').kind === 'none') return 'missing';
  const open = taps.filter(({ reading }) => reading.kind === 'over').length;
  if (open > 0) return open === taps.length ? 'all-open' : 'some-open';
  const ohms = taps.flatMap(({ reading }) => (reading.kind === 'figure' ? reading.value : []));
  const doubt = doubtBy(limits);
  if (ohms.some((r) => !isAboveDoubt(doubt, r))) return 'near-zero';
  const falls = ohms.some((r, i) => {
    const next = ohms[i + 1];
    return next !== undefined && r.minus(next).gt(doubtOhms(doubt, r).plus(doubtOhms(doubt, next)));
  });
  return falls ? 'disorder' : 'fits';
}

const WORDS: Readonly<Record<State, string>> = {
  missing: 'missing',
  'all-open': 'all open',
  'some-open': 'a speed open',
  'near-zero': 'too near zero',
  disorder: 'out of order',
  fits: 'fits',
};
const WARM: Readonly<Record<Heat, string>> = {
  hot: 'The motor is hot: its thermal protector may be open. Let it cool and read again.',
  cool: 'The motor is cool, so no protector explains it. Look at plug and leads before the motor.',
  unknown: 'Whether the motor is hot or cool decides what that means.',
};

function speedsFinding(
  name: string,
  parts: Parts | undefined,
  is: State,
  heat: Heat,
  twice: boolean,
  limits: OhmmeterLimits,
): Finding {
  const taps = readTaps(parts);
  const reading = taps.map(({ tap, reading }) => `${TAPS[tap]} ${sayReading(reading)}`).join(', ') || 'no reading';
  const least = taps.reduce<Exact | null>(
    (so, { reading: r }) => (r.kind === 'figure' && (so === null || r.value.lt(so)) ? r.value : so),
    null,
  );
  const again = `It condemns nothing. ${twice ? 'It is so twice: a senior decides.' : 'Check which lead is which, zero the leads and read again.'}`;
  const text = {
    missing: 'Common to the high speed was not read.',
    'all-open': `Every speed reads OL from common. ${WARM[heat]}`,
    'some-open': `A speed reads OL from common while another reads. ${WARM[heat]}`,
    'near-zero': `${least ? sayOhms(least) : 'A reading'} is within the meter’s doubt: a short would read the same. ${again}`,
    disorder: `The ohms don’t rise from high to low. ${again}`,
    fits: taps.length > 1 ? 'The ohms rise from high to low, as they should.' : 'The winding reads.',
  }[is];
  return finding({
    name,
    reading,
    limits: 'rising from high to low',
    doubt: `±(${say(limits.percent.value, '%')} + ${limits.counts.value} counts)`,
    word: WORDS[is],
    text,
    source: 'the fastest speed reads the least: common practice, no single source',
  });
}
