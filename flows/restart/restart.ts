import {
  amps,
  choose,
  confirm,
  degrees,
  degreesApart,
  flow,
  form,
  found,
  include,
  judge,
  measure,
  one,
  verdict,
  volts,
} from '../../engine/vocabulary.ts';
import { UNDER_LOAD } from '../capacitor/under-load.ts';
import { REPLACED } from '../capacitor/verdicts.ts';
import { QUALIFIED } from '../cautions.ts';
import { CONTROL_SETTLED } from '../control/control.ts';
import { SETTLED } from '../cooling/settled.ts';
import { WASHED } from '../cooling/wash.ts';
import { CONTACTOR, HAS_TO_COOL, MOTOR, OUTSIDE } from '../dead/block.ts';
import { leftOff } from '../endings.ts';
import { NOT_IN, RESTART } from '../examples/repair.ts';
import { SOURCE_SETTLED } from '../indoor/source.ts';
import { LIMITS } from '../limits.ts';
import { ROUNDS, WAIT } from '../motors/starts.ts';
import { START_GEAR } from '../refrigeration/start-gear.ts';
import { located } from '../supply/located.ts';
import { GROUND_SETTLED } from '../trips/ground.ts';
import { BOXED, NOT_BOXED, PLATE, THREE_PHASE, whichPlate } from '../unit.ts';
import { TERMINALS_SETTLED } from '../windings/terminals.ts';
import { cooled } from './cooled.ts';
import { notIn } from './not-in.ts';
import { poles } from './poles.ts';
import { results } from './results.ts';
import { NOTHING_ODD } from './sound.ts';

const sound = {
  fine: NOTHING_ODD,
  noise: { label: 'A new noise', words: ['noise', 'noisy', 'rattles', 'rattling', 'growls', 'grinding', 'squeals'] },
  chatter: { label: 'The contactor chatters', words: ['chatters', 'chattering', 'buzzes', 'buzzing'] },
  backwards: {
    label: 'Something turns the wrong way',
    words: [
      'backwards',
      'runs backwards',
      'scroll backwards',
      'loud and no amps',
      'running backwards',
      'fan backwards',
      'fan running backwards',
      'wrong way',
      'reversed',
    ],
  },
};

/** What was put right without a part: a restart in its figures proves it too. */
const RIGHTED = [
  ...CONTROL_SETTLED,
  ...SOURCE_SETTLED,
  ...GROUND_SETTLED,
  ...TERMINALS_SETTLED,
  'fan-blade-cleared',
  'thermostat-was-set-wrong',
  'stood-in-defrost',
  'box-high-pressure-reset',
  'box-condenser-cleaned',
  ...WASHED,
  'new-part-right',
] as const;

/** Protectors that opened on heat. What made it hot is not put right by waiting. */
export const OPENED_HOT = [
  'overload-open',
  'compressor-open-until-cool',
  'fan-protector-open',
  'fan-open-until-cool',
  ...HAS_TO_COOL,
] as const;

/** Power on, and the figures that prove the repair. */
export const restart = flow({
  id: 'restart',
  version: 1,
  title: 'Restart and prove',
  exits: ['done', 'again', 'late', 'still', 'contactor', 'raised', 'left'],
  examples: [...RESTART, ...NOT_IN],
  steps: {
    plate: form({
      say: 'From the nameplate: RLA, LRA, fan FLA.',
      body: ['Leave out with _ what you can’t read.'],
      parts: PLATE,
      next: 'hot',
    }),
    hot: found({
      among: { open: { verdicts: OPENED_HOT, to: 'cool' } },
      none: 'closed',
    }),
    ...cooled('C to R, the fan’s open pair, or the overload outside the shell.', 'closed', 'stays-off'),
    closed: confirm({
      sitting: true,
      powers: ['yes'],
      say: 'Close up and clear the unit.',
      body: [
        'Tools out, cover on, people clear.',
        'Your lock comes off by your own hand.',
        'Power on from a safe position.',
      ],
      callouts: [QUALIFIED],
      source: ['29 CFR 1910.333(b)(2)(v): tools removed, people warned and clear, lock removed by who applied it'],
      yes: 'Closed, clear, qualified for the live readings',
      words: [
        'closed',
        'closed up',
        'closed and clear',
        'all closed up',
        'buttoned up',
        'cover on power on',
        'cover on lock off',
        'closed lock off',
        'closed up lock off',
        'cover on lock off power on',
        'power on',
        'turned on',
        'turned it on',
      ],
      no: {
        label: 'Not today: it stays off',
        words: ['stays off', 'not today', 'leave it off', 'leaving it off', 'left off'],
        to: 'stays-off',
      },
      next: 'figures',
    }),
    figures: measure({
      say: 'All live figures in one sitting.',
      body: [
        'L1 to L2, T1 to T2, compressor amps, fan amps. The split after 10 to 15 minutes: return minus supply.',
        'A box: its air now, and again later, instead of the split. One leg and neutral: L1 to L2 is hot to neutral.',
        'Watch the contactor pull in, the fan’s direction, and listen. A delay may hold it out for five minutes: wait.',
      ],
      callouts: [{ level: 'danger', text: 'Line voltage is present. The isolation has ended.' }],
      why: 'A verdict is not proven until these figures are in.',
      source: [
        '197 to 253 V for a 208/230 V single-phase hermetic: a compressor maker’s bulletin (secondary source)',
        '187 V three-phase; one printed voltage ±10 %: NEMA MG 1-12.44.1',
        'fan above FLA and compressor above MCC (1.56 times RLA) are findings; RLA is not a limit; three legs within 10 %: common practice',
      ],
      circuit: 'line',
      fields: {
        l1l2: volts('L1 to L2', {
          over: false,
          words: ['volts', 'v', 'l1-l2', 'line', 'supply volts', 'line volts'],
          as: 'round:ran',
          anew: true,
        }),
        l2l3: volts('L2 to L3', { over: false, words: ['l2-l3'], when: THREE_PHASE }),
        l1l3: volts('L1 to L3', { over: false, words: ['l1-l3'], when: THREE_PHASE }),
        t1t2: volts('T1 to T2', { over: false, words: ['t1-t2', 'load'], optional: true }),
        comp: amps('Compressor', { over: false, words: ['comp', 'c', 'compressor'] }),
        comp2: amps('Compressor, second leg', {
          over: false,
          words: ['comp', 'compressor', 'c', 'leg 2'],
          when: THREE_PHASE,
        }),
        comp3: amps('Compressor, third leg', {
          over: false,
          words: ['comp', 'compressor', 'c', 'leg 3'],
          when: THREE_PHASE,
        }),
        fan: amps('Fan', { over: false, words: ['f'] }),
        min: volts('T1 to T2 at the start, the lowest', {
          over: false,
          words: ['lowest', 't1t2 min', 'sag'],
          optional: true,
        }),
        split: degreesApart('Split, return minus supply', {
          words: ['delta', 'delta t', 'td', 'dt', 'temp split', 'temperature split'],
          optional: true,
          when: NOT_BOXED,
        }),
        box: degrees('Air in the box now', { words: ['box', 'air'], when: BOXED }),
        sound: one('What you see and hear', sound, { optional: true }),
      },
      cant: 'no-figures',
      next: 'judged',
    }),
    judged: judge('restart', {
      of: { figures: 'figures', later: 'later', plate: 'plate', printed: '@volts', unit: '@class' },
      limits: LIMITS.restart,
      says: {
        wait: 'All that was read so far is in. Whether it cools is still to come.',
        'which-plate': 'The line fits another nameplate than 208/230 V.',
        supply: 'The supply is outside its limits.',
        drop: 'T1 to T2 lies well below L1 to L2. The poles are read one by one.',
        'not-in': 'Neither motor draws. Before any part: is the contactor in at all?',
        'not-starting':
          'A motor is not running on these amps. Turn it off now: one that stalls overheats within seconds.',
        'above-mcc': 'It draws more than its protector lets pass for long. Turn it off.',
        'legs-apart': 'The three legs draw too far apart. Turn it off.',
        'fan-high': 'The fan draws more than its FLA.',
        sound: 'Something sounds or turns wrong.',
        'split-out': 'It runs and doesn’t cool as it should: air or charge is another question.',
      },
      then: {
        in: 'falls',
        wait: 'later',
        'which-plate': 'printed',
        supply: 'supply',
        drop: 'poles',
        'not-in': 'in-yet',
        'not-starting': 'stands',
        'above-mcc': 'heavy',
        'legs-apart': 'legs',
        'fan-high': 'off',
        sound: 'off',
        'split-out': 'off',
        undecided: 'no-figures',
      },
    }),
    printed: whichPlate('judged', 'supply'),
    later: form({
      say: 'After 10 to 15 minutes: does it cool? The split, or of a box its air now.',
      body: [
        'The split is return minus supply, measured near the coil, not at the grilles.',
        'A box after 20 minutes, door shut. Nothing odd to see or hear?',
      ],
      why: 'Amps show that the motors run. The split shows that it cools.',
      source: ['14 to 23 °F at usual humidity and airflow: common practice, sources differ'],
      parts: {
        split: degreesApart('Split, return minus supply', {
          words: ['delta', 'delta t', 'td', 'dt', 'temp split', 'temperature split'],
          when: NOT_BOXED,
        }),
        box: degrees('Air in the box now', { words: ['box', 'air'], when: BOXED }),
        sound: one('What you see and hear', sound, { optional: true }),
      },
      cant: 'judged',
      next: 'judged',
    }),
    ...notIn,
    // Said at the supply, and open until the poles are read under load.
    falls: found({
      among: { once: { verdicts: ['load-side-falls-at-start'], to: 'poles' } },
      none: 'outcome',
    }),
    ...poles,
    outcome: found({
      among: {
        repaired: {
          verdicts: [
            ...REPLACED,
            ...UNDER_LOAD,
            ...MOTOR,
            ...CONTACTOR,
            'contact-drop',
            ...START_GEAR,
            ...OUTSIDE,
            ...SETTLED,
            ...RIGHTED,
          ],
          to: 'proven',
        },
        hot: { verdicts: OPENED_HOT, to: 'why-hot' },
      },
      none: 'nothing-found',
    }),
    stands: choose({
      say: 'Off, now. A motor stands still or stalls: what next?',
      body: [WAIT],
      why: 'Where every dead test was good, volts where the motor is fed decide. Else the next round begins.',
      options: {
        again: {
          label: 'Next round: something is new or was left out',
          words: ['off', 'next round', 'again', 'off now'],
          to: '!again',
        },
        still: {
          label: 'All dead tests were good: read its volts',
          words: ['all good', 'read its volts', 'still', 'everything good', 'dead tests good'],
          to: '!still',
        },
      },
      // Not sure that every dead test was good: they are gone through once more, before anything live.
      cant: '!again',
    }),
    off: confirm({
      say: 'Turn it off. The next round begins from the observation.',
      body: [`${WAIT} At most ${ROUNDS} rounds, then a senior.`],
      yes: 'Off',
      // It doesn't go off: that is an observation of its own, and every cabinet is proved dead anew before hands go in.
      unsure: '!again',
      next: '!again',
    }),
    ...results,
    supply: include(located, { exits: { raised: '!raised' }, needs: { plate: '@volts', unit: '@class' } }),
    'no-figures': verdict({
      verdict: 'restart-not-proven',
      title: 'Restarted, not proven',
      says: ['Without the figures the repair is not proven.'],
      next: [
        'L1 to L2, compressor amps, fan amps and the split, beside the RLA, LRA and FLA of the nameplate, would prove it.',
        'A senior sees this call.',
      ],
      who: 'senior',
      judged: ['judged'],
      evidence: ['figures', 'later'],
      raises: 'verdict',
      then: '!raised',
    }),
    'stays-off': leftOff('closed', 'cool'),
  },
});
