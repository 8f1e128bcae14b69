/** What the review desk answers, as schemas for the OpenAPI document; held to engine/desk/types.ts by a type test. */
import * as z from 'zod/mini';
import { CommandName } from '../../engine/index.ts';
import { JobCard, JobView, TicketLine } from './shapes.ts';

const Attention = z.object({
  kind: z.string(),
  seq: z.number(),
  head: z.string(),
  words: z.string(),
});
export const ReviewQueue = z.object({
  jobs: z.array(z.extend(JobCard, { attention: z.array(Attention) })),
  next: z.nullable(z.string()),
});
export const AwaitedLine = z.object({
  job: z.string(),
  title: z.string(),
  who: z.array(z.string()),
  what: z.string(),
  since: z.string(),
});
const Evidence = z.object({
  name: z.string(),
  reading: z.string(),
  limits: z.nullable(z.string()),
  doubt: z.nullable(z.string()),
  word: z.string(),
  text: z.string(),
  source: z.nullable(z.string()),
  picture: z.nullable(z.object({ title: z.string(), svg: z.string() })),
});
export const ReviewView = z.object({
  view: JobView,
  attention: z.array(Attention),
  evidence: z.array(
    z.extend(TicketLine, { gate: z.boolean(), ended: z.nullable(z.string()), findings: z.array(Evidence) }),
  ),
  trends: z.array(
    z.object({
      name: z.string(),
      visits: z.array(z.object({ at: z.string(), job: z.string(), reading: z.string(), what: z.string() })),
      picture: z.nullable(z.object({ title: z.string(), svg: z.string() })),
    }),
  ),
  may: z.array(CommandName),
});
export const Recomputed = z.object({
  entries: z.number(),
  head: z.string(),
  verdicts: z.array(z.object({ seq: z.number(), title: z.string(), recorded: z.string(), computed: z.string() })),
  difference: z.nullable(z.object({ at: z.number(), old: z.string(), now: z.string() })),
});
