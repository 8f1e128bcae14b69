import { expectTypeOf, test } from 'vitest';
import { type Alike, convert } from '../../engine/calc/units.ts';

test('units of two kinds don’t compile', () => {
  convert(1, 'psig', 'kPa');
  // @ts-expect-error: volts where amps belong
  convert(1, 'V', 'A');
  // @ts-expect-error: a difference is no temperature
  convert(1, 'Δ°F', '°F');
  // @ts-expect-error: not a unit
  convert(1, 'psi', 'kPa');
  expectTypeOf<Alike<'mA'>>().toEqualTypeOf<'mA' | 'A'>();
  expectTypeOf<Alike<'°C'>>().toEqualTypeOf<'°C' | '°F' | 'K'>();
});
