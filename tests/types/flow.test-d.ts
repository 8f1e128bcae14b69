/** What must not compile in a flow. Each mistake stands alone under its expectation; the sound page compiles. */
import { expectTypeOf, test } from 'vitest';
import {
  choose,
  confirm,
  type Flow,
  flow,
  include,
  judge,
  measure,
  megohms,
  microfarads,
  verdict,
} from '../../engine/vocabulary.ts';
import { LIMITS } from '../../flows/limits.ts';

const bad = { verdict: 'v', title: 't', says: ['s'], next: ['n'], who: 'junior', judged: [], evidence: [] } as const;
const shell = { of: { readings: 'read', alone: null, before: null, beforeAlone: null }, limits: LIMITS.shell } as const;
const ways = { clear: 'good', low: '!again', wet: '!again', leak: '!out', ask: '!again', undecided: '!again' } as const;

const sound = flow({
  id: 'sound',
  version: 1,
  title: 'Sound',
  exits: ['out', 'again'],
  needs: ['label'],
  steps: {
    read: measure({
      say: 'Read.',
      circuit: 'part',
      fields: { case: megohms('Case') },
      next: 'judged',
      cant: '!out',
      restsOn: ['label'],
    }),
    judged: judge('case-leak', { ...shell, then: ways }),
    good: verdict({ ...bad, evidence: ['read', '@label', '~read', 'label'], then: '!out' }),
  },
});

test('a sound page compiles, and its exits and needs are known by name', () => {
  expectTypeOf(sound).toEqualTypeOf<Flow<'out' | 'again', 'label', 'read' | 'judged' | 'good'>>();
});

test('a misspelt target', () => {
  flow({
    id: 'x',
    version: 1,
    title: 'X',
    exits: ['out'],
    steps: {
      // @ts-expect-error "secnd" is no step of this page
      first: confirm({ say: 'Go?', yes: 'Yes', next: 'secnd' }),
      second: confirm({ say: 'Go?', yes: 'Yes', next: '!out' }),
    },
  });
});

test('a misspelt exit, in a choice too', () => {
  flow({
    id: 'x',
    version: 1,
    title: 'X',
    exits: ['out'],
    steps: {
      // @ts-expect-error "!uot" is no exit of this page
      first: choose({ say: 'Which?', options: { a: { label: 'A', to: 'second' }, b: { label: 'B', to: '!uot' } } }),
      second: confirm({ say: 'Go?', yes: 'Yes', next: '!out' }),
    },
  });
});

test('an unknown judgement, a missing outcome, a missing limit, a misspelt reference', () => {
  // @ts-expect-error no judgement is called so
  judge('case-leek', { ...shell, then: ways });
  // @ts-expect-error the outcome "undecided" has no way on
  judge('case-leak', { ...shell, then: { clear: 'good', low: '!again', wet: '!again', leak: '!out', ask: '!again' } });
  // @ts-expect-error the limit "clear" is missing
  judge('case-leak', { ...shell, limits: { fail: LIMITS.shell.fail }, then: ways });
  flow({
    id: 'x',
    version: 1,
    title: 'X',
    exits: ['out', 'again'],
    steps: {
      // @ts-expect-error "raed" is no step and no need of this page
      judged: judge('case-leak', {
        of: { readings: 'raed', alone: null, before: null, beforeAlone: null },
        limits: LIMITS.shell,
        then: { ...ways, clear: '!out' },
      }),
    },
  });
});

test('a measure without circuit, or without fields', () => {
  // @ts-expect-error the circuit decides the class
  measure({ say: 'Read.', fields: { herm: microfarads('HERM') }, next: 'x' });
  // @ts-expect-error nothing is measured
  measure({ say: 'Read.', circuit: 'part', next: 'x' });
});

test('an exit that is not mapped, a need that is not met', () => {
  // @ts-expect-error the exit "again" is not mapped
  include(sound, { exits: { out: '!out' }, needs: { label: '@label' } });
  // @ts-expect-error the need "label" is not met
  include(sound, { exits: { out: '!out', again: '!out' }, needs: {} });
  include(sound, { exits: { out: '!out' }, needs: { label: '@label' }, again: { times: 2, spent: '!out' } });
});

test('a function in a flow', () => {
  // @ts-expect-error a flow is data
  confirm({ say: () => 'Go?', yes: 'Yes', next: 'x' });
  // @ts-expect-error a flow is data
  confirm({ say: 'Go?', yes: 'Yes', next: () => 'x' });
});
