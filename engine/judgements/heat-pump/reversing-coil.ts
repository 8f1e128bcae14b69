import { Exact } from '../../calc/exact.ts';
import { ohmsFinding, sayOhms } from '../control/ohm-band.ts';
import { judgement } from '../judgement.ts';
import { over, past, reads, untaken } from '../probing.ts';
import { readingOf } from '../read.ts';
import { say, sayRange } from '../say.ts';

/** The 24 V coil of a reversing valve in Ω, one wire off (`readings`, part `solenoid`). */
export const reversingCoil = judgement({
  id: 'reversing-coil',
  semantics: 1,
  takes: ['readings'],
  limits: ['shorted', 'low', 'high'],
  outcomes: ['good', 'open', 'shorted', 'between', 'undecided'],
  run({ readings }, { shorted, low, high }) {
    const reading = readingOf(readings, 'solenoid', 'Ω');
    const ohms = reading.kind === 'figure' ? reading.value.abs() : null;
    const range = sayRange({ low: new Exact(low.value), high: new Exact(high.value) }, 'Ω', 4, 0);
    const outcome =
      reading.kind === 'over'
        ? 'open'
        : ohms === null
          ? 'undecided'
          : ohms.lt(shorted.value)
            ? 'shorted'
            : ohms.gte(low.value) && ohms.lte(high.value)
              ? 'good'
              : 'between';
    const shown = sayOhms(reading);
    const text = {
      good: `The solenoid reads ${shown}, inside ${range}.`,
      open: 'The solenoid reads OL. It is open.',
      shorted: `The solenoid reads ${shown}, under ${say(shorted.value, 'Ω')}. It is shorted and blows the control fuse.`,
      between: `The solenoid reads ${shown}, outside ${range}. That alone condemns nothing.`,
      undecided: 'The solenoid was not read.',
    }[outcome];
    const word = outcome === 'undecided' ? 'missing' : outcome;
    const limits = `${range}; shorted under ${say(shorted.value, 'Ω')}`;
    return { outcome, findings: [ohmsFinding('Reversing valve’s solenoid', reading, word, text, low, limits)] };
  },
  probe: ({ shorted, low, high }) => [
    { readings: reads({ solenoid: 18 }, 'Ω') },
    ...[shorted, low, high].flatMap(({ value }) =>
      ['-0.001', '0', '0.001'].map((by) => ({ readings: reads({ solenoid: past(value, by) }, 'Ω') })),
    ),
    { readings: { solenoid: over } },
    { readings: { solenoid: untaken } },
    {},
  ],
});
