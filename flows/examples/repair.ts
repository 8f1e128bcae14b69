/** Worked calls from the cause to the proof: the right part, readings under load, the restart. */
import type { Example } from '../../engine/vocabulary.ts';
import {
  again,
  CLOSED,
  DEAD_AGAIN,
  dead,
  GOOD,
  LINE,
  MOTORS,
  NEW_PART,
  PROVING,
  RESIDUAL,
  RUNS,
  WEAK,
  wiresOff,
} from './lines.ts';
import { THREE_CONDEMNED } from './second.ts';

const WEAK_HERM = [...wiresOff(), WEAK, ...MOTORS];

export const REPAIR: readonly Example[] = [
  ...THREE_CONDEMNED,
  {
    title: 'A coil full of dirt cooked the capacitor',
    lines: [...WEAK_HERM, 'coil dirty', ...NEW_PART, ...RUNS],
    then: ['section-fails-value', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'One of years ago says nothing of this one',
    unit: {
      history: [
        {
          ...{ at: '2023-07-02T14:00:00.000Z', job: 'years ago', what: 'fitted', item: 'run capacitor' },
          ...{ herm: '45.2', fan: '5.02' },
        },
      ],
    },
    lines: [...WEAK_HERM, 'age', ...NEW_PART, ...RUNS],
    then: ['section-fails-value', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The second one in a season: a senior looks at why',
    unit: {
      history: [
        {
          at: '2026-06-02T14:00:00.000Z',
          job: 'earlier',
          what: 'fitted',
          item: 'run capacitor',
          herm: '45.2',
          fan: '5.02',
        },
      ],
    },
    lines: [...WEAK_HERM, 'replaced recently', ...NEW_PART, ...RUNS],
    then: ['section-fails-value', 'second-in-a-season', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The wrong part was in: the diagram decides',
    lines: [
      ...[...dead(), LINE, '35+5 370', 'wires off herm fan c', WEAK, ...MOTORS, 'nothing'],
      ...['other 35+5 440 herm 35.2 fan 5.02', 'fitted', 'wires back', ...RUNS],
    ],
    then: ['section-fails-value', 'wrong-part-fitted', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The right part is in, and the next round reads it by its own print, not by the old one’s',
    lines: [
      ...[
        ...dead('d', 'clean, 1 cap, 35+5 6% 440'),
        LINE,
        '45+5 440',
        'wires off',
        'herm 35.2 fan 5.02 hf 4.4 case ol',
        ...MOTORS,
        'nothing',
      ],
      ...['other 45+5 440 herm 45.3 fan 5.02', 'fitted', 'wires back', ...CLOSED, '240 239 comp 92 fan .9', 'off'],
      ...['d', 'yes', 'clean, 1 cap', PROVING, RESIDUAL, LINE, 'wires off', '45+5 6% 440'],
      ...['herm 45.3 fan 5.02 case ol', ...MOTORS, 'closed', '240 239 comp 13.1 fan .9 split 19'],
    ],
    then: ['wrong-part-fitted', 'new-part-right', 'capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'A contactor goes in, and so does the capacitor that the diagram asks for: nothing wrong stays',
    lines: [
      ...[...dead(), 'fuses 0.1 0.1 contacts .1 .1 coil ol t1g ol t2g ol', 'contacts .1 .1 coil ol, prints 24'],
      ...[
        '35+5 440',
        'wires off',
        GOOD,
        ...MOTORS,
        'contactor',
        'other 35+5 440 herm 35.2 fan 5.02',
        'fitted',
        'contactor fitted',
        'wires back',
        ...RUNS,
      ],
    ],
    then: ['contactor-coil-open', 'wrong-part-fitted', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'No such part on the truck: it stays off',
    lines: [...WEAK_HERM, 'nothing', 'skip no such part'],
    then: ['section-fails-value', 'no-part'],
    ends: 'left',
  },
];

export const PART: readonly Example[] = [
  {
    title: 'The next size up is refused, the same size is fitted',
    lines: [...WEAK_HERM, 'nothing', 'other 55+5 440 herm 55.1 fan 5.02', ...NEW_PART, ...RUNS],
    then: ['section-fails-value', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
];

const NO_METER = [...wiresOff(), 'skip no capacitance range', 'herm ol fan ol', ...MOTORS];
export const LOAD_CALLS: readonly Example[] = [
  {
    title: 'Inside its label under load',
    lines: [...NO_METER, 'yes', 'herm 6.1 across 360', ...RUNS],
    then: ['value-undecided', 'section-good-under-load', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'Inside its label under load, and the diagram asks for the same',
    lines: [
      ...[...dead(), LINE, '45+5 440', 'wires off', 'skip no capacitance range', 'herm ol fan ol', ...MOTORS],
      ...['yes', 'herm 6.1 across 360', ...RUNS],
    ],
    then: ['value-undecided', 'section-good-under-load', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'Inside its own label under load, and the diagram asks for another: the wrong part is in',
    lines: [
      ...[...dead(), LINE, '35+5 440', 'wires off', 'skip no capacitance range', 'herm ol fan ol', ...MOTORS],
      ...['yes', 'herm 6.1 across 360', 'nothing'],
      ...['yes', 'clean, 1 cap', '121 / 0.2 0 0.1 / 0 0 / 121', '9.3 / 0.6 0.1 0.5 / 9.3'],
      ...['other 35+5 440 herm 35.2 fan 5.02', 'fitted', 'wires back', ...RUNS],
    ],
    then: ['value-undecided', 'wrong-part-fitted', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Out of its label under load: dead again, and replaced',
    lines: [
      ...[...NO_METER, 'yes', 'herm 4.2 across 360', 'nothing'],
      ...[...again().slice(1, 5), ...NEW_PART, ...RUNS],
    ],
    then: ['value-undecided', 'section-fails-under-load', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Nobody qualified for it: a senior decides',
    lines: [...NO_METER, 'not qualified'],
    then: ['value-undecided', 'value-left-open'],
    ends: 'raised',
  },
];

const GOOD_UNIT = [...wiresOff(), GOOD, ...MOTORS, ...CLOSED];
const restart = (title: string, lines: readonly string[], then: readonly string[], ends: string): Example => ({
  title,
  lines: [...GOOD_UNIT, ...lines],
  then: ['capacitor-good', ...then],
  ends,
});
export const RESTART: readonly Example[] = [
  restart(
    'Within its figures, the split a quarter of an hour later',
    ['240 239 comp 13.1 fan .9', 'split 19'],
    ['runs-nothing-found'],
    'done',
  ),
  restart(
    'The supply out of its limits, lost across a pole of its means',
    ['190 comp 13.1 fan .9', 'runs unit 190 feed 238 poles 0.2 46'],
    ['supply-out'],
    'raised',
  ),
  restart(
    'Above what it may draw for long: off, and a senior',
    ['240 239 comp 29.4 fan .9 split 19'],
    ['compressor-above-mcc'],
    'raised',
  ),
  restart('Restarted without a clamp meter', ['skip no clamp meter'], ['restart-not-proven'], 'raised'),
  restart(
    'Volts lost between L and T, not in the poles',
    ['241 236 comp 13.1 fan .9 split 19', '.1 .1'],
    ['drop-in-the-wiring'],
    'raised',
  ),
];

const NO_VOLTS = '240 0 comp 0 fan 0';
export const NOT_IN: readonly Example[] = [
  restart(
    'A delay holds the contactor out: waited for, then all figures',
    [NO_VOLTS, 'just now', 'pulls in', 'closed', '240 239 comp 13.1 fan .9 split 19'],
    ['runs-nothing-found'],
    'done',
  ),
  {
    title: 'The contactor is out five minutes after the call: its control comes next, and no pole',
    lines: [...GOOD_UNIT, NO_VOLTS, 'left alone'],
    then: ['capacitor-good', 'contactor-not-in'],
  },
  restart(
    'The contactor is in, and nothing draws: what lies behind it is a senior’s',
    [NO_VOLTS, 'it is in'],
    ['nothing-behind-the-contactor'],
    'raised',
  ),
  restart(
    'Poles that read the line’s volts are no closed poles',
    ['241 236 comp 13.1 fan .9 split 19', '120 120'],
    ['poles-undecided'],
    'raised',
  ),
];

const DROPS = ['241 236 comp 13.1 fan .9 split 19', '2.4 .1'];
export const CONTACTOR_AFTER: readonly Example[] = [
  restart(
    'A pole drops too much under load, its contact good when dead: a new contactor, proven',
    [
      ...[...DROPS, ...DEAD_AGAIN, 'contactor fitted', 'wires back', 'closed'],
      ...['240 239 comp 13.1 fan .9 split 19'],
    ],
    ['contact-drop', 'repair-proven'],
    'done',
  ),
  restart(
    'No such contactor on the truck: it stays off',
    [...DROPS, ...DEAD_AGAIN, 'no contactor'],
    ['contact-drop', 'no-part'],
    'left',
  ),
  restart(
    'Wires off the old contactor and no record of them: nothing goes back by guess',
    [...DROPS, ...DEAD_AGAIN, 'contactor fitted', 'wiring lost'],
    ['contact-drop', 'wiring-not-known'],
    'left',
  ),
];
