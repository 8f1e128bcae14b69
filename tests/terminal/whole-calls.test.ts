/** Whole calls by typing, through the running program and a real database. Label 45+5 µF ±6 %: 42.30–47.70, 4.70–5.30. */
import { describe, expect, test, vi } from 'vitest';
import { PROVES, TO_FIGURES, TO_READINGS } from '../people.ts';
import { at, Program, run, strip, type Told, verdicts } from './program.ts';

vi.setConfig({ testTimeout: 120_000 });

/** A call under way at the readings, every answer at the same minute. */
async function atReadings(...args: string[]): Promise<Program> {
  const terminal = new Program(...args);
  await terminal.next();
  await terminal.set(at(0)).types(...TO_READINGS);
  return terminal;
}
const upToProving = TO_READINGS.slice(0, 6);
const textOf = ({ prompt }: Told): string => prompt.notices.map((n) => n.text).join('\n');

describe('a call from the observation to the verdict', () => {
  test('both sections good, the block finished, and it runs: no part is at fault', async () => {
    const terminal = await atReadings();
    const good = await terminal.types('herm 44.6 fan 5.02 hf 4.51 case ol');
    await terminal.types('spin free', 'cr .9 cs 2.7 sr 3.6 g ol', 'rla 17.9 lra 96 fla 1.2', 'closed');
    const told = await terminal.types(PROVES);
    expect(verdicts(good, told)).toEqual(['capacitor-good', 'runs-nothing-found']);
    expect(told.prompt.kind).toBe('finished');
    expect(await terminal.end()).toBe(0);
  });

  test('a weak FAN section', async () => {
    const terminal = await atReadings();
    const told = await terminal.types('herm 44.6 fan 3.9 hf 3.59 case ol');
    expect(verdicts(told)).toEqual(['section-fails-value']);
    expect(told.prompt.verdicts[0]?.findings.map((f) => [f.name, f.word])).toEqual([
      ['HERM', 'pass'],
      ['FAN', 'fail'],
      ['HERM–FAN', 'fits'],
    ]);
    expect(await terminal.end()).toBe(0);
  });

  test('a weak HERM section, the new part, and the figures that prove the repair', async () => {
    const terminal = await atReadings();
    const weak = await terminal.types('herm 36.1 fan 5.02 hf 4.4 case ol');
    expect(verdicts(weak)).toEqual(['section-fails-value']);
    const live = await terminal.types(...TO_FIGURES);
    expect(strip(live)).not.toContain('DEAD');
    const proven = await terminal.types(PROVES);
    expect(verdicts(proven)).toEqual(['repair-proven']);
    expect(proven.prompt.kind).toBe('finished');
    expect(await terminal.end()).toBe(0);
  });

  // The series of a good HERM and a good FAN section: 45 · 5 / (45 + 5) = 4.5.
  test.each<[string, string[], string[]]>([
    ['FAN read again is good', ['fan 5.02 hf 4.5'], ['capacitor-good']],
    ['FAN read again is as low', ['fan 4.5 hf 4.1'], ['section-fails-value']],
    ['there is no third reading', ['skip leads too short'], ['fan-section-undecided']],
  ])('FAN 4.5, which is what HERM to FAN would read: %s', async (_, lines, expected) => {
    const terminal = await atReadings();
    const asked = await terminal.types('herm 45.1 fan 4.5 case ol');
    expect(verdicts(asked)).toEqual([]);
    expect(asked.prompt.parts.map((p) => p.key)).toEqual(['fan', 'hf', 'case']);
    expect(verdicts(await terminal.types(...lines))).toEqual(expected);
    expect(await terminal.end()).toBe(0);
  });
});

describe('what must not pass for dead', () => {
  test.each([
    ['the second proving fails', '121 / 0.2 0 0.1 / 0 0 / 0', 'second proving failed'],
    ['240 V', '121 / 240 120 120 / 240 120 / 121', 'This is live'],
    ['a lost leg', '121 / 0.4 121 121 / 0 0 / 121', 'live with a lost leg'],
  ])('%s', async (_, line, notice) => {
    const terminal = new Program();
    await terminal.next();
    await terminal.set(at(0)).types(...upToProving);
    const told = await terminal.types(line);
    expect(strip(told)).not.toBe('PROVED DEAD');
    expect(textOf(told)).toContain(notice);
    expect(told.prompt.class).not.toBe('inside');
    expect(await terminal.end()).toBe(0);
  });

  test('31 silent minutes: the deadline is on the record, and the readings wait for a new proof', async () => {
    const terminal = await atReadings();
    const late = await terminal.set(at(31)).say('herm 44.6 fan 5.02 hf 4.51 case ol');
    expect(late.entries.find((e) => e.kind === 'voided')?.body).toMatchObject({
      reason: 'age',
      since: '2026-07-14T15:30:00.000Z',
    });
    expect(late.entries.some((e) => e.kind === 'answered')).toBe(false);
    expect(strip(late)).toBe('BEING PROVED (4 of 6)');
    const again = await terminal.types('still locked and open, 121 / 0 0 0 / 0 0 / 121', '9.3 / 0 0 0 / 9.3');
    expect(strip(again)).toBe('PROVED DEAD');
    expect(again.prompt.place).toMatch(/sections$/);
    expect(await terminal.end()).toBe(0);
  });

  test('a hand-over: nothing counts for the new holder, who begins at the first prompt', async () => {
    const terminal = await atReadings('--as', 'nell');
    const given = await terminal.types('hand over Idris');
    expect(given.prompt.kind).toBe('taking-over');
    expect((await terminal.say('take over')).refusal?.code).toBe('no-right');
    const taken = await terminal.set('--as idris').types('take over');
    expect([taken.prompt.kind, strip(taken)]).toEqual(['step', 'ENERGIZED OR NOT PROVED']);
    expect((await terminal.types('yes')).prompt.isolation[0]?.holder).toBe('idris');
    expect((await terminal.set('--as Nell').say('breaker, none, two legs, outlet')).refusal?.code).toBe('not-holder');
    expect(await terminal.end()).toBe(0);
  });
});

test('the word summary tells a finished call for the customer and the shop, and nothing before its end', async () => {
  const { stdout, code } = await run([], 'summary\na\nvrf\nbreaker on, nothing runs\nsummary\nquit\n');
  expect(code).toBe(0);
  expect(stdout).toContain('The summary is there once the call has ended.');
  expect(stdout).toMatch(/For the customer:[\s\S]*Nothing was fitted\.[\s\S]*For the shop:[\s\S]*Not signed\./);
});
