import { ratedRangeVolts } from '../../calc/supply.ts';
import { judgement } from '../judgement.ts';
import { chose, past, untaken, volts } from '../probing.ts';
import { chosenOf, figureOf } from '../read.ts';
import { supplyOf } from '../restart/line.ts';
import { finding, say } from '../say.ts';

/**
 * Whether volts held while something tried to start, V under the key `v`, sign dropped: from the lower limit of the
 * nameplate's volts on, which `plate` names, by the phase that the class of the unit tells. 208/230 V where nobody says.
 */
export const voltsHeld = judgement({
  id: 'volts-held',
  semantics: 1,
  takes: ['readings', 'plate', 'unit'],
  limits: ['low', 'lowThree', 'high', 'ratedWithin', 'none'],
  outcomes: ['there', 'none', 'between', 'undecided'],
  run({ readings, plate, unit }, limits) {
    const three = chosenOf(unit, 'choice').includes('three-phase');
    const { range, source, assumed } = supplyOf(plate, limits, three ? 3 : 1);
    const value = figureOf(readings, 'v', 'V')?.abs() ?? null;
    const [shown, least, none] = [value ? say(value, 'V') : 'no reading', say(range.low, 'V', 1), limits.none];
    const outcome =
      value === null ? 'undecided' : value.gte(range.low) ? 'there' : value.lt(none.value) ? 'none' : 'between';
    const plainly = {
      there: `${shown} during the try: the volts held.`,
      none: `${shown}: nothing is there.`,
      between: `${shown} during the try, below ${least}: it sagged.`,
      undecided: 'The volts were not read.',
    }[outcome];
    const text = assumed ? `${plainly} A 208/230\u2009V nameplate is assumed.` : plainly;
    const where = outcome === 'none' ? none.source : source;
    return {
      outcome,
      findings: [
        finding({
          ...{ name: 'Volts during the try', reading: shown, limits: `${least} or more`, word: outcome },
          ...{ text, source: where },
        }),
      ],
    };
  },
  probe({ low, lowThree, ratedWithin, none }) {
    const low115 = ratedRangeVolts(115, ratedWithin.value).low;
    const [plate, unit] = [{ volts: chose('115') }, { choice: chose('three-phase') }];
    return [
      { readings: volts({ v: low.value }) },
      { readings: volts({ v: past(low.value, '-0.01') }) },
      { readings: volts({ v: lowThree.value }), unit },
      { readings: volts({ v: past(lowThree.value, '-0.01') }), unit },
      { readings: volts({ v: low115.toString() }), plate },
      { readings: volts({ v: past(low115.toString(), '-0.01') }), plate },
      { readings: volts({ v: none.value }) },
      { readings: volts({ v: past(none.value, '-0.01') }) },
      { readings: { v: untaken } },
      {},
    ];
  },
});
