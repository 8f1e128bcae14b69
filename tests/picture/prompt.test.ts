/** Which pictures a prompt carries on a worked call, and that they are no part of what a job is pinned to. */
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { compile } from '../../engine/compile.ts';
import { fingerprint } from '../../engine/fingerprint.ts';
import { Prompt } from '../../engine/schema.ts';
import { flow, type Manual, measure, microfarads } from '../../engine/vocabulary.ts';
import { SHELF } from '../../flows/index.ts';
import { Conversation, TO_READINGS } from '../people.ts';

const [shelved] = SHELF;
const upTo = (line: string): Conversation =>
  new Conversation().types(...TO_READINGS.slice(0, TO_READINGS.indexOf(line as never)));
const plain = (text: string): string => text.replaceAll('\u2009', ' ');
const spoken = (prompt: Prompt): string[] => prompt.pictures.map(({ kind, text }) => `${kind} ${plain(text)}`);

describe('a call', () => {
  test('the hold time stands with its curve', () => {
    const talk = upTo('9.3 / 0.6 0.1 0.5 / 9.3');
    const said = spoken(talk.prompt()).filter((each) => each.startsWith('decay'));
    expect(said).toHaveLength(1);
    expect(said[0]).toContain('45 µF through 20000 Ω: the volts fall along a curve from 622 V');
  });

  test('a verdict brings the scale of each section, and keeps it with its place; the end brings the way', () => {
    const talk = new Conversation().types(...TO_READINGS, 'herm 44.6 fan 5.03 hf 4.52 case ol');
    const { pictures, verdicts } = talk.prompt();
    const scales = pictures.filter(({ kind }) => kind === 'scale');
    expect(scales.map(({ title }) => title)).toEqual([
      'HERM on the scale of its limits',
      'FAN on the scale of its limits',
    ]);
    const [place] = verdicts.filter(({ findings }) => findings.some(({ figures }) => figures)).map((v) => v.place);
    expect(new Set(scales.map(({ verdict }) => verdict))).toEqual(new Set([place]));
    expect(plain(scales[0]?.text ?? '')).toContain(
      'HERM reads 44.6 µF, −0.9 % off the rated 45 µF, inside the limits of 42.30–47.70 µF.',
    );
  });

  test('no ids collide, each picture is small, and a prompt with them is one that a door can read', () => {
    const talk = new Conversation().types(...TO_READINGS, 'herm 44.6 fan 5.03 hf 4.52 case ol');
    const prompt = talk.prompt();
    expect(z.parse(Prompt, prompt)).toEqual(prompt);
    const ids = prompt.pictures.flatMap(({ svg }) => svg.match(/ id="[^"]*"/g) ?? []);
    expect(ids.length).toBeGreaterThanOrEqual(4);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { svg } of prompt.pictures) expect(Buffer.byteLength(svg)).toBeLessThan(6000);
  });

  test('a prompt made again carries the same pictures', () => {
    const talk = upTo('9.3 / 0.6 0.1 0.5 / 9.3');
    expect(talk.prompt().pictures).toEqual(talk.prompt().pictures);
  });
});

describe('leads named by a page', () => {
  const page = (picture: boolean) =>
    flow({
      id: 'one-reading',
      version: 1,
      title: 'One reading',
      exits: Object.keys(shelved.endings),
      steps: {
        reading: measure({
          say: 'Measure FAN to C.',
          circuit: 'none',
          fields: { fan: microfarads('FAN to C') },
          ...(picture ? { picture: { kind: 'leads', part: 'dual', on: ['fan-c'], between: 'capacitance' } } : {}),
          next: `!${Object.keys(shelved.endings)[0]}`,
        }),
      },
    });
  const manual = (picture: boolean): Manual => ({ ...shelved, root: page(picture) });

  test('come with the question, and before what is shown in figures', () => {
    const talk = new Conversation({ machine: compile(manual(true)) });
    expect(spoken(talk.prompt())).toEqual([
      expect.stringContaining('leads Where the leads go: FAN–C. A dual capacitor seen from above'),
    ]);
    expect(new Conversation({ machine: compile(manual(false)) }).prompt().pictures).toEqual([]);
  });

  test('the end of a call shows the way that led there', () => {
    const talk = new Conversation({ machine: compile(manual(true)) }).types('5.02');
    expect(talk.prompt().kind).toBe('finished');
    expect(spoken(talk.prompt())).toEqual([
      expect.stringMatching(/^path The way so far. Passed: 1. One reading: Measure FAN to C. Here/),
    ]);
  });

  test('are no part of the fingerprint, while words are', () => {
    expect(fingerprint(manual(true))).toBe(fingerprint(manual(false)));
    expect(fingerprint({ ...manual(true), title: 'Another' })).not.toBe(fingerprint(manual(true)));
  });
});
