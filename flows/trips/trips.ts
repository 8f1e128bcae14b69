import { choose, flow, verdict } from '../../engine/vocabulary.ts';
import { TRIPS } from '../examples/trips.ts';

/** A breaker trips or a fuse opens: how fast tells where to look. Nothing is energised to watch it. */
export const trips = flow({
  id: 'trips',
  version: 1,
  title: 'Breaker or fuse',
  exits: ['dead-tests', 'raised'],
  examples: TRIPS,
  steps: {
    fast: choose({
      say: 'How fast does it trip? From the call or the caller: nothing is energised to watch.',
      body: ['It tripped twice, is hot, smells or is wet: it stays off.'],
      why: 'At once without a call: the line side. At once with one: a short. Seconds: locked rotor. Minutes: overload or a hot breaker.',
      source: ['How fast it trips: common practice, no single source'],
      as: 'round:trip',
      options: {
        'no-call': {
          label: 'Without a call, at once',
          words: ['no call', 'without a call', 'instantly no call'],
          to: 'line-side',
        },
        once: {
          label: 'With a call, at once',
          words: ['at once', 'instantly', 'right away', 'immediately'],
          to: '!dead-tests',
        },
        seconds: {
          label: 'After 2 to 10 seconds',
          words: ['few seconds', 'after seconds', '5 seconds', 'seconds'],
          to: '!dead-tests',
        },
        minutes: { label: 'After minutes', words: ['minutes', 'after a while', 'after minutes'], to: '!dead-tests' },
        gfci: { label: 'A GFCI trips', words: ['gfci', 'gfi', 'ground fault'], to: '!dead-tests' },
        fuse: { label: 'A fuse opened', words: ['fuse', 'blown fuse', 'fuse opened', 'fuses'], to: '!dead-tests' },
        hot: {
          label: 'The breaker is hot, smells or is wet',
          words: ['hot breaker', 'breaker hot', 'wet', 'hot'],
          to: 'panel',
        },
        unknown: { label: 'Nobody knows', words: ['not sure', 'dont know', 'unknown'], to: '!dead-tests' },
      },
    }),
    'line-side': verdict({
      verdict: 'trips-without-a-call',
      title: 'It trips without a call: the line side, or a load that nothing switches',
      says: ['A single-pole contactor leaves one leg on the loads, so a grounded motor trips it too.'],
      next: [
        'The loads to ground decide in the dead tests.',
        'Nothing there: the wire from the panel. An electrician.',
      ],
      who: 'junior',
      judged: [],
      evidence: ['fast'],
      then: '!dead-tests',
    }),
    panel: verdict({
      verdict: 'breaker-hot-or-wet',
      title: 'The breaker or its panel is hot, smells or is wet: an electrician',
      says: ['A hot breaker trips below its rating, and its lug may burn.'],
      next: [
        'Nobody resets it. Stay away from a wet panel.',
        'A senior calls an electrician. Tell the customer to leave it off.',
      ],
      who: 'senior',
      judged: [],
      evidence: ['fast'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
