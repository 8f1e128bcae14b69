/** Every choice, yes and reading of the real pages by the words a technician uses; what could be two things is neither. */
import { describe, expect, test } from 'vitest';
import type { GivenParts, Part } from '../../../engine/schema.ts';
import { readLine } from '../../../engine/understand/index.ts';
import { Conversation } from '../../people.ts';
import { BLOCK, COMPRESSOR, dead, MEANS, wiresOff } from './calls.ts';

const observation = new Conversation().prompt().parts;
describe('what the unit does, by the words of a technician', () => {
  test.each([
    ['silent', 'a'],
    ['outdoor unit dead', 'a'],
    ['its not doing anything', 'a'],
    ['nothing runs outside', 'a'],
    ['Humming', 'b'],
    ['buzzing and nothing moves', 'b'],
    ['breaker wont stay on', 'h'],
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

/** The parts of the question that stands after these lines. */
const askedAfter = (...lines: string[]): readonly Part[] => new Conversation().types(...lines).prompt().parts;
const LABEL = '45+5 6% 440';
const read = ['d', ...wiresOff(LABEL), 'herm 36.1 fan 5.02 hf 4.4 case ol'];
const fitted = [...read, 'spin free', COMPRESSOR, 'nothing', 'other 45+5 440 herm 45.3 fan 5.04', 'fitted'];
const plate = [...fitted, 'wires back'];
const live = [...plate, '17.9 96 1.2', 'closed'];
const second = [...['d', 'psc', 'yes', MEANS, 'yes', 'clean, 2 caps, 45+5 6% 440', '121 / 0 0 0 / 0 0 / 121']];
const another = [
  ...second,
  '9.3 / 0 0 0 / 0 / 9.3',
  BLOCK,
  'no diagram',
  'wires off',
  'herm 44.6 fan 5.03 hf 4.52 case ol',
];

const QUESTIONS: readonly [question: string, lead: readonly string[], said: readonly [string, GivenParts][]][] = [
  [
    'what kind of unit',
    ['d'],
    [
      ['single dual cap unit', { choice: ['psc'] }],
      ['minisplit', { choice: ['inverter'] }],
      ['3ph', { choice: ['three-phase'] }],
      ['walk in cooler', { choice: ['refrigeration'] }],
      ['idk what it is', { choice: ['unsure'] }],
      ['heat pump', {}],
      ['split system', {}],
    ],
  ],
  [
    'fit for it',
    ['d', 'psc'],
    [
      ['good to go', { ok: ['yes'] }],
      // Not all of what is asked.
      ['gloves and glasses on, meter good', {}],
      ['its raining', { ok: ['no'] }],
      ['no glasses', { ok: ['no'] }],
      ['forgot my gloves', { ok: ['no'] }],
      ['yes, raining a bit', {}],
      ['yes but no glasses', {}],
      ['not alone', {}],
    ],
  ],
  [
    'means and feeds',
    ['d', 'psc', 'yes'],
    [
      [
        'pulled the disconnect, breaker off, nothing else feeds it, 208, wall outlet',
        { means: ['pull-out', 'breaker'], feeds: ['none'], supply: ['two-legs'], source: ['outlet'] },
      ],
      ['fused disconnect, 120v outlet', { means: ['fused-switch'], source: ['outlet'] }],
      ['non-fused disconnect, no 2nd feed', { means: ['pull-out'], feeds: ['none'] }],
      ['2 legs, line side 230', { supply: ['two-legs'], source: ['line230'] }],
      ['proving unit 240', { source: ['unit240'] }],
      ['proving unit', {}],
    ],
  ],
  [
    'locked',
    ['d', 'psc', 'yes', MEANS],
    [
      ['LOTO', { ok: ['yes'] }],
      ['locked n tagged', { ok: ['yes'] }],
      ['locked out & tagged out', { ok: ['yes'] }],
      ['locked, tagged, tried, nothing starts', { ok: ['yes'] }],
      ['lock and tag on, tried, nothing starts', { ok: ['yes'] }],
      ['fan started', { ok: ['no'] }],
      ['still runs', { ok: ['no'] }],
      ['lock won’t fit', { ok: ['cant'] }],
      ['no', {}],
      ['locked it', {}],
      ['tagged only', {}],
      ['nothing starts', {}],
      ['yes, fan started', {}],
    ],
  ],
  [
    'under the cover',
    ['d', 'psc', 'yes', MEANS, 'yes'],
    [
      ['looks ok, 1 dual cap 45/5 mfd 370v', { condition: ['clean'], count: '1', print: '45/5 mfd 370v' }],
      ['top swelled up, oil, one cap', { condition: ['bulged', 'oil'], count: 'one' }],
      ['top is bulged, 1 cap', { condition: ['bulged'], count: '1' }],
      ['not bulged, clean, 1 cap', { condition: ['clean'], count: '1' }],
      ['mouse nest, 1 cap', { condition: ['chewed'], count: '1' }],
      ['clean, 1 run cap 1 start cap', { condition: ['clean'] }],
    ],
  ],
  [
    'fuses, contactor, ground',
    ['d', ...dead(LABEL)],
    [
      [
        'fuse .1 fuse .2, contacts .1 and .2, coil 12.6 ohms, grounds ol ol',
        { fuse1: '.1', fuse2: '.2', pole1: '.1', pole2: '.2', coil: '12.6 ohms', t1g: 'ol', t2g: 'ol' },
      ],
      ['contact .1, t1 ol', { pole1: '.1', t1g: 'ol' }],
    ],
  ],
  [
    'wires',
    ['d', ...dead(LABEL), BLOCK, 'no diagram'],
    [
      ['took a pic, all wires off', { ok: ['done'], colours: 'took a pic' }],
      ['marked and pulled', { ok: ['done'] }],
      ['wires off, cant read the marks', { ok: ['no'] }],
      ['won’t come off', { ok: ['cant'] }],
      ['wires not off yet', { colours: 'wires not off yet' }],
      ['no', { colours: 'no' }],
    ],
  ],
  ['sections', ['d', ...wiresOff(LABEL)], [['HERM-C 36.1 FAN-C 5.02', { herm: '36.1', fan: '5.02' }]]],
  [
    'the fan by hand',
    read,
    [
      ['spins freely', { ok: ['done'] }],
      ['yes', { ok: ['done'] }],
      ['bearings shot', { ok: ['stiff'] }],
      ['stiff, has play', { ok: ['stiff'] }],
      ['blade rubs', { ok: ['no'] }],
      ['locked up', { ok: ['no'] }],
      ['not free', { ok: ['no'] }],
      ['no', { ok: ['no'] }],
      ['can’t reach it', { ok: ['cant'] }],
      ['done', {}],
      ['free but noisy', {}],
    ],
  ],
  [
    'compressor windings',
    [...read, 'spin free'],
    [
      ['r-c .9 s-c 2.7 r-s 3.6 gnd >200M', { cr: '.9', cs: '2.7', sr: '3.6', g: '>200M' }],
      ['rc .9 sc 2.7 rs 3.6 frame ol', { cr: '.9', cs: '2.7', sr: '3.6', g: 'ol' }],
      ['run .9 start 2.7 sr 3.6 ground open', { cr: '.9', cs: '2.7', sr: '3.6', g: 'open' }],
    ],
  ],
  [
    'hot or cold',
    [...read, 'spin free', 'cr ol cs ol sr 3.6 g ol'],
    [
      ['real hot', { choice: ['hot'] }],
      ['room temp', { choice: ['cold'] }],
      ['not hot', { choice: ['cold'] }],
    ],
  ],
  [
    'why it failed',
    [...read, 'spin free', COMPRESSOR],
    [
      ['just old', { cause: ['nothing'] }],
      ['coil plugged with cottonwood', { cause: ['coil'] }],
      ['replaced last year', { cause: ['recent'] }],
      ['dirty coil and fan stiff', { cause: ['coil', 'fan'] }],
      ['voltage high', { cause: ['volts'] }],
      ['FAN FLA .8', {}],
    ],
  ],
  [
    'wires back',
    fitted,
    [
      ['hooked back up', { ok: ['done'] }],
      ['reconnected, tight', { ok: ['done'] }],
      ['wires off', {}],
    ],
  ],
  [
    'nameplate',
    plate,
    [
      ['comp 17.9 lra 96 fan fla ,8', { rla: '17.9', lra: '96', fla: ',8' }],
      ['rated 17.9 locked rotor 96', { rla: '17.9', lra: '96' }],
    ],
  ],
  [
    'closed',
    [...plate, '17.9 96 1.2'],
    [
      ['buttoned up, power on', { ok: ['yes'] }],
      ['leave it off', { ok: ['no'] }],
      ['cover on, lock off', { ok: ['yes'] }],
      ['closed but lock off', {}],
      ['cover on', {}],
      ['no', {}],
    ],
  ],
  [
    'live figures',
    live,
    [
      [
        'line 241 load 240 comp pulls 13.1 fan .9 delta t 19 degrees, runs quiet',
        { l1l2: '241', t1t2: '240', comp: '13.1', fan: '.9', split: '19 degrees', sound: ['fine'] },
      ],
      ['241 240 comp 13.1 fan .9 return 75 supply 56', { l1l2: '241', t1t2: '240', comp: '13.1', fan: '.9' }],
      [
        '241v, comp 13.1a, 19 split, fan running backwards',
        { l1l2: '241v', comp: '13.1a', split: '19', sound: ['backwards'] },
      ],
    ],
  ],
  [
    'the other capacitor',
    another,
    [
      ['fan cap', { choice: ['run'] }],
      ['potential relay', { choice: ['potential'] }],
      ['start cap', {}],
      ['hard start kit', {}],
    ],
  ],
];

describe.each(QUESTIONS)('%s', (_, lead, said) => {
  test('by the words of a technician', () => {
    const parts = askedAfter(...lead);
    for (const [line, given] of said) expect(readLine(line, parts).given, line).toEqual(given);
  });
});
