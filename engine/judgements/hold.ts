import { energyJoules, holdSeconds, peakVolts, peakWatts, secondsTo, tauSeconds } from '../calc/discharge.ts';
import { Exact } from '../calc/exact.ts';
import { pictured } from './figures.ts';
import { judgement } from './judgement.ts';
import { print, read } from './probing.ts';
import { figureOf, printOf } from './read.ts';
import { finding, say } from './say.ts';

/**
 * How long to hold the discharge resistor on each pair, in s, from the worst case √2 × the part's AC rating down to the
 * accepted residual. The larger section counts. Any other capacitor is held as one of unknown rating, a start capacitor
 * longer: 227 µF at 467 V still holds 51 V after 10 s at 20 kΩ.
 */
export const hold = judgement({
  id: 'hold',
  semantics: 2,
  takes: ['label', 'look'],
  limits: ['residual', 'ohms', 'floor', 'unknown', 'unknownStart', 'watts'],
  outcomes: ['computed', 'unknown', 'undecided'],
  run({ label, look }, limits) {
    const { residual, ohms, floor, unknown, unknownStart, watts } = limits;
    const part = printOf(label) ?? printOf(look);
    const several = figureOf(look, 'count', 'count')?.gt(1) ?? false;
    const plainly = (name: string, why: string) =>
      finding({
        name,
        reading: say(unknown.value, 's'),
        word: 'unknown rating',
        text: `Hold ${say(unknown.value, 's')} on each pair: ${why}.`,
        source: unknown.source,
      });
    const rms = part === null || part.volts === null ? null : new Exact(part.volts);
    // Less than a volt is no rating of a capacitor.
    if (part === null || rms === null || rms.lt(1)) {
      const why = part === null ? 'the rating is not known' : 'the print shows no volts';
      const outcome = label === undefined && look === undefined ? 'undecided' : 'unknown';
      return { outcome, findings: [plainly('Hold time', why)] };
    }
    const microfarads = Exact.max(part.herm, part.fan ?? 0);
    const from = peakVolts(rms);
    const exact = secondsTo(from, residual.value, microfarads, ohms.value);
    const seconds = holdSeconds(exact, floor.value);
    const joules = energyJoules(microfarads, from);
    const peak = peakWatts(from, ohms.value);
    const over = peak.gt(watts.value);
    const findings = [
      finding({
        name: 'Hold time',
        reading: say(seconds, 's'),
        limits: `at least ${say(floor.value, 's')}`,
        word: 'computed',
        text: `Hold ${say(seconds, 's')} on each pair: ${say(microfarads, 'µF')} falls from ${say(from, 'V', 1)} to ${say(residual.value, 'V')} in ${say(exact, 's', 2, 2)}.`,
        source: `RC·ln(V0/V), physics; V0 is √2 × the part’s rating; ${ohms.source}`,
        ...pictured({
          kind: 'decay',
          fromVolts: from.toFixed(4),
          limitVolts: residual.value,
          microfarads: microfarads.toFixed(),
          ohms: ohms.value,
          limitSeconds: exact.toFixed(2),
          holdSeconds: seconds.toFixed(),
        }),
      }),
      finding({
        name: 'Stored energy',
        reading: say(joules, 'J', 2, 2),
        word: 'computed',
        text: `The larger section can hold ${say(joules, 'J', 2, 2)}.`,
        source: '½·C·V², physics',
      }),
      finding({
        name: 'Peak power',
        reading: say(peak, 'W', 2, 2),
        limits: say(watts.value, 'W'),
        word: over ? 'short pulse' : 'within rating',
        text: over
          ? `The resistor takes ${say(peak, 'W', 2, 2)} at first, above its ${say(watts.value, 'W')}, as a pulse. It fades with a time constant of ${say(tauSeconds(microfarads, ohms.value).div(2), 's', 2, 2)}.`
          : `The resistor takes ${say(peak, 'W', 2, 2)} at first, within its ${say(watts.value, 'W')}.`,
        source: `V²/R, physics; ${watts.source}`,
      }),
    ];
    if (several) {
      const [run, start] = [say(unknown.value, 's'), say(unknownStart.value, 's')];
      findings.push(
        finding({
          ...{ name: 'Hold time, any other capacitor', reading: start, word: 'unknown rating' },
          text: `Any other capacitor: hold ${start} where it may be a start capacitor, else ${run}.`,
          source: unknownStart.source,
        }),
      );
    }
    return { outcome: 'computed', findings };
  },
  probe({ residual, ohms, floor, watts }) {
    const label = (herm: Exact, volts: Exact | string | null) =>
      print({ herm: herm.toFixed(4), fan: null, volts: volts === null ? null : new Exact(volts).toFixed(4) });
    // The µF whose hold time is the floor, and the volts whose peak power is the rating.
    const perMicrofarad = secondsTo(peakVolts(440), residual.value, 1, ohms.value);
    const atFloor = new Exact(floor.value).div(perMicrofarad);
    const atWatts = new Exact(watts.value).times(ohms.value).div(2).sqrt();
    return [
      { label: label(atFloor.minus('0.001'), '440') },
      { label: label(atFloor.plus('0.001'), '440') },
      { label: label(new Exact(45), atWatts.minus('0.01')) },
      { label: label(new Exact(45), atWatts.plus('0.01')) },
      { label: print({ herm: '45', fan: '5' }), look: { count: read(2, 'count') } },
      { label: label(new Exact(45), null) },
      { look: { count: read(1, 'count') } },
      {},
    ];
  },
});
