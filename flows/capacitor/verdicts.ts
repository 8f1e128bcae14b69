import { verdict } from '../../engine/vocabulary.ts';

/** Steps that both pages of readings have. */
type Own = 'compare' | 'shell' | 'short' | 'case' | '~case' | 'section-ohms' | '~wires';

const FIT = 'Measure the new part dead before you fit it.';
const NOT_PROVEN = 'Not proven until the restart numbers are in.';
const GO_ON = 'Finish the dead tests. A second fault is usual.';

/**
 * What a run capacitor can be found to be: the same words whether it has one section or two. `now` are the print and the
 * readings of this try, `before` those of the try before.
 */
export const capacitorVerdicts = <const R extends string>(now: readonly R[], before: readonly R[]) => ({
  good: verdict<'!done', R | Own>({
    verdict: 'capacitor-good',
    title: 'The run capacitor is good',
    says: ['It lies inside the label with the meter’s doubt, and nothing leaks to the case.'],
    next: [GO_ON],
    who: 'junior',
    judged: ['compare', 'shell'],
    evidence: [...now, 'case'],
    then: '!done',
  }),
  near: verdict<'!done', R | Own>({
    verdict: 'capacitor-conditional-pass',
    title: 'The run capacitor passes, near its limit',
    says: ['Inside the label, with a limit inside the meter’s doubt. It stays in.'],
    next: ['Recheck it at the next visit.', 'The amps at restart confirm it.', GO_ON],
    who: 'junior',
    judged: ['compare', 'shell'],
    evidence: [...now, 'case'],
    then: '!done',
  }),
  out: verdict<'!done', R | Own>({
    verdict: 'section-fails-value',
    title: 'The run capacitor is out of its label: replace it',
    says: ['It lies outside the printed tolerance. The label decides, not the ±10 % habit.'],
    next: ['Fit the same µF with the same or higher volts. Never the next size up.', FIT, GO_ON, NOT_PROVEN],
    who: 'junior',
    judged: ['compare'],
    evidence: [...now, ...before],
    then: '!done',
  }),
  high: verdict<'!done', R | Own>({
    verdict: 'section-too-high',
    title: 'It reads above the label: replace the part',
    says: ['Above the upper limit twice. Ask whether this label belongs to this part.'],
    next: ['Compare the label with the wiring diagram. Fit the part that the diagram names.', FIT, GO_ON, NOT_PROVEN],
    who: 'junior',
    judged: ['compare'],
    evidence: [...now, ...before],
    then: '!done',
  }),
  shorted: verdict<'!done', R | Own>({
    verdict: 'section-shorted',
    title: 'It is shorted: replace the part',
    says: ['Steady near zero ohms, wires off and discharged.'],
    next: ['Check the fuse and the contactor contacts.', FIT, GO_ON, NOT_PROVEN],
    who: 'junior',
    judged: ['short'],
    evidence: [...now, 'section-ohms', '~wires'],
    then: '!done',
  }),
  leak: verdict<'!done', R | Own>({
    verdict: 'leak-to-case',
    title: 'The part leaks to its case: replace it',
    says: ['Low to the case twice, all wires off.'],
    next: [FIT, GO_ON, NOT_PROVEN],
    who: 'junior',
    judged: ['compare', 'shell'],
    evidence: [...now, 'case', ...before, '~case'],
    then: '!done',
  }),
  'no-case': verdict<'!done', R | Own>({
    verdict: 'case-undecided',
    title: 'Inside the label, case not taken',
    says: ['The value is inside. Without a reading to the case the part is not called good.'],
    next: ['Each terminal to the bare rim in ohms would decide it.', 'A senior sees this call.'],
    who: 'senior',
    judged: ['compare'],
    evidence: [...now, 'case'],
    raises: 'verdict',
    then: '!done',
  }),
  contradiction: verdict<'!done', R | Own>({
    verdict: 'readings-contradict',
    title: 'The readings contradict each other: undecided',
    says: ['Nothing is condemned on readings that do not fit together.'],
    next: ['Another meter, and the terminals found from three readings, would decide it.', 'A senior sees this call.'],
    who: 'senior',
    judged: ['compare'],
    evidence: [...now, ...before],
    raises: 'verdict',
    then: '!done',
  }),
  'no-readings': verdict<'!done', R | Own>({
    verdict: 'value-undecided',
    title: 'The value is undecided',
    says: ['A reading or the rating is missing, so there is no verdict on the value.'],
    next: [
      'A capacitance meter with a fitting range, or the amps and volts under load by a qualified person, would decide it.',
      'Finish the dead tests.',
    ],
    who: 'junior',
    judged: ['compare'],
    evidence: [...now, 'section-ohms'],
    then: '!done',
  }),
});

/** Right by its own print, and not what the unit's diagram asks for; with the readings that show it. */
export const wrongPart = <const R extends string>(now: readonly R[]) => ({
  wrong: verdict<'!done', R | 'compare' | 'meant' | 'meant-near' | 'case' | '@cabinet:diagram'>({
    verdict: 'wrong-part-fitted',
    title: 'The wrong run capacitor is in: the diagram decides',
    says: ['It reads right by its own print, and that is not what the unit’s wiring diagram asks for.'],
    next: [
      'Fit what the diagram asks for.',
      'A senior sees it: the compressor may have run on the wrong part.',
      ...[FIT, GO_ON, NOT_PROVEN],
    ],
    who: 'senior',
    judged: ['compare', 'meant', 'meant-near'],
    evidence: [...now, 'case', '@cabinet:diagram'],
    raises: 'verdict',
    then: '!done',
  }),
});

/** Verdicts of its own readings or looks that end in another run capacitor. */
export const FAILED = [
  'condemned-by-sight',
  'section-fails-value',
  'section-too-high',
  'section-open',
  'section-shorted',
  'leak-to-case',
] as const;
/** Verdicts that end in another run capacitor. */
export const REPLACED = [...FAILED, 'wrong-part-fitted'] as const;
/** Verdicts that leave the run capacitor an open question for a senior. */
export const OPEN_QUESTIONS = [
  'wires-stuck',
  'terminals-unknown',
  'rating-unknown',
  'readings-spent',
  'case-undecided',
  'readings-contradict',
] as const;
