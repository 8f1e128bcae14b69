/**
 * A drawing of the engine as lines and letters of a PDF, in its own face and as sharp as it is printed. Reads what
 * `engine/picture/svg.ts` writes and nothing else: a mark that is not known here is a bug, and throws.
 */
import type { Lettering } from './lettering.ts';

type Attributes = Readonly<Record<string, string>>;
/** Points per px of the drawing: 320 px are 198 points, so two stand side by side on either sheet. */
const SCALE = 0.62;
const INK = '#17130d';

/** The size of a drawing on paper, in points. */
export function drawnSize(svg: string): { readonly width: number; readonly height: number } {
  const [, width, height] = /viewBox="0 0 (\S+) (\S+)"/.exec(svg) ?? [];
  if (width === undefined || height === undefined) throw new Error('a drawing without a size');
  return { width: Number(width) * SCALE, height: Number(height) * SCALE };
}

/** Draws it with its upper left corner there, in points. Leaves `doc.y` where it was. */
export function drawInto({ doc, glyphs, face }: Lettering, svg: string, left: number, top: number): void {
  const y = doc.y;
  doc.save().translate(left, top).scale(SCALE);
  // The outermost group says whether its shapes are outlines or ink.
  let inherited: Attributes = {};
  for (const [, close, name = '', said = '', words] of svg.matchAll(MARK)) {
    const own = attributesIn(said);
    if (close || name === 'svg' || name === 'title' || name === 'desc') continue;
    if (name === 'g') inherited = own;
    else if (name === 'text') write(words ?? '', own);
    else shape(name, { ...inherited, ...own });
  }
  doc.restore();
  doc.y = y;

  function write(words: string, of: Attributes): void {
    const size = Number(of['font-size'] ?? 14);
    const text = glyphs(unescaped(words));
    doc.font(face(of['font-weight'] === 'bold' ? 'bold' : 'plain'), size).fillColor(INK);
    const wide = doc.widthOfString(text);
    const before = { start: 0, middle: wide / 2, end: wide }[of['text-anchor'] ?? 'start'] ?? 0;
    doc.text(text, number(of.x) - before, number(of.y), { lineBreak: false, baseline: 'alphabetic' });
  }

  function shape(name: string, of: Attributes): void {
    switch (name) {
      case 'path':
        doc.path(of.d ?? '');
        break;
      case 'rect':
        doc.roundedRect(number(of.x), number(of.y), number(of.width), number(of.height), number(of.rx));
        break;
      case 'ellipse':
        doc.ellipse(number(of.cx), number(of.cy), number(of.rx), number(of.ry));
        break;
      case 'circle':
        doc.circle(number(of.cx), number(of.cy), number(of.r));
        break;
      default:
        throw new Error(`a drawing has <${name}>, which no report draws`);
    }
    const width = number(of['stroke-width'] ?? '1');
    doc.lineWidth(width).lineCap('round').lineJoin('round');
    const dashes = of['stroke-dasharray']?.split(' ').map(Number);
    if (dashes) doc.dash(dashes[0] ?? 1, { space: dashes[1] ?? 1 });
    else doc.undash();
    const [fills, strokes] = [of.fill !== 'none', of.stroke !== undefined && of.stroke !== 'none'];
    if (fills && strokes) doc.fillAndStroke(INK, INK);
    else if (fills) doc.fill(INK);
    else doc.stroke(INK);
  }
}

const MARK = /<(\/?)([a-z]+)([^>]*?)\/?>(?:([^<]*)(?=<\/text>))?/g;
const attributesIn = (said: string): Attributes =>
  Object.fromEntries([...said.matchAll(/([a-z-]+)="([^"]*)"/g)].map(([, name = '', value = '']) => [name, value]));
function number(text: string | undefined): number {
  const value = Number(text ?? 0);
  if (!Number.isFinite(value)) throw new Error(`${text} is no length of a drawing`);
  return value;
}
const ENTITIES: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
};
const unescaped = (words: string): string =>
  words.replace(/&(?:amp|lt|gt|quot|#39);/g, (entity) => ENTITIES[entity] ?? entity);
