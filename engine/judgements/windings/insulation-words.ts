/** What is said about an insulation test: before it, about a reading, and beside it. */
import type { Exact } from '../../calc/exact.ts';
import { bandOfMegohms, megohmsAt40 } from '../../calc/insulation.ts';
import { convert } from '../../calc/units.ts';
import { QUANTITIES } from '../../quantity.ts';
import type { Finding, Parts } from '../../schema.ts';
import { figureOf, type Reading } from '../read.ts';
import { finding, say } from '../say.ts';
import { type InsulationLimits, type Rule, type Standing, testVolts } from './insulation-rule.ts';

export const unknownState = finding({
  name: 'Before the test',
  reading: 'not told',
  word: 'missing',
  text: 'Nobody said whether the compressor is under vacuum and the electronics are unplugged. Don’t test before that is known.',
});
export const COLD = finding({
  name: 'Cold shell',
  reading: 'cold',
  word: 'warm first',
  text: 'Liquid refrigerant in a cold shell reads low. Warm it for 12 to 24 hours and repeat before any verdict.',
  source: 'common practice, no single source',
});
export const HEATER = finding({
  name: 'Crankcase heater',
  reading: 'connected',
  word: 'again without',
  text: 'The crankcase heater is still in the circuit. Take it off and repeat.',
  source: 'common practice, no single source',
});

export const METER = finding({
  name: 'Test voltage',
  reading: 'an ohmmeter’s',
  word: 'weaker',
  text: 'At an ohmmeter’s voltage no ground was found. An insulation test says more.',
  source: 'our setting',
});
export const LOW_IN_OHMS = finding({
  name: 'Insulation, both tries',
  reading: 'low in ohms, then enough',
  word: 'contradicts',
  text: 'An ohmmeter read low in the try before. A test that holds after it does not take that back: a senior.',
  source: 'our setting',
});
export const TWICE = finding({
  name: 'Insulation, both tries',
  reading: 'low',
  word: 'grounded',
  text: 'Low twice: grounded. Never energise it, tag it, and have a senior confirm.',
  source: 'a reciprocating compressor maker’s service handbook (secondary source)',
});

export function refuse(now: readonly string[], test: Parts | undefined, limits: InsulationLimits): Finding | null {
  const most = limits.testVolts;
  const volts = testVolts(test);
  const no = (reading: string, text: string, source: string): Finding =>
    finding({ name: 'Before the test', reading, word: 'refused', text, source });
  if (now.includes('vacuum')) {
    const text =
      'Never test or power a compressor under vacuum: its terminals arc at low pressure. Break the vacuum first.';
    return no('vacuum', text, 'a compressor maker’s rule confirmed by a training article (secondary source); physics');
  }
  if (now.includes('electronics')) {
    const text = 'Electronics are still connected: the test destroys them. Unplug them first.';
    return no('electronics', text, 'common practice, no single source');
  }
  if (volts?.gt(most.value)) {
    const text = `${say(volts, 'V')} is too much: ${say(most.value, 'V')} DC at most.`;
    return no(say(volts, 'V'), text, most.source);
  }
  return null;
}

export const allowed = ({ testVolts: most }: InsulationLimits): Finding =>
  finding({
    name: 'Before the test',
    reading: 'clear',
    limits: `${say(most.value, 'V')} DC at most`,
    word: 'go on',
    text: `Test with ${say(most.value, 'V')} DC at most, for one minute. Discharge the winding afterwards.`,
    source: most.source,
  });

export function said(name: string, reading: Reading, is: Standing, rule: Rule, limits: InsulationLimits): Finding {
  const shown = reading.kind === 'figure' ? say(reading.value, 'MΩ') : reading.kind === 'over' ? 'OL' : 'no reading';
  const [least, most] = [say(limits.scroll.value, 'MΩ'), say(limits.reciprocating.value, 'MΩ')];
  const any = rule.enough ? '' : ', whatever its kind';
  const limit = rule.enough ? `${rule.of} ${say(rule.enough.megohms, 'MΩ')}` : `${least} to ${most}, by kind`;
  const text = {
    missing: 'The insulation was not read.',
    low: `${shown} to ground is below ${rule.enough ? limit : least}${any}. It counts when it is low twice, at its own harness, heater off.`,
    open: `${shown} to ground is enough for a scroll and low for a reciprocating compressor. Which one it is decides.`,
    enough: `${shown} to ground is not below ${rule.enough ? limit : most}${any}.`,
  }[is];
  return finding({
    name,
    reading: shown,
    limits: rule.enough ? `${limit} or more` : limit,
    word: is,
    text,
    source: rule.source,
  });
}

export function banded(megohms: Exact, { good, fair, watch }: InsulationLimits): Finding {
  const band = bandOfMegohms(megohms, good.value, fair.value, watch.value);
  const text = {
    good: `Above ${say(good.value, 'MΩ')}: the trade calls it good.`,
    fair: `Between ${say(fair.value, 'MΩ')} and ${say(good.value, 'MΩ')}: the trade calls it fair.`,
    watch: `Between ${say(watch.value, 'MΩ')} and ${say(fair.value, 'MΩ')}: the trade watches it.`,
    suspect: `Below ${say(watch.value, 'MΩ')}: the trade calls it suspect.`,
  }[band];
  return finding({
    name: 'Trade’s band',
    reading: say(megohms, 'MΩ'),
    word: band,
    text: `${text} The band advises and decides nothing.`,
    source: good.source,
  });
}

/**
 * IEEE 43's correction, for motors that aren't filled with refrigerant: it advises. A temperature that no winding has is
 * a slip and says nothing.
 */
export function corrected(
  megohms: Exact,
  temperature: Parts | undefined,
  { at40 }: InsulationLimits,
): readonly Finding[] {
  const fahrenheit = figureOf(temperature, 'winding', '°F');
  const { from, to } = QUANTITIES.temperature;
  if (!fahrenheit || fahrenheit.lt(from) || fahrenheit.gt(to)) return [];
  const there = megohmsAt40(megohms, convert(fahrenheit, '°F', '°C'));
  const word = there.lt(at40.value) ? 'below' : 'enough';
  return [
    finding({
      name: 'At 40\u2009°C',
      reading: say(there, 'MΩ', 2),
      limits: `${say(at40.value, 'MΩ')} or more`,
      word,
      text: `Read at ${say(fahrenheit, '°F', 1)}, it would be ${say(there, 'MΩ', 2)} at 40\u2009°C. The correction advises and decides nothing.`,
      source: `${at40.source}; halving for every 10\u2009°C, value from memory`,
    }),
  ];
}
