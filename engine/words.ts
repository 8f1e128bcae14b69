/** Answers and readings in words, for the ticket, the terminal and the findings' neighbours. */
import { labelWords } from './prompt.ts';
import type { Parts, TextRef, Units, Value } from './schema.ts';
import { besideFigure, besideText } from './units/beside.ts';
import type { AskStep, PartSpec } from './vocabulary.ts';

/** The words behind a reference, or what is said where they were removed. */
export type Resolve = (ref: TextRef) => string;

/** `units`: what is shown beside °F and psig. */
export function valueWords(value: Value, spec: PartSpec | undefined, resolve: Resolve, units?: Units): string {
  switch (value.kind) {
    case 'choice':
      return besideText(chosenLabels(spec, value.chosen).join(', '), units);
    case 'figure':
      return besideFigure(value.value, value.unit, units);
    case 'over':
      return 'OL';
    case 'untaken':
      return 'not taken';
    case 'label':
      return `${labelWords(value.label)}${value.label.printed ? '' : ' (tolerance not printed)'}`;
    case 'text':
      return resolve(value.text);
    case 'photo':
      return 'photo';
  }
}

export function chosenLabels(spec: PartSpec | undefined, chosen: readonly string[]): string[] {
  const options = spec && 'options' in spec ? (spec.options ?? {}) : {};
  return chosen.map((id) => options[id]?.label ?? id);
}

/** One line per part that was given; a reading that was left out says so, any other part is silent. */
export function answerWords(step: AskStep, parts: Parts, resolve: Resolve, units?: Units): string[] {
  const given = Object.entries(parts).filter(([key, v]) => v.kind !== 'untaken' || step.parts[key]?.part === 'field');
  return given.map(([key, value]) => {
    const spec = step.parts[key];
    const words = valueWords(value, spec, resolve, units);
    const alone = given.length === 1 && value.kind === 'choice';
    return alone || spec === undefined ? words : `${besideText(spec.ask, units).replace(/[.:]$/, '')}: ${words}`;
  });
}

/** What a note is headed with. */
export const NOTED = {
  note: 'Note',
  unclear: 'Not understood, kept',
  hazard: 'A word that may mean danger',
  'old-mark': 'An old mark',
  observation: 'Observation',
} as const;

/** Why an isolation ended, within a sentence. */
export const VOIDED = {
  age: 'nobody answered in time',
  'power-back': 'power came back',
  'lock-off': 'a lock came off',
  'line-voltage': 'line voltage was seen',
  offline: 'answered without contact',
} as const;
/** Why a senior was called, within a sentence. */
export const RAISED = {
  asked: 'asked for',
  'not-covered': 'handed over with what was read',
  tries: 'the tries are spent',
  approval: 'an approval is needed',
  verdict: 'the verdict asks for one',
  spent: 'the rounds are spent',
} as const;
