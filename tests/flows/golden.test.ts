/** The manual as it is printed and drawn. `GOLDEN=write` prints it anew; read the difference before it is committed. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { drawPage, saidOf } from '../../engine/desk/manual/drawn.ts';
import type { Box } from '../../engine/desk/manual/placed.ts';
import { printCover, printPage } from '../../engine/desk/manual/printed.ts';
import { pagesOf, waysOf } from '../../engine/desk/manual/ways.ts';
import { flatten } from '../../engine/flatten.ts';
import type { Point } from '../../engine/picture/svg.ts';
import { SHELF } from '../../flows/index.ts';
import { readXml } from '../picture/xml.ts';

const FOLDER = new URL('./golden/', import.meta.url).pathname;
const HOW = 'A page reads otherwise than its golden file. Where that is meant: GOLDEN=write, and read the difference.';
const pages = SHELF.flatMap(pagesOf);
const printed = new Map([
  ...SHELF.map((manual): [string, string] => [`${manual.id}.md`, printCover(manual)]),
  ...pages.map((page): [string, string] => [`${page.flow.id}.md`, printPage(page)]),
]);
/** One drawing is kept whole: the shortest that has a question, a judge, verdicts and a page of its own. */
const KEPT = 'motors.svg';
const kept = pages.filter(({ flow }) => `${flow.id}.svg` === KEPT).map((page) => `${drawPage(page).svg}\n`);

if (process.env.GOLDEN === 'write') {
  mkdirSync(FOLDER, { recursive: true });
  for (const [name, text] of printed) writeFileSync(`${FOLDER}${name}`, text);
  for (const svg of kept) writeFileSync(`${FOLDER}${KEPT}`, svg);
}

test.each([...printed])('%s reads as it was read', (name, text) => {
  expect(text, HOW).toBe(readFileSync(`${FOLDER}${name}`, 'utf8'));
});
test('the folder holds these and no other', () => {
  expect(readdirSync(FOLDER).sort()).toEqual([...printed.keys(), KEPT].sort());
});
test('one drawing is as it was looked at', () => {
  expect(kept.join(), HOW).toBe(readFileSync(`${FOLDER}${KEPT}`, 'utf8'));
});

test('what is printed has every limit with its unit and source, every word a person reads, and every class', () => {
  const all = [...printed.values()].join('\n');
  for (const { step, class: of, gate } of SHELF.flatMap((manual) => [...flatten(manual).places.values()])) {
    if (step.verb === 'judge')
      for (const l of Object.values(step.limits)) expect(all).toContain(`${l.value}\u2009${l.unit} (${l.source})`);
    if ('say' in step) {
      for (const words of [step.say, ...(step.body ?? []), ...(step.source ?? [])]) expect(all).toContain(words);
      for (const c of step.callouts ?? []) expect(all).toContain(`> ${c.level.toUpperCase()}: ${c.text}`);
      if ('parts' in step) expect(all).toContain(`: ${step.verb}, ${of}${gate ? ', a gate' : ''}\n\n**${step.say}**`);
    }
    if (step.verb === 'verdict')
      for (const words of [step.title, ...step.says, ...step.next]) expect(all).toContain(words);
  }
});

const apart = (a: Box, b: Box): boolean =>
  Math.abs(a.x - b.x) * 2 >= a.width + b.width - 0.01 || Math.abs(a.y - b.y) * 2 >= a.height + b.height - 0.01;
const overlaps = (boxes: readonly Box[]): string[] =>
  boxes.flatMap((a, i) => boxes.slice(i + 1).flatMap((b) => (apart(a, b) ? [] : [`${a.id} on ${b.id}`])));

/** Whether a line of points goes through the inside of a box, looked at every half px. */
const crosses = (points: readonly Point[], b: Box): boolean =>
  points.slice(1).some((to, i) => {
    const from = points[i] ?? to;
    const steps = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) * 2);
    return Array.from({ length: steps + 1 }, (_, n) => n / Math.max(1, steps)).some((share) => {
      const [x, y] = [from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share];
      return Math.abs(x - b.x) < b.width / 2 - 0.1 && Math.abs(y - b.y) < b.height / 2 - 0.1;
    });
  });

describe.each(pages.map((page) => [page.flow.id, page] as const))('%s drawn', (_, page) => {
  const { svg, boxes, arrows, width, height } = drawPage(page);
  const labels = arrows.map((arrow) => arrow.label);
  test('has a box for each step, none on another or on the words of an arrow, all inside', () => {
    for (const name of Object.keys(page.flow.steps)) expect(boxes.map((b) => b.id)).toContain(name);
    expect(overlaps([...boxes, ...labels])).toEqual([]);
    for (const b of [...boxes, ...labels]) {
      expect(b.x - b.width / 2, b.id).toBeGreaterThanOrEqual(0);
      expect(b.y - b.height / 2, b.id).toBeGreaterThanOrEqual(0);
      expect(b.x + b.width / 2, b.id).toBeLessThanOrEqual(width);
      expect(b.y + b.height / 2, b.id).toBeLessThanOrEqual(height);
    }
  });
  // The round has some hundred steps and five hundred arrows.
  test('has an arrow for each way, which crosses no box', { timeout: 120_000 }, () => {
    const ways = Object.entries(page.flow.steps).flatMap(([from, step]) =>
      waysOf(step).map(({ to }) => `${from} → ${to}`),
    );
    expect(arrows.map(({ from, to }) => `${from} → ${to}`).sort()).toEqual([...new Set(ways)].sort());
    const crossed = arrows.flatMap(({ from, to, points }) =>
      boxes.filter((b) => crosses(points, b)).map((b) => `${from} → ${to} over ${b.id}`),
    );
    expect(crossed).toEqual([]);
  });
  test('is well-formed and says in words what it shows', () => {
    const { inside } = readXml(svg);
    const desc = inside.flatMap((e) => (typeof e !== 'string' && e.name === 'desc' ? e.inside : []));
    expect(desc).toEqual([saidOf(page)]);
  });
});

test('an overlap and a crossing would be seen', () => {
  const box = { id: 'a', x: 10, y: 10, width: 10, height: 10 };
  expect(
    crosses(
      [
        { x: 0, y: 0 },
        { x: 20, y: 20 },
      ],
      box,
    ),
  ).toBe(true);
  expect(
    crosses(
      [
        { x: 0, y: 15 },
        { x: 20, y: 15 },
      ],
      box,
    ),
  ).toBe(false);
  expect(overlaps([box, { ...box, id: 'b', x: 19 }])).toEqual(['a on b']);
  expect(overlaps([box, { ...box, id: 'b', x: 20 }])).toEqual([]);
});
