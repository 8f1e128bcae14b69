/** Live work: with which answer power is on, and what has to be agreed on anew before it goes on. */
import { describe, expect, test } from 'vitest';
import { check } from '../../engine/check.ts';
import { flatten } from '../../engine/flatten.ts';
import { SHELF } from '../../flows/index.ts';
import { Conversation } from '../people.ts';
import { at, atFigures, GOOD, here, MEANS, MOTORS, PLATE, PROVING, RESIDUAL, strip, typed } from './given.ts';

const AGAIN = ['yes', 'clean, 1 cap', PROVING, RESIDUAL];
/** Every isolation that the strip names: none may stand once power is on. */
const strips = (c: Conversation): string[] => c.prompt().isolation.map(({ state }) => state);
const DEAD_INDOORS = ['yes', MEANS, 'yes', 'clean, 1 cap, 7.5 6% 440, two terminals', PROVING, '9.3 / 0.4 / 9.3'];
/** Probes placed at the indoor board, dead. */
const placed = () =>
  typed(new Conversation(), ['a', 'psc', 'blank', 'doors on', 'qualified', 'psc', ...DEAD_INDOORS, 'placed']);
/** The same cabinet with an electronic blower, its bus rested. */
const RESTED = ['i', 'yes', 'nothing', 'ecm', 'off now', 'rested'];
const INSIDE = ['yes', 'yes', MEANS, 'yes', 'clean, 0', PROVING];
const electronic = (...then: string[]) => {
  const c = typed(new Conversation(), RESTED.slice(0, 5)).wait(6);
  return typed(c, ['rested', ...INSIDE, ...then]);
};

describe('given the answer with which the lock comes off and power goes on', () => {
  test('that the probes are placed, then nothing is proved dead while the call is asked, before any reading', () => {
    const c = placed();
    expect([c.place, strips(c).includes('proved')]).toEqual(['round~1/source/call', false]);
    expect([here(typed(c, ['just now'])), strips(c).includes('proved')]).toEqual(['wait', false]);
  });
  test('and it is taken back, then hands go in under a new proof alone', () => {
    const c = typed(placed(), ['just now', 'take back', 'take back']);
    expect([c.place, strip(c)]).toEqual(['dead:indoor/locked', 'being-proved']);
  });
  test('that they can’t be placed, then the isolation stands: nothing came on', () => {
    const c = electronic();
    typed(c, ['cant be placed']);
    expect(c.entries.some((e) => e.kind === 'voided')).toBe(false);
    expect(c.place).toBe('!raised');
  });
  test('that the unit is closed up, then the strip says so at once', () => {
    expect(strips(atFigures()).includes('proved')).toBe(false);
  });
});

describe('given an electronic motor whose bus had rested before live readings', () => {
  test.each([
    ['the probes, before anything was read', ['placed'], ['take back']],
    ['a reading and then the probes', ['placed', '25'], ['take back', 'take back']],
  ])('when %s are taken back, then it rests anew, by the record', (_, on, back) => {
    const c = typed(electronic(...on), back);
    expect([c.place, c.notices]).toEqual(['round~1/blower/rests/off', expect.stringContaining('rests anew')]);
    expect(typed(c, ['off now']).type('yes').refusal?.code).toBe('too-early');
    expect(here(typed(c.wait(5), ['yes', 'yes', 'clean, 0', PROVING]))).toBe('probes');
  });
  test('when hours went by between the rest and the lock, then nothing held it off: it rests anew', () => {
    const rested = () => typed(typed(new Conversation(), RESTED.slice(0, 5)).wait(6), ['rested', 'yes']);
    expect(here(typed(rested().wait(29), INSIDE.slice(1)))).toBe('probes');
    const c = typed(rested().wait(180), INSIDE.slice(1));
    expect([c.place, strips(c).includes('proved')]).toEqual(['round~1/blower/rests/off', false]);
    expect(here(typed(typed(c, ['off now']).wait(5), ['yes', 'yes', 'clean, 0', PROVING]))).toBe('probes');
  });
  test('when a reading alone is taken back, then it is read again: no hand goes in for that', () => {
    expect(here(typed(electronic('placed', '25'), ['take back']))).toBe('call');
  });
});

describe('given a live sitting that was agreed on', () => {
  test('when the job changes hands, then the new holder agrees before the next live reading', () => {
    const c = atFigures();
    c.type('hand over tomas', 'dana').type('take over', 'tomas');
    expect([here(c), c.notices]).toEqual(['closed', expect.stringContaining('agree on it anew')]);
    expect(here(typed(c, ['closed'], 'tomas'))).toBe('figures');
  });
  test('when there was an emergency in it, then it is agreed on anew, once', () => {
    const c = typed(atFigures(), ['there is smoke here']);
    c.type('release all clear, seen in person', 'ruth');
    expect(here(c)).toBe('closed');
    expect(here(typed(c, ['closed']))).toBe('figures');
  });
  test('when it was stopped and somebody goes on, then it is agreed on anew', () => {
    const c = typed(atFigures(), ['stop', 'cover is on, no lock on']).wait(600);
    expect(here(typed(c, ['go on']))).toBe('closed');
  });
  test('when a reading of it stands already, then that is kept and only the rest asks', () => {
    const c = typed(atFigures(), ['230 220 comp 13.1 fan .9 split 19']);
    expect(here(c)).toBe('poles');
    c.type('hand over tomas', 'dana').type('take over', 'tomas');
    expect(here(c)).toBe('closed');
    expect(here(typed(c, ['closed'], 'tomas'))).toBe('poles');
  });
  test('when hands were to go in again and the job changes hands, then who takes the probes is asked both', () => {
    const c = placed();
    c.type('hand over tomas', 'dana').type('take over', 'tomas');
    expect(typed(c, ['left alone'], 'tomas').place).toBe('round~1/source/ready');
    expect(typed(c, ['qualified'], 'tomas').place).toBe('dead:indoor/fit');
  });
  test('then dead work of another round asks for none of it', () => {
    const c = typed(at('readings'), [GOOD, ...MOTORS, PLATE, 'closed', '240 239 comp 13.1 fan 1.6', 'off']);
    c.type('hand over tomas', 'dana').type('take over', 'tomas');
    expect(c.place).toBe('round~2/observation');
    expect(typed(c, ['d', 'yes', MEANS, ...AGAIN], 'tomas').place).toBe('round~2/block/line');
  });
});

describe('given a shell that was felt before the terminal cover comes off', () => {
  const OPEN = ['cr ol cs ol sr 3.6 g ol', 'cold', 'agreed', 'cold'];
  const opened = () => typed(at('readings'), [GOOD, 'spin free', ...OPEN]);
  test('when power came back, then a senior agrees anew and it is felt anew', () => {
    const c = typed(opened(), ['power is back']);
    expect(c.place).toBe('round~1/terminals/agreed');
    expect(typed(c, ['agreed', 'cold', ...AGAIN]).place).toBe('round~1/terminals/pairs');
  });
  test('when the terminals were read already, then what they read stands', () => {
    const c = typed(opened(), ['cr .9 cs 2.7 sr 3.6 g ol', 'power is back']);
    expect(c.place.startsWith('dead:outdoor')).toBe(true);
  });
});

test('every answer with which power goes on is one of its step’s', () => {
  const plan = flatten(SHELF[0]);
  expect(check(SHELF[0])).toEqual([]);
  const on = [...plan.places.values()].flatMap((p) =>
    'parts' in p.step ? (p.step.powers ?? []).map((o) => [p.id, o, p.to[o]]) : [],
  );
  expect(on.length).toBeGreaterThan(20);
  expect(on.filter(([, , to]) => to === undefined)).toEqual([]);
});
