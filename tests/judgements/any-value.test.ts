import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { judgements } from '../../engine/judgements/index.ts';
import type { Judgement, Limit } from '../../engine/judgements/judgement.ts';
import { Finding, type Parts, type Unit, type Value } from '../../engine/schema.ts';
import { ASSUMED, FORCE, LIMITS, SETTINGS } from './fixture.ts';

const IDS = [
  ...(['fuses', 'contactor', 'three-terminals', 'single-section', 'start-capacitor', 'bleed-resistor', 'ptc'] as const),
  ...(['potential-relay', 'current-relay', 'under-load', 'coil-volts', 'hop', 'transformer', 'bus'] as const),
];
const decimal = fc.oneof(
  fc.integer({ min: -60_000, max: 60_000 }).map((n) => String(n / 1000)),
  fc.constantFrom(
    '0',
    '0.5',
    '1',
    '4',
    '5',
    '20',
    '24',
    '253',
    '10000',
    '20000',
    '-0.0001',
    `${'9'.repeat(38)}`,
    `0.${'0'.repeat(36)}1`,
  ),
);
const unit = fc.constantFrom<Unit>('µF', 'V', 'A', 'Ω', 'MΩ', 'count');
const value: fc.Arbitrary<Value> = fc.oneof(
  fc.record({ value: decimal, unit }).map((f): Value => ({ kind: 'figure', ...f, typed: f.value })),
  fc.constant<Value>({ kind: 'over', typed: 'OL' }),
  fc.constant<Value>({ kind: 'untaken' }),
  fc
    .constantFrom('yes', 'no', 'cant', '24', '120', '208', '240', 'other', '0')
    .map((c): Value => ({ kind: 'choice', chosen: [c] })),
);
const force = fc.constantFrom(
  FORCE,
  { ...FORCE, meter: ASSUMED },
  { ...FORCE, settings: { ...SETTINGS, rule: 'plain' as const, hertz: '50' as const } },
);

describe.each(IDS)('%s', (id) => {
  const j = judgements[id] as unknown as Judgement<string, string, string>;
  const limits = LIMITS[id] as Readonly<Record<string, Limit>>;
  const run = (given: Partial<Record<string, Parts>>, of = FORCE) =>
    j.run(Object.fromEntries(j.takes.map((name) => [name, given[name]])), limits, of);

  test('any value in the place of any other leads to one of its outcomes, in finished words', () => {
    const probes = j.probe(limits).filter((given) => Object.keys(given).length > 0);
    const changed = fc.tuple(
      fc.constantFrom(...probes),
      fc.array(value, { minLength: 12, maxLength: 12 }),
      fc.nat(4095),
    );
    fc.assert(
      fc.property(changed, force, ([probe, values, mask], of) => {
        let at = 0;
        const swap = ([key, own]: [string, Value]): [string, Value] => {
          const other = values[at % 12] ?? own;
          return [key, (mask >> (at++ % 12)) % 2 === 1 ? other : own];
        };
        const given = Object.fromEntries(
          Object.entries(probe).map(([name, parts]) => [
            name,
            Object.fromEntries(Object.entries(parts ?? {}).map(swap)),
          ]),
        );
        const { outcome, findings } = run(given, of);
        expect(j.outcomes).toContain(outcome);
        expect(findings.length).toBeGreaterThan(0);
        for (const finding of findings) {
          expect(z.safeParse(Finding, finding).success).toBe(true);
          expect(
            Object.values(finding)
              .filter((v) => typeof v === 'string')
              .join(' '),
          ).not.toMatch(/NaN|Infinity|undefined|\[object/);
          expect(finding.text).toMatch(/\.$/);
        }
      }),
      { numRuns: 120 },
    );
  });

  test('kΩ typed as Ω or MΩ, and zeros behind a figure, change no outcome', () => {
    const spelt = (own: Value): Value => {
      if (own.kind !== 'figure') return own;
      if (own.unit !== 'Ω') return { ...own, value: own.value.includes('.') ? `${own.value}00` : `${own.value}.00` };
      const digits = own.value.replace(/^-?/, '').split('.');
      const whole = (digits[0] ?? '').padStart(7, '0');
      const sign = own.value.startsWith('-') ? '-' : '';
      const millions = `${sign}${whole.slice(0, -6)}.${whole.slice(-6)}${digits[1] ?? ''}`;
      return { ...own, value: millions, unit: 'MΩ' };
    };
    for (const probe of j.probe(limits)) {
      const given = Object.fromEntries(
        Object.entries(probe).map(([name, parts]) => [
          name,
          Object.fromEntries(Object.entries(parts ?? {}).map(([key, own]) => [key, spelt(own)])),
        ]),
      );
      expect(run(given).outcome).toBe(run(probe).outcome);
    }
  });
});
