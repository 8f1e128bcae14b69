import { act, found, verdict } from '../../engine/vocabulary.ts';
import { REPLACED } from '../capacitor/verdicts.ts';

/** A high-pressure switch tripped with the coil clean, and the fan was to be why. */
const FAN_ASKED = ['high-pressure-fan', 'box-high-pressure-fan'] as const;

/** The dead tests condemned nothing: where the fan was to explain a tripped high-pressure switch, a blade that was cleared does. */
export const notTheFan = <const T extends string>(none: T) =>
  found<T | 'was-cleared'>({ among: { fan: { verdicts: FAN_ASKED, to: 'was-cleared' } }, none });

const headHigh = verdict({
  verdict: 'high-pressure-not-the-fan',
  title: 'The high-pressure switch tripped, the coil is clean, and nothing at the fan explains it yet',
  says: [
    'What was not taken of the fan, its spin, its part or its windings, is open; so is a protector that has to cool.',
    'Overcharge, air in the circuit, a restriction, or a fan motor that fails only on volts: which of them is not known.',
    'Reset to find out, it would run against a head that nobody reads.',
  ],
  next: [
    'Leave it off: not reset, never bridged.',
    'A certified person resets it once, gauges on, and watches the fan. Tell the customer that one comes.',
  ],
  who: 'certified',
  judged: [],
  evidence: ['observation'],
  raises: 'verdict',
  then: '!raised',
});

/** What was wrong at the fan itself, and is put right when the restart comes. */
const AT_THE_FAN = ['fan-bearings', 'fan-winding-open', 'fan-to-frame', 'fan-blade-cleared'] as const;

/** A high-pressure switch that was laid to the fan: reset once where the fan was it, and nothing started where it wasn’t. */
export const head = {
  'was-cleared': found({
    among: { cleared: { verdicts: ['fan-blade-cleared'], to: 'reset-once' } },
    none: 'head-high',
  }),
  tripped: found({ among: { asked: { verdicts: FAN_ASKED, to: 'at-the-fan' } }, none: 'restart' }),
  'at-the-fan': found({
    among: {
      fan: { verdicts: AT_THE_FAN, to: 'reset-once' },
      capacitor: { verdicts: REPLACED, to: 'which-section' },
    },
    none: 'head-high',
  }),
  // The verdict names the part, whichever of its sections it was: nobody’s word decides that.
  'which-section': verdict({
    verdict: 'high-pressure-section-replaced',
    title: 'A capacitor was replaced behind a tripped high-pressure switch: a senior reads which section it was',
    says: [
      'The fan’s section alone slows the fan and lifts the head. The compressor’s explains no high head.',
      'Both values are on the record. The switch is not reset yet.',
    ],
    next: [
      'The fan’s section was out: a senior has it reset once, started and watched for 20 minutes.',
      'Only the compressor’s was: a certified person. Leave it off until one of them says so.',
    ],
    who: 'senior',
    judged: [],
    evidence: ['observation'],
    raises: 'verdict',
    then: '!raised',
  }),
  'reset-once': act('part out', {
    say: 'What kept the fan from its work is put right: reset the high-pressure switch once, power still locked.',
    why: 'Tripped it holds the unit out. One that trips again has another cause: certified.',
    yes: 'Reset once',
    words: ['reset', 'reset once', 'done'],
    cant: { label: 'It resets by itself, or has no button', words: ['automatic', 'no button'], to: 'was-reset' },
    unsure: 'head-high',
    next: 'was-reset',
  }),
  'was-reset': verdict({
    verdict: 'high-pressure-reset',
    title: 'The high-pressure switch tripped behind the fan: reset, by hand or by itself, the fan put right',
    says: ['It is not reset again: if it trips once more, air is not the cause.'],
    next: [
      'Watch it for 20 minutes. It trips again: off, a certified person.',
      'Not proven until the restart numbers are in.',
    ],
    who: 'junior',
    judged: [],
    evidence: ['reset-once'],
    then: 'restart',
  }),
  'head-high': headHigh,
} as const;
