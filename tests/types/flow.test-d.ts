// biome-ignore-all format: a mistake and its mark stand on two lines, one above the other.
/** What of a page doesn't compile: each line below that is marked has one mistake, and would be a hole in a manual. */
import { expectTypeOf, test } from 'vitest';
import {
  choose,
  confirm,
  type Flow,
  flow,
  include,
  isolation,
  judge,
  measure,
  ohms,
  shown,
  verdict,
  volts,
} from '../../engine/vocabulary.ts';

const limit = { value: '5', unit: 'V', source: 'a test' };
const ratio = { value: '2', unit: '%', source: 'a test' };
const page = { id: 'p', version: 1, title: 'P', exits: ['good', 'bad'] } as const;
const ask = confirm({ say: 'Sure?', yes: 'Yes', next: '!good' });
const residual = { residual: limit, batteryMin: limit, batteryMax: limit, agree: limit };
const then = { discharged: '!good', 'too-high': '!bad', battery: '!bad', disagree: '!bad', undecided: '!bad' } as const;
const shorted = { shorted: '!bad', 'not-shorted': '!good', undecided: '!bad' } as const;
const tag = { allowed: '!good', ask: '!bad', undecided: '!bad' } as const;
const blind = { line: null, look: null };
const unread = { ohms: null, readings: null, label: null };
const said = { verdict: 'v', title: 'V', says: ['V.'], next: ['N.'], who: 'junior', judged: [] } as const;
const line = measure({ say: 'Volts?', circuit: 'part', fields: { hc: volts('HERM to C') }, next: 'left' });

test('a sound page compiles, and its steps, exits and needs are literal', () => {
  const sound = flow({
    ...page,
    needs: ['print'],
    steps: {
      first: choose({ say: 'Which?', options: { a: { label: 'A', to: 'line' }, b: { label: 'B', to: '!bad' } } }),
      line,
      left: judge('residual', { of: { line: 'line', look: 'print' }, limits: residual, then: { ...then, 'too-high': 'out' } }),
      out: verdict({ ...said, judged: ['left'], evidence: ['line', '@label'], then: '!bad' }),
    },
  });
  expectTypeOf(sound).toEqualTypeOf<Flow<'good' | 'bad', 'print', 'first' | 'line' | 'left' | 'out'>>();
  flow({ ...page, steps: { in: include(sound, { exits: { good: '!good', bad: '!bad' }, needs: { print: '@label' } }) } });
});

test('targets', () => {
  // @ts-expect-error: a step that is misspelt
  flow({ ...page, steps: { ask: confirm({ say: 'Sure?', yes: 'Yes', next: 'aks' }) } });
  // @ts-expect-error: an exit that is misspelt
  flow({ ...page, steps: { ask: confirm({ say: 'Sure?', yes: 'Yes', next: '!god' }) } });
  // @ts-expect-error: an option leads to a step that is not there
  flow({ ...page, steps: { ask: choose({ say: 'Which?', options: { a: { label: 'A', to: 'b' } } }) } });
  // @ts-expect-error: an option without a way
  flow({ ...page, steps: { ask: choose({ say: 'Which?', options: { a: { label: 'A' } } }) } });
  // @ts-expect-error: "can't" leads nowhere
  flow({ ...page, steps: { ask: confirm({ say: 'Sure?', yes: 'Yes', next: '!good', cant: { label: 'Can’t', to: '!cant' } }) } });
  // @ts-expect-error: a step without a next one
  flow({ ...page, steps: { ask: confirm({ say: 'Sure?', yes: 'Yes' }) } });
});

test('judgements', () => {
  // @ts-expect-error: a judgement that is misspelt
  judge('residuals', { of: blind, limits: residual, then });
  // @ts-expect-error: an outcome that is not mapped
  judge('residual', { of: blind, limits: residual, then: { discharged: '!good', battery: '!bad' } });
  // @ts-expect-error: an outcome that is misspelt
  judge('alternative', { of: {}, limits: {}, then: { allowd: '!good', ask: '!bad', undecided: '!bad' } });
  // @ts-expect-error: an outcome leads to a step that is not there
  flow({ ...page, steps: { a: judge('alternative', { of: {}, limits: {}, then: { ...tag, allowed: 'b' } }) } });
  // @ts-expect-error: a limit that is missing
  judge('residual', { of: blind, limits: { residual: limit }, then });
  // @ts-expect-error: a limit without a source
  judge('section-ohms', { of: unread, limits: { shorted: { value: '2', unit: 'Ω' } }, then: shorted });
  // @ts-expect-error: an input that is missing
  judge('residual', { of: { line: null }, limits: residual, then });
  // @ts-expect-error: words for an outcome that it doesn't have
  judge('alternative', { of: {}, limits: {}, then: tag, says: { perhaps: 'Perhaps.' } });
  // @ts-expect-error: shown, with an input that is missing
  shown('hold', { of: { label: null }, limits: { residual: limit, ohms: limit, floor: limit, unknown: limit, watts: ratio } });
});

test('references', () => {
  // @ts-expect-error: a judge reads a step that is not there
  flow({ ...page, steps: { line, left: judge('residual', { of: { line: 'lien', look: null }, limits: residual, then }) } });
  // @ts-expect-error: a verdict rests on a step that is not there
  flow({ ...page, steps: { ask, out: verdict({ ...said, evidence: ['aks'], then: '!bad' }) } });
  // @ts-expect-error: a part hangs on a step that is not there
  flow({ ...page, steps: { a: measure({ say: 'V?', circuit: 'part', fields: { v: volts('V', { when: { fact: 'b', part: 'x', is: ['y'] } }) }, next: '!good' }) } });
});

test('pages within pages', () => {
  const inner = flow({ ...page, needs: ['print'], steps: { ask } });
  const again = flow({ ...page, exits: ['good', 'again'], steps: { ask } });
  // @ts-expect-error: an exit that is not mapped
  include(inner, { exits: { good: '!good' }, needs: { print: '@label' } });
  // @ts-expect-error: a need that is not met
  include(inner, { exits: { good: '!good', bad: '!bad' }, needs: {} });
  // @ts-expect-error: mapped to a step that is not there
  flow({ ...page, steps: { in: include(inner, { exits: { good: 'nowhere', bad: '!bad' }, needs: { print: '@label' } }) } });
  // @ts-expect-error: "again" without a count of tries has to be mapped
  include(again, { exits: { good: '!good' }, needs: {} });
  include(again, { exits: { good: '!good' }, needs: {}, again: { times: 2, spent: '!bad' } });
  // @ts-expect-error: spent tries lead to a step that is not there
  flow({ ...page, steps: { in: include(again, { exits: { good: '!good' }, needs: {}, again: { times: 2, spent: 'end' } }) } });
});

test('data and measures', () => {
  // @ts-expect-error: a function is no text
  confirm({ say: () => 'Sure?', yes: 'Yes', next: '!good' });
  // @ts-expect-error: a function decides no way
  choose({ say: 'Which?', options: { a: { label: 'A', to: () => '!good' } } });
  // @ts-expect-error: a function is no limit
  judge('section-ohms', { of: unread, limits: { shorted: () => 2 }, then: shorted });
  // @ts-expect-error: a measure without its circuit, which decides its class
  measure({ say: 'Ohms?', fields: { o: ohms('Ohms') }, next: '!good' });
  // @ts-expect-error: a circuit that is not one
  measure({ say: 'Ohms?', circuit: 'water', fields: { o: ohms('Ohms') }, next: '!good' });
  // @ts-expect-error: a class is derived, never typed by an author
  measure({ say: 'Ohms?', circuit: 'line', class: 'eyes', fields: { o: ohms('Ohms') }, next: '!good' });
});

test('make-dead', () => {
  const dead = flow({ ...page, exits: ['proved', 'live'], steps: { ask: confirm({ say: 'Sure?', yes: 'Yes', next: '!proved' }) } });
  const rules = { reentry: { age: 'ask', void: 'ask', holder: 'ask' }, minutes: limit, prompts: ['ask'], controlMost: { value: '30', unit: 'V', source: 'our setting' },
    grows: { step: 'ask', part: 'ok' } } as const;
  isolation({ page: dead, ...rules, leaving: { live: { forget: 'ask', notice: 'Live.' } } });
  // @ts-expect-error: an exit without a meaning
  isolation({ page: dead, ...rules, leaving: {} });
  // @ts-expect-error: it forgets a step that is not there
  isolation({ page: dead, ...rules, leaving: { live: { forget: 'lock', notice: 'Live.' } } });
});
