/** Free answers: the plain words of the language for any option of that meaning, the trade's words as the flow gives them. */
import { describe, expect, test } from 'vitest';
import type { Part } from '../../../engine/schema.ts';
import { readLine, saysCant } from '../../../engine/understand/index.ts';
import { act, choose, confirm, field, option } from '../parts.ts';

const given = (text: string, ...parts: Part[]) => readLine(text, parts).given;

describe('plain answers', () => {
  const cools = choose('cools', false, [
    option('yes', 'Runs and cools', 'cold'),
    option('no', 'Still not', 'not cold'),
  ]);
  const feeds = choose('feeds', true, [option('none', 'No other feed'), option('indoor', 'Indoor unit')]);
  const kind = choose('class', false, [option('psc', 'PSC'), option('unsure', 'Not sure')]);
  const lock = confirm(
    'ok',
    'Lock still yours?',
    option('yes', 'Yes'),
    option('no', 'No'),
    option('cant', 'Can’t say'),
  );

  test.each<[string, Part, string]>([
    ['yep', cools, 'yes'],
    ['Yes.', cools, 'yes'],
    ['sí', cools, 'yes'],
    ['nope', cools, 'no'],
    ['no sir', cools, 'no'],
    ['not cold', cools, 'no'],
    ['no cold', cools, 'no'],
    ['not sure if psc', kind, 'unsure'],
    ['none', feeds, 'none'],
    ['None of these', feeds, 'none'],
    ['nada', feeds, 'none'],
    ['n/a', feeds, 'none'],
    ["don't know", kind, 'unsure'],
    ['I don’t know', kind, 'unsure'],
    ['idk', kind, 'unsure'],
    ['no idea', kind, 'unsure'],
    ['not sure', kind, 'unsure'],
    ['idk what it is', kind, 'unsure'],
    ["can't tell from here", kind, 'unsure'],
    ["can't tell", kind, 'unsure'],
    ['no sé', kind, 'unsure'],
    ['affirmative', lock, 'yes'],
    ['sure is', lock, 'yes'],
    ['impossible', lock, 'cant'],
    ['hecho', act('ok', 'Wires off'), 'done'],
    ['all done', act('ok', 'Wires off'), 'done'],
  ])('%s', (text, part, id) => {
    expect(given(text, part)).toEqual({ [part.key]: [id] });
  });

  test.each<[string, Part]>([
    ['no idea', cools],
    ['no tool', cools],
    ['yes and no', cools],
    ['yes?', cools],
    ['nothing that I know of yet', feeds],
    ['none yet', feeds],
  ])('%s is none of them', (text, part) => {
    expect(given(text, part)).toEqual({});
  });

  test('an id beside a name speaks of another answer: it is asked which', () => {
    const unit = choose('class', false, [
      option('psc', 'PSC with a run capacitor', 'psc'),
      option('inverter', 'Inverter, communicating or mini-split'),
    ]);
    for (const text of ['psc or inverter', 'psc but could be inverter', 'psc with inverter board', 'psc, maybe'])
      expect(given(text, unit), text).toEqual({});
    for (const text of ['psc, no inverter', 'not an inverter, its psc', 'psc', 'psc, i think the cap is old'])
      expect(given(text, unit), text).toEqual({ class: ['psc'] });
  });

  test('still with what goes on is not still', () => {
    const seen = choose('choice', false, [option('c', 'Compressor runs, fan still', 'fan still'), option('b', 'Hum')]);
    expect(given('fan still running', seen)).toEqual({});
    expect(given('fan still', seen)).toEqual({ choice: ['c'] });
    expect(given('fan still, hot', seen)).toEqual({ choice: ['c'] });
    expect(given('(c)', seen)).toEqual({ choice: ['c'] });
  });

  test('an option’s id is a name only where nothing else is said', () => {
    const why = choose('cause', true, [option('fan', 'Fan stiff or hot'), option('coil', 'Coil dirty', 'coil')]);
    expect(given('fan', why)).toEqual({ cause: ['fan'] });
    expect(given('fan, coil plugged', why)).toEqual({ cause: ['fan', 'coil'] });
    expect(given('FAN FLA .8', why)).toEqual({});
  });

  test('a plain word that two questions could mean is neither’s', () => {
    expect(given('none', feeds, choose('look', true, [option('none', 'Nothing odd')]))).toEqual({});
    expect(given('no', cools, confirm('ok', 'Lock still yours?'))).toEqual({});
  });
});

describe('it can’t be answered', () => {
  test.each([
    "can't",
    "I can't measure that",
    'can’t reach it',
    'cannot read the plate',
    'no such tool',
    'no tool',
    'no meter for that',
    'sorry, no resistor',
    "don't have one",
    'i dont have the tool',
    'we have no 9v battery',
    'not sure',
    "I'm not sure",
    'idk',
    'dunno',
    'no idea',
    "don't know",
    'unable',
    'no access',
    'my meter died'.slice(3),
    'no tengo',
    'No sé',
    'NO SIGNAL',
    'no clamp',
    'no amp clamp here',
    'no thermometer',
    'unreadable',
    'gone',
    'plate gone',
    'label is gone',
    'no label',
    'sun faded',
    'worn off',
    'no capacitance meter',
    'meter only does ohms',
    'my meter has no capacitance',
    'plate unreadable',
    'label is faded',
    'none on the truck',
    'not on the truck',
  ])('%s', (text) => {
    expect(saysCant(text)).toBe(true);
  });
  test.each([
    '',
    'yes',
    'no',
    'the fan can’t turn',
    'compressor cannot start',
    'no capacitor here',
    'no oil',
    'going up',
    'fan gone',
    'not bulged',
    'nothing',
    'cantilever bracket',
    'i can measure it',
    'herm 38.4',
    'notable rust',
    'no toolbox left behind',
    'meter only reads 0.2',
    'meter has no reading',
    'no part is burnt',
  ])('%j says something else', (text) => {
    expect(saysCant(text)).toBe(false);
  });
});

describe('keys of another question', () => {
  const third = [field('fan', 'µF'), field('hf', 'µF')];
  test('are never lost', () => {
    expect(readLine('fan 5.03 hf 4.52 case ol', third)).toEqual({
      given: { fan: '5.03', hf: '4.52' },
      unread: ['case ol'],
    });
    expect(readLine('case ol fan 5.03 hf 4.52', third)).toEqual({
      given: { fan: '5.03', hf: '4.52' },
      unread: ['case ol'],
    });
    expect(readLine('fan 5.03 case 12 meg hf 4.52', third)).toEqual({
      given: { fan: '5.03', hf: '4.52' },
      unread: ['case 12 meg'],
    });
    expect(readLine('herm 44.6 fan 5.03 hf 4.52', third)).toEqual({
      given: { fan: '5.03', hf: '4.52' },
      unread: ['herm 44.6'],
    });
  });
  test('are taken where the question has them as optional', () => {
    const more = [...third, field('case', 'MΩ', { optional: true, unitNeeded: true })];
    expect(readLine('fan 5.03 hf 4.52 case ol', more)).toEqual({
      given: { fan: '5.03', hf: '4.52', case: 'ol' },
      unread: [],
    });
    expect(readLine('5.03 4.52', more)).toEqual({ given: { fan: '5.03', hf: '4.52' }, unread: [] });
    expect(readLine('5.03 4.52 _', more)).toEqual({ given: { fan: '5.03', hf: '4.52', case: '_' }, unread: [] });
  });
  test('a field goes by its question too', () => {
    const named = [field('fan', 'µF', { ask: 'FAN to C' }), field('hf', 'µF', { ask: 'HERM to FAN' })];
    expect(given('HERM to FAN: 4.52 µF, FAN to C: 5.03 µF', ...named)).toEqual({ fan: '5.03 µF', hf: '4.52 µF' });
  });
});
