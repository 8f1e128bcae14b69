import { confirm, flow, isolation, judge, measure, probes, volts } from '../../engine/vocabulary.ts';
import { GATE_EXITS, LEAVING } from '../dead/leaving.ts';
import { lockedOut } from '../dead/locked-out.ts';
import { provedDead } from '../dead/proved.ts';
import { BUS_DEAD } from '../examples/inverter.ts';
import { LIMITS } from '../limits.ts';

const LOAD_SIDE = {
  ...{ t1g: 'Indoor cable, terminal 1 to ground', t1: 'indoor cable, 1' },
  ...{ t2g: 'Indoor cable, terminal 2 to ground', t2: 'indoor cable, 2' },
};

/** Make an inverter dead and prove it: the label's wait, the line, then the bus between two readings of a battery. */
export const makeBusDead = flow({
  id: 'make-bus-dead',
  version: 1,
  title: 'Make it dead: inverter',
  exits: [...GATE_EXITS, 'charged', 'bus-line', 'bleeder'],
  examples: BUS_DEAD,
  steps: {
    ...lockedOut('waited'),
    waited: confirm({
      say: 'Wait as long as the label says, 10 minutes where it says nothing. Then cover off, LED out?',
      body: ['Touch nothing but the screws. A lit LED on the board means a charged bus.'],
      callouts: [
        {
          level: 'danger',
          text: 'The bus holds hundreds of volts for minutes. No screwdriver, no lamp, no tool for run capacitors.',
        },
      ],
      why: 'The bus empties through its own resistor only: 325 V on 1640 µF and 80 kΩ is 33 V after 5 minutes and 3.4 V after 10.',
      source: ['Label’s time, else 10 minutes: our setting', 'The decay: arithmetic'],
      yes: 'Waited, LED out',
      words: ['waited', 'led out', 'led off', 'light out', 'waited 10 minutes', '10 minutes'],
      cant: { label: 'The LED stays lit', words: ['led on', 'still lit', 'led lit'], to: '!charged' },
      next: 'proving',
    }),
    ...provedDead(LOAD_SIDE, 'bus'),
    bus: measure({
      say: 'DC volts at the maker’s points, P to N, between two readings of a 9 V battery.',
      body: ['The points that the maker names, insulated probes rated for the volts. Battery, P to N, battery again.'],
      callouts: [{ level: 'danger', text: 'Treat P and N as live until this line is accepted.' }],
      why: 'A bleeder that failed leaves the bus charged long past the label’s time.',
      source: ['our setting: 5 V DC; above 50 V the bleeder has failed'],
      picture: probes('V DC', ['Battery +', 'Battery −', 'about 9 V, before and after'], ['P', 'N', '5 V or less']),
      circuit: 'part',
      fields: {
        batteryBefore: volts('9 V battery, before', { over: false, words: ['battery', 'batt', '9v'] }),
        pn: volts('P to N, DC', { over: false, signed: true, words: ['p-n', 'pn', 'bus', 'p to n'] }),
        batteryAfter: volts('Battery, after', { over: false, words: ['again', 'battery again'] }),
      },
      cant: '!charged',
      next: 'left',
    }),
    left: judge('bus', {
      of: { readings: 'bus', waited: 'waited' },
      limits: LIMITS.bus,
      then: { go: '!proved', wait: '!charged', stop: '!bleeder', meter: '!bus-line', undecided: '!bus-line' },
    }),
  },
});

export const busDead = isolation({
  page: makeBusDead,
  leaving: {
    ...LEAVING,
    charged: {
      forget: 'waited',
      notice: 'The bus is still charged. Five minutes more, hands off, then the whole of it again.',
      tries: {
        times: 3,
        held: 'Three times the bus was not empty. Close up. The lock stays on. A senior or the owner opens another three.',
      },
    },
    'bus-line': {
      forget: 'bus',
      notice: 'The bus counts only between two good readings of the battery. Take that line again.',
    },
    bleeder: {
      forget: 'means',
      notice: 'More than 50 V after the label’s time: the bleeder has failed. Close up, hands out.',
      tries: {
        times: 1,
        held: 'The bus does not empty by itself. Close up. The lock stays on. Only a senior goes on.',
      },
    },
  },
  reentry: { age: 'proving', void: 'locked', holder: 'fit' },
  minutes: LIMITS.isolation.minutes,
  controlMost: LIMITS.isolation.control,
  prompts: ['fit', 'means', 'locked', 'waited', 'proving', 'bus'],
});
