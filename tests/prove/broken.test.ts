import { describe, expect, it } from 'vitest';
import { may } from '../../engine/desk/rights.ts';
import { BROKEN, catchIt, type Subject } from '../../engine/prove/index.ts';
import { SHELF } from '../../flows/index.ts';

const rights = may as Subject['may'];

describe.each(SHELF.map((m) => [m.id, m] as const))('broken copies of %s', (_, manual) => {
  it.each(BROKEN.map((v) => [v.name, v] as const))('catches: %s', { timeout: 120_000 }, (_, variant) => {
    const { breach } = catchIt(variant, manual, rights);
    expect(breach?.rule).toBe(variant.rule);
    expect(breach?.conversation.length).toBeGreaterThan(0);
  });
});
