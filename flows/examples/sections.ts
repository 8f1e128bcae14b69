/** Worked calls of the run capacitor's readings, with two sections and with one. */
import type { Example } from '../../engine/vocabulary.ts';
import { dead, GOOD, LINE, MEANS, MOTORS, NEW_PART, ONE_RESIDUAL, PROVING, RUNS, WEAK, wiresOff } from './lines.ts';

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

/** The diagram asks for a part that the print on this one doesn't show. */
const ASKS_FOR = (diagram: string, look?: string, residual?: string): string[] => [
  ...dead('d', look, residual),
  ...[LINE, diagram, 'wires off herm fan c'],
];

export const SECTIONS: readonly Example[] = [
  {
    title: 'Good by its own print, and the diagram asks for another: the wrong part is in',
    lines: [
      ...[...ASKS_FOR('35+5 440'), GOOD, ...MOTORS, 'replaced last season'],
      ...['other 45+5 440 herm 45.3 fan 5.04', 'other 35+5 440 herm 35.2 fan 5.02', 'fitted', 'wires back', ...RUNS],
    ],
    then: ['wrong-part-fitted', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Near its limit by its own print, and for too few volts by the diagram: the wrong part is in',
    lines: [
      ...ASKS_FOR('45+5 440', 'clean, 1 cap, 45+5 6% 370'),
      ...['herm 43.0 fan 5.03 hf 4.5 case ol', ...MOTORS, 'too low', ...NEW_PART, ...RUNS],
    ],
    then: ['wrong-part-fitted', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Good, and what the diagram asks for',
    lines: [...ASKS_FOR('45+5 440'), GOOD, ...MOTORS, ...RUNS],
    then: ['capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
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
  {
    title: 'One section, good by its own print, and the diagram asks for another: the wrong part is in',
    lines: [
      ...[...ASKS_FOR('35 uf 440', 'clean, 1 cap, 40 6% 440', ONE_RESIDUAL), 'herm 39.4 case ol', ...MOTORS, 'nothing'],
      ...['other 35 uf 440, herm 35.2', 'fitted', 'wires back', ...RUNS],
    ],
    then: ['wrong-part-fitted', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'One section, near its limit, and the diagram asks for another: the wrong part is in',
    lines: [
      ...[...ASKS_FOR('35 uf 440', 'clean, 1 cap, 40 6% 440', ONE_RESIDUAL), 'herm 38.0 case ol', ...MOTORS, 'nothing'],
      ...['other 35 uf 440, herm 35.2', 'fitted', 'wires back', ...RUNS],
    ],
    then: ['wrong-part-fitted', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  single('One section, weak', ['herm 30 case ol'], 'section-fails-value', false),
  single('One section, good', ['herm 39.4 case ol'], 'capacitor-good', true),
  single(
    'One section, open on leads that read',
    ['herm .01 case ol', 'yes', 'herm .01 case ol', 'herm ol', 'yes'],
    'section-open',
    false,
  ),
];

export const BESIDE: readonly Example[] = [
  {
    title: 'The fan’s own run capacitor, weak',
    lines: [
      ...['d', 'psc', 'yes', MEANS, 'yes', 'clean, 2 caps, 45+5 6% 440', PROVING, '9.3 / 0 0 0 / 0 / 9.3', LINE],
      ...['no diagram', 'wires off', GOOD, 'run', 'off', '5 µF 6% 370', 'herm 3.1 case ol', ...MOTORS],
    ],
    then: ['capacitor-good', 'section-fails-value'],
  },
];
