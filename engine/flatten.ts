/**
 * The whole manual as one flat list of places. Pages are put in place where they are included, every `again` is
 * unrolled into copies, and every target and reference becomes a place's path, so that the machine, the second opinion,
 * the proof and the printed pages all speak of the same places.
 */
import { classOf } from './class.ts';
import { FlowError } from './errors.ts';
import type { StepClass } from './schema.ts';
import type { Flow, IncludeStep, IsolationRules, Manual, Step } from './vocabulary.ts';

export type PlainStep = Exclude<Step, IncludeStep>;
/** A place is a step within the whole manual, named by its path. */
export interface Place {
  readonly id: string;
  readonly page: string;
  readonly title: string;
  readonly name: string;
  readonly step: PlainStep;
  readonly class: StepClass;
  readonly cabinet: string;
  /** The cabinet where it is another than the manual's first, else null. */
  readonly beside: string | null;
  /** True within make-dead: the place is a gate of this cabinet's isolation. */
  readonly gate: boolean;
  readonly round: number;
  /** Position in the order of the pages. Ways lead to higher positions only. */
  readonly order: number;
  readonly next: string | null;
  readonly to: Readonly<Record<string, string>>;
  readonly cant: string | null;
  /** Reference as written → place paths, `@name` or `@+part:name…`; the first that has a fact counts. Empty where there is no earlier try. */
  readonly refs: Readonly<Record<string, readonly string[]>>;
}
/** Make-dead of one cabinet. */
export interface Region {
  // biome-ignore lint/suspicious/noExplicitAny: pages of every shape prove a cabinet dead.
  readonly rules: IsolationRules<any, any>;
  readonly first: string;
  readonly places: readonly string[];
  /** Ending of the region → exit's name. */
  readonly exits: Readonly<Record<string, string>>;
}
export interface Plan {
  readonly manual: Manual;
  readonly start: string;
  readonly places: ReadonlyMap<string, Place>;
  readonly regions: Readonly<Record<string, Region>>;
  /** `!exit` of the root. */
  readonly endings: readonly string[];
}

interface Surroundings {
  readonly prefix: string;
  readonly exits: Readonly<Record<string, string>>;
  readonly needs: Readonly<Record<string, readonly string[]>>;
  /** Prefixes of the earlier tries of this page, the nearest first. */
  readonly earlier: readonly string[];
  /** Prefixes of this page in earlier rounds, the nearest first. */
  readonly rounds: readonly string[];
  readonly cabinet: string;
  /** The manual's first cabinet. */
  readonly main: string;
  readonly gate: boolean;
  readonly round: number;
}

const plans = new WeakMap<Manual, Plan>();

/** The places of a manual. Laid once: a start asks for them for its fingerprint, its check and its machine. */
export function flatten(manual: Manual): Plan {
  const plan = plans.get(manual) ?? laid(manual);
  plans.set(manual, plan);
  return plan;
}

function laid(manual: Manual): Plan {
  const places = new Map<string, Place>();
  const cabinet = Object.keys(manual.cabinets)[0] ?? 'unit';
  const start = lay(manual.root, places, {
    prefix: '',
    exits: exitsOf(manual.root, ''),
    needs: {},
    earlier: [],
    rounds: [],
    cabinet,
    main: cabinet,
    gate: false,
    round: 1,
  });
  const regions: Record<string, Region> = {};
  for (const name of Object.keys(manual.cabinets)) {
    const prefix = `dead:${name}/`;
    const rules = manual.isolations?.[name] ?? manual.isolation;
    const exits = exitsOf(rules.page, `dead:${name}`);
    const before = places.size;
    const first = lay(rules.page, places, {
      prefix,
      exits,
      needs: {},
      earlier: [],
      rounds: [],
      cabinet: name,
      main: cabinet,
      gate: true,
      round: 1,
    });
    regions[name] = {
      rules,
      first,
      places: [...places.keys()].slice(before),
      exits: Object.fromEntries(Object.entries(exits).map(([exit, id]) => [id, exit])),
    };
  }
  return { manual, start, places, regions, endings: manual.root.exits.map((x: string) => `!${x}`) };
}

/**
 * Where "can't", "not sure" and "skip" lead; null where a question can't be left out. Of a yes or no that is where no
 * leads, unless the page says otherwise: unsure never counts as yes.
 */
export const skipTarget = (place: Place): string | null =>
  place.cant ??
  place.to.cant ??
  place.next ??
  ('by' in place.step && place.step.by === 'ok' ? (place.to.no ?? null) : null);

/** Folder of a place: the copy of the page it belongs to, with the slash behind it. */
export const folderOf = (id: string): string => id.slice(0, id.lastIndexOf('/') + 1);

/**
 * `round:` names are facts of one round: the next one begins without them. `cabinet:` names are facts of one cabinet:
 * what is known of the outdoor unit's capacitor says nothing of the indoor unit's.
 */
export function jobName(name: string, at: { readonly round: number; readonly cabinet: string }): string {
  if (name.startsWith('cabinet:')) return `${name.slice('cabinet:'.length)}@${at.cabinet}`;
  return name.startsWith('round:') ? `${name}~${at.round}` : name;
}

const isOfJob = (step: Step): boolean =>
  'parts' in step &&
  Object.values(step.parts).every((p: { as?: string; anew?: true }) => p.as !== undefined && !p.anew);

/** `@+part:name+part:name`: the parts of a question, each from the fact of the job that is kept under its name. */
const together = (step: Step, around: Surroundings): string =>
  `@${Object.entries('parts' in step ? step.parts : {})
    .map(([key, part]) => `+${key}:${jobName(part.as ?? '', around)}`)
    .join('')}`;

const exitsOf = (page: Flow, prefix: string): Record<string, string> =>
  Object.fromEntries(page.exits.map((x) => [x, `${prefix}!${x}`]));

/** Lays a page's steps into `places` and returns the path of its first one. */
function lay(page: Flow, places: Map<string, Place>, around: Surroundings): string {
  const names = Object.keys(page.steps);
  const entries = new Map(names.map((n) => [n, entryPath(page, n, around.prefix)]));
  const target = (t: string): string => {
    const found = t.startsWith('!') ? around.exits[t.slice(1)] : entries.get(t);
    if (found === undefined) throw new FlowError(`${page.id}: no step or exit "${t}"`);
    return found;
  };
  const ref = (r: string): readonly string[] => {
    if (r.startsWith('@')) return [`@${jobName(r.slice(1), around)}`];
    if (r.startsWith('~')) return around.earlier.map((prefix) => `${prefix}${r.slice(1)}`);
    const own = Object.hasOwn(page.steps, r) ? page.steps[r] : undefined;
    // A question that a later round passes over, because it is known for the whole job, has its answer in an earlier one.
    // What the unit's own record brought has no answer at all: it is put together from the facts of the job.
    if (own)
      return [
        `${around.prefix}${r}`,
        ...(isOfJob(own) ? [...around.rounds.map((prefix) => `${prefix}${r}`), together(own, around)] : []),
      ];
    const need = around.needs[r];
    if (need === undefined) throw new FlowError(`${page.id}: nothing is called "${r}" here`);
    return need;
  };
  for (const name of names) {
    const step = page.steps[name];
    if (!step) continue;
    if (step.verb === 'include') layInclude(step, name, places, around, target, ref);
    else places.set(`${around.prefix}${name}`, place(page, name, step, places.size, around, target, ref));
  }
  const first = names[0] === undefined ? undefined : entries.get(names[0]);
  if (first === undefined) throw new FlowError(`${page.id}: a page without steps`);
  return first;
}

function entryPath(page: Flow, name: string, prefix: string): string {
  const step = page.steps[name];
  if (step?.verb !== 'include') return `${prefix}${name}`;
  const inner = Object.keys(step.page.steps)[0];
  if (inner === undefined) throw new FlowError(`${step.page.id}: a page without steps`);
  return entryPath(step.page, inner, copyPrefix(prefix, name, step, 1));
}
const copyPrefix = (prefix: string, name: string, step: IncludeStep, copy: number): string =>
  `${prefix}${name}${step.again ? `~${copy}` : ''}/`;

function layInclude(
  step: IncludeStep,
  name: string,
  places: Map<string, Place>,
  around: Surroundings,
  target: (t: string) => string,
  ref: (r: string) => readonly string[],
): void {
  const copies = step.again?.times ?? 1;
  const first = Object.keys(step.page.steps)[0] ?? '';
  for (let copy = 1; copy <= copies; copy++) {
    const prefix = copyPrefix(around.prefix, name, step, copy);
    const exits: Record<string, string> = {};
    for (const x of step.page.exits as readonly string[]) {
      const mapped = step.exits[x];
      if (x === 'again' && step.again) {
        exits[x] =
          copy < copies
            ? entryPath(step.page, first, copyPrefix(around.prefix, name, step, copy + 1))
            : target(step.again.spent);
      } else if (mapped === undefined) throw new FlowError(`${step.page.id}: exit "${x}" is not mapped at ${name}`);
      else exits[x] = target(mapped);
    }
    const needs: Record<string, readonly string[]> = {};
    for (const n of step.page.needs as readonly string[]) {
      const mapped = step.needs[n];
      if (mapped === undefined) throw new FlowError(`${step.page.id}: need "${n}" is not met at ${name}`);
      needs[n] = ref(mapped);
    }
    const before = Array.from({ length: copy - 1 }, (_, i) => copyPrefix(around.prefix, name, step, copy - 1 - i));
    lay(step.page, places, {
      ...around,
      prefix,
      exits,
      needs,
      earlier: before,
      rounds: step.round ? before : around.rounds.map((p) => copyPrefix(p, name, step, copy)),
      round: step.round ? copy : around.round,
      cabinet: step.cabinet ?? around.cabinet,
    });
  }
}

function place(
  page: Flow,
  name: string,
  step: PlainStep,
  order: number,
  around: Surroundings,
  target: (t: string) => string,
  ref: (r: string) => readonly string[],
): Place {
  const refs: Record<string, readonly string[]> = {};
  for (const r of refsOf(step)) refs[r] = ref(r);
  const ways = 'to' in step && step.to ? step.to : step.verb === 'judge' ? step.then : {};
  const next = step.verb === 'verdict' ? step.then : 'next' in step ? step.next : undefined;
  return {
    id: `${around.prefix}${name}`,
    page: page.id,
    title: page.title,
    name,
    step,
    class: classOf(step, around.gate),
    cabinet: around.cabinet,
    beside: around.cabinet === around.main ? null : around.cabinet,
    gate: around.gate,
    round: around.round,
    order,
    next: next === undefined ? null : target(next),
    to: Object.fromEntries(Object.entries(ways).map(([k, t]) => [k, target(t)])),
    cant: 'cant' in step && step.cant !== undefined ? target(step.cant) : null,
    refs,
  };
}

function refsOf(step: PlainStep): string[] {
  const said: (string | null)[] = [];
  if (step.verb === 'judge') said.push(...Object.values(step.of));
  if (step.verb === 'verdict') said.push(...step.judged, ...step.evidence);
  if ('parts' in step) {
    said.push(...(step.restsOn ?? []));
    if (step.waits) said.push(step.waits.since);
    said.push(...Object.values(step.recalls ?? {}));
    for (const s of step.shows ?? []) said.push(...Object.values(s.of));
    for (const p of Object.values(step.parts)) {
      if (p.when && 'fact' in p.when) said.push(p.when.fact);
      if (p.unless !== undefined) said.push(p.unless);
    }
  }
  return [...new Set(said.filter((r): r is string => r !== null))];
}
