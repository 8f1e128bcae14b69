/** Lines that lead through a call to a question, as its pages ask. */
import type { GivenParts } from '../../../engine/schema.ts';

export const MEANS = 'pull-out, breaker, no other feed, two legs, outlet';
export const LINE_SIDE = 'pull-out, breaker, no other feed, two legs, line side 240 V';
export const BLOCK = 'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol';
export const COMPRESSOR = 'cr .9 cs 2.7 sr 3.6 g ol';
export const proved = (source: string, l1l2 = '0', l2g = '0'): GivenParts => ({
  before: source,
  l1l2,
  l1g: '0',
  l2g,
  t1g: '0',
  t2g: '0',
  after: source,
});
export const left = (battery: string, hc: string, fc: string, hf: string): GivenParts => ({
  batteryBefore: battery,
  hc,
  fc,
  hf,
  batteryAfter: battery,
});
export const looked = (print: string): string[] => ['psc', 'yes', MEANS, 'yes', `clean, 1 cap, ${print}`];
export const dead = (print: string): string[] => [
  ...looked(print),
  '121 / 0.2 0 0.1 / 0 0 / 121',
  '9.3 / 0.6 0.1 0.5 / 9.3',
];
export const wiresOff = (print: string): string[] => [...dead(print), BLOCK, 'no diagram', 'wires off'];
