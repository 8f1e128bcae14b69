import { judgement } from '../judgement.ts';
import { chose } from '../probing.ts';
import { FRAME_LIMITS, frameBand, frameEdges, frameFinding } from './frame.ts';
import { heatOf, OHMMETER_LIMITS, ohmsOf } from './look.ts';
import { findPlain, type PlainState, plainFinding } from './plain-pairs.ts';
import { type Cell, leastAboveDoubt, less, more, mostThatFits, ohmParts } from './probing.ts';

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

/**
 * The windings of a fan motor with a run capacitor, Ω, leads off: three pairs in any order, and any of them to the frame.
 * Open pairs on a hot motor are its protector, and on one
 * of which nobody knows they are read again when it has cooled. A sum that doesn't fit asks once for a repeat and never condemns.
 */
export const fanWindings = judgement({
  id: 'fan-windings',
  semantics: 2,
  takes: ['readings', 'earlier', 'warm'],
  limits: [...OHMMETER_LIMITS, ...FRAME_LIMITS],
  outcomes: OUTCOMES,
  run({ readings, earlier, warm }, limits) {
    const by = { meter: limits, equal: null };
    const now = findPlain(readings, by);
    const before = findPlain(earlier, by);
    const frame = ohmsOf(readings, 'frame');
    const band = frameBand(frame, limits);
    const heat = heatOf(warm);
    const outcome = ((): (typeof OUTCOMES)[number] => {
      if (band === 'low') return 'to-frame';
      if (now.is === 'all-open' || now.is === 'two-open') {
        if (heat === 'unknown') return warm === undefined ? 'ask-warm' : 'until-cool';
        return heat === 'hot' ? 'protector-open' : 'open';
      }
      if (now.is === 'missing') return 'undecided';
      if (now.is === 'fits') return band === 'clear' ? 'good' : 'undecided';
      return asksRepeat(before.is) ? 'undecided' : 'repeat';
    })();
    return {
      outcome,
      findings: [
        ...(before.is === 'missing' ? [] : [plainFinding('Windings, earlier', before, by, 'unknown')]),
        plainFinding('Windings', now, by, heat, asksRepeat(before.is)),
        frameFinding('Frame', frame, limits),
      ],
    };
  },
  probe(limits) {
    const pairs = (first: Cell, second: Cell, third: Cell, frame: Cell = 'OL') =>
      ohmParts({ first, second, third, frame });
    const most = mostThatFits(14, 31, limits);
    const least = leastAboveDoubt(limits);
    const misfit = pairs(14, 31, 60);
    const [open, two] = [pairs('OL', 'OL', 'OL'), pairs('OL', 31, 'OL')];
    return [
      ...[
        pairs(14, 31, 45),
        pairs(14, 31, most),
        pairs(14, 31, more(most)),
        pairs(least, 31, least.plus(31)),
        pairs(less(least), 31, least.plus(31)),
        misfit,
        open,
        two,
        pairs(14, 'OL', 45),
        ...frameEdges(limits).map((frame) => pairs(14, 31, 45, frame)),
        pairs(14, 31, 45, '_'),
        pairs(14, '_', 45),
      ].map((readings) => ({ readings })),
      { readings: open, warm: { choice: chose('hot') } },
      { readings: two, warm: { choice: chose('hot') } },
      { readings: open, warm: { choice: chose('cool') } },
      { readings: two, warm: { choice: chose('cool') } },
      { readings: open, warm: { choice: chose('cant') } },
      { readings: misfit, earlier: misfit },
      { readings: misfit, earlier: open },
      { readings: pairs(14, 31, 45), earlier: misfit },
      {},
    ];
  },
});

/** Whether a try of this state was one that asked for a repeat. */
export const asksRepeat = (is: PlainState): boolean => is === 'one-open' || is === 'near-zero' || is === 'misfit';
