/** Every place of the manual and every kind of prompt on the terminal. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { paint, wrap } from '../../bot/terminal/layout.ts';
import { numbered } from '../../bot/terminal/options-by-number.ts';
import { render, type Surroundings } from '../../bot/terminal/render.ts';
import { jsonLine, visible } from '../../bot/terminal/safe-text.ts';
import { Prompt, promptAgain, sayKey } from '../../engine/index.ts';
import { planOf } from '../../engine/replay.ts';
import { Conversation, PEOPLE, TO_READINGS } from '../people.ts';

const AROUND: Surroundings = {
  me: 'ines',
  names: (id) => (id in PEOPLE ? PEOPLE[id as keyof typeof PEOPLE].name : id),
  question: null,
  wall: (instant) => instant.slice(11, 16),
};
const shown = (prompt: Prompt): string => render(prompt, AROUND);
/** Controls, line feeds aside: what a terminal would take for an order. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what has to be found
const ORDERS = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e]/;

const talk = new Conversation();
const plan = planOf(talk.standing);
const asking = [...plan.places.values()].filter((place) => 'parts' in place.step);
const ending = (id: string): Prompt => ({ ...talk.prompt(), kind: 'finished', title: id, parts: [] });

describe('every place of the manual', () => {
  test('there are many', () => expect(asking.length).toBeGreaterThan(60));

  test.each(asking.map((place) => place.id))('%s', (id) => {
    const prompt = promptAgain(talk.standing, id, 1, talk.at);
    const text = shown(prompt);
    const words = [
      prompt.title,
      ...prompt.body,
      ...prompt.callouts.map((c) => `${c.level.toUpperCase()}: ${c.text}`),
      ...prompt.parts.flatMap((p) => ('options' in p ? p.options.map((o) => o.label) : [p.ask])),
      ...prompt.parts.flatMap((p) => (p.kind === 'field' ? [sayKey(p.key)] : [])),
      '[Outdoor unit: ',
      ...(prompt.line === null ? [] : [prompt.line].filter(() => !prompt.parts.some((p) => 'options' in p))),
    ];
    expect(words.filter((word) => !text.includes(word))).toEqual([]);
    expect(text).not.toMatch(ORDERS);
    expect(text).not.toMatch(/undefined|null|\[object/);
  });
});

describe('every kind of prompt', () => {
  test.each(Prompt.shape.kind.options.filter((kind) => kind !== 'step'))('%s is named', (kind) => {
    const heading = shown({ ...ending(kind), kind }).split('\n')[0] ?? '';
    expect(heading).toMatch(/^── [A-Z ]{4,} · /);
  });
  test('each says something of its own', () => {
    const headings = Prompt.shape.kind.options.map((kind) => shown({ ...ending('x'), kind }).split('\n')[0]);
    expect(new Set(headings).size).toBe(Prompt.shape.kind.options.length);
  });

  test('the halts, as they come about', () => {
    const call = new Conversation().types(...TO_READINGS);
    expect(shown(call.prompt())).toContain('[Outdoor unit: PROVED DEAD, until 15:30; since 15:00, lock: Ines Vale]');
    expect(shown(call.type('stop').prompt())).toMatch(/STOPPING[\s\S]* {3}1\. Cover is on[\s\S]* {3}4\. No lock on/);
    expect(shown(call.types('cover on, lock stays').prompt())).toMatch(/PAUSED[\s\S]*Go on/);
    expect(shown(call.types('go on', 'hand over Tomas').prompt())).toMatch(
      /CHANGING HANDS[\s\S]*DANGER: Not proved dead/,
    );
    expect(shown(call.type('I smell gas').prompt())).toMatch(/EMERGENCY[\s\S]*DANGER: Every isolation[\s\S]*Call 911/);
  });

  test('who is not the holder reads whose answer it takes', () => {
    const call = new Conversation().types(...TO_READINGS);
    const text = render(call.prompt(), { ...AROUND, me: 'tomas' });
    expect(text).toContain('Only Ines Vale answers here');
    expect(text).not.toContain('Type in one line');
  });

  test('a senior’s question shows its words, and a verdict its findings', () => {
    const call = new Conversation().types(...TO_READINGS).types('herm 36.1 fan 5.02 hf 4.4 case ol');
    call.type('ask is the \u001b[31mtab\u001b[0m sound?', 'ruth');
    const text = render(call.prompt(), { ...AROUND, question: 'is the \u001b[31mtab sound?' });
    expect(text).toContain('A senior asks: is the ␛[31mtab sound?');
    expect(text).toMatch(/VERDICT: .*replace it[\s\S]*HERM: FAIL · 36\.1.µF · limits 42\.30–47\.70.µF/);
  });
});

describe('numbers before the options', () => {
  test('run through all lists of a question, and there are none where a number could be a reading', () => {
    for (const place of asking) {
      const { parts } = promptAgain(talk.standing, place.id, 1, talk.at);
      const readings = parts.some((p) => p.kind === 'label' || (p.kind === 'field' && !p.optional));
      const options = parts.flatMap((p) => ('options' in p ? p.options : []));
      expect(numbered(parts).length).toBe(readings ? 0 : options.length);
    }
  });
});

describe('on the screen', () => {
  test('no text of a person gives an order to the terminal', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary' }),
        (text) => !ORDERS.test(visible(text)) && !visible(text).includes('\n'),
      ),
    );
    expect(visible('a\u001b]0;x\u0007b\u009bc\u202ed\ne\u007f')).toBe('a␛]0;x␇b\ufffdc\ufffdd e␡');
    expect(visible('👨‍🔧 Ω µF\u2009Ñ')).toBe('👨‍🔧 Ω µF\u2009Ñ');
  });
  test('JSON is the same value without controls', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const line = jsonLine({ text });
        return !ORDERS.test(line) && !line.includes('\n') && JSON.parse(line).text === text;
      }),
    );
  });
  test('wrapping loses no word and keeps to the width', () => {
    for (const width of [40, 79])
      for (const place of asking) {
        const text = shown(promptAgain(talk.standing, place.id, 1, talk.at));
        const wrapped = wrap(text, width);
        expect(wrapped.split(/\s+/)).toEqual(text.split(/\s+/));
        expect(wrapped.split('\n').filter((line) => [...line].length > width)).toEqual([]);
      }
  });
  test('a continuation stands under its text', () => {
    expect(wrap('WARNING: one two three', 16)).toBe('WARNING: one two\n     three');
    expect(wrap('  12. one two three four', 20)).toBe('  12. one two three\n      four');
  });
  test('colour only on signal words, and taking it away leaves the words', () => {
    const text = shown(promptAgain(talk.standing, 'round~1/observation', 1, talk.at));
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the codes that paint adds
    expect(paint(text).replace(/\u001b\[[\d;]*m/g, '')).toBe(text);
    expect(paint('DANGER: x')).toBe('\u001b[1;37;41mDANGER:\u001b[0m x');
    expect(paint('no DANGER: here')).toBe('no DANGER: here');
  });
});
