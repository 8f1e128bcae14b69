/** The review desk as full as it comes: every kind of thing to look at, a finding with each picture, answers of every standing. */
import type { EvidenceRow, JobView, ReviewCard, ReviewDesk } from '../../../engine/desk/index.ts';
import { draw } from '../../../engine/picture/draw.ts';
import { trendsOf } from '../../../engine/review/trends.ts';
import { SAMPLES } from '../../picture/samples.ts';
import { NOW, PROMPTS } from './prompts.ts';

const KINDS = [
  ['hazard', 'Hazard', 'Emergency, smoke: smoke from the unit <b>now</b>'],
  ['voided', 'Isolation ended', 'The isolation ended, nobody answered in time'],
  ['skipped', 'Skipped or not possible', 'Skipped: Record the wiring. Reason: no camera'],
  ['habit', 'The habit would say otherwise', 'HERM: 41 µF is fail by the label; the ±10 % habit would say otherwise'],
  ['fast', 'Very fast gate', 'Discharge and residual line took 4 s; 3 pairs held 5 s each take 15 s'],
  ['raised', 'Raised to a senior', 'Raised to a senior, asked for: which fuse is it'],
] as const;
const attention = KINDS.map(([kind, head, words], i) => ({ kind, head, words, seq: (i % 5) + 1 }));

const card = (i: number, state: ReviewCard['state'], many: number): ReviewCard => ({
  job: Object.keys(PROMPTS)[i] ?? '',
  title: 'No cool, two-storey house',
  state,
  where: 'Prove the meter, prove it dead, prove the meter again.',
  assigned: ['jo'],
  verdict: many > 0 ? 'The run capacitor is out of its label: replace it' : null,
  updated: NOW,
  isolation: 'Outdoor unit: ENERGIZED OR NOT PROVED',
  until: null,
  training: false,
  opened: NOW,
  begun: true,
  urgency: null,
  certified: false,
  causes: [],
  load: [],
  alarm: null,
  attention: attention.slice(0, many),
});

const findings = Object.values(SAMPLES).map((data, i) => {
  const { title, svg } = draw(data, { key: `sample ${i}` });
  return {
    name: 'HERM',
    reading: '36.1\u2009µF',
    limits: i % 2 ? null : '42.30–47.70\u2009µF',
    doubt: i % 2 ? null : '±0.89\u2009µF (35.21–36.99\u2009µF)',
    word: ['pass', 'conditional fail', 'undecided'][i % 3] ?? '',
    text: 'HERM reads 36.1\u2009µF, −19.8\u2009% off the rated 45\u2009µF.',
    source: i % 2 ? null : '±6\u2009% printed on the part; words of ILAC-G8, non-binary rule',
    picture: { title, svg },
  };
});

const trends = trendsOf(
  [
    ...(['44.6', '43.2', '36.1'] as const).map((herm, i) => ({
      ...{
        at: `203${i}-05-14T18:02:11.000Z`,
        job: `j${i}`,
        what: 'read' as const,
        item: 'run capacitor',
        herm,
        fan: '5.02',
      },
    })),
    { at: NOW, job: 'j3', what: 'fitted', item: 'run capacitor', herm: '45.3', fan: '5.04' },
  ],
  { outdoor: 'Outdoor unit' },
);

export function sampleReview(look: (by: string, job: string) => Promise<JobView>): ReviewDesk {
  return {
    queue: async () => ({
      jobs: [card(0, 'emergency', 6), card(1, 'held', 1), card(2, 'finished', 0), card(3, 'unreadable', 0)],
      next: '1',
    }),
    awaited: async () => [],
    async look(by, job) {
      const view = await look(by, job);
      const answers = view.ticket.filter(({ kind }) => kind === 'answered');
      const evidence = answers.map(
        (line, i): EvidenceRow => ({
          ...line,
          gate: i === 1,
          ended: i === 1 ? 'stood until its isolation ended' : null,
          findings: i === 0 ? findings : [],
        }),
      );
      return { view, attention, evidence, trends, may: ['release', 'approve', 'ask', 'sign', 'send back'] };
    },
    counts: async () => ({
      groups: (['verdict', 'person', 'part', 'unit'] as const).map((by) => ({
        by,
        counts:
          by === 'unit' ? [] : [{ what: 'a', name: 'The run capacitor is out of its label: replace it', jobs: 12 }],
      })),
      jobs: [card(2, 'finished', 0)].map(({ attention: _, ...rest }) => rest),
    }),
    recompute: async () => ({ entries: 5, head: 'a'.repeat(64), verdicts: [], difference: null }),
  };
}
