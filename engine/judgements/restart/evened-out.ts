import { Exact } from '../../calc/exact.ts';
import { judgement } from '../judgement.ts';
import { chose, volts } from '../probing.ts';
import { chosenOf } from '../read.ts';
import { finding, say, sayGone } from '../say.ts';

/**
 * Whether pressures had evened out before a start, by the times of the record: `stopped` says that it went off just then
 * (`now`) or longer ago (`earlier`), `tried` is what was read at the start, `ran` what was last read of it under power:
 * against that nobody can have left it off for longer, but for the minutes in which a reading is `typed`. Started sooner a
 * sound compressor stalls too.
 */
export const evenedOut = judgement({
  id: 'evened-out',
  semantics: 1,
  takes: ['stopped', 'tried', 'ran'],
  limits: ['least', 'typed'],
  outcomes: ['rested', 'early', 'undecided'],
  run({ stopped, tried, ran }, { least, typed }, { at }) {
    const [said] = chosenOf(stopped, 'choice');
    const asked = say(least.value, 'min');
    const of = (outcome: 'rested' | 'early' | 'undecided', reading: string, text: string) => ({
      outcome,
      findings: [
        finding({
          ...{ name: 'Rest before the start', reading, limits: `${asked} or more`, word: outcome, text },
          source: least.source,
        }),
      ],
    });
    if (said === undefined || tried === undefined)
      return of('undecided', 'not said', 'Nobody said since when it was off.');
    const between = (from: string, to: string): Exact => new Exact(Date.parse(to) - Date.parse(from)).div(60_000);
    if (said === 'earlier') {
      const since =
        ran !== undefined && at?.ran !== undefined && at.tried !== undefined ? between(at.ran, at.tried) : null;
      if (since?.plus(typed.value).lt(least.value))
        return of(
          'early',
          sayGone(since),
          `The record has it under power ${sayGone(since)} before: it was not off for ${asked}. The try counts for nothing.`,
        );
      return of('rested', 'longer', `It was off for ${asked} or more before it was tried.`);
    }
    if (at?.stopped === undefined || at.tried === undefined || at.tried < at.stopped)
      return of(
        'early',
        'not known',
        'How long it was off before it was tried is not known: the try counts for nothing.',
      );
    const minutes = between(at.stopped, at.tried);
    const shown = sayGone(minutes);
    return minutes.gte(least.value)
      ? of('rested', shown, `It was off for ${shown} before it was tried.`)
      : of(
          'early',
          shown,
          `It was off for ${shown} before it was tried. Pressures had not evened out: the try counts for nothing.`,
        );
  },
  probe: () => [
    { stopped: { choice: chose('earlier') }, tried: volts({ v: 221 }) },
    { stopped: { choice: chose('earlier') }, tried: volts({ v: 221 }), ran: volts({ l1l2: 240 }) },
    { stopped: { choice: chose('now') }, tried: volts({ v: 221 }) },
    { tried: volts({ v: 221 }) },
    {},
  ],
});
