/** What the start does to the supply: how far the line falls, and what is lost between line and load side. */
import { Exact } from '../../calc/exact.ts';
import { dropPercent } from '../../calc/supply.ts';
import type { Finding } from '../../schema.ts';
import { figureOf, leftOpen } from '../read.ts';
import { finding, say } from '../say.ts';
import type { Seen } from './range.ts';
import { sayBeside } from './say-beside.ts';

export interface StartJudged {
  readonly outcome: 'good' | 'sag' | 'contacts';
  readonly findings: readonly Finding[];
}

/**
 * @param restVolts line to line before the start, inside its range, so above zero
 * The line itself comes first. With the line fine, the difference to the load side only raises the question of the contacts:
 * two readings carry more doubt than one across a pole. Where the line wasn't watched, the load side stands for both.
 */
export function judgeStart(seen: Seen, restVolts: Exact): StartJudged {
  const { line, limits } = seen;
  const min = figureOf(line, 'min', 'V')?.abs() ?? null;
  const load = figureOf(line, 't1t2', 'V')?.abs() ?? null;
  // What was left out was not watched: the rest of the line still counts, and the record says so.
  const open = (['min', 't1t2'] as const).every((key) => leftOpen(line, key, 'V'));
  const findings = [
    ...(open ? [unread] : []),
    ...(min ? [fall('Line during the start', restVolts, min, seen)] : []),
    ...(load ? [fall('T1–T2 during the start', restVolts, load, seen)] : []),
  ];
  if (min && sags(restVolts, min, seen)) return { outcome: 'sag', findings };
  if (!load) return { outcome: 'good', findings };
  if (min?.minus(load).gte(limits.contacts.value))
    return { outcome: 'contacts', findings: [...findings, poles(min, load, seen)] };
  return { outcome: sags(restVolts, load, seen) ? 'sag' : 'good', findings };
}

const unread = finding({
  name: 'During the start',
  reading: 'no reading',
  word: 'missing',
  text: 'The lowest volts during the start were not read.',
});

const sags = (rest: Exact, lowest: Exact, { range, limits }: Seen): boolean =>
  dropPercent(rest, lowest).gt(limits.sag.value) || lowest.lt(range.range.low);

function fall(name: string, rest: Exact, lowest: Exact, seen: Seen): Finding {
  const { range, limits } = seen;
  const percent = sayBeside(Exact.max(0, dropPercent(rest, lowest)), [limits.sag.value], '%', 1);
  const [most, least] = [say(limits.sag.value, '%'), say(range.range.low, 'V', 1)];
  const bad = sags(rest, lowest, seen);
  const shown = say(lowest, 'V');
  return finding({
    name,
    reading: shown,
    limits: `${least} or more, ${most} down at most`,
    word: bad ? 'sags' : 'holds',
    text: `${name}: ${shown}, ${percent} below rest.${bad ? ' Supply or a connection: find it by the drop.' : ''}`,
    source: limits.sag.source,
  });
}

function poles(min: Exact, load: Exact, { limits }: Seen): Finding {
  const lost = say(min.minus(load), 'V');
  return finding({
    name: 'Line less T1–T2',
    reading: lost,
    limits: `under ${say(limits.contacts.value, 'V')}`,
    word: 'look at the contacts',
    text: `${lost} are lost between line and load side. Read across each closed pole under load.`,
    source: limits.contacts.source,
  });
}
