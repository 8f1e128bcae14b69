import { Exact } from '../../calc/exact.ts';
import { judgement } from '../judgement.ts';
import { chose, volts } from '../probing.ts';
import { chosenOf } from '../read.ts';
import { finding, say } from '../say.ts';

/**
 * Whether pressures had evened out before a start, by the times of the record: `stopped` says that it went off just then
 * (`now`) or longer ago (`earlier`), `tried` is what was read at the start. Started sooner a sound compressor stalls too.
 */
export const evenedOut = judgement({
  id: 'evened-out',
  semantics: 1,
  takes: ['stopped', 'tried'],
  limits: ['least'],
  outcomes: ['rested', 'early', 'undecided'],
  run({ stopped, tried }, { least }, { at }) {
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
    if (said === 'earlier') return of('rested', 'longer', `It was off for ${asked} or more before it was tried.`);
    if (at?.stopped === undefined || at.tried === undefined || at.tried < at.stopped)
      return of(
        'early',
        'not known',
        'How long it was off before it was tried is not known: the try counts for nothing.',
      );
    const minutes = new Exact(Date.parse(at.tried) - Date.parse(at.stopped)).div(60_000);
    const shown = say(minutes, 'min', 1);
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
    { stopped: { choice: chose('now') }, tried: volts({ v: 221 }) },
    { tried: volts({ v: 221 }) },
    {},
  ],
});
