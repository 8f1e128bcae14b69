/** What both ways to a report have in common: signed in, or by a link. */
import type { FastifyReply } from 'fastify';
import * as z from 'zod/mini';
import type { Report } from '../../engine/desk/index.ts';

export const PaperSize = z.object({ size: z._default(z.enum(['A4', 'letter']), 'letter') });

/** The same report in its other forms, and the way back where there is one. */
export function links(at: string, back: string | null): string {
  const key = (href: string, words: string): string => `<a class="key" href="${href}">${words}</a>`;
  return [
    '<nav class="row" aria-label="Other forms">',
    key(`${at}/pdf?size=letter`, 'PDF, US Letter'),
    key(`${at}/pdf?size=A4`, 'PDF, A4'),
    key(`${at}/json`, 'Data (JSON)'),
    ...(back === null ? [] : [key(back, 'The ticket')]),
    '</nav>',
  ].join('');
}

export async function sendPdf(reply: FastifyReply, report: Report, size: 'A4' | 'letter'): Promise<FastifyReply> {
  reply.type('application/pdf').header('content-disposition', 'inline; filename="report.pdf"');
  return reply.send(Buffer.from(await report.pdf(size)));
}
export function sendJson(reply: FastifyReply, report: Report): FastifyReply {
  reply.type('application/json; charset=utf-8').header('content-disposition', 'attachment; filename="report.json"');
  return reply.send(report.json());
}
