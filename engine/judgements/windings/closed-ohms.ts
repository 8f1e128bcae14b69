import { ohmsFinding, sayOhms } from '../control/ohm-band.ts';
import { judgement } from '../judgement.ts';
import { over, past, read, untaken } from '../probing.ts';
import { readingOf } from '../read.ts';
import { say } from '../say.ts';

/** Whether a protector outside the shell is closed, Ω under the key `overload`, cold: near zero is closed, OL is open. */
export const closedOhms = judgement({
  id: 'closed-ohms',
  semantics: 1,
  takes: ['readings'],
  limits: ['closed'],
  outcomes: ['closed', 'open', 'between', 'undecided'],
  run({ readings }, { closed }) {
    const reading = readingOf(readings, 'overload', 'Ω');
    const outcome =
      reading.kind === 'figure'
        ? reading.value.abs().lte(closed.value)
          ? 'closed'
          : 'between'
        : reading.kind === 'over'
          ? 'open'
          : 'undecided';
    const shown = sayOhms(reading);
    const text = {
      closed: `The overload reads ${shown}: closed.`,
      open: 'The overload reads OL. Cold, that is open.',
      between: `The overload reads ${shown}, neither closed nor open. Zero the leads and repeat.`,
      undecided: 'The overload was not read.',
    }[outcome];
    return {
      outcome,
      findings: [ohmsFinding('Overload, cold', reading, outcome, text, closed, `${say(closed.value, 'Ω')} or less`)],
    };
  },
  probe: ({ closed }) => [
    { readings: { overload: read(closed.value, 'Ω') } },
    { readings: { overload: read(past(closed.value, '0.001'), 'Ω') } },
    { readings: { overload: over } },
    { readings: { overload: untaken } },
    {},
  ],
});
