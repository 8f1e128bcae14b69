import { judge, measure, probes, verdict, volts } from '../../engine/vocabulary.ts';
import { LIMITS } from '../limits.ts';
import { THREE_PHASE } from '../unit.ts';

/** Volts lost across the contactor’s closed poles, and amps that say off: what each is called. */
export const poles = {
  poles: measure({
    say: 'Volts across each closed pole, under load: L1 to T1, L2 to T2; L3 to T3 where it is three-phase.',
    callouts: [{ level: 'danger', text: 'Line voltage is present.' }],
    why: 'Two readings against ground carry more doubt than the drop. Across the pole it is read itself.',
    source: ['Look into it above 0.5 V, replace above 1 V: common practice, no single source'],
    picture: probes('V AC', ['L1', 'T1', 'under 0.5 V'], ['L2', 'T2', 'under 0.5 V']),
    circuit: 'line',
    fields: {
      p1: volts('L1 to T1', { over: false, words: ['l1-t1', 't1-l1'] }),
      p2: volts('L2 to T2', { over: false, words: ['l2-t2', 't2-l2'] }),
      p3: volts('L3 to T3', { over: false, words: ['l3-t3', 't3-l3'], when: THREE_PHASE }),
    },
    cant: 'off',
    next: 'drop',
  }),
  drop: judge('contact-drop', {
    of: { poles: 'poles', figures: 'figures' },
    limits: LIMITS.contactDrop,
    says: {
      good: 'The poles are fine. The drop lies in the wiring: a senior looks at it.',
      look: 'A pole drops more than it should: terminals tight? Look into it.',
      replace: 'A pole drops more than 1 V under load: the contactor is replaced.',
      open: 'A pole with that much across it is not closed: nothing is replaced on it.',
      'no-load': 'Without amps a drop says nothing of a pole.',
    },
    then: {
      good: 'wiring',
      look: 'wiring',
      replace: 'pole',
      open: 'no-drop',
      'no-load': 'no-drop',
      undecided: 'no-drop',
    },
  }),
  'no-drop': verdict({
    verdict: 'poles-undecided',
    title: 'Volts across the poles that tell nothing of their contacts: undecided',
    says: ['A drop counts across a closed pole, under load. One of the two is not there. Nothing is condemned.'],
    next: [
      'Is the contactor in? Amps and the volts from L1 to T1 and L2 to T2 in one sitting would decide it.',
      'Turn it off. A senior sees this call.',
    ],
    who: 'senior',
    judged: ['judged', 'drop'],
    evidence: ['figures', 'poles'],
    raises: 'verdict',
    then: '!raised',
  }),
  pole: verdict({
    verdict: 'contact-drop',
    title: 'A contactor pole drops too much: replace the contactor',
    says: ['More than 1 V across a closed pole under load.'],
    next: [
      'Turn it off, and make it dead again. Same coil volts, poles and amps.',
      'Are the terminals tight? Not proven until the restart numbers are in.',
    ],
    who: 'junior',
    judged: ['drop'],
    evidence: ['figures', 'poles'],
    then: '!contactor',
  }),
  heavy: verdict({
    verdict: 'compressor-above-mcc',
    title: 'The compressor draws more than it may for long: off, and a senior looks at why',
    says: ['RLA is no limit, MCC is. It would go off on its overload, and it cooks its windings until then.'],
    next: [
      'Off. Volts and contactor are in the record: head pressure next, so the coil, the condenser’s air, the fan.',
      'The circuit is for a certified person. A compressor that binds is the last thing to think of.',
    ],
    who: 'senior',
    judged: ['judged'],
    evidence: ['figures', 'plate'],
    raises: 'verdict',
    then: '!raised',
  }),
  legs: verdict({
    verdict: 'legs-apart',
    title: 'The three legs of the compressor draw too far apart: a line or the motor',
    says: ['More than 10 % apart. A missing line or a winding: amps alone don’t tell which.'],
    next: [
      'Off. All three leads one place on, dead and proved, says which: it stays with the line, or moves with the motor.',
      'A senior leads on. After a lead was moved its rotation is watched at the first start.',
    ],
    who: 'senior',
    judged: ['judged'],
    evidence: ['figures'],
    raises: 'verdict',
    then: '!raised',
  }),
  wiring: verdict({
    verdict: 'drop-in-the-wiring',
    title: 'Volts are lost between L and T: a senior looks at it',
    says: ['No pole drops more than 1 V, and the volts are lost all the same.'],
    next: ['Turn it off. Tight lugs and wires are the next thing.'],
    who: 'senior',
    judged: ['drop'],
    evidence: ['figures', 'poles'],
    raises: 'verdict',
    then: '!raised',
  }),
};
