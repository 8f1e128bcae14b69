/**
 * What does not suffice condemns nothing. Each paragraph names a verdict, the worked call of the pages that reaches it,
 * and the line that carries it; below, what is typed in its place, where the job stands then, and what is concluded
 * instead, if anything. The verdict must not come.
 *
 * Why each is weak: common practice, no single source.
 */
import { describe, expect, test } from 'vitest';
import type { Flow } from '../../engine/vocabulary.ts';
import { SHELF } from '../../flows/index.ts';
import { Conversation } from '../people.ts';
import { AIR_AND_CIRCUIT, CAPACITORS, CONTROL, MOTORS, SUPPLY } from './not-enough.ts';

/** Every page of the manual with its worked calls. */
const pages = new Map<string, Flow>();
const gather = (page: Flow): void => {
  if (pages.has(page.id)) return;
  pages.set(page.id, page);
  for (const step of Object.values(page.steps)) if (step.verb === 'include') gather(step.page);
};
gather(SHELF[0].root);

interface Weak {
  readonly verdict: string;
  readonly call: string;
  readonly line: string;
  readonly typed: string;
  readonly place: string;
  readonly instead: string;
  readonly why: string;
}
const ROWS = [CAPACITORS, CONTROL, SUPPLY, MOTORS, AIR_AND_CIRCUIT].flatMap((table) =>
  table
    .trim()
    .split(/\n\n+/)
    .flatMap((paragraph): Weak[] => {
      const [head = '', line = '', ...weak] = paragraph.split('\n');
      const [, verdict = '', call = ''] = /^(\S+) ← (.+)$/.exec(head) ?? [];
      return weak.map((text) => {
        const [, typed = '', place = '', instead = '', why = ''] =
          /^ {2}(.+) → (\S+)(?: as (\S+))? \((.+)\)$/.exec(text) ?? [];
        return { verdict, call, line, typed, place, instead, why };
      });
    }),
);

/** A row that can’t be read would test nothing. */
test('every row is whole', () => {
  expect(ROWS.filter(({ verdict, typed, why }) => !verdict || !typed || !why)).toEqual([]);
  expect(new Set(ROWS.map((r) => r.verdict)).size).toBeGreaterThan(45);
});

describe.each(ROWS.map((r) => [r.verdict, r] as const))('%s', (verdict, row) => {
  test(`not by: ${row.why}`, () => {
    const [page = '', title = ''] = row.call.split(/: (.*)/s);
    const example = pages.get(page)?.examples?.find((each) => each.title === title);
    // With the full line the verdict stands: the worked call is typed to its end by another test.
    expect(example?.then).toContain(verdict);
    const at = example?.lines.indexOf(row.line) ?? -1;
    expect(at).toBeGreaterThanOrEqual(0);
    const c = new Conversation({ certified: true, ...(example?.unit ? { equipment: example.unit } : {}) });
    for (const line of [...(example?.lines.slice(0, at) ?? []), ...row.typed.split(' | ')]) c.type(line, 'ines');
    expect(c.verdicts).not.toContain(verdict);
    expect([c.place.split('/').at(-1), c.verdicts.at(-1) ?? '']).toEqual([
      row.place,
      row.instead === '' ? expect.any(String) : row.instead,
    ]);
  });
});
