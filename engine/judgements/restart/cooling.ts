/** What tells at a restart that it cools and runs as it should: the split, and what is seen and heard. */
import { Exact, within } from '../../calc/exact.ts';
import type { Parts } from '../../schema.ts';
import { chosenOf, figureOf } from '../read.ts';
import { finding, say, sayRange } from '../say.ts';
import type { Judging, RestartLimits } from './judging.ts';

/** Null where nobody read it yet; open where it was asked for and not read. What was read later counts. */
export function judgeSplit(
  figures: Parts | undefined,
  later: Parts | undefined,
  { splitLow, splitHigh }: RestartLimits,
): Judging | null {
  const split = figureOf(later, 'split', 'Δ°F') ?? figureOf(figures, 'split', 'Δ°F');
  const range = { low: new Exact(splitLow.value), high: new Exact(splitHigh.value) };
  const limits = sayRange(range, '°F', 1, 0);
  const line = (is: Judging['is'], reading: string, word: string, text: string): Judging => ({
    is,
    finding: finding({ name: 'Split', reading, limits, word, text, source: splitLow.source }),
  });
  if (split === null)
    return later === undefined ? null : line('open', 'no reading', 'missing', 'The split was not read.');
  const shown = say(split, '°F');
  if (within(split, range)) return line('in', shown, 'in', `The split is ${shown}, inside ${limits}.`);
  const [word, why] = split.lt(range.low)
    ? ['low', 'little capacity, much air, or heat from elsewhere']
    : ['high', 'too little air over the coil'];
  return line('out', shown, word, `The split is ${shown}, outside ${limits}: ${why}.`);
}

/** A box pulls down: its air when it began to run, and some minutes on. Null where the second is still to come. */
export function judgeBox(
  figures: Parts | undefined,
  later: Parts | undefined,
  { boxFall }: RestartLimits,
): Judging | null {
  const [first, then] = [figureOf(figures, 'box', '°F'), figureOf(later, 'box', '°F')];
  const limits = `${say(boxFall.value, '°F')} down or more`;
  const line = (is: Judging['is'], reading: string, word: string, text: string): Judging => ({
    is,
    finding: finding({ name: 'Box', reading, limits, word, text, source: boxFall.source }),
  });
  if (first && later === undefined) return null;
  if (!first || !then) return line('open', 'no reading', 'missing', 'Whether the box pulls down was not read.');
  const fell = first.minus(then);
  const shown = `${say(first, '°F')} → ${say(then, '°F')}`;
  return fell.gte(boxFall.value)
    ? line('in', shown, 'pulls down', `The box went from ${say(first, '°F')} to ${say(then, '°F')}.`)
    : line(
        'out',
        shown,
        'not pulling down',
        `The box went from ${say(first, '°F')} to ${say(then, '°F')}: it runs and does not pull down.`,
      );
}

/** What stops it, the gravest first. */
const SOUNDS = {
  backwards: 'A motor runs backwards. Turn it off.',
  chatter: 'The contactor chatters. Turn it off: it welds contacts and breaks compressors.',
  noise: 'There is a new noise. Turn it off and find it.',
} as const;

/** Nothing where nobody said anything about it. */
export function judgeSound(figures: Parts | undefined, later: Parts | undefined): Judging[] {
  const [now, then] = [chosenOf(figures, 'sound'), chosenOf(later, 'sound')];
  const heard = then.length > 0 ? then : now;
  const said = (is: Judging['is'], word: string, text: string): Judging => ({
    is,
    finding: finding({
      ...{ name: 'Seen and heard', reading: word, word: is, text, source: 'common practice, no single source' },
    }),
  });
  const bad = (['backwards', 'chatter', 'noise'] as const).find((sound) => heard.includes(sound));
  if (bad) return [said('out', bad, SOUNDS[bad])];
  return heard.includes('fine') ? [said('in', 'fine', 'Nothing odd is seen or heard.')] : [];
}
