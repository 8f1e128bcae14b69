/** RFC 8785 JSON: against the standard's own examples, and against an independent program. */
import canonicalize from 'canonicalize';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonicalJson } from '../../engine/canonical.ts';

/** Keys and texts of every kind, half surrogate pairs left out. */
const text = fc.string({ unit: 'binary' });
const data = fc.jsonValue({ stringUnit: 'binary', maxDepth: 4 });

describe('the same bytes', () => {
  // RFC 8785 §3.2.2, the sample object and its canonical form as printed there.
  test('as the standard’s sample', () => {
    const sample = {
      numbers: [Number('333333333.33333329'), 1e30, 4.5, 2e-3, 0.000000000000000000000000001],
      string: '\u20ac$\u000F\u000aA\'\u0042\u0022\u005c\\"\u002f',
      literals: [null, true, false],
    };
    expect(canonicalJson(sample)).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });
  test('as the library’s, for any data', () => {
    fc.assert(fc.property(data, (value) => canonicalJson(value) === canonicalize(value)));
    fc.assert(fc.property(fc.dictionary(text, text), (value) => canonicalJson(value) === canonicalize(value)));
  });
  test('with a member left out, of the outermost object alone', () => {
    expect(canonicalJson({ b: { a: 1 }, a: 2 }, 'a')).toBe('{"b":{"a":1}}');
  });
  test('minus nought is nought, what is undefined is not there', () => {
    expect(canonicalJson({ a: -0, b: undefined, c: [undefined] })).toBe('{"a":0,"c":[null]}');
  });
});

test.each<[string, unknown]>([
  ['NaN', Number.NaN],
  ['infinity', { a: Number.POSITIVE_INFINITY }],
  ['half a pair', ['\ud83d']],
  ['half a pair in a name', { '\ude00x': 1 }],
  ['a function', { a: () => 1 }],
  ['a big integer', 1n],
  ['nothing', undefined],
])('%s is no JSON', (_, value) => {
  expect(() => canonicalJson(value)).toThrow(/no JSON/);
});
