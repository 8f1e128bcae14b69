/** Every kind of picture as bytes, and what holds for any picture that the types allow. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PictureData } from '../../engine/picture/data.ts';
import { draw } from '../../engine/picture/draw.ts';
import { SAMPLES } from './samples.ts';
import { anyPicture } from './wanted.ts';
import { elementsOf, readXml, textOf } from './xml.ts';

/** bytes: what a prompt may carry for one picture. */
const MOST = 6000;
const golden = (name: string): string => fileURLToPath(new URL(`golden/${name}.svg`, import.meta.url));
const samples = Object.entries(SAMPLES);

describe('as they were looked at', () => {
  test.each(samples)('%s', (name, data) => {
    const { svg } = draw(data);
    // GOLDEN=write draws them anew; look at each before it is committed.
    if (process.env.GOLDEN === 'write') writeFileSync(golden(name), `${svg}\n`);
    expect(existsSync(golden(name))).toBe(true);
    expect(`${svg}\n`).toBe(readFileSync(golden(name), 'utf8'));
    expect(Buffer.byteLength(svg)).toBeLessThan(MOST);
  });

  test('on paper the drawing is the same, with ink and ground of its own', () => {
    for (const [, data] of samples) {
      const [page, paper] = [draw(data).svg, draw(data, { on: 'paper' }).svg];
      expect(paper).toContain(' color="#17130d"');
      expect(
        paper.replace(/ color="[^"]*" width="[^"]*" height="[^"]*"/, '').replace(/<rect width="320"[^>]*>/, ''),
      ).toBe(page);
    }
  });
});

/** What is wrong with a picture, in a few words each. */
function faults(data: PictureData): string[] {
  const { svg, text, title } = draw(data);
  const root = readXml(svg);
  const all = elementsOf(root);
  const [, , width, height] = (root.attributes.viewBox ?? '').split(' ').map(Number);
  const words = all.filter(({ name }) => name === 'text');
  const attributes = all.flatMap((each) => Object.entries(each.attributes));
  const ids = attributes.flatMap(([key, value]) => (key === 'id' ? [value] : []));
  const [named] = all.filter(({ name }) => name === 'title').map(textOf);
  const figures = words.flatMap((each) => textOf(each).match(/\d+(?:\.\d+)?/g) ?? []);
  const off = words.filter(({ attributes: { x, y } }) => {
    const [right, down] = [Number(x), Number(y)];
    return !(right >= 0 && right <= (width ?? 0) && down > 8 && down <= (height ?? 0) - 4);
  });
  return [
    ...all.filter(({ name }) => !ELEMENTS.includes(name)).map(({ name }) => `an element ${name}`),
    ...attributes.filter(([key]) => /^on|href|style|class/.test(key)).map(([key]) => `an attribute ${key}`),
    ...attributes.filter(([, value]) => /NaN|Infinity|undefined|url\(/.test(value)).map(([, value]) => value),
    ...(root.attributes.role === 'img' && root.attributes['aria-labelledby'] === ids.join(' ') ? [] : ['not named']),
    ...(named === title && text.startsWith(title) ? [] : ['another title']),
    ...(width === 320 ? [] : ['another width']),
    ...figures.filter((figure) => !text.includes(figure)).map((figure) => `${figure} is not said`),
    ...off.map((each) => `"${textOf(each)}" is off the picture`),
    ...(draw(structuredClone(data)).svg === svg ? [] : ['another drawing of the same']),
  ];
}
const ELEMENTS = ['svg', 'title', 'desc', 'g', 'text', 'path', 'circle', 'ellipse', 'rect'];

describe('whatever is drawn', () => {
  test('is well-formed and harmless, named, complete in words, on the picture, and the same again', () => {
    fc.assert(
      fc.property(anyPicture, (data) => {
        expect(faults(data)).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  test.each([
    '<a>&</a>',
    '<a>&bogus;</a>',
    '<a><b></a></b>',
    '<a x="1" x="2"/>',
    '<a x="<"/>',
    '<a/><b/>',
    '<a>\u0000</a>',
    '<a>\ud800</a>',
    '<a x=1/>',
    '<a><!-- --></a>',
  ])('the reader refuses %j', (source) => {
    expect(() => readXml(source)).toThrow();
  });

  test('no ids collide on one page: neither of two pictures, nor of one that is there twice under two keys', () => {
    const idsOf = (svg: string) => svg.match(/ id="[^"]*"/g) ?? [];
    const all = samples.flatMap(([, data]) => [...idsOf(draw(data).svg), ...idsOf(draw(data, { key: 'again' }).svg)]);
    expect(all).toHaveLength(samples.length * 4);
    expect(new Set(all).size).toBe(all.length);
  });
});

describe('in words', () => {
  const text = (name: string) => draw(SAMPLES[name] ?? expect.fail(`no sample ${name}`)).text.replaceAll('\u2009', ' ');

  test('leads: which terminal each sits on, in order, and that marks come before the drawing', () => {
    const said = text('leads-dual');
    for (const each of [
      '1. One lead on HERM, one on C, in µF.',
      '2. One lead on FAN, one on C',
      '3. One lead on HERM, one on FAN',
      'bare rim',
    ])
      expect(said).toContain(each);
    expect(said).toContain('go by the marks');
  });
  test('leads on a start part: its resistor, and that one end is off', () => {
    expect(text('leads-start')).toContain('Its bleed resistor of 15000 Ω has one end off while you measure.');
  });
  // By hand: 40 µF ±6 % is 37.6 to 42.4; 1.9 % of 37 and 2 counts of 0.1 µF are 0.903.
  test('scale: reading, side, limits, doubt, and a habit that does not decide', () => {
    expect(text('scale-conditional-fail')).toBe(
      'HERM on the scale of its limits. HERM reads 37 µF, −7.5 % off the rated 40 µF, below the limits of 37.60–42.40 µF. ' +
        'The doubt of ±0.90 µF reaches from 36.097–37.903 µF, across a limit. ' +
        'The ±10 % habit, dotted, spans 36.00–44.00 µF and doesn’t decide. Verdict: conditional fail.',
    );
  });
  test('decay: from where, through what, when it is under the limit, how long to hold', () => {
    const said = text('decay-run');
    for (const each of ['from 622 V', '45 µF through 20000 Ω', 'under 5 V after 4.34 s', 'The hold time is 5 s'])
      expect(said).toContain(each);
  });
  test('windings: three readings and whether the sum fits', () => {
    expect(text('windings-fit')).toContain(
      'C–R and C–S add up to 4.26 Ω. S–R is 0.05 Ω apart from that, with a doubt of 0.17 Ω: the sum fits.',
    );
    expect(text('windings-open')).toContain('Run winding, C to R: OL.');
  });
  test('path: what was passed, and where the job stands', () => {
    const said = text('path-long');
    expect(said).toContain('Passed: 10, 2 before the first named here.');
    expect(said).toMatch(/Here, Both sections: Measure both sections and the case, wires off\.$/);
  });
});
