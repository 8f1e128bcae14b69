import { confirm, flow, verdict } from '../../engine/vocabulary.ts';
import { BLOWER_OFF } from '../examples/blower.ts';

/** The outdoor unit runs without air over the coil: off first. Where it doesn't go off, that comes before the blower. */
export const blowerOff = flow({
  id: 'blower-off',
  version: 1,
  title: 'Outdoor unit off, before the blower',
  exits: ['off', 'stays'],
  examples: BLOWER_OFF,
  steps: {
    off: confirm({
      say: 'Turn the outdoor unit off: COOL off, fan at ON.',
      body: ['Fan at ON calls for the blower alone.'],
      why: 'Without air over it the coil ices, and liquid reaches the compressor.',
      source: ['Outdoor unit off while the blower stands: common practice, no single source'],
      yes: 'Outdoor unit off, fan at ON',
      words: ['off', 'outdoor off', 'outdoor unit off', 'its off', 'fan on', 'fan at on'],
      no: { label: 'It won’t go off', words: ['wont go off', 'still runs'], to: 'stays-on' },
      next: '!off',
    }),
    'stays-on': verdict({
      verdict: 'outdoor-stays-on',
      title: 'The outdoor unit doesn’t go off, or nobody saw it off: that comes first',
      says: [
        'Without air it ices its coil. Where no call asks for it: a contact that holds, or a call that nobody gave.',
      ],
      next: ['Off at its means. Why it runs on is looked for now, the blower after it.'],
      who: 'junior',
      judged: [],
      evidence: ['off'],
      then: '!stays',
    }),
  },
});
