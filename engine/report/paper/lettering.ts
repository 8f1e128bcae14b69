/** Words on a page of a PDF: in our own face, every sign that it has as it is, any other by its number. */
import { openSync } from 'fontkit';
import type PDFDocument from 'pdfkit';

type Doc = InstanceType<typeof PDFDocument>;
export type Weight = 'plain' | 'bold';
export interface Lettering {
  readonly doc: Doc;
  /** Points between the margins. */
  readonly width: number;
  /** The most that one page holds, in points. */
  readonly tallest: number;
  /** Writes from `doc.y` on, over as many pages as it takes. */
  text(words: string, x: number, width: number, points: number, weight?: Weight): void;
  heightOf(words: string, width: number, points: number, weight?: Weight): number;
  /** Begins a new page where so many points are not left. */
  room(points: number): void;
}

interface Face {
  hasGlyphForCodePoint(point: number): boolean;
}

export function createLettering(doc: Doc, fonts: Readonly<Record<Weight, string>>): Lettering {
  const { margins, width, height } = doc.page;
  const [inner, tallest] = [width - margins.left - margins.right, height - margins.top - margins.bottom];
  const face = openSync(fonts.plain) as Face;
  const set = (points: number, weight: Weight): Doc => doc.font(fonts[weight]).fontSize(points).fillColor('black');
  return {
    doc,
    width: inner,
    tallest,
    text: (words, x, wide, points, weight = 'plain') =>
      void set(points, weight).text(written(words, face), x, doc.y, { width: wide }),
    heightOf: (words, wide, points, weight = 'plain') =>
      set(points, weight).heightOfString(written(words, face), { width: wide }),
    room(points) {
      if (doc.y + points > height - margins.bottom && doc.y > margins.top) doc.addPage();
    },
  };
}

/** A thin space is a space that holds together. What the face can't draw is named by its number, so that nothing is lost unseen. */
function written(words: string, face: Face): string {
  const plain = words.replace(/[\u2009\u202f]/g, '\u00a0').replace(/[\t\r\n]+/g, ' ');
  return [...plain]
    .map((sign) => {
      const point = sign.codePointAt(0) ?? 0;
      return face.hasGlyphForCodePoint(point) ? sign : `[U+${point.toString(16).toUpperCase().padStart(4, '0')}]`;
    })
    .join('');
}
