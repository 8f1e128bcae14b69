/** Which new part was taken, by its number on the list or by its print, and whether it may go in. */
import { Exact } from '../../calc/exact.ts';
import { substitutes } from '../../calc/substitutes.ts';
import type { CapacitorLabel, Finding, Parts, StockItem, Truck } from '../../schema.ts';
import type { Judged } from '../judgement.ts';
import { chosenOf, printOf } from '../read.ts';
import { finding } from '../say.ts';
import { admissibleFinding, choiceFinding, refusedFinding, sayReason } from './substitute-words.ts';
import { countedOf, OFFERED, offerOf } from './truck-stock.ts';
import { asWanted, printed, printedVolts, type Rating, sayPrint } from './wanted.ts';

export interface Taken {
  readonly is: 'taken' | 'refused' | 'no-choice' | 'undecided';
  readonly finding: Finding;
  /** Items of the truck that go with it. */
  readonly uses: NonNullable<Judged<string>['uses']>;
}
const NAME = 'New part';
const NUMBERS = ['first', 'second', 'third'];
const not = (is: Taken['is'], reading: string, word: string, text: string): Taken => ({
  ...{ is, uses: [] },
  finding: finding({ name: NAME, reading, word, text }),
});

export function takenOf(rating: Rating, part: Parts | undefined, truck: Truck | null): Taken {
  const [pick = ''] = chosenOf(part, 'pick');
  if (pick === 'other') return typed(rating, printOf(part), truck);
  const at = NUMBERS.indexOf(pick);
  if (at < 0) return not('undecided', 'not picked', 'missing', 'Nobody said which part was taken.');
  const offer = offerOf(rating, truck);
  const choice = offer?.found.choices.slice(0, OFFERED)[at];
  if (!offer || !choice) return not('no-choice', pick, 'not on the list', `There is no ${pick} choice on the list.`);
  return {
    is: 'taken',
    finding: choiceFinding(NAME, choice, offer, rating),
    uses: choice.parts.map(({ id, count }) => ({ item: id, count })),
  };
}

/** A part by its print: judged like one on the list. It is taken off the truck where the truck carries the same print. */
function typed(rating: Rating, label: CapacitorLabel | null, truck: Truck | null): Taken {
  if (label === null)
    return not('no-choice', 'no print', 'missing', 'The print of the part that was taken is missing.');
  const item = itemOf(label);
  const counted = countedOf(item);
  if (counted === null) return { is: 'refused', finding: refusedFinding(item, 'no volts are printed on it'), uses: [] };
  const { choices, rejected } = substitutes(asWanted(rating), [counted]);
  const [choice] = choices;
  if (choice) {
    const reading = sayPrint(item);
    const found = admissibleFinding(NAME, reading, [`${reading} was taken.`], choice, rating);
    return { is: 'taken', finding: found, uses: sameOnTruck(item, truck) };
  }
  const reasons = rejected.map(({ reason }) => sayReason(reason, rating));
  return { is: 'refused', finding: refusedFinding(item, reasons.join(', ')), uses: [] };
}

const itemOf = (label: CapacitorLabel): StockItem => ({
  ...{ id: 'typed', name: NAME, kind: label.range ? 'start' : 'run', ...printed(label) },
  volts: printedVolts(label)?.toFixed() ?? null,
  ...{ protection: null, life: null, count: 1, low: 0 },
});

function sameOnTruck(item: StockItem, truck: Truck | null): Taken['uses'] {
  const own = keyOf(item);
  const same = truck?.items.find((other) => other.count > 0 && keyOf(other) === own);
  return same ? [{ item: same.id, count: 1 }] : [];
}

/** Kind, µF and volts in one word: "5", "5.0" and the order of the sections make no difference. Null: no print to compare. */
function keyOf(item: StockItem): string | null {
  const counted = countedOf(item);
  if (counted === null) return null;
  const figures = [...counted.sectionsMicrofarads].map((s) => new Exact(s)).sort((a, b) => a.cmp(b));
  return [counted.kind, ...figures, new Exact(counted.volts)].join(' ');
}
