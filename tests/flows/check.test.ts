import { expect, it } from 'vitest';
import { check } from '../../engine/check.ts';
import { SHELF } from '../../flows/index.ts';

it.each(SHELF.map((m) => [m.id, m] as const))('the manual %s is sound', (_, manual) => {
  expect(check(manual)).toEqual([]);
});
