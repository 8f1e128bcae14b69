/** Worked calls of a breaker or a fuse: the branch that is grounded, the insulation, the breaker itself. */
import type { Example } from '../../engine/vocabulary.ts';
import { BLOCK, GATES } from './control.ts';
import { COMPRESSOR, GOOD, RUNS } from './lines.ts';

const tripped = (fast = 'at once'): string[] => ['h', 'psc', fast, ...GATES];
const CLEAN = [...tripped(), ...BLOCK];
export const INSULATED = ['ready, reciprocating, 500', '120', '0.4'];

export const TRIPS: readonly Example[] = [
  {
    title: 'It trips without a call: the loads to ground first',
    lines: [...tripped('no call'), ...BLOCK, ...INSULATED, 'holds', ...RUNS],
    then: ['trips-without-a-call', 'capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'A hot breaker: nobody resets it',
    lines: ['h', 'psc', 'breaker hot'],
    then: ['breaker-hot-or-wet'],
    ends: 'raised',
  },
];

const LOW = [
  ...[...tripped(), 'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g 4k t2g 4k', 'wires off', GOOD, 'spin free'],
  ...[COMPRESSOR, 'fan 14 31 45 frame ol'],
];
export const GROUND: readonly Example[] = [
  {
    title: 'The fan at its own leads: a new motor',
    lines: [
      ...[...LOW, 'comp ol fan 3k heater ol cable ol', 'nothing', 'motor fitted'],
      ...['other 45+5 440 herm 45.2 fan 5.01', 'fitted', 'wires back', ...RUNS],
    ],
    then: ['low-to-ground', 'capacitor-good', 'fan-to-frame', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The crankcase heater: off until a new one is in',
    lines: [...LOW, 'comp ol fan ol heater 2k cable ol', 'heater off', ...RUNS],
    then: ['low-to-ground', 'capacitor-good', 'heater-grounded', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The wire before the motor: mended, and it clears',
    lines: [...LOW, 'comp ol fan ol heater ol cable 3k', 'chafed', 'mended', 'ol', ...RUNS],
    then: ['low-to-ground', 'capacitor-good', 'wire-chafed', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Apart, nothing reads low',
    lines: [...LOW, 'comp ol fan ol heater ol cable ol'],
    then: ['low-to-ground', 'capacitor-good', 'ground-gone'],
    ends: 'raised',
  },
  {
    title: 'The cable is low and nothing is to be seen',
    lines: [...LOW, 'comp ol fan ol heater ol cable 3k', 'nothing'],
    then: ['low-to-ground', 'capacitor-good', 'ground-not-located'],
    ends: 'raised',
  },
];

const COMP_LOW = [...LOW, 'comp 90k fan ol heater ol cable ol'];
export const INSULATION: readonly Example[] = [
  {
    title: 'The compressor alone is low, twice, heater off and not cold: a senior confirms',
    lines: [...COMP_LOW, 'ready, scroll, 500', '0.1', 'ready, scroll, 500', '0.1'],
    then: ['low-to-ground', 'capacitor-good', 'compressor-insulation-failed'],
    ends: 'raised',
  },
  {
    title: 'Low on a cold shell: warm it first',
    lines: [...COMP_LOW, 'cold shell, scroll, 500', '0.3'],
    then: ['low-to-ground', 'capacitor-good', 'insulation-cold-and-low'],
    ends: 'left',
  },
  {
    title: 'Under vacuum nothing is tested',
    lines: [...CLEAN, 'vacuum, scroll, 500'],
    then: ['capacitor-good', 'insulation-not-now'],
    ends: 'raised',
  },
  {
    title: 'No tester: no power yet',
    lines: [...CLEAN, 'no tool for it'],
    then: ['capacitor-good', 'insulation-not-taken'],
    ends: 'raised',
  },
  {
    title: 'Low with the heater on, both times',
    lines: [...CLEAN, 'heater on, scroll, 500', '0.3', 'heater on, scroll, 500', '0.3'],
    then: ['capacitor-good', 'insulation-not-settled'],
    ends: 'raised',
  },
];
