import { choose, confirm, verdict } from '../../engine/vocabulary.ts';

/** The high-pressure switch of a box has tripped: what made the head high. */
export const tripped = {
  tripped: choose({
    say: 'The high-pressure switch tripped. Condenser and its fan: what do you see?',
    body: [
      'Grease, dust, cardboard in front of it. A fan that stands now may stand because the switch is open. Nothing is reset yet.',
    ],
    why: 'It opened because the head was high. The switch has done its work.',
    options: {
      dirty: { label: 'Dirty or blocked', words: ['dirty', 'plugged', 'blocked', 'grease', 'matted'], to: 'wash' },
      fan: {
        label: 'Clean; its fan slow or still while it ran, or nobody knows',
        words: ['fan was still', 'fan slow', 'fan was slow', 'fan still', 'fan stiff', 'fan not seen'],
        to: 'fan-first',
      },
      clean: {
        label: 'Clean, and its fan ran well when it ran',
        words: ['clean', 'fine', 'nothing', 'fan ran well'],
        to: 'unexplained',
      },
    },
    cant: 'unexplained',
  }),
  wash: confirm({
    say: 'Off at its means, your own lock on, the blade at a stand: clean the condenser. Then reset the switch once.',
    why: 'One that trips again on a clean condenser has another cause: certified.',
    yes: 'Cleaned, reset once',
    words: ['cleaned', 'cleaned and reset', 'reset', 'reset once'],
    no: { label: 'Not now', words: ['not now', 'not today'], to: 'left-dirty' },
    unsure: 'left-dirty',
    next: 'head-high',
  }),
  'head-high': verdict({
    verdict: 'box-high-pressure-reset',
    title: 'The high-pressure switch tripped on a dirty condenser: cleaned, reset once',
    says: ['The switch is not bad. Heat kills what starts and cools the compressor too: the dead tests come next.'],
    next: [
      'Watch it for 20 minutes. It trips again on a clean condenser: a certified person.',
      'Tell the customer to keep the condenser clear.',
    ],
    who: 'junior',
    judged: ['holds'],
    evidence: ['goods', 'tripped', 'wash'],
    then: '!go-on',
  }),
  'fan-first': verdict({
    verdict: 'box-high-pressure-fan',
    title: 'The high-pressure switch tripped, and the fan may be why: the dead tests tell',
    says: [
      'The switch is not bad: without air the head rises until it opens.',
      'What starts the fan, its spin and its windings decide. All good: it was not the fan, and a certified person comes.',
    ],
    next: ['Not reset before the fan is put right, then once.'],
    who: 'junior',
    judged: ['holds'],
    evidence: ['goods', 'tripped'],
    then: '!go-on',
  }),
  unexplained: verdict({
    verdict: 'box-high-pressure-unexplained',
    title: 'The high-pressure switch tripped, and the air doesn’t explain it, or nobody saw it',
    says: ['Overcharge, air in the circuit or a restriction: only a certified person finds out.'],
    next: ['Leave it off, not reset, never bridged.', 'The customer moves the goods: a certified person comes.'],
    who: 'certified',
    judged: ['holds'],
    evidence: ['goods', 'tripped'],
    raises: 'verdict',
    then: '!raised',
  }),
  'left-dirty': verdict({
    verdict: 'box-left-dirty',
    title: 'The condenser stays dirty: not reset, it stays off',
    says: ['Reset on a dirty condenser it trips again, and each time hotter.'],
    next: ['A senior plans the cleaning.', 'The customer moves the goods.'],
    who: 'senior',
    judged: ['holds'],
    evidence: ['goods', 'tripped', 'wash'],
    raises: 'verdict',
    then: '!raised',
  }),
};
