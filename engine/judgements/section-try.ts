/** One try at both sections: which readings count, and whether the leads, not the part, explain them. */
import { windowMicrofarads } from '../calc/doubt.ts';
import { Exact, overlap, type Range } from '../calc/exact.ts';
import { hermFanBand, seriesMicrofarads, tripleFits } from '../calc/series.ts';
import { limitsMicrofarads } from '../calc/tolerance.ts';
import type { CapacitorLabel, Meter, Parts } from '../schema.ts';
import { type Reading, readingOf } from './read.ts';

export interface Try {
  readonly herm: Reading;
  readonly fan: Reading;
  /** HERM to FAN with C open. */
  readonly hf: Reading;
}
/** What every question about a try needs: the print, the meter, and the share below which a section counts as open. */
export interface Part {
  readonly label: CapacitorLabel;
  readonly meter: Meter;
  readonly openPercent: Exact;
}
const NONE: Reading = { kind: 'none' };
/** More than this many times the rating is absurd for a section, whatever is wrong with it (our setting). */
const ABSURD_TIMES = 3;

/** Readings of a try; what was asked again replaces the first answer. A negative capacitance is no reading. */
export function tryOf(readings: Parts | undefined, third: Parts | undefined): Try {
  const at = (key: 'herm' | 'fan' | 'hf'): Reading => {
    const again = key === 'herm' ? NONE : readingOf(third, key, 'µF');
    const reading = again.kind === 'none' ? readingOf(readings, key, 'µF') : again;
    return reading.kind === 'figure' && reading.value.lt(0) ? NONE : reading;
  };
  return { herm: at('herm'), fan: at('fan'), hf: at('hf') };
}

export const figureIn = (reading: Reading): Exact | null => (reading.kind === 'figure' ? reading.value : null);
export const sectionLimits = ({ label }: Part, rated: string): Range =>
  limitsMicrofarads(rated, label.below, label.above);

/** Below the open share of its rating. */
export const isOpenReading = (reading: Reading, rated: string, part: Part): boolean =>
  reading.kind === 'figure' && reading.value.lt(new Exact(rated).times(part.openPercent).div(100));
/** Zero, next to nothing, OL or absurd: the wires come first. */
export const isUnreadable = (reading: Reading, rated: string, part: Part): boolean =>
  reading.kind === 'over' ||
  isOpenReading(reading, rated, part) ||
  (reading.kind === 'figure' && (reading.value.isZero() || reading.value.gt(new Exact(rated).times(ABSURD_TIMES))));

/** HERM reads like FAN or FAN like HERM, and neither fits its own section. */
export function isSwapped(t: Try, part: Part): boolean {
  const [herm, fan] = [figureIn(t.herm), figureIn(t.fan)];
  if (part.label.fan === null || !herm || !fan) return false;
  const [hermLimits, fanLimits] = [sectionLimits(part, part.label.herm), sectionLimits(part, part.label.fan)];
  const [h, f] = [windowMicrofarads(part.meter, herm), windowMicrofarads(part.meter, fan)];
  const crossed = h.high.lt(hermLimits.low) && f.low.gt(fanLimits.high);
  return crossed && (overlap(h, fanLimits) || overlap(f, hermLimits));
}

/** Where FAN would read with its lead on HERM instead of C, µF. Without a HERM reading its label limits stand in. */
export function bandOf(t: Try, part: Part): Range | null {
  if (part.label.fan === null) return null;
  const herm = figureIn(t.herm);
  const hermRange = herm ? { low: herm, high: herm } : sectionLimits(part, part.label.herm);
  return hermFanBand(hermRange, sectionLimits(part, part.label.fan));
}
export function fanInBand(t: Try, part: Part): boolean {
  const [fan, band] = [figureIn(t.fan), bandOf(t, part)];
  return fan !== null && band !== null && overlap(windowMicrofarads(part.meter, fan), band);
}
/** HERM so low that its lead may have sat on FAN: at HERM–FAN, or FAN–C read twice. */
export function hermMaybeFan(t: Try, part: Part): boolean {
  const herm = figureIn(t.herm);
  if (part.label.fan === null || !herm) return false;
  return windowMicrofarads(part.meter, herm).low.lte(sectionLimits(part, part.label.fan).high);
}

/**
 * Whether three readings contradict each other; null where HERM–FAN was not read. In the band a coarse meter lets both
 * stories fit, that FAN was read and that HERM–FAN was read twice: the nearer one is believed.
 */
export function contradicts(t: Try, part: Part): boolean | null {
  const [herm, fan, hf] = [figureIn(t.herm), figureIn(t.fan), figureIn(t.hf)];
  if (part.label.fan === null || !herm || !fan || !hf) return null;
  if (!tripleFits(part.meter, herm, fan, hf)) return true;
  const toFan = hf.minus(fan).abs();
  const toSeries = hf.minus(seriesMicrofarads(herm, fan)).abs();
  return fanInBand(t, part) && toFan.lt(toSeries);
}

/** Whether the leads may explain a try, so that its words don't count. */
export const leadTrouble = (t: Try, part: Part): boolean =>
  isSwapped(t, part) ||
  isUnreadable(t.herm, part.label.herm, part) ||
  (part.label.fan !== null && isUnreadable(t.fan, part.label.fan, part)) ||
  contradicts(t, part) === true;
