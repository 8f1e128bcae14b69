/**
 * A finished call, said twice: for the customer in plain words, for the shop with all its evidence. Every word and figure
 * is computed from the record and the pages it is pinned to. Null until the job stands at an ending.
 */
import type { Standing } from '../replay.ts';
import type { Entry, Units } from '../schema.ts';
import type { Resolve } from '../words.ts';
import { closed } from './closed.ts';
import { customerLines } from './customer.ts';
import { shopLines } from './shop.ts';
import type { When } from './when.ts';

export interface CloseOut {
  readonly customer: string[];
  readonly shop: string[];
}

export function closeOut(
  standing: Standing,
  entries: readonly Entry[],
  resolve: Resolve,
  name: (person: string) => string,
  when?: When,
  units?: Units,
): CloseOut | null {
  const job = closed(standing, entries, resolve, name, when, units);
  return job && { customer: customerLines(job), shop: shopLines(job) };
}
