import { judgement } from '../judgement.ts';
import { past, untaken, volts } from '../probing.ts';
import { figureOf } from '../read.ts';
import { finding, say } from '../say.ts';

/**
 * Whether volts are there, V between two points under the key `v`, sign dropped: from one limit on they are, below the
 * other they are not; between them nothing is concluded. Above `most` another circuit feeds it, and nothing is concluded either.
 */
export const voltsThere = judgement({
  id: 'volts-there',
  semantics: 2,
  takes: ['readings'],
  limits: ['from', 'none', 'most'],
  outcomes: ['there', 'none', 'between', 'high', 'undecided'],
  run({ readings }, { from, none, most }) {
    const value = figureOf(readings, 'v', 'V')?.abs() ?? null;
    const shown = value ? say(value, 'V') : 'no reading';
    const limits = `there from ${say(from.value, 'V')}, none under ${say(none.value, 'V')}, at most ${say(most.value, 'V')}`;
    const outcome = ((): 'there' | 'none' | 'between' | 'high' | 'undecided' => {
      if (value === null) return 'undecided';
      if (value.gt(most.value)) return 'high';
      return value.gte(from.value) ? 'there' : value.lt(none.value) ? 'none' : 'between';
    })();
    const text = {
      there: `${shown}: volts are there.`,
      none: `${shown}: nothing is there.`,
      between: `${shown} is neither there nor gone. Read it again; a loose joint reads so.`,
      high: `${shown} is more than this circuit has. Another source feeds it: both off before a hand goes near.`,
      undecided: 'The volts were not read.',
    }[outcome];
    const { source } = outcome === 'none' ? none : outcome === 'high' ? most : from;
    return { outcome, findings: [finding({ name: 'Volts', reading: shown, limits, word: outcome, text, source })] };
  },
  probe({ from, none, most }) {
    return [
      { readings: volts({ v: from.value }) },
      { readings: volts({ v: past(from.value, '-0.01') }) },
      { readings: volts({ v: none.value }) },
      { readings: volts({ v: past(none.value, '-0.01') }) },
      { readings: volts({ v: most.value }) },
      { readings: volts({ v: past(most.value, '0.01') }) },
      { readings: { v: untaken } },
      {},
    ];
  },
});
