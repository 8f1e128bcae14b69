import { act, flow, include, judge, verdict } from '../engine/vocabulary.ts';
import { MOTORS_EXAMPLES } from './examples/start.ts';
import { compressorWindings, fanWindings } from './windings.ts';

/** Fan spin and the windings that the observation asks for, from the harness ends. */
export const motors = flow({
  id: 'motors',
  version: 1,
  title: 'Motors',
  exits: ['done'],
  examples: MOTORS_EXAMPLES,
  steps: {
    spin: act('spin', {
      say: 'Spin the fan by hand, power locked off.',
      body: [
        'Good: coasts three turns or more, silent, no play in the shaft, blade clear of the guard.',
        'Stiff, scraping or loose is bearings. A capacitor does not cure that.',
      ],
      why: 'A stiff motor overloads the best capacitor. It can only be judged with power off.',
      source: ['Coasting three turns: common practice, no single source'],
      yes: 'Spins free, silent, no play',
      words: ['spin free', 'free', 'spins free', 'spins'],
      no: {
        label: 'Stiff, scrapes or has play',
        words: ['stiff', 'scrapes', 'play', 'play in shaft', 'binds', 'seized', 'loose'],
        to: 'bearings',
      },
      cant: { label: 'Can’t reach it', to: 'which' },
      next: 'which',
    }),
    bearings: verdict({
      verdict: 'fan-bearings',
      title: 'The fan motor’s bearings are done: replace the motor',
      says: ['It binds, scrapes or has play with the power off and the blade clear.'],
      next: [
        'Fit the motor that the nameplate asks for, with a new capacitor that matches.',
        'Finish the dead tests. A second fault is usual.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: [],
      evidence: ['spin'],
      then: 'which',
    }),
    which: judge('motors', {
      of: { seen: '@round:observation' },
      limits: {},
      quiet: ['compressor', 'fan', 'both', 'undecided'],
      then: { compressor: 'compressor', fan: 'fan', both: 'compressor', undecided: 'compressor' },
    }),
    compressor: include(compressorWindings, {
      exits: { done: 'and-fan' },
      needs: {},
      again: { times: 2, spent: 'and-fan' },
    }),
    'and-fan': judge('motors', {
      of: { seen: '@round:observation' },
      limits: {},
      quiet: ['compressor', 'fan', 'both', 'undecided'],
      then: { compressor: '!done', fan: '!done', both: 'fan', undecided: 'fan' },
    }),
    fan: include(fanWindings, { exits: { done: '!done' }, needs: {}, again: { times: 2, spent: '!done' } }),
  },
});
