/**
 * Lines of calls whose pages are still to be written, at questions shaped like the steps to come. Once a page is there
 * its lines belong to worked-lines.ts, at the real question.
 *
 * - low voltage, line locked: volts at Y–C and at the coil, volts across each safety, the coil’s ohms
 * - walk-ins: a feed of its own for the unit cooler, residuals by the part’s name, ohms of a start capacitor
 * - heat pumps: volts in and out of the board
 */
import { describe, expect, test } from 'vitest';
import type { GivenParts, Part } from '../../../engine/schema.ts';
import { readCommand, readField, readHazard, readLine } from '../../../engine/understand/index.ts';
import { choose, field, option } from '../parts.ts';

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
