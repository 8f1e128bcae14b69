import { act, flow, include, judge, verdict } from '../../engine/vocabulary.ts';
import { MOTORS_EXAMPLES } from '../examples/start.ts';
import { byKind } from '../unit.ts';
import { compressorWindings } from '../windings/compressor.ts';
import { fanWindings } from '../windings/fan.ts';
import { threeWindings } from '../windings/three.ts';
import { CLEARED, RUBS, SPINS, STIFF, STILL_STIFF } from './spin-words.ts';

const ELECTRONIC = {
  level: 'danger',
  text: 'An electronic fan: its plug and module are left alone. Its own bus holds for five minutes and more.',
} as const;

/** Fan spin and the windings that the observation asks for, from the harness ends. */
export const motors = flow({
  id: 'motors',
  version: 1,
  title: 'Motors',
  exits: ['done'],
  examples: MOTORS_EXAMPLES,
  steps: {
    spin: act('spin', {
      say: 'Spin the fan by hand, power locked off. Does it spin free?',
      body: [
        'Good: coasts three turns or more, silent, no play in the shaft, blade clear of the guard.',
        'Clear of everything and stiff, rough or loose: bearings, which no capacitor cures. Rubbing on something is not.',
      ],
      callouts: [ELECTRONIC],
      why: 'A stiff motor overloads the best capacitor. It can only be judged with power off.',
      source: ['Coasting three turns: common practice, no single source'],
      yes: 'Spins free, silent, no play',
      words: SPINS,
      no: { label: 'Rubs, catches or doesn’t turn', words: RUBS, to: 'freed' },
      others: {
        stiff: { label: 'Blade clear of everything, and stiff, rough or has play', words: STIFF, to: 'whose-shaft' },
      },
      cant: { label: 'Can’t reach it', to: 'not-spun' },
      next: 'which',
    }),
    freed: act('spin', {
      say: 'Clear what it rubs on or is stuck in, power locked off. Then spin it again: does it spin free?',
      body: [
        'Guard straightened, sticks and ties out, the blade moved on its shaft and its screw tight on the flat.',
        'A bent or cracked blade is not straightened: it is replaced.',
      ],
      why: 'A blade that rubs feels like a bearing. Only clear of everything does the shaft show itself.',
      ...CLEARED,
      no: { ...STILL_STIFF, to: 'whose-shaft' },
      cant: {
        label: 'It can’t be cleared here',
        words: ['not cleared', 'still rubs', 'bent blade', 'bent'],
        to: 'rubs-on',
      },
      next: 'cleared',
    }),
    cleared: verdict({
      verdict: 'fan-blade-cleared',
      title: 'The fan’s blade rubbed: cleared, and it spins free',
      says: ['A blade that rubs or is stuck stops a sound motor. Its bearings are not condemned.'],
      next: [
        'Finish the dead tests. A second fault is usual.',
        'Tell the customer what was in its way.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: [],
      evidence: ['spin', 'freed'],
      then: 'which',
    }),
    'rubs-on': verdict({
      verdict: 'fan-blade-rubs',
      title: 'The fan’s blade is not clear: nothing is started, no motor condemned',
      says: ['Rubbing is no bearing. A blade that is not clear breaks, or stalls the motor.'],
      next: [
        'Finish the dead tests. A senior decides about blade and guard.',
        'It stays off until the blade is clear.',
      ],
      who: 'senior',
      judged: [],
      evidence: ['spin', 'freed'],
      raises: 'verdict',
      then: 'which',
    }),
    'not-spun': verdict({
      verdict: 'fan-not-spun',
      title: 'The fan was not turned by hand',
      says: ['What follows is weaker for it: whether its bearings are free is open.'],
      next: ['Go on. A fan motor is not condemned without it.'],
      who: 'junior',
      judged: [],
      evidence: ['spin'],
      then: 'which',
    }),
    // Turned by hand such a motor catches by its magnets, and brakes where its module is bad: that is no bearing.
    'whose-shaft': byKind('bearings', { ecm: 'electronic', closed: 'electronic', undecided: 'electronic' }),
    electronic: verdict({
      verdict: 'electronic-fan-stiff',
      title: 'The electronic fan feels stiff or rough: no motor is condemned on that',
      says: ['Its magnets catch, and a bad module brakes it. Bearings, module or nothing: by hand nobody tells.'],
      next: [
        'Finish the dead tests. Its plug is left alone.',
        'A senior tells it by line, command and the maker’s test. It stays off until then.',
      ],
      who: 'senior',
      judged: [],
      evidence: ['spin', 'freed'],
      raises: 'verdict',
      then: 'which',
    }),
    bearings: verdict({
      verdict: 'fan-bearings',
      title: 'The fan motor’s bearings are done: replace the motor',
      says: ['Power off and the blade clear of everything, it is stiff, rough or has play.'],
      next: [
        'Fit the motor that the nameplate asks for. Its run capacitor, if it asks for one, is renewed with it.',
        'Finish the dead tests. A second fault is usual.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: [],
      evidence: ['spin', 'freed'],
      then: 'which',
    }),
    which: judge('motors', {
      of: { seen: '@round:observation' },
      limits: {},
      quiet: ['compressor', 'fan', 'both', 'undecided'],
      then: { compressor: 'lines', fan: 'fan-kind', both: 'lines', undecided: 'lines' },
    }),
    lines: byKind('compressor', { 'three-phase': 'three' }),
    three: include(threeWindings, { exits: { done: 'and-fan' }, needs: {}, again: { times: 2, spent: 'and-fan' } }),
    compressor: include(compressorWindings, {
      exits: { done: 'and-fan' },
      needs: {},
      again: { times: 2, spent: 'and-fan' },
    }),
    'and-fan': judge('motors', {
      of: { seen: '@round:observation' },
      limits: {},
      quiet: ['compressor', 'fan', 'both', 'undecided'],
      then: { compressor: '!done', fan: '!done', both: 'fan-kind', undecided: 'fan-kind' },
    }),
    // An electronic fan has no windings that an ohmmeter judges: line, command and the maker's test do.
    'fan-kind': byKind('fan', { ecm: '!done', closed: '!done', undecided: '!done' }),
    fan: include(fanWindings, { exits: { done: '!done' }, needs: {}, again: { times: 2, spent: '!done' } }),
  },
});
