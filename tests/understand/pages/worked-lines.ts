/**
 * Whole calls, line by line as a technician types them, each at the question of the real pages that it answers:
 * understood, or answered by one clear question. Nothing of a line is lost: what no part takes comes back as typed.
 */
import { describe, expect, test } from 'vitest';
import type { GivenParts } from '../../../engine/schema.ts';
import { readLine } from '../../../engine/understand/index.ts';
import { Conversation } from '../../people.ts';
import { BLOCK, COMPRESSOR, dead, LINE_SIDE, left, looked, MEANS, proved, wiresOff } from './calls.ts';

/** A line, what the parts of the question are given, what stays unread, and what is asked back where it doesn't answer. */
type Said = readonly [line: string, given: GivenParts, unread?: readonly string[], asks?: RegExp];
/** A plain string leads to the next question and has to be taken; a number is minutes that pass. */
type Row = string | Said | number;

const NEEDS = /^Still needed: /;

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
    'no diagram',
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
    ...['psc', 'neither', 'yes', LINE_SIDE, 'yes', 'clean, 1 cap, 40/5 6% 440'],
    ['238 / 0 0 0 / 0 0 / 238', proved('238')],
    ['9.2 / 0.3 212 188 / 9.2', left('9.2', '0.3', '212', '188')],
    ['9.2 / 0.3 0.4 0.1 / 9.2', left('9.2', '0.3', '0.4', '0.1')],
    ['fan tab burnt, old mark', {}, ['fan tab burnt', 'old mark']],
    'old mark',
    BLOCK,
    'no diagram',
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
    'psc',
    'neither',
    ...looked('45+5 6% 440').slice(1),
    ['120 / 0 0 0 / 0 0 / 120', proved('120')],
    ['9.4 / 0.2 0.1 0.1 / 9.4', left('9.4', '0.2', '0.1', '0.1')],
    BLOCK,
    'no diagram',
    'wires off',
    ['herm 44.6 fan 4.52', { herm: '44.6', fan: '4.52' }],
    ['fan 5.03 hf 4.52 case ol', { fan: '5.03', hf: '4.52', case: 'ol' }],
    ['spin: stiff, scrapes, play in shaft', { ok: ['stiff'] }],
    ['fan 15 33 48 frame ol', { first: '15', second: '33', third: '48', frame: 'ol' }],
  ],
  'no volts at the coil': [
    ['a', { choice: ['a'] }],
    ...['psc', 'calling', 'fit ok', MEANS, 'locked tagged', 'cover off clean, 1 cap, 55+5 6% 440'],
    ...['121 / 0.2 0 0.1 / 0 0 / 121', '9.3 / 0.6 0.1 0.5 / 9.3'],
    ['fuses 0.1 0.2 ; line locked, control live', { fuse1: '0.1', fuse2: '0.2' }, ['line locked', 'control live']],
    ...['24', 'changed just now'],
    2,
    ['14:04  y-c outdoor 0.0', { start: '0.0' }, ['14:04'], NEEDS],
    'coil 0',
    4,
    'waited',
    'left alone',
    ['14:08  y-c 25.6  coil 0.0', { start: '25.6', coil: '0.0' }, ['14:08']],
    ['across delay .1  lp .1  hp 25.6', { delay: '.1', lp: '.1', hp: '25.6' }],
    // Its own question is the line of ohms that follows.
    [
      'call off, one coil wire off: coil 12.4 ohm',
      {},
      ['call off', 'one coil wire off: coil 12.4 ohm'],
      /Type one of: Coil dirty/,
    ],
    ['coil matted, cottonwood', { choice: ['matted'] }],
    'cleaned, reset once',
    [
      'contacts .1 .1 coil 12.4 ohm t1g ol t2g ol',
      { pole1: '.1', pole2: '.1', coil: '12.4 ohm', t1g: 'ol', t2g: 'ol' },
    ],
    'no diagram',
    'wires off',
    ['coil matted, cottonwood ; herm 54.6 fan 4.97', { herm: '54.6', fan: '4.97' }, ['coil matted', 'cottonwood']],
    ...['case ol', 'spin free', COMPRESSOR, 'fan 15 33 48 frame ol', '21.2 118 1.4', 'closed'],
    ['239 238 comp 17.6 fan 1.2', { l1l2: '239', t1t2: '238', comp: '17.6', fan: '1.2' }],
    ['split 18', { split: '18' }],
  ],
  'a coil full of cottonwood': [
    'h',
    ...[...dead('55+5 6% 440').slice(0, 1), 'at once', ...dead('55+5 6% 440').slice(1)],
    ['fuses 0.1 0.2', { fuse1: '0.1', fuse2: '0.2' }, [], NEEDS],
    BLOCK,
    'no diagram',
    'wires off',
    ['coil matted, cottonwood ; herm 54.6 fan 4.97', { herm: '54.6', fan: '4.97' }, ['coil matted', 'cottonwood']],
    ...['case ol', 'spin free', COMPRESSOR, 'fan 15 33 48 frame ol'],
    ...['ready, scroll, 500', '120', '9.3 / 0.4 / 9.3', 'closed', 'holds', '21.2 118 1.4', 'closed'],
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
  'a walk-in whose start capacitor looks leaky': [
    ['hums trips', {}, ['hums trips'], /Type one of: Outdoor unit silent/],
    ...['d', 'walk-in', 'box 47 hours 3 r404a hums trips', 'fit ok'],
    ['breaker + unit cooler', { means: ['breaker'], feeds: ['indoor'] }, [], NEEDS],
    'two legs, outlet',
    'locked tagged',
    [
      '2 caps (start, run; fan is shaded-pole, none)',
      { count: '2' },
      ['start', 'run', 'fan is shaded-pole', 'none'],
      NEEDS,
    ],
    'clean, 25 µF ±6 % 440, two terminals',
    ['121 / 0 0 0 / 0 0 / 2nd feed 0 0 0 / 121', { ...proved('121'), x12: '0', x1g: '0', x2g: '0' }],
    // A gate takes its answer alone.
    [
      '9.3 / hold 21 s → start 0.1 run 0.2 / 9.3',
      { batteryBefore: '9.3', hc: '0.2', c2: '0.1', batteryAfter: '9.3' },
      ['hold 21 s →'],
      /A gate takes its answer alone/,
    ],
    ['9.3 / start 0.1 run 0.2 / 9.3', { batteryBefore: '9.3', hc: '0.2', c2: '0.1', batteryAfter: '9.3' }],
    'contacts .1 .1 coil 12.6 t1g ol t2g ol overload 0.1',
    ['start, run', { choice: ['both'] }],
    'no diagram',
    'wires off',
    ['run 24.6 case ol', { herm: '24.6', case: 'ol' }],
    'potential',
    // Before the resistor is off at one end it is only noted.
    ['start ohm 15.0k', { colours: 'start ohm 15.0k' }, [], NEEDS],
    'resistor one end off',
    '189-227 MFD 330 VAC',
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
    ...['nothing', 'start parts fitted', 'wires back', '9.6 56 1.0', 'closed'],
    ['239 238 comp 7.1 fan .9 box 47', { l1l2: '239', t1t2: '238', comp: '7.1', fan: '.9', box: '47' }],
    ['box 41', { box: '41' }],
  ],
  'a heat pump whose board loses the fan': [
    ...[
      'c',
      'psc',
      'neither',
      ...wiresOff('45+5 6% 440').slice(1),
      'herm 45.1 fan 5.01 hf 4.5 case ol',
      'spin free',
      'fan 15 33 48 frame ol',
    ],
    ...['17.9 96 1.2', 'closed', '241 240 comp 13.1 fan 0', 'all good', 'heat pump', 'not in defrost'],
    ['board line in 241, board fan out 0, cooling call', { v: '0' }, ['board line in 241', 'cooling call']],
    ['board line in 241', { v: '241' }],
    'a board, not in defrost',
  ],
  // As it is typed with gloves on, each line taken at once.
  'a sloppy call': [
    ...[
      'fan runs but comp just hums then clicks off',
      'single dual cap unit',
      'forgot my gloves',
      'gloves, ok now put right',
    ],
    ...['pulled the disconnect and flipped breaker, nothing else feeds it, 240v, wall outlet'],
    ...['locked out tagged out, nothing starts', 'Cover off. looks ok, 1 dual cap 45/5 mfd 370v'],
    ...['120.4 / 0.2 .1 0 / 0 0 / 120.3', '9,25 / 0,4 0,1 0,3 / 9,25'],
    ...[
      'fuses .1/.2, contacts 0.1 and 0.1, coil 12.4 ohms, t1 OL t2 OL',
      'diagram is faded',
      'took a pic, all wires off',
    ],
    ...['herm 36,1 uF / fan 5,02 uF', 'back hf 4,4', 'spun it, free', 'c-r .9, c-s 2.7, s-r 3.6, gnd >200M'],
    ...[
      'coil plugged w cottonwood',
      'other, 45/5 440v, 45.3herm 5.04fan',
      'installed and strapped',
      'wires back on, tugged',
    ],
    ['RLA 17.9\nLRA 96\nFAN FLA .8', { rla: '17.9', lra: '96', fla: '.8' }, ['FAN']],
    'closed up, power is on',
    ['241v 240v comp 13.1a fan ,75a', { l1l2: '241v', t1t2: '240v', comp: '13.1a', fan: ',75a' }],
    ['19 degrees, sounds good', { split: '19 degrees', sound: ['fine'] }],
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

/** What a call comes to: its verdicts in their order, and where it ends. A call that breaks off has none. */
const ENDS: Readonly<Record<string, readonly string[]>> = {
  'a weak HERM section': ['section-fails-value', 'new-part-right', 'repair-proven', '!done'],
  'the 4.52 that is no bad fan section': ['capacitor-good', 'fan-bearings'],
  'no volts at the coil': ['high-pressure-open', 'capacitor-good', 'repair-proven', '!done'],
  'on the edge of the label': ['section-fails-value', 'new-part-right'],
  'a walk-in whose start capacitor looks leaky': ['capacitor-good', 'start-relay-fails', 'repair-proven', '!done'],
  'a heat pump whose board loses the fan': ['capacitor-good', 'board-fan-relay', '!left'],
};

const notes = (c: Conversation): string[] => c.texts.map(({ text }) => text);

describe('every line at its question', () => {
  test.each(Object.entries(CALLS))('%s', (name, rows) => {
    const c = new Conversation({ certified: true });
    let draft: GivenParts = {};
    for (const row of rows) {
      if (typeof row === 'number') {
        c.wait(row);
        continue;
      }
      const [line, given, unread, asks] = typeof row === 'string' ? [row] : row;
      const at = `“${line}” at ${c.place}`;
      if (given) expect(readLine(line, c.prompt().parts), at).toEqual({ given, unread: unread ?? [] });
      c.type(line, 'ines', { draft });
      if (asks) expect(c.refusal?.text, at).toMatch(asks);
      else expect(c.refusal, at).toBeNull();
      for (const piece of unread ?? []) expect(notes(c).join('\n'), at).toContain(piece);
      draft = c.refusal?.draft ?? {};
    }
    const ends = ENDS[name];
    if (ends) expect([...c.verdicts, ...(c.place.startsWith('!') ? [c.place] : [])]).toEqual(ends);
  });
});
