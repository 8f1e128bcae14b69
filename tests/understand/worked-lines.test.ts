/**
 * Whole calls, line by line as a technician types them, each at the question it answers: understood, or answered by one
 * clear question. Nothing of a line is lost: what no part takes comes back in the words typed.
 */
import { describe, expect, test } from 'vitest';
import type { GivenParts, Part } from '../../engine/schema.ts';
import { readCommand, readField, readHazard, readLine } from '../../engine/understand/index.ts';
import * as at from './call-parts.ts';

type Row = readonly [line: string, at: readonly Part[], given: GivenParts, unread?: readonly string[]];
const CALLS: Readonly<Record<string, readonly Row[]>> = {
  'a weak HERM section': [
    ['d  fan runs comp hums 3 sec clicks', [at.observation], { choice: ['d'] }, ['fan runs comp hums 3 sec clicks']],
    ['fan runs comp hums 3 sec clicks', [at.observation], { choice: ['d'] }, ['3 sec clicks']],
    ['psc', [at.unitClass], { class: ['psc'] }],
    ['fit ok', [at.fit], { ok: ['yes'] }],
    ['pull-out + breaker, no other feed', at.means, { means: ['pull-out', 'breaker'], feeds: ['none'] }],
    ['locked tagged', [at.locked], { ok: ['yes'] }],
    ['cover off clean, 1 cap, 45+5 6% 440', at.look, { condition: ['clean'], count: '1', print: '45+5 6% 440' }],
    [
      '121 / 0.2 0 0.1 / 0 0 / 121',
      at.proving,
      { before: '121', l1l2: '0.2', l1g: '0', l2g: '0.1', t1g: '0', t2g: '0', after: '121' },
    ],
    [
      '9.3 / 0.6 0.1 0.5 / 9.3',
      at.residual,
      { batteryBefore: '9.3', hc: '0.6', fc: '0.1', hf: '0.5', batteryAfter: '9.3' },
    ],
    [
      'fuses 0.1 0.1  contacts .1 .1  coil 12.6  t1g ol t2g ol',
      at.control,
      { f1: '0.1', f2: '0.1', k1: '.1', k2: '.1', coil: '12.6', t1g: 'ol', t2g: 'ol' },
    ],
    ['photo wires; wires off herm fan c', at.wiresOff, { ok: ['done'], colours: 'photo wires' }],
    ['herm 36.1 fan 5.02 hf 4.4 case ol', at.sections, { herm: '36.1', fan: '5.02', hf: '4.4', case: 'ol' }],
    ['spin free', at.spin, { spin: ['free'] }],
    ['cr .9 cs 2.7 sr 3.6 g ol', at.windings, { cr: '.9', cs: '2.7', sr: '3.6', g: 'ol' }],
    ['herm 45.3 fan 5.04', at.newPart, { herm: '45.3', fan: '5.04' }],
    [
      '241 240 comp 13.1 fan .9 split 19',
      at.figures,
      { l1l2: '241', t1t2: '240', comp: '13.1', fan: '.9', split: '19' },
    ],
  ],
  'a weak FAN section and a burnt tab': [
    ['c   (stat off first, then pull-out)', [at.observation], { choice: ['c'] }, ['stat off first', 'then pull-out']],
    [
      '238 / 0 0 0 / 0 0 / 238',
      at.proving,
      { before: '238', l1l2: '0', l1g: '0', l2g: '0', t1g: '0', t2g: '0', after: '238' },
    ],
    [
      '9.2 / 0.3 212 188 / 9.2',
      at.residual,
      { batteryBefore: '9.2', hc: '0.3', fc: '212', hf: '188', batteryAfter: '9.2' },
    ],
    [
      '9.2 / 0.3 0.4 0.1 / 9.2',
      at.residual,
      { batteryBefore: '9.2', hc: '0.3', fc: '0.4', hf: '0.1', batteryAfter: '9.2' },
    ],
    ['wires off herm fan c ; 40/5 6% 440', at.wiresOff, { ok: ['done'], colours: '40/5 6% 440' }],
    ['herm 39.4 fan 2.9 hf 2.70 case ol', at.sections, { herm: '39.4', fan: '2.9', hf: '2.70', case: 'ol' }],
    ['spin free, 12 turns', at.spin, { spin: ['free'] }, ['12 turns']],
    ['fan 14 31 45 frame ol', at.fanWindings, { ab: '14', bc: '31', ac: '45', frame: 'ol' }],
    ['40.3 5.06', at.newPart, { herm: '40.3', fan: '5.06' }],
  ],
  'a lead that sat on HERM': [
    [
      '120 / 0 0 0 / 0 0 / 120',
      at.proving,
      { before: '120', l1l2: '0', l1g: '0', l2g: '0', t1g: '0', t2g: '0', after: '120' },
    ],
    [
      '9.4 / 0.2 0.1 0.1 / 9.4',
      at.residual,
      { batteryBefore: '9.4', hc: '0.2', fc: '0.1', hf: '0.1', batteryAfter: '9.4' },
    ],
    ['herm 44.6 fan 4.52', at.sections, { herm: '44.6', fan: '4.52' }],
    ['fan 5.03 hf 4.52 case ol', at.third, { fan: '5.03', hf: '4.52' }, ['case ol']],
    ['spin: stiff, scrapes, play in shaft', at.spin, { spin: ['stiff', 'scrapes', 'play'] }, ['spin']],
    ['fan 15 33 48 frame ol', at.fanWindings, { ab: '15', bc: '33', ac: '48', frame: 'ol' }],
  ],
  'no volts at the coil': [
    ['a', [at.observation], { choice: ['a'] }],
    ['fuses 0.1 0.2', at.fuses, { f1: '0.1', f2: '0.2' }],
    ['14:04  y-c outdoor 0.0', at.controlLive, { yc: '0.0' }, ['14:04']],
    ['14:08  y-c 25.6  coil 0.0', at.controlLive, { yc: '25.6', coil: '0.0' }, ['14:08']],
    ['across delay .1  lp .1  hp 25.6', at.switches, { delay: '.1', lp: '.1', hp: '25.6' }, ['across']],
    [
      'call off, one coil wire off: coil 12.4 ohm',
      at.coilOhms,
      { coil: '12.4 ohm' },
      ['call off', 'one coil wire off'],
    ],
    [
      'coil matted, cottonwood ; herm 54.6 fan 4.97',
      at.sections,
      { herm: '54.6', fan: '4.97' },
      ['coil matted', 'cottonwood'],
    ],
    ['239 238 comp 17.6 fan 1.2', at.figures, { l1l2: '239', t1t2: '238', comp: '17.6', fan: '1.2' }],
  ],
  'on the edge of the label': [
    ['herm 37.4 fan 4.91 hf 4.34 case ol', at.sections, { herm: '37.4', fan: '4.91', hf: '4.34', case: 'ol' }],
    ['repeat, leads zeroed: herm 37.3', at.sectionsAgain, { herm: '37.3' }, ['repeat', 'leads zeroed']],
    ['t1t2 min 229', at.lowest, { lowest: '229' }],
  ],
  'a walk-in with a start capacitor': [
    ['walk-in', [at.unitClass], { class: ['refrigeration'] }],
    ['breaker + unit cooler', at.means, { means: ['breaker'], feeds: ['cooler'] }],
    [
      '2 caps (start, run; fan is shaded-pole, none)',
      at.look,
      { count: '2' },
      ['start', 'run', 'fan is shaded-pole', 'none'],
    ],
    [
      '121 / 0 0 0 / 0 0 / 2nd feed 0 0 0 / 121',
      at.provingTwoFeeds,
      { before: '121', l1l2: '0', l1g: '0', l2g: '0', t1g: '0', t2g: '0', x12: '0', x1g: '0', x2g: '0', after: '121' },
    ],
    [
      '9.3 / hold 21 s → start 0.1 run 0.2 / 9.3',
      at.residualTwoCaps,
      { batteryBefore: '9.3', start: '0.1', run: '0.2', batteryAfter: '9.3' },
      ['hold 21 s →'],
    ],
    ['start ohm 15.0k', at.startOhms, { startohm: '15.0k' }],
    [
      'resistor one end off: 15.0k alone ; start 201 ohm climbs to ol',
      at.startPart,
      { start: '201', ohm: 'climbs to ol' },
      ['resistor one end off: 15.0k alone'],
    ],
    ['run 24.6 case ol', at.runPart, { run: '24.6', case: 'ol' }],
    ['relay 1-2 ol  5-2 5.4k', at.relay, { contacts: 'ol', coil: '5.4k' }, ['relay']],
    ['cr 1.4 cs 4.6 sr 6.0 g ol', at.windings, { cr: '1.4', cs: '4.6', sr: '6.0', g: 'ol' }],
  ],
  twists: [
    ['fan .02 hf .02', at.third, { fan: '.02', hf: '.02' }],
    ['herm 40.2 fan .02 hf .02', at.sections, { herm: '40.2', fan: '.02', hf: '.02' }],
    ['herm 5.02 fan 44.8', at.sections, { herm: '5.02', fan: '44.8' }],
    ['herm 80.2 fan 4.71', at.sections, { herm: '80.2', fan: '4.71' }],
    ['herm OL', at.sections, { herm: 'OL' }],
    [
      '121 / 0.2 14 0.1 / 0 0 / 121',
      at.proving,
      { before: '121', l1l2: '0.2', l1g: '14', l2g: '0.1', t1g: '0', t2g: '0', after: '121' },
    ],
    [
      '0.0 / 0.1 0.1 0.1 / 0.0',
      at.residual,
      { batteryBefore: '0.0', hc: '0.1', fc: '0.1', hf: '0.1', batteryAfter: '0.0' },
    ],
    ['board line in 241, board fan out 0, cooling call', at.board, { in: '241', out: '0' }, ['cooling call']],
  ],
};

const cases = Object.entries(CALLS).map(([call, rows]) => ({
  call,
  rows: rows.map(([line, parts, given, unread = []]) => ({ line, parts, given, unread })),
}));
describe.each(cases)('$call', ({ rows }) => {
  test.each(rows)('$line', ({ line, parts, given, unread }) => {
    expect(readCommand(line)).toBeNull();
    expect(readHazard(line, [])).toBeNull();
    expect(readLine(line, parts)).toEqual({ given, unread });
    for (const part of parts)
      if (part.kind === 'field' && part.key in given)
        expect(readField(String(given[part.key]), part)).toHaveProperty('value');
  });
});

describe('answered by one clear question', () => {
  test.each<[string, readonly Part[]]>([
    // Said at the observation: it answers nothing that is asked, and is kept as a note.
    ['off at stat', [at.unitClass]],
    // Two observations in one: which one first?
    ['hums trips', [at.observation]],
    // One reading of a line that is taken whole.
    ['l1g', at.proving],
  ])('%s', (line, parts) => {
    const { given, unread } = readLine(line, parts);
    expect(given).toEqual({});
    expect(unread).toEqual([line]);
  });

  test('a burnt tab asks one tap, and that tap may be typed', () => {
    expect(readHazard('fan tab burnt, old mark', [])).toEqual({ level: 'maybe', hazard: 'burning' });
    expect(readCommand('old mark')).toEqual({ name: 'old mark' });
  });
});
