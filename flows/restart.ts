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
  probes,
  verdict,
  volts,
} from '../engine/vocabulary.ts';
import { REPLACED } from './capacitor-verdicts.ts';
import { CONTROL_SETTLED } from './control/control.ts';
import { SOURCE_SETTLED } from './control/indoor-source.ts';
import { DELAY } from './control/words.ts';
import { SETTLED } from './cooling/settled.ts';
import { CONTACTOR, HAS_TO_COOL, MOTOR, OUTSIDE } from './dead-block.ts';
import { leftOff } from './endings.ts';
import { NOT_IN, RESTART } from './examples/repair.ts';
import { LIMITS } from './limits.ts';
import { ROUNDS, WAIT } from './motors/starts.ts';
import { TERMINALS_SETTLED } from './motors/terminals.ts';
import { START_GEAR } from './start-gear.ts';
import { located } from './supply/located.ts';
import { GROUND_SETTLED } from './trips/ground.ts';
import { UNDER_LOAD } from './under-load.ts';
import { BOXED, NOT_BOXED, PLATE, THREE_PHASE, whichPlate } from './unit.ts';

const sound = {
  fine: {
    label: 'Nothing odd',
    words: [
      'fine',
      'ok',
      'good',
      'normal',
      'sounds good',
      'sounds fine',
      'sounds normal',
      'no noise',
      'quiet',
      'runs quiet',
      'clean',
    ],
  },
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
  'new-part-right',
] as const;

/** Protectors that opened on heat. What made it hot is not put right by waiting. */
const OPENED_HOT = ['overload-open', 'fan-protector-open', ...HAS_TO_COOL] as const;

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
    cool: confirm({
      say: 'An overload is open. Has it cooled, and does it read again?',
      body: [
        'It takes hours. C to R, the fan’s pairs, or an overload outside the shell read again when it has closed.',
      ],
      why: 'Power on an open overload proves nothing, and the cause is still there.',
      yes: 'Cooled, reads again',
      words: ['cooled', 'cooled off', 'cooled down', 'reads again', 'closed again'],
      no: {
        label: 'Not today: it stays off',
        words: ['stays off', 'leave it off', 'leaving it off', 'not yet', 'still hot', 'still open'],
        to: 'stays-off',
      },
      next: 'closed',
    }),
    closed: confirm({
      say: 'Close up and clear the unit.',
      body: [
        'Tools out, cover on, people clear.',
        'Your lock comes off by your own hand.',
        'Power on from a safe position.',
      ],
      callouts: [
        {
          level: 'warning',
          text: 'Live readings are for qualified people with rated gloves and eye protection. NFPA 70E and your employer’s program govern.',
        },
      ],
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
          over: false,
          words: ['delta', 'delta t', 'td', 'dt', 'temp split', 'temperature split'],
          optional: true,
          when: NOT_BOXED,
        }),
        box: degrees('Air in the box now', { over: false, words: ['box', 'air'], when: BOXED }),
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
          'The compressor is not running on these amps. Turn it off now: locked rotor overheats within seconds.',
        'above-mcc': 'It draws more than its protector lets pass for long. Turn it off.',
        'legs-apart': 'The three legs draw too far apart. Turn it off.',
        'fan-high': 'The fan draws more than its FLA.',
        sound: 'Something sounds or turns wrong.',
        'split-out': 'It runs and doesn’t cool as it should: air or charge is another question.',
      },
      then: {
        in: 'outcome',
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
          over: false,
          words: ['delta', 'delta t', 'td', 'dt', 'temp split', 'temperature split'],
          when: NOT_BOXED,
        }),
        box: degrees('Air in the box now', { over: false, words: ['box', 'air'], when: BOXED }),
        sound: one('What you see and hear', sound, { optional: true }),
      },
      cant: 'judged',
      next: 'judged',
    }),
    'in-yet': choose({
      say: 'Look at the contactor, hands out: is it in? And since when is the call there?',
      body: ['Out: COOL, 5 °F below the room. Set it now where nothing calls, and leave it.'],
      why: 'A contactor that isn’t in has no volts behind it. That is a delay or its control, and no bad pole.',
      source: [DELAY],
      options: {
        in: { label: 'It is in', words: ['in', 'its in', 'pulled in', 'contactor in'], to: 'behind' },
        earlier: {
          label: 'Out, the call there for five minutes or more',
          words: ['out', 'not in', 'stays out', 'over 5 minutes', 'left alone'],
          to: 'since',
        },
        now: {
          label: 'Out, the call given or changed just now',
          words: ['just now', 'now', 'no call', 'changed just now', 'called just now'],
          to: 'out-yet',
        },
      },
      // Nobody saw it: off, and its circuit comes with what is seen next.
      cant: 'off',
    }),
    'out-yet': confirm({
      say: 'Wait until five minutes are over since the call was changed. Leave the call alone. Does it pull in?',
      source: [DELAY],
      yes: 'It pulls in',
      words: ['pulls in', 'pulled in', 'its in', 'runs now', 'it runs'],
      no: { label: 'It stays out', words: ['stays out', 'still out', 'nothing', 'waited'], to: 'since' },
      // The record's own times decide whether they were over.
      unsure: 'since',
      // It was held by its delay: all figures anew.
      next: '!late',
    }),
    since: judge('minutes-since', {
      of: { since: 'in-yet', reading: 'in-yet', waited: 'out-yet', before: null },
      limits: LIMITS.delay,
      then: { over: 'not-in', wait: 'off', undecided: 'off' },
    }),
    'not-in': verdict({
      verdict: 'contactor-not-in',
      title: 'The contactor doesn’t pull in, five minutes after the call: its control comes next, no part',
      says: ['No amps, nothing behind it, and it is out. So its poles say nothing.'],
      next: [
        'Off. The next round begins: outdoor unit silent. It reads the call on its way to the coil.',
        'What was touched last first: a coil wire left off, a switch that tripped.',
      ],
      who: 'junior',
      judged: ['judged', 'since'],
      evidence: ['figures', 'in-yet', 'out-yet'],
      then: '!again',
    }),
    behind: verdict({
      verdict: 'nothing-behind-the-contactor',
      title: 'The contactor is in, and neither motor draws: a senior looks at what lies behind it',
      says: ['A pole that doesn’t close, or a lead behind it. Without amps no drop tells which.'],
      next: [
        'Off. Dead: each contact with the armature pressed in, then the leads on T and the motors’ common.',
        'It stays off until a senior has seen the readings.',
      ],
      who: 'senior',
      judged: ['judged'],
      evidence: ['figures', 'in-yet'],
      raises: 'verdict',
      then: '!raised',
    }),
    poles: measure({
      say: 'Volts across each closed pole, under load: L1 to T1, L2 to T2; L3 to T3 where it is three-phase.',
      callouts: [{ level: 'danger', text: 'Line voltage is present.' }],
      why: 'Two readings against ground carry more doubt than the drop. Across the pole it is read itself.',
      source: ['Look into it above 0.5 V, replace above 1 V: common practice, no single source'],
      picture: probes('V AC', ['L1', 'T1', 'under 0.5 V'], ['L2', 'T2', 'under 0.5 V']),
      circuit: 'line',
      fields: {
        p1: volts('L1 to T1', { over: false, words: ['l1-t1', 't1-l1'] }),
        p2: volts('L2 to T2', { over: false, words: ['l2-t2', 't2-l2'] }),
        p3: volts('L3 to T3', { over: false, words: ['l3-t3', 't3-l3'], when: THREE_PHASE }),
      },
      cant: 'off',
      next: 'drop',
    }),
    drop: judge('contact-drop', {
      of: { poles: 'poles', figures: 'figures' },
      limits: LIMITS.contactDrop,
      says: {
        good: 'The poles are fine. The drop lies in the wiring: a senior looks at it.',
        look: 'A pole drops more than it should: terminals tight? Look into it.',
        replace: 'A pole drops more than 1 V under load: the contactor is replaced.',
        open: 'A pole with that much across it is not closed: nothing is replaced on it.',
        'no-load': 'Without amps a drop says nothing of a pole.',
      },
      then: {
        good: 'wiring',
        look: 'wiring',
        replace: 'pole',
        open: 'no-drop',
        'no-load': 'no-drop',
        undecided: 'no-drop',
      },
    }),
    'no-drop': verdict({
      verdict: 'poles-undecided',
      title: 'Volts across the poles that tell nothing of their contacts: undecided',
      says: ['A drop counts across a closed pole, under load. One of the two is not there. Nothing is condemned.'],
      next: [
        'Is the contactor in? Amps and the volts from L1 to T1 and L2 to T2 in one sitting would decide it.',
        'Turn it off. A senior sees this call.',
      ],
      who: 'senior',
      judged: ['judged', 'drop'],
      evidence: ['figures', 'poles'],
      raises: 'verdict',
      then: '!raised',
    }),
    pole: verdict({
      verdict: 'contact-drop',
      title: 'A contactor pole drops too much: replace the contactor',
      says: ['More than 1 V across a closed pole under load.'],
      next: [
        'Turn it off, and make it dead again. Same coil volts, poles and amps.',
        'Are the terminals tight? Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['drop'],
      evidence: ['figures', 'poles'],
      then: '!contactor',
    }),
    heavy: verdict({
      verdict: 'compressor-above-mcc',
      title: 'The compressor draws more than it may for long: off, and a senior looks at why',
      says: ['RLA is no limit, MCC is. It would go off on its overload, and it cooks its windings until then.'],
      next: [
        'Off. Volts and contactor are in the record: head pressure next, so the coil, the condenser’s air, the fan.',
        'The circuit is for a certified person. A compressor that binds is the last thing to think of.',
      ],
      who: 'senior',
      judged: ['judged'],
      evidence: ['figures', 'plate'],
      raises: 'verdict',
      then: '!raised',
    }),
    legs: verdict({
      verdict: 'legs-apart',
      title: 'The three legs of the compressor draw too far apart: a line or the motor',
      says: ['More than 10 % apart. A missing line or a winding: amps alone don’t tell which.'],
      next: [
        'Off. All three leads one place on, dead and proved, says which: it stays with the line, or moves with the motor.',
        'A senior leads on. After a lead was moved its rotation is watched at the first start.',
      ],
      who: 'senior',
      judged: ['judged'],
      evidence: ['figures'],
      raises: 'verdict',
      then: '!raised',
    }),
    wiring: verdict({
      verdict: 'drop-in-the-wiring',
      title: 'Volts are lost between L and T: a senior looks at it',
      says: ['No pole drops more than 1 V, and the volts are lost all the same.'],
      next: ['Turn it off. Tight lugs and wires are the next thing.'],
      who: 'senior',
      judged: ['drop'],
      evidence: ['figures', 'poles'],
      raises: 'verdict',
      then: '!raised',
    }),
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
    proven: verdict({
      verdict: 'repair-proven',
      title: 'The repair is proven',
      says: ['The restart figures are in and lie within what was checked.'],
      next: [
        'Tell the customer what was found and fitted.',
        'Clean what made the part hot: coil, airflow.',
        'A senior reads and signs the record.',
      ],
      who: 'junior',
      judged: ['judged'],
      evidence: ['figures', 'plate', 'later'],
      then: '!done',
    }),
    'nothing-found': verdict({
      verdict: 'runs-nothing-found',
      title: 'It runs within what was checked: no part found at fault',
      says: ['The dead tests found nothing, and the restart figures are in.'],
      next: [
        'Tell the customer what was measured.',
        'Watch one whole cycle. If it comes back, a senior sees the readings.',
      ],
      who: 'junior',
      judged: ['judged'],
      evidence: ['figures', 'plate', 'later'],
      then: '!done',
    }),
    'why-hot': verdict({
      verdict: 'overload-without-cause',
      title: 'It runs again, and why its overload opened is not known: not proven',
      says: ['An overload opens on heat. It has cooled, and what made it hot was not found.'],
      next: [
        'Coil, fan, capacitor, charge, volts: a senior says which is looked at first.',
        'Tell the customer that it may stop again.',
      ],
      who: 'senior',
      judged: ['judged'],
      evidence: ['cool', 'figures', 'plate', 'later'],
      raises: 'verdict',
      then: '!raised',
    }),
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
