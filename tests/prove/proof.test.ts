import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type * as proving from '../../engine/desk/proof/prove.ts';
import { BROKEN, RULES, rulesTable, walksTable } from '../../engine/prove/index.ts';
import { SHELF } from '../../flows/index.ts';

/** On which something is opened; on the others no step touches anything, which `check` holds. */
const OPENED = SHELF.filter((m) => Object.keys(m.cabinets).length > 0);

/** A walk runs in a thread of its own, which takes the program as it is built. */
const BUILT = new URL('../../dist/engine/desk/proof/prove.js', import.meta.url).href;
const { prove } = (await import(BUILT)) as typeof proving;

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

describe.each(OPENED.map((m) => [m.id, m] as const))('the proof of %s', (_, manual) => {
  // Some minutes on two cores of its own; a slow machine is no breach.
  it('finds no breach in any reachable state, and every step is reached', { timeout: 1_500_000 }, async () => {
    const proof = await prove(manual);
    expect(proof.breaches).toEqual([]);
    expect(proof.unreached).toEqual([]);
    // What is left to the worked calls: `tests/flows/examples.test.ts` goes the rest.
    await expect(`${proof.untried.join('\n')}\n`).toMatchFileSnapshot('untried.txt');
    // What the README says is what was walked.
    for (const line of [...walksTable(proof), ...rulesTable()]) expect(readme).toContain(`${line}\n`);
    expect(readme).toContain(`Of the ${proof.ways} ways out of`);
    // A walk that stopped early would prove nothing.
    expect(proof.walks.every((w) => w.states > 100 && w.edges > w.states)).toBe(true);
  });

  it('has a broken variant for every rule it speaks for', () => {
    expect(RULES.filter((rule) => !BROKEN.some((v) => v.rule === rule))).toEqual([]);
    expect(BROKEN.length).toBeGreaterThanOrEqual(40);
  });
});
