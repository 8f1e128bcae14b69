import { Exact } from '../../calc/exact.ts';
import { ratedRangeVolts } from '../../calc/supply.ts';
import type { Parts } from '../../schema.ts';
import { judgement } from '../judgement.ts';
import { chose, past, read } from '../probing.ts';
import { judgeSound, judgeSplit } from './cooling.ts';
import { type Judging, RESTART_LIMITS } from './judging.ts';
import { judgeSupply, supplyOf } from './line.ts';
import { judgeFan } from './motors.ts';

/**
 * The live figures of an indoor blower: its line volts, its amps against the FLA, then the split with the outdoor unit
 * on again. In order of what matters: the supply, whether it runs, what it draws, what is seen and heard, the split.
 * `wait`: all is in but the split, which takes its time.
 */
export const blowerRestart = judgement({
  id: 'blower-restart',
  semantics: 2,
  takes: ['figures', 'later', 'plate'],
  limits: RESTART_LIMITS,
  outcomes: ['in', 'wait', 'supply', 'not-running', 'fan-high', 'sound', 'split-out', 'undecided'],
  run({ figures, later, plate }, limits) {
    const supply = judgeSupply(figures, supplyOf(plate, limits), 'Line volts');
    const blower = judgeFan(figures, plate, limits, 'blower');
    const split = judgeSplit(figures, later, limits);
    const sound = judgeSound(figures, later);
    const lines = [supply, blower, ...(split ? [split] : []), ...sound];
    const findings = lines.map((line) => line.finding);
    const out = (...some: readonly Judging[]): boolean => some.some((line) => line.is === 'out');
    if (out(supply)) return { outcome: 'supply', findings };
    if (out(blower)) return { outcome: 'not-running', findings };
    if (blower.is === 'high') return { outcome: 'fan-high', findings };
    if (out(...sound)) return { outcome: 'sound', findings };
    if (split && out(split)) return { outcome: 'split-out', findings };
    if (lines.some((line) => line.is === 'open')) return { outcome: 'undecided', findings };
    return { outcome: split ? 'in' : 'wait', findings };
  },
  probe(limits) {
    const { low, high, ratedWithin, splitLow, splitHigh } = limits;
    const plate: Parts = { volts: chose('208/230'), fla: read(4.2, 'A') };
    const small: Parts = { volts: chose('115'), fla: read(4.2, 'A') };
    const rated = ratedRangeVolts(115, ratedWithin.value);
    const split = (of: Exact | string): Parts => ({ split: read(of, 'Δ°F') });
    const at = (l1l2: Exact | string | number, fan: Exact | string | number = 3.6): Parts => ({
      l1l2: read(l1l2, 'V'),
      fan: read(fan, 'A'),
    });
    const runs = at(240);
    const few = new Exact('4.2').times(limits.fewFan.value).div(100);
    return [
      { figures: { ...runs, ...split(splitLow.value) }, plate },
      { figures: { ...at(120), ...split(splitLow.value) }, plate: small },
      ...[low.value, past(low.value, -1), high.value, past(high.value, 1)].map((v) => ({ figures: at(v), plate })),
      ...[rated.low, rated.low.minus(1), rated.high, rated.high.plus(1)].map((v) => ({ figures: at(v), plate: small })),
      { figures: at(240, 4.2), plate },
      { figures: at(240, 4.3), plate },
      { figures: at(240, few), plate },
      { figures: at(240, few.minus('0.001')), plate },
      { figures: at(240, 0), plate },
      { figures: runs, plate: { volts: chose('208/230') } },
      { figures: runs, plate },
      ...[splitLow.value, past(splitLow.value, -1), splitHigh.value, past(splitHigh.value, 1)].map((s) => ({
        figures: runs,
        later: split(s),
        plate,
      })),
      { figures: runs, later: {}, plate },
      ...['fine', 'noise', 'chatter', 'backwards'].map((sound) => ({
        figures: { ...runs, sound: chose(sound) },
        plate,
      })),
      { figures: { l1l2: read(240, 'V') }, plate },
      { figures: { fan: read(3.6, 'A') }, plate },
      { plate },
      {},
    ];
  },
});
