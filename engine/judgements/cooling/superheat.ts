import { Exact } from '../../calc/exact.ts';
import { superheat as superheatOf, targetSuperheat } from '../../calc/refrigerant/superheat.ts';
import type { Parts } from '../../schema.ts';
import { judgement, type Limit } from '../judgement.ts';
import { chose, past, read, untaken } from '../probing.ts';
import { chosenOf, figureOf } from '../read.ts';
import { say } from '../say.ts';
import { around, judgeLine, LINE_OUTCOMES, type Target } from './line-target.ts';
import { refrigerantOf, saturationOf } from './refrigerant.ts';

const LIMITS = ['within', 'valveLow', 'valveHigh', 'orificeLeast', 'impossible'] as const;
type SuperheatLimits = Readonly<Record<(typeof LIMITS)[number], Limit>>;

/**
 * Superheat against its target. Takes `refrigerant`, suction psig (or the saturation °F that the gauge shows) and line
 * °F, and for the target the label's figure, else what meters (txv, fixed) with the return's wet-bulb and outdoor °F.
 */
export const superheat = judgement({
  id: 'superheat',
  semantics: 1,
  takes: ['refrigerant', 'readings', 'target'],
  limits: LIMITS,
  outcomes: LINE_OUTCOMES,
  run({ refrigerant, readings, target }, limits) {
    const name = refrigerantOf(refrigerant);
    return judgeLine({
      name: 'Superheat',
      refrigerant: name,
      saturation: saturationOf(readings, name, 'suction'),
      line: {
        fahrenheit: figureOf(readings, 'line', '°F'),
        missing: 'The suction line’s temperature was not read.',
      },
      difference: (saturation, line) => superheatOf(line, saturation),
      target: superheatTarget(target, limits),
      impossible: limits.impossible,
    });
  },
  probe: (limits) => probeReadings(limits),
});

/** What it should be: the label’s figure, else by what meters. */
export function superheatTarget(
  target: Parts | undefined,
  limits: Pick<SuperheatLimits, 'within' | 'valveLow' | 'valveHigh' | 'orificeLeast'>,
): Target {
  const label = figureOf(target, 'target', 'Δ°F');
  if (label !== null) return { range: around(label, limits.within), source: 'the equipment’s label' };
  const [metering] = chosenOf(target, 'metering');
  if (metering === 'txv')
    return {
      range: { low: new Exact(limits.valveLow.value), high: new Exact(limits.valveHigh.value) },
      source: limits.valveLow.source,
    };
  if (metering !== 'fixed')
    return { range: null, text: 'What meters the refrigerant is not known: look for its target.' };
  const [wet, outdoor] = [figureOf(target, 'wb', '°F'), figureOf(target, 'outdoor', '°F')];
  if (wet === null || outdoor === null)
    return {
      range: null,
      text: 'A fixed orifice needs the return’s wet-bulb and the outdoor temperature for its target.',
    };
  const computed = targetSuperheat(wet, outdoor);
  if (computed.lt(limits.orificeLeast.value)) {
    const text = `The target would be ${say(computed, '°F')}. Under ${say(limits.orificeLeast.value, '°F')} no charge is judged by it.`;
    return { range: null, text };
  }
  return { range: around(computed, limits.within), source: limits.orificeLeast.source };
}

function probeReadings(limits: SuperheatLimits): Partial<Record<'refrigerant' | 'readings' | 'target', Parts>>[] {
  const saturation = 45;
  const at = (superheat: Exact): Parts => ({
    saturation: read(saturation, '°F'),
    line: read(superheat.plus(saturation), '°F'),
  });
  const label: Parts = { target: read(10, 'Δ°F') };
  const valve: Parts = { metering: chose('txv') };
  const both = (low: Exact, high: Exact, target: Parts) =>
    [low, low.minus('0.1'), high, high.plus('0.1')].map((value) => ({ readings: at(value), target }));
  const { low, high } = around(new Exact(10), limits.within);
  // 3·WB − 80 − DB = 2·target, so that the target lies on its least with 95 °F outside.
  const wet = new Exact(limits.orificeLeast.value).times(2).plus(175).div(3);
  const fixed = (wb: Exact): Parts => ({ metering: chose('fixed'), wb: read(wb, '°F'), outdoor: read(95, '°F') });
  const gauge: Parts = { suction: read(130, 'psig'), line: read(55, '°F') };
  return [
    ...both(low, high, label),
    ...both(new Exact(limits.valveLow.value), new Exact(limits.valveHigh.value), valve),
    { readings: at(new Exact(10)), target: fixed(past(wet, '0.1')) },
    { readings: at(new Exact(10)), target: fixed(past(wet, '-0.1')) },
    { readings: at(new Exact(limits.impossible.value).neg()), target: label },
    { readings: at(new Exact(limits.impossible.value).neg().minus('0.1')), target: label },
    { refrigerant: { refrigerant: chose('r-410a') }, readings: gauge, target: label },
    { refrigerant: { refrigerant: chose('r-32') }, readings: gauge, target: label },
    { refrigerant: { refrigerant: chose('r-410a') }, readings: { ...gauge, suction: untaken }, target: label },
    {
      refrigerant: { refrigerant: chose('r-410a') },
      readings: { ...gauge, suction: read(700, 'psig') },
      target: label,
    },
    { readings: gauge, target: label },
    { refrigerant: { refrigerant: chose('r-410a') }, readings: gauge },
    {},
  ];
}
