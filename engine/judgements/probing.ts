/** Answers for probes, written as they are kept on the record. */
import { Exact, type Figure } from '../calc/exact.ts';
import { figure } from '../quantity.ts';
import type { CapacitorLabel, Parts, Unit, Value } from '../schema.ts';

export const read = (value: Figure, unit: Unit): Value => {
  const kept = figure(value, unit);
  return { kind: 'figure', value: kept, unit, typed: kept };
};
export const volts = (of: Readonly<Record<string, Figure>>): Parts => reads(of, 'V');
export const reads = (of: Readonly<Record<string, Figure>>, unit: Unit): Parts =>
  Object.fromEntries(Object.entries(of).map(([key, value]) => [key, read(value, unit)]));
export const chose = (...chosen: string[]): Value => ({ kind: 'choice', chosen });
export const over: Value = { kind: 'over', typed: 'OL' };
export const untaken: Value = { kind: 'untaken' };
export const print = (label: Partial<CapacitorLabel> & Pick<CapacitorLabel, 'herm' | 'fan'>): Parts => ({
  print: {
    kind: 'label',
    label: { below: '6', above: '6', printed: true, volts: '440', ...label },
    typed: { ref: 'probe', hash: '0'.repeat(64) },
  },
});
/** The smallest step of a voltage on the record, for the other side of a limit. */
export const past = (value: Figure, by: Figure): Exact => new Exact(value).plus(by);
