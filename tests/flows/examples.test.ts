/**
 * The worked calls that the pages carry, each typed through the engine: same verdicts, same ending, over its page; then
 * the same with less evidence; and with what the proof's walk went, every way that the pages state is gone.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compile } from '../../engine/compile.ts';
import { fingerprint } from '../../engine/fingerprint.ts';
import { stepOf } from '../../engine/prove/index.ts';
import { gone } from '../../engine/prove/ways.ts';
import { memoryOf } from '../../engine/replay.ts';
import { route } from '../../engine/route.ts';
import type { Flow, Manual } from '../../engine/vocabulary.ts';
import { SHELF } from '../../flows/index.ts';
import { Conversation, type PersonId } from '../people.ts';
import { NEVER } from './calls/never.ts';
import { AIR_AND_CIRCUIT, CAPACITORS, CONTROL, MOTORS, SUPPLY } from './calls/not-enough.ts';
import { OTHER_WAYS } from './calls/other-ways.ts';
import { read } from './calls/read.ts';

const NOT_ENOUGH = [CAPACITORS, CONTROL, SUPPLY, MOTORS, AIR_AND_CIRCUIT].flatMap(read);
/** Ways gone by all that is typed here. */
const ways = new Set<string>();
function type(c: Conversation, line: string, by: PersonId): void {
  const { standing } = c;
  const { length } = c.entries;
  c.type(line, by);
  gone(
    standing,
    c.standing,
    c.entries.slice(length).find(({ kind }) => kind === 'answered'),
    ways,
  );
}

/** Every page of a manual, once, in the order in which they are put in place. */
function pagesOf(page: Flow, seen = new Map<string, Flow>()): Map<string, Flow> {
  if (seen.has(page.id)) return seen;
  seen.set(page.id, page);
  for (const step of Object.values(page.steps)) if (step.verb === 'include') pagesOf(step.page, seen);
  return seen;
}
const pagesIn = (manual: Manual): Flow[] =>
  [
    ...pagesOf(manual.root),
    // Where nothing is opened, make-dead stands at no place.
    ...(Object.keys(manual.cabinets).length === 0 ? [] : pagesOf(manual.isolation.page)),
  ].map(([, page]) => page);
const by = (manual: Manual): PersonId => (manual.caller ? 'dana' : 'ines');

describe.each(SHELF.map((m) => [m.id, m] as const))('the worked calls of %s', (_, manual) => {
  const machine = compile(manual);
  const places = [...machine.plan.places.values()];
  const pages = pagesIn(manual);
  const told = pages.flatMap((page) => (page.examples ?? []).map((example) => ({ page: page.id, ...example })));

  test('every page has one, and no two have one title', () => {
    expect(pages.filter((page) => (page.examples ?? []).length === 0).map((page) => page.id)).toEqual([]);
    const titles = told.map(({ page, title }) => `${page}: ${title}`);
    expect(titles.filter((title, i) => titles.indexOf(title) !== i)).toEqual([]);
  });

  /** Pages without questions of their own are passed where what they hold is. */
  const visits = (c: Conversation, page: Flow): boolean => {
    const passed = route(c.standing.machine.plan, memoryOf(c.standing)).passed.map((p) => p.page);
    const answered = c.entries.flatMap((e) => (e.kind === 'answered' ? e.body.place : []));
    const asked = places.flatMap((p) => (answered.includes(p.id) ? p.page : []));
    return [...passed, ...asked].includes(page.id);
  };

  describe.each(pages.map((page) => [page.id, page] as const))('%s', (_, page) => {
    test.each((page.examples ?? []).map((example) => [example.title, example] as const))('%s', (_, example) => {
      const c = new Conversation({ machine, certified: true, ...(example.unit ? { equipment: example.unit } : {}) });
      for (const line of example.lines) {
        type(c, line, by(manual));
        expect(`${line}: ${c.refusal?.text ?? 'taken'}`, `at ${c.place}`).toBe(`${line}: taken`);
      }
      expect(c.verdicts).toEqual(example.then);
      expect(c.place).toMatch(example.ends === undefined ? /^[^!]/ : new RegExp(`^!${example.ends}$`));
      expect(visits(c, page)).toBe(true);
    });
  });

  test('together they reach every verdict of the manual', () => {
    const shown = new Set(told.flatMap(({ then }) => then));
    const all = new Set(places.flatMap(({ step }) => (step.verb === 'verdict' ? step.verdict : [])));
    expect([...all].filter((verdict) => !shown.has(verdict))).toEqual([]);
  });

  test('they are no part of what a job is pinned to', () => {
    const bare = { ...manual, root: { ...manual.root, examples: [] } };
    expect(fingerprint(bare)).toBe(fingerprint(manual));
  });
});

const [manual] = SHELF;
const machine = compile(manual);
const worked = new Map(pagesIn(manual).map((page) => [page.id, page.examples ?? []]));

describe.each([
  ['does not suffice', NOT_ENOUGH],
  ['leads on', read(OTHER_WAYS)],
])('%s', (_, rows) => {
  test.each(rows.map((row) => [`${row.verdict || row.page}: ${row.why}`, row] as const))('%s', (_, row) => {
    const example = worked.get(row.page)?.find(({ title }) => title === row.title);
    // With the full line the verdict stands, which is tested above.
    if (row.verdict !== '') expect(example?.then).toContain(row.verdict);
    const at = example?.lines.indexOf(row.line) ?? -1;
    expect(at).toBeGreaterThanOrEqual(0);
    const c = new Conversation({ machine, certified: true, ...(example?.unit ? { equipment: example.unit } : {}) });
    for (const line of [...(example?.lines.slice(0, at) ?? []), ...row.typed]) type(c, line, 'ines');
    if (row.verdict !== '') expect(c.verdicts).not.toContain(row.verdict);
    expect([c.place.split('/').at(-1), row.says && c.verdicts.at(-1)]).toEqual([row.place, row.says]);
  });
});

test('with the walk of the proof, every way out of every step is gone, but those that no call can go', () => {
  const typed = new Set(
    [...ways].map((way) => {
      const [id = '', on] = way.split(' ');
      return `${stepOf(machine.plan.places.get(id))} ${on}`;
    }),
  );
  // Written by the proof's own test, which walks.
  const left = readFileSync(new URL('../prove/untried.txt', import.meta.url), 'utf8')
    .trim()
    .split('\n');
  expect(left.filter((way) => !typed.has(way)).sort()).toEqual(Object.values(NEVER).flat().sort());
});
