import {
  choose,
  confirm,
  flow,
  include,
  judge,
  measure,
  one,
  probes,
  verdict,
  volts,
} from '../../engine/vocabulary.ts';
import { COIL_LIVE } from '../examples/coil-live.ts';
import { LIMITS } from '../limits.ts';
import { contactorDead } from './contactor-dead.ts';
import { openSwitches } from './switches.ts';
import { acrossSwitches, DELAY, HOPS, PULL_IN } from './words.ts';

const LIVE = { level: 'danger', text: 'Line voltage is present. Nothing is bridged to make it run.' } as const;
const NEEDED =
  'Volts at the coil against its print, then across each switch, five minutes after the call, would decide it.';

/** A coil that no other cabinet feeds: its volts can't be read with the line locked, so in one live sitting after the dead tests. */
export const coilLive = flow({
  id: 'coil-live',
  version: 1,
  title: 'Control circuit, live',
  exits: ['in', 'replace', 'dead-tests', 'settled', 'raised', 'again'],
  examples: COIL_LIVE,
  steps: {
    call: choose({
      say: 'The coil’s circuit, live: power on, call given and left. Qualified and equipped, and since when is the call there?',
      body: [
        'Tools out, people clear, your lock off by your own hand. Covers off only as far as the readings need. One sitting.',
        'COOL, 5 °F below the room; a box: its own thermostat calling.',
      ],
      callouts: [
        LIVE,
        {
          level: 'warning',
          text: 'Rated gloves and eye protection. NFPA 70E and your employer’s program govern.',
        },
      ],
      why: 'Its volts come from this cabinet, so they go with the line. A delay keeps it out for minutes after each change.',
      source: [DELAY],
      options: {
        now: {
          label: 'Qualified; power or call changed just now',
          words: ['just now', 'now', 'changed just now', 'qualified just now', 'qualified now'],
          to: 'at-coil',
        },
        earlier: {
          label: 'Qualified; both left alone for five minutes or more',
          words: ['qualified left alone', 'left alone', 'over 5 minutes', 'unchanged'],
          to: 'at-coil',
        },
        not: { label: 'Not qualified, or not now', words: ['not qualified', 'not now', 'no'], to: 'not-led' },
      },
      cant: 'not-led',
    }),
    'at-coil': measure({
      say: 'Call there: volts where its switches begin, and across the coil. What does the coil print, and does it pull in?',
      body: ['Begin: the call’s wire to the coil’s other side. Nothing there: 0. The lowest while it should pull in.'],
      callouts: [LIVE],
      why: 'A coil needs 85 % of what it prints. Where the volts stop, there is the open place.',
      source: [PULL_IN],
      picture: probes(
        'V AC',
        ['Where the call begins', 'Coil’s other side', 'what the coil prints'],
        ['Coil, one end', 'Coil, other end', '85 % of its print or more'],
      ),
      circuit: 'line',
      fields: {
        start: volts('Where its switches begin', { over: false, words: ['begin', 'start', 'call', 'y-c', 'yc'] }),
        coil: volts('Across the coil', { over: false, words: ['coil', 'coil min'] }),
        rated: one(
          'The coil prints',
          {
            '24': { label: '24 V', words: ['24v', '24 v', 'prints 24'] },
            '120': { label: '120 V', words: ['120v', '120 v', 'prints 120'] },
            '208': { label: '208 V, or 208/240 V on a 208 V line', words: ['208v', '208 v', 'prints 208'] },
            '240': { label: '240 V, or 208/240 V on a 240 V line', words: ['240v', '240 v', 'prints 240'] },
          },
          { as: 'coil-volts' },
        ),
        ok: one('Does it pull in?', {
          yes: { label: 'Pulls in clean', words: ['pulls in', 'pulled in', 'its in'] },
          no: { label: 'Stays out or chatters', words: ['stays out', 'doesnt pull in', 'chatters', 'out'] },
        }),
      },
      cant: 'not-read',
      next: 'judged',
    }),
    judged: judge('coil-volts', {
      of: { readings: 'at-coil', pulled: 'at-coil', rated: 'at-coil', waited: null },
      limits: LIMITS.coilVolts,
      quiet: ['good'],
      then: {
        good: '!in',
        'not-in': 'contactor',
        low: 'too-low',
        drop: 'too-low',
        source: 'too-low',
        high: 'too-high',
        absent: 'elapsed',
        wait: 'elapsed',
        undecided: 'not-read',
      },
    }),
    contactor: include(contactorDead, { exits: { replace: '!replace', raised: '!raised' }, needs: {} }),
    elapsed: judge('minutes-since', {
      of: { since: 'call', reading: 'at-coil', waited: null, before: '~call', off: '@round:powered' },
      limits: LIMITS.delay,
      then: { over: 'begins', wait: 'waited', undecided: 'waited' },
    }),
    waited: confirm({
      say: 'Wait until five minutes are over since power or call were changed. Leave both alone.',
      body: ['Then the volts are read again.'],
      why: 'No 0 V verdict within five minutes of a change of call.',
      source: [DELAY],
      yes: 'The five minutes are over',
      words: ['waited', 'over', '5 minutes', 'five minutes', 'done waiting'],
      // The record's own times decide whether they are.
      unsure: '!again',
      next: '!again',
    }),
    begins: judge('hop', {
      of: { readings: 'at-coil', across: null, waited: null },
      limits: LIMITS.hop,
      then: {
        through: 'not-read',
        delay: 'not-read',
        lp: 'not-read',
        hp: 'not-read',
        discharge: 'not-read',
        wire: 'across-live',
        drop: 'across-live',
        joint: 'not-read',
        nothing: 'no-call',
        low: 'no-call',
        wait: 'no-call',
        contradicts: 'not-read',
        undecided: 'not-read',
      },
    }),
    'across-live': measure({
      say: 'Volts across each switch in turn, the call there.',
      body: ['Delay, low pressure, high pressure, discharge thermostat. Leave out with _ what the unit hasn’t.'],
      callouts: [LIVE],
      why: 'An open switch shows the full volts across it, a closed one next to nothing.',
      source: [HOPS],
      picture: probes('V AC', ['Switch, call side', 'Switch, coil side', 'closed: under 0.5 V; open: the full volts']),
      circuit: 'line',
      fields: acrossSwitches(),
      cant: 'not-read',
      next: 'open',
    }),
    open: judge('hop', {
      of: { readings: 'at-coil', across: 'across-live', waited: null },
      limits: LIMITS.hop,
      then: {
        through: 'not-read',
        delay: 'delay-open',
        lp: 'low-pressure',
        hp: 'high-pressure',
        discharge: 'discharge-hot',
        wire: 'wire',
        drop: 'not-read',
        joint: 'wire',
        nothing: 'not-read',
        low: 'not-read',
        // The call is there and its time is over: what is left to wait for is the delay.
        wait: 'delay-open',
        contradicts: 'not-read',
        undecided: 'not-read',
      },
    }),
    ...openSwitches(['open'], ['at-coil', 'across-live']),
    'delay-open': verdict({
      verdict: 'delay-stays-open',
      title: 'The delay stays open past its time',
      says: ['Five minutes are over since the call was changed, and the volts still stand across it.'],
      next: ['A senior confirms. It is replaced by one of the same delay, never left out.'],
      who: 'senior',
      judged: ['elapsed', 'open'],
      evidence: ['call', 'at-coil', 'across-live'],
      raises: 'verdict',
      then: '!raised',
    }),
    'no-call': verdict({
      verdict: 'no-call-in-this-cabinet',
      title: 'No call where the coil’s switches begin: this cabinet’s own source, its fuse, or the thermostat',
      says: [
        'Five minutes and more after the call nothing comes in, or too little. No switch and no coil is in question.',
      ],
      next: [
        'R to C at its board, the primary beside its tap, then fuse and secondary dead, would decide it.',
        'It stays off. A senior leads on.',
      ],
      who: 'senior',
      judged: ['judged', 'elapsed', 'begins'],
      evidence: ['call', 'at-coil'],
      raises: 'verdict',
      then: '!raised',
    }),
    'too-high': verdict({
      verdict: 'coil-volts-too-high',
      title: 'The coil gets more volts than it prints: off, another circuit is on it or the print was misread',
      says: ['No switch and no coil is judged on that. Where 24 V belong, line volts touch the control circuit.'],
      next: [
        'Off at its means, the indoor unit too where the coil is on 24 V. No hand in before both are proved dead.',
        'A senior finds where they touch. Tell the customer to leave the thermostat alone.',
      ],
      who: 'senior',
      judged: ['judged'],
      evidence: ['call', 'at-coil'],
      raises: 'verdict',
      then: '!raised',
    }),
    'too-low': verdict({
      verdict: 'coil-volts-low',
      title: 'The coil gets less than 85 % of what it prints',
      says: ['It chatters or stays out on that. Why is open: the line, a tap, the VA, or a joint on the way.'],
      next: [
        'Off: chatter welds contacts. The source’s volts under the same load tell source from joint.',
        'A senior leads on.',
      ],
      who: 'senior',
      judged: ['judged'],
      evidence: ['call', 'at-coil'],
      raises: 'verdict',
      then: '!raised',
    }),
    'not-led': verdict({
      verdict: 'control-not-read-live',
      title: 'The control of a unit whose coil is not fed from another cabinet: read live by a qualified person',
      says: [
        'The dead tests found nothing, and its control was not read. Nothing is condemned, nothing restarted on hope.',
      ],
      next: [NEEDED, 'It stays off. A senior sends somebody qualified. Tell the customer.'],
      who: 'senior',
      judged: [],
      evidence: ['call'],
      raises: 'verdict',
      then: '!raised',
    }),
    'not-read': verdict({
      verdict: 'control-undecided',
      title: 'Where the control circuit is open is undecided',
      says: ['The readings are missing or contradict each other. Nothing is condemned.'],
      next: [NEEDED, 'A senior sees this call.'],
      who: 'senior',
      judged: ['judged', 'begins', 'open'],
      evidence: ['call', 'at-coil', 'across-live'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
