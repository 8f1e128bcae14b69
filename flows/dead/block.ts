import { choose, flow, found, include, judge, measure, ohms, probes, verdict } from '../../engine/vocabulary.ts';
import { anotherCapacitor } from '../capacitor/another.ts';
import { runCapacitor } from '../capacitor/run-capacitor.ts';
import { OPEN_QUESTIONS, REPLACED } from '../capacitor/verdicts.ts';
import { COIL_PRINTS, contactorAgain } from '../control/contactor-again.ts';
import { DEAD_BLOCK } from '../examples/block.ts';
import { LIMITS } from '../limits.ts';
import { motors } from '../motors/motors.ts';
import { START_GEAR } from '../refrigeration/start-gear.ts';
import { BOXED, byKind, THREE_PHASE } from '../unit.ts';

/** Verdicts of the fan motor that end in another motor. */
const BY_THE_BLOCK = ['fan-bearings', 'fan-winding-open'] as const;
export const MOTOR = [...BY_THE_BLOCK, 'fan-to-frame'] as const;
export const CONTACTOR = [
  'contactor-coil-open',
  'contactor-coil-shorted',
  'contactor-contacts',
  'contactor-jammed',
  'contactor-welded',
] as const;
/** What a second part, or a part of no known kind, was left as: nothing is started on it. */
const NOT_TOLD = [
  'second-capacitor-undecided',
  'capacitors-not-told',
  'start-relay-undecided',
  'contactor-undecided',
] as const;
/** What a senior settles before anything is started. */
const QUESTION = [
  ...OPEN_QUESTIONS,
  'fan-section-undecided',
  'fan-blade-rubs',
  'electronic-fan-stiff',
  ...NOT_TOLD,
] as const;
/** A protector outside the shell, open on a shell that is not cold: no part is at fault. */
export const HAS_TO_COOL = ['external-overload-has-to-cool'] as const;
/** A protector outside the shell. */
export const OUTSIDE = ['external-overload-open'] as const;
/** Parts that the block condemns. */
export const FAULTY = [...REPLACED, ...BY_THE_BLOCK, ...CONTACTOR, ...START_GEAR, ...OUTSIDE] as const;

/** All dead tests of an outdoor unit in one isolation, finished even when the first fault is found. */
export const deadBlock = flow({
  id: 'dead-block',
  version: 1,
  title: 'Dead tests',
  exits: ['repair', 'clean', 'under-load', 'ground', 'cause', 'terminals', 'raised'],
  examples: DEAD_BLOCK,
  steps: {
    line: measure({
      say: 'Fuses, contactor, loads to ground: one line of ohms.',
      body: [
        'Fuses out of their holder. No fuses: leave them out.',
        'Contactor: each contact with the armature pressed in; its coil with one coil wire off.',
        'Load side to ground, all loads at once: T1, T2, and T3 where it is three-phase. OL is usual. Type ol for over range.',
        'The block is finished even when something is found: a second fault is usual.',
      ],
      why: 'A blown fuse, a dead coil or a ground explains the call before any part is condemned.',
      source: ['Fuse under 0.5 Ω, contact at most 1 Ω, 24 V coil 8 to 20 Ω: common practice, no single source'],
      picture: probes(
        'Ω',
        ['Fuse, one end', 'Fuse, other end', 'under 0.5 Ω'],
        ['L1', 'T1, pressed in', '1 Ω or less'],
        ['Coil, wire off', 'Coil, other end', '8 to 20 Ω on 24 V'],
        ['T1', 'bare ground', 'OL: none found at meter volts'],
      ),
      circuit: 'part',
      fields: {
        fuse1: ohms('First fuse', { optional: true, words: ['fuses', 'fuse'] }),
        fuse2: ohms('Second fuse', { optional: true, words: ['fuses', 'fuse'] }),
        fuse3: ohms('Third fuse', { optional: true, words: ['fuses', 'fuse'], when: THREE_PHASE }),
        pole1: ohms('First contact, pressed in', { words: ['contacts', 'contact', 'poles', 'points'] }),
        pole2: ohms('Second contact, pressed in', {
          optional: true,
          words: ['contacts', 'contact', 'poles', 'points'],
        }),
        pole3: ohms('Third contact, pressed in', {
          optional: true,
          words: ['contacts', 'contact', 'poles', 'points'],
          when: THREE_PHASE,
        }),
        coil: ohms('Contactor coil', { optional: true }),
        t1g: ohms('T1 to ground', { words: ['t1-g', 't1 g', 't1', 'grounds', 'to ground', 'gnd'] }),
        t2g: ohms('T2 to ground', { optional: true, words: ['t2-g', 't2 g', 't2', 'grounds', 'to ground', 'gnd'] }),
        t3g: ohms('T3 to ground', {
          optional: true,
          words: ['t3-g', 't3 g', 't3', 'grounds', 'to ground'],
          when: THREE_PHASE,
        }),
        overload: ohms('External overload', { optional: true, words: ['overload', 'ol cold'], when: BOXED }),
      },
      cant: 'line-not-taken',
      next: 'fuses',
    }),
    'line-not-taken': verdict({
      verdict: 'fuses-contactor-ground-not-taken',
      title: 'Fuses, contactor and ground were not measured',
      says: ['What follows is weaker for it. A ground may show only at restart.'],
      next: ['Go on with the capacitor.'],
      who: 'junior',
      judged: [],
      evidence: ['line'],
      then: 'any',
    }),
    fuses: judge('fuses', {
      of: { readings: 'line' },
      limits: LIMITS.fuses,
      quiet: ['good', 'undecided'],
      then: { good: 'contactor', blown: 'fuse-blown', between: 'contactor', undecided: 'contactor' },
    }),
    'fuse-blown': verdict({
      verdict: 'fuse-blown',
      title: 'A fuse is blown: its cause comes first',
      says: ['A fuse opens because of something behind it.'],
      next: [
        'No new fuse before the cause is found.',
        'Its size is at most the MOP on the nameplate.',
        'Finish the dead tests.',
      ],
      who: 'junior',
      judged: ['fuses'],
      evidence: ['line'],
      then: 'contactor',
    }),
    contactor: judge('contactor', {
      of: { readings: 'line', first: null, released: null, rated: null },
      limits: LIMITS.contactor,
      quiet: ['good', 'undecided'],
      then: {
        good: 'ground',
        'coil-open': 'contactor-again',
        'coil-shorted': 'contactor-again',
        contacts: 'contactor-again',
        welded: 'contactor-again',
        between: 'contactor-again',
        undecided: 'ground',
      },
    }),
    'contactor-again': contactorAgain('contactor-twice', 'contactor-open', COIL_PRINTS),
    'contactor-twice': judge('contactor', {
      of: { readings: 'contactor-again', first: 'line', released: null, rated: 'contactor-again' },
      limits: LIMITS.contactor,
      then: {
        good: 'ground',
        'coil-open': 'coil-open',
        'coil-shorted': 'coil-shorted',
        contacts: 'contacts',
        welded: 'contacts',
        between: 'contactor-open',
        // Good contacts, and a coil for other volts than the band is for: it is not judged by ohms.
        undecided: 'ground',
      },
    }),
    'contactor-open': verdict({
      verdict: 'contactor-undecided',
      title: 'The contactor is undecided: nothing is started on it',
      says: ['It read wrong once, and the second reading is missing or lies between good and bad.'],
      next: [
        'Its coil’s print beside its ohms, both wires off, would decide it. A senior sees this call.',
        'Finish the dead tests.',
      ],
      who: 'senior',
      judged: ['contactor', 'contactor-twice'],
      evidence: ['line', 'contactor-again'],
      raises: 'verdict',
      then: 'ground',
    }),
    'coil-open': verdict({
      verdict: 'contactor-coil-open',
      title: 'The contactor’s coil is open: replace the contactor',
      says: ['OL across the coil, twice: one wire off, then both.'],
      next: [
        'Same coil volts, poles and amps.',
        'Finish the dead tests.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['contactor', 'contactor-twice'],
      evidence: ['line', 'contactor-again'],
      then: 'ground',
    }),
    'coil-shorted': verdict({
      verdict: 'contactor-coil-shorted',
      title: 'The contactor’s coil is shorted: replace the contactor',
      says: [
        'Below 4 Ω, twice, its wires off. A 24 V coil reads 8 to 20 Ω, a coil of more volts far more. It blows its fuse.',
      ],
      next: [
        'Same coil volts, poles and amps.',
        'Check the fuse that feeds it: on 24 V the low-voltage fuse.',
        'Finish the dead tests.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['contactor', 'contactor-twice'],
      evidence: ['line', 'contactor-again'],
      then: 'ground',
    }),
    contacts: verdict({
      verdict: 'contactor-contacts',
      title: 'The contactor’s contacts are done: replace the contactor',
      says: ['More than 1 Ω with the armature pressed in, twice. Pitting alone would condemn nothing.'],
      next: [
        'Are the terminals tight?',
        'Same coil volts, poles and amps.',
        'Finish the dead tests.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['contactor', 'contactor-twice'],
      evidence: ['line', 'contactor-again'],
      then: 'ground',
    }),
    ground: judge('loads-to-ground', {
      of: { readings: 'line', plate: null },
      limits: LIMITS.loadsToGround,
      quiet: ['none-found'],
      then: { 'none-found': 'outside', low: 'low', undecided: 'outside' },
    }),
    low: verdict({
      verdict: 'low-to-ground',
      title: 'Something behind the contactor reads low to ground',
      says: ['All loads at once: which of them is not known yet. The wire comes before the motor.'],
      next: ['Finish the dead tests. Then the branches are read apart.', 'Nothing is energised until it is found.'],
      who: 'junior',
      judged: ['ground'],
      evidence: ['line'],
      then: 'outside',
    }),
    outside: judge('closed-ohms', {
      of: { readings: 'line' },
      limits: LIMITS.closedOhms,
      quiet: ['closed', 'undecided'],
      then: { closed: 'any', open: 'shell', between: 'any', undecided: 'any' },
    }),
    shell: choose({
      say: 'The external overload reads OL. Is the compressor’s shell hot or cold?',
      body: ['The back of the hand near it, no touch. Hot is clearly above the air around it.'],
      why: 'It opens on heat and closes again when it cools. Open on a hot shell it did its work.',
      options: {
        hot: { label: 'Hot', words: ['warm', 'real hot', 'very hot', 'burning hot', 'caliente'], to: 'overload-hot' },
        cold: {
          label: 'Cold',
          words: ['cool', 'ambient', 'room temp', 'room temperature', 'not hot', 'frio'],
          to: 'overload-outside',
        },
        unsure: {
          label: 'Not sure',
          words: ['not sure', 'cant tell', 'cant reach it', 'dont know'],
          to: 'overload-hot',
        },
      },
    }),
    'overload-hot': verdict({
      verdict: 'external-overload-has-to-cool',
      title: 'The external overload is open, and not on a cold shell: it has to cool',
      says: ['It opens on heat and closes again. Open on a shell that is not cold, it is not condemned.'],
      next: [
        'Off until the shell is cold, then it is read again.',
        'Find why it got hot: amps, volts, dirt, fan. Finish the dead tests.',
      ],
      who: 'junior',
      judged: ['outside'],
      evidence: ['line', 'shell'],
      then: 'any',
    }),
    'overload-outside': verdict({
      verdict: 'external-overload-open',
      title: 'The external overload is open, cold: replace it',
      says: ['OL across it with its wires off and the shell cold. It stands in the compressor’s common lead.'],
      next: [
        'By its number, never by its looks.',
        'Why it opened: amps, volts, dirt. Finish the dead tests.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['outside'],
      evidence: ['line', 'shell'],
      then: 'any',
    }),
    any: judge('capacitors', {
      of: { look: '@cabinet:count', unit: '@class', drive: null },
      limits: {},
      quiet: ['none', 'unseen', 'some', 'undecided'],
      // Where one is expected, make-dead ends before any hand is inside.
      then: { none: 'motors', unseen: 'not-told', some: 'kind', undecided: 'kind' },
    }),
    kind: byKind('run', { refrigeration: 'gear', closed: 'not-told' }),
    gear: choose({
      say: 'Which capacitors does this condensing unit have?',
      body: [
        'A start part prints a range and is usually black plastic. A compressor with a current relay may have no run capacitor.',
      ],
      why: 'A unit without a run capacitor is not asked for one.',
      options: {
        both: {
          label: 'Start and run capacitor',
          words: ['start and run', 'start run', 'both', 'cscr', 'csr', '2 caps start run', 'start, run'],
          to: 'run',
        },
        start: { label: 'Start capacitor alone', words: ['start only', 'start alone', 'csir'], to: 'another' },
        run: { label: 'Run capacitor alone', words: ['run only', 'run alone', 'psc'], to: 'run' },
      },
      cant: 'not-told',
    }),
    'not-told': verdict({
      verdict: 'capacitors-not-told',
      title: 'Which capacitors this unit has is not known: none is judged',
      says: ['A start part and a run part are tested and judged differently. By guess a good one would be condemned.'],
      next: [
        'The prints, the wiring diagram, or a relay beside one of them would tell. A senior sees this call.',
        'Finish the dead tests.',
      ],
      who: 'senior',
      judged: [],
      evidence: ['gear', '@cabinet:count'],
      raises: 'verdict',
      then: 'motors',
    }),
    run: include(runCapacitor, { exits: { done: 'second' }, needs: {} }),
    second: judge('more', {
      of: { look: '@cabinet:count' },
      limits: { than: LIMITS.count.one },
      quiet: ['more', 'no-more', 'undecided'],
      then: { more: 'another', 'no-more': 'motors', undecided: 'motors' },
    }),
    another: include(anotherCapacitor, { exits: { done: 'third' }, needs: {} }),
    third: judge('more', {
      of: { look: '@cabinet:count' },
      limits: { than: LIMITS.count.two },
      quiet: ['more', 'no-more', 'undecided'],
      then: { more: 'yet-another', 'no-more': 'motors', undecided: 'motors' },
    }),
    'yet-another': include(anotherCapacitor, { exits: { done: 'motors' }, needs: {} }),
    motors: include(motors, { exits: { done: 'sort' }, needs: {} }),
    sort: found({
      among: {
        // Before any motor: the leads are in every reading at this end.
        ground: { verdicts: ['low-to-ground'], to: '!ground' },
        // It stands in the compressor's common lead, so it alone explains pairs to C that read open.
        outside: { verdicts: OUTSIDE, to: '!repair' },
        cools: { verdicts: HAS_TO_COOL, to: 'while-it-cools' },
        open: { verdicts: ['winding-open-at-harness', 'all-windings-open', 'common-lead-open'], to: '!terminals' },
        question: {
          verdicts: QUESTION,
          to: '!raised',
        },
        part: { verdicts: FAULTY, to: '!repair' },
        value: { verdicts: ['value-undecided'], to: '!under-load' },
        fuse: { verdicts: ['fuse-blown'], to: '!cause' },
      },
      none: '!clean',
    }),
    // Open on heat outside the shell: its terminals stay shut. What else was found is put right while it cools.
    'while-it-cools': found({
      among: {
        question: {
          // Nothing is read under load on an open overload.
          verdicts: [...QUESTION, 'value-undecided'],
          to: '!raised',
        },
        part: { verdicts: FAULTY, to: '!repair' },
        fuse: { verdicts: ['fuse-blown'], to: '!cause' },
      },
      none: '!clean',
    }),
  },
});
