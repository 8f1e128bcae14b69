import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { judgements } from '../../engine/judgements/index.ts';
import type { Force, Judgement, Limit } from '../../engine/judgements/judgement.ts';
import { draw } from '../../engine/picture/draw.ts';
import { Finding, Parts, type Unit, type Value } from '../../engine/schema.ts';
import { ASSUMED, FORCE, FORCES, LIMITS, METER } from './fixture.ts';

type Any = Judgement<string, string, string>;
const all = Object.entries(judgements) as unknown as [keyof typeof LIMITS, Any][];
const limitsOf = (id: keyof typeof LIMITS) => LIMITS[id] as Readonly<Record<string, Limit>>;
const fill = (j: Any, given: Partial<Record<string, Parts>>) =>
  Object.fromEntries(j.takes.map((name) => [name, given[name]])) as Record<string, Parts | undefined>;
const run = (id: keyof typeof LIMITS, j: Any, given: Partial<Record<string, Parts>>, force: Force = FORCE) =>
  j.run(fill(j, given), limitsOf(id), force);

/** Outcomes that every flow must map, and that these computations never need. */
const NEVER: Readonly<Record<string, readonly string[]>> = {
  known: ['undecided'],
  alternative: ['undecided'],
  history: ['undecided'],
};
describe.each(all)('%s', (id, j) => {
  test('is filed under its own id, names its limits, and may stay undecided', () => {
    expect(j.id).toBe(id);
    expect([...j.limits].sort()).toEqual(Object.keys(limitsOf(id)).sort());
    expect(j.outcomes).toContain('undecided');
    expect(new Set(j.outcomes).size).toBe(j.outcomes.length);
  });

  test('its probe reaches every outcome with a known meter and with the assumed one', () => {
    const probe = j.probe(limitsOf(id));
    const expected = j.outcomes.filter((o) => !NEVER[id]?.includes(o)).sort();
    for (const meter of [METER, ASSUMED]) {
      const reached = FORCES.flatMap((f) => probe.map((given) => run(id, j, given, { ...f, meter }).outcome));
      expect([...new Set(reached)].sort()).toEqual(expected);
    }
  });

  test('its probe is answers that a record can hold, for what it takes', () => {
    for (const given of j.probe(limitsOf(id))) {
      for (const [name, parts] of Object.entries(given)) {
        expect(j.takes).toContain(name);
        expect(z.safeParse(Parts, parts).success).toBe(true);
      }
    }
  });

  test('whatever it is given, it names one of its outcomes and writes finished sentences', () => {
    fc.assert(
      fc.property(givenFor(j, limitsOf(id)), fc.constantFrom(...FORCES), fc.boolean(), (given, force, plain) => {
        const settings = { ...force.settings, rule: plain ? ('plain' as const) : ('doubt' as const) };
        const { outcome, findings } = run(id, j, given, { ...force, settings });
        expect(j.outcomes).toContain(outcome);
        for (const finding of findings) checkWords(finding);
      }),
      { numRuns: fc.readConfigureGlobal()?.numRuns ?? 300 },
    );
  });

  test('the same answers give the same words', () => {
    for (const given of j.probe(limitsOf(id))) expect(run(id, j, given)).toEqual(run(id, j, given));
  });
});

/** Figures carry their unit after a thin space; nothing uncomputed shows; a sentence is short and ends. */
function checkWords(finding: Finding): void {
  expect(z.safeParse(Finding, finding).success).toBe(true);
  const { figures, ...said } = finding;
  // What can be drawn is drawn: words of a picture are held to the same.
  const all = [...Object.values(said), figures ? draw(figures).text : ''].join(' | ');
  expect(all).not.toMatch(/NaN|Infinity|undefined|null|\[object|\de[+-]\d/);
  expect(finding.text).toMatch(/\.$/);
  const shown = [finding.text, finding.reading, finding.limits, finding.doubt].join(' | ');
  expect(shown).not.toMatch(/\d ?(?:µF|MΩ|Ω|V|A|J|W|s|%)(?![\p{L}\d])/u);
  expect(finding.text).not.toMatch(/!|\b(simply|just)\b/);
  for (const sentence of finding.text.split(/(?<=[.!?]) /)) {
    expect(sentence.split(/[ ]+/).length, sentence).toBeLessThan(25);
  }
}

const KEYS = ['before', 'after', 'l1l2', 'l1g', 'l2g', 't1g', 't2g', 'hn', 'hg', 'ng', 'x12', 'source', 'stated'];
const MORE = ['batteryBefore', 'hc', 'fc', 'hf', 'c2', 'batteryAfter', 'count', 'condition', 'print', 't1', 't2', 't3'];
const REST = [
  'herm',
  'fan',
  'case',
  'hermc',
  'fanc',
  'comp',
  'rla',
  'lra',
  'fla',
  'volts',
  'ok',
  ...['return', 'supply', 'wb', 'rh', 'split', 'suction', 'line', 'liquid', 'saturation', 'target', 'outdoor'],
  ...['indoor', 'goods', 'since'],
  ...[
    'cr',
    'cs',
    'sr',
    'g',
    'first',
    'second',
    'third',
    'high',
    'med',
    'low',
    'leads',
    'frame',
    't3g',
    'megohms',
    'maker',
    'winding',
  ],
  ...['l2l3', 'l1l3', 'l3g', 'min', 't1t2', 'leg1', 'leg2', 'leg3', 'mca', 'mop', 'mcc', 'choice'],
  '__proto__',
  'toString',
];

const decimal = fc.oneof(
  fc.integer({ min: -20_000, max: 40_000 }).map((n) => String(n / 100)),
  fc.constantFrom('0', '5', '30', '45', '60', '120', '-0', '0.0001', `${'9'.repeat(38)}`, `0.${'0'.repeat(36)}1`),
);
const unit = fc.constantFrom<Unit>('µF', 'V', 'A', 'Ω', 'MΩ', '%', 's', 'J', 'count', '°F', 'Δ°F', 'psig', 'h');
const option = fc.constantFrom(
  'yes',
  'no',
  'cant',
  'done',
  'outlet',
  'other',
  'line240',
  'bulged',
  'rust',
  '230',
  ...['hot', 'cold', 'cool', 'scroll', 'motor', 'none', 'vacuum', '208/230', '0', 'meter'],
  'toString',
);
const label = fc
  .record({
    herm: decimal,
    fan: fc.option(decimal),
    below: decimal,
    above: decimal,
    printed: fc.boolean(),
    volts: fc.option(decimal),
  })
  .map((label): Value => ({ kind: 'label', label, typed: { ref: 'r', hash: '0'.repeat(64) } }));
const value: fc.Arbitrary<Value> = fc.oneof(
  fc.record({ value: decimal, unit }).map((f): Value => ({ kind: 'figure', ...f, typed: f.value })),
  fc.constant<Value>({ kind: 'over', typed: 'OL' }),
  fc.constant<Value>({ kind: 'untaken' }),
  fc.array(option, { maxLength: 3 }).map((chosen): Value => ({ kind: 'choice', chosen })),
  label,
  fc.constant<Value>({ kind: 'photo', hash: '0'.repeat(64) }),
);
const anyParts = fc.dictionary(fc.constantFrom(...KEYS, ...MORE, ...REST), value, { maxKeys: 14 });

/** Mostly lines of the probe with a part changed, sometimes anything at all. */
function givenFor(j: Any, limits: Readonly<Record<string, Limit>>): fc.Arbitrary<Partial<Record<string, Parts>>> {
  const wild = fc.record(Object.fromEntries(j.takes.map((name) => [name, fc.option(anyParts, { nil: undefined })])));
  const near = fc.tuple(fc.constantFrom(...j.probe(limits)), wild).map(([probe, other]) => {
    const mixed: Partial<Record<string, Parts>> = {};
    for (const name of j.takes) {
      const parts = { ...probe[name], ...other[name] };
      if (Object.keys(parts).length > 0) mixed[name] = parts;
    }
    return mixed;
  });
  return fc.oneof(near, wild) as fc.Arbitrary<Partial<Record<string, Parts>>>;
}
