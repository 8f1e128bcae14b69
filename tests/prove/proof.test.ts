import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { may } from '../../engine/desk/rights.ts';
import { BROKEN, prove, RULES, rulesTable, type Subject, walksTable } from '../../engine/prove/index.ts';
import { SHELF } from '../../flows/index.ts';

/** On which something is opened; on the others no step touches anything, which `check` holds. */
const OPENED = SHELF.filter((m) => Object.keys(m.cabinets).length > 0);

const rights = may as Subject['may'];
const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

describe.each(OPENED.map((m) => [m.id, m] as const))('the proof of %s', (_, manual) => {
  // Four minutes on a machine of its own; a slow one is no breach.
  it('finds no breach in any reachable state, and every step is reached', { timeout: 1_500_000 }, async () => {
    const proof = prove(manual, rights);
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
