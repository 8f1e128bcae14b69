/** An inverter's DC bus after power-off: its decay against ngspice and mathjs, and the words for what is left. */
import { energyJoules, secondsTo, tauSeconds, voltsAfter } from '../../engine/calc/discharge.ts';
import { judgements } from '../../engine/judgements/index.ts';
import { LIMITS } from '../../flows/limits.ts';
import { FORCE, parts, yes } from '../judgements/fixture.ts';
import { type Check, checks } from './check.ts';
import { byMathjs } from './mathjs.ts';
import { type Decay, solveDecay } from './spice.ts';

const [V0, UF, R] = [325, 1640, 80_000];
let run: Promise<Decay> | undefined;
// The time constant is 131 s, so steps of 0.5 s are finer for it than 1 ms for a run capacitor.
const spice = (): Promise<Decay> => (run ??= solveDecay([`C1 p 0 ${UF}u ic=${V0}`, `R1 p 0 ${R}`], 620, 0.5));

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
const PART = '325 V, 1640 µF, 80 kΩ';
const after = (minutes: number, published: string): Check =>
  phys(
    'volts left',
    `${PART} after ${minutes} min`,
    published,
    'V',
    () => voltsAfter(V0, UF, R, minutes * 60).toFixed(3),
    {
      within: published.includes('.') ? 0.05 : 0.5,
      oracle: { name: 'ngspice', says: async () => (await spice()).voltsAt('p', minutes * 60), within: 2e-3 },
    },
  );
const word =
  (pn: number, waited = false) =>
  (): string => {
    const readings = parts('V', { batteryBefore: 9.3, pn, batteryAfter: 9.3 });
    return judgements.bus.run({ readings, waited: waited ? yes : undefined }, LIMITS.bus, FORCE).outcome;
  };
const OURS = { source: 'our setting', status: 'CHOICE' as const };

checks('inverter bus', [
  phys('time constant', PART, '131.2', 's', () => tauSeconds(UF, R), { oracle: byMathjs('1640e-6*80e3') }),
  after(5, '33'),
  after(9.1, '5'),
  after(10, '3.4'),
  phys('minutes to 5 V', PART, '9.1', 'min', () => secondsTo(V0, 5, UF, R).div(60).toFixed(4), {
    oracle: { name: 'ngspice', says: async () => (await spice()).secondsTo('p', 5) / 60, within: 1e-3 },
  }),
  phys('minutes to 50 V', PART, '4.09', 'min', () => secondsTo(V0, 50, UF, R).div(60).toFixed(4), {
    oracle: { name: 'ngspice', says: async () => (await spice()).secondsTo('p', 50) / 60, within: 1e-3 },
  }),
  phys('energy', '325 V, 1640 µF', '86.6', 'J', () => energyJoules(UF, V0), { oracle: byMathjs('0.5*1640e-6*325^2') }),
  phys('times a run capacitor’s energy', '45 µF at √2·440 V', '9.9', '', () =>
    energyJoules(UF, V0).div(energyJoules(45, '622.254')),
  ),
  phys('dead after 5 minutes', PART, '5', 'V', () => voltsAfter(V0, UF, R, 300).toFixed(1), {
    source: 'five minutes taken for enough, a usual slip',
    wrong: true,
  }),
  phys('residual', '5.00 V', 'go', '', word(5), OURS),
  phys('residual', '5.01 V', 'wait', '', word(5.01), OURS),
  phys('residual after the label’s time', '50.00 V', 'wait', '', word(50, true), OURS),
  phys('residual after the label’s time', '50.01 V', 'stop', '', word(50.01, true), OURS),
  phys('residual before the label’s time', '325 V', 'wait', '', word(325), OURS),
]);
