/** Whether what read OL on a hot motor reads again. The limit is our setting. */
import { expect, test } from 'vitest';
import { parts } from './fixture.ts';
import { run } from './run.ts';

test.each<[string, number | 'OL' | '_', string]>([
  ['a winding', 3.6, 'reads'],
  ['a closed overload', 0.1, 'reads'],
  ['on the limit', 1000, 'reads'],
  ['past it', 1000.001, 'undecided'],
  ['still open', 'OL', 'open'],
  ['not read', '_', 'undecided'],
])('%s', (_, pair, outcome) => {
  expect(run('reads-again', { readings: parts('Ω', { pair }) }).outcome).toBe(outcome);
});

test('nothing asked', () => expect(run('reads-again', {}).outcome).toBe('undecided'));
