/** Whether the delay after a change of call is over, by the times that the record has. */
import { describe, expect, test } from 'vitest';
import type { Force } from '../../engine/judgements/judgement.ts';
import { choice, FORCE, parts, yes } from './fixture.ts';
import { run } from './run.ts';

const [now, earlier] = [choice('choice', 'now'), choice('choice', 'earlier')];
const reading = parts('V', { yc: 0 });
const at = (minutes: number, seconds = 0) => new Date(Date.UTC(2026, 6, 14, 12, minutes, seconds)).toISOString();
const of = (given: Parameters<typeof run>[1], times?: Force['at']) => {
  const { outcome, findings } = run('minutes-since', given, times ? { ...FORCE, at: times } : FORCE);
  return [outcome, findings[0]?.text.replaceAll('\u2009', ' ')];
};
const open = ['wait', 'A delay may still run. It is over 5 min after the change.'];

describe('the call was changed just then', () => {
  test('five minutes to the reading are enough, less is not', () => {
    const given = { since: now, reading };
    expect(of(given, { since: at(0), reading: at(5) })).toEqual([
      ...['over', '5 min since the call was changed: the delay is over.'],
    ]);
    expect(of(given, { since: at(0), reading: at(4, 30) })).toEqual([
      'wait',
      '4.5 min since the call was changed. A delay may still run for 0.5 min: no volts decide nothing yet.',
    ]);
  });
  test('whoever waited since counts as well as what was read, the later of the two', () => {
    expect(of({ since: now, waited: yes }, { since: at(0), waited: at(6) })[0]).toBe('over');
    expect(of({ since: now, reading, waited: yes }, { since: at(0), reading: at(1), waited: at(6) })[0]).toBe('over');
    expect(of({ since: now, reading, waited: yes }, { since: at(0), reading: at(6), waited: at(1) })[0]).toBe('over');
  });
  test('what is older than the change says nothing of it', () => {
    expect(of({ since: now, reading }, { since: at(9), reading: at(0) })).toEqual(open);
    expect(of({ since: now, reading, waited: yes }, { since: at(8), reading: at(0), waited: at(9) })).toEqual([
      'wait',
      '1 min since the call was changed. A delay may still run for 4 min: no volts decide nothing yet.',
    ]);
  });
  test('what was read at the very time of the change is no minute after it', () => {
    expect(of({ since: now, reading }, { since: at(0), reading: at(0) })).toEqual([
      'wait',
      '0 min since the call was changed. A delay may still run for 5 min: no volts decide nothing yet.',
    ]);
  });
  test('where a time is missing, or nothing was read since, a delay may still run', () => {
    expect(of({ since: now, reading })).toEqual(open);
    expect(of({ since: now, reading }, { since: at(0) })).toEqual(open);
    expect(of({ since: now, reading }, { reading: at(9) })).toEqual(open);
    // A reading that fell away since leaves its time behind.
    expect(of({ since: now }, { since: at(0), reading: at(9) })).toEqual(open);
  });
});

describe('it has been left alone for longer', () => {
  const over = ['over', 'The call has been left alone for longer than the delay runs.'];
  test('is believed where nothing speaks against it', () => {
    expect(of({ since: earlier, reading })).toEqual(over);
    expect(of({ since: earlier, reading, before: earlier }, { before: at(0), reading: at(1) })).toEqual(over);
  });
  test('is held against the try before, where the call was changed or nobody knew', () => {
    for (const before of [now, choice('choice', 'cant')]) {
      const given = { since: earlier, reading, before };
      expect(of(given, { before: at(0), since: at(3), reading: at(4) })[0]).toBe('wait');
      expect(of(given, { before: at(0), since: at(3), reading: at(5) })[0]).toBe('over');
      expect(of(given, { since: at(0), reading: at(9) })).toEqual(open);
    }
  });
});

test('an answer that had it the other way round holds it for no longer', () => {
  const off = choice('choice', 'a');
  const rest = (times: NonNullable<Force['at']>) =>
    of({ since: earlier, reading, off }, { since: at(8), reading: at(9), ...times })[0];
  expect(rest({ off: at(4) })).toBe('over');
  expect(rest({ off: at(4, 1) })).toBe('wait');
  expect(of({ since: earlier, reading }, { reading: at(9), off: at(8) })[0]).toBe('over');
});

test('a second short of the five minutes is not said as five', () => {
  expect(of({ since: now, reading }, { since: at(0), reading: at(4, 59) })[1]).toBe(
    '4.9 min since the call was changed. A delay may still run for 0.1 min: no volts decide nothing yet.',
  );
});

test('nobody said when', () => {
  expect(of({ reading })).toEqual(['undecided', 'Nobody said when the call was last changed.']);
});

describe('held against an answer that had it the other way round', () => {
  const since = (said: string, times: { since: number; reading: number; off?: number }) =>
    of(
      {
        since: choice('choice', said),
        reading,
        ...(times.off === undefined ? {} : { off: choice('supply', 'two-legs') }),
      },
      {
        since: at(times.since),
        reading: at(times.reading),
        ...(times.off === undefined ? {} : { off: at(times.off) }),
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
    expect(since(said, times)[0]).toBe(outcome);
  });
  test('it says what the record has', () => {
    expect(since('earlier', { since: 8, reading: 9, off: 7 })[1]).toBe(
      'The record has it the other way round 2 min before: it can’t have been so for longer.',
    );
  });
});
