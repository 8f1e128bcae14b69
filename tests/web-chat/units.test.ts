/** A reading beside which another unit is offered is sent with the unit that stood beside it: none is taken for granted. */
import { expect, test } from 'vitest';
import type { Part, Prompt } from '../../engine/index.ts';
import { filledIn, givenOf, unitKey } from '../../web-chat/page/parts/values.ts';

const field: Extract<Part, { kind: 'field' }> = {
  ...{ kind: 'field', key: 'supply', ask: 'Supply air', optional: false, unit: '°F', words: [], over: false },
  ...{ unitNeeded: false, remembered: null, prefers: '°C', from: '-60', to: '300' },
};
const asks = (part: Part, more: Partial<Prompt> = {}): Prompt => ({
  ...{ job: 'j', seq: 1, last: 1, place: 'p', kind: 'step', class: 'eyes', title: '', body: [], callouts: [] },
  ...{ notices: [], parts: [part], recalls: [], line: null, skippable: false, why: null, sources: [] },
  ...{ progress: { answered: 0, label: '' }, isolation: [], holder: null, amends: null, verdicts: [], pictures: [] },
  ...{ question: null, ...more },
});

test.each([
  ['the preferred one, as it is chosen from the start', { supply: '17' }, '17 °C'],
  ['the other one, where that was chosen', { supply: '17', [unitKey(field)]: '°F' }, '17 °F'],
  ['a unit that was typed wins', { supply: '17 f' }, '17 f'],
])('%s', (_, values, sent) => {
  expect(givenOf(asks(field), values)).toEqual({ supply: sent });
});

test('where nothing else is preferred a bare figure goes as it is', () => {
  const { prefers: _, ...plain } = field;
  expect(givenOf(asks(plain), { supply: '17' })).toEqual({ supply: '17' });
});

test('what was kept is filled in with its own unit, and left alone it is not sent', () => {
  const kept = asks({ ...field, remembered: '62.6' }, { amends: 7 });
  expect(filledIn(kept)).toEqual({ supply: '62.6 °F' });
  expect(givenOf(kept, filledIn(kept))).toEqual({});
  expect(givenOf(kept, { supply: '17' })).toEqual({ supply: '17 °C' });
  const apart = asks({ ...field, unit: 'Δ°F', remembered: '19' }, { amends: 7 });
  expect(filledIn(apart)).toEqual({ supply: '19 °F' });
});
