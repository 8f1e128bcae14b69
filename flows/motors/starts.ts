/** The rest between two starts, and how many there are: the words and the questions of every page that starts something. */
import { choose, confirm } from '../../engine/vocabulary.ts';
import { LIMITS } from '../limits.ts';

const { least, tries } = LIMITS.starts;
/** Rounds of one visit, each with one start at its end. */
export const ROUNDS = Number(tries.value);
export const REST = `${least.value} minutes`;
export const WAIT = `Wait ${REST} before another start.`;
export const BETWEEN_STARTS = `${REST} between starts, at most ${tries.value} tries: common practice, no single source`;
export const AT_MOST = `At most ${tries.value} tries.`;

/** Since when it is off: the record dates it, and the judge behind the try counts from there. */
export const offSince = <const T extends string>(say: string, rest: T, go: T, cant: T) =>
  choose({
    say,
    body: ['At the thermostat first. Nothing starts it again before its time.'],
    why: 'Started against its own pressure a sound compressor stalls, and its windings overheat.',
    source: [BETWEEN_STARTS],
    options: {
      now: { label: 'Off just now', words: ['off now', 'just now', 'just off', 'now'], to: rest },
      earlier: {
        label: `Off for ${REST} or more`,
        words: ['off for five minutes', 'off 5 minutes', 'over 5 minutes', 'off long ago', 'rested'],
        to: go,
      },
    },
    cant,
  });

/** Nothing is started on a doubt: not sure leads to `doubt`. */
export const restedNow = <const T extends string, const D extends string, const S extends string>(
  since: S,
  go: T,
  doubt: D,
) =>
  confirm<T | D, S>({
    waits: { since, least },
    say: `Wait until it has been off for ${REST}.`,
    source: [BETWEEN_STARTS],
    yes: `Off for ${REST}`,
    words: ['waited', 'five minutes', '5 minutes', 'rested'],
    unsure: doubt,
    next: go,
  });
