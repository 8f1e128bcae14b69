import { describe, expect, it } from 'vitest';
import { may } from '../../engine/desk/rights.ts';
import { BROKEN, catchIt, type Subject } from '../../engine/prove/index.ts';
import { SHELF } from '../../flows/index.ts';

/** On which something is opened; on the others no step touches anything, which `check` holds. */
const OPENED = SHELF.filter((m) => Object.keys(m.cabinets).length > 0);

const rights = may as Subject['may'];

describe.each(OPENED.map((m) => [m.id, m] as const))('broken copies of %s', (_, manual) => {
  it.each(BROKEN.map((v) => [v.name, v] as const))('catches: %s', { timeout: 600_000 }, (_, variant) => {
    const { breach } = catchIt(variant, manual, rights);
    expect(breach?.rule).toBe(variant.rule);
    expect(breach?.conversation.length).toBeGreaterThan(0);
  });
});
