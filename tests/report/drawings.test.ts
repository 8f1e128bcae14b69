/** Drawings on a report: those that a verdict rests on, the same as in the chat, with their words for whoever doesn't see them. */
import { describe, expect, test } from 'vitest';
import { draw } from '../../engine/picture/draw.ts';
import type { Drawing } from '../../engine/report/paper/drawings.ts';
import { paperHtml } from '../../engine/report/paper/html.ts';
import { type Audience, type Paper, paperOf } from '../../engine/report/paper/paper.ts';
import { at, atFigures, GOOD, typed } from '../engine/given.ts';
import { type Conversation, PROVES } from '../people.ts';
import { SAMPLES } from '../picture/samples.ts';
import { jobOf, made, type Node, nodesIn, wordsOf, wordsOfHtml } from './reading.ts';

const drawingsOn = (paper: Paper): Drawing[] =>
  paper.blocks.flatMap((block) => (block.kind === 'drawings' ? block.drawings : []));
const withoutIds = (svg: string): string => svg.replace(/p[0-9a-f]{10}[td]/g, '');
const capacitor = (): Conversation => atFigures().type(PROVES);
const grounded = (): Conversation => typed(at('readings'), [GOOD, 'spin free', 'cr .9 cs 2.7 sr 3.6 g 900', 'cant']);
const coil = (): Conversation =>
  typed(at('block'), [
    'fuses 0.1 0.1 contacts .1 .1 coil ol t1g ol t2g ol',
    'contacts .1 .1 coil ol, prints 24',
    'no diagram',
    'done',
    GOOD,
    'spin free',
    'cr .9 cs 2.7 sr 3.6 g ol',
    'contactor',
    'contactor fitted',
    'wires back',
    '17.9 96 1.2',
    'closed',
    PROVES,
  ]);

describe.each<[Audience, string, () => Conversation, RegExp[]]>([
  ['customer', 'a capacitor out of its label', capacitor, [/^Where the leads go: HERM–C, FAN–C/]],
  [
    'shop',
    'a capacitor out of its label',
    capacitor,
    [/^Where the leads go: HERM–C, FAN–C, HERM–FAN/, /^Where the leads/],
  ],
  ['shop', 'a compressor with a ground', grounded, [/^Where the leads go: HERM–C/, /^Windings between C, R and S$/]],
  ['shop', 'a contactor whose coil is open', coil, [/Fuse/]],
])('%s, %s', (audience, _, call, titles) => {
  test('stand under their verdict once, as the chat draws them, in HTML without styles', () => {
    const c = call();
    const paper = paperOf(jobOf(c), audience);
    const drawings = drawingsOn(paper);
    for (const title of titles) expect(drawings.map((d) => d.title)).toContainEqual(expect.stringMatching(title));
    expect(new Set(drawings.map(({ svg }) => withoutIds(svg))).size).toBe(drawings.length);
    expect(new Set(drawings.map(({ svg }) => /id="(p\w+t)"/.exec(svg)?.[1])).size).toBe(drawings.length);
    const html = paperHtml(paper, () => null);
    for (const { svg } of drawings) expect(html).toContain(svg);
    expect(html).not.toMatch(/<style|style=|<script|href=/);
  });

  test.each(['A4', 'letter'] as const)(
    'on %s each is a tagged figure that says the whole of it, on the sheet',
    async (size) => {
      const paper = paperOf(jobOf(call()), audience);
      const { pdf } = await made(paper, size);
      const nodes: Node[] = [];
      for (let n = 1; n <= pdf.numPages; n++) {
        const page = await pdf.getPage(n);
        nodes.push(...nodesIn((await page.getStructTree()) as Node | null));
        // No heading is left behind at the foot of a page by the drawing that belongs to it.
        const { items } = await page.getTextContent();
        const last = items.flatMap((item) => ('str' in item && item.str.trim() !== '' ? item.str : [])).at(-2);
        expect(last).not.toBe('Where it was measured');
      }
      const figures = nodes.filter(({ role }) => role === 'Figure');
      expect(figures.map(({ alt }) => alt)).toEqual(drawingsOn(paper).map(({ says }) => says));
      expect(await wordsOf(pdf)).toBe(wordsOfHtml(paperHtml(paper, () => null)));
      await pdf.destroy();
    },
  );
});

test('what a chat drew of the question is on the report', () => {
  const c = at('readings');
  const asked = c.prompt().pictures.map(({ svg }) => withoutIds(svg));
  expect(asked.length).toBe(1);
  const drawn = drawingsOn(paperOf(jobOf(capacitor()), 'shop')).map(({ svg }) => withoutIds(svg));
  expect(drawn).toContain(asked[0]);
});

test('a PDF draws every kind of drawing, and all its words', async () => {
  const drawings = Object.entries(SAMPLES).map(([name, data]) => {
    const { title, text, svg } = draw(data, { key: name });
    return { title, says: text, svg };
  });
  const paper: Paper = {
    ...paperOf(jobOf(capacitor()), 'customer'),
    blocks: [
      { kind: 'heading', text: 'All' },
      { kind: 'drawings', drawings },
    ],
  };
  const { pdf } = await made(paper, 'letter');
  const words = wordsOfHtml(paperHtml(paper, () => null));
  // The face has no arrow.
  expect(await wordsOf(pdf)).toBe(words.replaceAll('→', '->').replaceAll('✓', 'yes'));
  await pdf.destroy();
});
