import { verdict } from '../../engine/vocabulary.ts';

/** What a restart within its limits proves. */
export const results = {
  proven: verdict({
    verdict: 'repair-proven',
    title: 'The repair is proven',
    says: ['The restart figures are in and lie within what was checked.'],
    next: [
      'Tell the customer what was found and fitted.',
      'Clean what made the part hot: coil, airflow.',
      'A senior reads and signs the record.',
    ],
    who: 'junior',
    judged: ['judged'],
    evidence: ['figures', 'plate', 'later'],
    then: '!done',
  }),
  'nothing-found': verdict({
    verdict: 'runs-nothing-found',
    title: 'It runs within what was checked: no part found at fault',
    says: ['The dead tests found nothing, and the restart figures are in.'],
    next: [
      'Tell the customer what was measured.',
      'Watch one whole cycle. If it comes back, a senior sees the readings.',
    ],
    who: 'junior',
    judged: ['judged'],
    evidence: ['figures', 'plate', 'later'],
    then: '!done',
  }),
  'why-hot': verdict({
    verdict: 'overload-without-cause',
    title: 'It runs again, and why its overload opened is not known: not proven',
    says: ['An overload opens on heat. It has cooled, and what made it hot was not found.'],
    next: [
      'Coil, fan, capacitor, charge, volts: a senior says which is looked at first.',
      'Tell the customer that it may stop again.',
    ],
    who: 'senior',
    judged: ['judged'],
    evidence: ['cool', 'figures', 'plate', 'later'],
    raises: 'verdict',
    then: '!raised',
  }),
};
