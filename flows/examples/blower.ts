/** Worked calls of the indoor blower: its own isolation, its capacitor, motor, restart. */
import type { Example } from '../../engine/vocabulary.ts';
import { GATES, INDOOR_GATES } from './control.ts';
import { RUNS as OUTDOOR_RUNS, PROVING } from './lines.ts';

const PRINT = '7.5 6% 440';
const SEEN = ['i', 'outdoor off', 'nothing', 'psc'];
const dead = (look = `clean, 1 cap, ${PRINT}`): string[] => [
  ...SEEN,
  ...['yes', 'breaker, no other feed, two legs, outlet', 'yes', look, PROVING, '9.3 / 0.4 / 9.3'],
];
const LINE = 'fuse 0.1 leads ol';
const wiresOff = (look?: string): string[] => [...dead(look), LINE, 'wires off'];
const GOOD = 'cap 7.46 case ol';
const WEAK = 'cap 5.9 case ol';
const MOTOR = ['spin free', 'high 6.1 med 8.3 low 11.2 frame ol'];
const NEW = ['other 7.5 uf 440, cap 7.52', 'fitted', 'wires back'];
const CLOSED = ['208/230 fla 4.2', 'closed'];
const RUNS = [...CLOSED, 'volts 240 blower 3.6 split 18'];
const repaired = (...lines: readonly string[]): string[] => [...lines, 'filter', ...NEW, ...RUNS];

/** An electronic blower: the indoor unit proved dead, the probes placed in it. */
export const PLACED = [
  ...['yes', 'breaker, no other feed, two legs, outlet', 'yes', 'clean, 0 caps', PROVING, 'placed'],
];
/** Power was on: the indoor unit dead again. */
const PLACED_AGAIN = ['yes', 'clean, 1 cap, two terminals', PROVING, '9.3 / 0.4 / 9.3', 'placed'];
const STAYS = ['wont go off', 'psc', 'blower off', '24', ...GATES];
export const BLOWER_OFF: readonly Example[] = [
  {
    title: 'The outdoor unit doesn’t go off: welded contacts come before the blower',
    lines: [
      ...['i', ...STAYS, 'coil 0', 'contacts 0.1 0.1', 'contacts 0.1 0.1', 'nothing', 'contactor fitted', 'wires back'],
      ...OUTDOOR_RUNS,
    ],
    then: ['outdoor-stays-on', 'contactor-welded', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Called silent, and it runs on with the call gone: a call that nobody gave',
    lines: [
      ...['a', 'psc', 'no blower', 'wont go off', 'blower off', '24', ...GATES, 'coil 25.2', 'psc'],
      ...[...INDOOR_GATES, 'y is off', 'qualified', '0'],
    ],
    then: ['outdoor-stays-on', 'thermostat-cable-shorted'],
    ends: 'left',
  },
];

export const BLOWER: readonly Example[] = [
  {
    title: 'The blower’s capacitor is weak: replaced and proven',
    lines: repaired(...wiresOff(), WEAK, ...MOTOR),
    then: ['section-fails-value', 'new-part-right', 'blower-proven'],
    ends: 'done',
  },
  {
    title: 'No capacitor seen at a PSC blower, twice: hands out, a senior decides',
    lines: [...dead('clean, 0 caps').slice(0, -2), 'clean, 0 caps'],
    then: [],
    ends: 'held',
  },
  {
    title: 'Since when the electronic blower is off nobody knows: nothing is opened',
    lines: ['i', 'outdoor off', 'nothing', 'ecm', 'not sure', 'no code, plugs dry'],
    then: ['electronic-blower-handed-over'],
    ends: 'raised',
  },
  {
    title: 'The door was off its switch',
    lines: ['i', 'outdoor off', 'door', 'runs now', ...RUNS],
    then: ['blower-door-off', 'blower-proven'],
    ends: 'done',
  },
  {
    title: 'An electronic blower stands still: over to a senior',
    lines: ['i', 'outdoor off', 'nothing', 'ecm', 'off now', 'rested', 'qualified', ...PLACED, '25.8', 'variable'],
    then: ['electronic-blower-handed-over'],
    ends: 'raised',
  },
  {
    title: 'Ice: thawed with its blower on, and looked at anew',
    lines: ['i', 'outdoor off', 'ice', 'off, fan on', 'drain open', 'thawed'],
    then: ['thawed'],
  },
  {
    title: 'Ice, and no air passes: the blower is what is left',
    lines: [
      'i',
      'outdoor off',
      'ice',
      'no air',
      'ecm',
      'off now',
      'rested',
      'qualified',
      ...PLACED,
      '25.8',
      'variable',
    ],
    then: ['ice-without-air', 'electronic-blower-handed-over'],
    ends: 'raised',
  },
  {
    title: 'The float is up: drain cleared, the blower proven',
    lines: ['i', 'outdoor off', 'float', 'pan', 'cleared', 'full', 'leaves', 'works', ...RUNS],
    then: ['drain-cleared', 'blower-proven'],
    ends: 'done',
  },
  {
    title: 'Nothing in the drain, and the blower still stands: the next round opens the unit',
    lines: [
      ...['i', 'outdoor off', 'float', 'pan', 'ran free', 'full', 'leaves', 'works', '208/230 fla 4.2', 'closed'],
      ...['volts 240 blower 0', 'off', 'i', 'outdoor off'],
    ],
    then: ['drain-ran-free', 'drain-in-order'],
  },
];

const tested = (title: string, line: string, then: readonly string[]): Example => ({
  title,
  lines: [...dead(), line, 'wires off', GOOD, ...MOTOR],
  then: [...then],
  ends: 'raised',
});
export const BLOWER_TESTS: readonly Example[] = [
  tested('A blown board fuse without a cause: it stays off', 'fuse ol leads ol', [
    'board-fuse-blown',
    'capacitor-good',
    'board-fuse-without-cause',
  ]),
  tested('Low to ground, and the motor reads clear', 'fuse 0.1 leads 8000', [
    'blower-low-to-ground',
    'capacitor-good',
    'blower-ground-not-located',
  ]),
  {
    title: 'Fuse and ground not taken; nothing found',
    lines: [...dead(), 'skip no room for the leads', 'wires off', GOOD, ...MOTOR, ...RUNS],
    then: ['fuse-ground-not-taken', 'capacitor-good', 'blower-runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'The wheel rubs: cleared, it spins free, and no motor is condemned',
    lines: [...wiresOff(), GOOD, 'scrapes', 'cleared', 'high 6.1 med 8.3 low 11.2 frame ol', ...RUNS],
    then: ['capacitor-good', 'blower-wheel-cleared', 'blower-proven'],
    ends: 'done',
  },
  {
    title: 'The wheel rubs and can’t be cleared: nothing is started, a senior',
    lines: [...wiresOff(), GOOD, 'rubs', 'bent wheel', 'high 6.1 med 8.3 low 11.2 frame ol'],
    then: ['capacitor-good', 'blower-wheel-rubs'],
    ends: 'raised',
  },
  {
    title: 'The wheel is stiff and clear of everything: a new motor and a new capacitor',
    lines: [
      ...[...wiresOff(), GOOD, 'stiff', 'high 6.1 med 8.3 low 11.2 frame ol'],
      ...['age', 'motor fitted', '7.5 uf 6% 440', ...NEW, ...RUNS],
    ],
    then: ['capacitor-good', 'blower-bearings', 'new-part-right', 'blower-proven'],
    ends: 'done',
  },
  {
    title: 'No meter for the value: a senior decides',
    lines: [...wiresOff(), 'skip no range for it', 'skip no ohms', ...MOTOR],
    then: ['value-undecided', 'blower-value-open'],
    ends: 'raised',
  },
];

export const BLOWER_CAPACITOR: readonly Example[] = [
  {
    title: 'Two terminals, the print unreadable: shorted by ohms alone',
    lines: [
      ...[...wiresOff('clean, 1 cap, two terminals'), 'skip worn off', 'skip no diagram', '0.2 ohm'],
      ...[...MOTOR, 'age', '7.5 uf 440', ...NEW, ...RUNS],
    ],
    then: ['section-shorted', 'new-part-right', 'blower-proven'],
    ends: 'done',
  },
  {
    title: 'Condemned by sight',
    lines: repaired(...wiresOff(`bulged, 1 cap, ${PRINT}`), ...MOTOR),
    then: ['condemned-by-sight', 'new-part-right', 'blower-proven'],
    ends: 'done',
  },
];

const wound = (title: string, lines: readonly string[], ...then: readonly string[]): Example => ({
  title,
  lines: [...wiresOff(), GOOD, 'spin free', ...lines],
  then: ['capacitor-good', ...then],
  ...(then.length === 1 ? {} : { ends: 'done' }),
});
const NEW_MOTOR = ['age', 'motor fitted', '7.5 uf 6% 440', ...NEW, ...RUNS];
export const BLOWER_WINDINGS: readonly Example[] = [
  wound(
    'Open on a cool motor: a new one',
    ['high ol med ol low ol frame ol', 'cool', ...NEW_MOTOR],
    ...['blower-winding-open', 'new-part-right', 'blower-proven'],
  ),
  wound(
    'Low to the frame, also past the run of its leads: a new motor',
    ['high 6.1 med 8.3 low 11.2 frame 400', '400', ...NEW_MOTOR],
    ...['blower-to-frame', 'new-part-right', 'blower-proven'],
  ),
  {
    title: 'Low at the ends of its leads and clear past their run: a wire, and no motor is condemned',
    lines: [...wiresOff(), GOOD, 'spin free', 'high 6.1 med 8.3 low 11.2 frame 400', 'ol'],
    then: ['capacitor-good', 'blower-low-to-ground', 'blower-ground-not-located'],
    ends: 'raised',
  },
  {
    title: 'Open on a hot motor is its protector, and what made it hot is not known',
    lines: [
      ...[...wiresOff(), GOOD, 'spin free', 'high ol med ol low ol frame ol', 'hot', '208/230 fla 4.2'],
      ...['cooled', '8.3', 'closed', 'volts 240 blower 3.6 split 18'],
    ],
    then: ['capacitor-good', 'blower-protector-open', 'blower-protector-without-cause'],
    ends: 'raised',
  },
  {
    title: 'Open, and nobody can say how hot it is: counted as hot',
    lines: [
      ...[...wiresOff(), GOOD, 'spin free', 'high ol med ol low ol frame ol', 'not sure', '208/230 fla 4.2'],
      'not yet',
    ],
    then: ['capacitor-good', 'blower-open-until-cool', 'blower-left-off'],
    ends: 'left',
  },
  wound(
    'Leads mixed up twice: undecided, and it runs',
    ['high 11.2 low 6.1 frame ol', 'high 11.2 low 6.1 frame ol', ...RUNS],
    ...['blower-windings-undecided', 'blower-runs-nothing-found'],
  ),
  wound(
    'Windings not measured',
    ['skip plug out of reach', ...RUNS],
    ...['blower-windings-not-taken', 'blower-runs-nothing-found'],
  ),
];

export const BLOWER_PART: readonly Example[] = [
  {
    title: 'The new part reads low: another one is picked',
    lines: [...wiresOff(), WEAK, ...MOTOR, 'filter', 'other 7.5 uf 440, cap 6.2', ...NEW, ...RUNS],
    then: ['section-fails-value', 'new-part-right', 'blower-proven'],
    ends: 'done',
  },
];

export const BLOWER_REPAIR: readonly Example[] = [
  {
    title: 'One of years ago at this blower says nothing of this one',
    unit: {
      history: [
        {
          ...{ at: '2023-05-02T10:00:00.000Z', job: 'years ago', what: 'fitted', item: 'run capacitor 7.5 µF' },
          ...{ cabinet: 'indoor', herm: '7.5', fan: null },
        },
      ],
    },
    lines: repaired(...wiresOff(), WEAK, ...MOTOR),
    then: ['section-fails-value', 'new-part-right', 'blower-proven'],
    ends: 'done',
  },
  {
    title: 'The second one at this blower in a season',
    unit: {
      history: [
        {
          ...{ at: '2026-05-02T10:00:00.000Z', job: 'earlier', what: 'fitted', item: 'run capacitor 7.5 µF' },
          ...{ cabinet: 'indoor', herm: '7.5', fan: null },
        },
      ],
    },
    lines: repaired(...wiresOff(), WEAK, ...MOTOR),
    then: ['section-fails-value', 'second-blower-part-in-a-season', 'new-part-right', 'blower-proven'],
    ends: 'done',
  },
  {
    title: 'The diagram asks for another value',
    lines: [
      ...wiresOff(),
      WEAK,
      ...MOTOR,
      'nothing, 10 6% 440',
      'other 10 uf 440, cap 10.02',
      ...NEW.slice(1),
      ...RUNS,
    ],
    then: ['section-fails-value', 'wrong-blower-part-fitted', 'new-part-right', 'blower-proven'],
    ends: 'done',
  },
  {
    title: 'No such part on the truck',
    lines: [...wiresOff(), WEAK, ...MOTOR, 'age', 'skip none on the truck'],
    then: ['section-fails-value', 'no-blower-part'],
    ends: 'left',
  },
];

const restarted = (title: string, lines: readonly string[], verdict: string, ends: string): Example => ({
  title,
  lines: [...wiresOff(), GOOD, ...MOTOR, ...lines],
  then: ['capacitor-good', verdict],
  ends,
});
export const BLOWER_RESTART: readonly Example[] = [
  restarted('It does not start', [...CLOSED, 'volts 240 blower 0', 'not now'], 'blower-no-start-undecided', 'raised'),
  restarted(
    'The supply is out, read again on both sides of its means',
    [...CLOSED, 'volts 190 blower 3.6', 'runs unit 190 feed 191'],
    'supply-out',
    'raised',
  ),
  restarted('No live figures', [...CLOSED, 'skip nobody qualified'], 'blower-not-proven', 'raised'),
  restarted('It stays off', ['208/230 fla 4.2', 'stays off'], 'blower-left-off', 'left'),
];

const STANDS = ['i', 'outdoor off', 'nothing'];
const SILENT_STILL = ['a', 'psc', 'no blower', 'outdoor off', 'nothing'];
/** No fan call; then the probes of the source page, placed anew, and the call five minutes old. */
const SOURCE = [
  ...['doors on', 'qualified', 'ecm', 'off now', 'rested', 'yes', 'clean, 0 caps', PROVING, 'placed', 'left alone'],
];
const NO_FAN = [...SILENT_STILL, 'ecm', 'off now', 'rested', 'qualified', ...PLACED, '0', ...SOURCE];
const FUSE_BLOWN = [...[...SILENT_STILL, 'psc', ...INDOOR_GATES, 'fuse ol leads ol', 'wires off', GOOD, ...MOTOR]];
export const FUSE_SHORT: readonly Example[] = [
  {
    title: 'Silent, the blower still too, the board’s fuse blown: the short outdoors found, one new fuse, proven',
    lines: [...[...FUSE_BLOWN, '1.5', ...GATES, 'lifted', '1.4', 'found it', 'new fuse in', ...OUTDOOR_RUNS]],
    then: ['board-fuse-blown', 'capacitor-good', 'control-short-found', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The board’s fuse blown, and Y to C outward reads the coil: no new fuse',
    lines: [...FUSE_BLOWN, '12'],
    then: ['board-fuse-blown', 'capacitor-good', 'board-fuse-without-cause'],
    ends: 'raised',
  },
];
const ELECTRONIC = [...STANDS, 'ecm', 'off now', 'rested', 'qualified', ...PLACED, '25.8', 'ecm'];
export const BLOWER_LIVE: readonly Example[] = [
  {
    title: 'No fan call at the board',
    lines: [...STANDS, 'ecm', 'off now', 'rested', 'qualified', ...PLACED, '0', 'not sure'],
    then: ['no-fan-call'],
    ends: 'left',
  },
  {
    title: 'Outdoor runs, no fan call, the 24 V and the call to cool there: the thermostat or its G wire',
    lines: [...STANDS, 'ecm', 'off now', 'rested', 'qualified', ...PLACED, '0', 'psc', ...SOURCE, 'r-c 26.1 y-c 26'],
    then: ['no-fan-call', 'fan-call-not-given'],
    ends: 'left',
  },
  {
    title: 'Silent, the blower still too, no fan call and no call to cool: the thermostat or its cable',
    lines: [...NO_FAN, 'r-c 26.1 y-c 0', 'no float'],
    then: ['no-fan-call', 'thermostat-or-its-cable'],
    ends: 'left',
  },
  {
    title: 'No fan call, and the call to cool is there: the thermostat or its G wire',
    lines: [...NO_FAN, 'r-c 26.1 y-c 26'],
    then: ['no-fan-call', 'fan-call-not-given'],
    ends: 'left',
  },
  {
    title: 'No fan call because there are no 24 V: the transformer is open',
    lines: [
      ...[
        ...NO_FAN,
        'r-c 0 y-c 0 primary 240',
        'off now',
        'rested',
        'yes',
        'clean, 0 caps',
        PROVING,
        'fuse 0.1 sec ol y-c 12',
      ],
    ],
    then: ['no-fan-call', 'transformer-open'],
    ends: 'left',
  },
  {
    title: 'Constant torque: line and tap there, dry and free: motor or module',
    lines: [...ELECTRONIC, '119, 115 v', '25.1', 'off now', 'rested', 'yes', 'clean, 0 caps', PROVING, 'dry and free'],
    then: ['electronic-blower-suspect'],
    ends: 'raised',
  },
  {
    title: 'Line and tap there, and the wheel is stiff: that first, no motor on volts',
    lines: [...ELECTRONIC, '119, 115 v', '25.1', 'off now', 'rested', 'yes', 'clean, 0 caps', PROVING, 'stiff'],
    then: ['electronic-blower-blocked-or-wet'],
    ends: 'raised',
  },
  {
    title: '119 V at its plug, and nobody read its nameplate: right, or one leg of two',
    lines: [...ELECTRONIC, '119', 'cant'],
    then: ['blower-no-start-undecided'],
    ends: 'raised',
  },
  {
    title: '119 V at its plug, its nameplate left out and then read: one leg of two',
    lines: [...ELECTRONIC, '119', '230'],
    then: ['blower-no-start-undecided'],
    ends: 'raised',
  },
  {
    title: '119 V at its plug, and its nameplate asks for that: its taps next',
    lines: [...ELECTRONIC, '119', '115', '0'],
    then: ['board-blower-relay'],
    ends: 'left',
  },
  {
    title: 'No line at its plug',
    lines: [...ELECTRONIC, '0'],
    then: ['electronic-blower-not-fed'],
    ends: 'raised',
  },
  {
    title: 'Line and no tap: the board',
    lines: [...ELECTRONIC, '238, 208/230', '0'],
    then: ['board-blower-relay'],
    ends: 'left',
  },
  {
    title: 'Variable speed: over to a senior with its code',
    lines: [...STANDS, 'ecm', 'off now', 'rested', 'qualified', ...PLACED, '25.8', 'variable'],
    then: ['electronic-blower-handed-over'],
    ends: 'raised',
  },
  {
    title: 'The probes can’t be placed: undecided',
    lines: [...STANDS, 'ecm', 'off now', 'rested', 'qualified', ...PLACED.slice(0, -1), 'cant be placed'],
    then: ['blower-no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'Not qualified: undecided',
    lines: [...STANDS, 'ecm', 'off now', 'rested', 'not qualified'],
    then: ['blower-no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'A call, volts at the leads, and nobody turned the wheel: no motor is condemned',
    lines: [
      ...[...wiresOff(), GOOD, 'cant', ...MOTOR.slice(1)],
      ...[...CLOSED, 'volts 240 blower 0', 'qualified', ...PLACED_AGAIN, '25.8', 'psc', '238'],
    ],
    then: ['capacitor-good', 'blower-not-spun', 'blower-no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'A call, volts at the leads, capacitor good, free: the motor',
    lines: [
      ...wiresOff(),
      GOOD,
      ...MOTOR,
      ...CLOSED,
      'volts 240 blower 0',
      'qualified',
      ...PLACED_AGAIN,
      '25.8',
      'psc',
      '238',
    ],
    then: ['capacitor-good', 'blower-motor-electric'],
    ends: 'left',
  },
];
