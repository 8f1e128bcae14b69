/** Worked calls that begin with water or a float. */
import type { Example } from '../../../engine/vocabulary.ts';
import { PROVE } from './lines.ts';

const cleared = (...lines: readonly string[]): string[] => [
  'float tripped',
  'house',
  'pan full',
  'drain cleared',
  ...lines,
];
export const WATER: readonly Example[] = [
  {
    title: 'Drain blocked: cleared, a quart leaves, the float lifts open',
    lines: [...cleared('primed', 'drains fine', 'lift opens'), ...PROVE],
    then: ['drain-cleared', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'No trap and no float',
    lines: [...cleared('no trap', 'drained', 'no float'), ...PROVE],
    then: ['trap-missing', 'no-float-there', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The float doesn’t open',
    lines: cleared('good', 'leaves', 'runs on'),
    then: ['float-does-not-open'],
    ends: 'left',
  },
  {
    title: 'Nothing in the drain, and the float works: nothing was put right',
    lines: ['float', 'house', 'float alone', 'ran free', 'good', 'drains', 'lift opens', ...PROVE],
    then: ['drain-ran-free', 'drain-in-order', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'Nothing in the drain, and no float is there',
    lines: ['leaking water', 'house', 'pan full', 'not sure', 'good', 'drains', 'no float', ...PROVE],
    then: ['drain-ran-free', 'drain-in-order-no-float', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'Dry and down, and no call passes',
    lines: ['float', 'house', 'float alone', 'was open', 'good', 'drains', 'stays open'],
    then: ['drain-ran-free', 'float-stays-open'],
    ends: 'raised',
  },
  {
    title: 'The float was not tried',
    lines: cleared('not sure', 'leaves', 'not sure'),
    then: ['float-not-tried'],
    ends: 'raised',
  },
  {
    title: 'A quart stands: the drain stays blocked',
    lines: cleared('good', 'backs up'),
    then: ['drain-blocked'],
    ends: 'left',
  },
  {
    title: 'Water on the board: off, and it stays off',
    lines: ['water', 'house', 'on the board', 'breaker off'],
    then: ['electrics-wet'],
    ends: 'raised',
  },
  {
    title: 'No dry way to the breaker: keep away',
    lines: ['leaking water', 'house', 'near wires', 'wet panel'],
    then: ['water-keep-away'],
    ends: 'raised',
  },
  {
    title: 'Nobody could clear it or see the water leave: neither blocked nor open',
    lines: ['float', 'house', 'float alone', 'not sure', 'good', 'cant see'],
    then: ['drain-ran-free', 'drain-not-seen'],
    ends: 'raised',
  },
];
