/** How a choice from the truck and a refusal are said. */
import type { Choice, Fill, Reason } from '../../calc/substitute.ts';
import type { Finding, StockItem } from '../../schema.ts';
import { digits, finding, say, sayRange, saySigned } from '../say.ts';
import type { Offer } from './truck-stock.ts';
import { type Rating, sayAllowed, sayPrint } from './wanted.ts';

const RULE = 'same µF within the label, same or higher volts: common practice, no single source';

/** A choice from the truck: its items by their names, how many are left, what they give, how they are joined. */
export function choiceFinding(name: string, choice: Choice, { items }: Offer, rating: Rating): Finding {
  const taken = choice.parts.flatMap(({ id, count }) => {
    const item = items.find((one) => one.id === id);
    return item ? [{ item, count }] : [];
  });
  const what = taken.map(({ item, count }) => `${times(count, item.name)}: ${sayPrint(item)}, ${item.count} left.`);
  const reading = taken.map(({ item, count }) => times(count, sayPrint(item))).join(', ');
  return admissibleFinding(name, reading, what, choice, rating);
}

export const admissibleFinding = (
  name: string,
  reading: string,
  what: readonly string[],
  choice: Choice,
  rating: Rating,
): Finding =>
  finding({
    ...{ name, reading, limits: sayAllowed(rating), source: RULE },
    word: choice.worstPercent.isZero() ? 'exact' : 'within the label',
    text: [...what, ...choice.fills.map((fill) => sayFill(fill, rating)), ...joined(choice)].join(' '),
  });
const times = (count: number, what: string): string => (count === 1 ? what : `${count} × ${what}`);

/** HERM is the larger section; a part with one section needs no name for it. */
const sectionName = (wanted: Fill['wantedMicrofarads'], { label }: Rating): string =>
  label.fan === null ? '' : wanted.eq(label.herm) ? 'HERM ' : 'FAN ';

function sayFill({ wantedMicrofarads, microfarads, deviationPercent }: Fill, rating: Rating): string {
  const name = sectionName(wantedMicrofarads, rating);
  const off = `${saySigned(deviationPercent, '%', 1)} off the rated ${say(wantedMicrofarads, 'µF')}`;
  return `${name}${name === '' ? 'It ' : ''}gets ${say(microfarads, 'µF')}, ${off}.`;
}

/** How the parts are joined. */
function joined({ way, fills, partCount }: Choice): string[] {
  if (way === 'same') return ['One part.'];
  const tied = fills
    .filter((fill) => fill.elements.length > 1)
    .map(({ elements, microfarads }) => {
      const sum = elements.map((e) => digits(e.microfarads, 4)).join('+');
      return `Two in parallel: ${sum} make ${say(microfarads, 'µF')}.`;
    });
  const jumper = fills.length < 2 ? [] : [partCount === 2 ? TWO_C : ALL_C];
  const free = way === 'section-unused' ? ['One section stays free: insulate its terminal.'] : [];
  return [...tied, ...jumper, ...free];
}
const TWO_C = 'Two parts with a jumper between both C.';
const ALL_C = 'A jumper joins C of all parts.';

export function refusedFinding(item: StockItem, reason: string): Finding {
  const reading = sayPrint(item);
  return finding({ name: item.name, reading, word: 'refused', text: `${reading}: ${reason}.`, source: RULE });
}

/** Why a capacitor may not take the place of the one that is wanted. */
export function sayReason(reason: Reason, rating: Rating): string {
  switch (reason.why) {
    case 'value': {
      const off = saySigned(reason.deviationPercent, '%', 1);
      const side = reason.deviationPercent.gt(0) ? 'above' : 'below';
      return `${sectionName(reason.wantedMicrofarads, rating)}${off}, ${side} the label’s limits`;
    }
    case 'volts':
      return `voltage too low: ${say(reason.volts, 'V')}, ${say(reason.wantedVolts, 'V')} needed`;
    case 'kind':
      return rating.label.range ? 'a run capacitor is no start capacitor' : 'a start capacitor is no run capacitor';
    case 'range':
      return `its range ${sayRange(reason.range, 'µF', 4, 0)} reaches outside the one that is asked for`;
    case 'no-partner':
      return `nothing beside it makes up ${say(reason.wantedMicrofarads, 'µF')}`;
    default:
      return PLAINLY[reason.why];
  }
}
const PLAINLY = {
  'none-left': 'none left',
  protection: 'less protection than is asked for',
  class: 'a lower class than is asked for',
  'not-needed': 'it would take more parts, or leave a section free',
} as const;
export const INCOMPLETE = 'its µF or its volts are not on the list';
