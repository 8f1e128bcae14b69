/**
 * What supply and motors say to a person, for every line of their probes, with the manual's own limits: each line, its
 * outcome, and each finding as it is read. The stored pages are read by a reviewer; a changed word or figure shows in them.
 */
import { expect, test } from 'vitest';
import type { Judgement, Limit } from '../../engine/judgements/judgement.ts';
import { nameplate } from '../../engine/judgements/supply/nameplate.ts';
import { runningAmps } from '../../engine/judgements/supply/running-amps.ts';
import { supply } from '../../engine/judgements/supply/supply.ts';
import { blowerWindings } from '../../engine/judgements/windings/blower.ts';
import { compressorWindings } from '../../engine/judgements/windings/compressor.ts';
import { fanWindings } from '../../engine/judgements/windings/fan.ts';
import { insulation } from '../../engine/judgements/windings/insulation.ts';
import { loadsToGround } from '../../engine/judgements/windings/loads-to-ground.ts';
import { threeWindings } from '../../engine/judgements/windings/three.ts';
import type { Finding, Parts, Value } from '../../engine/schema.ts';
import { LIMITS } from '../../flows/limits.ts';
import { FORCE } from './fixture.ts';

const pages = [
  [compressorWindings, LIMITS.compressorWindings],
  [fanWindings, LIMITS.fanWindings],
  [blowerWindings, LIMITS.blowerWindings],
  [threeWindings, LIMITS.threeWindings],
  [loadsToGround, LIMITS.loadsToGround],
  [insulation, LIMITS.insulation],
  [nameplate, LIMITS.nameplate],
  [supply, LIMITS.supply],
  [runningAmps, LIMITS.runningAmps],
] as unknown as [Judgement<string, string, string>, Readonly<Record<string, Limit>>][];

test.for(pages.map(([j, limits]) => ({ id: j.id, j, limits })))('$id', async ({ id, j, limits }) => {
  const lines = j.probe(limits).map((given) => {
    const { outcome, findings } = j.run(Object.fromEntries(j.takes.map((name) => [name, given[name]])), limits, FORCE);
    return [`${said(given)} → ${outcome}`, ...findings.map(shown)].join('\n');
  });
  const head = `${id} takes ${j.takes.join(', ')}; limits ${j.limits.join(', ')}; outcomes ${j.outcomes.join(', ')}`;
  await expect(`${[head, ...lines].join('\n\n')}\n`).toMatchFileSnapshot(`words/${id}.txt`);
});

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
  return `${key} ${value.kind === 'over' ? 'OL' : '_'}`;
};
const shown = ({ name, reading, limits, doubt, word, text, source }: Finding): string =>
  [
    `  ${name}: ${reading} (${word})`,
    `    ${text}`,
    `    ${[limits, doubt, source].map((s) => s ?? '–').join(' | ')}`,
  ].join('\n');
