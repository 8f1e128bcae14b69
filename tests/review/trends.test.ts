/** A unit's readings over its visits: in order, each with its unit, drawn where there are two, broken where a part went in. */
import { expect, test } from 'vitest';
import { pastOf } from '../../engine/decide/stock.ts';
import { memoryOf, planOf } from '../../engine/replay.ts';
import { trendsOf } from '../../engine/review/trends.ts';
import { Past } from '../../engine/schema.ts';
import { atFigures } from '../engine/given.ts';
import { PROVES } from '../people.ts';

const CABINETS = { outdoor: 'Outdoor unit', indoor: 'Indoor unit' };
const past = (year: number, what: Past['what'], herm: string, fan: string | null, more: Partial<Past> = {}): Past => ({
  ...{ at: `${year}-07-14T15:00:00.000Z`, job: `job-${year}`, what, item: 'run capacitor', herm, fan, ...more },
});

test('what a call reads on the running unit is remembered with what it read and fitted', () => {
  const c = atFigures().type(PROVES);
  const lines = pastOf(planOf(c.standing), memoryOf(c.standing), 'job-1');
  expect(lines.map(({ what, herm }) => [what, herm])).toEqual([
    ['read', '36.1'],
    ['fitted', '45.3'],
  ]);
  expect(lines[1]?.figures).toEqual(
    expect.arrayContaining([
      { name: 'L1 to L2', unit: 'V', value: '241' },
      { name: 'Compressor', unit: 'A', value: '13.1' },
      { name: 'Split, return minus supply', unit: 'Δ°F', value: '19' },
    ]),
  );
  // As it is kept on the unit's sheet, and as it was kept before there were such figures.
  for (const line of [...lines, past(2025, 'read', '44', '5')]) expect(Past.parse(line)).toEqual(line);
});

test('each reading is a series of its own, by cabinet, the oldest first', () => {
  const trends = trendsOf(
    [
      past(2024, 'read', '44.6', '5.02', { figures: [{ name: 'Compressor', unit: 'A', value: '12.8' }] }),
      past(2025, 'read', '36.1', '5.01', { figures: [{ name: 'Compressor', unit: 'A', value: '13.4' }] }),
      past(2025, 'fitted', '45.3', '5.04'),
      past(2025, 'read', '7.4', null, { cabinet: 'indoor' }),
    ],
    CABINETS,
  );
  expect(trends.map(({ name, visits }) => [name, visits.map(({ reading, what }) => `${reading} ${what}`)])).toEqual([
    ['HERM', ['44.6\u2009µF read', '36.1\u2009µF read', '45.3\u2009µF new part']],
    ['FAN', ['5.02\u2009µF read', '5.01\u2009µF read', '5.04\u2009µF new part']],
    ['Compressor', ['12.8\u2009A read', '13.4\u2009A read']],
    ['Capacitor, Indoor unit', ['7.4\u2009µF read']],
  ]);
  expect(trends.map(({ picture }) => picture?.title ?? null)).toEqual([
    ...['HERM over 3 visits', 'FAN over 3 visits', 'Compressor over 2 visits', null],
  ]);
  const svg = trends[0]?.picture?.svg ?? '';
  // One line of two visits, two dots, and a ring for the new part, which no line leads to.
  expect([svg.match(/<path /g)?.length, svg.match(/fill="currentColor" stroke="none"/g)?.length]).toEqual([1, 2]);
  expect(svg).toContain('2025-07-14: 45.3\u2009µF, a new part.');
});

test('a unit without a record, and readings that never change, draw no impossible line', () => {
  expect(trendsOf([], CABINETS)).toEqual([]);
  const same = trendsOf([past(2024, 'read', '45', '5'), past(2024, 'read', '45', '5')], CABINETS);
  expect(same[0]?.picture?.svg).not.toMatch(/NaN|Infinity/);
});
