import { choose, flow, verdict } from '../../engine/vocabulary.ts';
import { PRINTED_COIL } from '../examples/control.ts';

/** The coil has its volts from its own cabinet, or nobody knows: no test with the line locked. Its circuit is read live, later. */
export const notApart = <const R extends string, const T extends string>(evidence: R, then: T) =>
  verdict<T, R>({
    verdict: 'control-not-apart',
    title: 'The control circuit can’t be tested apart from the line',
    says: ['Its volts come from the same cabinet or are line volts. The dead tests go first, the rest is live work.'],
    next: ['After the dead tests, volts at the coil under the call: live work for qualified people.'],
    who: 'junior',
    judged: [],
    evidence: [evidence],
    then,
  });

/** Which circuit the contactor's coil is on: only 24 V from outside is tested with the line locked and the call there. */
export const printedCoil = flow({
  id: 'printed-coil',
  version: 1,
  title: 'What the coil prints',
  exits: ['apart', 'not-apart'],
  examples: PRINTED_COIL,
  steps: {
    coil: choose({
      say: 'What does the contactor’s coil print, and where does its call come from?',
      body: ['Split system: 24 V from the indoor unit. A package unit has its transformer in the same cabinet.'],
      callouts: [
        { level: 'danger', text: 'A coil of 120 to 240 V is line voltage: it is never tested as a control circuit.' },
      ],
      why: 'Only where 24 V come from outside can the line be locked while the call is tested.',
      options: {
        '24': {
          label: '24 V, from the indoor unit',
          words: ['24', '24v', '24 volt', '24 v coil', 'split'],
          to: '!apart',
        },
        line: { label: '120, 208 or 240 V', words: ['120', '208', '240', '120v', '240v', 'line voltage'], to: 'own' },
        package: {
          label: 'Package unit, transformer inside',
          words: ['package', 'package unit', 'packaged', 'rooftop'],
          to: 'own',
        },
        unsure: { label: 'Not sure', words: ['dont know', 'don’t know', 'unsure', 'not sure'], to: 'own' },
      },
    }),
    own: notApart('coil', '!not-apart'),
  },
});
