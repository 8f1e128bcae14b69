/**
 * The manual as an xstate machine, and the only file that knows xstate.
 *
 * A place is a state. It rests while its fact is missing and has one eventless transition for each known way out. Every
 * entry is one event, handled once at the root: it is folded into the context, and where facts may have been forgotten
 * the machine goes over the page again from its start. The compiler, not the author, puts make-dead before every inside
 * place and ends the isolation at every live one.
 */
import {
  type AnyActorScope,
  type AnyMachineSnapshot,
  type AnyStateMachine,
  assign,
  createActor,
  createMachine,
  initialTransition,
} from 'xstate';
import { TranscriptMismatch } from './errors.ts';
import { isSkipped } from './facts.ts';
import { flatten, jobName, type Place, type Plan, skipTarget } from './flatten.ts';
import { energise, fold, leave, onlyAdds, spentTries } from './fold.ts';
import { isAnyBegun } from './forget.ts';
import { foundAt, isKnown, jobFactAt, judged } from './known.ts';
import { BLANK, type Memory } from './memory.ts';
import { askAgain, overtaken } from './power.ts';
import type { Entry } from './schema.ts';
import type { Manual } from './vocabulary.ts';

/** Where a job rests when no place of the manual has the word. In order of precedence. */
export const HALTS = ['!emergency', '!hazard', '!stopping', '!paused', '!taking-over', '!held'] as const;
export type Halt = (typeof HALTS)[number];
export const isHalt = (place: string): place is Halt => (HALTS as readonly string[]).includes(place);

export interface Machine {
  readonly plan: Plan;
  /** The first position, before any entry. */
  readonly initial: Position;
  /** One entry more. Throws TranscriptMismatch where the machine has no answer to it. */
  step(position: Position, entry: Entry): Position;
  /** xstate's own snapshot of a position, for whoever wants to ask xstate itself. */
  snapshotOf(position: Position): AnyMachineSnapshot;
}
interface Context {
  readonly memory: Memory;
  /** Verdicts passed since the page was last gone over from its start. */
  readonly passed: readonly Place[];
}
export interface Position extends Context {
  readonly place: string;
}
type Event = { type: 'entry'; entry: Entry };
type Guard = (args: { context: Context }) => boolean;

const halted: Record<Halt, (plan: Plan, memory: Memory) => boolean> = {
  '!emergency': (plan, m) => m.alarm !== null && !plan.manual.caller,
  '!hazard': (_, m) => m.hazard !== null,
  '!stopping': (_, m) => m.stop === 'asked',
  '!paused': (_, m) => m.stop === 'paused',
  '!taking-over': (_, m) => m.handover !== null,
  '!held': (plan, m) => spentTries(plan, m) !== null,
};

/** One for all, as a job at hand has one. */
const NONE: readonly Place[] = [];
const mutate = (change: (memory: Memory) => Memory) =>
  assign(({ context }: { context: Context }) => ({ memory: change(context.memory), passed: NONE }));
const passes = (verdict: Place) =>
  assign(({ context }: { context: Context }) => ({ passed: context.passed.concat(verdict) }));

export function compile(manual: Manual): Machine {
  const plan = flatten(manual);
  const states: Record<string, object> = {
    start: {
      always: [...HALTS.map((h) => way(h, ({ context }) => halted[h](plan, context.memory))), { target: plan.start }],
    },
  };
  for (const h of HALTS) states[h] = {};
  for (const ending of plan.endings) states[ending] = {};
  for (const place of plan.places.values()) states[place.id] = { always: waysOf(plan, place) };
  for (const [cabinet, region] of Object.entries(plan.regions)) {
    for (const [ending, exit] of Object.entries(region.exits)) {
      states[ending] = { always: [{ target: 'start', actions: mutate((m) => leave(plan, m, cabinet, exit)) }] };
    }
  }
  const take = assign(({ context, event }: { context: Context; event: Event }) => ({
    memory: fold(plan, context.memory, event.entry),
  }));
  const machine = createMachine({
    id: manual.id,
    initial: 'start',
    context: { memory: BLANK, passed: [] },
    states,
    on: {
      entry: [
        {
          guard: ({ event }: { event: Event }) => onlyAdds(plan, event.entry),
          actions: take,
        },
        { target: '.start', actions: [take, assign({ passed: NONE })] },
      ],
    },
    options: { maxIterations: 20 * plan.places.size + 200 },
  } as never);

  const position = ({ value, context }: AnyMachineSnapshot): Position => {
    const { memory, passed } = context as Context;
    return { place: value as string, memory, passed };
  };
  // The rest of a snapshot is the same whenever a job rests at this place: one serves all, and a job at hand holds none.
  const resting = new Map<string, AnyMachineSnapshot>();
  const snapshotOf = ({ place, memory, passed }: Position): AnyMachineSnapshot => {
    const bare: AnyMachineSnapshot =
      resting.get(place) ?? machine.resolveState({ value: place, context: { memory: BLANK, passed: [] } } as never);
    resting.set(place, bare);
    return { ...bare, context: { memory, passed } } as AnyMachineSnapshot;
  };
  const [first] = initialTransition(machine);
  if (first.status === 'error') throw first.error;
  const scope = inertScope(machine);
  return {
    plan,
    snapshotOf,
    initial: position(first),
    step(at, entry) {
      const before = snapshotOf(at);
      const after: AnyMachineSnapshot = machine.transition(before as never, { type: 'entry', entry } as never, scope);
      if (after === before) throw new TranscriptMismatch(`nothing takes the entry ${entry.seq} ${entry.kind}`);
      return position(after);
    },
  };
}

/**
 * What xstate's own `transition()` makes anew on each call, which costs as much as the step itself: an actor that nobody
 * starts. No step of ours looks at it, so one serves them all. `tests/engine/scope.test.ts` holds both ways to be equal.
 */
function inertScope(machine: AnyStateMachine): AnyActorScope {
  const nothing = (): void => {};
  const self = createActor(machine);
  const { system } = self;
  const hooks = { logger: nothing, defer: nothing, emit: nothing, stopChild: nothing, actionExecutor: nothing };
  return { self, system, id: '', sessionId: '', ...hooks };
}

const way = (target: string, guard: Guard) => ({ target, guard });

/** The known ways out of a place, in order: its gate, its energising, then one for each answer or outcome. */
function waysOf(plan: Plan, place: Place): object[] {
  const unknown: Guard = ({ context }) => !isKnown(place, context.memory);
  const ways: object[] = [];
  const again: Guard = (a) => unknown(a) && overtaken(plan, a.context.memory, place).length > 0;
  ways.push({ target: 'start', guard: again, actions: mutate((m) => askAgain(plan, m, place)) });
  if (place.class === 'inside' || place.class === 'control live') {
    const first = plan.regions[place.cabinet]?.first ?? 'start';
    const bare: Guard = (a) => unknown(a) && a.context.memory.isolations[place.cabinet]?.proved == null;
    ways.push(way(first, bare));
  }
  if (place.class === 'live') {
    const standing: Guard = (a) => unknown(a) && isAnyBegun(plan, a.context.memory);
    ways.push({ target: 'start', guard: standing, actions: mutate((m) => energise(plan, m)) });
  }
  const known: Guard = (a) => !unknown(a);
  const { step } = place;
  if (step.verb === 'verdict') return [{ target: place.next, actions: passes(place) }];
  if (step.verb === 'found') {
    for (const [group, target] of Object.entries(place.to))
      ways.push(way(target, ({ context }) => foundAt(place, context.passed) === group));
    return ways;
  }
  if (step.verb === 'judge') {
    // Outcomes that lead to one place are one way: each way asks the judge once.
    for (const target of new Set(Object.values(place.to)))
      ways.push(way(target, ({ context }) => place.to[judged(place, context.memory).outcome] === target));
    return ways;
  }
  if ('parts' in step) {
    const skip = skipTarget(place);
    if (skip !== null) ways.push(way(skip, (a) => known(a) && isSkipped(a.context.memory.facts[place.id])));
    for (const [option, target] of Object.entries(place.to)) {
      ways.push(way(target, (a) => known(a) && hasChosen(a.context.memory, place, option)));
    }
  }
  if (place.next !== null) ways.push(way(place.next, known));
  return ways;
}

function hasChosen(memory: Memory, place: Place, option: string): boolean {
  if (!('parts' in place.step) || place.step.by === undefined) return false;
  const spec = place.step.parts[place.step.by];
  const value =
    memory.facts[place.id]?.body.parts[place.step.by] ??
    (spec?.as ? jobFactAt(place, memory, jobName(spec.as, place))?.value : undefined);
  return value?.kind === 'choice' && value.chosen[0] === option;
}
