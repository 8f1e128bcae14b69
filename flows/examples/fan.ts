/** Worked calls of a motor that stands still with everything good, and of an electronic fan. */
import type { Example } from '../../engine/vocabulary.ts';
import { GATES } from './control.ts';
import { CLOSED, COMPRESSOR, DEAD_AGAIN, GOOD, LINE } from './lines.ts';

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
const STALLS = ['d', 'psc', ...GATES, LINE, 'no diagram', 'wires off', GOOD, 'spin free', COMPRESSOR, ...CLOSED];
const LOCKED = [...STALLS, '240 239 comp 92 fan .9', 'all good', 'compressor', 'rested'];

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
    title: 'Volts held and the windings left out: not called seized',
    lines: [
      ...['d', 'psc', ...GATES, LINE, 'no diagram', 'wires off', GOOD, 'spin free', 'cant', ...CLOSED],
      ...['240 239 comp 92 fan .9', 'all good', 'compressor', 'rested', '221'],
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
    lines: [...LOCKED, '221', ...DEAD_AGAIN, 'assist fitted', 'closed', 'rested', '219', 'still stands'],
    then: ['capacitor-good', 'compressor-seized'],
    ends: 'raised',
  },
  {
    title: 'Tried right after it was off: pressures had not evened out, and nothing is called seized',
    lines: [...LOCKED.slice(0, -1), 'off now', 'waited', '221'],
    then: ['capacitor-good', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'The try with the assist right after it was off: not called seized either',
    lines: [...LOCKED, '221', ...DEAD_AGAIN, 'assist fitted', 'closed', 'off now', 'waited', '219'],
    then: ['capacitor-good', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'It starts with an assist: not seized',
    lines: [...LOCKED, '221', ...DEAD_AGAIN, 'assist fitted', 'closed', 'rested', '219', 'started'],
    then: ['capacitor-good', 'starts-with-an-assist'],
    ends: 'raised',
  },
  {
    title: 'No assist on the truck: not called seized without it',
    lines: [...LOCKED, '221', ...DEAD_AGAIN, 'no assist'],
    then: ['capacitor-good', 'no-start-undecided'],
    ends: 'raised',
  },
  {
    title: 'No volts behind the contactor',
    lines: [...LOCKED, '0'],
    then: ['capacitor-good', 'no-volts-at-the-compressor'],
    ends: 'raised',
  },
  {
    title: 'The volts sag during the try: no compressor is judged',
    lines: [...LOCKED, '171', 'tries rest 240 unit 172 feed 236'],
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
    lines: ['c', 'ecm', 'neither', 'free', 'qualified', '239', 'there'],
    then: ['electronic-motor-suspect'],
    ends: 'raised',
  },
  {
    title: 'No line at its plug',
    lines: ['c', 'ecm', 'neither', 'free', 'qualified', '0'],
    then: ['electronic-fan-not-fed'],
    ends: 'raised',
  },
  {
    title: 'Line, and no command',
    lines: ['c', 'ecm', 'neither', 'free', 'qualified', '239', 'no command'],
    then: ['electronic-fan-not-called'],
    ends: 'raised',
  },
  {
    title: 'Not qualified: handed over',
    lines: ['c', 'ecm', 'neither', 'free', 'not qualified'],
    then: ['electronic-fan-handed-over'],
    ends: 'raised',
  },
];
