/** What a new part has to be: the diagram's rating where it is known, else that of the old part. */
import { Exact, type Range } from '../../calc/exact.ts';
import type { Wanted } from '../../calc/substitute.ts';
import { limitsMicrofarads } from '../../calc/tolerance.ts';
import type { CapacitorLabel, Finding, Parts, StockItem } from '../../schema.ts';
import type { Limit } from '../judgement.ts';
import { printOf } from '../read.ts';
import { digits, finding, say, sayRange } from '../say.ts';

export interface Rating {
  /** Its volts may be missing; `volts` says what is asked for. */
  readonly label: CapacitorLabel;
  readonly volts: Exact;
  /** Whose print governs. */
  readonly by: 'diagram' | 'old part';
  /** Where no print shows volts: what is asked for instead. */
  readonly assumed: Limit | null;
}

/** Null where no rating is known. A diagram often shows µF alone, so the old part's volts stand in for its own. */
export function wantedOf(old: Parts | undefined, diagram: Parts | undefined, volts: Limit): Rating | null {
  const [asked, fitted] = [printOf(diagram), printOf(old)];
  const label = asked ?? fitted;
  if (label === null) return null;
  const shown = printedVolts(label) ?? printedVolts(fitted);
  return {
    label,
    volts: shown ?? new Exact(volts.value),
    by: asked ? 'diagram' : 'old part',
    assumed: shown ? null : volts,
  };
}

/** AC volts of a print; null where it shows none. Nothing is rated zero. */
export function printedVolts(label: CapacitorLabel | null): Exact | null {
  const volts = new Exact(label?.volts ?? 0);
  return volts.gt(0) ? volts : null;
}

export const asWanted = ({ label, volts }: Rating): Wanted => ({
  kind: label.range ? 'start' : 'run',
  sectionsMicrofarads: label.fan === null ? [label.herm] : [label.herm, label.fan],
  volts,
  belowPercent: label.below,
  abovePercent: label.above,
  ...(label.range ? { range: { lowMicrofarads: label.range.low, highMicrofarads: label.range.high } } : {}),
});

/** "45+5 µF 440 V" as it may stand on a part; a start part by its range. */
export function sayPrint({ sections, range, volts }: Pick<StockItem, 'sections' | 'range' | 'volts'>): string {
  const microfarads = range
    ? sayRange({ low: new Exact(range.low), high: new Exact(range.high) }, 'µF', 4, 0)
    : `${sections.map((s) => digits(s, 4)).join('+') || 'no'}\u2009µF`;
  return volts === null ? microfarads : `${microfarads} ${say(volts, 'V')}`;
}
export const printed = ({ herm, fan, range, volts }: CapacitorLabel) => ({
  sections: fan === null ? [herm] : [herm, fan],
  range: range ?? null,
  volts,
});

export const allowedMicrofarads = ({ herm, fan, below, above }: CapacitorLabel): Range[] =>
  [herm, ...(fan === null ? [] : [fan])].map((rated) => limitsMicrofarads(rated, below, above));
export const sayAllowed = ({ label, volts }: Rating): string =>
  [...allowedMicrofarads(label).map((range) => sayRange(range, 'µF')), `${say(volts, 'V')} or more`].join(', ');

/** The line that says what is looked for, after everything that was found. */
export function askedFor(rating: Rating | null, word = 'undecided', so = ''): Finding {
  if (rating === null) {
    const text = 'The rating is not known. No part can be chosen by guessing.';
    return finding({ name: 'Asked for', reading: 'not known', word, text });
  }
  const { label, volts, by, assumed } = rating;
  const reading = sayPrint({ ...printed(label), volts: volts.toFixed() });
  const who = by === 'diagram' ? 'the wiring diagram' : 'the print on the old part';
  const why = assumed ? [`No volts are printed, so ${say(volts, 'V')} is asked for.`] : [];
  const text = [`By ${who}: ${reading}, same or higher volts.`, ...why, so].join(' ').trim();
  return finding({
    ...{ name: 'Asked for', reading, limits: sayAllowed(rating), word, text },
    source: assumed?.source ?? who,
  });
}
