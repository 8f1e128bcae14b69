import { describe, expect, test } from 'vitest';
import type { Part } from '../../../engine/schema.ts';
import { readField, readLabel, readLine } from '../../../engine/understand/index.ts';
import {
  act,
  choose,
  confirm,
  field,
  label,
  note,
  open,
  option,
  photo,
  proving,
  running,
  sections,
  symptoms,
} from '../parts.ts';

const given = (text: string, parts: readonly Part[]) => readLine(text, parts).given;
const unread = (text: string, parts: readonly Part[]) => readLine(text, parts).unread;

describe('readings by name', () => {
  test.each([
    ['herm 43.8 fan 5.1 hf 4.57 case ol', { herm: '43.8', fan: '5.1', hf: '4.57', case: 'ol' }],
    ['case ol HF 4.57 Fan 5.1 HERM 43.8', { herm: '43.8', fan: '5.1', hf: '4.57', case: 'ol' }],
    ['herm 38.4 uF fan: 5,1 case=1.2 meg', { herm: '38.4 uF', fan: '5,1', case: '1.2 meg' }],
    ['herm is 38.4, fan is 5', { herm: '38.4', fan: '5' }],
    ['herm43.8 fan.9', { herm: '43.8', fan: '.9' }],
    ['fan -0,3', { fan: '-0,3' }],
    ['hf _ herm 38 fan 5', { hf: '_', herm: '38', fan: '5' }],
    ['case still climbing', { case: 'still climbing' }],
    ['case >500M herm 40', { case: '>500M', herm: '40' }],
    ['case open', { case: 'open' }],
    ['case O.L. fan 5', { case: 'O.L', fan: '5' }],
    ['herm 1O.2', { herm: '1O.2' }],
  ])('%s', (text, expected) => {
    expect(readLine(text, sections)).toEqual({ given: expected, unread: [] });
  });

  test('a number glued before its name is its own', () => {
    expect(readLine('43.8herm 5.1fan case ol', sections)).toEqual({
      given: { herm: '43.8', fan: '5.1', case: 'ol' },
      unread: [],
    });
    expect(given('241 240 13.1comp .9fan', running)).toEqual({ line: '241', load: '240', comp: '13.1', fan: '.9' });
    expect(given('2caps', open)).toEqual({ count: '2' });
  });

  test('names with marks and spaces', () => {
    expect(given('L1–L2 0.2 l1-g 0 T2 G 0.1', proving)).toEqual({ l1l2: '0.2', l1g: '0', t2g: '0.1' });
  });

  test('a name that two fields share takes two values', () => {
    const block = [
      field('f1', 'Ω', { words: ['fuses'] }),
      field('f2', 'Ω', { words: ['fuses'] }),
      field('coil', 'Ω'),
      field('t1g', 'Ω'),
    ];
    expect(given('fuses 0.1 0.2  coil 12.6  t1g ol', block)).toEqual({ f1: '0.1', f2: '0.2', coil: '12.6', t1g: 'ol' });
    expect(readLine('fuses 0.1 coil 12.6', block)).toEqual({ given: { coil: '12.6' }, unread: ['fuses 0.1'] });
    for (const text of ['fuses .1/.2', 'fuses .1 and .2', 'fuses .1, .2', 'fuses .1 fuses .2', 'fuses .1 & .2'])
      expect(readLine(text, block)).toEqual({ given: { f1: '.1', f2: '.2' }, unread: [] });
    expect(given('fuses .1, 12.6 coil', block)).toEqual({ coil: '12.6' });
    // A slash with spaces parts groups, and a row of commas may be the whole line.
    for (const text of ['fuses .1 / .2 / 12.6', 'fuses .1, .2, 12.6, ol']) expect(given(text, block)).toEqual({});
    expect(given('fuses .1 .2 fuses .3 .4', block)).toEqual({});
  });
  test('a name that two share, the second of them left out', () => {
    const poles = [
      field('p1', 'Ω', { words: ['contacts'] }),
      field('p2', 'Ω', { words: ['contacts'], optional: true }),
      field('coil', 'Ω'),
    ];
    expect(given('contacts .1 coil 12.6', poles)).toEqual({ p1: '.1', coil: '12.6' });
    const three = ['a', 'b', 'c'].map((key) => field(key, 'Ω', { words: ['fan'] }));
    expect(given('fan 15/33/48', three)).toEqual({ a: '15', b: '33', c: '48' });
    expect(given('fan 15/33', three)).toEqual({});
  });

  test('a name is never taken for a unit', () => {
    const windings = ['cr', 'cs', 'sr', 'g'].map((key) => field(key, 'Ω'));
    expect(given('cr .9 cs 2.7 sr 3.6 g ol', windings)).toEqual({ cr: '.9', cs: '2.7', sr: '3.6', g: 'ol' });
  });

  test('unless nothing follows it', () => {
    const live = [
      field('l1l2', 'V', { words: ['v'] }),
      field('comp', 'A', { words: ['c'] }),
      field('fan', 'A', { words: ['f'] }),
    ];
    const expected = { l1l2: '241', comp: '13.1', fan: '.9' };
    expect(given('v 241 c 13.1 f .9', live)).toEqual(expected);
    expect(given('241 c 13.1 f .9', live)).toEqual(expected);
    expect(given('241 v comp 13.1 a fan .9 a', live)).toEqual({ l1l2: '241 v', comp: '13.1 a', fan: '.9 a' });
  });

  test('a name of several words behind a number is no unit', () => {
    const pairs = [['cr', 'c-r'], ['cs', 'c-s'], ['sr', 's-r'], ['g']].map(([key = '', ...words]) =>
      field(key, 'Ω', { words }),
    );
    expect(given('c-r .9 c-s 2.7 s-r 3.6 g ol', pairs)).toEqual({ cr: '.9', cs: '2.7', sr: '3.6', g: 'ol' });
    expect(given('cr 3 s', pairs)).toEqual({ cr: '3 s' });
  });

  test('one letter behind a number is rather its unit', () => {
    const live = [field('fan', 'A', { words: ['f'] }), field('split', 'Δ°F')];
    const expected = { fan: '.9', split: '19f' };
    expect(given('fan .9 split 19f', live)).toEqual(expected);
    expect(given('fan .9 split 19 degrees', live)).toEqual({ ...expected, split: '19 degrees' });
    expect(given('f .9 split 10 c', live)).toEqual({ ...expected, split: '10 c' });
  });

  test.each([
    ['herm reads 43.8, fan shows 5.1', { herm: '43.8', fan: '5.1' }],
    ['herm → 43.8, fan → 5.1', { herm: '43.8', fan: '5.1' }],
    ['43.8 herm, 5.1 fan', { herm: '43.8', fan: '5.1' }],
    ['43.8 on herm / 5.1 on the fan', { herm: '43.8', fan: '5.1' }],
    ['43.8 herm', { herm: '43.8' }],
  ])('%s', (text, expected) => {
    expect(readLine(text, sections)).toEqual({ given: expected, unread: [] });
  });

  test('names that begin with a number', () => {
    const relay = [field('contacts', 'Ω', { words: ['1-2'] }), field('coil', 'Ω', { words: ['5-2'] })];
    expect(given('relay 1-2 ol  5-2 5.4k', relay)).toEqual({ contacts: 'ol', coil: '5.4k' });
  });

  test('a time of day is no reading', () => {
    const control = [field('yc', 'V', { words: ['y-c'] }), field('coil', 'V')];
    expect(readLine('14:08  y-c 25.6  coil 0.0', control)).toEqual({
      given: { yc: '25.6', coil: '0.0' },
      unread: ['14:08'],
    });
  });
});

describe('figures that begin with their decimal mark', () => {
  test.each([
    ['fan .8', '.8'],
    ['fan.8', '.8'],
    ['fan: .8', '.8'],
    ['fan=.8', '.8'],
    ['fan .80A', '.80A'],
    ['fan ,8', ',8'],
    ['fan: ,8', ',8'],
    ['fan -.3', '-.3'],
    ['fan -,3', '-,3'],
  ])('%s', (text, fan) => {
    expect(readLine(text, running)).toEqual({ given: { fan }, unread: [] });
    expect(readLine(`comp 13.1 ${text} split 19`, running)).toEqual({
      given: { comp: '13.1', fan, split: '19' },
      unread: [],
    });
  });
  test('by order', () => {
    expect(given('241 240 13.1 .9 19', running)).toMatchObject({ comp: '13.1', fan: '.9' });
    expect(given('241 240 13,1 ,9 19', running)).toMatchObject({ comp: '13,1', fan: ',9' });
    expect(given('241/240/13.1/,9/19', running)).toMatchObject({ comp: '13.1', fan: ',9' });
    expect(given(',8', [field('fan', 'A')])).toEqual({ fan: ',8' });
  });
  test.each([
    // Two numbers with their comma on the wrong side, or one with a space in it.
    ['44 ,5', {}],
    ['fan 44 ,5 herm 45', { herm: '45' }],
    ['herm 43 .8 fan 5', { fan: '5' }],
    ['fan,8', {}],
    ['fan,,8', {}],
  ])('%s is asked', (text, expected) => {
    expect(given(text, sections)).toEqual(expected);
  });
});

describe('readings by their order', () => {
  test('a proving line', () => {
    const expected = { source: '121', l1l2: '0.2', l1g: '0', l2g: '0.1', t1g: '0', t2g: '0', again: '121' };
    expect(given('121 / 0.2 0 0.1 / 0 0 / 121', proving)).toEqual(expected);
    expect(given('121/0.2/0/0.1/0/0/121', proving)).toEqual(expected);
    expect(given('121 0.2 0 0.1 0 0 121', proving)).toEqual(expected);
    expect(given('121, 0.2, 0, 0.1, 0, 0, 121', proving)).toEqual(expected);
    expect(given('121,0.2,0,0.1,0,0,121', proving)).toEqual(expected);
    expect(given('121 | 0.2 0 0.1 | 0 0 | 121', proving)).toEqual(expected);
    expect(readLine('121 / 0.2 0 0.1 / 0 0 / 121 all good', proving)).toEqual({
      given: expected,
      unread: ['all good'],
    });
  });

  test('commas part columns where they can be nothing else', () => {
    expect(given('43.8,5.1,4.57,ol', sections)).toEqual({ herm: '43.8', fan: '5.1', hf: '4.57', case: 'ol' });
    expect(given('43.8,5.1', sections)).toEqual({ herm: '43.8', fan: '5.1' });
    for (const text of ['1,234.5', '1.234,5', '43,8,5,1']) expect(given(text, sections)).toEqual({});
    const tabs = ['t1', 't2', 't3'].map((key) => field(key, 'count'));
    expect(given('1,4,3', tabs)).toEqual({ t1: '1', t2: '4', t3: '3' });
  });

  test('signs, decimal commas and units survive', () => {
    const residual = ['battery', 'hc', 'fc', 'hf', 'again'].map((key) => field(key, 'V'));
    expect(given('9,3 V / 0,3 -0,4 −0.1 / 9,3 V', residual)).toEqual({
      battery: '9,3 V',
      hc: '0,3',
      fc: '-0,4',
      hf: '−0.1',
      again: '9,3 V',
    });
  });

  test('as many as must be given, or as many as can be', () => {
    expect(given('43.8 5.1', sections)).toEqual({ herm: '43.8', fan: '5.1' });
    expect(given('43.8 5.1 _ ol', sections)).toEqual({ herm: '43.8', fan: '5.1', hf: '_', case: 'ol' });
    expect(readLine('43.8 5.1 4.57', sections)).toEqual({ given: {}, unread: ['43.8 5.1 4.57'] });
    expect(readLine('121 0.2 0', proving)).toEqual({ given: {}, unread: ['121 0.2 0'] });
  });

  test('before the first name, where they fit', () => {
    expect(given('241 240 comp 13.1 fan .9 split 19', running)).toEqual({
      line: '241',
      load: '240',
      comp: '13.1',
      fan: '.9',
      split: '19',
    });
    expect(readLine('241 comp 13.1 fan .9 split 19', running)).toEqual({
      given: { comp: '13.1', fan: '.9', split: '19' },
      unread: ['241'],
    });
  });

  test('one number for the one field that is missing', () => {
    expect(given('5.03', [field('fan', 'µF')])).toEqual({ fan: '5.03' });
    expect(given('line 241 load 240 comp 13.1 fan .9, 19', running)).toMatchObject({ split: '19' });
    expect(given('44.6 fan 5.03', sections)).toEqual({ herm: '44.6', fan: '5.03' });
  });
});

describe('nothing is guessed', () => {
  test.each([
    ['43.8 herm 5.1 fan', {}, ['43.8 herm 5.1 fan']],
    ['241 comp 13.1 fan', {}, ['241 comp 13.1 fan']],
    ['hrem 5.1 fan 43', { fan: '43' }, ['hrem 5.1']],
    ['herm 44 fan 5 herm 45', { fan: '5' }, ['herm 44', 'herm 45']],
    ['herm 44 45 fan 5', { fan: '5' }, ['herm 44 45']],
    ['herm 44 5 fan 5', { fan: '5' }, ['herm 44 5']],
    ['12 turns', {}, ['12 turns']],
    // Behind "two singles" both numbers belong to a phrase.
    ['used two 45 and 5', {}, ['used two 45 and 5']],
    ['44 + 5', {}, ['44 + 5']],
    ['44 5?', {}, ['44 5']],
    ['herm 44? fan 5', { fan: '5' }, ['herm 44']],
    ['herm 44 fan 5?', { herm: '44' }, ['fan 5']],
    ['herm - 38.4', {}, ['herm - 38.4']],
    ['hello there', {}, ['hello there']],
    ['', {}, []],
  ])('%s', (text, expected, left) => {
    const parts = text.startsWith('241') ? running : sections;
    expect(readLine(text, parts)).toEqual({ given: expected, unread: left });
  });
});

describe('what is said instead of a figure', () => {
  const shell = sections;
  test('is asked, and not passed over', () => {
    expect(given('herm 44 fan 5 case short', shell)).toEqual({ herm: '44', fan: '5', case: 'short' });
    expect(given('herm good fan 5', shell)).toEqual({ herm: 'good', fan: '5' });
    expect(given('herm 44 fan 5 case ol good', shell)).toEqual({ herm: '44', fan: '5', case: 'ol' });
  });
  test('O/L is OL', () => {
    expect(readLine('herm 44 fan 5 case O/L', shell)).toEqual({
      given: { herm: '44', fan: '5', case: 'O/L' },
      unread: [],
    });
    expect(readField('O/L', field('case', 'MΩ'))).toEqual({ value: { kind: 'over', typed: 'O/L' } });
    expect(given('44 5 4.5 o/l', shell)).toEqual({ herm: '44', fan: '5', hf: '4.5', case: 'o/l' });
  });
});

describe('how many capacitors', () => {
  test.each([
    ['clean, one cap', { condition: ['clean'], count: 'one' }],
    ['clean, two caps', { condition: ['clean'], count: 'two' }],
    ['dos caps, clean', { condition: ['clean'], count: 'dos' }],
    ['caps: 2, clean', { condition: ['clean'], count: '2' }],
    ['clean 1 cap 45 5 440', { condition: ['clean'], count: '1' }],
  ])('%s', (text, expected) => {
    expect(given(text, open)).toEqual(expected);
  });
  // A second one, or a number of something else: the residual readings hang on this count.
  test.each([
    'clean, 1 run cap 1 start cap',
    'clean, 1 cap 1 start cap',
    'clean, 1 cap and 1 start cap',
    'clean, cap 1 start cap',
    'clean, 1 cap 2',
    'clean, 1 old start cap',
  ])('%s is asked', (text) => {
    expect(given(text, open)).toEqual({ condition: ['clean'] });
  });
});

describe('a print pasted with its line ends', () => {
  test.each([
    'clean, 1 cap\n45+5 MFD\n±5%\n440 VAC',
    '45+5 MFD\n±5%\n440 VAC\n50/60Hz\nPROTECTED S3\n1 cap\nclean',
    '1 cap\n45+5 MFD\n+/-5%\n370/440V\n50/60 Hz\nclean',
  ])('%j', (text) => {
    const read = readLine(text, open);
    expect(read).toMatchObject({ given: { condition: ['clean'], count: '1' }, unread: [] });
    expect(readLabel(String(read.given[label.key]), { tolerance: '7' })).toMatchObject({
      label: { herm: '45', fan: '5', below: '5', above: '5', volts: '440' },
    });
  });
  test('and nothing of the next line that is no print', () => {
    expect(given('clean, 1 cap 45+5\n2 wires', open)).toMatchObject({ count: '1', print: '45+5' });
    const part = [...sections.slice(0, 2), { ...label, optional: true }];
    expect(given('45/5 MFD\n440 VAC\nherm 45.3\nfan 5.04', part)).toEqual({
      print: '45/5 MFD\n440 VAC',
      herm: '45.3',
      fan: '5.04',
    });
    expect(given('45/5 440v herm 45.3 fan 5.04', part)).toMatchObject({ print: '45/5 440v', herm: '45.3' });
  });
});

describe('what is seen when the cover is off', () => {
  test.each([
    ['cover off clean, 1 cap, 45+5 6% 440', { condition: ['clean'], count: '1', print: '45+5 6% 440' }, ['cover off']],
    ['clean 1 cap 45+5 6% 440', { condition: ['clean'], count: '1', print: '45+5 6% 440' }, []],
    [
      '45+5 µF ±6 % 440 VAC 50/60 Hz, clean, caps 2',
      { condition: ['clean'], count: '2', print: '45+5 µF ±6 % 440 VAC 50/60 Hz' },
      [],
    ],
    ['2 caps, 40/5 MFD 370V, loose, burned', { condition: ['burnt', 'loose'], count: '2', print: '40/5 MFD 370V' }, []],
    ['clean, 1, 7.5 MFD', { condition: ['clean'], count: '1', print: '7.5 MFD' }, []],
    ['clean', { condition: ['clean'] }, []],
    ['not bulged, burnt', { condition: ['burnt'] }, ['not bulged']],
    ['no oil', {}, ['no oil']],
    ['maybe bulged', {}, ['maybe bulged']],
    ['is that oil?', {}, ['is that oil']],
    ['1 cap 2 caps', {}, ['1 cap 2 caps']],
    ['2 bulged', { condition: ['bulged'] }, ['2']],
  ])('%s', (text, expected, left) => {
    expect(readLine(text, open)).toEqual({ given: expected, unread: left });
  });

  test('a pair of readings is no print where readings are asked', () => {
    expect(given('40/5', [...sections.slice(0, 2), label])).toEqual({ herm: '40', fan: '5' });
  });
});

describe('choices', () => {
  test.each([
    ['d', 'd'],
    ['D', 'd'],
    ['d.', 'd'],
    ['d  fan runs comp hums 3 sec clicks', 'd'],
    ['c   (stat off first, then pull-out)', 'c'],
    ['a', 'a'],
    ['a ; stat off', 'a'],
    ['silent', 'a'],
    ['it is silent', 'a'],
    ['Hum, nothing turns', 'b'],
    ['hum nothing turns', 'b'],
    ['compressor runs, fan still', 'c'],
    ['2', 'b'],
    ['2.', 'b'],
  ])('%s → %s', (text, id) => {
    expect(given(text, [symptoms])).toEqual({ choice: [id] });
  });

  test.each([
    'a breaker tripped',
    'not silent',
    'silent?',
    'silent hums',
    '9',
    '0',
    '1 2',
    '1.5',
    'i do not know',
    'the d one',
    'c or d',
    'c/d',
    'd, c',
    'd and c',
    'd i think',
    'silent probably',
    'i guess silent',
    'silent, i think',
  ])('%s is none', (text) => {
    expect(given(text, [symptoms])).toEqual({});
  });

  test('several, in the order of the list', () => {
    const kinds = open.slice(0, 1);
    expect(given('oil and bulged', kinds)).toEqual({ condition: ['bulged', 'oil'] });
    expect(given('3,2', kinds)).toEqual({ condition: ['bulged', 'oil'] });
    expect(given('2 3', kinds)).toEqual({ condition: ['bulged', 'oil'] });
    expect(given('clean, oil', kinds)).toEqual({ condition: ['clean', 'oil'] });
  });

  test('two lists in one line, the longest name first', () => {
    const means = choose('means', true, [
      option('pull-out', 'Pull-out'),
      option('breaker', 'Breaker'),
      option('plug', 'Plug'),
    ]);
    const feeds = choose('feeds', true, [
      option('none', 'No other feed', 'no second feed'),
      option('indoor', 'Indoor unit'),
    ]);
    expect(readLine('pull-out + breaker, no other feed', [means, feeds])).toEqual({
      given: { means: ['pull-out', 'breaker'], feeds: ['none'] },
      unread: [],
    });
    expect(given('pullout, no other feed', [means, feeds])).toEqual({ means: ['pull-out'], feeds: ['none'] });
    expect(given('breaker, indoor unit', [means, feeds])).toEqual({ means: ['breaker'], feeds: ['indoor'] });
    expect(given('1', [means, feeds])).toEqual({});
  });

  test('a number may be the name of an option where no number must be given', () => {
    const supply = choose('supply', false, [
      option('two-legs', '208 to 240 V', '240', '230'),
      option('neutral', '120 V', '120'),
    ]);
    const stated = field('stated', 'V', { optional: true });
    expect(given('240', [supply, stated])).toEqual({ supply: ['two-legs'] });
    expect(given('stated 238, 240', [supply, stated])).toEqual({ supply: ['two-legs'], stated: '238' });
    expect(given('240', [supply, field('line', 'V')])).toEqual({ line: '240' });
  });

  test('a name that two lists share is nobody’s', () => {
    const two = [choose('a', false, [option('x', 'Same')]), choose('b', false, [option('y', 'Same')])];
    expect(readLine('same', two)).toEqual({ given: {}, unread: ['same'] });
  });
});

describe('confirm and act', () => {
  const lock = confirm('ok', 'Lock still yours, means still open?');
  const wires = act('ok', 'Take the wires off HERM, FAN and C.', option('done', 'Wires off'), option('cant', 'Can’t'));

  test.each(['yes', 'Y', 'yep', 'yeah', 'ok', 'OK!', 'done', 'true', 'sí', 'yes lock still yours', 'yes.'])(
    '%s is yes',
    (text) => {
      expect(readLine(text, [lock])).toEqual({ given: { ok: ['yes'] }, unread: [] });
    },
  );
  test.each(['no', 'N', 'nope', 'no lock', 'no, the tag fell'])('%s is no', (text) => {
    expect(given(text, [lock])).toEqual({ ok: ['no'] });
  });
  test.each([
    'not ok',
    'yes?',
    'ok but the tag is missing',
    'yes, except the fan',
    'yes no',
    'yes, not sure',
    'never',
    'is it ok',
    'cant',
    'the lock',
  ])('%s is neither', (text) => {
    expect(given(text, [lock])).toEqual({});
  });
  test.each(['done', 'ok', 'yes', 'wires off', 'wires off herm fan c'])('%s is done', (text) => {
    expect(readLine(text, [wires])).toEqual({ given: { ok: ['done'] }, unread: [] });
  });
  test.each(["can't", 'cant', 'cannot', 'can not', "I can't get C off"])('%s is can’t', (text) => {
    expect(given(text, [wires])).toEqual({ ok: ['cant'] });
  });
  test.each(['not off', 'not done yet', 'almost done', 'off?', 'power off now', 'no'])('%s is not done', (text) => {
    expect(given(text, [wires])).toEqual({});
  });
  test.each([
    'the wires are off',
    'took all the wires off',
    'ive got the wires off now',
    '👍',
    '👍🏽',
    'ready',
    'listo',
  ])('%s is done, too', (text) => {
    expect(readLine(text, [wires])).toEqual({ given: { ok: ['done'] }, unread: [] });
  });
  test('an act with two outcomes has no plain no', () => {
    const spin = act(
      'ok',
      'Spin the fan.',
      option('done', 'Spins free'),
      option('no', 'Stiff'),
      option('cant', 'Can’t'),
    );
    expect(given('no', [spin])).toEqual({});
    expect(given('stiff', [spin])).toEqual({ ok: ['no'] });
    expect(given('it spins free', [spin])).toEqual({ ok: ['done'] });
  });
  test.each(['it', 'they', 'the', 'it the', 'i', 'we have', 'all of it', 'now', 'lock it', 'tag it', 'tagged it'])(
    '%s says nothing yet',
    (text) => {
      const locked = confirm('ok', 'Open it, lock it, tag it, try it.', option('yes', 'Open, locked, tagged, tried'));
      expect(given(text, [locked])).toEqual(text === 'all of it' ? { ok: ['yes'] } : {});
    },
  );
  test('wires off is no answer to wires back', () => {
    const back = act('ok', 'Put the wires back.', option('done', 'Wires back, all tight', 'wires back'));
    for (const text of ['off', 'wires off', 'all wires off']) expect(given(text, [back])).toEqual({});
    const right = confirm('ok', 'It is put right now', option('yes', 'Put right'));
    expect(given('put', [right])).toEqual({});
  });
  test('a word of the other answer beside a yes', () => {
    const fit = confirm(
      'ok',
      'Are you fit?',
      option('yes', 'Yes, all of it'),
      option('no', 'No, something is missing'),
    );
    expect(given('yes', [fit])).toEqual({ ok: ['yes'] });
    for (const text of ['yes something is missing', 'yes, gloves missing', 'is it all ok'])
      expect(given(text, [fit])).toEqual({});
  });
  test('half of an answer’s words, and no other', () => {
    const locked = confirm(
      'ok',
      'Open it, lock it, tag it, try it.',
      option('yes', 'Open, locked, tagged, tried'),
      option('no', 'Something started'),
      option('cant', 'No lock fits'),
    );
    expect(readLine('locked tagged', [locked])).toEqual({ given: { ok: ['yes'] }, unread: [] });
    expect(given('locked, tagged', [locked])).toEqual({ ok: ['yes'] });
    expect(given('locked and tagged', [locked])).toEqual({ ok: ['yes'] });
    expect(given('no lock', [locked])).toEqual({ ok: ['cant'] });
    // It may say that something started, or that it isn't locked: no question was asked.
    expect(given('no', [locked])).toEqual({});
    expect(given('something started', [locked])).toEqual({ ok: ['no'] });
    expect(given('locked, all tagged now', [locked])).toEqual({ ok: ['yes'] });
    for (const text of [
      'open',
      'locked',
      'not locked tagged',
      'locked tagged?',
      'locked tagged soon',
      'locked, not tagged',
    ])
      expect(given(text, [locked])).toEqual({});
    expect(
      given('still yours, 121 / 0.2 0 0.1 / 0 0 / 121', [
        confirm('ok', 'Lock?', option('yes', 'Still yours, still open')),
        ...proving,
      ]),
    ).toMatchObject({ ok: ['yes'] });
  });
  test('yes and the line', () => {
    expect(given('yes 121 / 0.2 0 0.1 / 0 0 / 121', [lock, ...proving])).toMatchObject({
      ok: ['yes'],
      source: '121',
      again: '121',
    });
    expect(given('yes 121', [lock, ...proving])).toEqual({});
  });
  test('a plain yes is nobody’s where two could mean it', () => {
    expect(given('yes', [lock, confirm('other', 'Glasses on?')])).toEqual({});
  });
});

describe('labels and notes', () => {
  test('alone they take the whole text', () => {
    expect(readLine(' 45+5, odd print ', [label, photo])).toEqual({ given: { print: '45+5, odd print' }, unread: [] });
    expect(readLine('wires: C red, HERM yellow', [note])).toEqual({
      given: { note: 'wires: C red, HERM yellow' },
      unread: [],
    });
  });
  test('beside others the note takes the rest, but no numbers where numbers are asked', () => {
    expect(readLine('herm 44 fan 5 rusty can', [...sections, note])).toEqual({
      given: { herm: '44', fan: '5', note: 'rusty can' },
      unread: [],
    });
    expect(readLine('44 5 3 rusty', [...sections, note])).toEqual({ given: {}, unread: ['44 5 3 rusty'] });
  });
});

test('unread is in the words typed, and parted where something understood stands between', () => {
  expect(unread('Héllo WORLD herm 44 again, “what” now', sections)).toEqual(['Héllo WORLD', 'again', 'what” now']);
});
