import { choose, confirm, flow, include, judge, measure, probes, verdict, volts } from '../../engine/vocabulary.ts';
import { CHATTER } from '../examples/control.ts';
import { LIMITS } from '../limits.ts';
import { contactorDead } from './contactor-dead.ts';
import { CONTROL_LIVE, PULL_IN, PULLS, stillDead } from './words.ts';

/** The contactor buzzes or chatters: off first, then the volts at its coil while it pulls in. */
export const chatter = flow({
  id: 'chatter',
  version: 1,
  title: 'Contactor chatters',
  exits: ['replace', 'dead-tests', 'indoor', 'raised'],
  examples: CHATTER,
  steps: {
    blinks: choose({
      say: 'Call off, it is quiet now. Does a thermostat without a C wire blink or restart?',
      callouts: [{ level: 'warning', text: 'Chatter welds contacts and breaks compressors. Off first.' }],
      why: 'A thermostat that starves for power drops the call again and again.',
      options: {
        no: { label: 'No, its display is steady', words: ['no', 'steady', 'stat steady', 'has c wire'], to: 'coil' },
        yes: {
          label: 'It blinks or restarts, no C wire',
          words: ['blinks', 'blinking', 'restarts', 'no c wire'],
          to: 'starved',
        },
        unsure: { label: 'Not sure', words: ['not sure', 'dont know'], to: 'coil' },
      },
    }),
    starved: verdict({
      verdict: 'thermostat-without-common',
      title: 'The thermostat has no C wire and starves',
      says: ['It powers itself through the call, and drops it when it runs short.'],
      next: [
        'A C wire, or the maker’s own adapter. Never a second load on Y.',
        'Contacts that chattered are looked at, dead, before it runs.',
        'Tell the customer to leave it off until then.',
      ],
      who: 'senior',
      judged: [],
      evidence: ['blinks'],
      raises: 'verdict',
      then: '!raised',
    }),
    coil: choose({
      say: 'What does the contactor’s coil print, and where does its call come from?',
      callouts: [
        { level: 'danger', text: 'A coil of 120 to 240 V is line voltage: it is never tested as a control circuit.' },
      ],
      options: {
        '24': { label: '24 V, from the indoor unit', words: ['24', '24v', '24 volt', 'split'], to: 'pull-24' },
        other: {
          label: 'Line voltage, package unit, or not sure',
          words: ['120', '240', 'package', 'not sure', 'line voltage'],
          to: '!dead-tests',
        },
      },
    }),
    'pull-24': measure({
      say: 'Give the call. The lowest volts at the coil while it should pull in; R to C beside it where R is there.',
      body: ['A meter that keeps the lowest reading, or watch the needle’s bottom.'],
      callouts: [CONTROL_LIVE],
      why: 'Idle volts prove nothing. The least at pull-in decides: 20.4 V or more.',
      source: [PULL_IN],
      picture: probes(
        'V AC',
        ['Coil, one end', 'Coil, other end', '20.4 V or more at pull-in'],
        ['R', 'C', '21.6 V or more under load'],
      ),
      circuit: 'control',
      fields: {
        coil: volts('At the coil, the lowest', { over: false, words: ['coil', 'coil min', 'min'] }),
        rc: volts('R to C, under the same load', { over: false, optional: true, words: ['r-c', 'r to c'] }),
        l1l2: stillDead(),
      },
      cant: 'not-read',
      next: 'pulled',
    }),
    pulled: confirm({
      say: 'Line still locked: does it pull in clean, or buzz and chatter?',
      yes: 'Clean and quiet',
      words: [...PULLS.yes, 'quiet'],
      no: {
        label: 'It buzzes, chatters or stays out',
        words: ['buzzes', 'chatters', 'still chatters', ...PULLS.no],
        to: 'judged',
      },
      next: 'judged',
    }),
    judged: judge('coil-volts', {
      of: { readings: 'pull-24', pulled: 'pulled', rated: null, waited: null },
      limits: LIMITS.coilVolts,
      then: {
        good: '!dead-tests',
        'not-in': 'contactor',
        low: '!indoor',
        drop: 'dropped',
        source: '!indoor',
        high: 'not-read',
        absent: '!indoor',
        wait: '!indoor',
        undecided: 'not-read',
      },
    }),
    contactor: include(contactorDead, { exits: { replace: '!replace', raised: '!raised' }, needs: {} }),
    dropped: verdict({
      verdict: 'coil-volts-dropped',
      title: 'The source holds, and the coil gets too little: a wire or a switch drops it',
      says: ['R to C is right under the same load, and the coil is under 20.4 V.'],
      next: ['Across each switch and joint with the call there: the one above 0.5 V is it.', 'A senior confirms.'],
      who: 'senior',
      judged: ['judged'],
      evidence: ['pull-24', 'pulled'],
      raises: 'verdict',
      then: '!raised',
    }),
    'not-read': verdict({
      verdict: 'chatter-undecided',
      title: 'Why it chatters is undecided',
      says: ['The lowest volts at the coil are missing or make no sense.'],
      next: [
        'A meter that keeps the lowest reading would decide it.',
        'Leave it off: chatter welds contacts. A senior sees this call.',
      ],
      who: 'senior',
      judged: ['judged'],
      evidence: ['pull-24', 'pulled'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
