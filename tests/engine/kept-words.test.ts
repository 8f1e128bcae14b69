/** What is typed is never lost: beside a figure that is taken, refused or changed, and where nothing was understood. */
import { describe, expect, test } from 'vitest';
import type { AskStep } from '../../engine/vocabulary.ts';
import { answerWords } from '../../engine/words.ts';
import type { Conversation } from '../people.ts';
import { at, WEAK_HERM } from './given.ts';

/** Notes on the record, in the words typed. */
const notes = (c: Conversation): string[] =>
  c.entries.flatMap((e) =>
    e.kind === 'noted' && e.body.text ? [c.texts.find((t) => t.ref === e.body.text?.ref)?.text ?? ''] : [],
  );

describe('words beside readings', () => {
  test('of a line that is taken', () => {
    const c = at('readings').type(`${WEAK_HERM} leads zeroed`);
    expect(c.refusal).toBeNull();
    expect(notes(c)).toContain('leads zeroed');
  });
  test('of a line that is refused for a figure', () => {
    const c = at('readings').type('herm 440 fan 5.02 rusty can');
    expect(c.refusal).toMatchObject({ code: 'which-quantity', draft: { fan: '5.02' } });
    expect(c.refusal?.text).toContain('Is that the voltage?');
    expect(notes(c)).toContain('rusty can');
  });
  test('of a line that misses a figure', () => {
    const c = at('readings').type('herm 36.1, coil matted');
    expect(c.refusal).toMatchObject({ code: 'missing', draft: { herm: '36.1' } });
    expect(notes(c)).toContain('coil matted');
  });
  test('of a figure that is changed: they say why', () => {
    const c = at('readings').type('herm 44.6 fan 2.9 hf 2.72 case ol').type('back fan 3.1 lead was on paint');
    expect(c.refusal).toBeNull();
    const amended = c.entries.find((e) => e.kind === 'amended');
    expect(amended).toMatchObject({ body: { parts: { fan: { value: '3.1' } } } });
    expect(c.texts.map((t) => t.text)).toContain('lead was on paint');
  });
});

test('a reading that was left out is read back as not taken', () => {
  const step = { parts: { hf: { part: 'field', ask: 'HERM to FAN' }, photo: { part: 'photo', ask: 'Photo' } } };
  const untaken = { hf: { kind: 'untaken' }, photo: { kind: 'untaken' } } as const;
  expect(answerWords(step as unknown as AskStep, untaken, () => '')).toEqual(['HERM to FAN: not taken']);
});

test('a refused print says what it was taken for', () => {
  const whole = at('look').tap({ condition: ['clean'], count: '1', print: '1/4 HP 1075 RPM 208-230V' });
  expect(whole.refusal?.text).toContain('That reads as the print of a motor. Taken: 1/4 HP (horsepower)');
});

test('what was typed where a print is asked, and is none, stays as a note', () => {
  const asked = at('look').type('clean, 1 cap, print 45+5+3 µF');
  expect(asked.refusal?.code).toBe('unclear');
  expect(notes(asked)).toContain('clean, 1 cap, print 45+5+3 µF');
});

test('photo says whether one is asked', () => {
  expect(at('look').type('photo').last?.info?.[0]).toMatch(/^This question takes a photo/);
  expect(at('fit').type('photo').last?.info?.[0]).toMatch(/^This question takes no photo/);
});
