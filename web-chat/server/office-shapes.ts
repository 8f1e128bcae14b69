/** What the desk answers about calls, board and emergencies, as schemas. A type test holds them to the desk's types. */
import * as z from 'zod/mini';
import { Hazard } from '../../engine/index.ts';
import { JobCard } from './shapes.ts';

export const Known = z.object({
  calls: z.array(JobCard),
  units: z.array(z.object({ id: z.string(), name: z.string(), history: z.array(z.string()) })),
});
const CrewLine = z.object({
  id: z.string(),
  name: z.string(),
  certified: z.boolean(),
  available: z.boolean(),
  on: z.nullable(z.string()),
  day: z.array(z.string()),
});
const LowStock = z.object({ truck: z.string(), item: z.string(), left: z.number(), low: z.number() });
export const Board = z.object({
  jobs: z.array(JobCard),
  crew: z.array(CrewLine),
  low: z.array(LowStock),
  now: z.string(),
});
export const AlarmLine = z.object({
  job: z.string(),
  title: z.string(),
  seq: z.number(),
  at: z.string(),
  hazard: Hazard,
  by: z.string(),
  seen: z.array(z.string()),
  mine: z.boolean(),
});
