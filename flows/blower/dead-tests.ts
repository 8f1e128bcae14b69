import { act, flow, found, include, judge, measure, ohms, verdict } from '../../engine/vocabulary.ts';
import { OPEN_QUESTIONS, REPLACED } from '../capacitor/verdicts.ts';
import { BLOWER_TESTS } from '../examples/blower.ts';
import { fuseShort } from '../indoor/fuse-short.ts';
import { LIMITS } from '../limits.ts';
import { CLEARED, RUBS, SPINS, STIFF, STILL_STIFF } from '../motors/spin-words.ts';
import { byKind } from '../unit.ts';
import { blowerWindings } from '../windings/blower.ts';
import { blowerCapacitor } from './capacitor.ts';

/** Verdicts of the blower that end in another motor. */
export const BLOWER_MOTOR = ['blower-bearings', 'blower-winding-open', 'blower-to-frame'] as const;

/** All dead tests of an indoor PSC blower in one isolation, finished even when the first fault is found. */
export const blowerTests = flow({
  id: 'blower-tests',
  version: 1,
  title: 'Blower, dead tests',
  exits: ['repair', 'clean', 'settled', 'raised'],
  examples: BLOWER_TESTS,
  steps: {
    line: measure({
      say: 'Board fuse, and the blower’s leads to ground: one line of ohms.',
      body: [
        'The low-voltage fuse out of its holder. No fuse: leave it out.',
        'The blower’s leads off the board or relay, all at once to bare metal. Type ol for over range.',
        'The block is finished even when something is found: a second fault is usual.',
      ],
      why: 'A blown fuse or a ground explains the call before any part is condemned.',
      source: ['Fuse under 0.5 Ω: common practice, no single source'],
      circuit: 'part',
      fields: {
        fuse1: ohms('Board fuse', { optional: true, words: ['fuse', 'board fuse'] }),
        leads: ohms('Blower leads to ground', { words: ['ground', 'grounds', 'gnd', 'g', 'to ground'] }),
      },
      cant: 'line-not-taken',
      next: 'fuses',
    }),
    'line-not-taken': verdict({
      verdict: 'fuse-ground-not-taken',
      title: 'Board fuse and ground were not measured',
      says: ['What follows is weaker for it. A ground may show only at restart.'],
      next: ['Go on with the capacitor.'],
      who: 'junior',
      judged: [],
      evidence: ['line'],
      then: 'any',
    }),
    fuses: judge('fuses', {
      of: { readings: 'line' },
      limits: LIMITS.boardFuse,
      quiet: ['good', 'undecided'],
      then: { good: 'ground', blown: 'fuse-blown', between: 'ground', undecided: 'ground' },
    }),
    'fuse-blown': verdict({
      verdict: 'board-fuse-blown',
      title: 'The board’s fuse is blown: its cause comes first',
      says: ['A short on the 24 V side opens it: a rubbed wire, a coil, a thermostat cable.'],
      next: ['No new fuse before the short is found.', 'Finish the dead tests.'],
      who: 'junior',
      judged: ['fuses'],
      evidence: ['line'],
      then: 'ground',
    }),
    ground: judge('leads-to-ground', {
      of: { readings: 'line', plate: null },
      limits: LIMITS.loadsToGround,
      quiet: ['none-found'],
      then: { 'none-found': 'any', low: 'low', undecided: 'any' },
    }),
    low: verdict({
      verdict: 'blower-low-to-ground',
      title: 'The blower’s leads read low to ground',
      says: ['Wire or motor: which of them is not known yet. The wire comes before the motor.'],
      next: ['The motor’s own leads below show whether it is the motor.', 'Nothing is energised until it is found.'],
      who: 'junior',
      judged: ['ground'],
      evidence: ['line'],
      then: 'any',
    }),
    // Make-dead lets nobody here by whom none was seen.
    any: judge('capacitors', {
      of: { look: '@cabinet:count', unit: null, drive: '@cabinet:drive' },
      limits: {},
      quiet: ['none', 'unseen', 'some', 'undecided'],
      then: { none: 'run', unseen: 'run', some: 'run', undecided: 'run' },
    }),
    run: include(blowerCapacitor, { exits: { done: 'spin' }, needs: {} }),
    spin: act('spin', {
      say: 'Spin the blower wheel by hand, power locked off. Does it spin free?',
      body: [
        'Good: it coasts, silent, no play in the shaft, the wheel clear of its housing.',
        'Clear of everything and stiff, rough or loose: bearings, which no capacitor cures. Rubbing on something is not.',
      ],
      callouts: [{ level: 'warning', text: 'Sheet metal and the wheel’s vanes cut. Gloves stay on.' }],
      why: 'A stiff motor overloads the best capacitor. It can only be judged with power off.',
      yes: 'Spins free, silent, no play',
      words: SPINS,
      no: { label: 'Rubs, catches or doesn’t turn', words: RUBS, to: 'freed' },
      others: {
        stiff: { label: 'Wheel clear of everything, and stiff, rough or has play', words: STIFF, to: 'bearings' },
      },
      cant: { label: 'Can’t reach it', to: 'not-spun' },
      next: 'windings',
    }),
    freed: act('spin', {
      say: 'Clear what the wheel rubs on or is stuck in, power locked off. Then spin it again: does it spin free?',
      body: ['Moved on its shaft, its screw tight on the flat; housing straight, dirt out. A bent wheel is replaced.'],
      callouts: [{ level: 'warning', text: 'Sheet metal and the wheel’s vanes cut. Gloves stay on.' }],
      why: 'A wheel that rubs feels like a bearing. Only clear of everything does the shaft show itself.',
      ...CLEARED,
      no: STILL_STIFF,
      cant: {
        label: 'It can’t be cleared here',
        words: ['not cleared', 'still rubs', 'bent wheel', 'bent'],
        to: 'rubs-on',
      },
      next: 'cleared',
    }),
    cleared: verdict({
      verdict: 'blower-wheel-cleared',
      title: 'The blower’s wheel rubbed: cleared, and it spins free',
      says: ['A wheel that rubs or is stuck stops a sound motor. Its bearings are not condemned.'],
      next: [
        'Finish the dead tests. A second fault is usual.',
        'Tell the customer what was in its way.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: [],
      evidence: ['spin', 'freed'],
      then: 'windings',
    }),
    'rubs-on': verdict({
      verdict: 'blower-wheel-rubs',
      title: 'The blower’s wheel is not clear: nothing is started, no motor condemned',
      says: ['Rubbing is no bearing. A wheel that is not clear stalls the motor.'],
      next: ['Finish the dead tests. A senior decides about wheel and housing.', 'Both units stay off until then.'],
      who: 'senior',
      judged: [],
      evidence: ['spin', 'freed'],
      raises: 'verdict',
      then: 'windings',
    }),
    'not-spun': verdict({
      verdict: 'blower-not-spun',
      title: 'The blower wheel was not turned by hand',
      says: ['What follows is weaker for it: whether its bearings are free is open.'],
      next: ['Go on. A blower motor is not condemned without it.'],
      who: 'junior',
      judged: [],
      evidence: ['spin'],
      then: 'windings',
    }),
    bearings: verdict({
      verdict: 'blower-bearings',
      title: 'The blower motor’s bearings are done: replace the motor',
      says: ['Power off and the wheel clear of everything, it is stiff, rough or has play.'],
      next: [
        'Fit the motor that the nameplate asks for, with a new capacitor that matches.',
        'Finish the dead tests. A second fault is usual.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: [],
      evidence: ['spin', 'freed'],
      then: 'windings',
    }),
    windings: include(blowerWindings, { exits: { done: 'sort' }, needs: {}, again: { times: 2, spent: 'sort' } }),
    sort: found({
      among: {
        frame: { verdicts: ['blower-to-frame'], to: '!repair' },
        ground: { verdicts: ['blower-low-to-ground'], to: 'ground-open' },
        question: { verdicts: [...OPEN_QUESTIONS, 'blower-wheel-rubs'], to: '!raised' },
        part: { verdicts: [...REPLACED, ...BLOWER_MOTOR], to: '!repair' },
        value: { verdicts: ['value-undecided'], to: 'value-open' },
        fuse: { verdicts: ['board-fuse-blown'], to: 'known' },
      },
      none: '!clean',
    }),
    // The short is sought outdoors as well, and hands go into a unit of a known kind alone.
    known: byKind('short', { closed: 'fuse-alone', undecided: 'fuse-alone' }),
    short: include(fuseShort, {
      exits: { settled: '!settled', raised: '!raised' },
      needs: { line: 'line', fuses: 'fuses' },
    }),
    'ground-open': verdict({
      verdict: 'blower-ground-not-located',
      title: 'A ground that the blower motor doesn’t explain: it stays off',
      says: ['Low to ground at the leads, and the motor reads clear. A wire or the harness is left.'],
      next: ['A senior splits the branches until the low one is found.', 'Nothing is energised.'],
      who: 'senior',
      judged: ['ground'],
      evidence: ['line'],
      raises: 'verdict',
      then: '!raised',
    }),
    'value-open': verdict({
      verdict: 'blower-value-open',
      title: 'The blower capacitor’s value stays open: a senior decides',
      says: ['No capacitance reading settles it. Nothing is condemned.'],
      next: ['A capacitance meter with a fitting range would decide it.', 'Leave it off.'],
      who: 'senior',
      judged: [],
      evidence: ['@cabinet:label'],
      raises: 'verdict',
      then: '!raised',
    }),
    'fuse-alone': verdict({
      verdict: 'board-fuse-without-cause',
      title: 'A blown board fuse without a cause found: no new fuse yet',
      says: ['The short lies on the 24 V side, which the dead tests of the blower don’t reach.'],
      next: ['What kind the outdoor unit is comes before hands in it. A senior leads the search.', 'It stays off.'],
      who: 'senior',
      judged: ['fuses'],
      evidence: ['line'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
