/**
 * Make-dead of one cabinet and one procedure behind it as a Promela model for SPIN: a further opinion, by a program that
 * knows nothing of ours. Generated from the compiled places, their ways and their judgements' outcomes; where the job
 * stands is, as in the engine, the first thing that is not known: `here` in the procedure, and before hands go inside
 * `gate` in make-dead. Any answer and any outcome may come, and at any moment what voids an isolation.
 */
import type { Place, Plan } from '../../flatten.ts';
import { edgesOf } from '../../graph.ts';
import { ANSWERS, CLAIMS, LINKS, type Link, OUTCOMES } from './claims.ts';

export interface Scope {
  readonly cabinet: string;
  /** Prefix of the procedure's places. */
  readonly procedure: string;
}

/** Make-dead of the outdoor unit, then its run capacitor. */
export const CAPACITOR_CHECK: Scope = { cabinet: 'outdoor', procedure: 'round~1/block/run/' };

export function promela(plan: Plan, { cabinet, procedure }: Scope): string {
  const region = plan.regions[cabinet];
  if (!region) throw new Error(`there is no cabinet ${cabinet}`);
  const placesIn = (ids: readonly string[]): Place[] => ids.flatMap((id) => plan.places.get(id) ?? []);
  const gates = placesIn(region.places);
  const steps = placesIn([...plan.places.keys()].filter((id) => id.startsWith(procedure)));
  const first = steps[0];
  if (!first) throw new Error(`there is no place under ${procedure}`);
  const own = new Set(steps.map((p) => p.id));
  const names = new Map([
    ...gates.map((p) => [p.id, `G_${word(p.id.slice(`dead:${cabinet}/`.length))}`] as const),
    ...steps.map((p) => [p.id, `P_${word(p.id.slice(procedure.length))}`] as const),
  ]);
  const nameOf = (id: string): string => names.get(id) ?? 'DONE';
  const gateNamed = (step: string): string => nameOf(`dead:${cabinet}/${step}`);
  const { leaving, reentry } = region.rules;

  /** What it means to go to a place from make-dead: a gate more, proved, or out by an exit that makes some of it forgotten. */
  const fromGate = (target: string): string[] => {
    const exit = region.exits[target];
    if (exit === undefined) return [`gate = ${nameOf(target)}`];
    if (exit === 'proved') return ['gate = ALL; proved = true'];
    const out = leaving[exit];
    if (!out) throw new Error(`make-dead's exit ${exit} has no meaning`);
    const again = `gate = ${gateNamed(out.forget)}`;
    return out.tries ? [again, `tries++; if :: tries >= ${out.tries.times} -> held = true :: else fi`] : [again];
  };
  const inside = (id: string): boolean => ['inside', 'control live'].includes(plan.places.get(id)?.class ?? '');
  const fromStep = (target: string): string[] =>
    own.has(target) ? [`here = ${nameOf(target)}; hands = ${inside(target)}`] : ['here = DONE; hands = false'];

  return [
    `/* ${plan.manual.id} ${plan.manual.version}: make-dead of the ${cabinet} cabinet, then ${procedure}. Generated; don't edit. */`,
    ...gates.map((p, i) => `#define ${nameOf(p.id)} ${i} /* ${p.title}: ${p.name} */`),
    `#define ALL ${gates.length}`,
    ...steps.map((p, i) => `#define ${nameOf(p.id)} ${i} /* ${p.title}: ${p.name}, ${p.class} */`),
    `#define DONE ${steps.length}`,
    '',
    '/* Where the job stands. */',
    `short gate = ${nameOf(region.first)};`,
    `short here = ${nameOf(first.id)};`,
    `bool hands = ${inside(first.id)};`,
    'bool proved = false, alarm = false, held = false;',
    'byte tries = 0;',
    '/* What is so by the rules, whatever the pages make of it. */',
    `bool ${LINKS.map((link) => `${link} = false`).join(', ')};`,
    'bool ended = false, old = false;',
    'byte holder = 0, lockOf = 2;',
    '#define OPEN (!alarm && !held)',
    '#define IN (OPEN && hands && proved)',
    'inline back(g) { if :: gate > g -> gate = g :: else fi; proved = false }',
    '',
    ...CLAIMS.map(({ name, ltl, rule, says }) => `ltl ${name} { ${ltl} } /* ${rule}: ${says} */`),
    '',
    'active proctype pages() {',
    'end:',
    '  do',
    ...gates.flatMap((p) => placeLines(p, `OPEN && hands && !proved && gate == ${nameOf(p.id)}`, fromGate)),
    ...steps.flatMap((p) =>
      placeLines(p, `OPEN && here == ${nameOf(p.id)}${inside(p.id) ? ' && proved' : ''}`, fromStep),
    ),
    '  od',
    '}',
    '',
    '/* What may come at any moment. */',
    'active proctype world() {',
    'end:',
    '  do',
    ...event('power is back, a lock is off, line voltage was seen', 'ended = true', `back(${gateNamed(reentry.void)})`),
    ...event(
      'thirty silent minutes',
      'old = true',
      `back(${gateNamed(reentry.age)})`,
      `gate > ${gateNamed(reentry.void)}`,
    ),
    ...event('the lock changes hands', 'holder = 1 - holder', `back(${gateNamed(reentry.holder)})`),
    ...event('emergency', 'alarm = true; ended = true', `back(${gateNamed(reentry.void)})`, '!alarm'),
    ...event('a senior releases it', 'alarm = false', 'skip', 'alarm'),
    ...event('a senior opens another three', 'held = false', 'tries = 0', 'held'),
    '  od',
    '}',
    '',
  ].join('\n');
}

/** What a step of the model prints begins so. */
export const SAYS = '> ';
const print = (what: string): string => `printf("${SAYS}${what}\\n")`;
const word = (id: string): string => id.replace(/[^A-Za-z0-9]/g, '_');

/** One place: each way on as a choice, with what it proves. */
function placeLines(place: Place, guard: string, go: (target: string) => string[]): string[] {
  const ways = edgesOf(place).map(({ on, to }) => {
    const what = [...proves(place, on), ...go(to)];
    return `      :: ${print(`${place.title}, ${place.name}: ${on}`)}; ${what.join('; ')}`;
  });
  return ways.length === 0 ? [] : [`  :: atomic { ${guard} ->`, '      if', ...ways, '      fi }'];
}

/** What this way makes and unmakes. A link that is made anew unmakes those after it. */
function proves(place: Place, on: string): string[] {
  if (!place.gate) return [];
  const { step } = place;
  const row = step.verb === 'judge' ? OUTCOMES[step.judgement] : ANSWERS[place.name];
  if (!row) return [];
  const made = row.by.includes(on);
  // Left out, or judged otherwise: what was proved before by this link counts no more.
  const later = LINKS.slice(LINKS.indexOf(row.makes) + 1);
  const set = (link: Link, to: boolean): string => `${link} = ${to}`;
  return [
    set(row.makes, made),
    ...later.map((link) => set(link, false)),
    ...(made && row.makes === 'locked' ? ['ended = false; lockOf = holder'] : []),
    ...(made && row.makes === 'line' ? ['old = false'] : []),
  ];
}

const event = (what: string, so: string, then: string, guard = 'true'): string[] => [
  `  :: atomic { ${guard} -> ${print(what)}; ${so}; ${then} }`,
];
