/** Worked calls of a breaker or a fuse: the branch that is grounded, the insulation, the breaker itself. */
import type { Example } from '../../engine/vocabulary.ts';
import { BLOCK, GATES } from './control.ts';
import { COMPRESSOR, GOOD, LINE, NEW_PART, ONE_DEAD, PROVING, RESIDUAL, RUNS, WEAK } from './lines.ts';

const tripped = (fast = 'at once'): string[] => ['h', 'psc', fast, ...GATES];
const CLEAN = [...tripped(), ...BLOCK];
/** The winding empty after its test, between two readings of the battery. */
const EMPTY = '9.3 / 0.4 / 9.3';
export const INSULATED = ['ready, reciprocating, 500', '120', EMPTY];
const SCROLL = 'ready, scroll, 500';
/** Reading what the test left ended the isolation: from the lock again before the next test. */
const LOCKED_AGAIN = ['yes', 'clean, 1 cap', PROVING, RESIDUAL];

/** The insulation holds, and it is started once. */
const HOLDS = [...INSULATED, 'closed', 'holds', ...RUNS];

export const TRIPS: readonly Example[] = [
  {
    title: 'It trips without a call: the loads to ground first',
    lines: [...tripped('no call'), ...BLOCK, ...HOLDS],
    then: ['trips-without-a-call', 'capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'A hot breaker: nobody resets it',
    lines: ['h', 'psc', 'breaker hot'],
    then: ['breaker-hot-or-wet'],
    ends: 'raised',
  },
  {
    title: 'A fuse opened, and a weak capacitor: the insulation first, then part and fuse, one controlled start',
    lines: [
      ...[...tripped('fuse'), 'fuses ol 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol', 'no diagram', 'wires off', WEAK],
      ...['spin free', COMPRESSOR, 'fan 14 31 45 frame ol', ...INSULATED, 'age', ...LOCKED_AGAIN, ...NEW_PART],
      ...['fuse in', 'closed', 'holds', ...RUNS],
    ],
    then: ['fuse-blown', 'section-fails-value', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'A breaker tripped, and a weak capacitor: the insulation before any power, then one controlled start',
    lines: [
      ...[...tripped('few seconds'), LINE, 'no diagram', 'wires off', WEAK, 'spin free', COMPRESSOR],
      ...['fan 14 31 45 frame ol', ...INSULATED, 'age', ...LOCKED_AGAIN, ...NEW_PART, 'closed', 'holds', ...RUNS],
    ],
    then: ['section-fails-value', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title:
      'A fuse opened by word and was left out of the line, a weak capacitor: insulation, part, a new fuse, one start',
    lines: [
      ...[...tripped('fuse'), LINE, 'no diagram', 'wires off', WEAK, 'spin free', COMPRESSOR, 'fan 14 31 45 frame ol'],
      ...[...INSULATED, 'age', ...LOCKED_AGAIN, ...NEW_PART, 'fuse in', 'closed', 'holds', ...RUNS],
    ],
    then: ['section-fails-value', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'A fuse opened by word, and nobody read it: no start, a senior has its cause sought',
    lines: [...tripped('fuse'), ...BLOCK, ...INSULATED],
    then: ['capacitor-good', 'fuse-without-cause'],
    ends: 'raised',
  },
  {
    title: 'A breaker tripped, a weak capacitor, and nobody has an insulation tester: no power on an ohmmeter',
    lines: [
      ...[...tripped('few seconds'), LINE, 'no diagram', 'wires off', WEAK, 'spin free', COMPRESSOR],
      ...['fan 14 31 45 frame ol', 'no tool for it'],
    ],
    then: ['section-fails-value', 'insulation-not-taken'],
    ends: 'raised',
  },
];

const T_LOW = 'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g 4k t2g 4k';
const LOW = [
  ...[...tripped(), T_LOW, 'no diagram', 'wires off', GOOD, 'spin free'],
  ...[COMPRESSOR, 'fan 14 31 45 frame ol'],
];
export const GROUND: readonly Example[] = [
  {
    title: 'The fan at its own leads: a new motor',
    lines: [
      ...[...LOW, 'comp ol fan 3k heater ol cable ol', '3k', ...INSULATED, 'nothing', ...LOCKED_AGAIN],
      ...[
        'motor fitted',
        '45+5 6% 440',
        'other 45+5 440 herm 45.2 fan 5.01',
        'fitted',
        'wires back',
        'closed',
        'holds',
        ...RUNS,
      ],
    ],
    then: ['low-to-ground', 'capacitor-good', 'fan-to-frame', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The crankcase heater: off until a new one is in',
    lines: [...LOW, 'comp ol fan ol heater 2k cable ol', 'heater off', ...HOLDS],
    then: ['low-to-ground', 'capacitor-good', 'heater-grounded', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The wire before the motor: mended, and it clears',
    lines: [...LOW, 'comp ol fan ol heater ol cable 3k', 'chafed', 'mended', 'ol', ...HOLDS],
    then: ['low-to-ground', 'capacitor-good', 'wire-chafed', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The fan’s leads rub on the guard: low at their ends, clear past the run, mended',
    lines: [...LOW, 'comp ol fan 0.2 heater ol cable ol', 'ol', 'chafed', 'mended', 'ol', ...HOLDS],
    then: ['low-to-ground', 'capacitor-good', 'wire-chafed', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The compressor’s harness rubs on an edge: clear of it nothing reads low, mended',
    lines: [...LOW, 'comp 0.2 fan ol heater ol cable ol', 'ol', 'chafed', 'mended', 'ol', ...HOLDS],
    then: ['low-to-ground', 'capacitor-good', 'wire-chafed', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'A chafed lead, and a weak capacitor beside it: both are put right before the restart',
    lines: [
      ...[...tripped(), T_LOW, 'no diagram', 'wires off', WEAK, 'spin free', COMPRESSOR, 'fan 14 31 45 frame ol'],
      ...['comp ol fan 0.2 heater ol cable ol', 'ol', 'chafed', 'mended', 'ol', ...INSULATED, 'age'],
      ...[...LOCKED_AGAIN, ...NEW_PART, 'closed', 'holds', ...RUNS],
    ],
    then: ['low-to-ground', 'section-fails-value', 'wire-chafed', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The branch of an electronic fan: rested before it is taken apart, and no motor on an ohmmeter',
    lines: [
      ...['h', 'ecm', 'at once', ...ONE_DEAD.slice(1, 7), T_LOW, ...ONE_DEAD.slice(8), 'spin free', COMPRESSOR],
      ...['off now', 'rested', 'comp ol fan 0.3 heater ol cable ol', '0.3'],
    ],
    then: ['low-to-ground', 'capacitor-good', 'electronic-fan-low-to-ground'],
    ends: 'raised',
  },
  {
    title: 'The low one was not read past its leads: no motor is condemned',
    lines: [...LOW, 'comp ol fan 0.2 heater ol cable ol', 'cant'],
    then: ['low-to-ground', 'capacitor-good', 'ground-not-located'],
    ends: 'raised',
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

const COMP_LOW = [...LOW, 'comp 90k fan ol heater ol cable ol', '90k'];
const LOW_COMP = ['low-to-ground', 'capacitor-good', 'compressor-low-to-ground'];
export const INSULATION: readonly Example[] = [
  {
    title: 'The compressor alone is low, twice, heater off and not cold: a senior confirms',
    lines: [...COMP_LOW, SCROLL, '0.1', EMPTY, SCROLL, ...LOCKED_AGAIN, '0.1', EMPTY],
    then: [...LOW_COMP, 'compressor-insulation-failed'],
    ends: 'raised',
  },
  {
    title: 'Low on a cold shell: warm it first',
    lines: [...COMP_LOW, 'cold shell, scroll, 500', '0.3', EMPTY],
    then: [...LOW_COMP, 'insulation-cold-and-low'],
    ends: 'left',
  },
  {
    title: 'It read low in ohms, and the insulation test holds: never energised on that',
    lines: [...COMP_LOW, SCROLL, '120', EMPTY],
    then: [...LOW_COMP, 'insulation-contradicts-ohms'],
    ends: 'raised',
  },
  {
    title: 'It read low in ohms, and an ohmmeter finds none the next time: no power',
    lines: [...COMP_LOW, 'ready, scroll, ohmmeter', '0.6'],
    then: [...LOW_COMP, 'insulation-not-taken'],
    ends: 'raised',
  },
  {
    title: 'An ohmmeter alone finds none: after a trip that energises nothing',
    lines: [...CLEAN, 'ready, scroll, ohmmeter', 'ol'],
    then: ['capacitor-good', 'insulation-not-taken'],
    ends: 'raised',
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
    lines: [
      ...[...CLEAN, 'heater on, scroll, 500', '0.3', EMPTY],
      ...['heater on, scroll, 500', ...LOCKED_AGAIN, '0.3', EMPTY],
    ],
    then: ['capacitor-good', 'insulation-not-settled'],
    ends: 'raised',
  },
];

export const EMPTIED: readonly Example[] = [
  {
    title: 'The test left 300 V: discharged again, and empty',
    lines: [...CLEAN, SCROLL, '120', '9.3 / 300 / 9.3', EMPTY, 'closed', 'holds', ...RUNS],
    then: ['capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'Three times not empty: hands off, a senior',
    lines: [...CLEAN, SCROLL, '120', '9.3 / 300 / 9.3', '9.3 / 120 / 9.3', '9.3 / 60 / 9.3'],
    then: ['capacitor-good', 'winding-charge-not-gone'],
    ends: 'raised',
  },
];
