/** Reports of the sample: a paper as full as it comes, not signed. */
import type { Report, ReportDesk, SharedLink } from '../../../engine/desk/index.ts';
import { paperHtml } from '../../../engine/report/paper/html.ts';
import type { Audience, Paper } from '../../../engine/report/paper/paper.ts';
import { NOW } from './prompts.ts';

const note = 'HERM reads 36.1\u2009µF, −19.8\u2009% off the rated 45\u2009µF. Source: ±6\u2009% printed on the part.';
const paper = (audience: Audience): Paper => ({
  audience,
  title: audience === 'customer' ? 'Service report' : 'Record of the call',
  about: 'No cool, two-storey house <script>alert(1)</script>',
  stamps: ['NOT SIGNED: no senior has read this record yet.', 'TRAINING CALL: it never counts.'],
  signed: null,
  blocks: [
    { kind: 'heading', text: 'What was found and done' },
    { kind: 'line', text: 'Visit of 2031-07-14, by Jo Pell.' },
    {
      kind: 'table',
      caption: 'What it rests on',
      head: ['Part', 'Reading', 'Limits', 'Doubt', 'Result'],
      rows: ['HERM', 'Known source, before'].map((name) => ({
        cells: [name, '36.1\u2009µF', '42.30–47.70\u2009µF', '±0.89\u2009µF (35.21–36.99\u2009µF)', 'conditional fail'],
        note,
      })),
    },
    { kind: 'heading', text: 'Photos' },
    { kind: 'photo', hash: 'a'.repeat(64), says: 'Record the wiring. 2031-07-14 18:02 UTC, Jo Pell' },
  ],
  foot: `Call finished, 27 entries, f37911dc4617, ${NOW}`,
});
const report = (audience: Audience): Report => ({
  title: 'Service report',
  html: (photoAt) => paperHtml(paper(audience), photoAt),
  pdf: async () => new Uint8Array(),
  json: () => '{}',
  photo: async () => null,
});
const link: SharedLink = { id: 'b'.repeat(64), audience: 'customer', by: 'sam', made: NOW, expires: NOW };

export const sampleReports = (): ReportDesk => ({
  read: async (_by, _job, audience) => report(audience),
  share: async () => ({ token: 'c'.repeat(64), link }),
  shares: async () => [link],
  endShare: async () => undefined,
  shared: async () => null,
});
