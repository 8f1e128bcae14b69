import { verdict } from '../../engine/vocabulary.ts';

/** Steps that both pages of run capacitors have. */
type Own = 'wires' | 'unrated' | 'short' | 'sight' | '@cabinet:condition' | '@cabinet:label';

const FIT = 'Measure the new part dead before you fit it.';
const NOT_PROVEN = 'Not proven until the restart numbers are in.';
const GO_ON = 'Finish the dead tests. A second fault is usual.';

/** What a run capacitor can be found to be before, or without, its value: the same words in either cabinet. */
export const unread = () => ({
  shorted: verdict<'!done', Own>({
    verdict: 'section-shorted',
    title: 'It is shorted: replace the part',
    says: ['Steady near zero ohms, wires off and discharged. Its rating has to come from the diagram.'],
    next: ['Check the fuse and the contactor contacts.', FIT, GO_ON, NOT_PROVEN],
    who: 'junior',
    judged: ['short'],
    evidence: ['wires', 'unrated'],
    then: '!done',
  }),
  'by-sight': verdict<'!done', Own>({
    verdict: 'condemned-by-sight',
    title: 'The run capacitor is condemned by sight: replace it',
    says: ['A bulged top, oil, a popped vent or a burnt-through terminal condemns it. A reading is optional.'],
    next: [FIT, GO_ON, NOT_PROVEN],
    who: 'junior',
    judged: ['sight'],
    evidence: ['@cabinet:condition'],
    then: '!done',
  }),
  stuck: verdict<'!done', Own>({
    verdict: 'wires-stuck',
    title: 'Wires still on: no verdict',
    says: ['With wires on, no reading counts.'],
    next: ['Ask a senior how to free the connectors.', 'Finish the other dead tests.'],
    who: 'senior',
    judged: [],
    evidence: ['wires'],
    raises: 'verdict',
    then: '!done',
  }),
  'no-rating': verdict<'!done', Own>({
    verdict: 'rating-unknown',
    title: 'The rating is not known: no verdict on the value',
    says: ['Not shorted as far as was read. A value needs a rating.'],
    next: ['The maker’s data for this unit would give the rating. A senior sees this call.', 'Finish the dead tests.'],
    who: 'senior',
    judged: [],
    evidence: ['wires', 'unrated'],
    raises: 'verdict',
    then: '!done',
  }),
  spent: verdict<'!done', Own>({
    verdict: 'readings-spent',
    title: 'Three tries without a verdict: undecided',
    says: ['The readings did not settle in three tries. Nothing is condemned.'],
    next: ['Another meter would decide it. A senior sees this call.', 'Finish the dead tests.'],
    who: 'senior',
    judged: [],
    evidence: ['wires', '@cabinet:label'],
    raises: 'verdict',
    then: '!done',
  }),
});
