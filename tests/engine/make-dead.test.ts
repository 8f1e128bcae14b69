/** Make it dead: the order, every line that is refused and where it leads, and that no gate is passed by. */
import { describe, expect, test } from 'vitest';
import { at, here, MEANS, PROVING, PROVING_THREE, RESIDUAL, type Step, strip, THREE, typed } from './given.ts';

const notices = (c: ReturnType<typeof at>): string[] => c.prompt().notices.map((n) => n.code);
const HIGH = '9.3 / 31 0.1 30.9 / 9.3';

test('given a sound technician, then the six prompts come in this order, and only the last proves', () => {
  const order = (['fit', 'means', 'locked', 'look', 'proving', 'residual', 'wires'] as const).map((step: Step) => {
    const c = at(step);
    return [here(c), c.prompt().class, strip(c)];
  });
  expect(order).toEqual([
    ['fit', 'eyes', 'not-proved'],
    ['means', 'eyes', 'being-proved'],
    ['locked', 'eyes', 'being-proved'],
    ['look', 'eyes', 'being-proved'],
    ['proving', 'proving', 'being-proved'],
    ['residual', 'proving', 'being-proved'],
    ['wires', 'inside', 'proved'],
  ]);
});

describe('given the proving line, when it reads so, then it leads there and proves nothing', () => {
  test.each([
    ['the second proving fails', '121 / 0 0 0 / 0 0 / 0', 'leaving:after', 'proving'],
    ['the first proving fails', '90 / 0 0 0 / 0 0 / 121', 'leaving:before', 'proving'],
    ['the source is 10.1 % low', '107.9 / 0 0 0 / 0 0 / 121', 'leaving:before', 'proving'],
    ['240 V', '121 / 240 120 120 / 0 0 / 121', 'leaving:live', 'means'],
    ['240 V on a meter that then dies', '121 / 240 120 120 / 0 0 / 0', 'leaving:live', 'means'],
    ['240 V at the load side', '121 / 0 0 0 / 120 120 / 121', 'leaving:live', 'means'],
    ['50 V exactly', '121 / 0 50 0 / 0 0 / 121', 'leaving:live', 'means'],
    ['a lost leg', '121 / 0.4 121 121 / 0 0 / 121', 'leaving:lost-leg', 'means'],
    ['14 V', '121 / 0 14 0 / 0 0 / 121', 'judged:ghost', 'bridge'],
    ['49.99 V', '121 / 0 49.99 0 / 0 0 / 121', 'judged:ghost', 'bridge'],
    ['5.01 V', '121 / 0 0 0 / 0 5.01 / 121', 'judged:ghost', 'bridge'],
  ])('%s: %s', (_, line, notice, place) => {
    const c = typed(at('proving'), [line]);
    expect([here(c), strip(c)]).toEqual([place, 'being-proved']);
    expect(notices(c)).toContain(notice);
  });
  test('5 V exactly is dead, and the source within 10 % on both sides proves', () => {
    expect(here(typed(at('proving'), ['121 / 5 5 5 / 5 5 / 121']))).toBe('residual');
    expect(here(typed(at('proving'), ['108 / 0 0 0 / 0 0 / 132']))).toBe('residual');
  });
  test('its picture shows the pairs that are asked of this supply, and no other', () => {
    const drawn = (means: string) =>
      typed(at('means'), [means, 'yes', 'clean, 1 cap, 45+5 6% 440'])
        .prompt()
        .pictures.flatMap(({ text }) => [...text.matchAll(/One lead on (.+?), one on (.+?), in V AC/g)])
        .map(([, from, to]) => `${from}–${to}`);
    const line = (...pairs: string[]) => ['known source–its other side', ...pairs, 'the same source–its other side'];
    const load = ['T1–bare ground', 'T2–bare ground'];
    const legs = ['L1–L2', 'L1–bare ground', 'L2–bare ground'];
    expect(drawn('breaker, no other feed, two legs, outlet')).toEqual(line(...legs, ...load));
    expect(drawn('breaker, no other feed, one leg and neutral, outlet')).toEqual(
      line('hot–neutral', 'hot–bare ground', 'neutral–bare ground', 'T1–bare ground'),
    );
    expect(drawn('breaker, no other feed, three lines, outlet')).toEqual(
      line(...legs, 'L1–L3', 'L2–L3', 'L3–bare ground', ...load, 'T3–bare ground'),
    );
    expect(drawn('breaker, heater, two legs, outlet')).toContain('second feed–its other wire');
    expect(
      typed(at('proving'), ['121 / 0 14 0 / 0 0 / 121'])
        .prompt()
        .pictures.map(({ title }) => title),
    ).toEqual(['Where the leads go: L1–bare ground']);
  });
  test('what it says is of this line alone, not of a tool that nobody used', () => {
    expect(typed(at('proving'), ['121 / 0 0 0 / 0 0 / 0']).notices).not.toMatch(/under load|not read/);
  });
  test.each([
    ['one value short', '121 / 0.2 0 0.1 / 0 0', 'unclear'],
    ['OL is no number', '121 / OL 0 0 / 0 0 / 121', 'not-a-number'],
    ['left out', '121 / _ 0 0 / 0 0 / 121', 'not-a-number'],
    ['not a plausible voltage', '121 / 0 0 0 / 0 0 / 12100', 'out-of-range'],
  ])('given %s, then the whole line is taken again: no part of it is kept', (_, line, code) => {
    const c = at('proving').type(line);
    expect([c.refusal?.code, c.refusal?.draft, here(c)]).toEqual([code, {}, 'proving']);
    expect(c.kinds.filter((k) => k !== 'noted')).toEqual([]);
  });
});

describe('given 14 V, when the 20 kΩ tool is across it', () => {
  test.each([
    ['it collapses to 0.6: induced, and said', '121 / 0.6 / 121', 'residual', 'judged:induced'],
    ['it holds: a real source', '121 / 14 / 121', 'means', 'leaving:real'],
    ['it holds at 5.01', '121 / 5.01 / 121', 'means', 'leaving:real'],
    ['the second proving fails', '121 / 0.6 / 0', 'proving', 'leaving:after'],
    ['there is no tool', 'skip no tool', 'proving', 'leaving:no-tool'],
  ])('%s: %s', (_, line, place, notice) => {
    const c = typed(at('proving'), ['121 / 0 14 0 / 0 0 / 121', line]);
    expect([here(c), strip(c)]).toEqual([place, 'being-proved']);
    expect(notices(c)).toContain(notice);
  });
  test('of two such pairs both are asked', () => {
    const c = typed(at('proving'), ['121 / 0 14 12 / 0 0 / 121']);
    expect(c.prompt().line).toBe('before l1g l2g after');
    expect(c.type('121 / 0.6 / 121').refusal).not.toBeNull();
  });
});

describe('given the residual line, when it reads so, then it is taken again whole', () => {
  test.each([
    ['the battery is dead', '0.0 / 0 0 0 / 0.0', 'do not count'],
    ['the second battery reading fails', '9.3 / 0 0 0 / 0.0', 'do not count'],
    ['31 V', HIGH, '31\u2009V, over 5\u2009V'],
    ['5.01 V', '9.3 / 5.01 0.1 4.9 / 9.3', 'over 5\u2009V'],
    ['the three disagree', '9.3 / 4 0.1 0.1 / 9.3', 'A probe had no contact'],
  ])('%s: %s', (_, line, says) => {
    const c = typed(at('residual'), [line]);
    expect([here(c), strip(c)]).toEqual(['residual', 'being-proved']);
    expect(c.notices).toContain(says);
  });
  test.each(['9.3 / 5 0.1 4.9 / 9.3', '9.3 / -4 0.5 -4.5 / 9.3', '9.3 / 4 0.5 3 / 9.3', '7 / 0 0 0 / 10'])(
    '%s stands',
    (line) => {
      expect(strip(typed(at('residual'), [line]))).toBe('proved');
    },
  );
  test('three tries are of the job: a void between does not give them back', () => {
    const c = typed(at('residual'), [HIGH, HIGH, 'power is back', 'yes', 'clean, 1 cap, 45+5 6% 440', PROVING, HIGH]);
    expect([c.place, c.kinds]).toEqual(['!held', ['answered', 'raised']]);
    expect(c.type(RESIDUAL).place).toBe('!held');
  });
  test('held: the holder opens nothing, a senior opens three more, the third of them holds again', () => {
    const c = typed(at('residual'), [HIGH, HIGH, HIGH]);
    expect(c.type('approve, go on').refusal?.code).toBe('no-right');
    expect(here(typed(c, ['approve, I saw the tool on video'], 'ruth'))).toBe('residual');
    expect(typed(c, [HIGH, HIGH]).place).toMatch(/residual$/);
    expect(typed(c, [HIGH]).place).toBe('!held');
    expect(strip(typed(typed(c, ['approve, once more'], 'otto'), [RESIDUAL]))).toBe('proved');
  });
  test('a typing error is no try', () => {
    const c = at('residual');
    for (let i = 0; i < 5; i++) c.type('9.3 / 0.1 ohm 0 0 / 9.3');
    expect(here(c)).toBe('residual');
  });
  test('without the tool there are no hands inside, and it is no try', () => {
    const c = typed(at('residual'), ['skip no tool', 'skip no tool', 'skip no tool', 'skip no tool']);
    expect([here(c), strip(c)]).toEqual(['residual', 'being-proved']);
  });
});

describe('given another unit, then these pairs are asked', () => {
  test.each([
    ['115 V, one leg', { means: 'breaker, no other feed, 115, outlet' }, 'proving', 'before hn hg ng t1g after'],
    [
      'a generator too',
      { means: 'breaker, generator, two legs, outlet' },
      'proving',
      'before l1l2 l1g l2g t1g t2g x12 x1g x2g after',
    ],
  ])('%s', (_, given, step, line) => {
    expect(at(step as Step, given).prompt().line).toBe(line);
  });
  test.each([
    ['2', 'battery-before hc fc hf c2 battery-after'],
    ['4', 'battery-before hc fc hf c2 c3 c4 battery-after'],
  ])('%s capacitors', (count, line) => {
    const c = typed(at('look'), [`clean, ${count} caps, 45+5 6% 440`, PROVING]);
    expect(c.prompt().line).toBe(line);
    expect(c.type(RESIDUAL).refusal).not.toBeNull();
  });
  test('the second of two capacitors counts like the first', () => {
    const c = typed(at('look'), ['clean, 2 caps, 45+5 6% 440', PROVING, '9.3 / 0 0 0 / 14 / 9.3']);
    expect(strip(c)).toBe('being-proved');
    expect(strip(typed(c, ['9.3 / 0 0 0 / 4 / 9.3']))).toBe('proved');
  });
  test('more capacitors than a line holds are never proved', () => {
    expect(strip(typed(at('look'), ['clean, 5 caps', PROVING, '9.3 / 0 0 0 / 0 0 0 / 9.3']))).toBe('being-proved');
  });
  test('no capacitor, on three lines: the absence line alone proves', () => {
    expect(strip(typed(at('look', THREE), ['clean, 0 caps', PROVING_THREE]))).toBe('proved');
  });
  test.each(['psc', 'ecm'])('no capacitor on %s: looked for again before any probe, twice, then a senior', (unit) => {
    const c = typed(at('look', { unit }), ['clean, 0 caps']);
    expect([here(c), strip(c)]).toEqual(['look', 'being-proved']);
    expect(typed(c, ['clean, 0 caps']).place).toBe('!held');
    expect(c.type('approve, go on').refusal?.code).toBe('no-right');
    expect(here(typed(c, ['approve, behind the shield'], 'ruth'))).toBe('look');
    expect(strip(typed(c, ['clean, 1 cap, 45+5 6% 440', PROVING, RESIDUAL]))).toBe('proved');
  });
  test('three lines said, none counted, and then it is a unit that needs one: looked for again', () => {
    const c = typed(at('look', THREE), ['clean, 0 caps', PROVING_THREE]);
    const kind = c.entries.findLast((e) => e.kind === 'answered' && e.body.place.endsWith('class'));
    c.send({ kind: 'amend', client: 'kind', of: kind?.seq ?? 0, parts: { choice: ['psc'] } });
    expect([here(c), strip(c)]).toEqual(['look', 'being-proved']);
  });
});

describe('given no lock fits', () => {
  const locked = (tagWithExtraMeasure: boolean) =>
    typed(at('locked', { settings: { tagWithExtraMeasure } }), ['no lock fits']);
  test('when the shop allows a tag, then it is asked with one extra measure', () => {
    expect(here(typed(locked(true), ['yes']))).toBe('look');
  });
  test('when it does not, then a senior approves, never the holder, and with name on the record', () => {
    const c = locked(false);
    expect([here(c), c.prompt().kind, c.kinds]).toEqual(['approve', 'waiting', ['answered', 'raised']]);
    expect(c.type('yes').type('approve, it is fine').refusal?.code).toBe('no-right');
    typed(c, ['approve, breaker out and in the pocket'], 'ruth');
    expect([here(c), c.entries.at(-1)]).toEqual(['look', expect.objectContaining({ kind: 'approved', by: 'ruth' })]);
  });
});

describe('given a gate, then it is not passed by', () => {
  test.each(['fit', 'means', 'look'] as const)('skip and can’t at %s', (step) => {
    const c = at(step);
    for (const line of ['skip in a hurry', 'can’t measure that', 'skip']) {
      expect(c.type(line).refusal).not.toBeNull();
      expect([here(c), c.kinds.filter((k) => k !== 'noted')]).toEqual([step, []]);
    }
  });
  test('without a known source the line stays open, and where another one is found is said', () => {
    const c = at('proving').type('can’t, no known source here');
    expect([c.refusal, here(c), strip(c)]).toEqual([null, 'proving', 'being-proved']);
    expect(c.notices).toContain('an outlet, the line side of the locked means, or a proving unit');
  });
  test('at the lock can’t leads to another way of holding it open, skip leads nowhere', () => {
    expect(at('locked').type('skip in a hurry').refusal?.code).toBe('gate');
    expect(here(at('locked').type('can’t'))).toBe('tag');
  });
  test.each(['proving', 'residual'] as const)('words are no reading at %s', (step) => {
    for (const line of ['yes', 'it is dead', 'ok', 'done', 'go on', 'dead dead dead']) {
      const c = at(step).type(line);
      expect([here(c), strip(c), c.kinds.includes('answered')]).toEqual([step, 'being-proved', false]);
    }
  });
  test.each(['wires', 'readings'] as const)('what is typed before its time is not kept: %s', (step) => {
    const line = step === 'wires' ? 'wires off' : 'herm 44 fan 5';
    expect(at('means').type(line).kinds).toEqual(['noted']);
  });
  test('something started: back to the means', () => {
    expect(here(typed(at('locked'), ['something started']))).toBe('means');
  });
  test('unfit: what is missing is put right first', () => {
    expect(here(typed(at('fit'), ['no', 'gloves, put right', MEANS]))).toBe('locked');
  });
});
