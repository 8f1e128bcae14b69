/** Everything that is drawn, in the units that somebody prefers. The same data where that is °F and psig. */
import type { Conclusion, Finding, Part, Prompt, Refusal, Unit, Units } from '../schema.ts';
import type { AskStep } from '../vocabulary.ts';
import { besideAll, besideText } from './beside.ts';
import { isConvertible, preferredFor, prefersOther } from './other.ts';
import { CELLS } from './sentences.ts';

type Cells = Pick<Finding, 'name' | 'reading' | 'limits' | 'word' | 'text' | 'source'>;

/** A finding as a person reads it; its figures and its picture stay as they were judged. */
export function findingIn<F extends Cells>(finding: F, units: Units | undefined): F {
  if (!prefersOther(units)) return finding;
  const [, reading, limits] = CELLS.find(([name]) => name.test(finding.name)) ?? [];
  const cell = (text: string, unit: Unit | undefined): string => {
    const said = besideText(text, units);
    return unit === undefined ? said : besideAll(said, unit, units);
  };
  return {
    ...finding,
    reading: cell(finding.reading, reading),
    limits: finding.limits === null ? null : cell(finding.limits, limits),
    text: besideText(finding.text, units),
    source: finding.source === null ? null : besideText(finding.source, units),
  };
}

export function conclusionIn<C extends Conclusion>(verdict: C, units: Units | undefined): C {
  if (!prefersOther(units)) return verdict;
  const all = (lines: readonly string[]): string[] => lines.map((line) => besideText(line, units));
  return {
    ...verdict,
    says: all(verdict.says),
    next: all(verdict.next),
    findings: verdict.findings.map((finding) => findingIn(finding, units)),
  };
}

/** The question as a page has it, for whoever reads what was asked. */
export function askedIn<S extends Pick<AskStep, 'say'>>(step: S, units: Units | undefined): S {
  return prefersOther(units) ? { ...step, say: besideText(step.say, units) } : step;
}

/**
 * A prompt for one reader. A field keeps its unit, and a bare number means that unit whoever types it: one thread is
 * read by people who prefer different units, and an answer may arrive long after it was typed. `prefers` tells a surface
 * which unit to offer beside it.
 */
export function promptIn(prompt: Prompt, units: Units | undefined): Prompt {
  if (!prefersOther(units)) return prompt;
  const say = (text: string): string => besideText(text, units);
  const said = <T extends { text: string }>(lines: readonly T[]): T[] =>
    lines.map((line) => ({ ...line, text: say(line.text) }));
  const parts = prompt.parts.map((part) => partIn(part, units));
  return {
    ...prompt,
    title: say(prompt.title),
    body: prompt.body.map(say),
    callouts: said(prompt.callouts),
    notices: said(prompt.notices),
    parts,
    line: prompt.line === null ? null : `${prompt.line}${bareMeans(parts)}`,
    why: prompt.why === null ? null : say(prompt.why),
    sources: prompt.sources.map(say),
    verdicts: prompt.verdicts.map((verdict) => conclusionIn(verdict, units)),
  };
}

function partIn(part: Part, units: Units): Part {
  const ask = besideText(part.ask, units);
  if ('options' in part)
    return {
      ...part,
      ask,
      options: part.options.map((option) => ({ ...option, label: besideText(option.label, units) })),
    };
  if (part.kind !== 'field') return { ...part, ask };
  const prefers = preferredFor(part.unit, units);
  return prefers === null ? { ...part, ask } : { ...part, ask, prefers };
}

/** Said where a whole line is typed: there no unit stands beside a figure. */
function bareMeans(parts: readonly Part[]): string {
  const units = parts.flatMap((part) =>
    part.kind === 'field' && part.prefers !== undefined ? [part.unit === 'psig' ? 'psig' : '°F'] : [],
  );
  return units.length === 0 ? '' : ` (a figure without its unit is ${[...new Set(units)].join(', ')})`;
}

/** A refusal of a reading, in the kind of degrees that its field asks for. What a person typed is quoted as it was. */
export function refusalIn(refusal: Refusal, parts: readonly Part[], units: Units | undefined): Refusal {
  const asked = new Set(
    parts.flatMap((part) => (part.kind === 'field' && refusal.parts.includes(part.key) ? [part.unit] : [])),
  );
  const [unit] = asked;
  if (unit === undefined || asked.size > 1 || !isConvertible(unit)) return refusal;
  const pieces = refusal.text.split(/(“[^”]*”)/);
  return {
    ...refusal,
    text: pieces.map((piece, i) => (i % 2 === 1 ? piece : besideAll(piece, unit, units))).join(''),
  };
}
