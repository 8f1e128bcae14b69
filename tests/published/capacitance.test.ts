/** Run capacitors: limits by the label, µF from amps and volts, series and parallel, three readings; with oracles. */
import { microfaradsUnderLoad } from '../../engine/calc/amps.ts';
import { doubtMicrofarads, plainWord, shareInside, windowMicrofarads, wordOf } from '../../engine/calc/doubt.ts';
import { Exact } from '../../engine/calc/exact.ts';
import { parallelMicrofarads, seriesMicrofarads } from '../../engine/calc/series.ts';
import { ratedRangeVolts } from '../../engine/calc/supply.ts';
import { terminalsOf } from '../../engine/calc/terminals.ts';
import { deviationPercent, limitsMicrofarads } from '../../engine/calc/tolerance.ts';
import { ASSUMED, labelled, METER, parts } from '../judgements/fixture.ts';
import { run } from '../judgements/run.ts';
import { type Check, checks } from './check.ts';
import { byMathjs, computed } from './mathjs.ts';
import { between, solveAc, type Volts } from './spice.ts';

const phys = (
  what: string,
  input: string,
  published: string,
  unit: string,
  ours: Check['ours'],
  more: Partial<Check> = {},
): Check => ({
  ...{ what, input, published, unit, ours, source: 'physics, arithmetic', status: 'PHYS' as const },
  ...more,
});
/** The meter of the trade's examples: ±(1.9 % + 2 × 0.1 µF). */
const COARSE = { ...METER, fine: '0.1' };

const limits = (rated: string, percent: string, low: string, high: string): Check[] => {
  const range = limitsMicrofarads(rated, percent, percent);
  const input = `${rated} µF ±${percent} %`;
  return [
    phys('lower limit', input, low, 'µF', () => range.low, { oracle: byMathjs(`${rated}*(1-${percent}/100)`) }),
    phys('upper limit', input, high, 'µF', () => range.high, { oracle: byMathjs(`${rated}*(1+${percent}/100)`) }),
  ];
};

const TRAINING = 'trade-training page, worked example (secondary source)';
const TRADE = 'trade page, worked example (secondary source)';
const load = (amps: string, volts: string, hertz: string, published: string, more: Partial<Check> = {}): Check =>
  phys(
    'µF from amps and volts',
    `${amps} A, ${volts} V, ${hertz} Hz`,
    published,
    'µF',
    () => microfaradsUnderLoad(amps, volts, hertz),
    {
      oracle: byMathjs(`${amps}/(2*pi*${hertz}*${volts})*1e6`),
      ...more,
    },
  );
const constant = (hertz: number) => microfaradsUnderLoad(1, 1, hertz);
const off = (rounded: number) => constant(60).minus(rounded).times(100).div(constant(60));

checks('capacitance: limits by the label', [
  ...limits('45', '6', '42.30', '47.70'),
  ...limits('5', '6', '4.70', '5.30'),
  ...limits('7.5', '6', '7.05', '7.95'),
  ...limits('35', '6', '32.90', '37.10'),
  ...limits('45', '5', '42.75', '47.25'),
  ...limits('45', '10', '40.50', '49.50'),
  ...limits('40', '6', '37.60', '42.40'),
  phys('a reading on the limit', '42.30 of 45 µF ±6 %', 'pass', '', () =>
    plainWord('42.30', limitsMicrofarads(45, 6, 6)),
  ),
  phys('a reading on the limit', '47.70 of 45 µF ±6 %', 'pass', '', () =>
    plainWord('47.70', limitsMicrofarads(45, 6, 6)),
  ),
  phys('a hair under the limit', '42.2999 of 45 µF ±6 %', 'fail', '', () =>
    plainWord('42.2999', limitsMicrofarads(45, 6, 6)),
  ),
  phys('highest permissible volts', '1.10 × 440 V', '484', 'V', () => ratedRangeVolts(440, 10).high, {
    source: 'component data sheet to GB/T 3667.1, as IEC 60252-1 (secondary source)',
    status: 'V2',
  }),
  phys(
    'a usual field meter',
    '24.6 and 4.9 of 25+5 µF ±5 %',
    'pass',
    '',
    () => {
      const label = labelled('25+5', { below: '5', above: '5' });
      return run('section-values', { label, readings: parts('µF', { herm: 24.6, fan: 4.9 }) }).outcome;
    },
    { source: 'common practice, no single source', status: 'CP' },
  ),
]);

const circuit = ['V1 1 0 ac 240', 'R1 1 2 8', 'L1 2 3 80m', 'C1 3 0 45u'];
const phasor = 'w=2*pi*60; z=8+i*w*0.08-i/(w*45e-6);';
/** Solved once, asked often. */
const once = (lines: readonly string[]): (() => Promise<Volts>) => {
  let solution: Promise<Volts> | undefined;
  return () => (solution ??= solveAc(lines));
};
const solution = once(circuit);
/** Amps through 8 Ω and volts across the capacitor of the check circuit. */
const solved = async () => {
  const volts = await solution();
  return { amps: between(volts, '1', '2') / 8, volts: between(volts, '3', '0') };
};
/**
 * A PSC motor under load, parameters invented: each winding R and L with the volts that the turning rotor induces in it;
 * the start winding through 45 µF, a fan beside it through 5 µF on the same C. The formula knows none of that.
 */
const motor = [
  ...['V1 l 0 ac 240', 'Rr l r1 0.9', 'Lr r1 r2 9m', 'Er r2 0 ac 195 -12'],
  ...['C1 l c 45u', 'Rs c s1 2.7', 'Ls s1 s2 30m', 'Es s2 0 ac 210 68'],
  ...['C2 l f 5u', 'Rf f f1 31', 'Lf f1 f2 0.25', 'Ef f2 0 ac 205 75'],
].map((line) => line.replace(/^E(\w)/, 'VE$1'));
const inWinding = (
  farads: string,
  ohms: number,
  henries: number,
  volts: number,
  degrees: number,
  want: string,
): string =>
  `w=2*pi*60; e=${volts}*exp(i*${degrees}*pi/180); zc=-i/(w*${farads}); j=(240-e)/(zc+${ohms}+i*w*${henries}); ${want}`;
const running = once(motor);
const psc = async (node: string, inner: string, ohms: number) => {
  const volts = await running();
  return { amps: between(volts, node, inner) / ohms, volts: between(volts, 'l', node) };
};
const pscChecks = (
  name: string,
  node: string,
  inner: string,
  ohms: number,
  henries: number,
  emf: number,
  degrees: number,
  microfarads: string,
): Check[] => {
  const want = (of: string) => inWinding(`${microfarads}e-6`, ohms, henries, emf, degrees, of);
  const source = 'phasors of an invented motor: ngspice and mathjs';
  return [
    phys(
      `PSC motor under load, ${name}`,
      'amps and volts by ngspice',
      `${microfarads}.0000`,
      'µF',
      async () => {
        const at = await psc(node, inner, ohms);
        return microfaradsUnderLoad(at.amps, at.volts, 60).toFixed(4);
      },
      { source, oracle: byMathjs(want('abs(j)/(w*abs(j*zc))*1e6'), 1e-4) },
    ),
    phys(
      `PSC motor under load, ${name}`,
      'ours from mathjs’s phasors, against ngspice’s',
      `${microfarads}.0000`,
      'µF',
      () => microfaradsUnderLoad(computed(want('abs(j)')), computed(want('abs(j*zc)')), 60).toFixed(4),
      {
        source,
        oracle: {
          name: 'ngspice',
          says: async () => {
            const at = await psc(node, inner, ohms);
            return (at.amps * 1e6) / (2 * Math.PI * 60 * at.volts);
          },
          within: 1e-4,
        },
      },
    ),
    phys(
      `PSC motor under load, ${name}, line volts instead`,
      '240 V',
      `${microfarads}.0`,
      'µF',
      async () => microfaradsUnderLoad((await psc(node, inner, ohms)).amps, 240, 60).toFixed(1),
      { source: 'a usual slip, arithmetic', wrong: true },
    ),
  ];
};

checks('capacitance: from amps and volts', [
  phys('constant 10⁶/(2πf)', '60 Hz', '2652.582', '', () => constant(60), { oracle: byMathjs('1e6/(2*pi*60)') }),
  phys('constant 10⁶/(2πf)', '50 Hz', '3183.099', '', () => constant(50), { oracle: byMathjs('1e6/(2*pi*50)') }),
  phys('the trade’s constant is low by', '2652', '0.022', '%', () => off(2652)),
  phys('the trade’s constant is low by', '2653', '-0.016', '%', () => off(2653)),
  phys('the trade’s constant is low by', '2650', '0.10', '%', () => off(2650)),
  phys('constant 10⁶/(2πf)', '60 Hz', '2650', '', () => constant(60), {
    source: 'a rounded constant in circulation',
    wrong: true,
  }),
  load('8.3', '295.4', '60', '74.5', { source: TRAINING, status: 'V2' }),
  // Printed truncated: 2652·1.1/383 = 7.6167.
  load('1.1', '383', '60', '7.61', { source: `${TRADE}; printed truncated`, status: 'V2', within: 0.01 }),
  load('8.3', '295.4', '60', '74.5309'),
  load('1.1', '383', '60', '7.6184'),
  load('5.852787', '345', '60', '45.000'),
  load('0.622035', '330', '60', '5.000'),
  load('5', '400', '50', '39.7887'),
  phys('74.5 µF on a label of', '70 µF ±6 %', 'fail', '', () => plainWord('74.5', limitsMicrofarads(70, 6, 6)), {
    source: TRAINING,
    status: 'V2',
  }),
  load('8.032686', '473.497', '60', '45.000', {
    oracle: {
      name: 'ngspice',
      says: async () => {
        const at = await solved();
        return (at.amps * 1e6) / (2 * Math.PI * 60 * at.volts);
      },
      within: 1e-4,
    },
  }),
  phys(
    'check circuit 8 Ω, 80 mH, 45 µF at 240 V 60 Hz',
    'amps and volts by ngspice',
    '45.0000',
    'µF',
    async () => {
      const at = await solved();
      return microfaradsUnderLoad(at.amps, at.volts, 60).toFixed(4);
    },
    { oracle: byMathjs(`${phasor} abs(240/z)/(w*abs(240/z/(i*w*45e-6)))*1e6`, 1e-4) },
  ),
  phys(
    'check circuit, amps by ngspice',
    'against the published phasors',
    '8.032686',
    'A',
    async () => (await solved()).amps.toFixed(6),
    { oracle: byMathjs(`${phasor} abs(240/z)`, 1e-5) },
  ),
  phys(
    'check circuit, volts across the capacitor',
    'by ngspice',
    '473.497',
    'V',
    async () => (await solved()).volts.toFixed(3),
    { oracle: byMathjs(`${phasor} abs(240/z/(i*w*45e-6))`, 1e-3) },
  ),
  phys(
    'check circuit, |Z|',
    '240 V over the amps of ngspice',
    '29.8779',
    'Ω',
    async () => (240 / (await solved()).amps).toFixed(4),
    { oracle: byMathjs(`${phasor} abs(z)`, 1e-4) },
  ),
  load('8.032686', '240', '60', '88.781'),
  load('8.032686', '240', '60', '45.000', {
    source: 'line volts in place of the capacitor’s, a usual slip: 97 % too much',
    wrong: true,
  }),
  ...pscChecks('HERM', 'c', 's1', 2.7, 0.03, 210, 68, '45'),
  ...pscChecks('FAN', 'f', 'f1', 31, 0.25, 205, 75, '5'),
]);

const pair = (a: string, b: string, series: string, parallel: string): Check[] => [
  phys('series', `${a} and ${b} µF`, series, 'µF', () => seriesMicrofarads(a, b), {
    oracle: byMathjs(`1/(1/${a}+1/${b})`),
  }),
  phys('parallel', `${a} and ${b} µF`, parallel, 'µF', () => parallelMicrofarads(a, b), {
    oracle: byMathjs(`${a}+${b}`),
  }),
];
const reads = (herm: number, fan: number, more: Record<string, number> = {}, print = '45+5') =>
  run('section-values', { label: labelled(print), readings: parts('µF', { herm, fan, ...more }) }).outcome;
/** Where FAN may be HERM–FAN by the known meter, HERM read as rated. */
const band = (herm: number, end: 'low' | 'high') => {
  const at = seriesMicrofarads(herm, end === 'low' ? '4.7' : '5.3');
  return end === 'low' ? at.minus(doubtMicrofarads(METER, at)) : at.plus(doubtMicrofarads(METER, at));
};
const naming = (meter: typeof METER, xy: string, xz: string, yz: string): string => {
  const found = terminalsOf(meter, { xy, xz, yz });
  return found.is === 'determined'
    ? `C ${found.nearest.c}, HERM ${found.nearest.herm}, FAN ${found.nearest.fan}`
    : found.is;
};

checks('capacitance: series, parallel and three readings', [
  ...pair('45', '5', '4.500', '50'),
  ...pair('35', '5', '4.375', '40'),
  ...pair('40', '7.5', '6.315789', '47.5'),
  ...pair('80', '7.5', '6.857143', '87.5'),
  phys('series', '80 and 5 µF', '4.706', 'µF', () => seriesMicrofarads(80, 5), { oracle: byMathjs('80*5/85') }),
  phys('series', '80 and 5.20 µF', '4.883', 'µF', () => seriesMicrofarads(80, '5.20'), {
    oracle: byMathjs('80*5.2/85.2'),
  }),
  phys('series', '44.6 and 5.03 µF', '4.520', 'µF', () => seriesMicrofarads('44.6', '5.03'), {
    oracle: byMathjs('44.6*5.03/49.63'),
  }),
  phys('series', '36.1 and 5.02 µF', '4.407', 'µF', () => seriesMicrofarads('36.1', '5.02'), {
    oracle: byMathjs('36.1*5.02/41.12'),
  }),
  phys('series', '39.4 and 2.9 µF', '2.701', 'µF', () => seriesMicrofarads('39.4', '2.9'), {
    oracle: byMathjs('39.4*2.9/42.3'),
  }),
  phys('series', '45 and 4.5 µF', '4.09', 'µF', () => seriesMicrofarads(45, '4.5'), {
    oracle: byMathjs('45*4.5/49.5'),
  }),
  // Printed "about".
  phys('HERM–FAN band, lower end', '45+5 µF', '4.16', 'µF', () => band(45, 'low'), { within: 0.01 }),
  phys('HERM–FAN band, upper end', '45+5 µF', '4.85', 'µF', () => band(45, 'high'), { within: 0.01 }),
  phys('HERM–FAN band, lower end', '80+5 µF', '4.34', 'µF', () => band(80, 'low'), { within: 0.01 }),
  phys('HERM–FAN band, upper end', '80+5 µF', '5.08', 'µF', () => band(80, 'high'), { within: 0.01 }),
  phys('leads on HERM–FAN condemn nothing', 'HERM 4.5, FAN 5.03 on 45+5', 'ask-third', '', () => reads(4.5, 5.03), {
    source: 'plausibility rule, our setting',
    status: 'CHOICE',
  }),
  phys('a FAN that may be HERM–FAN', '44.6 and 4.52 on 45+5', 'ask-third', '', () => reads(44.6, 4.52)),
  phys('a FAN that may be HERM–FAN', '80 and 4.71 on 80+5: inside ±6 %', 'ask-third', '', () =>
    reads(79.9, 4.71, {}, '80+5'),
  ),
  phys('a FAN that is bad and not HERM–FAN', '39.4, 2.9, hf 2.70 on 40+5', 'fails', '', () =>
    reads(39.4, 2.9, { hf: 2.7 }, '40+5'),
  ),
  phys('swapped', '5.02 and 44.8 on 45+5', 'swapped', '', () => reads(5.02, 44.8)),
  phys('terminals by three readings', '5.02, 44.6, 4.52 µF, known meter', 'C X, HERM Z, FAN Y', '', () =>
    naming(METER, '5.02', '44.6', '4.52'),
  ),
  phys('terminals by three readings', '45, 5, 4.5 µF, assumed meter', 'ambiguous', '', () =>
    naming(ASSUMED, '45', '5', '4.5'),
  ),
  phys('terminals by three readings', '45, 5, 5 µF', 'does-not-fit', '', () => naming(METER, '45', '5', '5')),
]);

const word = (reading: string, rated: number): string =>
  wordOf(reading, windowMicrofarads(METER, reading), limitsMicrofarads(rated, 6, 6));
const share = (reading: string, rated: number, meter = METER) =>
  shareInside(windowMicrofarads(meter, reading), limitsMicrofarads(rated, 6, 6)).times(100);
const SETTING = { source: 'our model (rectangular doubt), arithmetic', status: 'PHYS' as const };

checks('capacitance: worked readings', [
  phys('deviation', '38.4 of 40 µF', '-4.0', '%', () => deviationPercent('38.4', 40)),
  phys('deviation', '37.0 of 40 µF', '-7.5', '%', () => deviationPercent('37.0', 40)),
  phys('deviation', '36.1 of 45 µF', '-19.8', '%', () => deviationPercent('36.1', 45)),
  phys('deviation', '37.4 of 40 µF', '-6.5', '%', () => deviationPercent('37.4', 40)),
  phys('deviation', '45.3 of 45 µF', '0.7', '%', () => deviationPercent('45.3', 45)),
  phys('inside', '38.4 of 40 ±6 %', '93', '%', () => share('38.4', 40), SETTING),
  phys('inside', '37.0 of 40 ±6 %', '17', '%', () => share('37.0', 40), SETTING),
  phys('inside', '37.4 of 40 ±6 %', '39', '%', () => share('37.4', 40), SETTING),
  phys('inside', '37.3 of 40 ±6 %', '33', '%', () => share('37.3', 40), SETTING),
  phys('inside', '37.4 of 40 ±6 %, assumed meter', '44', '%', () => share('37.4', 40, ASSUMED), SETTING),
  phys('word', '38.4 of 40 ±6 %', 'conditional pass', '', () => word('38.4', 40), SETTING),
  phys('word', '39.0 of 40 ±6 %', 'pass', '', () => word('39.0', 40), SETTING),
  phys('word', '37.0 of 40 ±6 %', 'conditional fail', '', () => word('37.0', 40), SETTING),
  phys('word', '36.1 of 45 ±6 %', 'fail', '', () => word('36.1', 45), SETTING),
  phys('doubt, low end', '36.1 µF', '35.21', 'µF', () => windowMicrofarads(METER, '36.1').low),
  phys('doubt, high end', '36.1 µF', '36.99', 'µF', () => windowMicrofarads(METER, '36.1').high),
  phys('doubt, low end', '37.4 µF, assumed meter', '35.78', 'µF', () => windowMicrofarads(ASSUMED, '37.4').low),
  phys('doubt, high end', '37.4 µF, assumed meter', '39.02', 'µF', () => windowMicrofarads(ASSUMED, '37.4').high),
  phys('doubt, high end', '2.9 µF', '2.98', 'µF', () => windowMicrofarads(METER, '2.9').high),
  phys('the trade’s habit', '37.0 of 40 ±10 %', 'pass', '', () => plainWord('37.0', limitsMicrofarads(40, 10, 10)), {
    source: 'common practice, no single source',
    status: 'CP',
  }),
  phys(
    'the label, where the habit says keep',
    '37.0 of 40 ±6 %',
    'pass',
    '',
    () => plainWord('37.0', limitsMicrofarads(40, 6, 6)),
    { source: 'the ±10 % habit, against the label', status: 'CP', wrong: true },
  ),
  phys(
    'resolution 0.1 µF below 10 µF',
    '5.0 µF, ±(1.9 % + 2 counts)',
    '0.295',
    'µF',
    () => new Exact(doubtMicrofarads(COARSE, '5.0')),
  ),
]);
