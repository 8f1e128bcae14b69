/**
 * What every judgement says to a person, for every line of its probe, with the manual's own limits: each line, its
 * outcome, and each finding as it is read. The stored pages are read by a reviewer; a changed word or figure shows in them.
 */
import { expect, test } from 'vitest';
import { judgements } from '../../engine/judgements/index.ts';
import type { Force, Judgement } from '../../engine/judgements/judgement.ts';
import { draw } from '../../engine/picture/draw.ts';
import type { Finding, Parts, Value } from '../../engine/schema.ts';
import { ASSUMED, FORCE, FORCES, LIMITS } from './fixture.ts';
import { type Limits, limitsGiven } from './manual-limits.ts';

type Any = Judgement<string, string, string>;

const cases = (Object.keys(judgements) as (keyof typeof judgements)[]).flatMap((id) => {
  const given = limitsGiven(id);
  const all = given.length > 0 ? given : [LIMITS[id]];
  return all.map((limits, i) => ({ id, limits, page: i === 0 ? id : `${id}-${i + 1}` }));
});

test.for(cases)('$page', async ({ id, limits, page }) => {
  const j = judgements[id] as unknown as Any;
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
