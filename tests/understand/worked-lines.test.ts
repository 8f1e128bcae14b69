/**
 * Whole calls, line by line as a technician types them, each at the question of the real pages that it answers:
 * understood, or answered by one clear question. Nothing of a line is lost: what no part takes comes back as typed.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { GivenParts, Part } from '../../engine/schema.ts';
import { readCommand, readField, readHazard, readLine } from '../../engine/understand/index.ts';
import { Conversation } from '../people.ts';
import { choose, field, option } from './parts.ts';

/** A line, what the parts of the question are given, what stays unread, and what is asked back where it doesn't answer. */
type Said = readonly [line: string, given: GivenParts, unread?: readonly string[], asks?: RegExp];
/** A plain string leads to the next question and has to be taken. */
type Row = string | Said;

const NEEDS = /^Still needed: /;
const MEANS = 'pull-out, breaker, no other feed, two legs, outlet';
const LINE_SIDE = 'pull-out, breaker, no other feed, two legs, line side 240 V';
const BLOCK = 'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol';
const COMPRESSOR = 'cr .9 cs 2.7 sr 3.6 g ol';
const proved = (source: string, l1l2 = '0', l2g = '0'): GivenParts => ({
  before: source,
  l1l2,
  l1g: '0',
  l2g,
  t1g: '0',
  t2g: '0',
  after: source,
});
const left = (battery: string, hc: string, fc: string, hf: string): GivenParts => ({
  batteryBefore: battery,
  hc,
  fc,
  hf,
  batteryAfter: battery,
});
const looked = (print: string): string[] => ['psc', 'yes', MEANS, 'yes', `clean, 1 cap, ${print}`];
const dead = (print: string): string[] => [...looked(print), '121 / 0.2 0 0.1 / 0 0 / 121', '9.3 / 0.6 0.1 0.5 / 9.3'];
const wiresOff = (print: string): string[] => [...dead(print), BLOCK, 'wires off'];

const CALLS: Readonly<Record<string, readonly Row[]>> = {
  'a weak HERM section': [
    ['d  fan runs comp hums 3 sec clicks', { choice: ['d'] }, ['fan runs comp hums 3 sec clicks']],
    ['off at stat', {}, ['off at stat'], /Type one of: PSC/],
    ['psc', { choice: ['psc'] }],
    ['fit ok', { ok: ['yes'] }],
    ['pull-out + breaker, no other feed', { means: ['pull-out', 'breaker'], feeds: ['none'] }, [], NEEDS],
    'two legs, outlet',
    ['locked tagged', { ok: ['yes'] }],
    ['cover off clean, 1 cap, 45+5 6% 440', { condition: ['clean'], count: '1', print: '45+5 6% 440' }],
    ['121 / 0.2 0 0.1 / 0 0 / 121', proved('121', '0.2', '0.1')],
    ['9.3 / 0.6 0.1 0.5 / 9.3', left('9.3', '0.6', '0.1', '0.5')],
    [
      'fuses 0.1 0.1  contacts .1 .1  coil 12.6  t1g ol t2g ol',
      { fuse1: '0.1', fuse2: '0.1', pole1: '.1', pole2: '.1', coil: '12.6', t1g: 'ol', t2g: 'ol' },
    ],
    ['photo wires; wires off herm fan c', { ok: ['done'], colours: 'photo wires' }],
    ['herm 36.1 fan 5.02 hf 4.4 case ol', { herm: '36.1', fan: '5.02', hf: '4.4', case: 'ol' }],
    ['spin free', { ok: ['done'] }],
    ['cr .9 cs 2.7 sr 3.6 g ol', { cr: '.9', cs: '2.7', sr: '3.6', g: 'ol' }],
    'nothing',
    ['herm 45.3 fan 5.04', { herm: '45.3', fan: '5.04' }, [], NEEDS],
    'other 45+5 440',
    'fitted',
    'wires back',
    ['RLA 17.9 LRA 96 (5.4×), fan FLA 1.2', { rla: '17.9', lra: '96', fla: '1.2' }, ['5.4×', 'fan']],
    'closed',
    ['241 240 comp 13.1 fan .9 split 19', { l1l2: '241', t1t2: '240', comp: '13.1', fan: '.9', split: '19' }],
  ],
  'a weak FAN section and a burnt tab': [
    ['c   (stat off first, then pull-out)', { choice: ['c'] }, ['stat off first', 'then pull-out']],
    ...['psc', 'yes', LINE_SIDE, 'yes', 'clean, 1 cap, 40/5 6% 440'],
    ['238 / 0 0 0 / 0 0 / 238', proved('238')],
    ['9.2 / 0.3 212 188 / 9.2', left('9.2', '0.3', '212', '188')],
    ['9.2 / 0.3 0.4 0.1 / 9.2', left('9.2', '0.3', '0.4', '0.1')],
    ['fan tab burnt, old mark', {}, ['fan tab burnt', 'old mark']],
    'old mark',
    BLOCK,
    ['wires off herm fan c ; 40/5 6% 440', { ok: ['done'], print: '40/5 6% 440' }],
    ['herm 39.4 fan 2.9 hf 2.70 case ol', { herm: '39.4', fan: '2.9', hf: '2.70', case: 'ol' }],
    ['spin free, 12 turns', { ok: ['done'] }, ['12 turns']],
    ['fan 14 31 45 frame ol', { first: '14', second: '31', third: '45', frame: 'ol' }],
    'nothing',
    ['other 40/5 440, 40.3 5.06', { pick: ['other'], print: '40/5 440' }, ['40.3 5.06'], NEEDS],
    'other 40/5 440 herm 40.3 fan 5.06',
    'fitted',
    'wires back',
    ['rla 14.1 lra 73 fla .8', { rla: '14.1', lra: '73', fla: '.8' }],
  ],
  'the 4.52 that is no bad fan section': [
    ['c', { choice: ['c'] }],
    ...looked('45+5 6% 440'),
    ['120 / 0 0 0 / 0 0 / 120', proved('120')],
    ['9.4 / 0.2 0.1 0.1 / 9.4', left('9.4', '0.2', '0.1', '0.1')],
    BLOCK,
    'wires off',
    ['herm 44.6 fan 4.52', { herm: '44.6', fan: '4.52' }],
    ['fan 5.03 hf 4.52 case ol', { fan: '5.03', hf: '4.52', case: 'ol' }],
    ['spin: stiff, scrapes, play in shaft', { ok: ['no'] }],
    ['fan 15 33 48 frame ol', { first: '15', second: '33', third: '48', frame: 'ol' }],
  ],
  // What follows of this call has no page yet: see the end of this file.
  'no volts at the coil': [['a', { choice: ['a'] }]],
  'a coil full of cottonwood': [
    'h',
    ...dead('55+5 6% 440'),
    ['fuses 0.1 0.2', { fuse1: '0.1', fuse2: '0.2' }, [], NEEDS],
    BLOCK,
    'wires off',
    ['coil matted, cottonwood ; herm 54.6 fan 4.97', { herm: '54.6', fan: '4.97' }, ['coil matted', 'cottonwood']],
    ...['case ol', 'spin free', COMPRESSOR, 'fan 15 33 48 frame ol', '21.2 118 1.4', 'closed'],
    ['239 238 comp 17.6 fan 1.2', { l1l2: '239', t1t2: '238', comp: '17.6', fan: '1.2' }],
  ],
  'on the edge of the label': [
    'd',
    ...wiresOff('40+5 ±6 % 370 V'),
    ['herm 37.4 fan 4.91 hf 4.34 case ol', { herm: '37.4', fan: '4.91', hf: '4.34', case: 'ol' }],
    ['repeat, leads zeroed: herm 37.3', { herm: '37.3' }, ['repeat', 'leads zeroed']],
    ...['spin free', COMPRESSOR, 'nothing', 'other 40+5 440 herm 40.2 fan 5.01', 'fitted', 'wires back', '17.9 96 1.2'],
    'closed',
    ['240 239 comp 13.1 fan .9 t1t2 min 229', { l1l2: '240', t1t2: '239', comp: '13.1', fan: '.9', min: '229' }],
  ],
  'a start capacitor with its resistor': [
    ['hums trips', {}, ['hums trips'], /Type one of: Outdoor unit silent/],
    ...['b', 'psc', 'yes', 'breaker, heater, two legs, outlet', 'yes'],
    [
      '2 caps (start, run; fan is shaded-pole, none)',
      { count: '2' },
      ['start', 'run', 'fan is shaded-pole', 'none'],
      NEEDS,
    ],
    'clean, 2 caps, 25 µF ±6 % 440',
    ['121 / 0 0 0 / 0 0 / 2nd feed 0 0 0 / 121', { ...proved('121'), x12: '0', x1g: '0', x2g: '0' }],
    '9.3 / 0.1 0.2 / 9.3',
    BLOCK,
    'wires off',
    ['run 24.6 case ol', { herm: '24.6', case: 'ol' }],
    ...['potential', 'off', '189-227 MFD 330 VAC'],
    ['start ohm 15.0k', {}, ['start ohm 15.0k'], /Type the line: start/],
    [
      'resistor one end off: 15.0k alone ; start 201 ohm climbs to ol',
      { start: '201 ohm' },
      ['resistor one end off: 15.0k alone', 'climbs to ol'],
      /is in Ω. This asks for µF/,
    ],
    ['relay 1-2 ol  5-2 5.4k', { contacts: 'ol', coil: '5.4k' }, ['relay'], NEEDS],
    'start 201 bleed 15.0k 1-2 ol 5-2 5.4k',
    'spin free',
    ['cr 1.4 cs 4.6 sr 6.0 g ol', { cr: '1.4', cs: '4.6', sr: '6.0', g: 'ol' }],
  ],
  'an open section': [
    'd',
    ...wiresOff('40+5 6% 440'),
    ['fan .02 hf .02', { fan: '.02', hf: '.02' }, [], NEEDS],
    'herm 40.2',
    // Wires first, before an open section condemns.
    'yes',
    ['herm OL', { herm: 'OL' }],
  ],
  'sections exchanged': ['d', ...wiresOff('45+5 6% 440'), ['herm 5.02 fan 44.8', { herm: '5.02', fan: '44.8' }]],
  'a FAN reading in the band of the other pair': [
    'd',
    ...wiresOff('80+5 6% 440'),
    ['herm 80.2 fan 4.71', { herm: '80.2', fan: '4.71' }],
  ],
  'twists of the proof': [
    'd',
    ...looked('45+5 6% 440'),
    ['l1g 14', { l1g: '14' }, [], NEEDS],
    ['121 / 0.2 14 0.1 / 0 0 / 121', { ...proved('121', '0.2', '0.1'), l1g: '14' }],
    '121 / 0.6 / 121',
    ['0.0 / 0.1 0.1 0.1 / 0.0', left('0.0', '0.1', '0.1', '0.1')],
    ['9.3 / 0.1 0.1 0.1 / 9.3', left('9.3', '0.1', '0.1', '0.1')],
  ],
};

const notes = (c: Conversation): string[] => c.texts.map(({ text }) => text);

describe('every line at its question', () => {
  test.each(Object.entries(CALLS))('%s', (_, rows) => {
    const c = new Conversation();
    let draft: GivenParts = {};
    for (const row of rows) {
      const [line, given, unread, asks] = typeof row === 'string' ? [row] : row;
      const at = `“${line}” at ${c.place}`;
      if (given) expect(readLine(line, c.prompt().parts), at).toEqual({ given, unread: unread ?? [] });
      c.type(line, 'ines', { draft });
      if (asks) expect(c.refusal?.text, at).toMatch(asks);
      else expect(c.refusal, at).toBeNull();
      for (const piece of unread ?? []) expect(notes(c).join('\n'), at).toContain(piece);
      draft = c.refusal?.draft ?? {};
    }
  });
});

/** What a technician, a dispatcher or a caller may say at any time: nothing of it may answer a gate by chance. */
test('a gate is not answered by what is said of something else', () => {
  const said = ['now', 'maybe', 'nothing'].flatMap((level) =>
    readFileSync(new URL(`corpus/${level}.txt`, import.meta.url), 'utf8')
      .split('\n')
      .filter((line) => /^[^#[]/.test(line)),
  );
  const taken = new Set<string>();
  const c = new Conversation().types('d', 'psc');
  const on = [
    'yes',
    MEANS,
    'yes',
    'clean, 1 cap, 45+5 6% 440',
    '121 / 0.2 0 0.1 / 0 0 / 121',
    '9.3 / 0.6 0.1 0.5 / 9.3',
  ];
  const lines = [...on, BLOCK, 'wires off', 'herm 36.1 fan 5.02 hf 4.4 case ol', 'spin free', COMPRESSOR, 'nothing'];
  for (const line of [...lines, 'other 45+5 440 herm 45.3 fan 5.04', 'fitted', 'wires back', '17.9 96 1.2', 'closed']) {
    const { parts } = c.prompt();
    if (parts.some(({ key, kind }) => key === 'ok' && kind !== 'choose'))
      for (const text of said) {
        const ok = readLine(text, parts).given.ok?.[0];
        if (ok === 'yes' || ok === 'done') taken.add(text);
      }
    c.types(line);
  }
  expect([...taken].sort()).toEqual([
    'all good',
    'arc flash in the disconnect, im ok',
    'done',
    'fan spins free, 12 turns',
    'locked and tagged',
    'ok',
    'wires off herm fan c',
    'yes',
  ]);
});

const observation = new Conversation().prompt().parts;
describe('what the unit does, by the words of a technician', () => {
  test.each([
    ['silent', 'a'],
    ['outdoor unit dead', 'a'],
    ['its not doing anything', 'a'],
    ['nothing runs outside', 'a'],
    ['Humming', 'b'],
    ['just hums, wont spin', 'b'],
    ['condenser fan out', 'c'],
    ['fan not spinning', 'c'],
    ['the fan is still', 'c'],
    ['fan is not turning', 'c'],
    ["fan isn't turning", 'c'],
    ["the fan isn't spinning", 'c'],
    ["compressor isn't starting", 'd'],
    ['Fan dead.', 'c'],
    ['comp wont start', 'd'],
    ['compressor not starting, fan ok', 'd'],
    ['running not cooling', 'e'],
    ['kicks on and off', 'f'],
    ['short cycling', 'f'],
    ['contactor chattering', 'g'],
    ['contactor buzzing', 'g'],
    ['keeps tripping', 'h'],
    ['blown fuse', 'h'],
    ['breaker tripped', 'h'],
    ['blower not running', 'i'],
    ['frozen coil', 'j'],
    ['iced up', 'j'],
    ['float switch tripped', 'k'],
    ['grinding', 'l'],
    ["won't shut off", 'm'],
    ['blowing hot', 'n'],
    ['flashing light', 'o'],
    ['blower never stops', 'p'],
    ['comp dead fan runs', 'd'],
    ['fan not spinnin', 'c'],
    ['fan isnt runnin', 'c'],
    ['just hummin', 'b'],
    ['comp humming wont start', 'd'],
    ['compressor just hums', 'd'],
    ['the fan runs but the compressor wont kick on', 'd'],
    ['condensor fan not running', 'c'],
    ['fan isnt turning but comp is running', 'c'],
    ['outside unit humming but fan not spinning', 'b'],
    ['zumba y no arranca', 'b'],
    ['ventilador no gira', 'c'],
    ['popped breaker', 'h'],
    ['breaker keeps tripping', 'h'],
    ['unit is not running at all', 'a'],
    ['water all over, float tripped', 'k'],
    ['blinking red light', 'o'],
  ])('%s → %s', (text, id) => {
    expect(readLine(text, observation).given).toEqual({ choice: [id] });
  });
  test.each(['not humming', 'is it iced up?', 'maybe frozen', 'no ice, no water', 'hums and blown fuse', 'not sure'])(
    '%s is none',
    (text) => {
      expect(readLine(text, observation)).toMatchObject({ given: {} });
    },
  );
});

const volts = (key: string, ...words: string[]) => field(key, 'V', { over: false, words });
const ohms = (key: string, ...words: string[]) => field(key, 'Ω', { words });

const controlLive: Part[] = [volts('yc', 'y-c', 'y-c outdoor'), { ...volts('coil'), optional: true }];
const safeties: Part[] = [volts('delay'), volts('lp'), volts('hp')];
const coil: Part[] = [ohms('coil')];
const feeds: Part[] = [
  choose('means', true, [option('pull-out', 'Pull-out', 'pullout'), option('breaker', 'Breaker', 'cb')]),
  choose('feeds', true, [
    option('none', 'No other feed'),
    option('cooler', 'Unit cooler, fans and defrost', 'unit cooler'),
  ]),
];
const residual: Part[] = [volts('batteryBefore', 'battery'), volts('start'), volts('run'), volts('batteryAfter')];
const startOhms: Part[] = [ohms('startohm', 'start ohm')];
const startPart: Part[] = [{ ...ohms('resistor'), optional: true }, field('start', 'µF'), ohms('ohm')];
const board: Part[] = [volts('in', 'board line in'), volts('out', 'board fan out')];

/**
 * Lines of calls whose pages are still to be written, at questions shaped like the steps to come. Once a page is there
 * its lines belong above, at the real question.
 *
 * - low voltage, line locked: volts at Y–C and at the coil, volts across each safety, the coil’s ohms
 * - walk-ins: a feed of its own for the unit cooler, residuals by the part’s name, ohms of a start capacitor
 * - heat pumps: volts in and out of the board
 */
describe('every line at a question to come', () => {
  test.each<[string, Part[], GivenParts, string[]?]>([
    ['14:04  y-c outdoor 0.0', controlLive, { yc: '0.0' }, ['14:04']],
    ['14:08  y-c 25.6  coil 0.0', controlLive, { yc: '25.6', coil: '0.0' }, ['14:08']],
    ['across delay .1  lp .1  hp 25.6', safeties, { delay: '.1', lp: '.1', hp: '25.6' }, ['across']],
    ['call off, one coil wire off: coil 12.4 ohm', coil, { coil: '12.4 ohm' }, ['call off', 'one coil wire off']],
    ['breaker + unit cooler', feeds, { means: ['breaker'], feeds: ['cooler'] }],
    [
      '9.3 / hold 21 s → start 0.1 run 0.2 / 9.3',
      residual,
      { batteryBefore: '9.3', start: '0.1', run: '0.2', batteryAfter: '9.3' },
      ['hold 21 s →'],
    ],
    ['start ohm 15.0k', startOhms, { startohm: '15.0k' }],
    [
      'resistor one end off: 15.0k alone ; start 201 ohm climbs to ol',
      startPart,
      { start: '201', ohm: 'climbs to ol' },
      ['resistor one end off: 15.0k alone'],
    ],
    ['board line in 241, board fan out 0, cooling call', board, { in: '241', out: '0' }, ['cooling call']],
  ])('%s', (line, parts, given, unread = []) => {
    expect(readCommand(line)).toBeNull();
    expect(readHazard(line, [])).toBeNull();
    expect(readLine(line, parts)).toEqual({ given, unread });
    for (const part of parts)
      if (part.kind === 'field' && part.key in given)
        expect(readField(String(given[part.key]), part)).toHaveProperty('value');
  });
});
