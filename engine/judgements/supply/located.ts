import { Exact, type Range } from '../../calc/exact.ts';
import type { Parts } from '../../schema.ts';
import type { Limit } from '../judgement.ts';
import { judgement } from '../judgement.ts';
import { chose, past, volts } from '../probing.ts';
import { chosenOf, figureOf } from '../read.ts';
import { supplyOf } from '../restart/line.ts';
import { finding, say, sayRange } from '../say.ts';

/**
 * Where the volts of a supply are lost, once one reading was out: the repeat at the unit, the line side of its means, and
 * across the means' closed poles. `readings` holds the choice `load` (`runs`, `starts`, `idle`) and V, sign dropped:
 * `unit` the lowest at the unit, `rest` the same with nothing drawing, `feed` at the line side of the means, `p1` to `p3`
 * across its poles. A drop shows only while something draws; what is out on both sides is out before the means.
 */
export const supplyLocated = judgement({
  id: 'supply-located',
  semantics: 1,
  takes: ['readings', 'plate', 'unit'],
  limits: ['low', 'lowThree', 'high', 'ratedWithin', 'sag'],
  outcomes: ['feed', 'means', 'between', 'holds', 'undecided'],
  run({ readings, plate, unit }, limits) {
    const three = chosenOf(unit, 'choice').includes('three-phase');
    const { range, source, assumed } = supplyOf(plate, limits, three ? 3 : 1);
    const at = (key: string): Exact | null => figureOf(readings, key, 'V')?.abs() ?? null;
    const [here, feed] = [at('unit'), at('feed')];
    const draws = chosenOf(readings, 'load').some((load) => load !== 'idle');
    const bad = (v: Exact): boolean => isOut(v, range) || (draws && sags(v, at('rest'), limits.sag));
    const poles = draws ? ['p1', 'p2', 'p3'].flatMap((key) => at(key) ?? []) : [];
    const lost = poles.reduce((sum, v) => sum.plus(v), new Exact(0));
    const outcome = (() => {
      if (here === null) return 'undecided';
      if (!bad(here)) return 'holds';
      if (feed !== null && bad(feed)) return 'feed';
      // With what its poles lose given back, the unit would have its volts.
      if (!bad(here.plus(lost))) return 'means';
      return feed !== null && draws ? 'between' : 'undecided';
    })();
    const shown = here ? say(here, 'V') : 'no reading';
    const before = feed ? `, ${say(feed, 'V')} before the means` : '';
    const plainly = {
      feed: `${shown} at the unit${before}: out before the means. Panel, feeder or utility.`,
      means: `${shown} at the unit, and ${say(lost, 'V')} across the poles of its means: lost there.`,
      between: `${shown} at the unit${before}: lost in the means or between it and the unit. Lugs, wires.`,
      holds: `${shown} at the unit this time, inside its limits: one reading was out, and it doesn’t repeat.`,
      undecided: here
        ? `${shown} at the unit again. Where it is lost was not read while something drew.`
        : 'It was not read again.',
    }[outcome];
    return {
      outcome,
      findings: [
        finding({
          ...{ name: 'Where it is lost', reading: shown, limits: sayRange(range, 'V', 1, 0), word: outcome, source },
          text: assumed ? `${plainly} A 208/230\u2009V nameplate is assumed.` : plainly,
        }),
      ],
    };
  },
  probe({ low, lowThree, high, sag }) {
    const load = (is: string): Parts => ({ load: chose(is) });
    const under = past(low.value, '-0.01');
    const three = { choice: chose('three-phase') };
    const fallen = new Exact(240).times(new Exact(100).minus(sag.value)).div(100);
    const runs = (of: Readonly<Record<string, string>>) => ({ readings: { ...load('runs'), ...volts(of) } });
    return [
      runs({ unit: low.value, feed: '238' }),
      runs({ unit: under.toFixed(), feed: low.value }),
      runs({ unit: under.toFixed(), feed: under.toFixed() }),
      runs({ unit: under.toFixed(), p1: '0', p2: '0' }),
      runs({ unit: under.toFixed(), p1: '0.01' }),
      runs({ unit: under.toFixed(), feed: '238', p1: '0.01' }),
      runs({ unit: under.toFixed(), feed: '238', p1: '0' }),
      runs({ unit: under.toFixed() }),
      runs({ unit: past(high.value, '0.01').toFixed(), feed: past(high.value, '0.01').toFixed() }),
      runs({ unit: past(high.value, '0.01').toFixed(), feed: high.value }),
      runs({ rest: '240', unit: fallen.toFixed(), feed: '238' }),
      runs({ rest: '240', unit: past(fallen, '-0.01').toFixed(), feed: '238' }),
      { readings: { ...load('starts'), ...volts({ unit: '188', feed: '236' }) } },
      { readings: { ...load('idle'), ...volts({ unit: '188', feed: '236', p1: '40' }) } },
      { readings: { ...load('idle'), ...volts({ unit: '188', feed: '188' }) } },
      { readings: volts({ unit: '188', feed: '236', p1: '40' }) },
      { ...runs({ unit: lowThree.value, feed: '238' }), unit: three },
      { ...runs({ unit: past(lowThree.value, '-0.01').toFixed(), feed: '238' }), unit: three },
      { ...runs({ unit: '105', feed: '118' }), plate: { volts: chose('115') } },
      { ...runs({ unit: '102', feed: '118' }), plate: { volts: chose('115') } },
      { readings: load('runs') },
      {},
    ];
  },
});

const isOut = (v: Exact, { low, high }: Range): boolean => v.lt(low) || v.gt(high);
/** Fallen by more than the share, from what it was with nothing drawing. */
const sags = (v: Exact, rest: Exact | null, { value }: Limit): boolean =>
  rest?.gt(0) === true && rest.minus(v).times(100).gt(rest.times(value));
