/** Twenty questions for a number each: by the engine, and as a machine of xstate's own manual whose snapshot is kept. */
import { type AnyStateMachine, assign, createActor, createMachine } from 'xstate';
import { GENESIS, seal } from '../../engine/chain.ts';
import { compile } from '../../engine/compile.ts';
import { decide } from '../../engine/decide/decide.ts';
import type { Context } from '../../engine/decide/types.ts';
import { prompt } from '../../engine/prompt.ts';
import { begin, placeIdOf, type Standing, take } from '../../engine/replay.ts';
import { sha256 } from '../../engine/report/digest.ts';
import type { Draft, Entry } from '../../engine/schema.ts';
import { degreesApart, type Flow, form, type Manual } from '../../engine/vocabulary.ts';
import { SHELF } from '../../flows/index.ts';

const QUESTIONS = 20;
const AT = '2026-07-14T15:00:00.000Z';
const names = Array.from({ length: QUESTIONS }, (_, i) => `q${i + 1}`);
const figure = (i: number): string => `${12 + (i % 7)}.5`;

const steps = Object.fromEntries(
  names.map((name, i) => [
    name,
    form({ say: `Figure ${i + 1}?`, parts: { figure: degreesApart('Figure') }, next: names[i + 1] ?? '!done' }),
  ]),
);
const root = { id: 'twenty', version: 1, title: 'Twenty', exits: ['done'], needs: [], steps } as unknown as Flow;
const [real] = SHELF;
const twenty = { ...real, root, endings: { done: { title: 'Done', says: 'Done.' } } } as unknown as Manual;

const machine = compile(twenty);
const context: Context = {
  by: 'ines',
  at: AT,
  said: null,
  client: 'c',
  may: () => true,
  salt: () => '00112233445566778899aabbccddeeff',
  people: [{ id: 'ines', name: 'Ines' }],
};
const opened: Draft = {
  kind: 'opened',
  body: {
    manual: 'twenty',
    version: 1,
    fingerprint: '',
    semantics: 1,
    title: { ref: 't', hash: GENESIS },
    training: false,
  },
};

/** Each answer is decided, sealed, put in JSON as it is kept, taken; then the next question is made. Gives what is kept. */
export function byEngine(): string {
  let standing = begin(machine, 'twenty');
  let kept = '';
  const append = (drafts: readonly Draft[], seq: number, after?: Standing): void => {
    const head = { job: 'twenty', seq, prev: standing.lastHash, by: 'ines', at: AT, said: null, client: 'c' };
    const entries = seal(drafts, head, sha256);
    for (const entry of entries) kept += `${JSON.stringify(entry)}\n`;
    standing = { ...(after ?? entries.reduce(take, standing)), lastHash: entries.at(-1)?.hash ?? GENESIS };
  };
  append([opened], 0);
  let asked = prompt(standing, AT);
  for (let i = 0; i < QUESTIONS; i++) {
    const reply = { kind: 'answer' as const, client: 'c', seq: asked.seq, parts: { figure: figure(i) } };
    const { drafts, after, refusal } = decide(standing, reply, context);
    if (refusal) throw new Error(refusal.text);
    append(drafts, asked.last, after);
    asked = prompt(standing, AT);
  }
  if (asked.kind !== 'finished') throw new Error(`ended at ${placeIdOf(standing)}`);
  return kept;
}

const answers = ((): Entry[] => {
  const kept = byEngine().trimEnd().split('\n');
  return kept.map((line) => JSON.parse(line) as Entry);
})();

/** What the actor below does, and no more: each answer is put in JSON as it is kept, and taken. */
export function byMachine(): string {
  let standing = begin(machine, 'twenty');
  let kept = '';
  for (const entry of answers) {
    kept += `${JSON.stringify(entry)}\n`;
    standing = take(standing, entry);
  }
  if (placeIdOf(standing) !== '!done') throw new Error(`ended at ${placeIdOf(standing)}`);
  return kept;
}

const actorMachine: AnyStateMachine = createMachine({
  id: 'twenty',
  initial: 'q1',
  context: { figures: {} },
  states: {
    ...Object.fromEntries(
      names.map((name, i) => [
        name,
        {
          meta: { say: `Figure ${i + 1}?` },
          on: {
            ANSWER: {
              target: names[i + 1] ?? 'done',
              guard: ({ event }: { event: { value: string } }) => Number.isFinite(Number(event.value)),
              actions: assign({
                figures: ({
                  context: { figures },
                  event,
                }: {
                  context: { figures: object };
                  event: { value: string };
                }) => ({
                  ...figures,
                  [name]: event.value,
                }),
              }),
            },
          },
        },
      ]),
    ),
    done: { type: 'final' },
  },
} as never);

/** The actor as it is kept between two messages: its snapshot read, started, sent the answer, and written again. */
export function byActor(): string {
  let kept = JSON.stringify(createActor(actorMachine).start().getPersistedSnapshot());
  for (let i = 0; i < QUESTIONS; i++) {
    const actor = createActor(actorMachine, { snapshot: JSON.parse(kept) }).start();
    actor.send({ type: 'ANSWER', value: figure(i) });
    const after = actor.getSnapshot();
    after.getMeta();
    kept = JSON.stringify(actor.getPersistedSnapshot());
  }
  if (!kept.includes('"done"')) throw new Error('the actor is not done');
  return kept;
}
