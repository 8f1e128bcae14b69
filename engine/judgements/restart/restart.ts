import { judgement } from '../judgement.ts';
import { chosenOf } from '../read.ts';
import { judgeBox, judgeSound, judgeSplit } from './cooling.ts';
import { type Judging, RESTART_LIMITS } from './judging.ts';
import { fitsOther, isNotIn, judgeDrop, judgeStart, judgeSupply, judgeThreeLines, supplyOf } from './line.ts';
import { judgeCompressor, judgeFan, judgeLegs } from './motors.ts';
import { probeFigures } from './probe.ts';

/**
 * The live figures after a repair. `figures`: V l1l2, t1t2 and `min` (T1–T2 lowest while starting), A comp and fan,
 * the `split` in Δ°F, and `sound` (fine, noise, chatter, backwards); `later` brings split and sound some minutes on.
 * The supply comes first, then a stalled compressor, which has to be turned off before anybody reads poles, then the
 * drop. Where nothing draws and T has no volts, the contactor is not in or nothing was called: no pole is read on that. RLA is no limit; above MCC it is turned off. Without LRA or
 * RLA nobody can tell a stalled compressor from a running one. By its class, a three-phase unit has `l2l3`, `l1l3`,
 * comp2 and comp3 too; a walk-in or reach-in has no split of an air conditioner's but °F of its `box`, at first and
 * later. `printed` is what the nameplate prints in V; where nobody said it and the line fits another than 208/230 V,
 * it is asked before anything is judged.
 */
export const restart = judgement({
  id: 'restart',
  semantics: 6,
  takes: ['figures', 'later', 'plate', 'printed', 'unit'],
  limits: RESTART_LIMITS,
  outcomes: [
    ...(['in', 'wait', 'which-plate', 'supply', 'drop', 'not-in', 'not-starting', 'legs-apart'] as const),
    ...(['above-mcc', 'fan-high', 'sound', 'split-out', 'undecided'] as const),
  ],
  run({ figures, later, plate, printed, unit }, limits) {
    const kind = chosenOf(unit, 'choice');
    const three = kind.includes('three-phase');
    const range = supplyOf(printed ?? plate, limits, three ? 3 : 1);
    const supply = [judgeSupply(figures, range), ...(three ? judgeThreeLines(figures, range, limits) : [])];
    const drop = judgeDrop(figures, limits);
    const notIn = isNotIn(figures, limits);
    const start = judgeStart(figures, range, limits);
    const compressor = judgeCompressor(figures, plate, limits);
    const legs = three ? [judgeLegs(figures, limits)] : [];
    const fan = judgeFan(figures, plate, limits);
    const split = (kind.includes('refrigeration') ? judgeBox : judgeSplit)(figures, later, limits);
    const sound = judgeSound(figures, later);
    const lines = [...supply, ...drop, ...start, compressor, ...legs, fan, ...(split ? [split] : []), ...sound];
    const findings = lines.map((line) => line.finding);
    const out = (...some: readonly Judging[]): boolean => some.some((line) => line.is === 'out');

    if (out(...supply) && range.assumed && fitsOther(figures, limits)) return { outcome: 'which-plate', findings };
    if (out(...supply, ...start)) return { outcome: 'supply', findings };
    if (compressor.is === 'stalled') return { outcome: 'not-starting', findings };
    if (notIn) return { outcome: 'not-in', findings };
    if (out(...drop)) return { outcome: 'drop', findings };
    if (out(compressor, fan)) return { outcome: 'not-starting', findings };
    // A missing line makes two legs heavy: that is said first.
    if (out(...legs)) return { outcome: 'legs-apart', findings };
    if (compressor.is === 'heavy') return { outcome: 'above-mcc', findings };
    if (fan.is === 'high') return { outcome: 'fan-high', findings };
    if (out(...sound)) return { outcome: 'sound', findings };
    if (split && out(split)) return { outcome: 'split-out', findings };
    if (lines.some((line) => line.is === 'open')) return { outcome: 'undecided', findings };
    return { outcome: split ? 'in' : 'wait', findings };
  },
  probe: probeFigures,
});
