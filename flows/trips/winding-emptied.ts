import { flow, judge, measure, probes, volts } from '../../engine/vocabulary.ts';
import { EMPTIED } from '../examples/trips.ts';
import { LIMITS } from '../limits.ts';

/** An insulation test charges a winding: one try to empty it, proved by its residual. A gate for the next hands inside. */
export const windingEmptied = flow({
  id: 'winding-emptied',
  version: 1,
  title: 'Discharge the winding',
  exits: ['empty', 'unproved', 'again'],
  needs: ['test'],
  examples: EMPTIED,
  steps: {
    applied: judge('winding-residual', {
      of: { readings: null, test: 'test' },
      limits: LIMITS.windingResidual,
      quiet: ['no-charge', 'ask'],
      then: {
        'no-charge': '!empty',
        ask: 'discharged',
        discharged: 'discharged',
        charged: 'discharged',
        meter: 'discharged',
        undecided: 'discharged',
      },
    }),
    discharged: measure({
      say: 'Discharge the winding through the resistor tool, then DC volts from it to ground.',
      body: [
        'A 9 V battery, winding to bare metal, the battery again.',
        'Treat it as charged until it reads 5 V or less. Hands inside after this begin at the lock again.',
      ],
      callouts: [{ level: 'danger', text: 'An insulation test leaves a winding charged.' }],
      why: 'The charge of the test would be the next one’s shock, whatever the test read.',
      source: ['our setting: 5 V DC'],
      picture: probes(
        'V DC',
        ['9 V battery +', '−', '7 to 10 V, before and after'],
        ['Winding terminal', 'Bare copper', '5 V or less'],
      ),
      circuit: 'part',
      fields: {
        batteryBefore: volts('9 V battery, before', { over: false, words: ['battery', 'batt', '9v'] }),
        winding: volts('Winding to ground, DC', { over: false, signed: true, words: ['residual'] }),
        batteryAfter: volts('Battery, after', { over: false, words: ['again', 'battery again'] }),
      },
      cant: '!unproved',
      next: 'left',
    }),
    left: judge('winding-residual', {
      of: { readings: 'discharged', test: 'test' },
      limits: LIMITS.windingResidual,
      says: {
        charged: 'Not empty. Discharge it again on bare metal, then read the whole line again.',
        meter: 'The meter was not proved on DC. Read the whole line again.',
      },
      then: {
        'no-charge': '!empty',
        ask: '!again',
        discharged: '!empty',
        charged: '!again',
        meter: '!again',
        undecided: '!again',
      },
    }),
  },
});
