/**
 * A paper as PDF: tagged, so that a screen reader finds headings, tables and pictures; its fonts inside it; on A4 or
 * US Letter. Lines and rows go on over as many pages as they need.
 */
import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';
import { createLettering, LACKING, type Lettering } from './lettering.ts';
import type { Block, Paper, Row } from './paper.ts';
import { drawInto, drawnSize } from './pdf-drawing.ts';

export type PaperSize = 'A4' | 'letter';
type Table = Extract<Block, { kind: 'table' }>;
type Drawings = Extract<Block, { kind: 'drawings' }>['drawings'];
type Structure = ReturnType<Lettering['doc']['struct']>;

const require = createRequire(import.meta.url);
const font = (file: string): string => require.resolve(`@expo-google-fonts/atkinson-hyperlegible/${file}.ttf`);
const FONTS = {
  plain: font('400Regular/AtkinsonHyperlegible_400Regular'),
  bold: font('700Bold/AtkinsonHyperlegible_700Bold'),
};
/** Points. */
const MARGIN = 54;
const [GAP, PAD] = [6, 4];
const PHOTO_HEIGHT = 260;

/**
 * @param photos the bytes of each photo by its hash, as JPEG; one that is missing was removed, and that is said
 * @param at when it is made, for its properties
 */
export function paperPdf(
  paper: Paper,
  size: PaperSize,
  photos: ReadonlyMap<string, Uint8Array>,
  at: Date,
): Promise<Uint8Array> {
  const doc = new PDFDocument({
    size: size === 'A4' ? 'A4' : 'LETTER',
    margin: MARGIN,
    pdfVersion: '1.7',
    tagged: true,
    lang: 'en',
    displayTitle: true,
    bufferPages: true,
    font: FONTS.plain,
    info: { Title: `${paper.title}: ${paper.about}`, Creator: 'nocool', CreationDate: at },
  });
  const bytes = collected(doc);
  const lettering = createLettering(doc, FONTS);
  const root = doc.struct('Document');
  doc.addStructure(root);
  const draw = drawing(lettering, root, photos);
  draw.heading('H1', paper.title, 20);
  draw.line(paper.about);
  for (const stamp of paper.stamps) draw.stamp(stamp);
  for (const [i, block] of paper.blocks.entries()) draw.block(block, paper.blocks[i + 1]);
  if (lettering.lacks()) draw.line(LACKS);
  draw.line(paper.foot);
  root.end();
  pageNumbers(lettering);
  doc.end();
  return bytes;
}

const LACKS = `${LACKING} stands for words in a script that this typeface lacks. The page and the data (JSON) have them.`;

function drawing(lettering: Lettering, root: Structure, photos: ReadonlyMap<string, Uint8Array>) {
  const { doc, text, heightOf, room, width } = lettering;
  const left = doc.page.margins.left;
  const tagged = (tag: string, parent: Structure, work: () => void, options = {}): void => {
    parent.add(doc.struct(tag, options, work));
  };
  const heading = (tag: string, words: string, points: number, after = 3 * points): void => {
    // A heading does not stand alone at the foot of a page.
    room(heightOf(words, width, points, 'bold') + 2 * GAP + after);
    doc.y += GAP;
    tagged(tag, root, () => text(words, left, width, points, 'bold'));
    doc.y += GAP / 2;
  };
  const line = (words: string): void => {
    room(14);
    tagged('P', root, () => text(words, left, width, 10.5));
    doc.y += GAP / 2;
  };
  const stamp = (words: string): void => {
    const height = heightOf(words, width - 4 * PAD, 12, 'bold') + 4 * PAD;
    room(height + GAP);
    const top = doc.y + GAP;
    artifact(doc, () => doc.lineWidth(2).rect(left, top, width, height).stroke('black'));
    doc.y = top + 2 * PAD;
    tagged('P', root, () => text(words, left + 2 * PAD, width - 4 * PAD, 12, 'bold'));
    doc.y = top + height + GAP;
  };
  const photo = (hash: string, says: string): void => {
    const bytes = photos.get(hash);
    const image = bytes === undefined ? null : Buffer.from(bytes);
    const shown = image !== null && opens(doc, image);
    room(shown ? PHOTO_HEIGHT + 40 : 40);
    if (shown) tagged('Figure', root, () => drawPhoto(lettering, image), { alt: says });
    else line(image === null ? 'This photo was removed.' : 'This photo can’t be shown.');
    line(says);
  };
  const heightsOf = (pair: Drawings): { head: number; tall: number } => ({
    head: Math.max(...pair.map(({ title }) => heightOf(title, width / 2 - GAP, 9.5, 'bold'))) + PAD,
    tall: Math.max(...pair.map(({ svg }) => drawnSize(svg).height)),
  });
  /** Two side by side, each under its title; what a drawing says is its words for whoever doesn't see it. */
  const drawings = (all: Drawings): void => {
    for (let i = 0; i < all.length; i += 2) {
      const pair = all.slice(i, i + 2);
      const { head, tall } = heightsOf(pair);
      room(head + tall + GAP);
      const top = doc.y;
      for (const [at, { title, says, svg }] of pair.entries()) {
        const x = left + at * (width / 2 + GAP / 2);
        doc.y = top;
        tagged('P', root, () => text(title, x, width / 2 - GAP, 9.5, 'bold'));
        tagged('Figure', root, () => drawInto(lettering, svg, x, top + head), { alt: says });
      }
      doc.y = top + head + tall + GAP;
    }
  };
  const table = createTables(lettering, root);
  return {
    heading,
    line,
    stamp,
    block(block: Block, next: Block | undefined): void {
      if (block.kind === 'heading') {
        const first = next?.kind === 'drawings' ? heightsOf(next.drawings.slice(0, 2)) : null;
        heading('H2', block.text, 13, first ? first.head + first.tall : undefined);
      } else if (block.kind === 'line') line(block.text);
      else if (block.kind === 'photo') photo(block.hash, block.says);
      else if (block.kind === 'drawings') drawings(block.drawings);
      else table(block);
    },
  };
}

/** Rows of cells side by side. A row goes whole to the next page, unless no page would hold it. */
function createTables(lettering: Lettering, root: Structure): (table: Table) => void {
  const { doc, text, heightOf, room, width, tallest } = lettering;
  const left = doc.page.margins.left;
  return ({ caption, head, rows }) => {
    const at = columnsOf(head.length, width, left);
    const heightOfCells = (cells: readonly string[], bold: boolean): number =>
      Math.max(
        ...cells.map((cell, i) => heightOf(cell, at[i]?.width ?? width, 9.5, bold || i === 0 ? 'bold' : 'plain')),
      );
    room(heightOf(caption, width, 9.5) + heightOfCells(head, true) + 40);
    const element = doc.struct('Table');
    root.add(element);
    element.add(doc.struct('Caption', {}, () => text(caption, left, width, 9.5)));
    doc.y += PAD;
    const ruled = (): void =>
      artifact(doc, () =>
        doc
          .lineWidth(0.5)
          .moveTo(left, doc.y)
          .lineTo(left + width, doc.y)
          .stroke('#8d8270'),
      );
    const cells = (row: Row, isHead: boolean): void => {
      const note = row.note === null ? 0 : heightOf(row.note, width, 9.5) + PAD;
      const height = heightOfCells(row.cells, isHead);
      room(Math.min(tallest, height + note + 2 * PAD));
      ruled();
      const top = doc.y + PAD;
      const tr = doc.struct('TR');
      element.add(tr);
      // Longer than a page can hold side by side: one under the other loses nothing.
      const stacked = height + 2 * PAD > tallest;
      for (const [i, cell] of row.cells.entries()) {
        const place = at[i] ?? { x: left, width };
        const bold = isHead || i === 0 ? 'bold' : 'plain';
        const last = i === row.cells.length - 1;
        const tag = isHead ? 'TH' : i === 0 ? 'TH' : 'TD';
        if (!stacked) doc.y = top;
        tr.add(
          doc.struct(tag, {}, () => {
            if (stacked) text(cell, left, width, 9.5, bold);
            else text(cell, place.x, place.width, 9.5, bold);
            if (!last || row.note === null) return;
            // Under the whole row, and part of its last cell.
            if (!stacked) doc.y = top + height + PAD;
            text(row.note, left, width, 9.5);
          }),
        );
      }
      tr.end();
      if (!stacked && row.note === null) doc.y = top + height;
      doc.y += PAD;
    };
    cells({ cells: head, note: null }, true);
    for (const row of rows) cells(row, false);
    element.end();
    doc.y += GAP;
  };
}

/** The first column is wider: it holds names. */
function columnsOf(count: number, width: number, left: number): { readonly x: number; readonly width: number }[] {
  const each = width / (count + 0.3);
  return Array.from({ length: count }, (_, i) => ({
    x: left + (i === 0 ? 0 : each * (i + 0.3)),
    width: each * (i === 0 ? 1.3 : 1) - GAP,
  }));
}

/** False where the bytes are no picture that can be drawn. */
function opens(doc: Lettering['doc'], bytes: Buffer): boolean {
  try {
    // In pdfkit's own documentation, and not in its types.
    (doc as unknown as { openImage(bytes: Buffer): unknown }).openImage(bytes);
    return true;
  } catch {
    return false;
  }
}
function drawPhoto({ doc, width }: Lettering, image: Buffer): void {
  const { left } = doc.page.margins;
  doc.image(image, left, doc.y, { fit: [width, PHOTO_HEIGHT] });
  doc.y += PHOTO_HEIGHT + PAD;
}

function pageNumbers({ doc, text }: Lettering): void {
  const { start, count } = doc.bufferedPageRange();
  for (let i = 0; i < count; i++) {
    doc.switchToPage(start + i);
    const { margins, height } = doc.page;
    // Below the margin, where nothing begins a new page.
    margins.bottom = 0;
    artifact(doc, () => {
      doc.y = height - MARGIN / 2 - 6;
      text(`Page ${i + 1} of ${count}`, margins.left, 200, 9);
    });
    margins.bottom = MARGIN;
  }
}

/** What a reader passes over: rules, frames, numbers of pages. */
function artifact(doc: Lettering['doc'], work: () => void): void {
  doc.markContent('Artifact', { type: 'Layout' });
  work();
  doc.endMarkedContent();
}

function collected(doc: Lettering['doc']): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const pieces: Buffer[] = [];
    doc.on('data', (piece: Buffer) => pieces.push(piece));
    doc.on('end', () => resolve(new Uint8Array(Buffer.concat(pieces))));
    doc.on('error', reject);
  });
}
