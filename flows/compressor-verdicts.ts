/** What single-phase and three-phase windings, at the harness or at the terminals, conclude in the same words. */
import { verdict } from '../engine/vocabulary.ts';

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

export const compressorGrounded = <const T extends string, const R extends string>(then: T, ...evidence: R[]) =>
  verdict<T, R | 'judged'>({
    verdict: 'compressor-grounded',
    title: 'The compressor reads low to ground: it stays off',
    says: ['Never energise it. Only a senior condemns a compressor: at its own harness, heater off, warmed, twice.'],
    next: ['Leave it locked and tagged.', 'A senior confirms.'],
    who: 'senior',
    judged: ['judged'],
    evidence,
    raises: 'verdict',
    then,
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
