/** The dual run capacitor, from the line typed to the verdict. Meter ±(1.9 % + 2 counts): 0.1 µF from 10 µF up, 0.01 below. */
import { describe, expect, test } from 'vitest';
import type { Conversation } from '../people.ts';
import { at, BLOCK, evidence, GOOD, here, typed, WEAK_FAN, WEAK_HERM } from './given.ts';

const part = (print: string, lines: readonly string[], settings = {}): Conversation =>
  typed(at('readings', { look: `clean, 1 cap, ${print}`, settings }), lines);
/** The first verdict; where there is none yet, the question that stands. */
const end = (c: Conversation): string => c.verdicts[0] ?? here(c);
const OL = ' case ol';

describe('given a print, when the sections read so, then the part ends so', () => {
  test.each([
    ['45+5 6% 440', [GOOD], 'capacitor-good', 'HERM: pass'],
    ['45+5 6% 440', [WEAK_HERM], 'section-fails-value', '−19.8\u2009% off the rated 45\u2009µF'],
    ['45+5 6% 440', [WEAK_FAN], 'section-fails-value', '−42.0\u2009% off the rated 5\u2009µF'],
    ['40/5 MFD 6% 440', ['herm 39.4 fan 2.9 hf 2.70 case ol'], 'section-fails-value', 'FAN: fail'],
    // Near the limit from inside: trade figures 38.4 of 40 ±6 %, 93 % inside.
    ['40+5 6% 370', ['herm 38.4 fan 4.95 hf 4.38 case ol'], 'capacitor-conditional-pass', '93\u2009%'],
    ['40+5 6% 370', ['herm 39.0 fan 4.95 hf 4.39 case ol'], 'capacitor-good', 'HERM: pass'],
    // Outside, the limit inside the doubt: once asks for a repeat, outside again replaces, inside passes and says both.
    ['40+5 6% 370', ['herm 37.0 fan 4.91 hf 4.34 case ol'], 'sections', ''],
    ['40+5 6% 370', ['herm 37.4 fan 4.91 hf 4.34 case ol', 'herm 37.3'], 'section-fails-value', '37.4\u2009µF'],
    [
      '40+5 6% 370',
      ['herm 37.4 fan 4.91 hf 4.34 case ol', 'herm 37.9 fan 4.91 hf 4.35 case ol'],
      'capacitor-conditional-pass',
      'Both are recorded',
    ],
    [
      '40+5 6% 370',
      ['herm 37.4 fan 4.91 hf 4.34 case ol', 'herm 36.0 fan 4.91 hf 4.32 case ol'],
      'section-fails-value',
      'HERM: fail',
    ],
    // The habit of ±10 % (36.0) would keep 36.2; the label says no, and both are shown.
    [
      '40+5 6% 370',
      ['herm 36.2 fan 4.91 hf 4.33 case ol'],
      'section-fails-value',
      'habit (36.00–44.00\u2009µF) would keep it. The label decides.',
    ],
    // Without a printed tolerance ±6 % is taken, and said.
    ['45+5 440', [WEAK_HERM], 'section-fails-value', 'No tolerance is printed, so ±6\u2009% is taken.'],
    // Above the limit: asked again, and never called good.
    ['45+5 6% 440', ['herm 49.8 fan 5.03 hf 4.57 case ol'], 'sections', ''],
    [
      '45+5 6% 440',
      ['herm 49.8 fan 5.03 hf 4.57 case ol', 'herm 49.8 fan 5.03 hf 4.57 case ol'],
      'section-too-high',
      'above',
    ],
    // Both out at once: the wires and the C tab first, the part only after.
    ['45+5 6% 440', ['herm 36 fan 3.2 hf 2.94 case ol'], 'wires', ''],
    [
      '45+5 6% 440',
      ['herm 36 fan 3.2 hf 2.94 case ol', 'yes', 'herm 36 fan 3.2 hf 2.94 case ol'],
      'section-fails-value',
      'HERM: fail',
    ],
  ])('%s, %j → %s', (print, lines, verdict, says) => {
    const c = part(print, lines);
    expect(end(c)).toBe(verdict);
    expect(evidence(c)).toContain(says);
  });
});

describe('given 4.52 on FAN of 45+5, when it is asked again, then the third reading decides, not the first', () => {
  test.each([
    ['it was HERM to FAN', 'fan 5.03 hf 4.52', 'capacitor-good', 'FAN reads 5.03\u2009µF'],
    ['it truly is weak', 'fan 4.5 hf 4.09', 'section-fails-value', 'FAN reads 4.5\u2009µF'],
    ['nobody can tell', 'skip no third hand', 'fan-section-undecided', 'HERM: pass'],
  ])('%s: %s → %s', (_, third, verdict, says) => {
    const c = part('45+5 6% 440', ['herm 44.6 fan 4.52 case ol']);
    expect([here(c), c.verdicts]).toEqual(['third', []]);
    typed(c, [third]);
    expect(end(c)).toBe(verdict);
    expect(evidence(c)).toContain(says);
  });
  test.each([
    [
      '80.1 and 4.71, inside the label',
      'herm 80.1 fan 4.71 case ol',
      'fan 5.00 hf 4.706',
      'capacitor-good',
      '5\u2009µF',
    ],
    [
      '80.1 and 4.71 that truly is FAN',
      'herm 80.1 fan 4.71 case ol',
      'fan 4.71 hf 4.45',
      'capacitor-conditional-pass',
      '4.71\u2009µF',
    ],
    [
      '4.883, which a good 5.20 gives on HERM to FAN',
      'herm 80.1 fan 4.883 case ol',
      'fan 5.20 hf 4.883',
      'capacitor-conditional-pass',
      'FAN reads 5.2\u2009µF',
    ],
  ])('given 80+5, when it reads %s, then FAN is asked again', (_, first, third, verdict, says) => {
    const c = part('80+5 6% 440', [first]);
    expect([here(c), c.verdicts]).toEqual(['third', []]);
    typed(c, [third]);
    expect(end(c)).toBe(verdict);
    expect(evidence(c)).toContain(says);
  });
});

describe('given leads that may explain it, when it reads so, then the leads come first', () => {
  const swapped = `herm 5.02 fan 44.8${OL}`;
  const dead = `herm 44.6 fan .02 hf .02${OL}`;
  const over = `herm ol fan 5.03${OL}`;
  test.each([
    ['swapped once', [swapped], 'sections'],
    ['swapped, then right', [swapped, GOOD], 'capacitor-good'],
    ['swapped twice', [swapped, swapped], 'readings-contradict'],
    ['next to nothing on FAN', [dead], 'wires'],
    ['the same with the wires seen to', [dead, 'yes', dead], 'section-open'],
    ['OL in µF', [over], 'wires'],
    ['OL again with the wires seen to', [over, 'yes', over], 'section-ohms'],
    ['and ohms steady near zero', [over, 'yes', over, 'herm 0.3 ohm fan ol'], 'section-shorted'],
    ['and ohms that climb', [over, 'yes', over, 'herm ol fan ol'], 'value-undecided'],
    ['three readings that contradict', [`herm 44.6 fan 5.03 hf 3.1${OL}`], 'sections'],
  ])('%s → %s', (_, lines, verdict) => {
    expect(end(part('45+5 6% 440', lines))).toBe(verdict);
  });
});

describe('given a reading exactly on the limit 37.6 µF, when it is spelled so, then it is in', () => {
  test.each(['37.6', '37.60 µF', '37.6 uf', '37.6 mfd', '37600 nF', '0.0376 mF', '37,6'])('herm %s', (herm) => {
    const plain = part('40+5 6% 370', [`herm ${herm} fan 4.91 hf 4.34 case ol`], { rule: 'plain' });
    expect([end(plain), evidence(plain)]).toEqual(['capacitor-good', expect.stringContaining('HERM reads 37.6')]);
    expect(end(part('40+5 6% 370', [`herm ${herm} fan 4.91 hf 4.34 case ol`]))).toBe('capacitor-conditional-pass');
  });
  test('the upper limit is in as well, one hundredth beyond is out', () => {
    expect(end(part('40+5 6% 370', ['herm 42.4 fan 4.91 hf 4.4 case ol'], { rule: 'plain' }))).toBe('capacitor-good');
    expect(end(part('40+5 6% 370', ['herm 37.59 fan 4.91 hf 4.34 case ol'], { rule: 'plain' }))).not.toBe(
      'capacitor-good',
    );
  });
  test('38.4 mF may be a meter that prints mF for µF, so it is asked and nothing is kept', () => {
    const c = part('40+5 6% 370', []).type('herm 38.4 mF fan 4.91 case ol');
    expect([c.refusal?.code, c.refusal?.parts, c.kinds]).toEqual(['which-unit', ['herm'], []]);
  });
});

describe('given both sections good, when the case reads so, then the part ends so', () => {
  const both = 'herm 44.6 fan 5.03 hf 4.52';
  test.each([
    ['0.4 MΩ twice', [`${both} case 0.4 M`, `${both} case 0.4 M`], 'leak-to-case'],
    ['0.4 MΩ once', [`${both} case 0.4 M`], 'sections'],
    ['0.4 MΩ, then OL', [`${both} case 0.4 M`, `${both} case ol`], 'capacitor-good'],
    ['5 MΩ, wiped, still 6', [`${both} case 5 M`, `${both} case 6 M`], 'leak-to-case'],
    ['5 MΩ, wiped, then OL', [`${both} case 5 M`, `${both} case ol`], 'capacitor-good'],
    ['20 MΩ is not above 20', [`${both} case 20 M`], 'sections'],
    ['left out', [both], 'case'],
    ['asked alone, OL', [both, 'ol'], 'capacitor-good'],
    ['asked alone, skipped', [both, 'skip rim under paint'], 'case-undecided'],
  ])('%s → %s', (_, lines, verdict) => {
    expect(end(part('45+5 6% 440', lines))).toBe(verdict);
  });
  test('a bare 5 decides differently in Ω, kΩ and MΩ, so its unit is asked', () => {
    expect(part('45+5 6% 440', []).type(`${both} case 5`).refusal?.code).toBe('which-unit');
  });
});

describe('given what is seen before a reading', () => {
  test('when both readings equal the label to the last digit, then it is asked whether they were read', () => {
    const c = part('45+5 6% 440', ['herm 45 fan 5 hf 4.5 case ol']);
    expect([here(c), c.verdicts]).toEqual(['exact', []]);
    expect(end(typed(c, ['yes']))).toBe('capacitor-good');
    expect(evidence(c)).toContain('equal the label to the last digit');
    expect(here(part('45+5 6% 440', ['herm 45 fan 5 hf 4.5 case ol', 'no']))).toBe('sections');
  });
  test.each([
    ['bulged', 'condemned-by-sight'],
    ['oil', 'condemned-by-sight'],
    ['vented', 'condemned-by-sight'],
    ['burnt-through', 'condemned-by-sight'],
    ['rust', undefined],
    ['loose', undefined],
  ])('when it looks %s, then by sight it is %s', (seen, verdict) => {
    const c = at('look').tap({ condition: [seen], count: '1', print: '45+5 6% 440' });
    expect(typed(c, ['121 / 0 0 0 / 0 0 / 121', '9.3 / 0 0 0 / 9.3', BLOCK, 'no diagram', 'done']).verdicts[0]).toBe(
      verdict,
    );
  });
  test('when nobody can read the print, then there is no verdict on the value', () => {
    expect(
      end(typed(at('readings', { look: 'clean, 1 cap' }), ['skip gone', 'skip not there either', 'herm ol fan ol'])),
    ).toBe('rating-unknown');
  });
  test('when the wires don’t come off, then no reading counts', () => {
    expect(end(typed(at('wires'), ['They don’t come off']))).toBe('wires-stuck');
  });
});

describe('common practice, no single source', () => {
  test('C has the most tabs (4), HERM 3, FAN 1, and three readings have to prove it', () => {
    const c = typed(at('wires'), ['unreadable', '1 4 3']);
    expect(here(c)).toBe('pairs');
    // First FAN, second C, third HERM: FAN to C 5.03, FAN to HERM 4.52, C to HERM 44.6.
    typed(c, ['5.03 4.52 44.6']);
    expect([here(c), c.notices]).toEqual([
      'sections',
      expect.stringContaining('terminal 2 is C, terminal 3 is HERM, terminal 1 is FAN'),
    ]);
    expect(here(typed(c, ['herm 44.6 fan 5.03 case ol']))).toBe('third');
    expect(end(typed(c, ['fan 5.03 hf 4.52']))).toBe('capacitor-good');
    expect(end(typed(at('wires'), ['unreadable', '4 3 3', 'skip no range']))).toBe('terminals-unknown');
  });
  test('25+5 µF ±5 % reads 24.6 and 4.9: both pass', () => {
    const c = part('25+5 uf 5% 370', ['herm 24.6 fan 4.9 case ol']);
    expect([end(c), evidence(c)]).toEqual(['capacitor-good', expect.stringMatching(/HERM: pass[\s\S]*FAN: pass/)]);
  });
  test('the larger value is the compressor’s, in whatever order it is printed', () => {
    expect(evidence(part('5/45 MFD 440', [WEAK_HERM]))).toContain(
      'HERM reads 36.1\u2009µF, −19.8\u2009% off the rated 45\u2009µF',
    );
  });
  test('the label’s ±5 % governs where the habit allows ±10 %', () => {
    const c = part('25+5 uf 5% 370', ['herm 23.0 fan 4.9 hf 4.04 case ol']);
    expect([end(c), evidence(c)]).toEqual(['section-fails-value', expect.stringContaining('would keep it')]);
  });
});
