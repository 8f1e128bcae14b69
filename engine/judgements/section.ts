/** One section of a run capacitor: its limits by the label, its reading with the meter's doubt, and the word for it. */
import { plainWord, shareInside, type Word, windowMicrofarads, wordOf } from '../calc/doubt.ts';
import { Exact, type Range, within } from '../calc/exact.ts';
import { deviationPercent, limitsMicrofarads } from '../calc/tolerance.ts';
import type { CapacitorLabel, Finding, Meter } from '../schema.ts';
import { pictured, scaleFigures } from './figures.ts';
import type { Force, Limit } from './judgement.ts';
import { digits, finding, say, sayRange, sayShare, saySigned } from './say.ts';

export type SectionName = 'HERM' | 'FAN';
/** How a section is called where it is shown: a blower's part has one, and no hermetic compressor on it. */
export const called = (name: SectionName, { cabinet }: Force): string => (cabinet === undefined ? name : 'Capacitor');

export interface Section {
  readonly name: SectionName;
  readonly rated: Exact;
  readonly limits: Range;
  readonly reading: Exact;
  readonly window: Range;
  readonly word: Word;
  /** Which side of the label's limits the reading lies on. */
  readonly side: 'below' | 'inside' | 'above';
}

export function judgeSection(name: SectionName, label: CapacitorLabel, reading: Exact, force: Force): Section | null {
  const rated = name === 'HERM' ? label.herm : label.fan;
  if (rated === null) return null;
  const limits = limitsMicrofarads(rated, label.below, label.above);
  const window = windowMicrofarads(force.meter, reading);
  const word = force.settings.rule === 'plain' ? plainWord(reading, limits) : wordOf(reading, window, limits);
  const side = within(reading, limits) ? 'inside' : reading.lt(limits.low) ? 'below' : 'above';
  return { name, rated: new Exact(rated), limits, reading, window, word, side };
}

export const isOut = (section: Section): boolean => section.side !== 'inside';

/** The evidence line. `earlier` is the reading of the try before, where it counts beside this one. */
export function sectionFinding(
  section: Section,
  earlier: Section | null,
  label: CapacitorLabel,
  habit: Limit,
  force: Force,
): Finding {
  const { rated, limits, reading, window, word } = section;
  const name = called(section.name, force);
  const off = saySigned(deviationPercent(reading, rated), '%', 1);
  const text = [
    `${name} reads ${say(reading, 'µF')}, ${off} off the rated ${say(rated, 'µF')}.`,
    `The label allows ${sayRange(limits, 'µF')}, ${ruling(section, force)}.`,
    ...(earlier ? [againstEarlier(section, earlier)] : []),
    ...habitWords(section, habit),
    ...(label.printed ? [] : [`No tolerance is printed, so ${sayTolerance(label)} is taken.`]),
    ...(force.meter.known ? [] : [`The meter is not known, so ${sayMeter(force.meter)} is assumed.`]),
  ];
  const half = window.high.minus(reading);
  return finding({
    name,
    reading: say(reading, 'µF'),
    limits: sayRange(limits, 'µF'),
    doubt: `±${say(half, 'µF', 2, 2)} (${sayRange(window, 'µF', 2)})`,
    word,
    text: text.join(' '),
    ...pictured(
      scaleFigures({
        ...{ name, unit: 'µF', word, rated, limits, reading },
        doubt: force.settings.rule === 'plain' ? null : window,
        habit: habitDiffers(section, habit) ? { percent: habit.value, range: habitRange(section, habit) } : null,
      }),
    ),
    source: `${sayTolerance(label)} ${label.printed ? 'printed on the part' : 'where none is printed, common practice'}; ${ruleWords(force)}`,
  });
}

function ruling({ word, side, window, limits }: Section, force: Force): string {
  if (force.settings.rule === 'plain') return word === 'pass' ? 'so it is in' : `so it is out, ${side}`;
  const share = sayShare(shareInside(window, limits));
  switch (word) {
    case 'pass':
      return 'and all of the doubt lies inside';
    case 'conditional pass':
      return `and the doubt crosses a limit: P(in tolerance) ${share}`;
    case 'conditional fail':
      return `it lies ${side}, and the doubt reaches in: P(in tolerance) ${share}`;
    case 'fail':
      return `and all of the doubt lies ${side} it`;
  }
}

function againstEarlier(now: Section, earlier: Section): string {
  if (!isOut(earlier)) return `The try before read ${say(earlier.reading, 'µF')}, inside.`;
  return isOut(now)
    ? `Out twice: the try before read ${say(earlier.reading, 'µF')}.`
    : `The try before read ${say(earlier.reading, 'µF')}, outside. Both are recorded.`;
}

const habitRange = ({ rated }: Section, habit: Limit): Range => limitsMicrofarads(rated, habit.value, habit.value);
/** Whether the habit would decide otherwise than the label. */
const habitDiffers = (section: Section, habit: Limit): boolean =>
  within(section.reading, habitRange(section, habit)) === isOut(section);

function habitWords(section: Section, habit: Limit): string[] {
  if (!habitDiffers(section, habit)) return [];
  const range = habitRange(section, habit);
  const would = within(section.reading, range) ? 'keep' : 'replace';
  return [`The ±${say(habit.value, '%')} habit (${sayRange(range, 'µF')}) would ${would} it. The label decides.`];
}

const sayTolerance = ({ below, above }: CapacitorLabel): string =>
  new Exact(below).eq(above) ? `±${say(below, '%')}` : `\u2212${digits(below, 4)}/+${say(above, '%')}`;
export const sayMeter = (meter: Meter): string => `±(${say(meter.percent, '%')} + ${meter.counts} counts)`;
const ruleWords = ({ settings, meter }: Force): string =>
  settings.rule === 'plain'
    ? 'plain two-way rule of the shop'
    : `words of ILAC-G8, non-binary rule, doubt ${sayMeter(meter)} taken as rectangular`;
