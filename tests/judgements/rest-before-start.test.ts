/** Whether pressures had evened out before a start, by the times that the record has. */
import { describe, expect, test } from 'vitest';
import type { Force } from '../../engine/judgements/judgement.ts';
import { choice, FORCE, parts } from './fixture.ts';
import { run } from './run.ts';

const tried = parts('V', { v: 221 });
const ran = parts('V', { l1l2: 240 });
const now = choice('choice', 'now');
const earlier = choice('choice', 'earlier');
const at = (minutes: number, seconds = 0) => new Date(Date.UTC(2026, 6, 14, 12, minutes, seconds)).toISOString();
const of = (given: Parameters<typeof run>[1], times?: Force['at']) =>
  run('evened-out', given, times ? { ...FORCE, at: times } : FORCE);
const said = (...args: Parameters<typeof of>) => {
  const { outcome, findings } = of(...args);
  return [outcome, findings[0]?.reading.replaceAll('\u2009', ' ')];
};

describe('it went off just then', () => {
  const given = { stopped: now, tried };
  test('five minutes are enough, a second less is not', () => {
    expect(said(given, { stopped: at(0), tried: at(5) })).toEqual(['rested', '5 min']);
    // Not rounded up to the five that it is short of.
    expect(said(given, { stopped: at(0), tried: at(4, 59) })).toEqual(['early', '4.9 min']);
    expect(said(given, { stopped: at(0), tried: at(2, 30) })).toEqual(['early', '2.5 min']);
  });
  test('is said with its minutes', () => {
    const text = (minutes: number) =>
      of(given, { stopped: at(0), tried: at(minutes) }).findings[0]?.text.replaceAll('\u2009', ' ');
    expect(text(6)).toBe('It was off for 6 min before it was tried.');
    expect(text(3)).toBe(
      'It was off for 3 min before it was tried. Pressures had not evened out: the try counts for nothing.',
    );
    expect(said(given, { stopped: at(0), tried: at(0) })).toEqual(['early', '0 min']);
  });
  test('where a time is missing, or the start was typed before the stop, nobody knows how long', () => {
    expect(said(given)).toEqual(['early', 'not known']);
    expect(said(given, { tried: at(9) })).toEqual(['early', 'not known']);
    expect(said(given, { stopped: at(0) })).toEqual(['early', 'not known']);
    expect(said(given, { stopped: at(9), tried: at(0) })).toEqual(['early', 'not known']);
  });
});

describe('it had been off for longer, as somebody says', () => {
  test('is believed where the record has nothing of it under power', () => {
    expect(said({ stopped: earlier, tried })).toEqual(['rested', 'longer']);
    expect(said({ stopped: earlier, tried }, { stopped: at(8), tried: at(9) })).toEqual(['rested', 'longer']);
    expect(said({ stopped: earlier, tried, ran }, { tried: at(1) })).toEqual(['rested', 'longer']);
    expect(said({ stopped: earlier, tried, ran }, { ran: at(1) })).toEqual(['rested', 'longer']);
  });
  test('is not, where it was read under power too few minutes before, those for typing allowed for', () => {
    expect(said({ stopped: earlier, tried, ran }, { ran: at(0), tried: at(3) })).toEqual(['rested', 'longer']);
    const early = of({ stopped: earlier, tried, ran }, { ran: at(0), tried: at(2, 54) });
    expect([early.outcome, early.findings[0]?.reading]).toEqual(['early', '2.9\u2009min']);
    expect(early.findings[0]?.text.replaceAll('\u2009', ' ')).toBe(
      'The record has it under power 2.9 min before: it was not off for 5 min. The try counts for nothing.',
    );
  });
  test('a reading that fell away since counts for nothing, though its time is there', () => {
    expect(said({ stopped: earlier, tried }, { ran: at(0), tried: at(1) })).toEqual(['rested', 'longer']);
  });
});

test('nobody said since when, or nobody tried it', () => {
  expect(said({ tried })).toEqual(['undecided', 'not said']);
  expect(said({ stopped: earlier })).toEqual(['undecided', 'not said']);
  expect(said({ stopped: now }, { stopped: at(0), tried: at(9) })).toEqual(['undecided', 'not said']);
});
