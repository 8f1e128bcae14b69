import {
  amps,
  choose,
  confirm,
  flow,
  found,
  judge,
  measure,
  one,
  probes,
  verdict,
  volts,
} from '../../engine/vocabulary.ts';
import { BUS_HOLDS, drives, rested } from '../blower/drive.ts';
import { foreignFound, ownVolts } from '../control/foreign.ts';
import { changed, DELAY, delayOver } from '../control/words.ts';
import { INDOOR_SOURCE } from '../examples/control.ts';
import { LIMITS } from '../limits.ts';
import { probesPlaced } from '../motors/live-probes.ts';
import { cable } from './cable.ts';
import { BLANKED, deadTest, LEFT_TO_SENIOR } from './dead-test.ts';
import { door } from './door.ts';
import { FLOAT_STEPS } from './float.ts';
import { voltsLow } from './volts-low.ts';

/** Verdicts of the 24 V source after which there is something to prove at a restart. */
export const SOURCE_SETTLED = [
  'indoor-breaker-was-off',
  'indoor-door-off',
  'thermostat-cable-mended',
  'transformer-tap-moved',
  'control-short-found',
] as const;

/** The verdict by which it is known that no call arrives outdoors after its five minutes. */
const ABSENT = 'no-call-outdoors';

/** No call, or too little of it, reaches the outdoor unit: the 24 V source and the call at the indoor board. */
export const indoorSource = flow({
  id: 'indoor-source',
  version: 1,
  title: 'Source of the 24 V',
  exits: ['settled', 'water', 'raised', 'left'],
  examples: INDOOR_SOURCE,
  steps: {
    ...door,
    ready: confirm({
      sitting: true,
      say: 'Live readings at the indoor board: are you qualified and equipped for them?',
      body: [
        'First the probes, with this unit locked and proved dead. Then power and the call. One sitting.',
        'Rated gloves, eye protection, the primary’s terminals covered, no rings.',
      ],
      callouts: [
        {
          level: 'warning',
          text: 'Live readings are for qualified people. NFPA 70E and your employer’s program govern.',
        },
      ],
      why: 'The 24 V are made here, so they can’t be read with this cabinet dead. Where the probes sit, no hand has to.',
      yes: 'Qualified, equipped',
      words: ['qualified', 'yes', 'ready'],
      no: { label: 'Not here, not now', words: ['not qualified', 'no', 'not now'], to: 'not-read' },
      next: 'board-drive',
    }),
    'board-drive': choose({
      say: 'The probes are placed with this cabinet dead. What drives the blower in it?',
      callouts: [BUS_HOLDS],
      why: 'An electronic motor’s own bus has to empty before a hand goes near.',
      as: 'cabinet:drive',
      anew: true,
      options: drives('probes', 'bus', 'not-read'),
    }),
    bus: rested('probes', 'not-read'),
    probes: probesPlaced('on R, C, Y and the transformer’s primary', 'call', 'not-read'),
    call: choose({
      say: 'Outdoor unit off at its means; indoor power on, the call for cooling given and left. When was one of them last changed?',
      body: [
        'The outdoor unit stays off for this: without air over the coil it must not run, and nobody watches it.',
        'Thermostat blank: leave it so. Power that came on counts as a change.',
      ],
      why: 'A delay takes the call away for minutes after each change. Before it is over, 0 V says nothing.',
      source: [DELAY],
      options: changed('wait', 'board'),
      cant: 'wait',
    }),
    wait: delayOver('board'),
    board: measure({
      say: 'At the indoor board, the call there: R to C, Y to C, the primary; across the float where you can.',
      body: ['R to C while the blower runs. Thermostat blank: leave the call, read all the same.'],
      callouts: [{ level: 'danger', text: 'Line voltage is present. The isolation has ended.' }],
      why: 'R to C tells the source, Y to C whether the call leaves the board.',
      source: ['24 to 28 V idle, 21.6 V or more under load: common practice, no single source'],
      picture: probes(
        'V AC',
        ['R', 'C', '24 to 28 V idle, 21.6 V under load'],
        ['Y', 'C', 'the same: the call leaves the board'],
      ),
      circuit: 'line',
      fields: {
        loaded: volts('R to C, under load', {
          over: false,
          words: ['r-c', 'rc', 'r to c'],
        }),
        yc: volts('Y to C at the board', { over: false, words: ['y-c', 'y to c'] }),
        primary: volts('Transformer primary', { over: false, optional: true, words: ['pri', 'primary'] }),
        float: volts('Across the float switch', { over: false, optional: true }),
        amps: amps('Load on the secondary', { over: false, optional: true, words: ['amps', 'load amps'] }),
        va: one(
          'VA on the transformer',
          { '40': { label: '40 VA', words: ['40va'] }, '75': { label: '75 VA', words: ['75va'] } },
          { optional: true },
        ),
        tap: one(
          'Primary tap in use',
          {
            '240': { label: '240 V tap', words: ['tap 240', '240 tap', '240v tap'] },
            '208': { label: '208 V tap', words: ['tap 208', '208 tap', '208v tap'] },
            '120': { label: '120 V tap', words: ['tap 120', '120 tap'] },
          },
          { optional: true },
        ),
      },
      cant: 'not-read',
      next: 'own',
    }),
    own: ownVolts('board', 'source'),
    foreign: foreignFound(['own'], ['board']),
    source: judge('transformer', {
      of: { readings: 'board', primary: null, tap: 'board', va: 'board' },
      limits: LIMITS.transformer,
      then: {
        good: 'elapsed',
        open: 'drive',
        contradicts: 'not-read',
        'ask-primary': 'primary-too',
        primary: 'no-primary',
        tap: 'tap-drive',
        overload: 'overload',
        weak: 'weak',
        undecided: 'drive',
      },
    }),
    // No 24 V, and the primary left out: its probes sit, so it is read in the same sitting.
    'primary-too': measure({
      say: 'No 24 V. The primary, in the same sitting: volts where the transformer is fed.',
      callouts: [
        { level: 'danger', text: 'Line voltage is present. By the probes that were placed, no hand goes in.' },
      ],
      why: 'Volts in and none out: the transformer or its fuse. None in: door switch, breaker or supply.',
      circuit: 'line',
      fields: {
        primary: volts('Transformer primary', {
          over: false,
          words: ['pri', 'primary'],
        }),
      },
      cant: 'drive',
      next: 'source-again',
    }),
    'source-again': judge('transformer', {
      of: { readings: 'board', primary: 'primary-too', tap: 'board', va: 'board' },
      limits: LIMITS.transformer,
      then: {
        good: 'elapsed',
        open: 'drive',
        contradicts: 'not-read',
        'ask-primary': 'drive',
        primary: 'no-primary',
        tap: 'tap-drive',
        overload: 'overload',
        weak: 'weak',
        undecided: 'drive',
      },
    }),
    elapsed: judge('minutes-since', {
      of: { since: 'call', reading: 'board', waited: 'wait', before: null, off: 'probes' },
      limits: LIMITS.delay,
      then: { over: 'path', wait: 'too-early', undecided: 'too-early' },
    }),
    'too-early': verdict({
      verdict: 'call-read-too-early',
      title: 'The call was read within five minutes of its change: undecided',
      says: ['R to C is right at the board. A delay may still have held the call back while it was read.'],
      next: ['Y to C at the board, five minutes after the last change of the call, would decide it.', LEFT_TO_SENIOR],
      who: 'senior',
      judged: ['source', 'elapsed'],
      evidence: ['call', 'board'],
      raises: 'verdict',
      then: '!raised',
    }),
    path: judge('call-path', {
      of: { readings: 'board', across: null },
      limits: LIMITS.callPath,
      then: {
        cable: 'leaves',
        float: 'float-open',
        'ask-float': 'has-float',
        thermostat: 'thermostat',
        undecided: 'not-read',
      },
    }),
    ...FLOAT_STEPS,
    'float-unread': verdict({
      verdict: 'call-held-undecided',
      title: 'No call at the board, and the float switch was not read: undecided',
      says: [
        'R to C is right, Y to C is nothing. An open float and a thermostat that gives no call read the same here.',
      ],
      next: ['Volts across the float, the call there, would decide it. It is never bridged.', LEFT_TO_SENIOR],
      who: 'senior',
      judged: ['source', 'path', 'path-again'],
      evidence: ['board', 'has-float', 'across-float'],
      raises: 'verdict',
      then: '!raised',
    }),
    'float-open': verdict({
      verdict: 'float-switch-open',
      title: 'The float switch is open: water first',
      says: ['24 V stand across it: it holds the call back because the pan fills.'],
      next: ['It is never bridged. Clear the drain.'],
      who: 'junior',
      judged: ['elapsed', 'path', 'path-again'],
      evidence: ['call', 'board', 'across-float'],
      then: '!water',
    }),
    leaves: found({
      among: {
        // A door that was off meanwhile reads the same as an open cable.
        word: { verdicts: ['indoor-door-taken-off'], to: 'not-followed' },
        absent: { verdicts: [ABSENT], to: 'cable-drive' },
        // The call to cool is there, the fan's was not.
        fan: { verdicts: ['no-fan-call'], to: 'fan-wire' },
        low: { verdicts: ['call-low-outdoors'], to: 'lost-between' },
      },
      none: 'not-followed',
    }),
    'fan-wire': verdict({
      verdict: 'fan-call-not-given',
      title: 'The call to cool is there, the fan’s is not: the thermostat or its G wire',
      says: ['R to C and Y to C are right at the board, and G to C read nothing with the fan at ON.'],
      next: [
        '24 V R to G at the thermostat’s base: the thermostat is open. None there: its cable.',
        'Both units stay off. Tell the customer it is a thermostat or its wire, not the blower.',
      ],
      who: 'junior',
      judged: ['source', 'elapsed', 'path'],
      evidence: ['board'],
      then: '!left',
    }),
    'lost-between': verdict({
      verdict: 'call-lost-between',
      title: 'The call leaves the board whole and arrives outdoors with too little: a joint or the cable takes it',
      says: ['R to C and Y to C are right at the board, and at the strip too few volts were read.'],
      next: [
        'Splices, both ends and the conductor’s size and length, dead, would decide it. A senior leads on.',
        'Both units stay off. Tell the customer it is the cable between them.',
      ],
      who: 'senior',
      judged: ['source', 'elapsed', 'path'],
      evidence: ['board'],
      raises: 'verdict',
      then: '!raised',
    }),
    'not-followed': verdict({
      verdict: 'call-not-read-outdoors',
      title: 'The call leaves the board, and whether it arrives outdoors is not known',
      says: ['R to C and Y to C are right at the board. A cable is open only where 0 V arrive at its other end.'],
      next: [
        'Y to C at the outdoor strip would decide it: line locked, five minutes after the last change of the call.',
        LEFT_TO_SENIOR,
      ],
      who: 'senior',
      judged: ['source', 'elapsed', 'path'],
      evidence: ['call', 'board'],
      raises: 'verdict',
      then: '!raised',
    }),
    ...cable,
    ...voltsLow,
    ...deadTest,
    'not-read': verdict({
      verdict: 'control-source-undecided',
      title: 'The source of the 24 V is undecided',
      says: ['The readings are missing, contradict each other or don’t settle it. Nothing is condemned.', BLANKED],
      next: [
        'R to C, Y to C and the primary once more under power, then fuse and windings in ohms, would decide it.',
        'A senior sees this call.',
      ],
      who: 'senior',
      judged: ['source', 'source-again', 'path', 'fuse'],
      evidence: ['door', 'board', 'primary-too', 'dead-line'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
