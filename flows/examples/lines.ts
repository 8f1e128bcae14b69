/** Stretches that many worked calls share, each line one reply of a technician. */
const LOOK = 'clean, 1 cap, 45+5 6% 440';
export const MEANS = 'pull-out, breaker, no other feed, two legs, outlet';
export const PROVING = '121 / 0.2 0 0.1 / 0 0 / 121';
export const RESIDUAL = '9.3 / 0.6 0.1 0.5 / 9.3';
/** Of a capacitor with two terminals. */
export const ONE_RESIDUAL = '9.3 / 0.6 / 9.3';
/** Fuses, contactor, loads to ground: all good. */
export const LINE = 'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol';
export const GOOD = 'herm 44.6 fan 5.03 hf 4.52 case ol';
export const WEAK = 'herm 36.1 fan 5.02 hf 4.4 case ol';

/** What is asked before anything is opened: whose hum it was, or whether the fan was meant to stand. */
const firstLook = (seen: string): string[] => (seen === 'b' ? ['growls'] : seen === 'c' ? ['neither'] : []);
/** From the observation to the proved isolation. */
export const dead = (seen = 'd', look = LOOK, residual = RESIDUAL): string[] => [
  ...[seen, 'psc', ...firstLook(seen), 'yes', MEANS, 'yes', look, PROVING, residual],
];
/** A hum, a part with one section: dead, and that section good. */
export const ONE_DEAD = [
  ...['growls', 'yes', MEANS, 'yes', 'clean, 1 cap, 45 6% 440', PROVING, ONE_RESIDUAL],
  ...[LINE, 'no diagram', 'wires off', 'herm 45.1 case ol'],
];
/** And on to the wires of the run capacitor. */
export const wiresOff = (seen = 'd', look = LOOK, residual = RESIDUAL): string[] => [
  ...dead(seen, look, residual),
  LINE,
  'no diagram',
  'wires off herm fan c',
];
export const COMPRESSOR = 'cr .9 cs 2.7 sr 3.6 g ol';
export const MOTORS = ['spin free', COMPRESSOR];
/** The new part measured dead and fitted, the wires back. */
export const NEW_PART = ['other 45+5 440 herm 45.3 fan 5.04', 'fitted', 'wires back'];
const PLATE = '17.9 96 1.2';
export const CLOSED = [PLATE, 'closed'];
export const RUNS = [...CLOSED, '240 239 comp 13.1 fan .9 split 19'];
/** Three lines. */
export const THREE_RUN = [...CLOSED, '239 241 240 comp 13.1 13.2 12.9 fan .9 split 19'];
/** A box, and 20 minutes later. */
export const BOX_COOLS = ['9.6 56 1.0', 'closed', '240 239 comp 7.1 fan .9 box 47', 'box 41'];
/** A next round: dead again from the lock, the class and the print known. */
export const again = (seen = 'd'): string[] => [
  seen,
  ...firstLook(seen),
  'yes',
  'clean, 1 cap',
  PROVING,
  RESIDUAL,
  LINE,
  'no diagram',
  'done',
];
/** Power was on: from the lock on, all of it again. */
export const DEAD_AGAIN = ['yes', 'clean, 1 cap', '121 / 0.2 0 0.1 / 0 0 / 121', '9.3 / 0.6 0.1 0.5 / 9.3'];
