import { judgement } from '../judgement.ts';
import { past, untaken, volts } from '../probing.ts';
import { figureOf } from '../read.ts';
import { finding, say } from '../say.ts';

/** Where volts of a 24 V circuit are read: at the strip, after each switch, at the coil, at the indoor board, across a switch. */
const PLACES = [
  ...['start', 'delay', 'lp', 'hp', 'discharge', 'coil', 'rc', 'idle', 'loaded', 'yc', 'float', 'v', 'solenoid'],
] as const;

/** Across a switch that is closed. */
const ACROSS = { delay: '0.1', lp: '0.1', hp: '0.1', discharge: '0.1', float: '0.1' };

/**
 * Whether a control circuit shows more volts than it can have of itself, V, sign dropped: then another circuit feeds it, and
 * nothing that was read of it says anything of a switch or a coil.
 */
export const foreignVolts = judgement({
  id: 'foreign-volts',
  semantics: 1,
  takes: ['readings'],
  limits: ['most'],
  outcomes: ['own', 'foreign', 'undecided'],
  run({ readings }, { most }) {
    const read = PLACES.flatMap((key) => figureOf(readings, key, 'V')?.abs() ?? []);
    const [highest = null] = read.sort((a, b) => b.cmp(a));
    const outcome = highest === null ? 'undecided' : highest.gt(most.value) ? 'foreign' : 'own';
    const shown = highest ? say(highest, 'V') : 'no reading';
    const text = {
      own: `${shown} at most: as a 24\u2009V circuit has it.`,
      foreign: `${shown} on a 24\u2009V circuit: line volts feed it somewhere. Hands out, both units off.`,
      undecided: 'No volts of the control circuit were read.',
    }[outcome];
    const limits = `${say(most.value, 'V')} or less`;
    const name = 'Highest on the control circuit';
    return { outcome, findings: [finding({ name, reading: shown, limits, word: outcome, text, source: most.source })] };
  },
  probe: ({ most }) => [
    { readings: volts({ ...Object.fromEntries(PLACES.map((key) => [key, '25.6'])), ...ACROSS }) },
    ...PLACES.map((key) => ({ readings: volts({ [key]: past(most.value, '0.01') }) })),
    { readings: volts({ start: most.value, coil: '25.1' }) },
    { readings: volts({ start: '25.1', coil: past(most.value, '0.01').neg() }) },
    { readings: { start: untaken } },
    {},
  ],
});
