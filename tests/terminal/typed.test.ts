/** What a typed line becomes, and the clock and people of the command line. */
import { describe, expect, test } from 'vitest';
import { readTime } from '../../bot/terminal/clock.ts';
import { CREW, findPerson, firstPerson } from '../../bot/terminal/crew.ts';
import { readOptions } from '../../bot/terminal/options.ts';
import { parse } from '../../bot/terminal/parse.ts';
import { Reply } from '../../engine/index.ts';
import { Conversation } from '../people.ts';

const atMeans = new Conversation().types('d', 'psc', 'yes').prompt();
const atLook = new Conversation().types('d', 'psc', 'yes', 'breaker, no other feed, two legs, outlet', 'yes').prompt();
const typed = (line: string, prompt = atMeans, draft = {}) => Reply.parse(parse(line, { prompt, draft }, 'c1'));

describe('a typed line', () => {
  test('numbers choose from the lists as shown', () => {
    expect(typed('1 3, 6; 12 & 15.')).toMatchObject({
      kind: 'answer',
      seq: atMeans.seq,
      parts: { means: ['pull-out', 'breaker'], feeds: ['none'], supply: ['two-legs'], source: ['outlet'] },
    });
  });
  test.each(['99', '0', '1.5', '1-2', '1 V', '240', 'one', ''])('"%s" is left to the engine', (line) => {
    expect(typed(line)).toMatchObject({ kind: 'text', text: line });
  });
  test('a number is a reading where readings are asked', () => {
    expect(typed('1', atLook)).toMatchObject({ kind: 'text', text: '1' });
  });
  test('the draft goes with it', () => {
    const draft = { means: ['breaker'] };
    expect(typed('6 12 14', atMeans, draft)).toMatchObject({ parts: { means: ['breaker'], feeds: ['none'] } });
    expect(typed('outlet', atMeans, draft)).toMatchObject({ kind: 'text', draft });
    expect(typed('outlet')).not.toHaveProperty('draft');
  });
  test('of an earlier answer it is a change, and danger in it still counts', () => {
    const again = { ...atMeans, amends: 6 };
    const draft = { source: ['outlet'] };
    expect(typed('3', again)).toMatchObject({ kind: 'amend', of: 6, parts: { means: ['breaker'] } });
    expect(typed('breaker', again)).toMatchObject({ kind: 'text', amends: 6 });
    expect(typed('breaker', again, draft)).toMatchObject({ kind: 'amend', parts: { means: ['breaker'], ...draft } });
    expect(typed('breaker, smoke everywhere', again, draft)).toMatchObject({ kind: 'text', amends: 6 });
    expect(typed('stop', again, draft)).toMatchObject({ kind: 'text' });
  });
});

describe('the command line', () => {
  test.each([
    ['--as'],
    ['--as='],
    ['--fly'],
    ['d'],
    ['--at', 'noon'],
    ['--job', 'x'],
    ['--db', 'f', '--job', 'x', '--new', 'y'],
  ])('%s %s is wrong usage', (...argv) => {
    expect(readOptions(argv.filter((x) => x !== undefined))).toHaveProperty('wrong');
  });
  test('all of it', () => {
    expect(
      readOptions(['--db', 'f', '--as', 'Ines Vale', '--new', 'Hot', '--at', '2026-07-14T17:00+02:00', '--json']),
    ).toEqual({
      ...{ as: 'Ines Vale', db: 'f', job: null, title: 'Hot', at: '2026-07-14T15:00:00.000Z' },
      ...{ json: true, call: false },
    });
  });

  test.each([
    ['2026-07-14T15:00:00Z', '2026-07-14T15:00:00.000Z'],
    ['2026-07-14T15:00:00.1234567Z', '2026-07-14T15:00:00.123Z'],
    ['2028-02-29T00:00-05:00', '2028-02-29T05:00:00.000Z'],
    ['2027-02-29T00:00Z', null],
    ['2026-13-01T00:00Z', null],
    ['2026-07-14T24:00Z', null],
    ['2026-07-14', null],
    ['0000-01-01T00:00+10:00', null],
    ['', null],
  ])('%s is the instant %s', (text, instant) => {
    expect(readTime(text)).toBe(instant);
  });

  test('a person goes by id, name or the part of the name that one alone has', () => {
    for (const wanted of ['nell', 'Nell Ashgrove', 'ashgrove', ' NELL '])
      expect(findPerson(CREW, wanted)?.id).toBe('nell');
    expect(findPerson(CREW, 'ell')).toBeNull();
    const two = CREW.map((p) => ({ ...p, name: `Sam ${p.id}` }));
    expect([findPerson(two, 'sam'), findPerson(two, 'lou')?.id]).toEqual([null, 'lou']);
    expect(
      findPerson(
        CREW.map((p) => ({ ...p, active: false })),
        'nell',
      ),
    ).toBeNull();
    expect([firstPerson(CREW)?.roles, firstPerson([])]).toEqual([['technician'], null]);
  });
});
