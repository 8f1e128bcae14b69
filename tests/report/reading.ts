/** A report as it is read: the words of the PDF and of the page, and the tags of the PDF. */
import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { closed } from '../../engine/report/closed.ts';
import type { Paper } from '../../engine/report/paper/paper.ts';
import { type PaperSize, paperPdf } from '../../engine/report/paper/pdf.ts';
import type { Conversation } from '../people.ts';

export const jobOf = (c: Conversation) => {
  const words = ({ ref }: { ref: string }) =>
    ref === 'title' ? 'Alder Court 9: hums' : (c.texts.find((t) => t.ref === ref)?.text ?? '(removed)');
  const job = closed(c.standing, c.entries, words, (id) => (id === 'ruth' ? 'Ruth Marlow' : 'Ines Vale'));
  if (!job) throw new Error(`not at an end: ${c.place}`);
  return job;
};

/** Everything a reader of the PDF reads, in order, without what is marked as no content, and without any space. */
export async function wordsOf(pdf: PDFDocumentProxy): Promise<string> {
  let [text, passed] = ['', 0];
  for (let n = 1; n <= pdf.numPages; n++) {
    const { items } = await (await pdf.getPage(n)).getTextContent({ includeMarkedContent: true });
    const open: boolean[] = [];
    for (const item of items) {
      if ('str' in item) text += passed === 0 ? item.str : '';
      else if (item.type === 'endMarkedContent') passed -= open.pop() ? 1 : 0;
      else {
        const none = (item as { tag?: string }).tag === 'Artifact';
        open.push(none);
        passed += none ? 1 : 0;
      }
    }
  }
  return bare(text);
}
/** The face draws micro sign and Greek mu by one glyph, and a PDF knows glyphs. */
const bare = (text: string): string => text.replace(/\s+/g, '').replaceAll('\u00b5', '\u03bc');
/** What a browser shows of it; the words of a drawing for whoever doesn't see it are not shown. */
export const wordsOfHtml = (html: string): string =>
  bare(
    html
      .replace(/<(title|desc)[^>]*>[^<]*<\/\1>/g, '')
      .replace(/<[^>]*>/g, '')
      .replace(/&lt;/g, '<')
      .replace(/&gt;/g, '>')
      .replace(/&#39;/g, "'")
      .replace(/&quot;/g, '"')
      .replace(/&amp;/g, '&'),
  );
export const made = async (paper: Paper, size: PaperSize, photos = new Map<string, Uint8Array>()) => {
  const bytes = await paperPdf(paper, size, photos, new Date('2026-07-14T15:00:00.000Z'));
  const raw = Buffer.from(bytes).toString('latin1');
  return { raw, pdf: await getDocument({ data: bytes, verbosity: 0 }).promise };
};
export type Node = { role?: string; alt?: string; children?: Node[] };
export const nodesIn = (node: Node | null): Node[] => (node ? [node, ...(node.children ?? []).flatMap(nodesIn)] : []);
