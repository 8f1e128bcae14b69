import { describe, expect, it, test } from 'vitest';
import { check } from '../../engine/check.ts';
import { compile } from '../../engine/compile.ts';
import { FlowError } from '../../engine/errors.ts';
import type { Flow, IsolationRules, Manual } from '../../engine/vocabulary.ts';
import {
  confirm,
  flow,
  judge,
  measure,
  megohms,
  note,
  one,
  probesOf,
  verdict,
  volts,
} from '../../engine/vocabulary.ts';
import { SHELF } from '../../flows/index.ts';

it.each(SHELF.map((m) => [m.id, m] as const))('the manual %s is sound', (_, manual) => {
  expect(check(manual)).toEqual([]);
});

// Pages broken on purpose. What the types would refuse is written past them, as an author who silences them would.
const [real] = SHELF;
const sure = confirm({ say: 'Sure?', yes: 'Yes', next: '!done' });
const end = { who: 'junior', judged: [], evidence: [], then: '!done' } as const;
const limit = (value: string, unit = 'Ω', source = 'a test') => ({ value, unit, source });
const short = (shorted: object, more: object = {}): object => ({
  ...judge('section-ohms', {
    of: { ohms: 'ohms', readings: null, label: null },
    limits: { shorted: limit('2') },
    then: { shorted: '!done', 'not-shorted': '!done', undecided: '!done' },
  }),
  limits: { shorted },
  ...more,
});
const ohms = measure({ say: 'Ohms?', circuit: 'part', fields: { hermc: megohms('HERM to C') }, next: 'short' });

const root = (steps: object, exits: readonly string[] = ['done']): Flow =>
  ({ id: 'broken', version: 1, title: 'Broken', exits, needs: [], steps }) as unknown as Flow;
const manual = (steps: object, exits?: readonly string[]): Manual =>
  ({ ...real, root: root(steps, exits), endings: { done: { title: 'Done', says: 'Done.' } } }) as unknown as Manual;
const faults = (m: Manual): string[] => check(m).map((f) => `${f.place}: ${f.what}`);
/** Make-dead of the real manual with one step, or one rule, replaced. */
const deadWith = (steps: object, rules: object = {}): Manual => {
  const { isolation } = real;
  const page = { ...isolation.page, steps: { ...isolation.page.steps, ...steps } } as Flow;
  return {
    ...manual({ sure }),
    isolation: { ...isolation, page, ...rules } as IsolationRules<string, string>,
  } as Manual;
};
const step = (name: string): object => (real.isolation.page.steps as Record<string, object>)[name] ?? {};
const { live: _, ...unsaid } = real.isolation.leaving;
const residual = (field: object): object => {
  const fields = (step('residual') as { parts: Record<string, object> }).parts;
  return { residual: { ...step('residual'), parts: { ...fields, hc: { ...fields.hc, ...field } } } };
};

test('given a small sound page, then nothing is found, so that what is found below is the mistake', () => {
  expect(faults(manual({ sure }))).toEqual([]);
  expect(faults(manual({ ohms, short: short(limit('2')) }))).toEqual([]);
  expect(faults(deadWith({}))).toEqual([]);
});

describe('given a page with a mistake, then it is named', () => {
  test.each<[string, Manual, string]>([
    [
      'a way up the page',
      manual({ sure: { ...sure, next: 'b', to: { yes: 'b' } }, b: { ...sure, to: { yes: 'sure' } } }),
      'b: leads up the page to sure',
    ],
    [
      'an option leads nowhere',
      manual({
        which: {
          ...sure,
          parts: { ok: { ...one('?', { a: { label: 'A' }, b: { label: 'B' } }) } },
          to: { a: '!done' },
        },
      }),
      'which: option b leads nowhere',
    ],
    [
      'a way for an option that isn’t offered',
      manual({ sure: { ...sure, to: { yes: '!done', no: '!done' } } }),
      'sure: a way for no, which is not offered',
    ],
    [
      'a word names two options',
      manual({
        which: {
          ...sure,
          parts: { ok: one('?', { a: { label: 'A', words: ['left'] }, b: { label: 'B', words: ['Left'] } }) },
          to: { a: '!done', b: '!done' },
        },
      }),
      'which: ok: "left" names a and b',
    ],
    ['a step that nothing leads to', manual({ sure, lost: { ...sure } }), 'lost: can’t be reached'],
    ['an exit that nothing leads to', manual({ sure }, ['done', 'left']), '!left: an exit that nothing leads to'],
    [
      'a question without a way on',
      manual({ note: { ...note({ say: 'Note?', next: '!done' }), next: undefined } }),
      'note: leads nowhere',
    ],
    ['a question without parts', manual({ sure: { ...sure, parts: {}, by: undefined } }), 'sure: asks nothing'],
    [
      'a measure without a field',
      manual({
        m: measure({ say: 'V?', circuit: 'none', fields: { n: { part: 'note', ask: 'N' } as never }, next: '!done' }),
      }),
      'm: measures nothing',
    ],
    [
      'a picture of what is not asked',
      manual({
        m: measure({
          say: 'V?',
          circuit: 'none',
          fields: { v: volts('V') },
          picture: probesOf('V AC', { v: ['L1', 'L2'], w: ['L1', 'ground'] }),
          next: '!done',
        }),
      }),
      'm: draws w, which is not asked',
    ],
    [
      'more than 25 words',
      manual({ sure: { ...sure, say: 'word '.repeat(26).trim() } }),
      'sure: says more than 25 words',
    ],
    ['a function in a page', manual({ sure: { ...sure, why: () => 'because' } }), 'sure: sure.why is a function'],
    [
      'a limit without a source',
      manual({ ohms, short: short(limit('2', 'Ω', ' ')) }),
      'short: limit shorted has no source',
    ],
    ['a limit without a unit', manual({ ohms, short: short(limit('2', '')) }), 'short: limit shorted has no unit'],
    ['a limit that is no decimal', manual({ ohms, short: short(limit('2e0')) }), 'short: limit shorted is no decimal'],
    ['a limit that is missing', manual({ ohms, short: short({}, { limits: {} }) }), 'short: limit shorted is missing'],
    [
      'an outcome that is missing',
      manual({ ohms, short: short(limit('2'), { then: { shorted: '!done', undecided: '!done' } }) }),
      'short: outcome not-shorted is missing',
    ],
    [
      'an outcome that it doesn’t have',
      manual({
        ohms,
        short: short(limit('2'), {
          then: { shorted: '!done', 'not-shorted': '!done', undecided: '!done', maybe: '!done' },
        }),
      }),
      'short: outcome maybe is unknown to section-ohms',
    ],
    [
      'an input that is missing',
      manual({ ohms, short: short(limit('2'), { of: { ohms: 'ohms', label: null } }) }),
      'short: input readings is missing',
    ],
    [
      'words for an outcome that it doesn’t have',
      manual({ ohms, short: short(limit('2'), { says: { maybe: 'Maybe.' } }) }),
      'short: says something for unknown outcome maybe',
    ],
    [
      'a verdict without a next step',
      manual({ out: verdict({ ...end, verdict: 'v', title: 'V', says: ['V.'], next: [] }) }),
      'out: a verdict without a next step',
    ],
    [
      'a verdict without words',
      manual({ out: verdict({ ...end, verdict: 'v', title: 'V', says: [], next: ['N.'] }) }),
      'out: a verdict without words',
    ],
    [
      'a verdict for a senior that nobody is told of',
      manual({ out: verdict({ ...end, verdict: 'v', title: 'V', says: ['V.'], next: ['N.'], who: 'senior' }) }),
      'out: only a senior concludes this, and nobody is told',
    ],
    [
      'a gate that takes OL',
      deadWith(residual({ over: true })),
      'dead:outdoor/residual: hc: a gate takes numbers only',
    ],
    [
      'a gate’s reading that may be left out',
      deadWith(residual({ optional: true })),
      'dead:outdoor/residual: hc: a gate’s reading can’t be optional',
    ],
    [
      'a gate’s reading that an earlier answer stands for',
      deadWith(residual({ unless: 'look' })),
      'dead:outdoor/residual: hc: a gate’s reading can’t be optional',
    ],
    [
      'a gate whose can’t proves',
      deadWith({ residual: { ...step('residual'), cant: '!proved' } }),
      'dead:outdoor/residual: a gate’s "can’t" has to leave make-dead unproved',
    ],
    [
      'hands inside within make-dead',
      deadWith({ fit: { ...step('fit'), verb: 'act', act: 'tug' } }),
      'dead:outdoor/fit: a step of class inside inside make-dead',
    ],
    [
      'hands inside where the manual has no cabinet',
      { ...manual({ ohms, short: short(limit('2')) }), cabinets: {} },
      'ohms: a step of class inside at no cabinet of the manual',
    ],
    ['an exit of make-dead without a meaning', deadWith({}, { leaving: unsaid }), 'make-dead!live: has no meaning'],
    [
      'an exit that forgets a step that isn’t there',
      deadWith({}, { leaving: { ...real.isolation.leaving, live: { forget: 'lock', notice: 'Live.' } } }),
      'make-dead!live: forgets lock, which is no step',
    ],
    [
      'entered again at a step that isn’t there',
      deadWith({}, { reentry: { age: 'proving', void: 'lock', holder: 'fit' } }),
      'make-dead: is entered again at lock, which is no step',
    ],
  ])('%s', (_, broken, what) => {
    expect(faults(broken)).toContain(what);
  });
  test('every mistake is named at once', () => {
    const two = manual({ sure: { ...sure, say: 'word '.repeat(26).trim() }, lost: { ...sure, why: () => '' } });
    expect(faults(two).length).toBeGreaterThanOrEqual(3);
  });
  test.each<[string, Manual]>([
    ['a step that isn’t there', manual({ sure: { ...sure, next: 'b', to: { yes: 'b' } } })],
    ['an exit that isn’t there', manual({ sure: { ...sure, to: { yes: '!left' } } })],
    [
      'a reference that means nothing',
      manual({ ohms, short: short(limit('2'), { of: { ohms: 'omhs', readings: null, label: null } }) }),
    ],
    ['a page without steps', manual({})],
  ])('%s: it doesn’t even compile, and says which page', (_, broken) => {
    expect(() => compile(broken)).toThrow(FlowError);
    expect(() => check(broken)).toThrow(/broken/);
  });
});

test('line volts outside make-dead are live, not proving, whatever the page is called', () => {
  const page = flow({
    id: 'x',
    version: 1,
    title: 'X',
    exits: ['done'],
    steps: { v: measure({ say: 'V?', circuit: 'line', fields: { l1g: volts('L1 to ground') }, next: '!done' }) },
  });
  expect(
    [...compile({ ...manual({ sure }), root: page as unknown as Flow<string, never, string> }).plan.places.values()][0]
      ?.class,
  ).toBe('live');
});
