import {
  count,
  flow,
  form,
  isolation,
  judge,
  measure,
  one,
  pictured,
  printed,
  probesOf,
  several,
  shown,
  volts,
} from '../../engine/vocabulary.ts';
import { MAKE_DEAD } from '../examples/start.ts';
import { LIMITS } from '../limits.ts';
import { GATE_EXITS, LEAVING } from './leaving.ts';
import { lockedOut } from './locked-out.ts';
import { provedDead } from './proved.ts';

const LOAD_SIDE = { t1g: 'T1 to ground, load side', t2g: 'T2 to ground, load side', t1: 'T1', t2: 'T2' };
const HOLDS_CHARGE = { look: 'look', unit: '@class', drive: '@cabinet:drive' } as const;

/** Make it dead and prove it: six prompts, four by tapping, two typed lines. */
export const makeDead = flow({
  id: 'make-dead',
  version: 1,
  title: 'Make it dead',
  exits: [...GATE_EXITS, 'unseen', 'residual', 'no-resistor'],
  examples: MAKE_DEAD,
  steps: {
    ...lockedOut('look'),
    look: form({
      say: 'Cover off, eyes only. What do you see, and how many capacitors?',
      body: [
        'Touch nothing yet. A start assist may hide behind the wrap.',
        'The print gives the hold time; leave it out if you can’t read it.',
      ],
      callouts: [{ level: 'danger', text: 'Capacitors may be charged. Keep fingers and tools out.' }],
      why: 'The number of capacitors sets how many residual readings are due.',
      parts: {
        condition: several(
          'What you see',
          {
            clean: {
              label: 'Clean, nothing odd',
              alone: true,
              words: [
                'cover off clean',
                'clean',
                'looks clean',
                'limpio',
                'limpio',
                'ok',
                'nothing',
                'nothing odd',
                'looks good',
                'all good',
              ],
            },
            bulged: {
              label: 'Bulged top',
              words: [
                'bulged',
                'bulge',
                'swollen',
                'swelled',
                'swelled up',
                'swelling',
                'bulging',
                'domed',
                'puffed up',
                'top swelled up',
                'inflado',
              ],
            },
            oil: { label: 'Oil', words: ['oily', 'leaking oil'] },
            vented: { label: 'Vent or disc popped', words: ['popped', 'disc popped', 'vent popped', 'vent open'] },
            'burnt-through': { label: 'Terminal burnt through', words: ['tab burnt off'] },
            scorched: { label: 'Scorched wire or tab, old mark', words: ['scorched'] },
            loose: { label: 'Loose connection', words: ['loose', 'loose wire', 'loose wires', 'loose tab'] },
            rust: { label: 'Rust, dirt or age', words: ['rusty', 'dirty', 'old'] },
            wet: { label: 'Wet inside' },
            chewed: { label: 'Chewed wires', words: ['chewed', 'mice', 'mouse', 'mouse nest', 'rats', 'ants', 'nest'] },
          },
          { as: 'cabinet:condition' },
        ),
        count: count('Number of capacitors', {
          as: 'cabinet:count',
          words: [
            'cap',
            'caps',
            'capacitor',
            'capacitors',
            'dual cap',
            'dual caps',
            'run cap',
            'dual run cap',
            'dual capacitor',
            'run capacitor',
          ],
        }),
        print: printed('Print of the run capacitor', { optional: true, as: 'cabinet:label' }),
        terminals: one(
          'Its terminals, where the print can’t be read',
          {
            two: { label: 'Two', words: ['two terminals', '2 terminals'] },
            three: { label: 'Three: C, HERM, FAN', words: ['three terminals', '3 terminals'] },
          },
          { optional: true },
        ),
        photo: pictured('Photo', { optional: true }),
      },
      next: 'seen',
    }),
    // The one that nobody saw is the charged one: no probe goes in before it is found.
    seen: judge('capacitors', {
      of: HOLDS_CHARGE,
      limits: {},
      quiet: ['none', 'some', 'undecided'],
      then: { none: 'proving', unseen: '!unseen', some: 'proving', undecided: 'proving' },
    }),
    ...provedDead(LOAD_SIDE, 'capacitors'),
    capacitors: judge('capacitors', {
      of: HOLDS_CHARGE,
      limits: {},
      quiet: ['none', 'some'],
      then: { none: '!proved', unseen: '!unseen', some: 'residual', undecided: '!line' },
    }),
    residual: measure({
      say: 'Discharge every capacitor through the resistor tool, then measure what is left.',
      body: [
        'Resistor tool: 20 kΩ, 5 W, insulated probes rated for the volts. Hold on each pair: HERM–C, FAN–C, HERM–FAN; two terminals: across them.',
        'Then DC volts: a 9 V battery, each pair, the battery again.',
        'Discharge even if the first reading is near zero.',
      ],
      callouts: [
        { level: 'danger', text: 'A screwdriver is no discharge tool.' },
        { level: 'warning', text: 'Fingers stay off the terminals until this line is accepted.' },
      ],
      why: 'A wired capacitor usually empties through the windings. It holds its charge exactly where a wire or a winding is open.',
      source: [
        '29 CFR 1910.333(b)(2)(ii)(C): capacitors discharged',
        '20 kΩ resistor: common practice, no single source',
        'our setting: 5 V DC',
      ],
      picture: probesOf('V DC', {
        batteryBefore: ['9 V battery +', '−', '7 to 10 V'],
        hc: ['HERM, or one', 'C, or the other'],
        fc: ['FAN', 'C'],
        hf: ['HERM', 'FAN'],
        c2: ['second capacitor', 'across'],
        c3: ['third capacitor', 'across'],
        c4: ['fourth capacitor', 'across'],
        batteryAfter: ['9 V battery +', '−', '7 to 10 V'],
      }),
      circuit: 'part',
      shows: [shown('hold', { of: { label: '@cabinet:label', look: 'look' }, limits: LIMITS.hold })],
      fields: {
        batteryBefore: volts('9 V battery, before', { over: false, words: ['battery', 'batt', '9v'] }),
        hc: volts('HERM to C or across', {
          over: false,
          signed: true,
          words: ['h-c', 'c-h', 'herm', 'herm-c', 'c-herm', 'herm to c', 'run', 'run cap'],
        }),
        fc: volts('FAN to C', {
          over: false,
          signed: true,
          words: ['f-c', 'c-f', 'fan', 'fan-c', 'c-fan', 'fan to c'],
          when: { fact: 'look', part: 'terminals', unless: 'two' },
        }),
        hf: volts('HERM to FAN', {
          over: false,
          signed: true,
          words: ['h-f', 'f-h', 'herm-fan', 'fan-herm', 'herm to fan'],
          when: { fact: 'look', part: 'terminals', unless: 'two' },
        }),
        c2: volts('Second capacitor', {
          over: false,
          signed: true,
          words: ['second', 'start', 'start cap'],
          when: { fact: 'look', part: 'count', above: LIMITS.count.one },
        }),
        c3: volts('Third capacitor', {
          over: false,
          signed: true,
          when: { fact: 'look', part: 'count', above: LIMITS.count.two },
        }),
        c4: volts('Fourth capacitor', {
          over: false,
          signed: true,
          when: { fact: 'look', part: 'count', above: LIMITS.count.three },
        }),
        batteryAfter: volts('Battery, after', { over: false, words: ['again', 'battery again', 'batt again'] }),
      },
      cant: '!no-resistor',
      next: 'left',
    }),
    left: judge('residual', {
      of: { line: 'residual', look: 'look' },
      limits: LIMITS.residual,
      then: {
        discharged: '!proved',
        'too-high': '!residual',
        battery: '!residual',
        disagree: '!residual',
        undecided: '!residual',
      },
    }),
  },
});

export const dead = isolation({
  page: makeDead,
  leaving: {
    ...LEAVING,
    unseen: {
      forget: 'look',
      notice:
        'A motor here needs a run capacitor, and none was seen. The one that was not seen may be charged. Look again, eyes only: behind a shield, wrap or board. None to be found: hands out, type senior, or stop.',
      tries: {
        times: 2,
        held: 'Twice no capacitor was found where a motor needs one. Hands out, close up. The lock stays on. A senior decides what this unit is.',
      },
    },
    residual: {
      forget: 'residual',
      notice: 'Discharge again on bare metal, then take the whole line again.',
      tries: {
        times: 3,
        held: 'Three residual lines were not accepted. Close up. The lock stays on. A senior or the owner opens another three.',
      },
    },
    'no-resistor': {
      forget: 'residual',
      notice:
        'No discharge tool or no battery, no hands inside. Use the resistor lead and a 9 V battery from the truck, or a meter’s low-impedance mode where its manual and your shop allow it. Else type senior, or stop.',
    },
  },
  reentry: { age: 'proving', void: 'locked', holder: 'fit' },
  minutes: LIMITS.isolation.minutes,
  controlMost: LIMITS.isolation.control,
  prompts: ['fit', 'means', 'locked', 'look', 'proving', 'residual'],
  grows: { step: 'look', part: 'count' },
});
