import { Exact } from '../../calc/exact.ts';
import { ohmsFinding, sayOhms } from '../control/ohm-band.ts';
import { judgement } from '../judgement.ts';
import { chose, over, past, reads } from '../probing.ts';
import { chosenOf, confirmed, readingOf } from '../read.ts';
import { sayRange } from '../say.ts';

/**
 * A PTC start device, cold, Ω. OL or a rattle (`ok` yes, or `shaken` that rattles) is a failed one. Its band is a value from memory, so it only advises:
 * outside it the reading is noted. Hot by design, it has to cool before it means anything.
 */
export const ptc = judgement({
  id: 'ptc',
  semantics: 2,
  takes: ['readings', 'rattles'],
  limits: ['low', 'high'],
  outcomes: ['good', 'failed', 'between', 'undecided'],
  run({ readings, rattles }, { low, high }) {
    const reading = readingOf(readings, 'ptc', 'Ω');
    const band = sayRange({ low: new Exact(low.value), high: new Exact(high.value) }, 'Ω', 4, 0);
    const shown = sayOhms(reading);
    const line = (word: string, text: string) => [ohmsFinding('PTC', reading, word, text, low, `${band}, cold`)];
    if (confirmed(rattles) || chosenOf(rattles, 'shaken').includes('rattles'))
      return { outcome: 'failed', findings: line('failed', 'The PTC rattles. It is broken.') };
    if (reading.kind !== 'figure') {
      if (reading.kind === 'none') return { outcome: 'undecided', findings: line('missing', 'The PTC was not read.') };
      return { outcome: 'failed', findings: line('failed', 'The PTC reads OL, cold. It is open.') };
    }
    if (reading.value.gte(low.value) && reading.value.lte(high.value))
      return { outcome: 'good', findings: line('good', `The PTC reads ${shown}, cold, inside ${band}.`) };
    const text = `The PTC reads ${shown}, outside ${band}. Let it cool, read it again. The band only advises.`;
    return { outcome: 'between', findings: line('between', text) };
  },
  probe: ({ low, high }) => [
    { readings: reads({ ptc: low.value }, 'Ω') },
    { readings: reads({ ptc: high.value }, 'Ω') },
    { readings: reads({ ptc: past(low.value, '-0.001') }, 'Ω') },
    { readings: reads({ ptc: past(high.value, '0.001') }, 'Ω') },
    { readings: { ptc: over } },
    { readings: reads({ ptc: low.value }, 'Ω'), rattles: { ok: chose('yes') } },
    { readings: reads({ ptc: low.value }, 'Ω'), rattles: { ok: chose('no') } },
    { readings: reads({ ptc: low.value }, 'Ω'), rattles: { shaken: chose('rattles') } },
    { readings: reads({ ptc: low.value }, 'Ω'), rattles: { shaken: chose('quiet') } },
    {},
  ],
});
