/** A conversation that breaks a rule, made as short as it can be while it still breaks that rule. */
import { Played } from './play.ts';
import type { Breach } from './reference/watch.ts';
import type { Step } from './step.ts';
import type { Conversation, Talked } from './talk.ts';
import type { World } from './world.ts';

export async function shorten(
  world: World,
  { opening, steps, played }: Conversation,
  breach: Breach,
  nr: number,
  /** Most replays of it. */
  most: number,
): Promise<NonNullable<Talked['breach']>> {
  let shortest = steps;
  let shown = { breach, lines: played.lines };
  let tries = 0;
  const breaks = async (few: readonly Step[]): Promise<boolean> => {
    tries++;
    const again = await Played.begin(world, opening);
    for (const step of few) {
      await again.step(step);
      if (again.breaches.length > 0) break;
    }
    await again.end();
    const same = again.breaches.find((b) => b.rule === breach.rule);
    if (!same) return false;
    shortest = few.slice(0, again.lines.length);
    shown = { breach: same, lines: again.lines };
    return true;
  };
  // The later half, the earlier half, quarters … down to single steps, each left out where the rest still breaks it.
  for (
    let size = Math.ceil(shortest.length / 2);
    size >= 1 && tries < most;
    size = size === 1 ? 0 : Math.ceil(size / 2)
  ) {
    for (let from = 0; from < shortest.length && tries < most; ) {
      const few = [...shortest.slice(0, from), ...shortest.slice(from + size)];
      if (!(await breaks(few))) from += size;
    }
  }
  // Then what goes with a step: the clock, somebody beside, trouble.
  for (const [i, step] of shortest.entries()) {
    for (const part of ['beside', 'trouble', 'echo', 'set'] as const) {
      if (step[part] === undefined || tries >= most) continue;
      const { [part]: _, ...plain } = shortest[i] ?? step;
      await breaks(shortest.map((one, at) => (at === i ? plain : one)));
    }
  }
  return { ...shown.breach, conversation: shown.lines, nr, of: steps.length };
}
