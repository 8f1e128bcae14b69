/** A report as HTML, PDF and JSON: the same words in the same order, tagged, with its fonts, on both sizes, nothing cut off. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { paperHtml } from '../../engine/report/paper/html.ts';
import { paperJson } from '../../engine/report/paper/json.ts';
import { type Audience, type Paper, paperOf } from '../../engine/report/paper/paper.ts';
import type { PaperSize } from '../../engine/report/paper/pdf.ts';
import { atFigures } from '../engine/given.ts';
import { type Conversation, PROVES } from '../people.ts';
import { jobOf, made, type Node, nodesIn, wordsOf, wordsOfHtml } from './reading.ts';

/** Any JPEG will do. */
const JPEG = readFileSync(new URL('../web-chat/pictures/gate.jpg', import.meta.url));

const done = (): Conversation => atFigures().type(PROVES);
/** A record of hundreds of notes, and one long word that no column is wide enough for. */
function long(): Conversation {
  const c = done();
  for (let i = 0; i < 150; i++)
    c.type(`note line ${i} of a long visit, with words enough to go over the edge of a page`);
  return c.type(`note ${'x'.repeat(300)}`);
}
const HASH = 'ab'.repeat(32);
const withPhoto = (paper: Paper): Paper => ({
  ...paper,
  blocks: [...paper.blocks, { kind: 'photo', hash: HASH, says: 'Record the wiring, photo of Ines Vale' }],
});

describe.each<[Audience, PaperSize]>([
  ['customer', 'A4'],
  ['customer', 'letter'],
  ['shop', 'A4'],
  ['shop', 'letter'],
])('%s, %s', (audience, size) => {
  test('the words are those of the page, also of a long record; the size is right on every sheet', async () => {
    const paper = paperOf(jobOf(audience === 'shop' ? long() : done()), audience);
    const { pdf } = await made(paper, size);
    expect(await wordsOf(pdf)).toBe(wordsOfHtml(paperHtml(paper, () => null)));
    expect(pdf.numPages).toBeGreaterThanOrEqual(audience === 'shop' ? 8 : 1);
    for (let n = 1; n <= pdf.numPages; n++) {
      const page = await pdf.getPage(n);
      const [, , width = 0, height = 0] = page.view;
      // ISO 216 A4: 210 × 297 mm. US Letter: 8.5 × 11 in. In points of 1/72 in.
      const [w, h] = size === 'A4' ? [(210 / 25.4) * 72, (297 / 25.4) * 72] : [612, 792];
      expect([Math.abs(width - w) < 0.5, Math.abs(height - h) < 0.5]).toEqual([true, true]);
      // Nothing runs over an edge of the sheet.
      const { items } = await page.getTextContent();
      for (const item of items) {
        if (!('str' in item) || item.str.trim() === '') continue;
        const [x = 0, y = 0] = item.transform.slice(4);
        expect(x >= 50 && x + item.width <= width - 50 && y >= 15 && y <= height - 40, `${n}: ${item.str}`).toBe(true);
      }
    }
    await pdf.destroy();
  });
});

test('it is tagged: language, headings, tables with their heads, a figure with its words; both fonts are inside', async () => {
  const paper = withPhoto(paperOf(jobOf(done()), 'shop'));
  const { pdf, raw } = await made(paper, 'A4', new Map([[HASH, JPEG]]));
  expect(await pdf.getMarkInfo()).toMatchObject({ Marked: true });
  expect(raw).toContain('/StructTreeRoot');
  expect(raw).toMatch(/\/Lang \(en\)/);
  expect(raw).toMatch(/\/DisplayDocTitle true/);
  const { info } = await pdf.getMetadata();
  expect(info).toMatchObject({ Title: 'Record of the call: Alder Court 9: hums', Language: 'en' });
  const roles: string[] = [];
  const alts: string[] = [];
  for (let n = 1; n <= pdf.numPages; n++) {
    const nodes = nodesIn((await (await pdf.getPage(n)).getStructTree()) as Node | null);
    roles.push(...nodes.flatMap(({ role }) => role ?? []));
    alts.push(...nodes.flatMap(({ alt }) => alt ?? []));
  }
  for (const role of ['Document', 'H1', 'H2', 'P', 'Table', 'TR', 'TH', 'TD', 'Caption', 'Figure'])
    expect(roles, role).toContain(role);
  expect(alts.at(-1)).toBe('Record the wiring, photo of Ines Vale');
  // One program of each weight, and no font that is only named.
  expect(raw.match(/\/FontFile[23] /g)).toHaveLength(2);
  expect(new Set([...raw.matchAll(/\/FontName \/[A-Z]{6}\+(\S+)/g)].map(([, name]) => name))).toEqual(
    new Set(['AtkinsonHyperlegible-Regular', 'AtkinsonHyperlegible-Bold']),
  );
  expect(raw).not.toMatch(/\/BaseFont \/Helvetica/);
  await pdf.destroy();
});

test('not signed stands in plain sight, first and last; signed says who and when, and the stamp is gone', () => {
  const open = paperOf(jobOf(done()), 'customer');
  expect(open.stamps).toEqual([expect.stringMatching(/^NOT SIGNED/)]);
  expect(paperHtml(open, () => null).indexOf('NOT SIGNED')).toBeLessThan(400);
  const signed = paperOf(jobOf(done().type('sign', 'ruth')), 'customer');
  expect([signed.stamps, signed.signed?.by]).toEqual([[], 'Ruth Marlow']);
  expect(JSON.stringify(signed.blocks)).toContain('Read and signed by Ruth Marlow on 2026-07-14.');
});

test('the data say the same, and the shop’s have every verdict with its figures', () => {
  const job = jobOf(done());
  const data = JSON.parse(paperJson(job, paperOf(job, 'shop')));
  expect(data).toMatchObject({ nocool: 'report', v: 1, for: 'shop', signed: null, proven: true, training: false });
  expect(data.verdicts[0].findings[0]).toMatchObject({ name: 'HERM', figures: { kind: 'scale', reading: '36.1' } });
  expect(JSON.parse(paperJson(job, paperOf(job, 'customer')))).not.toHaveProperty('verdicts');
});

test('a photo that was removed is said; one that is no picture is too; what the face lacks is said by what it has, or said to be lacking', async () => {
  const paper = withPhoto(paperOf(jobOf(done()), 'customer'));
  const removed = await made(paper, 'A4');
  expect(await wordsOf(removed.pdf)).toContain('Thisphotowasremoved.Recordthewiring');
  const broken = await made(paper, 'A4', new Map([[HASH, Buffer.from('no picture')]]));
  expect(await wordsOf(broken.pdf)).toContain('Thisphotocan’tbeshown.');
  const strange = await made({ ...paper, about: 'Haus 熱 中 → zu ① ﬁt ‑5 e\u0301' }, 'A4');
  const said = await wordsOf(strange.pdf);
  expect(said).toContain('Haus[…]->zu1fit-5é');
  expect(said).toContain('[…]standsforwordsinascriptthatthistypefacelacks.');
  expect(await wordsOf(removed.pdf)).not.toContain('typeface');
});

test('words that people typed are words on the page, never markup', () => {
  const paper = { ...paperOf(jobOf(done()), 'customer'), about: '<img src=x onerror=alert(1)> "&' };
  const html = paperHtml(paper, () => '"><script>');
  expect(html).toContain('&lt;img src=x onerror=alert(1)&gt; &quot;&amp;');
  expect(html).not.toMatch(/<(script|img)/);
});
