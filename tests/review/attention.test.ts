/** What a senior should look at: each kind from a call as it is typed, with the entry that it points to. */
import { describe, expect, test } from 'vitest';
import { replay } from '../../engine/replay.ts';
import { attention } from '../../engine/review/attention.ts';
import { type FastGate, fastGate } from '../../engine/review/fast-gate.ts';
import { type Attention, KINDS, type Kind, queuePlace } from '../../engine/review/risk.ts';
import { at, GOOD, MOTORS, PLATE, type Step, typed } from '../engine/given.ts';
import { Conversation, machine, plate } from '../people.ts';

/** As the desk does: gates are looked at as they come. */
function found(c: Conversation): Attention[] {
  const fast: FastGate[] = [];
  const standing = replay(machine, c.entries, undefined, (before, entry) => {
    const gate = fastGate(before, c.entries, entry);
    if (gate) fast.push(gate);
  });
  return attention(standing, c.entries, ({ ref }) => c.texts.find((t) => t.ref === ref)?.text ?? '(removed)', fast);
}
const words = (c: Conversation, kind: Kind): string[] =>
  found(c).flatMap((a) => (a.kind === kind ? `#${a.seq} ${a.words.replaceAll('\u2009', ' ')}` : []));
/** A call on which nobody was in a hurry. */
const slow = (step: Step, given: Parameters<typeof at>[1] = {}): Conversation => {
  const before = at('residual', given).wait(1);
  const fuses = 'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol';
  const rest = [['9.3 / 0.6 0.1 0.5 / 9.3'], [fuses, 'no diagram'], ['done']];
  const steps: Step[] = ['residual', 'block', 'wires', 'readings'];
  return typed(before, rest.slice(0, steps.indexOf(step)).flat());
};
const end = (c: Conversation, readings: string, ...more: string[]): Conversation =>
  typed(c, [readings, ...more, ...MOTORS, PLATE, 'closed', '240 239 comp 13.1 fan .9 split 19']);

test('a sound call asks for nothing', () => {
  expect(found(end(slow('readings'), GOOD))).toEqual([]);
});

describe('each kind, with its entry and words', () => {
  test('a hazard, and a word that may be one', () => {
    const c = slow('block').type('smoke from the unit').type('release it was steam', 'ruth');
    expect(words(c, 'hazard')).toEqual([
      `#${c.entries.find((e) => e.kind === 'alarmed')?.seq} Emergency, smoke: smoke from the unit`,
    ]);
    const old = slow('block').type('burnt tab');
    expect(words(old, 'hazard').join()).toMatch(/^#\d+ A word that may mean danger: burnt tab$/);
  });
  test('an isolation that ended: power back, age', () => {
    const c = slow('block').type('power is back');
    expect(words(c, 'voided')).toEqual([`#${c.entries.at(-1)?.seq} The isolation ended, power came back`]);
    const old = slow('block').wait(31).type('note back again');
    expect(words(old, 'voided').join()).toMatch(/The isolation ended, nobody answered in time$/);
  });
  test('a step skipped with a reason, and one that was not possible', () => {
    const c = slow('wires').type('skip no camera');
    expect(words(c, 'skipped').join()).toMatch(/^#\d+ Skipped: Record the wiring.* Reason: no camera$/);
    const cant = typed(slow('readings'), [GOOD]).tap({ ok: ['cant'] });
    expect(words(cant, 'skipped').join()).toMatch(/^#\d+ Not possible: Spin the fan/);
  });
  test('what a senior approved', () => {
    const c = typed(at('locked', { settings: { tagWithExtraMeasure: false } }), ['no lock fits']);
    expect(c.type('approve breaker is in a locked room', 'ruth').refusal).toBeNull();
    expect(words(c, 'approved').join()).toMatch(/how the means is held open: breaker is in a locked room$/);
    expect(words(c, 'raised').join()).toMatch(/an approval is needed/);
  });
  test('a conditional verdict, and where the habit would say otherwise', () => {
    // 45 ±6 % is 42.3 to 47.7: 43.0 is inside with a limit in the doubt; 41.9 is out, and the habit would keep it.
    const near = end(slow('readings'), 'herm 43.0 fan 5.03 hf 4.5 case ol');
    expect(words(near, 'conditional').join()).toMatch(/^#\d+ HERM: 43 µF, limits 42.30–47.70 µF: conditional pass$/);
    const out = typed(slow('readings'), ['herm 41.0 fan 5.02 hf 4.47 case ol']);
    const habit = words(out, 'habit').join();
    expect(habit).toMatch(/HERM: 41 µF is fail by the label; the ±10 % habit \(40.5–49.5 µF\) would say otherwise/);
  });
  test('readings that equal the label to the last digit', () => {
    const c = typed(slow('readings'), ['herm 45 fan 5 hf 4.5 case ol', 'yes']);
    expect(words(c, 'exact').join()).toMatch(/both readings are the label’s own figures$/);
  });
  test('a residual line sooner than three pairs can be held; not one that took its time', () => {
    const hurried = typed(at('residual').wait(0, 14), ['9.3 / 0.6 0.1 0.5 / 9.3']);
    expect(words(hurried, 'fast')).toEqual([
      `#${hurried.seqOf('residual')} Discharge and residual line took 14 s; 3 pairs held 5 s each take 15 s`,
    ]);
    expect(words(typed(at('residual').wait(0, 15), ['9.3 / 0.6 0.1 0.5 / 9.3']), 'fast')).toEqual([]);
    // Where no print is known, the time for an unknown one counts: 10 s on each of three.
    const unknown = (s: number) =>
      words(typed(at('residual', { look: 'clean, 1 cap' }).wait(0, s), ['9.3 / 0.6 0.1 0.5 / 9.3']), 'fast');
    expect([unknown(29).length, unknown(30).length]).toEqual([1, 0]);
  });
  test('a fast gate stays known when its isolation has ended', () => {
    const c = typed(at('residual'), ['9.3 / 0.6 0.1 0.5 / 9.3']).type('power is back');
    expect(words(c, 'fast')).toHaveLength(1);
  });
  test('the second part in a season', () => {
    const fitted = { what: 'fitted', item: 'run capacitor', job: 'before', herm: '45', fan: '5' } as const;
    const history = [{ ...fitted, at: '2026-05-14T15:00:00.000Z' }];
    const c = new Conversation({ equipment: { facts: plate('14.1', '73', '0.8'), history } });
    c.types(
      'd',
      'psc',
      'yes',
      'pull-out, breaker, no other feed, two legs, outlet',
      'yes',
      'clean, 1 cap, 45+5 6% 440',
    );
    c.types('121 / 0.2 0 0.1 / 0 0 / 121', '9.3 / 0.6 0.1 0.5 / 9.3');
    c.types(
      'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol',
      'no diagram',
      'done',
      'herm 36.1 fan 5.02 hf 4.4 case ol',
    );
    c.types(...MOTORS, 'nothing');
    expect(words(c, 'repeat').join()).toMatch(/second one in a season/);
  });
  test('a verdict on the compressor', () => {
    const c = typed(slow('readings'), [GOOD, 'spin free', 'cr .9 cs 2.7 sr 3.6 g 0.2 megohm']);
    if (words(c, 'compressor').length === 0) typed(c, ['cr .9 cs 2.7 sr 3.6 g 0.2 megohm']);
    expect(words(c, 'compressor').join()).toMatch(/compressor/i);
    // Wire or motor: where it can't be split, the verdict asks for a senior.
    typed(c, ['cant']);
    expect(words(c, 'raised').join()).toMatch(/the verdict asks for one/);
  });
  test('a call for a senior', () => {
    const c = slow('block');
    c.send({ kind: 'command', client: 'c', name: 'senior', text: 'which fuse is it' });
    expect(words(c, 'raised').join()).toMatch(/Raised to a senior, asked for: which fuse is it$/);
  });
});

test('a verdict set aside by a changed reading asks for nothing any more', () => {
  const c = typed(slow('readings'), ['herm 41.0 fan 5.02 hf 4.47 case ol']);
  expect(words(c, 'habit')).toHaveLength(1);
  c.type('back herm 44.6 hf 4.51');
  expect(words(c, 'habit')).toEqual([]);
});

test('the gravest kind comes first, within a kind the oldest entry', () => {
  const c = typed(at('readings'), ['herm 41.0 fan 5.02 hf 4.47 case ol']);
  c.type('senior').type('power is back').type('smoke');
  const kinds = found(c).map(({ kind }) => kind);
  expect(kinds).toEqual(['hazard', 'voided', 'habit', 'fast', 'raised']);
});

describe('the order of the queue', () => {
  const items = (...kinds: Kind[]): Attention[] => kinds.map((kind, i) => ({ kind, seq: i + 1, head: '', words: '' }));
  const place = (at: Parameters<typeof queuePlace>[0]['at'], ...kinds: Kind[]): number =>
    queuePlace({ at, training: false }, items(...kinds)) ?? Number.POSITIVE_INFINITY;

  test('an emergency, then who waits, then the gravest kind, then how many kinds, then what is only to be signed', () => {
    const order = [
      place('emergency', 'raised'),
      place('waits', 'hazard', 'voided'),
      place('waits', 'approved'),
      place('under-way', 'hazard', 'fast'),
      place('finished', 'hazard'),
      // All other kinds together are less than a hazard.
      place('finished', ...KINDS.slice(1)),
      ...KINDS.slice(2).map((kind) => place('finished', kind)),
      place('finished'),
    ];
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(new Set(order).size).toBe(order.length);
  });
  test('a signed job, a training job, and one under way with nothing to look at are not in it', () => {
    expect(queuePlace({ at: 'signed', training: false }, items('hazard'))).toBeNull();
    expect(queuePlace({ at: 'emergency', training: true }, items('hazard'))).toBeNull();
    expect(queuePlace({ at: 'under-way', training: false }, [])).toBeNull();
  });
});
