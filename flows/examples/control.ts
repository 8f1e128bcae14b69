/** Worked calls of the 24 V circuit: silent, chattering, cycling, running on. */
import type { Example } from '../../engine/vocabulary.ts';
import { COMPRESSOR, DEAD_AGAIN, GOOD, LINE, MEANS, PROVING, RESIDUAL, RUNS } from './lines.ts';

const LOOK = 'clean, 1 cap, 45+5 6% 440';
/** The six prompts of make-dead. */
export const GATES = ['yes', MEANS, 'yes', LOOK, PROVING, RESIDUAL];
const FAN = 'fan 14 31 45 frame ol';
/** The dead block with nothing found, both motors measured. */
export const BLOCK = [LINE, 'no diagram', 'wires off', GOOD, 'spin free', COMPRESSOR, FAN];
export const INDOOR_GATES = [
  ...['yes', 'breaker, no other feed, two legs, outlet', 'yes', 'clean, 1 cap, 7.5 6% 440', PROVING, '9.3 / 0.4 / 9.3'],
];
/** Make-dead of the outdoor unit once more, after live work. */
const AGAIN = ['yes', LOOK, PROVING, RESIDUAL];
const fused = (then = '24'): string[] => ['a', 'psc', 'calling', ...GATES, 'fuses 0.1 0.1', then];
const FIT = ['nothing', 'contactor fitted', 'wires back', ...RUNS];
const SUPPLY_GOOD = ['clear', 'l1l2 240 l1g 120 l2g 120 min 229'];
const OUT = ['left alone', 'y-c 25.6 coil 0'];
/** The same said at once, without the five minutes. */
const SOON = ['unchanged', 'y-c 25.6 coil 0'];

export const SILENT: readonly Example[] = [
  {
    title:
      'Nobody can see the indoor unit or the panel: nothing is opened before alarm, water and breaker are ruled out',
    lines: ['a', 'psc', 'not sure', 'no idea'],
    then: ['silent-not-looked-at'],
    ends: 'raised',
  },
  {
    title:
      'Not sure what the thermostat does, no alarm, no water, no breaker: measured instead, the low-pressure switch',
    lines: [
      ...['a', 'psc', 'can’t get in', 'none of them', ...GATES, 'fuses 0.1 0.1', '24', ...OUT, 'delay .1 lp 25.5'],
    ],
    then: ['low-pressure-open'],
    ends: 'raised',
  },
  {
    title: 'The thermostat was on heat: set right, its figures read',
    lines: ['a', 'psc', 'on heat', 'runs', ...RUNS],
    then: ['thermostat-was-set-wrong', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'A utility’s box holds it off',
    lines: ['a', 'psc', 'load control'],
    then: ['held-by-load-control'],
    ends: 'unrepaired',
  },
  {
    title: 'A leak alarm is left alone',
    lines: ['a', 'psc', 'leak alarm'],
    then: ['alarm-or-lockout'],
    ends: 'raised',
  },
  {
    title: 'A blown fuse: the dead tests go first, then a senior decides',
    lines: [
      ...['a', 'psc', 'calling', ...GATES, 'fuses ol 0.1'],
      ...[...BLOCK, 'ready, reciprocating, 500', '120', '9.3 / 0.4 / 9.3'],
    ],
    then: ['fuse-blown', 'capacitor-good', 'fuse-without-cause'],
    ends: 'raised',
  },
];

export const PRINTED_COIL: readonly Example[] = [
  {
    title: 'A package unit: dead tests first, then the supply, its coil live, then a restart',
    lines: [
      ...[...fused('package'), ...BLOCK, ...SUPPLY_GOOD],
      ...['left alone', 'begin 25.6 coil 25.1, prints 24, pulls in', ...RUNS],
    ],
    then: ['control-not-apart', 'capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'It cycles, and its coil is on line volts: read live after the dead tests, the low-pressure switch',
    lines: [
      ...['f', 'psc', '30 seconds', 'clean', ...GATES, ...BLOCK, '240v', ...SUPPLY_GOOD],
      ...['left alone', 'begin 240 coil 0, prints 240, stays out', 'delay .1 lp 239'],
    ],
    then: ['capacitor-good', 'control-not-apart', 'low-pressure-open'],
    ends: 'raised',
  },
  {
    title: 'A package unit cycles on a matted coil: washed, its switch reset once before the restart',
    lines: [
      ...['f', 'psc', '30 seconds', 'matted', 'washed', ...GATES, ...BLOCK, 'package', ...SUPPLY_GOOD],
      ...['left alone', 'begin 25.6 coil 0, prints 24, stays out', 'delay .1 lp .1 hp 25.5', 'coil clean'],
      ...[...DEAD_AGAIN, 'reset once', ...RUNS],
    ],
    then: ['condenser-washed-first', 'capacitor-good', 'control-not-apart', 'high-pressure-open', 'repair-proven'],
    ends: 'done',
  },
];

/** Silent, the high-pressure switch open, the coil clean, the fan said to have been slow: its dead tests. */
const WEAK_FAN = [...[...fused(), ...OUT, 'delay .1 lp .1 hp 25.5', 'fan was slow', LINE, 'no diagram', 'wires off']];
const FITTED = [
  ...['spin free', COMPRESSOR, FAN, 'coil dirty', 'other 45+5 440 herm 44.8 fan 5.02', 'fitted', 'wires back'],
];
export const CONTROL: readonly Example[] = [
  {
    title: 'The high-pressure switch laid to the fan, a section weak: replaced, and a senior reads which it was',
    lines: [...WEAK_FAN, 'herm 36.1 fan 5.02 hf 4.4 case ol', ...FITTED],
    then: ['high-pressure-fan', 'section-fails-value', 'new-part-right', 'high-pressure-section-replaced'],
    ends: 'raised',
  },
  {
    title: 'The high-pressure switch laid to the fan, its bearings done: a new motor, reset once, proven',
    lines: [
      ...[...WEAK_FAN, GOOD, 'stuck', 'stiff', COMPRESSOR, FAN, 'nothing', 'motor fitted', '45+5 6% 440'],
      ...['other 45+5 440 herm 45.2 fan 5.01', 'fitted', 'wires back', 'reset once', ...RUNS],
    ],
    then: [
      'high-pressure-fan',
      'capacitor-good',
      'fan-bearings',
      'new-part-right',
      'high-pressure-reset',
      'repair-proven',
    ],
    ends: 'done',
  },
  {
    title: 'The high-pressure switch, and coil and fan were not seen: undecided',
    lines: [...fused(), ...OUT, 'delay .1 lp .1 hp 25.6', 'can’t see them from here'],
    then: ['high-pressure-not-looked-into'],
    ends: 'raised',
  },
  {
    title: 'Nobody knows when the call was last changed: “left alone” a moment later is not taken at its word',
    lines: [...fused(), 'not sure', 'y-c 25.6 coil 0', 'waited', ...SOON, 'waited', LINE],
    then: [],
  },
  {
    title: '0 V within five minutes decides nothing, nor does “left alone” right after it: the dead tests',
    lines: [
      ...fused(),
      'changed just now',
      'y-c 0 coil 0',
      'not sure',
      ...SOON,
      'waited',
      ...BLOCK,
      ...SUPPLY_GOOD,
      ...RUNS,
    ],
    then: ['capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'The high-pressure switch, tripped on a matted coil',
    lines: [
      ...[...fused(), ...OUT, 'delay .1 lp .1 hp 25.6'],
      ...['coil matted, cottonwood', 'cleaned', ...BLOCK, ...RUNS],
    ],
    then: ['high-pressure-open', 'capacitor-good', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The high-pressure switch on a matted coil that is not cleaned today: it stays off',
    lines: [...fused(), ...OUT, 'delay .1 lp .1 hp 25.6', 'coil matted', 'not today'],
    then: ['high-pressure-left-dirty'],
    ends: 'raised',
  },
  {
    title: 'The high-pressure switch behind a weak fan: the dead tests find its section',
    lines: [...fused(), ...OUT, 'delay .1 lp .1 hp 25.6', 'fan slow', LINE, 'no diagram', 'wires off'],
    then: ['high-pressure-fan'],
  },
  {
    title: 'The high-pressure switch with a clean coil: certified',
    lines: [...fused(), ...OUT, 'delay .1 lp .1 hp 25.6', 'coil clean'],
    then: ['high-pressure-unexplained'],
    ends: 'raised',
  },
  {
    title: 'The low-pressure switch: certified',
    lines: [...fused(), ...OUT, 'delay .1 lp 25.5'],
    then: ['low-pressure-open'],
    ends: 'raised',
  },
  {
    title: 'The discharge thermostat: it ran too hot',
    lines: [...fused(), ...OUT, 'delay .1 lp .1 hp .1 discharge 25.6'],
    then: ['discharge-thermostat-open'],
    ends: 'raised',
  },
  {
    title: 'The delay stays open long past its time',
    lines: [...fused(), ...OUT, 'delay 25.6'],
    then: ['delay-stays-open'],
    ends: 'raised',
  },
  {
    title: 'Every switch closed, no volts at the coil: a wire, mended',
    lines: [...fused(), ...OUT, 'delay .1 lp .1 hp .1', 'mended', ...RUNS],
    then: ['control-wire-open', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Volts lost on the way to the coil: the switch that takes them, and it waits for the part',
    lines: [...fused(), 'left alone', 'y-c 25.6 coil 19', 'delay .1 lp 6.4'],
    then: ['control-volts-dropped'],
    ends: 'left',
  },
  {
    title: 'Volts lost on the way to the coil, every switch closed: a joint, mended',
    lines: [...fused(), 'left alone', 'y-c 25.6 coil 19', 'delay .1 lp .1 hp .1', 'mended', ...RUNS],
    then: ['control-wire-open', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'A volt or two lost, and enough at the coil: what counts is whether it pulls in',
    lines: [...fused(), 'left alone', 'y-c 26.6 coil 24.6', 'pulls in', ...BLOCK, ...SUPPLY_GOOD, ...RUNS],
    then: ['capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'Nobody could read along the switches',
    lines: [...fused(), ...OUT, 'cant reach them'],
    then: ['control-undecided'],
    ends: 'raised',
  },
  {
    title: 'It pulls in with the line locked: dead tests, then the supply',
    lines: [...fused(), 'left alone', 'y-c 25.6 coil 25.4', 'pulls in', ...BLOCK, 'clear', '0 0 0', '241'],
    then: ['capacitor-good', 'supply-absent'],
    ends: 'left',
  },
];

const NOT_IN = [...fused(), 'left alone', 'y-c 25.6 coil 25.4', 'stays out'];
export const CONTACTOR_DEAD: readonly Example[] = [
  {
    title: 'Good once and OL once: neither is believed',
    lines: [...NOT_IN, 'contacts 3 .1 coil 12.4', 'contacts .1 .1 coil ol'],
    then: ['contactor-undecided'],
    ends: 'raised',
  },
  {
    title: 'Volts at the coil, coil right, not in: jammed',
    lines: [...NOT_IN, 'contacts .1 .1 coil 12.4', ...FIT],
    then: ['contactor-jammed', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Its coil reads OL',
    lines: [...NOT_IN, 'contacts .1 .1 coil ol', 'contacts .1 .1 coil ol', ...FIT],
    then: ['contactor-coil-open', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Its coil is shorted',
    lines: [...NOT_IN, 'contacts .1 .1 coil 2.1', 'contacts .1 .1 coil 2', ...FIT],
    then: ['contactor-coil-shorted', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Its contacts are done',
    lines: [...NOT_IN, 'contacts 3.4 .1 coil 12.4', 'contacts 3.2 .1 coil 12.4', ...FIT],
    then: ['contactor-contacts', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'A coil between its bands condemns nothing',
    lines: [...NOT_IN, 'contacts .1 .1 coil 6.2', 'contacts .1 .1 coil 6.3'],
    then: ['contactor-undecided'],
    ends: 'raised',
  },
  {
    title: 'OL through lacquer, 12.5 Ω on bright metal: the coil is good, its armature is not',
    lines: [...NOT_IN, 'contacts .1 .1 coil ol', 'contacts .1 .1 coil 12.5', ...FIT],
    then: ['contactor-jammed', 'repair-proven'],
    ends: 'done',
  },
];

const NONE = [...fused(), 'left alone', 'y-c 0 coil 0'];
/** Probes on the indoor board, placed with that unit locked and dead; then the call, five minutes old. */
const placed = (drive: string[] = ['psc'], since = 'left alone'): string[] => [
  ...['doors on', 'qualified', ...drive, ...INDOOR_GATES, 'placed', since],
];
export const BOARD = [...NONE, ...placed()];
const BOARD_ECM = [...NONE, ...placed(['ecm', 'off now', 'rested'])];
/** By the thermostat alone: nothing was read outdoors. */
const BLANK = ['a', 'psc', 'blank', ...placed()];
/** Make-dead of the indoor unit once more, after the live readings. */
export const INDOOR_AGAIN = ['yes', 'clean, 1 cap, 7.5 6% 440', PROVING, '9.3 / 0.4 / 9.3'];
const ABSENT = 'no-call-outdoors';
const NO_24 = [...BOARD, 'r-c 0 y-c 0 primary 240', ...INDOOR_AGAIN];
export const INDOOR_SOURCE: readonly Example[] = [
  {
    title: 'A blank thermostat: the door was off its switch',
    lines: ['a', 'psc', 'blank', 'door off', 'runs', ...RUNS],
    then: ['indoor-door-off', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Its breaker was off, and holds',
    lines: ['a', 'psc', 'blank', 'breaker off', 'holds', 'runs', ...RUNS],
    then: ['indoor-breaker-was-off', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Its breaker trips again: it stays off',
    lines: ['a', 'psc', 'blank', 'breaker off', 'trips again'],
    then: ['indoor-breaker-trips'],
    ends: 'raised',
  },
  {
    title: 'The call leaves the board and doesn’t arrive: the cable, mended',
    lines: [...BOARD, 'r-c 26.1 y-c 26', ...INDOOR_AGAIN, 'splice fixed', ...RUNS],
    then: [ABSENT, 'thermostat-cable-mended', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The cable is open and is not mended today',
    lines: [...BOARD_ECM, 'r-c 26.1 y-c 26', 'off now', 'rested', ...INDOOR_AGAIN, 'not today'],
    then: [ABSENT, 'thermostat-cable-open'],
    ends: 'left',
  },
  {
    title: 'The call doesn’t leave the thermostat',
    lines: [...BOARD, 'r-c 26.1 y-c 0 float 0.1'],
    then: [ABSENT, 'thermostat-or-its-cable'],
    ends: 'left',
  },
  {
    title: 'The float switch holds the call: water first',
    lines: [...BOARD, 'r-c 26.1 y-c 0 float 25.8'],
    then: [ABSENT, 'float-switch-open'],
  },
  {
    title: 'No volts come into the transformer',
    lines: [...BOARD, 'r-c 0 y-c 0 primary 0'],
    then: [ABSENT, 'control-primary-absent'],
    ends: 'raised',
  },
  {
    title: 'More load than its VA',
    lines: [...BOARD, 'r-c 20 y-c 0 primary 240 load amps 2.5 a, 40 va'],
    then: [ABSENT, 'transformer-overloaded'],
    ends: 'raised',
  },
  {
    title: 'A door off when he came, the line outdoors locked: put back, and the restart shows',
    lines: [...NONE, 'door off', 'door on', ...RUNS],
    then: [ABSENT, 'indoor-door-off', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Enough at the board and too little at the strip: what lies between, no part',
    lines: [...fused(), 'left alone', 'y-c 17 coil 16.5', ...placed(), 'r-c 26.1 y-c 26'],
    then: ['call-low-outdoors', 'call-lost-between'],
    ends: 'raised',
  },
  {
    title: 'No 24 V, and fuse and both windings whole: a senior, no transformer',
    lines: [...NO_24, 'fuse 0.1 sec 1.2 pri 22 y-c 12'],
    then: [ABSENT, 'control-source-reads-whole'],
    ends: 'raised',
  },
  {
    title: 'Low under load, and nobody read why',
    lines: [...BOARD, 'r-c 20 y-c 0'],
    then: [ABSENT, 'control-volts-low'],
    ends: 'raised',
  },
  {
    title: '208 V on the 240 V tap: moved, dead',
    lines: [...BOARD, 'r-c 20 y-c 0 primary 208 tap 240', ...INDOOR_AGAIN, 'moved', ...RUNS],
    then: [ABSENT, 'transformer-tap-moved', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The wrong tap beside an electronic blower: a senior',
    lines: [...BOARD_ECM, 'r-c 20 y-c 0 primary 208 tap 240'],
    then: [ABSENT, 'transformer-tap-wrong'],
    ends: 'raised',
  },
  {
    title: 'A blown board fuse and no short: no new fuse',
    lines: [...NO_24, 'fuse ol sec 1.2 y-c 12'],
    then: [ABSENT, 'board-fuse-without-cause'],
    ends: 'raised',
  },
  {
    title: 'An open transformer behind an electronic blower that rested',
    lines: [...BOARD_ECM, 'r-c 0 y-c 0 primary 240', 'off now', 'rested', ...INDOOR_AGAIN, 'fuse 0.1 sec ol y-c 12'],
    then: [ABSENT, 'transformer-open'],
    ends: 'left',
  },
  {
    title: 'A primary that nobody read: no transformer is condemned on its secondary alone',
    lines: [...BOARD, 'r-c 0 y-c 0', 'cant reach it', ...INDOOR_AGAIN, 'fuse 0.1 sec ol y-c 12'],
    then: [ABSENT, 'transformer-primary-not-read'],
    ends: 'raised',
  },
  {
    title: 'No 24 V and the primary left out: asked in the same sitting, and its winding open, dead',
    lines: [...BOARD, 'r-c 0 y-c 0', '239', ...INDOOR_AGAIN, 'fuse 0.1 sec 1.2 pri ol y-c 12'],
    then: [ABSENT, 'transformer-open'],
    ends: 'left',
  },
  {
    title: 'Line volts on R and C: hands out, both units off',
    lines: [...BOARD, 'r-c 118 y-c 0'],
    then: [ABSENT, 'control-volts-foreign'],
    ends: 'raised',
  },
  {
    title: 'A door that the technician took off explains no call',
    lines: ['a', 'psc', 'blank', 'i took it off', 'was on', 'not qualified'],
    then: ['indoor-door-taken-off', 'control-source-undecided'],
    ends: 'raised',
  },
  {
    title: 'The call leaves the board, and nobody read whether it arrives: undecided',
    lines: [...BLANK, 'r-c 26.1 y-c 26'],
    then: ['call-not-read-outdoors'],
    ends: 'raised',
  },
  {
    title: 'A blank thermostat, the call left alone: none leaves it',
    lines: [...BLANK, 'r-c 26.1 y-c 0', 'there', '0.1'],
    then: ['thermostat-or-its-cable'],
    ends: 'left',
  },
  {
    title: 'No call at the board, and a float that nobody can read: undecided',
    lines: [...BOARD, 'r-c 26.1 y-c 0', 'there', 'cant'],
    then: [ABSENT, 'call-held-undecided'],
    ends: 'raised',
  },
  {
    title: 'A secondary that reads OL before a short outward: the short first, no transformer yet',
    lines: [...NO_24, 'fuse 0.1 sec ol y-c 1.5'],
    then: [ABSENT, 'control-short-behind-a-good-fuse'],
    ends: 'raised',
  },
  {
    title: 'Read within five minutes of a change of call: undecided',
    lines: [...BLANK.slice(0, -1), 'just now', 'not sure', 'r-c 26.1 y-c 0 float 0.1'],
    then: ['call-read-too-early'],
    ends: 'raised',
  },
  {
    title: 'Not qualified for live readings: handed on',
    lines: [...NONE, 'doors on', 'not qualified'],
    then: [ABSENT, 'control-source-undecided'],
    ends: 'raised',
  },
];

const SHORTED = [...NO_24, 'fuse ol sec 1.2 y-c 1.5'];
export const SHORT_OUTDOORS: readonly Example[] = [
  {
    title: 'A blown board fuse, the short in the outdoor unit: found, under its own lock, before the new one',
    lines: [...SHORTED, ...AGAIN, 'lifted', '1.4', 'found it', 'new fuse in', ...RUNS],
    then: [ABSENT, 'control-short-found', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Neither the unit nor the cable reads short: not located, no new fuse',
    lines: [...SHORTED, ...AGAIN, 'lifted', '12', 'ol'],
    then: [ABSENT, 'board-fuse-short-not-located'],
    ends: 'raised',
  },
];
export const BOARD_FUSE: readonly Example[] = [
  {
    title: 'The short in the cable, a sound pair taken, one new fuse',
    lines: [...SHORTED, ...AGAIN, 'lifted', 'ol', '1.5', 'spare pair', 'new fuse in', ...RUNS],
    then: [ABSENT, 'control-short-found', 'repair-proven'],
    ends: 'done',
  },
];

const CHATTERS = ['g', 'psc', 'steady', '24', ...GATES];
export const CHATTER: readonly Example[] = [
  {
    title: 'A thermostat without a C wire starves',
    lines: ['g', 'psc', 'blinks'],
    then: ['thermostat-without-common'],
    ends: 'raised',
  },
  {
    title: 'Enough volts and it buzzes: the contactor',
    lines: [...CHATTERS, 'coil 23.1', 'buzzes', 'contacts .1 .1 coil 12.4', ...FIT],
    then: ['contactor-jammed', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The source holds and the coil gets too little: the switch that takes the volts',
    lines: [...CHATTERS, 'coil 18.2 rc 24.9', 'chatters', 'delay .1 lp 6.3'],
    then: ['coil-volts-dropped'],
    ends: 'left',
  },
  {
    title: 'The source holds, every switch is closed: a joint, mended, its contacts looked at',
    lines: [...CHATTERS, 'coil 18.2 rc 24.9', 'chatters', 'delay .1 lp .1 hp .2', 'tightened', ...BLOCK, ...RUNS],
    then: ['control-joint-mended', 'capacitor-good', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'More than a control circuit has: hands out, then undecided',
    lines: [...CHATTERS, 'coil 29.1', 'chatters'],
    then: ['chatter-undecided'],
    ends: 'raised',
  },
  {
    title: 'Quiet with the line locked: the dead tests look at its contacts',
    lines: [...CHATTERS, 'coil 24.1 rc 25', 'quiet', ...BLOCK, ...RUNS],
    then: ['capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
];

const RAN = ['m', 'psc', 'blower off', '24', ...GATES];
export const RUNS_ON: readonly Example[] = [
  {
    title: 'Line volts at a 24 V coil: hands out, both units off',
    lines: [...RAN, 'coil 118'],
    then: ['control-volts-foreign'],
    ends: 'raised',
  },
  {
    title: 'No volts at the coil and closed: welded',
    lines: [...RAN, 'coil 0', 'contacts 0.1 0.1', 'contacts 0.1 0.2', ...FIT],
    then: ['contactor-welded', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Closed once, and it was a bar: left out, nothing is welded',
    lines: [...RAN, 'coil 12', 'contacts ol 0', 'contacts ol _'],
    then: ['runs-on-undecided'],
    ends: 'raised',
  },
  {
    title: 'A box whose coil has its volts: its own control calls, no contactor',
    lines: ['m', 'walk-in', 'product 38 r404a nothing', '24', ...GATES, 'coil 25'],
    then: ['box-control-calls'],
    ends: 'raised',
  },
  {
    title: 'A box has no indoor unit: its coil’s print first',
    lines: ['m', 'walk-in', 'product 38 r404a nothing', '240', ...GATES, 'contacts ol ol'],
    then: ['runs-on-undecided'],
    ends: 'raised',
  },
  {
    title: 'Ice first',
    lines: ['m', 'psc', 'ice'],
    then: ['ice-comes-first'],
    ends: 'left',
  },
  {
    title: 'No call, and the contacts let go: undecided',
    lines: [...RAN, 'coil 0', 'contacts ol ol'],
    then: ['runs-on-undecided'],
    ends: 'raised',
  },
];

const CALLED = [...RAN, 'coil 25.2'];
const LIFTED = [...CALLED, 'psc', ...INDOOR_GATES, 'y is off'];
export const Y_OFF: readonly Example[] = [
  {
    title: 'Y off at the board, dead: its own Y has no volts, so the thermostat or its cable calls',
    lines: [...LIFTED, 'qualified', '0'],
    then: ['thermostat-cable-shorted'],
    ends: 'left',
  },
  {
    title: 'Beside an electronic blower that rested: Y bare, and the board still gives it',
    lines: [...CALLED, 'ecm', 'off now', 'rested', ...INDOOR_GATES, 'y is off', 'qualified', '25.1'],
    then: ['board-holds-the-call'],
    ends: 'raised',
  },
  {
    title: 'Nobody could lift Y',
    lines: [...CALLED, 'psc', ...INDOOR_GATES, 'not tried'],
    then: ['call-not-located'],
    ends: 'raised',
  },
];

export const CYCLING: readonly Example[] = [
  {
    title: 'Nobody can tell what coil and filter look like: that is no clean coil, the dead tests go on',
    lines: ['f', 'psc', 'not sure', 'not sure', ...GATES, LINE],
    then: [],
  },
  {
    title: 'In step with a thermostat in the sun',
    lines: ['f', 'psc', '20 minutes', 'sun'],
    then: ['cycles-with-the-thermostat'],
    ends: 'unrepaired',
  },
  {
    title: 'Ice first',
    lines: ['f', 'psc', 'seconds', 'ice'],
    then: ['ice-comes-first'],
    ends: 'left',
  },
  {
    title: 'Dead tests good, then who drops it: the low-pressure switch',
    lines: ['f', 'psc', '30 seconds', 'clean', ...GATES, ...BLOCK, '24', ...OUT, 'delay .1 lp 25.5'],
    then: ['capacitor-good', 'low-pressure-open'],
    ends: 'raised',
  },
  {
    title: 'It chatters where it cycles',
    lines: [
      ...['f', 'psc', 'minutes', 'matted', 'washed', ...GATES, ...BLOCK],
      ...['24', 'left alone', 'y-c 25.6 coil 25.4', 'chatters'],
    ],
    then: ['condenser-washed-first', 'capacitor-good', 'chatters-while-cycling'],
    ends: 'raised',
  },
  {
    title: 'Matted, washed, its fan good, the switch still tripped from before: reset once, proven',
    lines: [
      ...['f', 'psc', '30 seconds', 'matted', 'washed', ...GATES, ...BLOCK, '24', ...OUT, 'delay .1 lp .1 hp 25.5'],
      ...['coil clean', 'reset once', ...RUNS],
    ],
    then: ['condenser-washed-first', 'capacitor-good', 'high-pressure-open', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'A matted coil that is not washed today: nothing is judged on it',
    lines: ['f', 'psc', 'minutes', 'matted', 'no water'],
    then: ['condenser-left'],
    ends: 'left',
  },
  {
    title: 'The high-pressure switch, the coil clean, the fan good in every dead test: certified, no reset',
    lines: [
      ...['f', 'psc', '30 seconds', 'clean', ...GATES, ...BLOCK, '24', ...OUT, 'delay .1 lp .1 hp 25.5'],
      'fan was slow',
    ],
    then: ['capacitor-good', 'high-pressure-fan', 'high-pressure-not-the-fan'],
    ends: 'raised',
  },
];
