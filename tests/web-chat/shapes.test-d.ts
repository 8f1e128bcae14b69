import { expectTypeOf, test } from 'vitest';
import type * as z from 'zod/mini';
import type * as desk from '../../engine/desk/index.ts';
import type { AlarmLine, Board, Known } from '../../web-chat/server/office-shapes.ts';
import type { AwaitedLine, Recomputed, ReviewQueue, ReviewView } from '../../web-chat/server/review-shapes.ts';
import type { JobCard, JobView, Turn } from '../../web-chat/server/shapes.ts';

test('what the desk answers is what the OpenAPI document says, key for key', () => {
  expectTypeOf<desk.JobView>().toExtend<z.infer<typeof JobView>>();
  expectTypeOf<keyof desk.JobView>().toEqualTypeOf<keyof z.infer<typeof JobView>>();
  expectTypeOf<keyof desk.TicketLine>().toEqualTypeOf<keyof z.infer<typeof JobView>['ticket'][number]>();
  expectTypeOf<desk.Turn>().toExtend<z.infer<typeof Turn>>();
  expectTypeOf<keyof desk.Turn>().toEqualTypeOf<keyof z.infer<typeof Turn>>();
  expectTypeOf<desk.Board>().toEqualTypeOf<z.infer<typeof Board>>();
  expectTypeOf<desk.Known>().toEqualTypeOf<z.infer<typeof Known>>();
  expectTypeOf<desk.AlarmLine>().toEqualTypeOf<z.infer<typeof AlarmLine>>();
  expectTypeOf<desk.JobCard>().toEqualTypeOf<z.infer<typeof JobCard>>();
  expectTypeOf<desk.AwaitedLine>().toEqualTypeOf<z.infer<typeof AwaitedLine>>();
  expectTypeOf<desk.ReviewQueue>().toExtend<z.infer<typeof ReviewQueue>>();
  expectTypeOf<desk.ReviewView>().toExtend<z.infer<typeof ReviewView>>();
  expectTypeOf<keyof desk.ReviewView>().toEqualTypeOf<keyof z.infer<typeof ReviewView>>();
  expectTypeOf<keyof desk.EvidenceRow>().toEqualTypeOf<keyof z.infer<typeof ReviewView>['evidence'][number]>();
  expectTypeOf<desk.Recomputed>().toExtend<z.infer<typeof Recomputed>>();
  expectTypeOf<keyof desk.Recomputed>().toEqualTypeOf<keyof z.infer<typeof Recomputed>>();
});
