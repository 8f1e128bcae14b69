/** The air side, the condenser, the circuit and the reversing valve: what each reading decides, and what it doesn’t. */
import { describe, expect, test } from 'vitest';
import type { Parts } from '../../engine/schema.ts';
import { choice, parts } from './fixture.ts';
import { run } from './run.ts';

const F = (of: Record<string, number | string>): Parts => parts('°F', of);
const seen = (...what: string[]): Parts => choice('seen', ...what);
const plain = (text: string | undefined): string => (text ?? '').replaceAll('\u2009', ' ');

describe('the air side', () => {
  const at = (supply: number): Parts => F({ return: 75, wb: 63, supply });
  test.each([
    ['a clogged filter and a high split', seen('filter'), at(50), 'short'],
    ['a clogged filter alone condemns nothing', seen('filter'), at(56), 'dirty'],
    ['nor with a weak split', seen('filter'), at(63), 'dirty-weak'],
    ['a high split alone doesn’t say where', seen('nothing'), at(50), 'short-elsewhere'],
    ['the same where nobody was sure', seen('unsure'), at(50), 'short-elsewhere'],
    ['nothing seen and a usual split', seen('nothing'), at(56), 'within'],
    ['a usual split where nobody looked', seen('unsure'), at(56), 'undecided'],
    ['a weak split', seen('nothing'), at(63), 'weak'],
    ['ice is none of it', seen('ice'), at(56), 'undecided'],
  ])('%s: %3$s', (_, look, air, outcome) => {
    expect(run('airflow', { look, air }).outcome).toBe(outcome);
  });
  test('all that was seen is named; nothing seen beside something unsure was not looked at in full', () => {
    const named = (look: Parts, supply: number) => run('airflow', { look, air: at(supply) }).findings.at(-1)?.reading;
    expect(named(seen('filter', 'indoor-coil'), 50)).toBe('filter clogged, indoor coil dirty');
    expect(named(seen('nothing'), 56)).toBe('nothing found');
    expect(named(seen('nothing', 'unsure'), 56)).toBe('not looked at in full');
    expect(run('airflow', { look: seen('nothing', 'unsure'), air: at(56) }).outcome).toBe('undecided');
  });
});

describe('the condenser', () => {
  const lines = (liquid: number): Parts => F({ liquid, outdoor: 90 });
  test.each([
    ['matted and 25.1 °F above the air', seen('matted'), lines(115.1), 'short-of-air'],
    ['matted and 25 °F', seen('matted'), lines(115), 'dirty'],
    ['25.1 °F and nothing seen', seen('nothing'), lines(115.1), 'warm'],
    ['20 °F', seen('nothing'), lines(110), 'normal'],
    ['20.1 °F', seen('nothing'), lines(110.1), 'warm'],
    ['5 °F', seen('nothing'), lines(95), 'normal'],
    ['4.9 °F', seen('nothing'), lines(94.9), 'cool'],
    ['nothing seen, no temperatures', seen('nothing'), {}, 'undecided'],
  ])('%s: %3$s', (_, look, given, outcome) => {
    expect(run('condenser', { look: { ...look, ...given } }).outcome).toBe(outcome);
  });
});

describe('the circuit', () => {
  const which: Parts = { ...choice('refrigerant', 'r-410a'), ...choice('metering', 'txv') };
  const ready = choice('ok', 'yes');
  const at = (suction: number, liquid: number, big: number, small: number, more: Parts = {}): Parts => ({
    ...parts('psig', { suction, liquid }),
    ...F({ suctionLine: big, liquidLine: small, return: 80, wb: 67, outdoor: 82 }),
    ...more,
  });
  const of = (readings: Parts, given: Parts = ready, kind: Parts = which) =>
    run('circuit', { which: kind, readings, ready: given });

  // R-410A, 130 psig and 55 °F: 10.05 °F superheat; 340 psig and 95 °F: 9.61 °F subcooling (definitions, saturation of
  // Lemmon’s pseudo-pure equation), with the saturation kept to a tenth.
  test('the worked figures of a published definition', () => {
    const { outcome, findings } = of(at(130, 340, 55, 95));
    expect(findings.map((f) => `${f.name}: ${plain(f.reading)} ${f.word}`)).toEqual([
      'Superheat, R-410A: 10 °F normal',
      'Subcooling, R-410A: 9.6 °F normal',
      'Suction saturation under the return air: 35 °F normal',
      'Condensing above the outdoor air: 22.6 °F normal',
      'Pattern: suction normal, head normal, superheat normal, subcooling normal normal',
    ]);
    expect(outcome).toBe('normal');
  });

  test.each([
    ['low, low, high, low', at(80, 230, 48, 76), 'undercharge'],
    ['low, normal, high, high', at(80, 340, 48, 87), 'restriction'],
    ['low, normal, low, normal', at(90, 340, 32, 94), 'airflow'],
    ['high, high, normal, high', at(160, 480, 67, 106), 'overcharge'],
    ['high, high, normal, normal', at(160, 480, 67, 118), 'condenser-air'],
    ['high, low, normal, low', at(165, 240, 68, 78), 'not-pumping'],
    ['high, normal, low, low', at(165, 340, 61, 102), 'overfeeding'],
    ['superheat alone high', at(130, 340, 65, 93), 'metering'],
    ['superheat alone low', at(130, 340, 49, 93), 'metering'],
    ['head alone high fits nothing', at(130, 430, 55, 111), 'undecided'],
  ])('%s: %2$s', (_, readings, outcome) => {
    expect(of(readings).outcome).toBe(outcome);
  });

  test('a figure within 1 °F of its limit counts both ways: the causes differ, so it stays open', () => {
    // Bubble at 230 psig is 78.2 °F: 8.9 °F under it could be low or normal, 6.9 °F is low either way.
    const near = of(at(80, 230, 48, 69.3));
    expect(near.outcome).toBe('undecided');
    expect(plain(near.findings.at(-1)?.text)).toBe(
      'Too near a limit: subcooling. Within 1 °F it could be either, and the causes differ.',
    );
    expect(of(at(80, 230, 48, 71.3)).outcome).toBe('undercharge');
    // Dew at 80 psig is 20.9 °F: 12.1 °F over it could be normal or high.
    expect(plain(of(at(80, 230, 33, 69.3)).findings.at(-1)?.text)).toMatch(
      /^Too near a limit: superheat and subcooling\. /,
    );
  });

  test('a suction line colder than what boils in it, by more than 3 °F, concludes nothing', () => {
    // Dew at 130 psig is 45 °F.
    expect(of(at(130, 340, 42.1, 95)).outcome).toBe('metering');
    const { outcome, findings } = of(at(130, 340, 41.9, 95));
    expect(outcome).toBe('undecided');
    expect(findings.at(-1)).toMatchObject({ name: 'Pattern', reading: 'open', word: 'not judged' });
  });

  test('the label’s subcooling comes before the habit', () => {
    const labelled = { ...which, ...parts('Δ°F', { target: 18 }) };
    expect(of(at(130, 340, 55, 95), ready, labelled).outcome).toBe('undecided');
    expect(of(at(130, 340, 55, 86), ready, labelled).outcome).toBe('normal');
  });

  test.each([
    ['not all is ready', at(80, 230, 48, 76), choice('ok', 'no'), which],
    ['nobody said so', at(80, 230, 48, 76), {}, which],
    ['the refrigerant is not known', at(80, 230, 48, 76), ready, choice('refrigerant', 'other')],
    ['what meters the refrigerant is not known', at(80, 230, 48, 76), ready, choice('refrigerant', 'r-410a')],
    ['the liquid pressure is missing', at(80, 230, 48, 76, { liquid: { kind: 'untaken' } }), ready, which],
  ])('nothing is concluded where %s', (_, readings, given, kind) => {
    expect(of(readings, given, kind).outcome).toBe('undecided');
  });

  test('a fixed orifice is judged by wet-bulb and outdoor air', () => {
    // (3·67 − 80 − 82) / 2 = 19.5 °F, ±5.
    const fixed = { ...choice('refrigerant', 'r-410a'), ...choice('metering', 'fixed') };
    expect(of(at(130, 340, 64, 93), ready, fixed).outcome).toBe('normal');
    expect(of(at(130, 340, 55, 93), ready, fixed).outcome).toBe('metering');
  });
});

describe('a compressor that doesn’t pump', () => {
  const ruled = choice('ruled', 'valve', 'unloader', 'rotation');
  const plate = parts('A', { rla: 20 });
  test.each([
    ['under 60 % of RLA and all ruled out', 11.99, ruled, plate, 'shown'],
    ['60 % of RLA', 12, ruled, plate, 'not-shown'],
    ['rotation not ruled out', 8, choice('ruled', 'valve', 'unloader'), plate, 'undecided'],
    ['no RLA', 8, ruled, {}, 'undecided'],
  ])('%s: %4$s', (_, comp, out, rla, outcome) => {
    expect(run('not-pumping', { amps: parts('A', { comp }), ruled: out, plate: rla }).outcome).toBe(outcome);
  });
});

describe('the reversing valve', () => {
  test.each([
    ['o', 20.4, true, 'right'],
    ['o', 20.39, true, 'low'],
    ['o', 0, true, 'wrong'],
    ['o', 0, false, 'wait'],
    ['b', 0, false, 'right'],
    ['b', 24, true, 'wrong'],
    ['unsure', 24, true, 'undecided'],
  ])('%s with %d V: %3$s', (kind, solenoid, waited, outcome) => {
    const given = {
      wiring: choice('choice', kind),
      readings: parts('V', { solenoid }),
      waited: choice('ok', waited ? 'yes' : 'no'),
    };
    expect(run('reversing-command', given).outcome).toBe(outcome);
  });

  test.each([
    [{ vapour: 52, liquid: 98, in: 50, out: 53 }, 'cooling'],
    [{ vapour: 52, liquid: 98, in: 50, out: 53.1 }, 'bypass'],
    [{ vapour: 150, liquid: 95, in: 50, out: 51 }, 'stuck'],
  ])('lines %o: %s', (lines, outcome) => {
    expect(run('valve-lines', { lines: F(lines) }).outcome).toBe(outcome);
  });

  test.each([
    [10, 'good'],
    [40, 'good'],
    [40.1, 'between'],
    [4, 'between'],
    [3.9, 'shorted'],
    ['OL', 'open'],
  ])('a solenoid of %s Ω: %s', (solenoid, outcome) => {
    expect(run('reversing-coil', { readings: parts('Ω', { solenoid }) }).outcome).toBe(outcome);
  });
});

test('electric heat has to draw nothing, and a fall of more than 3 °F is a restriction', () => {
  expect(run('heat-strips', { amps: parts('A', { heat: 0.5 }) }).outcome).toBe('off');
  expect(run('heat-strips', { amps: parts('A', { heat: 0.51 }) }).outcome).toBe('on');
  expect(run('drier', { drier: F({ before: 96, after: 93 }) }).outcome).toBe('free');
  expect(run('drier', { drier: F({ before: 96, after: 92.9 }) }).outcome).toBe('restricted');
});
