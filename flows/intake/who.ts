import { flow, form, noted, one, several } from '../../engine/vocabulary.ts';
import { WHO } from './examples.ts';

/** Who calls, where the unit stands and how one gets to it, what kind it is. */
export const who = flow({
  id: 'caller-who',
  version: 1,
  title: 'Who calls, and where',
  exits: ['on'],
  examples: WHO,
  steps: {
    'caller-name': form({
      say: 'Who is calling?',
      parts: { name: noted('Name', { as: 'caller:name' }) },
      next: 'caller-phone',
    }),
    'caller-phone': form({
      say: 'Call-back number?',
      why: 'The line may drop, and the technician calls from the road.',
      parts: { phone: noted('Call-back number', { as: 'caller:phone', finds: 'phone' }) },
      next: 'caller-address',
    }),
    'caller-address': form({
      say: 'Where is the unit?',
      parts: { address: noted('Address of the unit', { as: 'caller:address', finds: 'place' }) },
      next: 'caller-access',
    }),
    'caller-access': form({
      say: 'How does one get to it?',
      parts: {
        ways: several(
          'On the way there',
          {
            gate: { label: 'Gate or code', words: ['gate code', 'locked gate'] },
            dog: { label: 'Dog', words: ['dogs'] },
            roof: { label: 'Roof', words: ['on the roof', 'rooftop'] },
            ladder: { label: 'Ladder needed' },
            free: { label: 'Nothing in the way', alone: true, words: ['none', 'no', 'nothing', 'easy'] },
          },
          { optional: true, as: 'caller:ways' },
        ),
        access: noted('Access in words', { optional: true, as: 'caller:access' }),
      },
      next: 'caller-before',
    }),
    'caller-before': form({
      say: 'Is a call about this open already?',
      why: 'Two calls about one trouble send two vans.',
      parts: {
        before: one(
          'A call about this is open already',
          {
            new: { label: 'No, a new call', words: ['no', 'first', 'first time'] },
            open: { label: 'Yes, the same trouble', words: ['yes', 'again', 'same'] },
          },
          { as: 'caller:before' },
        ),
      },
      next: 'caller-kind',
    }),
    'caller-kind': form({
      say: 'What kind of system is it?',
      why: 'It decides who can go, and what the caller may look at.',
      parts: {
        kind: one(
          'Kind of system',
          {
            split: {
              label: 'Split, a unit outdoors and one indoors',
              words: ['central', 'central air', 'split system'],
            },
            package: { label: 'Package unit, all in one', words: ['packaged', 'package unit'] },
            'heat-pump': { label: 'Heat pump', words: ['hp', 'heatpump'] },
            'mini-split': { label: 'Mini-split, on the wall', words: ['minisplit', 'ductless', 'mini split'] },
            'cold-room': {
              label: 'Walk-in or reach-in',
              words: ['walk-in', 'reach-in', 'walk in', 'cooler', 'freezer'],
            },
            unsure: { label: 'Not sure', words: ['dont know', 'don’t know', 'unknown'] },
          },
          { as: 'caller:kind' },
        ),
      },
      next: '!on',
    }),
  },
});
