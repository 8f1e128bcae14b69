/**
 * "Not sure", "can't" and "no tool" lead on at every question of every manual: an option takes them, or the question may be
 * left out. Where neither is so, it stands in the list below with why. Beside it: unsure never goes the way of the good.
 */
import { describe, expect, test } from 'vitest';
import { compile } from '../../engine/compile.ts';
import { type Place, skipTarget } from '../../engine/flatten.ts';
import { toPart } from '../../engine/prompt.ts';
import { stepOf } from '../../engine/prove/index.ts';
import type { Part } from '../../engine/schema.ts';
import { readLine, saysCant } from '../../engine/understand/index.ts';
import { type AskStep, choose, confirm } from '../../engine/vocabulary.ts';
import { SHELF } from '../../flows/index.ts';
import { Conversation } from '../people.ts';

const WORDS = ['not sure', 'can’t', 'no tool', 'no idea', 'i can’t see that from here'] as const;

/** Who can’t say yes at a gate has proved nothing; it stays closed, by stop or with a senior, who are named in the refusal. */
const GATES: Readonly<Record<string, string>> = {
  'gates/fit': 'not fit, or not sure of it, is its own answer: no',
  'gates/unfit': 'what is wrong is chosen, all of it at hand; "anything else" is among it',
  'gates/means': 'a means that nobody can name can’t be locked',
  'gates/locked': 'can’t is its own answer; not sure that it is locked is not locked',
  'gates/tag': 'can’t is its own answer; a tag that may not be on protects nobody',
  'gates/look': 'what stands in the cabinet says what has to be discharged',
  'make-bus-dead/waited': 'can’t is its own answer; a wait that may not be over is not over',
};
/** Questions besides gates that refuse them. */
const REFUSED: Readonly<Record<string, string>> = {};

interface Asked {
  readonly name: string;
  readonly place: Place;
  readonly step: AskStep;
  readonly parts: readonly Part[];
}
/** One place for each step, whatever copy of its page it stands in. */
const asked: Asked[] = SHELF.flatMap((manual) => {
  const once = new Map<string, Asked>();
  for (const place of compile(manual).plan.places.values()) {
    const { step } = place;
    if (!('parts' in step)) continue;
    const parts = Object.entries(step.parts).map(([key, spec]) => toPart(key, spec));
    const name = stepOf(place) ?? place.id;
    once.set(name, { name, place, step, parts });
  }
  return [...once.values()];
});

const taken = (words: string, { place, parts }: Pick<Asked, 'place' | 'parts'>): string | null => {
  const read = (text: string) => readLine(text, parts).given;
  const skippable = place.gate ? place.cant !== null : skipTarget(place) !== null;
  const given = Object.keys(read(words)).length > 0 ? read(words) : skippable ? {} : read('not sure');
  if (Object.keys(given).length > 0) return Object.values(given).flat().join();
  return skippable && saysCant(words) ? 'left out' : null;
};

test('there is something to look at', () => {
  expect(asked.length).toBeGreaterThan(250);
  expect(WORDS.filter((words) => !saysCant(words))).toEqual([]);
});

test('every question takes them, but the gates and what stands in the list', () => {
  const refusing = asked.filter((a) => WORDS.some((words) => taken(words, a) === null)).map(({ name }) => name);
  expect(refusing.sort()).toEqual([...Object.keys(GATES), ...Object.keys(REFUSED)].sort());
});

test('the list of gates holds nothing but gates', () => {
  const gates = new Set(asked.filter(({ place }) => place.gate).map(({ name }) => name));
  expect(Object.keys(GATES).filter((name) => !gates.has(name))).toEqual([]);
});

describe('unsure is not yes', () => {
  /** Where yes and unsure lead to one place, and why that is no harm. */
  const ALIKE: Readonly<Record<string, string>> = {
    'single-capacitor-readings/leads': 'the judge behind it calls a part open only on yes',
    'single-readings-beside/leads': 'as there',
    'start-potential-relay/leads': 'as there',
    'start-current-relay/leads': 'as there',
    'start-ptc/leads': 'as there',
    'control/pulled': 'the judge behind it says of the coil what was read; out, or in, it is only where it was seen',
    'chatter/pulled': 'as there',
    'bus-rests/rest': 'the record’s times say whether it rested, whatever is said',
    'bus-rests/longer': 'as there',
    'warm/waited': 'no volts decide nothing before the record’s times say that the delay is over',
    'control/waited': 'the volts are read anew, and the record’s times say whether the delay is over',
    'coil-live/waited': 'as there',
    'indoor-source/wait': 'as there',
    'cable-end/wait': 'as there',
    'restart/off': 'the next round proves every cabinet dead before hands go in',
    'blower-restart/off': 'as there',
    'intake-root/tell-danger': 'the caller has heard it or not: the call goes on to who and where, the alarm stands',
    'intake-root/tell-gas': 'as there',
  };
  test('a yes or no that is left out doesn’t go the way of yes', () => {
    const alike = asked.filter(({ place, step }) => {
      if (place.gate || step.by !== 'ok') return false;
      const yes = place.to.yes ?? place.to.done;
      return skipTarget(place) === yes;
    });
    expect(alike.map(({ name }) => name).sort()).toEqual(Object.keys(ALIKE).sort());
  });
});

test('a choice without such an answer is refused, and a yes or no is not: what is looked for above', () => {
  const options = { a: { label: 'A', to: '!done' }, b: { label: 'B', to: '!done' } } as const;
  const place = (step: AskStep, to: Record<string, string>): Pick<Asked, 'place' | 'parts'> => ({
    place: { ...(asked[0]?.place as Place), gate: false, cant: step.cant ?? null, next: null, step, to },
    parts: Object.entries(step.parts).map(([key, spec]) => toPart(key, spec)),
  });
  const bare = choose({ say: 'Which?', options });
  expect(taken('not sure', place(bare, { a: '!a', b: '!b' }))).toBeNull();
  expect(taken('no tool', place(choose({ say: 'Which?', options, cant: '!done' }), {}))).toBe('left out');
  const unsure = choose({
    say: 'Which?',
    options: { ...options, c: { label: 'C', words: ['not sure'], to: '!done' } },
  });
  expect(taken('no tool', place(unsure, { a: '!a', b: '!b', c: '!c' }))).toBe('c');
  const sure = confirm({ say: 'So?', yes: 'Yes', no: { label: 'No', to: '!no' }, next: '!yes' });
  expect(taken('not sure', place(sure, { yes: '!yes', no: '!no' }))).toBe('left out');
  expect(skipTarget(place(sure, { yes: '!yes', no: '!no' }).place)).toBe('!no');
  const only = confirm({ say: 'So?', yes: 'Yes', next: '!yes' });
  expect(taken('not sure', place(only, { yes: '!yes' }))).toBeNull();
});

test.each([
  ['an option takes it, the words beside it', ['h', 'psc', 'no tool'], 'unknown', ['answered', 'noted']],
  ['it is left out, with the reason', ['a', 'psc', 'no tool'], undefined, ['answered']],
] as const)('typed to the engine: %s', (_, lines, chosen, kinds) => {
  const c = new Conversation();
  const before = c.types(...lines.slice(0, -1)).entries.length;
  c.types(lines.at(-1) ?? '');
  const added = c.entries.slice(before);
  expect(added.map(({ kind }) => kind)).toEqual(kinds);
  const [answer] = added;
  if (answer?.kind !== 'answered') throw new Error('no answer');
  const choice = answer.body.parts.choice;
  expect(choice?.kind === 'choice' ? choice.chosen[0] : undefined).toBe(chosen);
  expect(answer.body.skipped !== undefined).toBe(chosen === undefined);
});
