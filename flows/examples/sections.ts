/** Worked calls of the run capacitor's readings, with two sections and with one. */
import type { Example } from '../../engine/vocabulary.ts';
import { GOOD, MOTORS, NEW_PART, ONE_RESIDUAL, RUNS, WEAK, wiresOff } from './lines.ts';

const REPLACED = [...MOTORS, 'nothing', ...NEW_PART, ...RUNS];
const dual = (
  title: string,
  lines: readonly string[],
  verdict: string,
  rest: 'replaced' | 'kept' | 'raised',
): Example => ({
  title,
  lines: [
    ...wiresOff(),
    ...lines,
    ...(rest === 'replaced' ? REPLACED : rest === 'kept' ? [...MOTORS, ...RUNS] : MOTORS),
  ],
  then: [
    verdict,
    ...(rest === 'replaced' ? ['new-part-right', 'repair-proven'] : rest === 'kept' ? ['runs-nothing-found'] : []),
  ],
  ends: rest === 'raised' ? 'raised' : 'done',
});
const SWAPPED = 'herm 5.02 fan 44.8 case ol';
const OPEN = 'herm 44.6 fan .02 hf .02 case ol';
const OVER = 'herm ol fan 5.03 case ol';
const HIGH = 'herm 49.8 fan 5.03 hf 4.57 case ol';
const LEAKS = 'herm 44.6 fan 5.03 hf 4.52 case 0.4 M';

export const SECTIONS: readonly Example[] = [
  dual('HERM at 36.1 of 45 µF ±6 %', [WEAK], 'section-fails-value', 'replaced'),
  dual('Both sections good', [GOOD], 'capacitor-good', 'kept'),
  dual(
    'HERM inside, its limit inside the doubt',
    ['herm 43.0 fan 5.03 hf 4.5 case ol'],
    'capacitor-conditional-pass',
    'kept',
  ),
  dual('Above the label twice', [HIGH, HIGH], 'section-too-high', 'replaced'),
  dual('FAN open, with the wires seen to', [OPEN, 'yes', OPEN], 'section-open', 'replaced'),
  dual(
    'HERM shorted: OL in µF, near zero in ohms',
    [OVER, 'yes', OVER, 'herm 0.3 ohm fan ol'],
    'section-shorted',
    'replaced',
  ),
  dual('Low to the case twice', [LEAKS, LEAKS], 'leak-to-case', 'replaced'),
  dual('The case not taken', ['herm 44.6 fan 5.03 hf 4.52', 'skip rim under paint'], 'case-undecided', 'raised'),
  dual('Sections exchanged twice', [SWAPPED, SWAPPED], 'readings-contradict', 'raised'),
  dual(
    'FAN reads what HERM to FAN would, and nobody reads it again',
    ['herm 44.6 fan 4.52 case ol', 'skip no third hand'],
    'fan-section-undecided',
    'raised',
  ),
];

const single = (title: string, lines: readonly string[], verdict: string, kept: boolean): Example => ({
  title,
  lines: [
    ...wiresOff('d', 'clean, 1 cap, 40 6% 440', ONE_RESIDUAL),
    ...lines,
    ...MOTORS,
    ...(kept ? [] : ['age', 'other 40 uf 440, herm 40.2', 'fitted', 'wires back']),
    ...RUNS,
  ],
  then: kept ? [verdict, 'runs-nothing-found'] : [verdict, 'new-part-right', 'repair-proven'],
  ends: 'done',
});
export const SINGLE: readonly Example[] = [
  single('One section, weak', ['herm 30 case ol'], 'section-fails-value', false),
  single('One section, good', ['herm 39.4 case ol'], 'capacitor-good', true),
  single(
    'One section, open on leads that read',
    ['herm .01 case ol', 'yes', 'herm .01 case ol', 'herm ol', 'yes'],
    'section-open',
    false,
  ),
];
