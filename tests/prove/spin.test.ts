/** The model for SPIN: what is in it, and where spin is installed, that it agrees. */
import { describe, expect, test } from 'vitest';
import { check, spinVersion } from '../../engine/desk/proof/spin.ts';
import { may } from '../../engine/desk/rights.ts';
import { flatten } from '../../engine/flatten.ts';
import { BROKEN, type Subject } from '../../engine/prove/index.ts';
import { CAPACITOR_CHECK, CLAIMS, promela } from '../../engine/prove/spin/index.ts';
import { SHELF } from '../../flows/index.ts';

const [manual] = SHELF;
const plan = flatten(manual);
const model = promela(plan, CAPACITOR_CHECK);

describe('the model', () => {
  test('is the same each time it is made', () => {
    expect(promela(flatten({ ...manual }), CAPACITOR_CHECK)).toBe(model);
  });
  test('has every step of make-dead and of the capacitor’s check, and every way on from it', () => {
    const { cabinet, procedure } = CAPACITOR_CHECK;
    const gates = plan.regions[cabinet]?.places ?? [];
    const steps = [...plan.places.keys()].filter((id) => id.startsWith(procedure));
    expect(gates.length).toBeGreaterThan(10);
    expect(steps.length).toBeGreaterThan(100);
    for (const id of [...gates, ...steps]) {
      const { title, name, to } = plan.places.get(id) ?? { title: '', name: '', to: {} };
      expect(model).toMatch(new RegExp(`#define [GP]_\\w+ \\d+ /\\* ${title}: ${name}\\b`));
      for (const on of Object.keys(to)) expect(model).toContain(`${title}, ${name}: ${on}\\n`);
    }
  });
  test('states each rule as a claim', () => {
    for (const { name, ltl } of CLAIMS) expect(model).toContain(`ltl ${name} { ${ltl} }`);
    expect(CLAIMS.filter((c) => c.holds).map((c) => c.rule)).toEqual(['R1', 'R3', 'R3', 'R3', 'R4', 'R6']);
  });
});

const version = await spinVersion();
// A program of the system, 0.4 MB: `apt-get install spin`. Where it is missing its opinion is not had, and nothing else.
describe.skipIf(version === null)(`by ${version ?? 'spin, which is not installed here'}`, () => {
  test('every claim holds in every state, and hands inside are reached', { timeout: 300_000 }, async () => {
    const checked = await check(model, CLAIMS);
    expect(checked.filter(({ claim, holds }) => holds !== claim.holds)).toEqual([]);
    expect(checked.find(({ claim }) => claim.name === 'whole')?.states).toBeGreaterThan(1000);
  });
  test('a residual outcome that leads on violates R1, and it says how', { timeout: 300_000 }, async () => {
    const broken = BROKEN.find((b) => b.name === 'residuals count with a flat battery');
    const { machine } = broken?.subject(manual, may as Subject['may']) ?? {};
    if (!machine) throw new Error('no such broken variant');
    const [whole] = await check(
      promela(machine.plan, CAPACITOR_CHECK),
      CLAIMS.filter((c) => c.name === 'whole'),
    );
    expect(whole?.holds).toBe(false);
    expect(whole?.trail.at(-1)).toMatch(/left: battery$/);
  });
});
