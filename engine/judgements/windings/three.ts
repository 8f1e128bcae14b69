import { Exact } from '../../calc/exact.ts';
import { judgement } from '../judgement.ts';
import { chose } from '../probing.ts';
import { asksRepeat } from './fan.ts';
import { FRAME_LIMITS, frameBand, frameEdges, frameFinding } from './frame.ts';
import { apartFinding, heatOf, OHMMETER_LIMITS, ohmsOf, openApart } from './look.ts';
import { findPlain, plainFinding } from './plain-pairs.ts';
import { type Cell, leastAboveDoubt, less, more, ohmParts } from './probing.ts';

const OUTCOMES = [
  'good',
  'ask-warm',
  'until-cool',
  'protector-open',
  'open',
  'grounded',
  'repeat',
  'undecided',
] as const;

/**
 * The windings of a three-phase or inverter motor, Ω, leads off: three pairs, equal within a share or the doubt, and any
 * of them to the frame. All three open on a hot motor is its protector; two open is one lead or winding. Two
 * lines that are open in different pairs decide nothing.
 */
export const threeWindings = judgement({
  id: 'three-windings',
  semantics: 2,
  takes: ['readings', 'earlier', 'warm'],
  limits: [...OHMMETER_LIMITS, ...FRAME_LIMITS, 'equal'],
  outcomes: OUTCOMES,
  run({ readings, earlier, warm }, limits) {
    const by = { meter: limits, equal: limits.equal };
    const now = findPlain(readings, by);
    const before = findPlain(earlier, by);
    const frame = ohmsOf(readings, 'frame');
    const band = frameBand(frame, limits);
    const heat = heatOf(warm);
    const apart = !asksRepeat(before.is) && openApart(now.three, before.three);
    const outcome = ((): (typeof OUTCOMES)[number] => {
      if (band === 'low') return 'grounded';
      if (apart) return 'undecided';
      if (now.is === 'two-open') return 'open';
      if (now.is === 'all-open') {
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
        ...(apart ? [apartFinding] : []),
        frameFinding('Frame', frame, limits),
      ],
    };
  },
  probe(limits) {
    const pairs = (first: Cell, second: Cell, third: Cell, frame: Cell = 'OL') =>
      ohmParts({ first, second, third, frame });
    // Two of 100 and this one spread by exactly the share; 100 Ω is large enough for the share to be wider than the doubt.
    const share = new Exact(limits.equal.value);
    const most = share.times(200).plus(30_000).div(new Exact(300).minus(share)).toDecimalPlaces(3, Exact.ROUND_DOWN);
    const least = leastAboveDoubt(limits);
    const [misfit, open] = [pairs(100, 100, 200), pairs('OL', 'OL', 'OL')];
    return [
      ...[
        pairs(100, 100, 100),
        pairs(100, 100, most),
        pairs(100, 100, more(most)),
        pairs(least, least, least),
        pairs(less(least), least, least),
        misfit,
        open,
        pairs('OL', 100, 'OL'),
        pairs(100, 'OL', 100),
        ...frameEdges(limits).map((frame) => pairs(100, 100, 100, frame)),
        pairs(100, 100, 100, '_'),
        pairs(100, '_', 100),
      ].map((readings) => ({ readings })),
      { readings: open, warm: { choice: chose('hot') } },
      { readings: open, warm: { choice: chose('cool') } },
      { readings: open, warm: { choice: chose('cant') } },
      { readings: misfit, earlier: misfit },
      { readings: misfit, earlier: open },
      { readings: open, earlier: open },
      { readings: pairs('OL', 100, 'OL'), earlier: pairs('OL', 'OL', 100) },
      { readings: pairs(100, 100, 100), earlier: misfit },
      {},
    ];
  },
});
