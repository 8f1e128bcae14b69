/** Questions of every shape, for texts of every kind. */
import type { Part } from '../../engine/schema.ts';
import type { FieldPart } from '../../engine/understand/index.ts';
import { act, confirm, field, label, note, open, proving, running, sections, symptoms } from './parts.ts';

export const PROMPTS: readonly (readonly Part[])[] = [
  sections,
  proving,
  running,
  open,
  [symptoms],
  [confirm('ok', 'Lock still yours?'), ...proving],
  [act('ok', 'Wires off HERM, FAN and C.')],
  [...open, note],
  [label],
];
export const FIELDS: readonly FieldPart[] = [
  ...sections,
  ...proving,
  ...running,
  field('ground', 'MΩ'),
  field('x', 'Ω', { unitNeeded: true }),
  field('count', 'count', { words: ['cap'] }),
  field('return', '°F'),
  field('suction', 'psig'),
];
