/** Words on a page of a PDF: in our own face, every sign that it has as it is, any other by what says the same. */
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
  /** Whether anything was written that the face has no signs for. */
  lacks(): boolean;
  /** Writes from `doc.y` on, over as many pages as it takes. */
  text(words: string, x: number, width: number, points: number, weight?: Weight): void;
  heightOf(words: string, width: number, points: number, weight?: Weight): number;
  /** The words with signs that the face has. */
  glyphs(words: string): string;
  /** The file of a weight's face. */
  face(weight: Weight): string;
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
  let lacks = false;
  const said = (words: string): string => {
    const out = written(words, face);
    lacks ||= out.includes(LACKING) && !words.includes(LACKING);
    return out;
  };
  const set = (points: number, weight: Weight): Doc => doc.font(fonts[weight]).fontSize(points).fillColor('black');
  return {
    doc,
    width: inner,
    lacks: () => lacks,
    tallest,
    glyphs: said,
    face: (weight) => fonts[weight],
    text: (words, x, wide, points, weight = 'plain') =>
      void set(points, weight).text(said(words), x, doc.y, { width: wide }),
    heightOf: (words, wide, points, weight = 'plain') =>
      set(points, weight).heightOfString(said(words), { width: wide }),
    room(points) {
      if (doc.y + points > height - margins.bottom && doc.y > margins.top) doc.addPage();
    },
  };
}

/** Signs of type that the face lacks, by others that say the same. */
const SAME: Readonly<Record<string, string>> = {
  ...{ '\u2190': '<-', '\u2192': '->', '\u2194': '<->', '\u21d2': '=>', '\u2713': 'yes', '\u2714': 'yes' },
  ...{ '\u2717': 'no', '\u2718': 'no', '\u2010': '-', '\u2011': '-', '\u2015': '\u2014', '\u2206': '\u0394' },
  ...{ '\u2032': "'", '\u2033': '"', '\u25cf': '\u2022', '\u25cb': 'o', '\u2044': '/' },
};
/** Stands for signs of another script, which the page and the data have. */
export const LACKING = '[…]';

/** A thin space is a space that holds together. What the face can't draw is said by what it can, or said to be lacking. */
function written(words: string, face: Face): string {
  const plain = words.replace(/[\u2009\u202f]/g, '\u00a0').replace(/[\t\r\n]+/g, ' ');
  const has = (text: string): boolean => [...text].every((sign) => face.hasGlyphForCodePoint(sign.codePointAt(0) ?? 0));
  const said = [...plain.normalize('NFC')].map((sign) => {
    const forms = [sign, SAME[sign] ?? sign, sign.normalize('NFKD'), sign.normalize('NFKD').replace(/\p{M}/gu, '')];
    return forms.find((form) => form !== '' && has(form)) ?? LACKING;
  });
  // Several in a row are one gap, and so are words of them.
  return said.join('').replace(/(?:\[…\]\s?)+(?=\[…\])/g, '');
}
