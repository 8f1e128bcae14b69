/** Any picture that the types allow, for properties: any words, any readings. */
import fc from 'fast-check';
import type { PictureData } from '../../engine/picture/data.ts';

/** What a label, a name or a page could hold if somebody meant ill. */
const HOSTILE = [
  '<script>alert(1)</script>',
  '"><svg onload=alert(1)>',
  '</text></svg>',
  '&amp; &lt; &#0; &bogus;',
  ']]>',
  '<!-- --><![CDATA[',
  "' onclick='x",
  'a\u0000b\u0008c\u001f',
  '\ud800 half of a pair',
  '\u202egnihtyna',
  '\ufffe\uffff',
  'line\nand\r\nline\ttab',
  '',
  ' ',
  'W'.repeat(300),
];
const words = fc.oneof(
  fc.constantFrom(...HOSTILE),
  fc.string({ unit: 'grapheme', maxLength: 60 }),
  fc.string({ unit: 'binary', maxLength: 60 }),
);
const decimal = (from: number, to: number, digits: number) =>
  fc
    .integer({ min: Math.round(from * 10 ** digits), max: Math.round(to * 10 ** digits) })
    .map((n) => (n / 10 ** digits).toFixed(digits));
const figure = fc.oneof(decimal(0, 500, 2), decimal(0, 1, 4), decimal(0, 100_000, 0));
const above = fc.oneof(decimal(0.01, 500, 2), decimal(1, 100_000, 0), fc.constant('0.0001'));
const range = fc
  .tuple(figure, figure)
  .map(([a, b]) => (Number(a) <= Number(b) ? { low: a, high: b } : { low: b, high: a }));

const scale = fc.record({
  kind: fc.constant('scale' as const),
  name: words,
  unit: fc.constantFrom('µF' as const, 'V' as const, 'A' as const, 'Ω' as const, 'MΩ' as const, '%' as const),
  rated: fc.option(figure),
  limits: range,
  reading: fc.oneof(figure, decimal(-500, 0, 2)),
  doubt: fc.option(range),
  habit: fc.option(fc.record({ percent: fc.constant('10'), low: fc.constant('40.5'), high: fc.constant('49.5') })),
  word: words,
});
const decay = fc.record({
  kind: fc.constant('decay' as const),
  fromVolts: above,
  limitVolts: above,
  microfarads: above,
  ohms: above,
  limitSeconds: figure,
  holdSeconds: above,
});
const side = fc.option(fc.oneof(figure, fc.constant('OL' as const)));
const windings = fc.record({
  kind: fc.constant('windings' as const),
  crOhms: side,
  csOhms: side,
  srOhms: side,
  doubtOhms: fc.option(figure),
  word: words,
});
const stop = fc.record({ page: words, title: words });
const path = fc.record({ kind: fc.constant('path' as const), passed: fc.array(stop, { maxLength: 12 }), here: stop });

const between = fc.constantFrom(
  'capacitance' as const,
  'ohms' as const,
  'direct volts' as const,
  'discharge resistor' as const,
);
const can = fc.constantFrom('round' as const, 'oval' as const);
const some = <T>(...all: T[]) =>
  fc.tuple(fc.constantFrom(...all), fc.subarray(all)).map(([first, more]): [T, ...T[]] => [first, ...more]);
const leads = fc.oneof(
  fc.record({
    kind: fc.constant('leads' as const),
    part: fc.constant('dual' as const),
    on: some('herm-c' as const, 'fan-c' as const, 'herm-fan' as const, 'case' as const),
    between,
    can,
  }),
  fc.record({
    kind: fc.constant('leads' as const),
    part: fc.constant('single' as const),
    on: some('across' as const, 'case' as const),
    between,
    can,
  }),
  fc.record({
    kind: fc.constant('leads' as const),
    part: fc.constant('start' as const),
    on: some('across' as const, 'case' as const),
    between,
    can,
    bleed: fc.constantFrom('fitted' as const, 'one end off' as const, 'none' as const),
    bleedOhms: above,
  }),
);

const probes = fc.record({
  kind: fc.constant('probes' as const),
  mode: fc.constantFrom('V AC' as const, 'V DC' as const, 'Ω' as const, 'MΩ' as const),
  on: fc.array(fc.record({ from: words, to: words, good: words }, { requiredKeys: ['from', 'to'] }), {
    minLength: 1,
    maxLength: 5,
  }),
});

export const anyPicture: fc.Arbitrary<PictureData> = fc.oneof(scale, decay, windings, path, leads, probes);
