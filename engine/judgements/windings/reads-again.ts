import { ohmsFinding, sayOhms } from '../control/ohm-band.ts';
import { judgement } from '../judgement.ts';
import { over, past, read, untaken } from '../probing.ts';
import { readingOf } from '../read.ts';
import { say } from '../say.ts';

/**
 * Whether what read OL on a hot motor reads again when it has cooled, Ω under the key `pair`: a winding, or a protector in
 * its way. Anything up to the limit is closed again; more is a bad contact or a probe on lacquer, and decides nothing.
 */
export const readsAgain = judgement({
  id: 'reads-again',
  semantics: 1,
  takes: ['readings'],
  limits: ['most'],
  outcomes: ['reads', 'open', 'undecided'],
  run({ readings }, { most }) {
    const reading = readingOf(readings, 'pair', 'Ω');
    const reads = reading.kind === 'figure' && reading.value.abs().lte(most.value);
    const outcome = reads ? 'reads' : reading.kind === 'over' ? 'open' : 'undecided';
    const shown = sayOhms(reading);
    const text = {
      reads: `What read OL reads ${shown} again: the overload has closed.`,
      open: 'It still reads OL: the overload has not closed, or it was a wire or a winding all along.',
      undecided:
        reading.kind === 'figure'
          ? `${shown} is no winding and no closed overload. Bare metal, zeroed leads, and read it again.`
          : 'It was not read again.',
    }[outcome];
    return {
      outcome,
      findings: [ohmsFinding('Read again, cooled', reading, outcome, text, most, `${say(most.value, 'Ω')} or less`)],
    };
  },
  probe: ({ most }) => [
    { readings: { pair: read(3.6, 'Ω') } },
    { readings: { pair: read(most.value, 'Ω') } },
    { readings: { pair: read(past(most.value, '0.001'), 'Ω') } },
    { readings: { pair: over } },
    { readings: { pair: untaken } },
    {},
  ],
});
