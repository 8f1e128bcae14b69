import { judgement } from './judgement.ts';
import { chose, read } from './probing.ts';
import { chosenOf, figureOf } from './read.ts';
import { finding, say } from './say.ts';

const UNSEEN = 'No capacitor was seen where a motor needs one. The one that was not seen may be charged.';

/**
 * Whether there is any capacitor to discharge. Where a motor needs a run capacitor, none seen is one not found: of a
 * blower’s cabinet its drive says so, of every other the kind of unit.
 */
export const capacitors = judgement({
  id: 'capacitors',
  semantics: 2,
  takes: ['look', 'unit', 'drive'],
  limits: [],
  outcomes: ['none', 'unseen', 'some', 'undecided'],
  run({ look, unit, drive }) {
    const count = figureOf(look, 'count', 'count');
    if (count === null || count.lt(0)) {
      const text = 'Nobody counted the capacitors.';
      return {
        outcome: 'undecided',
        findings: [finding({ name: 'Capacitors', reading: 'no count', word: 'missing', text })],
      };
    }
    const [drives] = chosenOf(drive, 'choice');
    const expected =
      drives === undefined ? ['psc', 'ecm'].includes(chosenOf(unit, 'choice')[0] ?? '') : drives === 'psc';
    const outcome = !count.isZero() ? 'some' : expected ? 'unseen' : 'none';
    const text = {
      some: `Capacitors seen: ${say(count, '').trim()}.`,
      unseen: UNSEEN,
      none: 'No capacitor was seen.',
    }[outcome];
    return {
      outcome,
      findings: [finding({ name: 'Capacitors', reading: say(count, '').trim(), word: outcome, text })],
    };
  },
  probe: () => [
    { look: { count: read(0, 'count') } },
    { look: { count: read(1, 'count') } },
    { look: { count: read(4, 'count') } },
    ...['psc', 'ecm', 'three-phase', 'refrigeration', 'inverter'].map((unit) => ({
      look: { count: read(0, 'count') },
      unit: { choice: chose(unit) },
    })),
    ...['psc', 'ecm'].map((drive) => ({
      look: { count: read(0, 'count') },
      unit: { choice: chose('psc') },
      drive: { choice: chose(drive) },
    })),
    { look: { count: read(1, 'count') }, unit: { choice: chose('psc') }, drive: { choice: chose('psc') } },
    {},
  ],
});
