import { Exact } from '../calc/exact.ts';
import { judgement } from './judgement.ts';
import { chose, volts } from './probing.ts';
import { chosenOf } from './read.ts';
import { finding, say, sayGone } from './say.ts';

/**
 * Whether the delay after a change of call is over, by the times of the record: `since` is the answer that says that the
 * call was changed (`now`), or that it has been left alone for longer (`earlier`); `reading` is what was read after it, and
 * `waited` a later answer that somebody waited. `before` is `since` of the try before: a call that was changed then, or of
 * which nobody knew, has not been left alone for longer than the record says. `off` is an answer that had it the other way
 * round (the call taken off, or power on): nothing has been left alone for longer than since then. A judgement knows no
 * clock: the record dates each answer.
 */
export const minutesSince = judgement({
  id: 'minutes-since',
  semantics: 5,
  takes: ['since', 'reading', 'waited', 'before', 'off'],
  limits: ['least'],
  outcomes: ['over', 'wait', 'undecided'],
  run({ since, reading, waited, before, off }, { least }, { at }) {
    const said = chosenOf(since, 'choice')[0];
    const of = (outcome: 'over' | 'wait' | 'undecided', shown: string, text: string) => ({
      outcome,
      findings: [
        finding({
          ...{ name: 'Since the last change of call', reading: shown, limits: `${say(least.value, 'min')} or more` },
          ...{ word: outcome, text, source: least.source },
        }),
      ],
    });
    if (said === undefined) return of('undecided', 'not said', 'Nobody said when the call was last changed.');
    const earlier = said === 'earlier';
    const doubted = before !== undefined && !chosenOf(before, 'choice').includes('earlier');
    const read = [at?.reading, at?.waited]
      .filter((t): t is string => t !== undefined)
      .sort()
      .at(-1);
    const against = off === undefined ? undefined : at?.off;
    if (earlier && against !== undefined && read !== undefined && read >= against) {
      const minutes = new Exact(Date.parse(read) - Date.parse(against)).div(60_000);
      const shown = sayGone(minutes);
      if (minutes.lt(least.value))
        return of(
          'wait',
          shown,
          `The record has it the other way round ${shown} before: it can’t have been so for longer.`,
        );
    }
    if (earlier && !doubted)
      return of('over', 'longer', 'The call has been left alone for longer than the delay runs.');
    const begun = earlier ? at?.before : at?.since;
    if (begun === undefined || read === undefined || read < begun || (reading === undefined && waited === undefined))
      return of('wait', 'not known', `A delay may still run. It is over ${say(least.value, 'min')} after the change.`);
    const minutes = new Exact(Date.parse(read) - Date.parse(begun)).div(60_000);
    const shown = sayGone(minutes);
    if (minutes.gte(least.value)) return of('over', shown, `${shown} since the call was changed: the delay is over.`);
    const left = say(new Exact(least.value).minus(minutes).toDecimalPlaces(1, Exact.ROUND_UP), 'min', 1);
    return of(
      'wait',
      shown,
      `${shown} since the call was changed. A delay may still run for ${left}: no volts decide nothing yet.`,
    );
  },
  probe: () => [
    { since: { choice: chose('earlier') }, reading: volts({ yc: 0 }) },
    { since: { choice: chose('now') }, reading: volts({ yc: 0 }) },
    { since: { choice: chose('now') }, waited: { ok: chose('yes') } },
    { since: { choice: chose('earlier') }, reading: volts({ yc: 0 }), before: { choice: chose('now') } },
    { since: { choice: chose('earlier') }, reading: volts({ yc: 0 }), before: { choice: chose('earlier') } },
    { since: { choice: chose('earlier') }, reading: volts({ yc: 0 }), off: { choice: chose('yes') } },
    {},
  ],
});
