import { Exact, type Range, within } from '../../calc/exact.ts';
import { ratedRangeVolts } from '../../calc/supply.ts';
import type { Parts } from '../../schema.ts';
import { judgement, type Limit } from '../judgement.ts';
import { chose, past, untaken, volts } from '../probing.ts';
import { chosenOf, figureOf } from '../read.ts';
import { supplyOf } from '../restart/line.ts';
import { finding, say, sayRange } from '../say.ts';

const LIMIT_NAMES = ['low', 'lowThree', 'high', 'ratedWithin', 'none', 'leg', 'lowest', 'highest'] as const;
type Limits = Readonly<Record<(typeof LIMIT_NAMES)[number], Limit>>;
interface Bands {
  readonly ranges: readonly Range[];
  readonly source: string;
  readonly assumed: boolean;
  /** Whether what it asks for is known at all. */
  readonly known: boolean;
}

/**
 * Whether a motor or a board has the volts of its nameplate, V under the key `v`, sign dropped. `plate` says what is
 * printed, `unit` the class of a unit outdoors, of which 208/230 V is taken where nobody read it. Where neither is known,
 * one leg to neutral or two legs may be right: what reads like either is undecided, since one leg may be what is left of
 * two. Volts that are neither those nor nothing are a lost leg or a loose joint.
 */
export const fedVolts = judgement({
  id: 'fed-volts',
  semantics: 2,
  takes: ['readings', 'plate', 'unit'],
  limits: LIMIT_NAMES,
  outcomes: ['there', 'none', 'between', 'undecided'],
  run({ readings, plate, unit }, limits) {
    const value = figureOf(readings, 'v', 'V')?.abs() ?? null;
    const { ranges, source, assumed, known } = bandsOf(plate, unit, limits);
    const shown = value ? say(value, 'V') : 'no reading';
    const right = ranges.map((range) => sayRange(range, 'V', 1, 0)).join(' or ');
    const tooMuch = value !== null && ranges.every(({ high }) => value.gt(high));
    const outcome =
      value === null
        ? 'undecided'
        : ranges.some((range) => within(value, range))
          ? known
            ? 'there'
            : 'undecided'
          : value.lt(limits.none.value)
            ? 'none'
            : 'between';
    const plainly = {
      there: `${shown}: volts are there.`,
      none: `${shown}: nothing is there.`,
      between: `${shown} is neither ${right} nor nothing. ${tooMuch ? 'That is too much for its nameplate' : 'A lost leg or a loose joint reads so'}.`,
      undecided: value
        ? `${shown} may be what it asks for, or ${value.gt(ranges[0]?.high ?? 0) ? 'too much for a motor of one leg' : 'one leg of two'}. Without the motor’s own nameplate nobody knows which.`
        : 'The volts were not read.',
    }[outcome];
    const text = assumed ? `${plainly} A 208/230\u2009V nameplate is assumed.` : plainly;
    return {
      outcome,
      findings: [
        finding({
          ...{ name: 'Volts', reading: shown, limits: `${right}, none under ${say(limits.none.value, 'V')}` },
          ...{ word: outcome, text, source: outcome === 'none' ? limits.none.source : source },
        }),
      ],
    };
  },
  probe(limits) {
    const { low, lowThree, high, ratedWithin, none, leg, lowest, highest } = limits;
    const [plate, two, unit] = [{ volts: chose('115') }, { volts: chose('208/230') }, { choice: chose('three-phase') }];
    const psc = { choice: chose('psc') };
    const share = (rated: string) => ratedRangeVolts(rated, ratedWithin.value);
    const [l115, l120, l208, l240] = [share('115'), share(leg.value), share(lowest.value), share(highest.value)];
    return [
      ...[low.value, past(low.value, '-0.01'), high.value, past(high.value, '0.01')].flatMap((v) => [
        { readings: volts({ v }), unit: psc },
        { readings: volts({ v }), plate: two },
      ]),
      ...[lowThree.value, past(lowThree.value, '-0.01')].map((v) => ({ readings: volts({ v }), unit })),
      ...[l115.low, l115.high].map((v) => ({ readings: volts({ v: v.toString() }), plate })),
      ...[past(l115.low.toString(), '-0.01'), past(l115.high.toString(), '0.01')].map((v) => ({
        readings: volts({ v }),
        plate,
      })),
      ...[l120.low, l120.high, l208.low, l240.high].map((v) => ({ readings: volts({ v: v.toString() }) })),
      ...[
        ...[past(l120.low.toString(), '-0.01'), past(l120.high.toString(), '0.01')],
        ...[past(l208.low.toString(), '-0.01'), past(l240.high.toString(), '0.01')],
      ].map((v) => ({ readings: volts({ v }) })),
      { readings: volts({ v: none.value }) },
      { readings: volts({ v: past(none.value, '-0.01') }) },
      { readings: { v: untaken } },
      {},
    ];
  },
});

function bandsOf(plate: Parts | undefined, unit: Parts | undefined, limits: Limits): Bands {
  const classes = chosenOf(unit, 'choice');
  const { range, source, assumed } = supplyOf(plate, limits, classes.includes('three-phase') ? 3 : 1);
  if (!assumed || classes.length > 0) return { ranges: [range], source, assumed, known: true };
  const share = (rated: Limit): Range => ratedRangeVolts(new Exact(rated.value), limits.ratedWithin.value);
  const two = { low: share(limits.lowest).low, high: share(limits.highest).high };
  return { ranges: [share(limits.leg), two], source: limits.ratedWithin.source, assumed: false, known: false };
}
