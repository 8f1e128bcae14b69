import { judgement } from '../judgement.ts';
import { judgeSound, judgeSplit } from './cooling.ts';
import { type Judging, RESTART_LIMITS } from './judging.ts';
import { judgeDrop, judgeStart, judgeSupply, supplyOf } from './line.ts';
import { judgeCompressor, judgeFan } from './motors.ts';
import { probeFigures } from './probe.ts';

/**
 * The live figures after a repair. `figures`: V l1l2, t1t2 and `min` (T1–T2 lowest while starting), A comp and fan, the
 * `split` in Δ°F, and `sound` (fine, noise, chatter, backwards); `later` brings split and sound some minutes on. The
 * supply comes first, then a stalled compressor, which has to be turned off before anybody reads poles, then the drop:
 * an open pole explains a motor that draws nothing. RLA is no limit. Without LRA or RLA nobody can tell a stalled
 * compressor from a running one.
 */
export const restart = judgement({
  id: 'restart',
  semantics: 2,
  takes: ['figures', 'later', 'plate'],
  limits: RESTART_LIMITS,
  outcomes: ['in', 'wait', 'supply', 'drop', 'not-starting', 'fan-high', 'sound', 'split-out', 'undecided'],
  run({ figures, later, plate }, limits) {
    const range = supplyOf(plate, limits);
    const supply = judgeSupply(figures, range);
    const drop = judgeDrop(figures, limits);
    const start = judgeStart(figures, range, limits);
    const compressor = judgeCompressor(figures, plate, limits);
    const fan = judgeFan(figures, plate);
    const split = judgeSplit(figures, later, limits);
    const sound = judgeSound(figures, later);
    const lines = [supply, ...drop, ...start, compressor, fan, ...(split ? [split] : []), ...sound];
    const findings = lines.map((line) => line.finding);
    const out = (...some: readonly Judging[]): boolean => some.some((line) => line.is === 'out');

    if (out(supply, ...start)) return { outcome: 'supply', findings };
    if (compressor.is === 'stalled') return { outcome: 'not-starting', findings };
    if (out(...drop)) return { outcome: 'drop', findings };
    if (out(compressor, fan)) return { outcome: 'not-starting', findings };
    if (fan.is === 'high') return { outcome: 'fan-high', findings };
    if (out(...sound)) return { outcome: 'sound', findings };
    if (split && out(split)) return { outcome: 'split-out', findings };
    if (lines.some((line) => line.is === 'open')) return { outcome: 'undecided', findings };
    return { outcome: split ? 'in' : 'wait', findings };
  },
  probe: probeFigures,
});
