/**
 * Manuals and engines that are broken on purpose. Each has to be caught by the rule that it breaks, with the conversation
 * that shows it; else the proof proves nothing.
 */
import { compile } from '../compile.ts';
import type { Draft, Entry } from '../schema.ts';
import type { AskStep, Flow, FoundStep, IncludeStep, JudgeStep, Limit, Manual, Step } from '../vocabulary.ts';
import { type Subject, sound } from './bench.ts';
import type { Rule } from './rules/rules.ts';
import { MAKE_DEAD, PAGES, type Scope } from './scope.ts';

/**
 * Pages, on calls that begin with one observation, of one kind of unit: where the breach is, and nothing else, is walked.
 * None of these breaches hangs on what the unit’s diagram asks for.
 */
const on = (calls: string, unit = 'psc'): Scope => ({
  ...PAGES,
  calls,
  plainly: (place) => (place === 'round~1/class' ? unit : place.endsWith('/asked-for') ? true : undefined),
});

const inFull = (calls: string, unit?: string): Scope => ({ ...on(calls, unit), inFull: true });

export interface Variant {
  readonly name: string;
  readonly rule: Rule;
  readonly scope: Scope;
  readonly subject: (manual: Manual, may: Subject['may']) => Subject;
}

type Change = (page: Flow) => Flow;
/** A manual with one page changed, wherever it is included. */
function withPage(manual: Manual, id: string, change: Change): Manual {
  const map = (page: Flow): Flow => {
    const steps = Object.fromEntries(
      Object.entries(page.steps).map(([k, s]) => [k, s.verb === 'include' ? { ...s, page: map(s.page) } : s]),
    );
    const inner: Flow = { ...page, steps };
    return inner.id === id ? change(inner) : inner;
  };
  return {
    ...manual,
    root: map(manual.root as Flow) as never,
    isolation: { ...manual.isolation, page: map(manual.isolation.page as Flow) },
  };
}
const step =
  (name: string, change: (s: Step) => Step): Change =>
  (page) => {
    const old = page.steps[name];
    if (!old) throw new Error(`${page.id} has no step ${name}`);
    return { ...page, steps: { ...page.steps, [name]: change(old) } };
  };
const outcome = (name: string, on: string, to: string): Change =>
  step(name, (s) => {
    const { then } = s as JudgeStep;
    if (!Object.hasOwn(then, on)) throw new Error(`${name} has no outcome ${on}`);
    return { ...(s as JudgeStep), then: { ...then, [on]: to } };
  });
const limited = (name: string, limit: string, value: string): Change =>
  step(name, (s) => {
    const { limits } = s as JudgeStep;
    return { ...(s as JudgeStep), limits: { ...limits, [limit]: { ...(limits[limit] as Limit), value } } };
  });
const found = (name: string, to: string): Change =>
  step(name, (s) => ({ ...(s as FoundStep), to: { ...(s as FoundStep).to, none: to } }));
const option = (name: string, id: string, to: string): Change =>
  step(name, (s) => ({ ...(s as AskStep), to: { ...(s as AskStep).to, [id]: to } }));

const page = (name: string, rule: Rule, scope: Scope, id: string, change: Change): Variant => ({
  name,
  rule,
  scope,
  subject: (manual, may) => sound(compile(withPage(manual, id, change)), may),
});
const isolation = (
  name: string,
  scope: Scope,
  rule: Rule,
  change: (i: Manual['isolation']) => Manual['isolation'],
): Variant => ({
  name,
  rule,
  scope,
  subject: (manual, may) => sound(compile({ ...manual, isolation: change(manual.isolation) }), may),
});
/** The fold never hears of an entry of this kind; the record has it. */
const deaf = (name: string, rule: Rule, scope: Scope, hears: (e: Entry) => boolean): Variant =>
  mangled(name, rule, scope, (e) => (hears(e) ? e : ({ ...e, kind: 'noted', body: { as: 'note' } } as Entry)));
/** The fold is told something else than the record says. */
function mangled(name: string, rule: Rule, scope: Scope, mangle: Subject['mangle']): Variant {
  return { name, rule, scope, subject: (manual, may) => ({ ...sound(compile(manual), may), mangle }) };
}
const decides = (name: string, rule: Rule, scope: Scope, change: (subject: Subject) => Subject['decide']): Variant => ({
  name,
  rule,
  scope,
  subject: (manual, may) => {
    const s = sound(compile(manual), may);
    return { ...s, decide: change(s) };
  },
});
const nothing = { drafts: [] as Draft[], texts: [], refusal: null, info: null, again: null };

export const BROKEN: readonly Variant[] = [
  page('a residual of 60 V is let through', 'R1', MAKE_DEAD, 'make-dead', limited('left', 'residual', '60')),
  page('40 V between legs counts as dead', 'R1', MAKE_DEAD, 'make-dead', limited('absence', 'dead', '49')),
  page(
    'a failed second proving counts',
    'R1',
    MAKE_DEAD,
    'make-dead',
    outcome('absence', 'second-proving', 'capacitors'),
  ),
  page('ghost volts are not bridged', 'R1', MAKE_DEAD, 'make-dead', outcome('absence', 'ghost', 'capacitors')),
  page(
    'volts that hold under the tool are let through',
    'R1',
    MAKE_DEAD,
    'make-dead',
    outcome('collapse', 'real', 'capacitors'),
  ),
  page(
    'what an insulation test left counts as gone',
    'R1',
    on('h'),
    'winding-emptied',
    outcome('left', 'charged', '!empty'),
  ),
  page('an ohmmeter energises after a trip', 'R7', on('h'), 'insulation', outcome('judged', 'none-found', '!good')),
  page(
    'one good test clears a compressor that was low in ohms',
    'R7',
    on('h'),
    'round',
    step('fused', (s) => ({ ...s, to: { ...(s as { to: object }).to, low: 'breaker' } }) as Step),
  ),
  page(
    'a part was found, so a tripped breaker is closed without the insulation test',
    'R7',
    on('h'),
    'round',
    outcome('by-trip', 'breaker', 'put-right'),
  ),
  page(
    'a fuse is put in for a part that was found, without the insulation test',
    'R7',
    inFull('h'),
    'round',
    step('cause-first', (s) => ({ ...s, to: { ...(s as { to: object }).to, fuse: 'put-right' } }) as Step),
  ),
  page(
    'probes that are placed leave the isolation standing while power is on',
    'R2',
    inFull('a'),
    'indoor-source',
    step('probes', (s) => ({ ...(s as AskStep), powers: undefined }) as unknown as Step),
  ),
  page('capacitors are not discharged', 'R1', MAKE_DEAD, 'make-dead', outcome('capacitors', 'some', '!proved')),
  page('residuals count with a flat battery', 'R1', MAKE_DEAD, 'make-dead', outcome('left', 'battery', '!proved')),
  page('no lock, no tag, on we go', 'R1', MAKE_DEAD, 'make-dead', option('locked', 'cant', 'look')),
  page(
    'the first ohms are taken as a matter of words',
    'R1',
    PAGES,
    'dead-block',
    step('line', (s) => ({ ...(s as AskStep), verb: 'form', circuit: 'none' }) as Step),
  ),
  page(
    'a coil on line volts is read as a control circuit',
    'R2',
    on('f'),
    'printed-coil',
    option('coil', 'line', '!apart'),
  ),
  page(
    'live figures are called a matter of words, and closing up leaves the isolation standing',
    'R2',
    PAGES,
    'restart',
    (restart) =>
      step(
        'closed',
        (s) => ({ ...(s as AskStep), powers: undefined }) as unknown as Step,
      )(step('figures', (s) => ({ ...(s as AskStep), circuit: 'none' }) as Step)(restart)),
  ),
  isolation('power back asks for the line alone', MAKE_DEAD, 'R3', (i) => ({
    ...i,
    reentry: { ...i.reentry, void: 'proving' },
  })),
  isolation('an isolation of five hours stands', PAGES, 'R3', (i) => ({
    ...i,
    minutes: { ...i.minutes, value: '300' },
  })),
  page('a bus that was rested stays rested when power comes back', 'R3', inFull('i'), 'bus-rests', (rests) =>
    ['off', 'rest', 'longer'].reduce(
      (page, name) => step(name, (s) => ({ ...(s as AskStep), whileOff: undefined }) as unknown as Step)(page),
      rests,
    ),
  ),
  page(
    'after a silence nobody asks for the lock',
    'R3',
    MAKE_DEAD,
    'make-dead',
    step('proving', (s) => {
      const { still: _, ...parts } = (s as AskStep).parts;
      return { ...(s as AskStep), parts } as Step;
    }),
  ),
  deaf('a hand-over keeps the old lock', 'R3', MAKE_DEAD, (e) => e.kind !== 'handed-over'),
  deaf('power back is only a note', 'R3', MAKE_DEAD, (e) => !(e.kind === 'voided' && e.body.reason === 'power-back')),
  deaf('a gate taken back still counts', 'R3', MAKE_DEAD, (e) => e.kind !== 'withdrawn'),
  deaf('one more capacitor changes nothing', 'R3', MAKE_DEAD, (e) => e.kind !== 'amended'),
  deaf('an emergency is only a note', 'R4', MAKE_DEAD, (e) => e.kind !== 'alarmed'),
  page(
    'a box with a refrigerant that nobody knows is opened',
    'R4',
    on('b', 'refrigeration'),
    'refrigeration',
    outcome('known', 'undecided', 'holds'),
  ),
  decides(
    'smoke is not heard',
    'R4',
    MAKE_DEAD,
    (s) => (at, reply, c) => (reply.kind === 'text' && /smoke/.test(reply.text) ? nothing : s.decide(at, reply, c)),
  ),
  decides(
    'stop is not taken',
    'R5',
    MAKE_DEAD,
    (s) => (at, reply, c) => (reply.kind === 'text' && reply.text === 'stop' ? nothing : s.decide(at, reply, c)),
  ),
  decides('a gate is skipped', 'R6', MAKE_DEAD, (s) => (at, reply, c) => {
    const place = at.position.place;
    if (!(reply.kind === 'text' && reply.text.startsWith('skip') && place.startsWith('dead:')))
      return s.decide(at, reply, c);
    return {
      ...nothing,
      drafts: [{ kind: 'answered', body: { place, parts: {}, skipped: { ref: 'x', hash: '0'.repeat(64) } } }],
    };
  }),
  page('a sight of rust condemns', 'R7', PAGES, 'run-capacitor', outcome('sight', 'clean', 'by-sight')),
  page(
    'what popped beside it condemns the run capacitor',
    'R7',
    on('b'),
    'run-capacitor',
    outcome('several', 'more', 'by-sight'),
  ),
  page('a leak is called on one reading', 'R7', PAGES, 'dual-capacitor-readings', outcome('shell', 'low', 'leak')),
  page('once outside condemns', 'R8', PAGES, 'dual-capacitor-readings', outcome('compare', 'repeat', 'out')),
  page(
    'HERM to FAN read for FAN condemns',
    'R8',
    PAGES,
    'dual-capacitor-readings',
    outcome('compare', 'ask-third', 'out'),
  ),
  page('good without a reading to the case', 'R8', PAGES, 'dual-capacitor-readings', outcome('shell', 'ask', 'part')),
  page(
    'near the limit is called good',
    'R8',
    PAGES,
    'dual-capacitor-readings',
    outcome('part', 'conditional-pass', 'good'),
  ),
  decides('a question takes no answer', 'R10', on('d'), (s) => (at, reply, c) => {
    const answer = reply.kind === 'answer' || (reply.kind === 'text' && reply.text.startsWith('skip'));
    return answer && at.position.place.endsWith('/restart/closed') ? nothing : s.decide(at, reply, c);
  }),
  page(
    'the page tells to jumper a switch',
    'R12',
    PAGES,
    'round',
    step('class', (s) => ({ ...(s as AskStep), body: ['Jumper the pressure switch to see whether it runs.'] }) as Step),
  ),
  page('an inverter reaches the capacitor', 'R13', MAKE_DEAD, 'round', option('class', 'inverter', 'block')),
  page('not sure reaches the capacitor', 'R13', MAKE_DEAD, 'round', option('class', 'unsure', 'block')),
  page(
    'the indoor unit is worked on under the outdoor unit’s lock',
    'R13',
    PAGES,
    'round',
    step('blower', (s) => ({ ...(s as IncludeStep), cabinet: 'outdoor' }) as Step),
  ),
  page('an electronic blower reaches the discharge tool', 'R13', PAGES, 'blower', option('drive', 'unsure', 'tests')),
  page('one pair of a dual part is enough', 'R1', MAKE_DEAD, 'make-dead', (makeDead) => {
    const onePair = step('residual', (s) => {
      const { fc: _fc, hf: _hf, ...parts } = (s as AskStep).parts;
      return { ...(s as AskStep), parts };
    });
    return outcome('left', 'undecided', '!proved')(onePair(makeDead));
  }),
  mangled('a print of two sections found later changes nothing', 'R1', PAGES, (e) => {
    if (e.kind !== 'answered' || e.body.place.startsWith('dead:')) return e;
    const { print: _, ...parts } = e.body.parts;
    return { ...e, body: { ...e.body, parts } };
  }),
  page('two lines of three are enough', 'R1', MAKE_DEAD, 'make-dead', outcome('absence', 'lines', 'capacitors')),
  page(
    'the 24 V circuit is read with the line on',
    'R1',
    PAGES,
    'chatter',
    step('pull-24', (s) => ({ ...(s as AskStep), verb: 'form', circuit: 'none' }) as Step),
  ),
  page(
    'an inverter is opened without its bus',
    'R13',
    PAGES,
    'round',
    step('inverter', (s) => ({ ...(s as IncludeStep), cabinet: 'indoor' }) as Step),
  ),
  page(
    'pressures are read by anybody',
    'R9',
    on('e'),
    'circuit',
    step('readings', (s) => ({ ...(s as AskStep), circuit: 'none' }) as Step),
  ),
  page('0 V decides within five minutes', 'R7', on('a'), 'control', outcome('elapsed', 'wait', 'not-there')),
  page('a switch is called open within five minutes', 'R7', on('a'), 'control', outcome('timed', 'wait', 'across-24')),
  page(
    'a cable is condemned without a reading outdoors',
    'R7',
    inFull('a'),
    'indoor-source',
    found('leaves', 'cable-drive'),
  ),
  page(
    'a call at the board is missed within five minutes',
    'R7',
    inFull('i'),
    'indoor-source',
    outcome('elapsed', 'wait', 'path'),
  ),
  page(
    'a high-pressure switch is laid to a good fan',
    'R7',
    on('a'),
    'round',
    step('not-the-fan', (s) => ({ ...(s as FoundStep), to: { ...(s as FoundStep).to, fan: 'clean' } }) as Step),
  ),
  page(
    'a transformer is condemned without its primary',
    'R7',
    on('a'),
    'indoor-source',
    outcome('fed', 'undecided', 'transformer-open'),
  ),
  page(
    'Y comes off the indoor board under the outdoor unit’s lock',
    'R1',
    on('m'),
    'runs-on',
    step('source', (s) => ({ ...(s as IncludeStep), cabinet: 'outdoor' }) as Step),
  ),
  page('an open wire condemns the pressure switch', 'R7', on('a'), 'control', outcome('open', 'wire', 'high-pressure')),
  page(
    'a wire is condemned behind a switch half open',
    'R7',
    on('a'),
    'control',
    outcome('open', 'contradicts', 'wire'),
  ),
  page('what draws more than its MCC is proven', 'R7', on('d'), 'restart', outcome('judged', 'above-mcc', 'outcome')),
  page('a compressor that draws next to nothing is proven', 'R7', on('d'), 'restart', (restart) =>
    limited('judged', 'standing', '0')(limited('judged', 'few', '0')(restart)),
  ),
  page('a pole that is not closed condemns a contactor', 'R7', on('d'), 'restart', outcome('drop', 'open', 'pole')),
  page('a contactor is out within five minutes', 'R7', on('d'), 'restart', outcome('since-closed', 'wait', 'not-in')),
  page('a fan motor is condemned without volts', 'R7', on('c'), 'still-after', outcome('fed', 'none', 'cleared')),
  page('seized on sagging volts', 'R7', on('d'), 'still-after', outcome('held', 'between', 'dead-good')),
  page('seized without amps', 'R7', on('d'), 'still-after', outcome('drew', 'not-running', 'evened')),
  page('bearings by a blade that rubs', 'R7', on('b'), 'motors', option('spin', 'no', 'bearings')),
  page('a motor is grounded by its leads', 'R7', on('d'), 'ground', outcome('past', 'none-found', 'whose')),
  page(
    'a coil is condemned on one reading',
    'R7',
    on('a'),
    'contactor-dead',
    outcome('judged', 'coil-open', 'coil-open'),
  ),
  page(
    'a contactor is condemned on one reading among the dead tests',
    'R7',
    on('d'),
    'dead-block',
    outcome('contactor', 'contacts', 'contacts'),
  ),
  page('line volts on a 24 V circuit are hopped on', 'R7', on('a'), 'control', outcome('own', 'foreign', 'hop')),
  page(
    'the indoor board is read by probes that nobody placed dead',
    'R7',
    on('a'),
    'indoor-source',
    option('board-drive', 'psc', 'call'),
  ),
  page(
    'terminals are condemned on one reading',
    'R7',
    on('b'),
    'compressor-terminals',
    outcome('judged', 'all-open', 'open'),
  ),
  page(
    'a thermostat is blamed beside a float that nobody read',
    'R7',
    on('a'),
    'indoor-source',
    outcome('path', 'ask-float', 'thermostat'),
  ),
  page('half the volts condemn a fan motor', 'R7', on('c'), 'still-after', outcome('fed', 'between', 'cleared')),
  page(
    'an electronic fan is condemned on volts',
    'R7',
    on('b', 'ecm'),
    'still-after',
    outcome('fan-kind', 'ecm', 'feed'),
  ),
  page(
    'a hot shell condemns the overload outside it',
    'R7',
    on('d', 'refrigeration'),
    'dead-block',
    step('shell', (s) => ({ ...(s as AskStep), to: { ...(s as AskStep).to, hot: 'overload-outside' } }) as Step),
  ),
  page('none seen where one is needed counts as none', 'R1', MAKE_DEAD, 'make-dead', (makeDead) =>
    outcome('seen', 'unseen', 'proving')(outcome('capacitors', 'unseen', '!proved')(makeDead)),
  ),
  page(
    'the terminals are read hot',
    'R7',
    on('d', 'three-phase'),
    'compressor-terminals',
    option('shell', 'hot', 'pairs'),
  ),
  page(
    'terminals open in different pairs condemn the compressor',
    'R7',
    on('b'),
    'compressor-terminals',
    outcome('twice', 'undecided', 'open'),
  ),
  page(
    'an electronic blower is condemned on volts that its plate may not ask for',
    'R7',
    on('i'),
    'blower-live',
    outcome('plugged', 'undecided', 'tap'),
  ),
  page(
    'a pressure switch is reset on a condenser that stays dirty',
    'R7',
    on('d', 'refrigeration'),
    'refrigeration',
    step('wash', (s) => ({ ...(s as AskStep), to: { ...(s as AskStep).to, no: 'head-high' } }) as Step),
  ),
];
