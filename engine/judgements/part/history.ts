import type { Finding, Past } from '../../schema.ts';
import { judgement, type Limit } from '../judgement.ts';
import { finding, say } from '../say.ts';

/**
 * What the unit's record says about its run capacitor. One fitted within a season is a second one in that season: then
 * something kills capacitors here, and a senior looks. Days are whole days between the two dates, UTC. Never undecided.
 */
export const history = judgement({
  id: 'history',
  semantics: 1,
  takes: [],
  limits: ['season'],
  outcomes: ['none', 'earlier', 'season', 'undecided'],
  run(_given, { season }, { equipment, cabinet }) {
    // Each cabinet has capacitors of its own: one fitted in the indoor unit says nothing of the outdoor unit's.
    const all = (equipment?.history ?? []).filter((past) => past.cabinet === cabinet).reverse();
    const newest = all[0];
    if (!equipment || !newest) {
      const text = 'Nothing is on record for this unit.';
      return { outcome: 'none', findings: [finding({ name: 'History', reading: 'none', word: 'none', text })] };
    }
    const fitted = all.find(isFittedRun);
    const read = all.find(({ herm, fan }) => herm !== null || fan !== null);
    const days = (past: Past): number => daysBetween(past.at, equipment.asOf);
    const again = fitted !== undefined && days(fitted) <= Number(season.value);
    const findings = [
      ...(fitted ? [fittedLine(fitted, days(fitted), again, season)] : []),
      ...(read ? [readLine(read, days(read))] : []),
    ];
    if (again) return { outcome: 'season', findings };
    return { outcome: 'earlier', findings: findings.length > 0 ? findings : [otherLine(newest, days(newest))] };
  },
  probe: () => [{}],
});

/** A record names what was fitted in words. µF read on it, or words for a capacitor; a start part is another matter. */
const isFittedRun = ({ what, item, herm }: Past): boolean =>
  what === 'fitted' && (herm !== null || /capacitor|[µμu]f\b|mfd/i.test(item)) && !/\bstart\b/i.test(item);

const DAY = 86_400_000;
const dateOf = (instant: string): string => instant.slice(0, 10);
const daysBetween = (from: string, to: string): number =>
  Math.max(0, (Date.parse(dateOf(to)) - Date.parse(dateOf(from))) / DAY);
const ago = (days: number): string =>
  days === 0 ? 'the same day' : days === 1 ? 'the day before' : `${days} days before`;

function fittedLine({ at, item }: Past, days: number, again: boolean, season: Limit): Finding {
  const so = again
    ? 'Another one is the second in a season. A senior looks for what kills it.'
    : 'That is longer than a season.';
  return finding({
    name: 'Last fitted',
    reading: `fitted ${dateOf(at)}, ${ago(days)}`,
    limits: `a season is ${say(season.value, 'days')}`,
    word: again ? 'second in a season' : 'earlier',
    text: `${item} was fitted ${dateOf(at)}, ${ago(days)}. ${so}`,
    source: season.source,
  });
}

function readLine({ at, herm, fan }: Past, days: number): Finding {
  const figures = [...(herm ? [`HERM ${say(herm, 'µF')}`] : []), ...(fan ? [`FAN ${say(fan, 'µF')}`] : [])].join(', ');
  return finding({
    name: 'Last read',
    reading: figures,
    word: 'earlier',
    text: `Last read ${figures} on ${dateOf(at)}, ${ago(days)}.`,
    source: 'the unit’s record',
  });
}

function otherLine({ at, what, item }: Past, days: number): Finding {
  const reading = `${what} ${dateOf(at)}, ${ago(days)}`;
  const text = `${item} was ${what} ${dateOf(at)}, ${ago(days)}. No run capacitor is on record.`;
  return finding({ name: 'History', reading, word: 'earlier', text, source: 'the unit’s record' });
}
