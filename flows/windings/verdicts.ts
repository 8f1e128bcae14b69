/** What single-phase and three-phase windings, at the harness or at the terminals, conclude in the same words. */
import { verdict } from '../../engine/vocabulary.ts';

export const openAtHarness = <const R extends string>(...evidence: R[]) =>
  verdict<'!done', R | 'judged'>({
    verdict: 'winding-open-at-harness',
    title: 'A winding reads open at the harness',
    says: ['At the harness this condemns nothing: a wire or the plug reads the same.'],
    next: ['A senior decides about the terminals: cold, power locked, face out of line.'],
    who: 'senior',
    judged: ['judged'],
    evidence,
    raises: 'verdict',
    then: '!done',
  });

/** Any ground that the windings show, of whichever motor: its leads are in the reading. */
export const lowAtItsLeads = <const R extends string>(which: string, ...evidence: R[]) =>
  verdict<'!done', R | 'judged'>({
    verdict: 'low-to-ground',
    title: `The ${which} or its leads read low to ground`,
    says: ['Its leads are in this reading, and they chafe more often than a motor fails. No motor is condemned on it.'],
    next: ['Nothing is energised. After the dead tests the branches are read apart, and past the run of the leads.'],
    who: 'junior',
    judged: ['judged'],
    evidence,
    then: '!done',
  });

export const windingsNotTaken = <const R extends string>(...evidence: R[]) =>
  verdict<'!done', R>({
    verdict: 'compressor-windings-not-taken',
    title: 'The compressor’s windings were not measured',
    says: ['What follows is weaker for it. The restart’s amps have to show it.'],
    next: ['Go on.'],
    who: 'junior',
    judged: [],
    evidence,
    then: '!done',
  });

export const COMPRESSOR_HEAT = {
  id: 'compressor-open-until-cool',
  motor: 'compressor’s shell',
  protector: 'its overload',
} as const;
export const FAN_HEAT = { id: 'fan-open-until-cool', motor: 'fan motor', protector: 'its protector' } as const;
export const BLOWER_HEAT = { id: 'blower-open-until-cool', motor: 'blower motor', protector: 'its protector' } as const;
/** Open, and nobody could say how hot it is: as on a hot one, until it has cooled. */
export const untilCool = <const R extends string>(
  of: { id: string; motor: string; protector: string },
  ...evidence: R[]
) =>
  verdict<'!done', R | 'judged'>({
    verdict: of.id,
    title: `Open, and how hot the ${of.motor} is nobody could say: counted as hot`,
    says: [`On a hot one these pairs are ${of.protector}, and read again hours later. Nothing is condemned on them.`],
    next: [
      'Off until it is no warmer than the air around it, which takes hours. Then the same pairs again.',
      'A thermometer on it decides it now.',
    ],
    who: 'junior',
    judged: ['judged'],
    evidence,
    then: '!done',
  });
