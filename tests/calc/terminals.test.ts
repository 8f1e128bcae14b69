import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seriesMicrofarads } from '../../engine/calc/series.ts';
import { type Naming, type Terminal, terminalsOf } from '../../engine/calc/terminals.ts';
import { ASSUMED, METER } from '../judgements/fixture.ts';

const of = (xy: number | string, xz: number | string, yz: number | string, meter = METER) =>
  terminalsOf(meter, { xy, xz, yz });
const name = ({ c, herm, fan }: Naming): string => `${c}${herm}${fan}`;
const names = (found: ReturnType<typeof of>): string => `${found.is} ${found.fitting.map(name).join(' ')}`.trim();

describe('three readings of an unmarked dual part', () => {
  test.each([
    [45, 5, '4.5', 'determined XYZ'],
    [5, 45, '4.5', 'determined XZY'],
    [45, '4.5', 5, 'determined YXZ'],
    ['4.5', 45, 5, 'determined ZXY'],
    [5, '4.5', 45, 'determined YZX'],
    ['4.5', 5, 45, 'determined ZYX'],
  ])('%s, %s, %s: %s', (xy, xz, yz, expected) => {
    expect(names(of(xy, xz, yz))).toBe(expected);
  });
  test('the assumed meter lets a wrong naming of 45+5 fit too; a known one doesn’t', () => {
    expect(names(of(45, 5, '4.5', ASSUMED))).toBe('ambiguous XYZ YXZ');
    expect(name(of(45, 5, '4.5', ASSUMED).nearest)).toBe('XYZ');
  });
  test('the naming that fits best stands first, whatever the terminals are called', () => {
    const found = of('4.5', 45, 5, ASSUMED);
    expect(names(found)).toBe('ambiguous ZXY XZY');
    expect(name(found.nearest)).toBe('ZXY');
  });
  test('two equal sections: C is known, HERM from FAN isn’t', () => {
    expect(names(of(30, 30, 15))).toBe('ambiguous XYZ XZY');
    expect(names(of(30, '30.2', '15.1'))).toBe('ambiguous XZY XYZ');
  });
  test('sections whose doubts only touch can still change places', () => {
    // ±0.5 µF on every reading.
    const meter = { ...METER, percent: '0', counts: 5, fine: '0.1', coarse: '0.1' };
    expect(names(of(31, 30, '15.245', meter))).toBe('ambiguous XYZ XZY');
    expect(names(of('31.0001', 30, '15.245', meter))).toBe('determined XYZ');
  });
  test('one section open: the other two readings are one lead and its neighbour', () => {
    expect(names(of(45, '0.02', '0.02'))).toBe('ambiguous XYZ YXZ');
  });
  test('no naming fits: a wire on, a lead that slipped', () => {
    const found = of(45, 5, 5);
    expect(names(found)).toBe('does-not-fit');
    expect(of(60, 30, 30).is).toBe('does-not-fit');
    expect(of(45, 5, '4.8').is).toBe('does-not-fit');
  });
  test('the residual is HERM–FAN less the series', () => {
    expect(of(45, 5, '4.55').fitting[0]?.residualMicrofarads.toNumber()).toBe(0.05);
    expect(of(45, 5, '4.45').fitting[0]?.residualMicrofarads.toNumber()).toBe(-0.05);
  });
  test('readings that lie at the edge of the doubt still fit', () => {
    // HERM–FAN 4.6 may be as low as 4.4926; 45 and 5 within theirs make up to 4.6050 at most.
    const most = seriesMicrofarads('46.055', '5.115');
    const third = most.plus('0.02').div('0.981');
    expect(of(45, 5, third.toFixed(20)).is).toBe('does-not-fit');
    expect(of(45, 5, third.toDecimalPlaces(20, 1).minus('1e-20').toFixed(20)).is).toBe('determined');
  });
});

const section = fc.integer({ min: 20, max: 900 }).map((n) => n / 10);
const ORDERS: readonly (readonly [Terminal, Terminal, Terminal])[] = [
  ['X', 'Y', 'Z'],
  ['X', 'Z', 'Y'],
  ['Y', 'X', 'Z'],
  ['Y', 'Z', 'X'],
  ['Z', 'X', 'Y'],
  ['Z', 'Y', 'X'],
];

describe('whatever the sections', () => {
  test('their own three readings always allow the true naming', () => {
    fc.assert(
      fc.property(section, section, fc.constantFrom(METER, ASSUMED), (a, b, meter) => {
        const [herm, fan] = [Math.max(a, b), Math.min(a, b)];
        const found = terminalsOf(meter, { xy: herm, xz: fan, yz: seriesMicrofarads(herm, fan) });
        expect(found.fitting.map(name)).toContain('XYZ');
        expect(name(found.nearest)).toBe('XYZ');
      }),
    );
  });
  test('numbering the terminals differently names the same ones', () => {
    fc.assert(
      fc.property(section, section, section, fc.constantFrom(...ORDERS), (a, b, d, order) => {
        const at = { XY: a, XZ: b, YZ: d };
        const value = (p: Terminal, q: Terminal): number => at[[p, q].sort().join('') as keyof typeof at];
        const [x, y, z] = order;
        const one = terminalsOf(METER, { xy: a, xz: b, yz: d });
        const other = terminalsOf(METER, { xy: value(x, y), xz: value(x, z), yz: value(y, z) });
        const back: Record<Terminal, Terminal> = { X: x, Y: y, Z: z };
        const renamed = other.fitting.map((n) => `${back[n.c]}${back[n.herm]}${back[n.fan]}`);
        expect(other.is).toBe(one.is);
        expect(renamed.sort()).toEqual(one.fitting.map(name).sort());
      }),
    );
  });
  test('a coarser meter allows no fewer namings', () => {
    fc.assert(
      fc.property(section, section, section, (a, b, d) => {
        const fine = of(a, b, d, METER).fitting.map(name);
        const coarse = of(a, b, d, ASSUMED).fitting.map(name);
        expect(coarse).toEqual(expect.arrayContaining(fine));
      }),
    );
  });
});
