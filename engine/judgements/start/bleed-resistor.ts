import { Exact } from '../../calc/exact.ts';
import { ohmsFinding, sayOhms } from '../control/ohm-band.ts';
import { judgement } from '../judgement.ts';
import { over, past, reads, untaken } from '../probing.ts';
import { readingOf } from '../read.ts';
import { say } from '../say.ts';

/**
 * The bleed resistor of a start capacitor, Ω, one end off. Read across the capacitor it looks like a leak of the part:
 * that reading never condemns either of them. Open, the capacitor keeps its charge. Band: common practice.
 */
export const bleedResistor = judgement({
  id: 'bleed-resistor',
  semantics: 1,
  takes: ['readings'],
  limits: ['low', 'high'],
  outcomes: ['good', 'open', 'between', 'one-end-off', 'undecided'],
  run({ readings }, { low, high }) {
    const alone = readingOf(readings, 'bleed', 'Ω');
    const across = readingOf(readings, 'across', 'Ω');
    const band = `${say(new Exact(low.value).div(1000), 'kΩ')} to ${say(new Exact(high.value).div(1000), 'kΩ')}`;
    const line = (word: string, text: string) => [ohmsFinding('Bleed resistor', alone, word, text, low, band)];
    const shown = sayOhms(alone);
    if (alone.kind === 'over') {
      const text = 'The bleed resistor reads OL, one end off. It is open, and the capacitor keeps its charge.';
      return { outcome: 'open', findings: line('open', text) };
    }
    if (alone.kind === 'figure') {
      const good = alone.value.gte(low.value) && alone.value.lte(high.value);
      const text = good
        ? `The bleed resistor reads ${shown}, one end off, inside ${band}.`
        : `The bleed resistor reads ${shown}, one end off, outside ${band}. Compare its colour code.`;
      return { outcome: good ? 'good' : 'between', findings: line(good ? 'good' : 'between', text) };
    }
    if (across.kind === 'none')
      return { outcome: 'undecided', findings: line('missing', 'The bleed resistor was not read.') };
    const text = `Across the capacitor it reads ${sayOhms(across)}. The resistor reads so there: it condemns nothing. Take one end off.`;
    return { outcome: 'one-end-off', findings: [ohmsFinding('Bleed resistor', across, 'no verdict', text, low, band)] };
  },
  probe: ({ low, high }) => [
    { readings: reads({ bleed: low.value }, 'Ω') },
    { readings: reads({ bleed: high.value }, 'Ω') },
    { readings: reads({ bleed: past(low.value, '-0.001') }, 'Ω') },
    { readings: reads({ bleed: past(high.value, '0.001') }, 'Ω') },
    { readings: { bleed: over } },
    { readings: { bleed: untaken, ...reads({ across: low.value }, 'Ω') } },
    { readings: { bleed: untaken } },
    {},
  ],
});
