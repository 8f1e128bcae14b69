import { choose, confirm, flow, include, judge, measure, probes, verdict, volts } from '../../engine/vocabulary.ts';
import { CONTROL } from '../examples/control.ts';
import { LIMITS } from '../limits.ts';
import { contactorDead } from './contactor-dead.ts';
import { openSwitches } from './switches.ts';
import { acrossSwitches, CONTROL_LIVE, DELAY, HOPS, PULL_IN, PULLS, SWITCH_DROPS, stillDead } from './words.ts';

/** Verdicts of the control circuit after which there is something to prove at a restart. */
export const CONTROL_SETTLED = ['high-pressure-open', 'control-wire-open', 'control-joint-mended'] as const;

/** The call on its way to the contactor: line locked, control live. One try; a delay that still runs asks for another. */
export const control = flow({
  id: 'control',
  version: 1,
  title: 'Control circuit',
  exits: ['replace', 'dead-tests', 'settled', 'indoor', 'chatter', 'left', 'raised', 'again'],
  examples: CONTROL,
  steps: {
    call: choose({
      say: 'Give the call for cooling and leave it. When was it last changed?',
      body: ['COOL, 5 °F below the room, by you or by somebody at the thermostat.'],
      why: 'A delay keeps the contactor out for minutes after each change. Before it is over, 0 V says nothing.',
      source: [DELAY],
      options: {
        now: { label: 'Changed just now', words: ['just now', 'now', 'changed now'], to: 'strip-24' },
        earlier: {
          label: 'Left alone for five minutes or more',
          words: ['over 5 minutes', 'more than 5', '5 minutes ago', 'long ago', 'unchanged', 'left alone'],
          to: 'strip-24',
        },
      },
      // Not said is not long ago: what reads 0 V then waits out the delay.
      cant: 'strip-24',
    }),
    'strip-24': measure({
      say: 'Volts with the call there: Y to C at the outdoor strip, and across the contactor’s coil.',
      body: [
        'Within five minutes of a change of call 0 V says nothing: a delay may still run. Wait it out, then read.',
        'The lowest at the coil while it should pull in. Nothing at the strip: 0 at the coil too.',
      ],
      callouts: [CONTROL_LIVE],
      why: 'Where the volts stop, there is the open place. 24 to 28 V is usual, 20.4 V the least.',
      source: [PULL_IN],
      picture: probes(
        'V AC',
        ['Y at the strip', 'C', '24 to 28 V, 20.4 V the least'],
        ['Coil, one end', 'Coil, other end', 'the same, while it should pull in'],
      ),
      circuit: 'control',
      fields: {
        start: volts('Y to C at the strip', { over: false, words: ['y-c', 'yc', 'y to c', 'y-c outdoor', 'strip'] }),
        coil: volts('Across the coil', { over: false, words: ['coil', 'coil min'] }),
        l1l2: stillDead(),
      },
      cant: 'not-read',
      next: 'hop',
    }),
    hop: judge('hop', {
      of: { readings: 'strip-24', across: null, waited: null },
      limits: LIMITS.hop,
      quiet: ['through'],
      then: {
        through: 'pulled',
        delay: 'timed',
        lp: 'timed',
        hp: 'timed',
        discharge: 'timed',
        wire: 'timed',
        drop: 'timed',
        joint: 'timed',
        nothing: 'elapsed',
        low: '!indoor',
        wait: 'elapsed',
        contradicts: 'not-read',
        undecided: 'not-read',
      },
    }),
    elapsed: judge('minutes-since', {
      of: { since: 'call', reading: 'strip-24', waited: null, before: '~call' },
      limits: LIMITS.delay,
      then: { over: 'not-there', wait: 'waited', undecided: 'waited' },
    }),
    'not-there': verdict({
      verdict: 'no-call-outdoors',
      title: 'No call arrives at the outdoor unit',
      says: ['0 V from Y to C at its strip, five minutes and more after the last change of the call.'],
      next: ['Source and call are read at the indoor board next.'],
      who: 'junior',
      judged: ['hop', 'elapsed'],
      evidence: ['call', 'strip-24'],
      then: '!indoor',
    }),
    // A delay that still runs takes the volts away behind it, as an open switch or wire would: nothing is sought before.
    timed: judge('minutes-since', {
      of: { since: 'call', reading: 'strip-24', waited: null, before: '~call' },
      limits: LIMITS.delay,
      then: { over: 'across-24', wait: 'waited', undecided: 'waited' },
    }),
    'across-24': measure({
      say: 'Volts across each switch in turn, the call there.',
      body: ['Delay, low pressure, high pressure, discharge thermostat. Leave out with _ what the unit hasn’t.'],
      callouts: [{ level: 'danger', text: 'No safety is bridged to make it run.' }, CONTROL_LIVE],
      why: 'An open switch shows the full volts across it, a closed one next to nothing.',
      source: [HOPS],
      picture: probes('V AC', ['Switch, call side', 'Switch, coil side', 'closed: under 0.5 V; open: about 24 V']),
      circuit: 'control',
      fields: {
        ...acrossSwitches(),
        l1l2: stillDead(),
      },
      cant: 'not-read',
      next: 'open',
    }),
    open: judge('hop', {
      of: { readings: 'strip-24', across: 'across-24', waited: null },
      limits: LIMITS.hop,
      then: {
        through: 'not-read',
        delay: 'delay-open',
        lp: 'low-pressure',
        hp: 'high-pressure',
        discharge: 'discharge-hot',
        wire: 'wire',
        drop: 'dropped',
        joint: 'wire',
        nothing: 'not-read',
        low: '!indoor',
        wait: 'delay-over',
        contradicts: 'not-read',
        undecided: 'not-read',
      },
    }),
    'delay-over': judge('minutes-since', {
      of: { since: 'call', reading: 'across-24', waited: null, before: '~call' },
      limits: LIMITS.delay,
      then: { over: 'delay-open', wait: 'waited', undecided: 'waited' },
    }),
    ...openSwitches(['open'], ['strip-24', 'across-24']),
    'delay-open': verdict({
      verdict: 'delay-stays-open',
      title: 'The delay stays open past its time',
      says: ['Five minutes are over since the call was changed, and the volts still stand across it.'],
      next: ['A senior confirms. It is replaced by one of the same delay, never left out.'],
      who: 'senior',
      judged: ['open', 'delay-over'],
      evidence: ['call', 'across-24'],
      raises: 'verdict',
      then: '!raised',
    }),
    pulled: confirm({
      say: 'Does the contactor pull in, clean and quiet?',
      body: ['Look and listen, fingers out.'],
      yes: 'Pulls in clean',
      words: [...PULLS.yes],
      no: { label: 'Stays out', words: [...PULLS.no], to: 'coil' },
      cant: { label: 'Chatters or buzzes', words: ['chatters', 'buzzes', 'hums'], to: '!chatter' },
      unsure: 'coil',
      next: 'coil',
    }),
    coil: judge('coil-volts', {
      of: { readings: 'strip-24', pulled: 'pulled', rated: null, waited: null },
      limits: LIMITS.coilVolts,
      quiet: ['good'],
      then: {
        good: '!dead-tests',
        'not-in': 'contactor',
        low: '!indoor',
        drop: 'not-read',
        source: '!indoor',
        high: 'not-read',
        absent: 'not-read',
        wait: 'not-read',
        undecided: 'not-read',
      },
    }),
    contactor: include(contactorDead, { exits: { replace: '!replace', raised: '!raised' }, needs: {} }),
    waited: confirm({
      say: 'Wait until five minutes are over since the call was changed. Leave the call alone.',
      body: ['Then the volts are read again.'],
      why: 'No 0 V verdict within five minutes of a change of call.',
      source: [DELAY],
      yes: 'The five minutes are over',
      words: ['waited', 'over', '5 minutes', 'five minutes', 'done waiting'],
      // The record's own times decide whether they are.
      unsure: '!again',
      next: '!again',
    }),
    dropped: verdict({
      verdict: 'control-volts-dropped',
      title: 'A switch drops the control volts: the coil has too few to pull in',
      says: [
        'Under 20.4 V at the coil with the call there, and the switch above 0.5 V takes them. It should be closed.',
      ],
      next: SWITCH_DROPS,
      who: 'junior',
      judged: ['hop', 'open'],
      evidence: ['call', 'strip-24', 'across-24'],
      then: '!left',
    }),
    'not-read': verdict({
      verdict: 'control-undecided',
      title: 'Where the control circuit is open is undecided',
      says: ['The readings are missing or contradict each other. Nothing is condemned.'],
      next: [
        'Volts along the switches with black on C, the call there for five minutes, would decide it.',
        'A senior sees this call.',
      ],
      who: 'senior',
      judged: ['hop', 'open'],
      evidence: ['call', 'strip-24', 'across-24'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
