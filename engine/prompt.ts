/** Standing → Prompt: everything a person sees, as plain text and data. The same words on every surface. */
import { isHalt } from './compile.ts';
import type { Place, Plan } from './flatten.ts';
import { jobName, skipTarget } from './flatten.ts';
import { spentTries } from './fold.ts';
import { isBegun } from './forget.ts';
import { haltCard } from './halts.ts';
import { asAsked, conclude, isAsked, judged, recalled, shownFindings } from './known.ts';
import type { Memory } from './memory.ts';
import type { Path } from './picture/data.ts';
import { questionPictures, verdictPictures, wayPicture } from './picture/of-prompt.ts';
import { QUANTITIES } from './quantity.ts';
import { asOf, deadlineOf, memoryOf, placeIdOf, planOf, type Standing } from './replay.ts';
import { route } from './route.ts';
import { sayKey } from './say-unit.ts';
import type {
  Callout,
  Conclusion,
  Finding,
  IsolationLine,
  Notice,
  Option,
  Part,
  Parts,
  Prompt,
  Value,
} from './schema.ts';
import type { AskStep, OptionSpec, PartSpec } from './vocabulary.ts';

/** The question that stands at `now`. */
export function prompt(standing: Standing, now: string): Prompt {
  const s = asOf(standing, now);
  const [plan, memory, here] = [planOf(s), memoryOf(s), placeIdOf(s)];
  const base = frame(s);
  if (isHalt(here)) return { ...base, ...haltCard(here, plan, memory), skippable: false };
  const place = plan.places.get(here);
  if (!place) return finished(base, plan, memory, here);
  const { step } = place;
  if (step.verb === 'approval') {
    return {
      ...base,
      kind: 'waiting',
      title: step.say,
      body: [...(step.body ?? [])],
      callouts: [...(step.callouts ?? [])],
    };
  }
  if (!('parts' in step)) throw new Error(`${here} asks nothing`);
  const asked = question(base, place, step, memory, true);
  return {
    ...base,
    ...asked,
    body: [...fromCall(memory), ...(asked.body ?? [])],
    callouts: [...alarmed(plan, memory), ...(asked.callouts ?? [])],
    holder: holderFor(place, memory),
  };
}

/** Before the first answer: what the call says, as far as it was computed. Words of the caller stand in the ticket. */
function fromCall({ call, facts }: Memory): string[] {
  if (!call || Object.keys(facts).length > 0) return [];
  const causes = call.causes.map(({ cause, because }) => `${cause} (${because})`);
  return [
    ...(causes.length > 0 ? [`From the call, likely: ${causes.join('; ')}.`] : []),
    ...(call.load.length > 0 ? [`On the truck: ${call.load.join(' ')}`] : []),
  ];
}

/** While a call is taken an alarm holds nothing, and stands over every question. */
function alarmed({ manual }: Plan, { alarm, settings }: Memory): Callout[] {
  if (!alarm || !manual.caller) return [];
  const out =
    alarm.hazard === 'gas' || alarm.hazard === 'refrigerant'
      ? 'Touch no switch and light no flame; call from outside.'
      : 'Get away from it; power off at the breaker only where that is dry and safe.';
  return [
    {
      level: 'danger',
      text: `Emergency. Tell the caller: ${out} Emergency services: ${settings.emergencyNumber}. Senior, dispatcher and owner are told.`,
    },
  ];
}

/** An earlier answer as a question again, its present answer filled in. */
export function promptAgain(standing: Standing, placeId: string, seq: number, now: string): Prompt {
  const s = asOf(standing, now);
  const place = planOf(s).places.get(placeId);
  if (!place || !('parts' in place.step)) throw new Error(`${placeId} asks nothing`);
  const base = frame(s);
  const asked = question(base, place, place.step, memoryOf(s), false);
  return {
    ...base,
    ...asked,
    place: placeId,
    kind: 'step',
    class: place.class,
    amends: seq,
    notices: [],
    holder: holderFor(place, memoryOf(s)),
    skippable: false,
  };
}

function frame(s: Standing): Prompt {
  const [plan, memory, here] = [planOf(s), memoryOf(s), placeIdOf(s)];
  const { passed } = route(plan, memory);
  const verdicts = verdictsOf(plan, passed, memory);
  return {
    job: s.job,
    seq: memory.since,
    last: memory.last,
    place: here,
    kind: 'step',
    class: plan.places.get(here)?.class ?? 'eyes',
    title: '',
    body: [],
    callouts: [],
    notices: noticesOf(plan, memory, passed, plan.places.get(here)?.cabinet),
    parts: [],
    recalls: [],
    line: null,
    skippable: false,
    why: null,
    sources: [],
    progress: {
      answered: Object.keys(memory.facts).length,
      label: plan.places.get(here)?.title ?? plan.manual.title,
    },
    isolation: strip(s),
    holder: null,
    amends: null,
    verdicts,
    pictures: verdictPictures(verdicts),
    question: memory.question,
  };
}

export function question(
  base: Prompt,
  place: Place,
  step: AskStep,
  memory: Memory,
  fresh: boolean,
): Partial<Prompt> & Pick<Prompt, 'parts'> {
  const answer = fresh ? {} : (memory.facts[place.id]?.body.parts ?? {});
  const filled = fresh ? (memory.remembered[place.id] ?? {}) : answer;
  const shown = (step.shows ?? []).flatMap((x) => shownFindings(x, place, memory));
  const parts = Object.entries(step.parts)
    .filter(([, spec]) => mayBeAsked(place, spec, memory, answer))
    .map(([key, spec]) =>
      toPart(
        key,
        asAsked(place, key, spec, memory),
        fresh && isRenewed(place, spec, memory) ? undefined : (filled[key] ?? rememberedByJob(place, spec, memory)),
      ),
    );
  const asked = parts.map(({ key }) => key);
  return {
    kind: 'step',
    title: step.say,
    // A line of a list is picked by its number.
    body: [...(step.body ?? []), ...shown.map((f) => (/^\d+$/.test(f.name) ? `${f.name}. ${f.text}` : f.text))],
    callouts: [...(step.callouts ?? [])],
    pictures: [...base.pictures, ...questionPictures(step.picture, asked, shown)],
    ...holdOf(shown),
    parts,
    line: lineOf(parts),
    recalls: recalled(place, step, memory),
    skippable: place.gate ? place.cant !== null : skipTarget(place) !== null,
    why: step.why ?? null,
    sources: [...(step.source ?? [])],
  };
}

/** The discharge that is shown in figures is the one that is held. */
function holdOf(shown: readonly Finding[]): Pick<Prompt, 'holdSeconds'> {
  const held = shown.find(({ figures }) => figures?.kind === 'decay')?.figures;
  return held?.kind === 'decay' ? { holdSeconds: held.holdSeconds } : {};
}

/** A part that hangs on another part of the same question is shown, marked optional, and read only where it is due. */
function mayBeAsked(place: Place, spec: PartSpec, memory: Memory, answer: Parts): boolean {
  if (spec.when && 'part' in spec.when && !('fact' in spec.when)) return true;
  return isAsked(place, spec, memory, answer);
}
const rememberedByJob = (place: Place, spec: PartSpec, memory: Memory): Value | undefined =>
  spec.as === undefined || spec.anew
    ? undefined
    : (memory.job[jobName(spec.as, place)]?.value ?? memory.equipment?.facts[jobName(spec.as, place)]);
/** What was read of a part that has come out since says nothing of the one that is in. */
const isRenewed = (place: Place, { as }: PartSpec, memory: Memory): boolean => {
  if (as === undefined) return false;
  const name = jobName(as, place);
  return memory.job[name] === undefined && Object.values(memory.fitted).some((then) => then[name] !== undefined);
};

/** One part of a question as data. `was` fills the chips. */
export function toPart(key: string, spec: PartSpec, was?: Value): Part {
  const hanging = spec.when !== undefined && 'part' in spec.when && !('fact' in spec.when);
  const common = { key, ask: spec.ask, optional: (spec.optional ?? false) || hanging };
  switch (spec.part) {
    case 'field': {
      const row = QUANTITIES[spec.quantity];
      const range = { from: row.from, to: row.to };
      if (!spec.signed && range.from.startsWith('-')) range.from = '0';
      const remembered = was?.kind === 'figure' ? was.value : was?.kind === 'over' ? 'OL' : null;
      return {
        kind: 'field',
        ...common,
        unit: row.unit,
        words: [...(spec.words ?? [])],
        over: spec.over,
        unitNeeded: spec.unitNeeded,
        remembered,
        ...range,
      };
    }
    case 'choose':
      return {
        kind: 'choose',
        ...common,
        several: spec.several,
        options: optionsOf(spec.options),
        remembered: was?.kind === 'choice' ? [...was.chosen] : [],
      };
    case 'confirm':
    case 'act':
      return { kind: spec.part, ...common, options: optionsOf(spec.options ?? {}) };
    case 'label':
      return { kind: 'label', ...common, remembered: was?.kind === 'label' ? labelWords(was.label) : null };
    case 'photo':
      return { kind: 'photo', ...common };
    case 'note':
      return { kind: 'note', ...common, ...(spec.finds ? { finds: spec.finds } : {}) };
  }
}
/** A page's options are the same at every turn: made once, and handed out as they are. */
const madeOptions = new WeakMap<object, Option[]>();
function optionsOf(of: Readonly<Record<string, OptionSpec>>): Option[] {
  const known = madeOptions.get(of);
  if (known) return known;
  const made = Object.entries(of).map(([id, o]) => ({ id, label: o.label, words: [...(o.words ?? [])] }));
  madeOptions.set(of, made);
  return made;
}

export function labelWords(label: {
  herm: string;
  fan: string | null;
  below: string;
  above: string;
  volts: string | null;
}): string {
  const values = label.fan === null ? label.herm : `${label.herm}+${label.fan}`;
  const tolerance = label.below === label.above ? `±${label.above}` : `−${label.below}/+${label.above}`;
  return `${values}\u2009µF ${tolerance}\u2009%${label.volts === null ? '' : ` ${label.volts}\u2009VAC`}`;
}

/** How the parts may be typed in one line. */
function lineOf(parts: readonly Part[]): string | null {
  const fields = parts.filter((p) => p.kind === 'field');
  if (fields.length < 2) return null;
  return fields.map(({ key, optional }) => (optional ? `(${sayKey(key)})` : sayKey(key))).join(' ');
}

const holderFor = (place: Place, memory: Memory): string | null =>
  place.gate || place.class !== 'eyes' ? (memory.isolations[place.cabinet]?.holder ?? null) : null;

const VOIDS: Readonly<Record<string, string>> = {
  'void:age': 'The isolation is too old. Confirm your lock and prove it again; findings are kept.',
  'void:power-back': 'Power came back, so the isolation has ended. Begin again at the lock.',
  'void:lock-off': 'A lock came off, so the isolation has ended. Begin again at the lock.',
  'void:line-voltage': 'Line voltage was seen, so the isolation has ended. Begin again at the lock.',
  'void:offline': 'You answered without contact, so the isolation has ended. Findings are kept and marked.',
  'void:emergency': 'The emergency ended the isolation.',
  'void:hand-over': 'The hand-over ended the isolation.',
  'void:live': 'Live work ends the isolation. The next dead test begins at the lock.',
  'again:rest': 'Power was on since it rested, or may have been: it rests anew before hands go in.',
  'again:sitting': 'What was agreed for live work has ended with it: agree on it anew.',
  'void:sections': 'The print shows two sections, and one was discharged. Look again, and discharge both.',
  'void:unit': 'What was said of the unit changes which readings prove it dead. Take the line again.',
  'void:amended': 'A gate was changed, so what followed it is asked again.',
  amended: 'Changed. Later answers that still fit are kept, the others are set aside.',
  withdrawn: 'Taken back. What rested on it is asked again.',
};

/** Why make-dead was left, in the words of the page that was left: the one at hand comes first. */
function leavingOf(plan: Plan, cabinet: string | undefined, exit: string): string | undefined {
  const regions = Object.entries(plan.regions).sort(([a], [b]) => Number(b === cabinet) - Number(a === cabinet));
  return regions.flatMap(([, { rules }]) => rules.leaving[exit]?.notice ?? [])[0];
}

function noticesOf(plan: Plan, memory: Memory, passed: readonly Place[], cabinet: string | undefined): Notice[] {
  // Once the isolation has ended, or the job is held, it no longer matters how the last line was to be taken again.
  const over = memory.notices.some((code) => code.startsWith('void:') && code !== 'void:amended');
  const held = spentTries(plan, memory) !== null;
  const notices: Notice[] = memory.notices.flatMap((code) => {
    if (code.startsWith('leaving:') && (over || held)) return [];
    const leaving = code.startsWith('leaving:') ? leavingOf(plan, cabinet, code.slice(8)) : undefined;
    const text = leaving ?? VOIDS[code];
    return text === undefined ? [] : [{ code, text }];
  });
  if (memory.explained.length > 0 && !over) notices.push({ code: 'line', text: memory.explained.join(' ') });
  return [...notices, ...judgedSince(passed, memory)];
}

/** What was computed between the last answer and this question. */
function judgedSince(passed: readonly Place[], memory: Memory): Notice[] {
  // What is known for the whole job was not asked here, so it hides nothing.
  const lastAsked = passed.findLastIndex((p) => memory.facts[p.id] !== undefined || p.step.verb === 'verdict');
  return passed.slice(lastAsked + 1).flatMap((place) => {
    if (place.step.verb !== 'judge') return [];
    const { outcome, findings } = judged(place, memory);
    if (place.step.quiet?.includes(outcome)) return [];
    const says = place.step.says?.[outcome];
    const texts = [...findings.map((f) => f.text), ...(says === undefined ? [] : [says])];
    return texts.length === 0 ? [] : [{ code: `judged:${outcome}`, text: texts.join(' ') }];
  });
}

function verdictsOf(plan: Plan, passed: readonly Place[], memory: Memory): Conclusion[] {
  return passed.flatMap((p) => (p.step.verb === 'verdict' ? [conclude(plan, p, memory, passed)] : []));
}

const WORDS: Readonly<Record<IsolationLine['state'], string>> = {
  'not-proved': 'ENERGIZED OR NOT PROVED',
  'being-proved': 'BEING PROVED',
  proved: 'PROVED DEAD',
  'control-live': 'CONTROL LIVE',
};
/** The isolation strip of a standing as it is at its time: `asOf` comes first. */
export function strip(s: Standing): IsolationLine[] {
  const [plan, memory, here] = [planOf(s), memoryOf(s), placeIdOf(s)];
  return cabinetsInView(plan, memory, here).map((c) => isolationLine(plan, memory, here, c));
}
/** The cabinet at hand, and every other one on which somebody has begun; the first one where the job stands at none. */
function cabinetsInView(plan: Plan, memory: Memory, here: string): string[] {
  const all = Object.keys(plan.regions);
  const at = plan.places.get(here)?.cabinet;
  const seen = all.filter((c) => c === at || isBegun(plan, memory, c, 'holder'));
  return seen.length > 0 ? seen : all.slice(0, 1);
}
function isolationLine(plan: Plan, memory: Memory, here: string, cabinet: string): IsolationLine {
  const isolation = memory.isolations[cabinet];
  const prompts = ((plan.regions[cabinet]?.rules.prompts ?? []) as readonly string[]).map(
    (p) => `dead:${cabinet}/${p}`,
  );
  const done = prompts.filter((p) => memory.facts[p] !== undefined).length;
  const at = plan.places.get(here);
  const halted = here === '!emergency' || here === '!taking-over';
  const proved = isolation?.proved != null && !halted;
  const state = proved
    ? at?.class === 'control live' && at.cabinet === cabinet
      ? 'control-live'
      : 'proved'
    : !halted && done > 0 && (at?.gate === true || isBegun(plan, memory, cabinet))
      ? 'being-proved'
      : 'not-proved';
  return {
    cabinet: plan.manual.cabinets[cabinet] ?? cabinet,
    state,
    holder: isolation?.holder ?? null,
    since: isolation?.proved?.at ?? null,
    until: isBegun(plan, memory, cabinet) ? deadlineOf(plan, memory, cabinet) : null,
    done,
    of: prompts.length,
    words: state === 'being-proved' ? `${WORDS[state]} (${done} of ${prompts.length})` : WORDS[state],
  };
}

function finished(base: Prompt, plan: Plan, memory: Memory, here: string): Prompt {
  const ending = plan.manual.endings[here.slice(1)] ?? { title: here, says: '' };
  return {
    ...base,
    kind: memory.signed ? 'signed' : 'finished',
    title: memory.signed ? 'Signed' : ending.title,
    body: memory.signed ? ['A senior has signed this record.'] : [ending.says],
    pictures: [...base.pictures, wayPicture(wayTo(plan, memory, ending.title))],
  };
}

/** What was asked and found on the way to the end, page by page. */
function wayTo(plan: Plan, memory: Memory, title: string): Path {
  const passed = route(plan, memory).passed.flatMap(({ step, title: page }) =>
    'parts' in step ? [{ page, title: step.say }] : step.verb === 'verdict' ? [{ page, title: step.title }] : [],
  );
  return { kind: 'path', passed, here: { page: plan.manual.title, title } };
}
