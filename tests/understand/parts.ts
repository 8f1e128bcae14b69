/** Parts of prompts as flows give them, for the tests of this folder. */
import type { Option, Part, Unit } from '../../engine/schema.ts';
import type { FieldPart } from '../../engine/understand/index.ts';

export const field = (key: string, unit: Unit, over: Partial<FieldPart> = {}): FieldPart => ({
  kind: 'field',
  key,
  ask: key,
  optional: false,
  unit,
  words: [],
  over: true,
  unitNeeded: false,
  remembered: null,
  ...RANGES[unit],
  ...over,
});

const RANGES: Record<Unit, { from: string; to: string }> = {
  µF: { from: '0', to: '400' },
  V: { from: '-1000', to: '1000' },
  A: { from: '0', to: '400' },
  Ω: { from: '0', to: '100000000' },
  MΩ: { from: '0', to: '100000' },
  '%': { from: '-1000', to: '1000' },
  s: { from: '0', to: '3600' },
  J: { from: '0', to: '1000' },
  count: { from: '0', to: '20' },
  '°F': { from: '-60', to: '300' },
  'Δ°F': { from: '-150', to: '150' },
  psig: { from: '-14.7', to: '800' },
  h: { from: '0', to: '1000' },
};

export const option = (id: string, label: string, ...words: string[]): Option => ({ id, label, words });
const asked = (key: string, ask: string) => ({ key, ask, optional: false });
export const choose = (key: string, several: boolean, options: Option[]): Part => ({
  kind: 'choose',
  ...asked(key, key),
  several,
  options,
  remembered: [],
});
export const confirm = (key: string, ask: string, ...options: Option[]): Part => ({
  kind: 'confirm',
  ...asked(key, ask),
  options: options.length > 0 ? options : [option('yes', 'Yes'), option('no', 'No')],
});
export const act = (key: string, ask: string, ...options: Option[]): Part => ({
  kind: 'act',
  ...asked(key, ask),
  options: options.length > 0 ? options : [option('done', 'Done'), option('cant', 'Can’t')],
});
export const label: Part = { kind: 'label', ...asked('print', 'The print'), remembered: null };
export const note: Part = { kind: 'note', ...asked('note', 'Anything else') };
export const photo: Part = { kind: 'photo', ...asked('photo', 'A photo') };

export const sections = [
  field('herm', 'µF'),
  field('fan', 'µF'),
  field('hf', 'µF', { optional: true }),
  field('case', 'Ω', { optional: true }),
];
export const proving = ['source', 'l1l2', 'l1g', 'l2g', 't1g', 't2g', 'again'].map((key) =>
  field(key, 'V', { over: false }),
);
export const running = [
  field('line', 'V'),
  field('load', 'V'),
  field('comp', 'A', { words: ['compressor'] }),
  field('fan', 'A'),
  field('split', 'count', { to: '60' }),
];
export const open = [
  choose('condition', true, [
    option('clean', 'Clean'),
    option('bulged', 'Bulged'),
    option('oil', 'Oil'),
    option('burnt', 'Burnt', 'burned'),
    option('loose', 'Loose wire', 'loose'),
  ]),
  field('count', 'count', { words: ['cap', 'caps', 'capacitor', 'capacitors'] }),
  label,
];
export const symptoms = choose('choice', false, [
  option('a', 'Outdoor unit silent', 'silent'),
  option('b', 'Hum, nothing turns', 'hums'),
  option('c', 'Compressor runs, fan still'),
  option('d', 'Fan runs, compressor hums, clicks off or is silent'),
  option('l', 'Other noise or smell'),
]);
