/**
 * What every judgement says to a person, for every line of its probe, with the manual's own limits: each line, its
 * outcome, and each finding as it is read. The stored pages are read by a reviewer; a changed word or figure shows in them.
 */
import { expect, test } from 'vitest';
import { flatten } from '../../engine/flatten.ts';
import { judgements } from '../../engine/judgements/index.ts';
import type { Force, Judgement, Limit } from '../../engine/judgements/judgement.ts';
import { draw } from '../../engine/picture/draw.ts';
import type { Finding, Parts, Value } from '../../engine/schema.ts';
import { SHELF } from '../../flows/index.ts';
import { LIMITS as MANUAL } from '../../flows/limits.ts';
import { ASSUMED, FORCE, FORCES, LIMITS } from './fixture.ts';

type Any = Judgement<string, string, string>;
type Limits = Readonly<Record<string, Limit>>;
const PUBLISHED: Readonly<Record<string, Limits | undefined>> = MANUAL;

/** Judgement → the limits of the places that use it, each set once; those that no page uses have the manual's, or the tests' own. */
const used = new Map<string, Map<string, Limits>>(Object.keys(judgements).map((id) => [id, new Map()]));
for (const manual of SHELF)
  for (const { step } of flatten(manual).places.values()) {
    const here = step.verb === 'judge' ? [step] : 'shows' in step ? (step.shows ?? []) : [];
    for (const { judgement, limits } of here) used.get(judgement)?.set(JSON.stringify(limits), limits);
  }
const cases = [...used].flatMap(([id, sets]) => {
  const spare =
    PUBLISHED[id.replace(/-(\w)/g, (_, letter) => letter.toUpperCase())] ?? LIMITS[id as keyof typeof LIMITS];
  const all = sets.size > 0 ? [...sets.values()] : [spare as Limits];
  return all.map((limits, i) => ({ id, limits, page: i === 0 ? id : `${id}-${i + 1}` }));
});

test.for(cases)('$page', async ({ id, limits, page }) => {
  const j = judgements[id as keyof typeof judgements] as unknown as Any;
  const lines = j.probe(limits).flatMap((given) => {
    const told = new Set([says(j, given, limits, FORCE)]);
    const otherwise = OTHERS.flatMap(([under, force]) => {
      const then = says(j, given, limits, force);
      if (told.has(then)) return [];
      told.add(then);
      return [`${said(given)}, ${under} ${then}`];
    });
    return [`${said(given)} ${[...told][0]}`, ...otherwise];
  });
  const head = `${id} takes ${j.takes.join(', ')}; limits ${j.limits.join(', ')}; outcomes ${j.outcomes.join(', ')}`;
  await expect(`${[head, ...lines].join('\n\n')}\n`).toMatchFileSnapshot(`words/${page}.txt`);
});

/** What else may be in force, shown where it makes a difference. */
const OTHERS: readonly (readonly [string, Force])[] = [
  ['meter not known', { ...FORCE, meter: ASSUMED }],
  ['by the plain rule', { ...FORCE, settings: { ...FORCE.settings, rule: 'plain' } }],
  ...FORCES.slice(1).map((force, i) => [`in force ${i + 1}`, force] as const),
];

function says(j: Any, given: Partial<Record<string, Parts>>, limits: Limits, force: Force): string {
  const { outcome, findings } = j.run(Object.fromEntries(j.takes.map((name) => [name, given[name]])), limits, force);
  return [`→ ${outcome}`, ...findings.map(shown)].join('\n');
}
const said = (given: Partial<Record<string, Parts>>): string => {
  const all = Object.entries(given).map(
    ([name, parts]) =>
      `${name}: ${Object.entries(parts ?? {})
        .map(cell)
        .join(' ')}`,
  );
  return all.length === 0 ? 'nothing was asked' : all.join('; ');
};
const cell = ([key, value]: [string, Value]): string => {
  if (value.kind === 'figure') return `${key} ${value.value} ${value.unit}`;
  if (value.kind === 'choice') return value.chosen.join('+');
  if (value.kind === 'label') {
    const { herm, fan, below, above, volts, printed } = value.label;
    return `${herm}+${fan ?? '–'} −${below}/+${above} %${printed ? '' : ' not printed'} ${volts ?? '–'} V`;
  }
  return `${key} ${value.kind === 'over' ? 'OL' : '_'}`;
};
const shown = ({ name, reading, limits, doubt, word, text, source, figures }: Finding): string =>
  [
    `  ${name}: ${reading} (${word})`,
    `    ${text}`,
    `    ${[limits, doubt, source].map((s) => s ?? '–').join(' | ')}`,
    ...(figures ? [`    drawn: ${draw(figures).text}`] : []),
  ].join('\n');
