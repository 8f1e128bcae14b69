/** The desk's answers as schemas, for the OpenAPI document. A type test holds them to engine/desk/types.ts. */
import * as z from 'zod/mini';
import { Call, Hazard, Prompt, Refusal, Units } from '../../engine/index.ts';

const Standing = z.enum(['kept', 'set-aside', 'fallen', 'event']);
export const TicketLine = z.object({
  seq: z.number(),
  at: z.string(),
  by: z.string(),
  title: z.string(),
  says: z.array(z.string()),
  kind: z.string(),
  standing: Standing,
  place: z.nullable(z.string()),
  amendable: z.boolean(),
  photos: z.array(z.string()),
});
const Names = z.record(z.string(), z.object({ name: z.string(), initials: z.string() }));

const Alarm = z.object({
  seq: z.number(),
  at: z.string(),
  by: z.string(),
  hazard: Hazard,
  seen: z.array(z.string()),
});

export const JobView = z.object({
  job: z.string(),
  title: z.string(),
  training: z.boolean(),
  prompt: Prompt,
  ticket: z.array(TicketLine),
  people: Names,
  question: z.nullable(z.string()),
  summary: z.nullable(z.object({ customer: z.array(z.string()), shop: z.array(z.string()) })),
  call: z.nullable(
    z.extend(z.pick(Call, { urgency: true, reasons: true, causes: true, load: true, certified: true, told: true }), {
      vulnerable: z.nullable(z.string()),
    }),
  ),
  form: z.nullable(Prompt),
  units: z.nullable(Units),
  alarm: z.nullable(Alarm),
  calling: z.boolean(),
  opens: z.nullable(z.string()),
  now: z.string(),
});

/** One line of the record; its body is described in engine/schema.ts, one shape a kind. */
const EntryLine = z.object({
  v: z.literal(1),
  kind: z.string(),
  job: z.string(),
  seq: z.number(),
  by: z.string(),
  at: z.string(),
  said: z.nullable(z.string()),
  client: z.nullable(z.string()),
  body: z.record(z.string(), z.unknown()),
  prev: z.string(),
  hash: z.string(),
});

export const Turn = z.object({
  view: JobView,
  entries: z.array(EntryLine),
  refusal: z.nullable(Refusal),
  info: z.nullable(z.array(z.string())),
  again: z.nullable(Prompt),
});

export const JobCard = z.object({
  job: z.string(),
  title: z.string(),
  state: z.enum([
    ...(['under-way', 'held', 'paused', 'emergency', 'finished', 'signed', 'unreadable'] as const),
    ...(['taking', 'put-away', 'taken'] as const),
  ]),
  where: z.string(),
  assigned: z.array(z.string()),
  verdict: z.nullable(z.string()),
  updated: z.string(),
  isolation: z.string(),
  until: z.nullable(z.string()),
  training: z.boolean(),
  opened: z.string(),
  begun: z.boolean(),
  urgency: z.nullable(z.object({ level: z.enum(['soon', 'today', 'first', 'now']), why: z.string() })),
  certified: z.boolean(),
  causes: z.array(z.string()),
  load: z.array(z.string()),
  alarm: z.nullable(Alarm),
});

export const Me = z.object({
  id: z.string(),
  name: z.string(),
  initials: z.string(),
  roles: z.array(z.enum(['technician', 'senior', 'dispatcher', 'owner'])),
  certified: z.boolean(),
});

export const Trouble = z.object({ error: z.string(), what: z.string() });
export const troubles = { 401: Trouble, 403: Trouble, 404: Trouble, 500: Trouble } as const;
export const changeTroubles = { ...troubles, 400: Trouble, 413: Trouble, 503: Trouble } as const;
/** What a surface names a request by, so that it counts once: as in a reply. */
export const ClientId = z.string().check(z.regex(/^[A-Za-z0-9._:~-]{1,64}$/));
export const JobParams = z.object({ job: z.string().check(z.minLength(1), z.maxLength(200)) });
