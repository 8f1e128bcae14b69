/** Readings that come to each cause, and to both sides of each limit: written as what they should come to. */
import { Exact, type Figure } from '../../calc/exact.ts';
import { bubbleFahrenheit, dewFahrenheit } from '../../calc/refrigerant/superheat.ts';
import type { Parts } from '../../schema.ts';
import { chose, past, read, untaken } from '../probing.ts';
import type { CircuitLimits } from './circuit.ts';

type Given = Partial<Record<'which' | 'readings' | 'ready', Parts>>;
/** What a line of readings comes to, in °F. */
interface Meant {
  readonly under: Figure;
  readonly over: Figure;
  readonly superheat: Figure;
  readonly subcooling: Figure;
}
const RETURN = 75;
const OUTDOOR = 90;

/** Gauges of R-410A, in tenths of a psi, that come nearest to what is meant; the lines then fit to the tenth. */
const readingsOf = ({ under, over, superheat, subcooling }: Meant): Parts => {
  const [suction, liquid] = [
    psigAt(dewFahrenheit, new Exact(RETURN).minus(under)),
    psigAt(bubbleFahrenheit, new Exact(OUTDOOR).plus(over)),
  ];
  return {
    suction: read(suction.psig, 'psig'),
    liquid: read(liquid.psig, 'psig'),
    suctionLine: read(suction.fahrenheit.plus(superheat), '°F'),
    liquidLine: read(liquid.fahrenheit.minus(subcooling), '°F'),
    return: read(suction.fahrenheit.plus(under), '°F'),
    wb: read(63, '°F'),
    outdoor: read(liquid.fahrenheit.minus(over), '°F'),
  };
};
type Curve = typeof dewFahrenheit;
function psigAt(curve: Curve, wanted: Exact): { psig: Exact; fahrenheit: Exact } {
  let [low, high] = [new Exact(20), new Exact(600)];
  while (high.minus(low).gt('0.1')) {
    const middle = low.plus(high).div(2).toDecimalPlaces(1);
    const at = curve('R-410A', middle);
    if (at.ok && at.value.gt(wanted)) high = middle;
    else low = middle;
  }
  const at = curve('R-410A', low);
  return { psig: low, fahrenheit: (at.ok ? at.value : wanted).toDecimalPlaces(1) };
}

export function probeCircuit(limits: CircuitLimits): Given[] {
  const which: Parts = { refrigerant: chose('r-410a'), metering: chose('txv') };
  const ready: Parts = { ok: chose('yes') };
  const good: Meant = { under: 35, over: 22, superheat: 10, subcooling: 11 };
  const at = (more: Partial<Meant>): Given => ({ which, readings: readingsOf({ ...good, ...more }), ready });
  const normal = readingsOf(good);
  const [low, high] = [{ under: 50 }, { under: 20 }] as const;
  const causes: Partial<Meant>[] = [
    {},
    { ...low, over: 8, superheat: 25, subcooling: 3 },
    { ...low, superheat: 25, subcooling: 18 },
    { ...low, superheat: 3 },
    { ...high, over: 40, subcooling: 20 },
    { ...high, over: 40 },
    { ...high, over: 8, subcooling: 3 },
    { ...high, superheat: 3, subcooling: 3 },
    { superheat: 20 },
    { superheat: 3 },
    { over: 40 },
  ];
  /** As far beside a limit as its doubt reaches, and a tenth more. */
  const sides = (key: keyof Meant, ...ends: readonly { value: string }[]): Given[] =>
    ends.flatMap(({ value }) =>
      [past(value, new Exact(limits.doubt.value).neg()), past(value, limits.doubt.value)].flatMap((edge) =>
        ['-0.1', '0', '0.1'].map((by) => at({ [key]: edge.plus(by) })),
      ),
    );
  return [
    ...causes.map(at),
    ...sides('under', limits.suctionLow, limits.suctionHigh),
    ...sides('over', limits.headLow, limits.headHigh),
    ...sides('superheat', limits.valveLow, limits.valveHigh),
    ...sides('subcooling', limits.subcoolingLow, limits.subcoolingHigh),
    { which: { ...which, target: read(11, 'Δ°F') }, readings: normal, ready },
    { which: { refrigerant: chose('r-410a'), metering: chose('fixed') }, readings: normal, ready },
    { which: { refrigerant: chose('r-32'), metering: chose('txv') }, readings: normal, ready },
    { which: { refrigerant: chose('other'), metering: chose('txv') }, readings: normal, ready },
    { which, readings: { ...normal, suction: untaken }, ready },
    { which, readings: { ...normal, return: untaken }, ready },
    { which, readings: { ...normal, outdoor: untaken }, ready },
    { which, readings: { ...normal, suctionLine: untaken }, ready },
    { which, readings: normal, ready: { ok: chose('no') } },
    { which, readings: readingsOf({ ...good, superheat: 20 }) },
    { which, readings: normal },
    { readings: normal, ready },
    {},
  ];
}
