import { choose, found, judge, measure, probes, verdict, volts } from '../../engine/vocabulary.ts';
import { MOTOR } from '../dead/block.ts';
import { LIMITS } from '../limits.ts';
import { KINDS } from '../unit.ts';

/**
 * With one of these nobody read the shaft or the windings of the motor that is in there now, or they read bad: such a
 * motor is called nothing on volts. A motor that was fitted in this round is one of them.
 */
const FAN_NOT_READ = [
  ...MOTOR,
  'fan-not-spun',
  'fan-blade-rubs',
  'fan-windings-not-taken',
  'fan-windings-undecided',
  'fan-protector-open',
  'fan-open-until-cool',
] as const;
/** The other run capacitor of the cabinet was read within its print, or a right one was fitted in its place. */
const OTHER_READ = [
  'block/another/capacitor-good',
  'block/another/capacitor-conditional-pass',
  'block/yet-another/capacitor-good',
  'block/yet-another/capacitor-conditional-pass',
  'repair/new-other/new-part-right',
] as const;

/** The fan stands: volts where it is fed, what was measured of it, and what switches it. */
export const fanFed = {
  feed: measure({
    say: 'Volts where the fan’s leads end, under the call: on the board’s fan terminals or at the contactor.',
    callouts: [{ level: 'danger', text: 'Line voltage is present. Never push a fan with power on.' }],
    why: 'Volts there, free, its windings read through the same leads, no start: the motor. No volts: its relay or a lead.',
    picture: probes('V AC', ['Fan’s feed', 'Its other lead', 'the nameplate’s volts, or nothing']),
    circuit: 'line',
    fields: {
      v: volts('Volts at the fan’s feed', {
        over: false,
        words: ['fan', 'volts', 'feed', 'fan out', 'board fan out', 'out'],
      }),
    },
    cant: 'open',
    next: 'fed',
  }),
  fed: judge('fed-volts', {
    of: { readings: 'feed', plate: '@volts', unit: '@class' },
    limits: LIMITS.fedVolts,
    then: { there: 'fan-read', none: 'board', between: 'open', undecided: 'open' },
  }),
  // Volts where its leads end are volts at the motor only where its windings were read through these leads.
  'fan-read': judge('motors', {
    of: { seen: '@round:observation' },
    limits: {},
    quiet: ['compressor', 'fan', 'both', 'undecided'],
    then: { compressor: 'open', both: 'cleared', fan: 'cleared', undecided: 'open' },
  }),
  cleared: found({
    among: {
      // Volts and a good capacitor say nothing of a shaft that nobody turned, nor of windings that nobody read.
      unturned: { verdicts: FAN_NOT_READ, to: 'open' },
      measured: {
        verdicts: ['capacitor-good', 'capacitor-conditional-pass', 'section-fails-value', 'new-part-right'],
        to: 'sections',
      },
    },
    none: 'open',
  }),
  // A part with one section is the compressor's: the fan's own is another part, and that one was read or not.
  sections: judge('print-sections', {
    of: { label: '@cabinet:label' },
    limits: {},
    quiet: ['dual', 'single', 'undecided'],
    then: { dual: 'motor', single: 'whose', undecided: 'open' },
  }),
  whose: judge('unit-class', {
    of: { unit: '@class' },
    limits: {},
    quiet: KINDS,
    then: {
      psc: 'fans-own',
      ecm: 'open',
      // A three-phase compressor has none: the one that is there is the fan's.
      'three-phase': 'motor',
      refrigeration: 'fans-own',
      closed: 'open',
      undecided: 'open',
    },
  }),
  'fans-own': found({ among: { read: { verdicts: OTHER_READ, to: 'motor' } }, none: 'open' }),
  motor: verdict({
    verdict: 'fan-motor-electric',
    title: 'The fan motor has volts and a good capacitor, turns free, and doesn’t start: replace the motor',
    says: [
      'Capacitor measured, volts where its leads end, windings read through these leads, free by hand: the motor is left.',
    ],
    next: [
      'Turn it off. The motor that the nameplate asks for, with the capacitor it asks for.',
      'Not proven until the restart numbers are in.',
    ],
    who: 'junior',
    judged: ['fed'],
    evidence: ['which', 'feed'],
    then: '!replace',
  }),
  board: measure({
    say: 'No volts at the fan. Volts where the line comes in: at the board, or at the contactor’s load side.',
    body: ['Heat pump: the board switches the fan. Not in defrost, contactor in, cooling call.'],
    callouts: [{ level: 'danger', text: 'Line voltage is present.' }],
    why: 'Line in and none out: the board’s relay or the lead. None in: it is lost before the board.',
    picture: probes('V AC', ['Line in, L1', 'Line in, L2', 'line volts']),
    circuit: 'line',
    fields: {
      v: volts('Line in', { over: false, words: ['line in', 'board line in', 'board in', 'in', 'load side'] }),
    },
    cant: 'open',
    next: 'at-board',
  }),
  'at-board': judge('fed-volts', {
    of: { readings: 'board', plate: '@volts', unit: '@class' },
    limits: LIMITS.fedVolts,
    then: { there: 'switched', none: 'open', between: 'open', undecided: 'open' },
  }),
  switched: choose({
    say: 'What switches the fan?',
    body: ['Heat pump: its board. Others: the contactor itself, by two leads.'],
    why: 'A board that holds the fan in defrost is in order. Without a board, what is lost between is a lead.',
    options: {
      board: {
        label: 'A board, out of defrost, on a cooling call',
        words: ['board', 'the board', 'out of defrost', 'not in defrost'],
        to: 'relay',
      },
      thawing: {
        label: 'A board; it was in defrost and now runs',
        words: ['was in defrost', 'runs now'],
        to: '!again',
      },
      wired: {
        label: 'No board: straight from the contactor',
        words: ['contactor', 'no board', 'straight', 'leads'],
        to: 'open',
      },
      unknown: { label: 'Not sure', words: ['not sure', 'dont know'], to: 'open' },
    },
  }),
  relay: verdict({
    verdict: 'board-fan-relay',
    title: 'Line in, none out: the board’s fan relay or the lead',
    says: ['Contactor in, a cooling call, not in defrost, 0 V at the fan terminals, line at the board.'],
    next: [
      'The lead and its push-on first, dead. Then the board, by the maker’s number.',
      'It waits for the part. Tell the customer.',
    ],
    who: 'junior',
    judged: ['fed', 'at-board'],
    evidence: ['which', 'feed', 'board', 'switched'],
    then: '!left',
  }),
};
