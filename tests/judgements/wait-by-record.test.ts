/** Since when a call is there, by the record's times. */
import { expect, test } from 'vitest';
import { minutesSince } from '../../engine/judgements/minutes-since.ts';
import { ASSUMED_METER, DEFAULT_SETTINGS } from '../../engine/memory.ts';
import { LIMITS } from '../../flows/limits.ts';
import { choice, parts } from './fixture.ts';

const at = (minute: number): string => new Date(Date.UTC(2026, 6, 14, 15, minute)).toISOString();
const of = (said: string, times: { since: number; reading: number; off?: number }) =>
  minutesSince.run(
    {
      since: choice('choice', said),
      reading: parts('V', { yc: 0 }),
      waited: undefined,
      before: undefined,
      off: times.off === undefined ? undefined : choice('supply', 'two-legs'),
    },
    LIMITS.delay,
    {
      settings: DEFAULT_SETTINGS,
      meter: ASSUMED_METER,
      truck: null,
      equipment: null,
      at: {
        since: at(times.since),
        reading: at(times.reading),
        ...(times.off === undefined ? {} : { off: at(times.off) }),
      },
    },
  );

test.each([
  ['changed just now, five minutes before', 'now', { since: 0, reading: 5 }, 'over'],
  ['changed just now, four before', 'now', { since: 0, reading: 4 }, 'wait'],
  ['left alone, and nothing on the record against it', 'earlier', { since: 8, reading: 9 }, 'over'],
  ['left alone, and off four minutes before', 'earlier', { since: 8, reading: 9, off: 5 }, 'wait'],
  ['left alone, and off five minutes before', 'earlier', { since: 8, reading: 9, off: 4 }, 'over'],
  ['just now counts from its own answer, whatever was off before', 'now', { since: 4, reading: 9, off: 8 }, 'over'],
] as const)('%s', (_, said, times, outcome) => {
  expect(of(said, times).outcome).toBe(outcome);
});

test('it says what the record has', () => {
  expect(of('earlier', { since: 8, reading: 9, off: 7 }).findings[0]?.text).toBe(
    'The record has it the other way round 2\u2009min before: it can’t have been so for longer.',
  );
});
