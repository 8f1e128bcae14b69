/** The dual run capacitor as the page shows it: the last lines typed by a person, verdict words and limits read off the screen. */
import { describe, expect, test } from 'vitest';
import { Cases, GOOD, PATIENCE, READINGS, shown, strip, toReadings, verdicts } from './cases.ts';

const cases = new Cases();

const REPLACE = 'The run capacitor is out of its label: replace it';
const IS_GOOD = 'The run capacitor is good';
const NEAR = 'The run capacitor passes, near its limit';
const NONE = null;
/** The block is finished, whatever the capacitor was found to be. */
const ON = 'Spin the fan by hand, power locked off. Does it spin free?';
const THIRD = 'FAN to C again with one lead on C, then HERM to FAN.';

/** A line, the question it leads to, the first verdict, and words beside it. */
type Typed = readonly [line: string, title: string, verdict: string | null, ...words: string[]];

async function typedInPage(print: string, lines: readonly Typed[]): Promise<void> {
  const ines = await cases.phone('ines', await cases.brought(toReadings(print)));
  for (const [line, title, verdict, ...words] of lines) {
    await ines.type(line);
    await expect.poll(() => ines.composer.inputValue(), PATIENCE).toBe('');
    await ines.sees(title);
    expect((await verdicts(ines))[0] ?? NONE).toBe(verdict);
    const said = await shown(ines);
    for (const word of words) expect(said).toContain(word);
  }
  expect(await strip(ines)).toBe('PROVED DEAD');
}

describe('45+5 µF ±6 %', () => {
  const FIRST: Typed = [
    'herm 44.6 fan 4.5 case ol',
    THIRD,
    NONE,
    'FAN reads 4.5 µF. It is not judged yet.',
    'A lead may sit on HERM instead of C.',
  ];
  test.each<readonly [string, readonly Typed[]]>([
    ['both sections are good', [[GOOD, ON, IS_GOOD, 'HERM44.6 µF', 'pass HERM reads 44.6', '42.30–47.70 µF']]],
    [
      'FAN is weak',
      [['herm 44.6 fan 2.9 hf 2.72 case ol', ON, REPLACE, 'pass HERM reads', 'fail FAN reads 2.9 µF, −42.0 %']],
    ],
    [
      '4.5 on FAN was HERM to FAN',
      [FIRST, ['fan 5.03 hf 4.52', ON, IS_GOOD, 'pass FAN reads 5.03 µF', 'The three fit within the doubt.']],
    ],
    [
      '4.5 on FAN truly is weak',
      [FIRST, ['fan 4.5 hf 4.09', ON, REPLACE, 'fail FAN reads 4.5 µF, −10.0 %', 'The three fit within the doubt.']],
    ],
    [
      '4.5 on FAN and no third reading',
      [
        FIRST,
        [
          'skip no third hand',
          ON,
          'HERM is judged, FAN is undecided',
          'pass HERM reads 44.6',
          'undecided FAN reads 4.5',
        ],
      ],
    ],
    [
      'swapped, then right',
      [
        ['herm 5.02 fan 44.8 case ol', READINGS, NONE, 'HERM and FAN look exchanged: leads or terminals are mixed up.'],
        [GOOD, ON, IS_GOOD],
      ],
    ],
    [
      'swapped twice',
      [
        ['herm 5.02 fan 44.8 case ol', READINGS, NONE],
        ['herm 5.02 fan 44.8 case ol', ON, 'The readings contradict each other: undecided', 'Nothing is condemned on'],
      ],
    ],
  ])('%s', (_, lines) => typedInPage('45+5 6% 440', lines));
});

describe('80+5 µF ±6 %', () => {
  test.each<readonly [string, readonly Typed[]]>([
    [
      '4.71 on FAN was HERM to FAN',
      [
        ['herm 80.1 fan 4.71 case ol', THIRD, NONE, 'A good FAN section reads 4.44–4.97 µF'],
        ['fan 5.00 hf 4.706', ON, IS_GOOD, 'pass FAN reads 5 µF'],
      ],
    ],
    [
      '4.71 truly is FAN',
      [
        ['herm 80.1 fan 4.71 case ol', THIRD, NONE],
        ['fan 4.71 hf 4.45', ON, NEAR, 'conditional pass FAN reads 4.71 µF', 'P(in tolerance) 55 %'],
      ],
    ],
    [
      '4.883 is what a good 5.20 gives on HERM to FAN',
      [
        ['herm 80.1 fan 4.883 case ol', THIRD, NONE, 'A good FAN section reads 4.44–4.97 µF'],
        ['fan 5.20 hf 4.883', ON, NEAR, 'conditional pass FAN reads 5.2 µF'],
      ],
    ],
  ])('%s', (_, lines) => typedInPage('80+5 6% 440', lines));
});

describe('40+5 µF ±6 %', () => {
  const OUT: Typed = [
    'herm 37.4 fan 4.91 hf 4.34 case ol',
    READINGS,
    NONE,
    'P(in tolerance) 39 %',
    'Zero the leads or take another meter, and repeat once.',
  ];
  test.each<readonly [string, readonly Typed[]]>([
    [
      'conditional pass',
      [['herm 38.4 fan 4.95 hf 4.38 case ol', ON, NEAR, 'conditional pass HERM reads 38.4', '93 %']],
    ],
    [
      'conditional fail, out again',
      [OUT, ['herm 37.3', ON, REPLACE, 'conditional fail HERM reads 37.3', 'Out twice: the try before read 37.4 µF.']],
    ],
    [
      'conditional fail, in on the repeat',
      [
        OUT,
        ['herm 37.9 fan 4.91 hf 4.35 case ol', ON, NEAR, 'The try before read 37.4 µF, outside. Both are recorded.'],
      ],
    ],
    [
      'out by the label, inside ±10 %',
      [
        [
          'herm 36.2 fan 4.91 hf 4.33 case ol',
          ON,
          REPLACE,
          'fail HERM reads 36.2',
          'The ±10 % habit (36.00–44.00 µF) would keep it. The label decides.',
        ],
      ],
    ],
    ...['37.6 µF', '37600 nF', '0.0376 mF', '37,6'].map((herm) => {
      const line = `herm ${herm} fan 4.91 hf 4.34 case ol`;
      const words = 'conditional pass HERM reads 37.6 µF, −6.0 % off the rated 40 µF. The label allows 37.60–42.40';
      return [`${herm} is on the limit, so it is in`, [[line, ON, NEAR, words] as Typed]] as const;
    }),
    [
      '37.59 is a hundredth beyond, so it is out',
      [
        [
          'herm 37.59 fan 4.91 hf 4.34 case ol',
          READINGS,
          NONE,
          'HERM reads 37.59 µF, −6.0 % off the rated 40 µF. The label allows 37.60–42.40 µF, it lies below',
        ],
      ],
    ],
  ])('%s', (_, lines) => typedInPage('40+5 6% 370', lines));
});
