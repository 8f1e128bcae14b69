/** Worked calls of a motor that stands still with everything good, and of an electronic fan. */
import type { Example } from '../../engine/vocabulary.ts';
import { GATES } from './control.ts';
import { again, CLOSED, COMPRESSOR, DEAD_AGAIN, GOOD, LINE, MEANS, ONE_DEAD, ONE_RESIDUAL, PROVING } from './lines.ts';
import { PROVED, THREE_LINE } from './three.ts';

const FAN = 'fan 14 31 45 frame ol';
const STILL = [
  'c',
  'psc',
  'neither',
  ...GATES,
  LINE,
  'no diagram',
  'wires off',
  GOOD,
  'spin free',
  FAN,
  ...CLOSED,
  '240 239 comp 13.1 fan 0',
  'all good',
];
/** The first part has one section, the compressor's. */
const ONE_READ = (look: string, residual: string): string[] => [
  ...['c', 'psc', 'neither', 'yes', MEANS, 'yes', look, PROVING, residual],
  ...[LINE, 'no diagram', 'wires off', 'herm 45.1 case ol'],
];
const FAN_STILL = [...CLOSED, '240 239 comp 13.1 fan 0', 'all good', 'fan', '239'];
/** An electronic fan stands in a unit whose one section is the compressor's. */
const ELECTRONIC = [
  ...['b', 'ecm', ...ONE_DEAD, 'spin free', COMPRESSOR, 'clear', '240 120 120', ...CLOSED],
  ...['240 239 comp 13.1 fan 0', 'all good'],
];
const STALLS = ['d', 'psc', ...GATES, LINE, 'no diagram', 'wires off', GOOD, 'spin free', COMPRESSOR];
const LOCKED = [...STALLS, ...CLOSED, '240 239 comp 92 fan .9', 'all good', 'compressor', 'rested'];

export const STILL_AFTER: readonly Example[] = [
  {
    title: 'Which motor stands nobody can tell: no live try, and none is condemned',
    lines: [...STILL, 'not sure'],
    then: ['capacitor-good', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'No volts at the fan, line at the board: its relay or the lead',
    lines: [...STILL, 'heat pump', 'out of defrost', 'board fan out 0', 'board line in 241', 'board'],
    then: ['capacitor-good', 'board-fan-relay'],
    ends: 'left',
  },
  {
    title: 'Line at the contactor and none at the fan, without a board: a lead, and no board is condemned',
    lines: [...STILL, 'fan', '0', '241', 'no board'],
    then: ['capacitor-good', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'Nobody turned the fan by hand: no motor is condemned on volts alone',
    lines: [
      ...['c', 'psc', 'neither', ...GATES, LINE, 'no diagram', 'wires off', GOOD, 'cant', FAN, ...CLOSED],
      ...['240 239 comp 13.1 fan 0', 'all good', 'fan', '239'],
    ],
    then: ['capacitor-good', 'fan-not-spun', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title:
      'Volts, and only the compressor’s one section was read: the fan’s own capacitor is not, and no motor is condemned',
    lines: [...ONE_READ('clean, 1 cap, 45 6% 440', ONE_RESIDUAL), 'spin free', FAN, ...FAN_STILL],
    then: ['capacitor-good', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'The fan’s own capacitor beside the compressor’s, good, and volts: the motor',
    lines: [
      ...ONE_READ('clean, 2 caps, 45 6% 440', '9.3 / 0 0 / 9.3'),
      ...['run', 'off', '5 µF 6% 370', 'herm 4.96 case ol', 'spin free', FAN, ...FAN_STILL],
    ],
    then: ['capacitor-good', 'capacitor-good', 'fan-motor-electric'],
  },
  {
    title: 'Three lines, and the one capacitor is the fan’s: good, volts there, and it stands: the motor',
    lines: [
      ...['c', '3-phase', 'neither', 'yes', 'breaker, no other feed, three lines, outlet', 'yes'],
      ...['clean, 1 cap, 5 6% 440', PROVED, ONE_RESIDUAL, THREE_LINE, 'no diagram', 'wires off', 'herm 4.96 case ol'],
      ...[
        'spin free',
        FAN,
        'clear',
        '230 230 230',
        ...CLOSED,
        '239 241 240 comp 13.1 13.2 12.9 fan 0',
        'all good',
        'fan',
        '239',
      ],
    ],
    then: ['capacitor-good', 'fan-motor-electric'],
  },
  {
    title: 'A walk-in’s unit, one run capacitor good: whose it is nobody knows, and no fan is condemned',
    lines: [
      ...['c', 'walk-in', 'product 47 hours 3 r404a hums trips', 'yes', 'breaker, no other feed, two legs, outlet'],
      ...['yes', 'clean, 1 cap, 25 6% 440, two terminals', PROVING, ONE_RESIDUAL],
      ...['contacts .1 .1 coil 12.6 t1g ol t2g ol overload 0.1', 'run only', 'no diagram', 'wires off', '24.6 case ol'],
      ...['spin free', FAN, '9.6 56 1.0', 'closed', '239 238 comp 7.1 fan 0 box 47', 'all good', 'fan', '239'],
    ],
    then: ['capacitor-good', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'An electronic fan, the compressor’s capacitor good: that condemns no fan, its own test decides',
    lines: [
      ...[
        ...ELECTRONIC,
        'fan',
        'free',
        'off now',
        'rested',
        'qualified',
        'yes',
        'clean, 1 cap, two terminals',
        PROVING,
        ONE_RESIDUAL,
        'spins free',
        'placed',
      ],
      ...['239', 'not tested'],
    ],
    then: ['capacitor-good', 'electronic-fan-handed-over'],
    ends: 'raised',
  },
  {
    title: 'Volts where the fan’s leads end, and its windings not taken: no motor is condemned',
    lines: [
      ...['c', 'psc', 'neither', ...GATES, LINE, 'no diagram', 'wires off', GOOD, 'spin free', 'cant', ...CLOSED],
      ...['240 239 comp 13.1 fan 0', 'all good', 'fan', '239'],
    ],
    then: ['capacitor-good', 'fan-windings-not-taken', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'Volts held and the windings left out: not called seized',
    lines: [
      ...['d', 'psc', ...GATES, LINE, 'no diagram', 'wires off', GOOD, 'spin free', 'cant', ...CLOSED],
      ...['240 239 comp 92 fan .9', 'all good', 'compressor', 'rested', '221 comp 92'],
    ],
    then: ['capacitor-good', 'compressor-windings-not-taken', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'Nobody read the volts: no motor is condemned',
    lines: [...STILL, 'fan', 'cant'],
    then: ['capacitor-good', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'Volts held, capacitor good, an assist tried: seized, and a senior confirms',
    lines: [
      ...LOCKED,
      '221 comp 92',
      ...DEAD_AGAIN,
      'assist fitted',
      'closed',
      'off now',
      'rested',
      '219 comp 94',
      'still stands',
    ],
    then: ['capacitor-good', 'compressor-seized'],
    ends: 'raised',
  },
  {
    title: 'Off just now, and not sure whether five minutes are over: not tried, nothing is called seized',
    lines: [...LOCKED.slice(0, -1), 'off now', 'not sure'],
    then: ['capacitor-good', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'Before the try with the assist not sure either: not tried',
    lines: [...LOCKED, '221 comp 92', ...DEAD_AGAIN, 'assist fitted', 'closed', 'off now', 'not sure'],
    then: ['capacitor-good', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'It starts with an assist: not seized',
    lines: [
      ...LOCKED,
      '221 comp 92',
      ...DEAD_AGAIN,
      'assist fitted',
      'closed',
      'off now',
      'rested',
      '219 comp 94',
      'started',
    ],
    then: ['capacitor-good', 'starts-with-an-assist'],
    ends: 'raised',
  },
  {
    title: 'No assist on the truck: not called seized without it',
    lines: [...LOCKED, '221 comp 92', ...DEAD_AGAIN, 'no assist'],
    then: ['capacitor-good', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'Volts there and no amps: open, not seized, and the next round reads it again, on a hot shell its overload',
    lines: [...[...LOCKED, '238 comp 0', ...again(), GOOD, 'spin free', 'cr ol cs ol sr 3.6 g ol', 'hot', 'stays off']],
    then: ['capacitor-good', 'compressor-draws-nothing', 'capacitor-good', 'overload-open', 'left-off'],
    ends: 'left',
  },
  {
    title: 'Locked at first, and no amps with the assist: not seized either',
    lines: [...LOCKED, '221 comp 92', ...DEAD_AGAIN, 'assist fitted', 'closed', 'rested', '238 comp 0'],
    then: ['capacitor-good', 'compressor-draws-nothing'],
  },
  {
    title: 'No clamp meter: no try, and none is called seized',
    lines: [...LOCKED, 'skip no clamp meter'],
    then: ['capacitor-good', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'The LRA is not known: nobody can tell stalled from running',
    lines: [
      ...STALLS,
      ...[
        '17.9 _ 1.2',
        'closed',
        '240 239 comp 0 fan .9',
        'all good',
        'compressor',
        'off now',
        'rested',
        '221 comp 92',
      ],
    ],
    then: ['capacitor-good', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'No volts behind the contactor',
    lines: [...LOCKED, '0 comp 0'],
    then: ['capacitor-good', 'no-volts-at-the-compressor'],
    ends: 'raised',
  },
  {
    title: 'The volts sag during the try: no compressor is judged',
    lines: [...LOCKED, '171 comp 70', 'tries rest 240 unit 172 feed 236'],
    then: ['capacitor-good', 'supply-out'],
    ends: 'raised',
  },
];

export const MOTOR_AFTER: readonly Example[] = [
  {
    title: 'Volts at a free fan with a good capacitor: a new motor, proven',
    lines: [
      ...[...STILL, 'fan', '239', 'yes', 'clean, 1 cap', '121 / 0.2 0 0.1 / 0 0 / 121', '9.3 / 0.6 0.1 0.5 / 9.3'],
      ...[
        'motor fitted',
        '45+5 6% 440',
        'other 45+5 440 herm 45.2 fan 5.01',
        'fitted',
        'wires back',
        'closed',
        '240 239 comp 13.1 fan .9 split 19',
      ],
    ],
    then: ['capacitor-good', 'fan-motor-electric', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'No such motor on the truck',
    lines: [
      ...[
        ...STILL,
        'fan',
        '239',
        'yes',
        'clean, 1 cap',
        '121 / 0.2 0 0.1 / 0 0 / 121',
        '9.3 / 0.6 0.1 0.5 / 9.3',
        'no motor',
      ],
    ],
    then: ['capacitor-good', 'fan-motor-electric', 'no-part'],
    ends: 'left',
  },
];

/** The cabinet proved dead, and the probes placed in it. */
const PLACED = [...GATES, 'placed'];
/** The same, the plug looked at and the blade turned by hand before. */
const SPUN = [...PLACED.slice(0, -1), 'spins free', 'placed'];
export const ECM_FAN: readonly Example[] = [
  {
    title: 'Whether its plug is dry nobody can see: nothing live beside it, handed over',
    lines: ['c', 'ecm', 'neither', 'can’t see it'],
    then: ['electronic-fan-handed-over'],
    ends: 'raised',
  },
  {
    title: 'Blocked or wet: no motor is condemned on that',
    lines: ['c', 'ecm', 'neither', 'wet'],
    then: ['electronic-fan-blocked-or-wet'],
    ends: 'raised',
  },
  {
    title: 'Line and command there, free and dry: motor or module',
    lines: ['c', 'ecm', 'neither', 'free', 'off now', 'rested', 'qualified', ...SPUN, '239', 'there'],
    then: ['electronic-motor-suspect'],
    ends: 'raised',
  },
  {
    title: 'No line at its plug',
    lines: ['c', 'ecm', 'neither', 'free', 'off now', 'rested', 'qualified', ...SPUN, '0'],
    then: ['electronic-fan-not-fed'],
    ends: 'raised',
  },
  {
    title: 'Line, and no command',
    lines: ['c', 'ecm', 'neither', 'free', 'off now', 'rested', 'qualified', ...SPUN, '239', 'no command'],
    then: ['electronic-fan-not-called'],
    ends: 'raised',
  },
  {
    title: 'The probes can’t be placed: nothing live, handed over',
    lines: ['c', 'ecm', 'neither', 'free', 'off now', 'rested', 'qualified', ...GATES, 'spins free', 'cant be placed'],
    then: ['electronic-fan-handed-over'],
    ends: 'raised',
  },
  {
    title: 'Not qualified: handed over',
    lines: ['c', 'ecm', 'neither', 'free', 'off now', 'rested', 'not qualified'],
    then: ['electronic-fan-handed-over'],
    ends: 'raised',
  },
];

export const BUS_RESTS: readonly Example[] = [
  {
    title: 'Off just now, and twice not sure whether it was long enough: the record’s times say no',
    lines: ['c', 'ecm', 'neither', 'free', 'off now', 'not sure', 'not sure'],
    then: ['electronic-fan-handed-over'],
    ends: 'raised',
  },
  {
    title: 'Since when it is off nobody knows: nothing is opened',
    lines: ['c', 'ecm', 'neither', 'free', 'not sure'],
    then: ['electronic-fan-handed-over'],
    ends: 'raised',
  },
];
