/** Worked calls of a control circuit that is read live: a package unit, a coil on line volts. */
import type { Example } from '../../engine/vocabulary.ts';
import { BLOCK, GATES } from './control.ts';
import { DEAD_AGAIN, RUNS } from './lines.ts';

const SUPPLY_GOOD = ['clear', 'l1l2 240 l1g 120 l2g 120 min 229'];
/** To the live sitting: dead tests and supply good. */
const clean = (coil = 'package'): string[] => [
  ...['a', 'psc', 'calling', ...GATES, 'fuses 0.1 0.1', coil],
  ...[...BLOCK, ...SUPPLY_GOOD],
];
const FOUND = ['control-not-apart', 'capacitor-good'];
const OUT = ['left alone', 'begin 25.6 coil 0, prints 24, stays out'];
const live = (title: string, lines: readonly string[], then: readonly string[], ends: string): Example => ({
  title,
  lines: [...clean(), ...lines],
  then: [...FOUND, ...then],
  ends,
});

export const COIL_LIVE: readonly Example[] = [
  live(
    'A package unit, enough volts and it stays out: its contactor, dead again',
    [
      ...['left alone', 'begin 25.6 coil 25.1, prints 24, stays out', ...DEAD_AGAIN],
      ...['contacts .1 .1 coil ol', 'contacts .1 .1 coil ol', 'nothing', 'contactor fitted', 'wires back', ...RUNS],
    ],
    ['contactor-coil-open', 'repair-proven'],
    'done',
  ),
  live(
    'The low-pressure switch of a package unit: certified',
    [...OUT, 'delay .1 lp 25.5'],
    ['low-pressure-open'],
    'raised',
  ),
  live(
    'The high-pressure switch on a matted coil: cleaned dead, reset once, proven',
    [...OUT, 'delay .1 lp .1 hp 25.6', 'coil matted', ...DEAD_AGAIN, 'cleaned', ...RUNS],
    ['high-pressure-open', 'repair-proven'],
    'done',
  ),
  live(
    'The discharge thermostat: it ran too hot',
    [...OUT, 'delay .1 lp .1 hp .1 discharge 25.6'],
    ['discharge-thermostat-open'],
    'raised',
  ),
  live('The delay stays open past its time', [...OUT, 'delay 25.6'], ['delay-stays-open'], 'raised'),
  live(
    'Every switch closed, no volts at the coil: a wire, mended dead',
    [...OUT, 'delay .1 lp .1 hp .1', ...DEAD_AGAIN, 'mended', ...RUNS],
    ['control-wire-open', 'repair-proven'],
    'done',
  ),
  live(
    'No call where its switches begin: its own source, and a senior',
    ['left alone', 'begin 0 coil 0, prints 24, stays out'],
    ['no-call-in-this-cabinet'],
    'raised',
  ),
  live('Nobody qualified for it: handed on before any restart', ['not qualified'], ['control-not-read-live'], 'raised'),
  live(
    'Line volts at a coil that prints 24 V: off, a senior',
    ['left alone', 'begin 25.6 coil 118, prints 24, stays out'],
    ['coil-volts-too-high'],
    'raised',
  ),
  live('Nobody could read across its switches', [...OUT, 'cant reach them'], ['control-undecided'], 'raised'),
  {
    title: 'A coil on 240 V with too little of it: a senior',
    lines: [...clean('240v'), 'left alone', 'begin 239 coil 188, prints 240, chatters'],
    then: [...FOUND, 'coil-volts-low'],
    ends: 'raised',
  },
  {
    title: 'A package unit chatters with too little at its coil: no restart on that, a senior',
    lines: [
      ...['g', 'psc', 'steady', 'package', ...GATES, ...BLOCK],
      ...['left alone', 'begin 21.2 coil 18.4, prints 24, chatters'],
    ],
    then: [...FOUND, 'coil-volts-low'],
    ends: 'raised',
  },
  {
    title: 'No volts within five minutes of the call decide nothing, twice: then all figures',
    lines: [
      ...[...clean(), 'just now', 'begin 25.6 coil 0, prints 24, stays out', 'waited'],
      ...['just now', 'begin 25.6 coil 25.1, prints 24, pulls in', ...RUNS],
    ],
    then: [...FOUND, 'runs-nothing-found'],
    ends: 'done',
  },
];
