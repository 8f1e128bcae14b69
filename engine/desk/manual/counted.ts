/** How many questions a call takes: the worked calls of a manual played through the engine, each question counted once. */
import type { Machine } from '../../compile.ts';
import { open, type Subject, sound, TECH, turn } from '../../prove/bench.ts';
import { placeIdOf } from '../../replay.ts';
import type { Entry } from '../../schema.ts';
import type { AskStep, Example, Flow, Manual } from '../../vocabulary.ts';
import { pagesOf } from './ways.ts';

export interface Counted {
  /** The observation a call began with: its id and its words. */
  readonly symptom: string;
  readonly label: string;
  readonly calls: number;
  /** Questions from the observation to the end, each once: a try or a round that repeats one is not counted again. */
  readonly median: number;
  readonly longest: number;
  readonly longestCall: string;
  /** The latest that hands go inside for the first time, over its calls where nothing live comes first; null where they never do. */
  readonly firstInside: number | null;
}
export interface Played {
  readonly title: string;
  readonly symptom: string;
  readonly questions: number;
  readonly firstInside: number | null;
  readonly verdicts: readonly string[];
}

/** What played calls come to, sorted by symptom. */
export function countQuestions(manual: Manual, played: readonly Played[]): readonly Counted[] {
  const labels = observations(manual);
  return Object.entries(labels).flatMap(([symptom, label]) => {
    const own = played.filter((p) => p.symptom === symptom).sort((a, b) => a.questions - b.questions);
    const [middle, last] = [own[Math.floor(own.length / 2)], own.at(-1)];
    if (!middle || !last) return [];
    const inside = own.flatMap((p) => p.firstInside ?? []);
    return [
      {
        ...{ symptom, label, calls: own.length, median: middle.questions },
        ...{ longest: last.questions, longestCall: last.title },
        firstInside: inside.length === 0 ? null : Math.max(...inside),
      },
    ];
  });
}

/** As a table, the longest calls named under it, and what an easy one takes. */
export function printCounts(machine: Machine, may: Subject['may']): readonly string[] {
  const played = playCalls(machine, may);
  const counted = countQuestions(machine.plan.manual, played);
  const easy = easiestRepair(played);
  return [
    '| what the unit does | calls | median | longest | hands first inside |',
    '|---|---|---|---|---|',
    ...counted.map(
      (c) => `| ${c.symptom} ${c.label} | ${c.calls} | ${c.median} | ${c.longest} | ${c.firstInside ?? '–'} |`,
    ),
    '',
    ...counted.map((c) => `${c.symptom}, ${c.longest} questions: ${c.longestCall}`),
    '',
    easy ? `A capacitor found, fitted and proven: ${easy.questions} questions (${easy.title})` : 'No such call.',
  ];
}

/** The shortest call in which a part was found, fitted and proven. */
export function easiestRepair(played: readonly Played[]): Played | null {
  const repairs = played.filter((p) =>
    ['section-fails-value', 'new-part-right', 'repair-proven'].every((v) => p.verdicts.includes(v)),
  );
  return repairs.sort((a, b) => a.questions - b.questions)[0] ?? null;
}

/** Every worked call that reaches an end. */
export function playCalls(machine: Machine, may: Subject['may']): readonly Played[] {
  const examples = pagesOf(machine.plan.manual).flatMap(({ flow }) => flow.examples ?? []);
  const subject = sound(machine, may);
  return [...new Map(examples.map((e) => [e.lines.join('\n'), e])).values()].flatMap((example) => {
    const call = play(subject, example);
    return call === null ? [] : [call];
  });
}

/** Null where the call breaks off before an end, or begins from a record of the unit. */
function play(subject: Subject, example: Example): Played | null {
  if (example.unit || example.ends === undefined) return null;
  let state = open(subject, [TECH]);
  const questions = new Set<string>();
  let firstInside: number | null = null;
  let live = false;
  for (const text of example.lines) {
    const reply = { kind: 'text', client: `c${state.entries.length}`, seq: -1, text } as const;
    const { state: next, added } = turn(subject, state, { by: TECH, label: text, reply, after: 1 });
    for (const place of added.flatMap(answeredAt)) {
      const question = place.replace(/~\d+/g, '');
      questions.add(question);
      const at = subject.machine.plan.places.get(place);
      live ||= at?.class === 'live' || at?.class === 'control live';
      if (at?.class === 'inside' && !at.gate && !live) firstInside ??= questions.size;
    }
    state = next;
  }
  if (!placeIdOf(state.standing).startsWith('!')) return null;
  const symptom = state.entries.flatMap((e) =>
    e.kind === 'answered' && e.body.place.endsWith('/observation') ? (chosen(e) ?? []) : [],
  )[0];
  const verdicts = state.entries.flatMap((e) => (e.kind === 'concluded' ? [e.body.verdict] : []));
  return symptom === undefined
    ? null
    : { title: example.title, symptom, questions: questions.size, firstInside, verdicts };
}

const answeredAt = (e: Entry): string[] => (e.kind === 'answered' ? [e.body.place] : []);
const chosen = (e: Extract<Entry, { kind: 'answered' }>): string | undefined => {
  const { choice } = e.body.parts;
  return choice?.kind === 'choice' ? choice.chosen[0] : undefined;
};

/** The first question of the manual that asks what the unit does. */
function observations(manual: Manual): Readonly<Record<string, string>> {
  const find = (page: Flow): AskStep | undefined => {
    for (const [name, step] of Object.entries(page.steps)) {
      if (name === 'observation' && 'parts' in step) return step;
      const inner = step.verb === 'include' ? find(step.page) : undefined;
      if (inner) return inner;
    }
    return undefined;
  };
  const choice = find(manual.root)?.parts.choice;
  if (choice === undefined || !('options' in choice)) return {};
  return Object.fromEntries(Object.entries(choice.options ?? {}).map(([id, option]) => [id, option.label]));
}
