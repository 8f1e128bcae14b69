import { count, flow, judge, measure, microfarads, verdict } from '../../engine/vocabulary.ts';
import { TERMINALS } from '../examples/block.ts';

/** Which terminal is which, where the marks can't be read: the tabs as a clue, three readings as the proof. */
export const terminals = flow({
  id: 'unmarked-terminals',
  version: 1,
  title: 'Unmarked terminals',
  exits: ['known', 'unknown', 'again'],
  examples: TERMINALS,
  steps: {
    tabs: measure({
      say: 'Count the tabs on each terminal, clockwise from the one you choose.',
      body: ['C carries the most tabs, then HERM, FAN the fewest. Three readings then have to prove it.'],
      source: ['Tabs per terminal (C four, HERM three, FAN one): common practice, no single source'],
      circuit: 'none',
      fields: {
        t1: count('First terminal', { as: 'round:tabs' }),
        t2: count('Second terminal'),
        t3: count('Third terminal'),
      },
      cant: 'pairs',
      next: 'pairs',
    }),
    pairs: measure({
      say: 'Capacitance of each pair: first to second, first to third, second to third terminal.',
      body: ['The same order as the tabs. Wires off all three.'],
      why: 'The smallest of the three is HERM to FAN, both sections in series. The larger of the other two is C to HERM.',
      source: ['Series of two capacitors: a·b / (a + b), arithmetic'],
      circuit: 'part',
      restsOn: ['tabs'],
      fields: {
        xy: microfarads('First to second', { words: ['1-2', 'xy'] }),
        xz: microfarads('First to third', { words: ['1-3', 'xz'] }),
        yz: microfarads('Second to third', { words: ['2-3', 'yz'] }),
      },
      cant: 'by-tabs',
      next: 'proof',
    }),
    proof: judge('three-terminals', {
      of: { readings: 'pairs', label: '@cabinet:label', tabs: 'tabs' },
      limits: {},
      says: { 'doesnt-fit': 'The three readings don’t fit any naming of the terminals. Check each pair and repeat.' },
      then: { determined: '!known', ambiguous: 'by-tabs', 'doesnt-fit': '!again', undecided: 'by-tabs' },
    }),
    'by-tabs': judge('tabs', {
      of: { tabs: 'tabs', label: '@cabinet:label' },
      limits: {},
      then: { found: '!known', unclear: 'no-terminals', undecided: 'no-terminals' },
    }),
    'no-terminals': verdict({
      verdict: 'terminals-unknown',
      title: 'The terminals are not known: no verdict',
      says: ['Neither the tabs nor the three readings tell which terminal is which.'],
      next: ['A finer meter, or the wiring diagram, would tell. A senior sees this call.', 'Finish the dead tests.'],
      who: 'senior',
      judged: [],
      evidence: ['tabs', 'pairs'],
      raises: 'verdict',
      then: '!unknown',
    }),
  },
});
