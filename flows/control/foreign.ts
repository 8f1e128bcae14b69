import { judge, verdict } from '../../engine/vocabulary.ts';
import { LIMITS } from '../limits.ts';

/** Whether what was read at a 24 V circuit is its own, before it says anything of a switch or a coil. */
export const ownVolts = <const R extends string, const T extends string>(readings: R, then: T) =>
  judge('foreign-volts', {
    of: { readings },
    limits: LIMITS.foreignVolts,
    quiet: ['own', 'undecided'],
    then: { own: then, foreign: 'foreign', undecided: then },
  });
/** `judged`, `evidence`: the judge that found it and the readings it goes by. */
export const foreignFound = <const R extends string>(judged: readonly R[], evidence: readonly R[]) =>
  verdict<'!raised', R>({
    verdict: 'control-volts-foreign',
    title: 'Line volts on the 24 V circuit: hands out, both units off',
    says: [
      'More than 30 V where 24 belong: somewhere a line wire touches the control circuit. No switch is in question.',
    ],
    next: [
      'Both means off. No hand in either cabinet, nor on the thermostat’s wires, before both are proved dead.',
      'A senior finds where they touch. Tell the customer to leave the thermostat alone.',
    ],
    who: 'senior',
    judged,
    evidence,
    raises: 'verdict',
    then: '!raised',
  });
