/**
 * What on the truck may take the place of a capacitor. Same µF within the original label's tolerance, same or higher
 * volts, same kind, protection and class at least as good; never the next size up. Source: common practice, no single
 * source; sums of sections in parallel are physics. The new part's own reading, dead, decides before it is fitted.
 */
import { Exact, type Range, within } from './exact.ts';
import type { Choice, PrintedRange, Protection, Reason, StockItem, Substitutes, Target, Wanted } from './substitute.ts';
import { ranked } from './substitute-choices.ts';
import { deviationPercent, limitsMicrofarads } from './tolerance.ts';

export type * from './substitute.ts';

/**
 * Ranked admissible choices, and each other item with its reason. Ids of the stock must differ. A wanted or stock
 * part without sections, or with one not above zero, is a bug of the caller and throws.
 */
export function substitutes(wanted: Wanted, stock: readonly StockItem[]): Substitutes {
  const [part, ...items] = [wanted, ...stock].map(withSections);
  return look(
    { ...wanted, ...part },
    stock.map((item, i) => ({ ...item, ...items[i] })),
  );
}

/** A start part may give its range alone: its upper end then stands for its µF. */
function withSections({
  kind,
  range,
  sectionsMicrofarads: own,
}: Wanted | StockItem): Pick<Wanted, 'sectionsMicrofarads'> {
  const all = own.length === 0 && kind === 'start' && range ? [range.highMicrofarads] : own;
  if (all.length === 0 || all.length > 2 || all.some((s) => new Exact(s).lte(0))) throw new Error('not a capacitor');
  return { sectionsMicrofarads: all };
}

function look(wanted: Wanted, stock: readonly StockItem[]): Substitutes {
  if (new Set(stock.map((item) => item.id)).size < stock.length) throw new Error('two items with one id');
  const targets = [...wanted.sectionsMicrofarads]
    .map(
      (rated): Target => ({
        rated: new Exact(rated),
        limits: limitsMicrofarads(rated, wanted.belowPercent, wanted.abovePercent),
      }),
    )
    .sort((a, b) => b.rated.cmp(a.rated));
  const barred = new Map(stock.flatMap((item) => barredBy(wanted, item)));
  const usable = stock.filter((item) => !barred.has(item.id));
  const choices = ranked(wanted, targets, usable);
  const chosen = new Set(choices.flatMap((choice) => choice.parts.map((part) => part.id)));
  const rejected = stock
    .filter((item) => !chosen.has(item.id))
    .map((item) => ({ id: item.id, reason: barred.get(item.id) ?? reasonOf(item, targets, choices) }));
  return { choices, rejected };
}

const PROTECTION: Readonly<Record<Protection, number>> = {
  ...{ none: 0, P0: 0, S0: 0, P1: 1, S1: 1, P2: 2, S2: 2, protected: 2, S3: 3 },
};
const LIFE = ['D', 'C', 'B', 'A'] as const;

/** Why an item can't be used at all, whatever stands beside it. */
function barredBy(wanted: Wanted, item: StockItem): [string, Reason][] {
  const is = (reason: Reason): [string, Reason][] => [[item.id, reason]];
  if (item.kind !== wanted.kind) return is({ why: 'kind' });
  const [volts, wantedVolts] = [new Exact(item.volts), new Exact(wanted.volts)];
  if (volts.lt(wantedVolts)) return is({ why: 'volts', volts, wantedVolts });
  if (wanted.protection && PROTECTION[item.protection ?? 'none'] < PROTECTION[wanted.protection])
    return is({ why: 'protection' });
  if (wanted.lifeClass && (!item.lifeClass || LIFE.indexOf(item.lifeClass) < LIFE.indexOf(wanted.lifeClass)))
    return is({ why: 'class' });
  if (item.count < 1) return is({ why: 'none-left' });
  if (wanted.kind === 'start' && wanted.range && item.range) {
    const [own, range] = [rangeOf(wanted.range), rangeOf(item.range)];
    if (!within(range.low, own) || !within(range.high, own)) return is({ why: 'range', range });
  }
  return [];
}
const rangeOf = (of: PrintedRange): Range => ({
  low: new Exact(of.lowMicrofarads),
  high: new Exact(of.highMicrofarads),
});

/** Why an item that could be used is in no choice. */
function reasonOf(item: StockItem, targets: readonly Target[], choices: readonly Choice[]): Reason {
  const own = item.sectionsMicrofarads.map((s) => new Exact(s)).sort((a, b) => b.cmp(a));
  const pairs =
    own.length === targets.length
      ? own.flatMap((microfarads, i) => offBy(microfarads, targets[i]) ?? [])
      : own.flatMap((microfarads) => targets.flatMap((target) => offBy(microfarads, target) ?? []));
  const out = pairs.filter((pair) => !pair.fits).sort((a, b) => a.off.abs().cmp(b.off.abs()));
  const whole = own.length === targets.length;
  const value = out[0];
  if (value && (whole || out.length === pairs.length)) {
    const { microfarads, rated, off } = value;
    return { why: 'value', microfarads, wantedMicrofarads: rated, deviationPercent: off };
  }
  const other =
    targets.find((target) => !pairs.some((pair) => pair.fits && pair.rated.eq(target.rated))) ?? targets.at(-1);
  if (choices.length === 0 && other) return { why: 'no-partner', wantedMicrofarads: other.rated };
  return { why: 'not-needed' };
}

const offBy = (microfarads: Exact, target: Target | undefined) =>
  target && {
    microfarads,
    rated: target.rated,
    off: deviationPercent(microfarads, target.rated),
    fits: within(microfarads, target.limits),
  };
