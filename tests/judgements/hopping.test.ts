/** Hopping along the switches where not every place was read, and where what is read across says something else. */
import { describe, expect, test } from 'vitest';
import type { Parts } from '../../engine/schema.ts';
import { parts, yes } from './fixture.ts';
import { run } from './run.ts';

type Line = Record<string, number | string>;
const V = (of: Line): Parts => parts('V', of);
const hop = (readings: Line, across?: Line) =>
  run('hop', { readings: V(readings), ...(across ? { across: V(across) } : {}), waited: yes });
const along = (...of: Parameters<typeof hop>) => {
  const line = hop(...of).findings.find((f) => f.name === 'Along the switches');
  return [hop(...of).outcome, line?.word, line?.text.replaceAll('\u2009', ' ')];
};

describe('R–C of the transformer', () => {
  test('stands for the strip where nobody read the strip, and for no other place', () => {
    expect(along({ rc: 25.6, coil: 0 })[0]).toBe('wire');
    // 26.5 V at the source and 25.6 V at the strip: the wire between them is no switch.
    expect(along({ rc: 26.5, start: 25.6, coil: 25.6 }).slice(0, 2)).toEqual(['through', 'through']);
  });
});

describe('what lies between the last place with volts and the coil', () => {
  test('is one stretch where no switch was read', () => {
    expect(along({ start: 25.6, coil: 0 })).toEqual([
      ...['wire', 'open', '25.6 V at the strip, 0 V at the coil. What is open lies between them.'],
    ]);
    expect(along({ start: 25.6, coil: 0 }, { lp: 0.1, hp: 0.1 })[2]).toBe(
      '25.6 V at the strip, 0 V at the coil. Open is the wire between them.',
    );
  });
  test('is the wire where a switch before it was read', () => {
    expect(along({ start: 25.6, lp: 25.6, coil: 0 })).toEqual([
      ...['wire', 'open', '25.6 V before the wire to the coil, 0 V after. It is the open one.'],
    ]);
  });
  test('a switch that shows a part of the volts condemns neither itself nor the wire', () => {
    const partly = [
      ...['contradicts', 'open', '25.6 V at the strip, 0 V at the coil. What is open lies between them.'],
    ];
    expect(along({ start: 25.6, coil: 0 }, { lp: 0.1, hp: 12 })).toEqual(partly);
    expect(along({ start: 25.6, coil: 0 }, { hp: 12 })).toEqual(partly);
  });
  test('all of the volts across one switch name it, though stray volts show across another', () => {
    expect(along({ start: 25.6, coil: 0 }, { lp: 25.6, hp: 0.6 })[0]).toBe('lp');
  });
});

describe('volts lost on the way', () => {
  test('at a switch are a drop there, and no open switch', () => {
    expect(along({ start: 25.6, delay: 25.6, lp: 21, hp: 21, discharge: 21, coil: 19.9 })).toEqual([
      ...['drop', 'drop', 'The low-pressure switch drops 4.6 V with the call there.'],
    ]);
  });
  test('count where nobody read what is left at the coil', () => {
    expect(hop({ start: 25.6, lp: 23 }).outcome).toBe('drop');
  });
});
