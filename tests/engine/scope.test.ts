/** The machine steps with one scope for all steps; xstate makes a new one for each. Both have to come to the same. */
import { describe, expect, it } from 'vitest';
import { type AnyMachineSnapshot, transition } from 'xstate';
import { compile, type Machine, type Position } from '../../engine/compile.ts';
import { may } from '../../engine/desk/rights.ts';
import { fingerprint } from '../../engine/fingerprint.ts';
import { answers, detours } from '../../engine/prove/alphabet.ts';
import { open, type State, type Subject, sound, type Turn, turn } from '../../engine/prove/bench.ts';
import type { Entry } from '../../engine/schema.ts';
import { SHELF } from '../../flows/index.ts';
import { recorded, recordedNames } from '../replay/jobs.ts';

/** What xstate itself makes of one entry more, as plain data. */
function fresh(machine: Machine, at: Position, entry: Entry): unknown {
  const before = machine.snapshotOf(at);
  const [after, actions] = transition(before.machine, before as never, { type: 'entry', entry } as never);
  expect(actions).toEqual([]);
  return plain(after);
}
const plain = ({ value, context, status, output, error, historyValue, children, tags }: AnyMachineSnapshot): unknown =>
  structuredClone({ value, context, status, output, error, historyValue, children, tags: [...tags] });

/** Goes over the entries both ways and gives how many were compared. */
function compare(machine: Machine, entries: readonly Entry[]): number {
  let at = machine.initial;
  for (const entry of entries) {
    const wanted = fresh(machine, at, entry);
    at = machine.step(at, entry);
    expect(plain(machine.snapshotOf(at)), `entry ${entry.seq} ${entry.kind}`).toEqual(wanted);
  }
  return entries.length;
}

describe('one scope for every step', () => {
  const machines = SHELF.map((manual) => compile(manual));

  it('gives the snapshots of xstate’s own transition over every recorded job', () => {
    let entries = 0;
    for (const name of recordedNames()) {
      const job = JSON.parse(recorded(name)) as { flow: { fingerprint: string }; entries: Entry[] };
      const machine = machines.find(({ plan }) => fingerprint(plan.manual) === job.flow.fingerprint);
      if (!machine) throw new Error(`${name} is pinned to no manual on the shelf`);
      entries += compare(machine, job.entries);
    }
    expect(entries).toBeGreaterThan(100);
  });

  it('gives them over walks by chance, one entry thrown in that nothing takes', () => {
    const [machine] = machines;
    if (!machine) throw new Error('no manual');
    const subject = sound(machine, may as Subject['may']);
    const next = dice(20_260_714);
    const kinds = new Set<string>();
    for (let walk = 0; walk < 12; walk++) {
      const state = wander(subject, 40, next);
      compare(machine, state.entries);
      for (const { kind } of state.entries) kinds.add(kind);
      // A step that throws leaves nothing behind in the scope that the next one would meet.
      const wrong = { ...state.entries.at(-1), kind: 'answered', body: { place: 'nowhere', parts: {} } } as Entry;
      expect(() => machine.step(state.standing.position, wrong)).toThrow('no question at nowhere');
    }
    expect([...kinds]).toEqual(expect.arrayContaining(['answered', 'concluded', 'voided', 'withdrawn', 'alarmed']));
  });
});

/** So many turns from the first question, mostly answers, now and then whatever may come at any time. */
function wander(subject: Subject, turns: number, next: (below: number) => number): State {
  let state = open(subject);
  for (let i = 0; i < turns; i++) {
    const aside = next(4) === 0 ? detours(state) : [];
    const ways: Turn[][] = aside.length > 0 ? aside : answers(state).map((one) => [one]);
    for (const one of ways[next(ways.length)] ?? []) state = turn(subject, state, one).state;
  }
  return state;
}

/** The same chances on each run: Numerical Recipes’ linear congruence, its high bits. */
function dice(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}
