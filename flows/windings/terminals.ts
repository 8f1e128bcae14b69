import { act, choose, flow, judge, measure, ohms, verdict } from '../../engine/vocabulary.ts';
import { TERMINALS } from '../examples/three.ts';
import { LIMITS } from '../limits.ts';
import { byKind } from '../unit.ts';
import { COMPRESSOR_LEADS, COMPRESSOR_PAIRS } from './compressor.ts';
import { THREE_LEADS, THREE_PAIRS } from './three.ts';

/** Verdicts at the terminals after which there is something to prove at a restart. */
export const TERMINALS_SETTLED = ['compressor-plug-or-lead'] as const;

const OUT_OF_LINE = {
  level: 'danger',
  text: 'Face and hands out of line with the terminals. The cover goes back before power.',
} as const;

const PAIRS_AND_GROUND = {
  ...COMPRESSOR_PAIRS,
  g: ohms('To ground, the lowest', { words: ['ground', 'grounds', 'gnd', 'to ground', 'shell'] }),
} as const;
const AGAIN = ['Leads together first: near 0 Ω. Probes on bare pins. Type ol for over range.'];
const ONCE = 'A lead that is not whole, or a probe on lacquer, reads open too. One reading condemns no compressor.';

/** The harness read open: plug and terminals, with a senior's word, cold, locked, face out of line. */
export const compressorTerminals = flow({
  id: 'compressor-terminals',
  version: 1,
  title: 'Compressor terminals',
  exits: ['settled', 'left', 'raised'],
  examples: TERMINALS,
  steps: {
    agreed: choose({
      say: 'The terminal cover comes off only with a senior’s word. Did a senior agree, on the phone or here?',
      body: ['Power locked, shell not hot, nobody in line with the terminals, eyes and face covered.'],
      callouts: [
        {
          level: 'danger',
          text: 'A hermetic terminal can vent oil and gas that burns. Never energise it with that cover off.',
        },
      ],
      why: 'At the harness an open winding and an open wire read the same.',
      options: {
        agreed: { label: 'A senior agreed', words: ['agreed', 'senior agreed', 'senior ok', 'yes'], to: 'shell' },
        none: { label: 'Nobody reached, or no', words: ['nobody', 'no', 'no senior'], to: 'waits' },
      },
      cant: 'waits',
      whileOff: 'until-read',
    }),
    shell: choose({
      say: 'How hot is the shell, and for how long has it been off?',
      why: 'An overload opens on a hot motor and closes again after hours.',
      source: ['Four hours and within 10 °F of the air: common practice, no single source'],
      options: {
        hot: { label: 'Hot', words: ['hot', 'warm'], to: 'hot' },
        cold: {
          label: 'Within 10 °F of the air, off for four hours or more',
          words: ['cold', 'cool', 'ambient', 'cold 4 hours'],
          to: 'lines',
        },
        cooling: {
          label: 'Not hot, off for less than four hours',
          words: ['cooling', 'less than 4 hours', 'not hot'],
          to: 'hot',
        },
        unsure: { label: 'Not sure', words: ['not sure', 'cant tell', 'dont know'], to: 'hot' },
      },
      whileOff: 'until-read',
    }),
    hot: verdict({
      verdict: 'compressor-has-to-cool',
      title: 'Not before it is cold: come back',
      says: ['Open on a shell that is not cold is an overload until shown otherwise.'],
      next: [
        'Off for four hours, shell within 10 °F of the air, then the terminals.',
        'Tell the customer when somebody comes back.',
      ],
      who: 'junior',
      judged: [],
      evidence: ['shell'],
      then: '!left',
    }),
    // Three lines have no start and no run: their pairs are equal.
    lines: byKind('pairs', { 'three-phase': 'three' }),
    three: measure({
      say: 'At the compressor’s own terminals, plug off: its three pairs, then any of them to ground.',
      body: ['In any order: three equal pairs are right. Face out of line. Type ol for over range.'],
      callouts: [OUT_OF_LINE],
      why: 'Here a winding that is open is open.',
      picture: THREE_LEADS,
      circuit: 'part',
      fields: THREE_PAIRS,
      cant: 'waits',
      next: 'three-judged',
    }),
    'three-judged': judge('three-windings', {
      of: { readings: 'three', earlier: null, warm: null },
      limits: LIMITS.threeWindings,
      then: {
        good: 'plug',
        'ask-warm': 'three-again',
        'until-cool': 'waits',
        'protector-open': 'waits',
        open: 'three-again',
        grounded: 'grounded',
        repeat: 'waits',
        undecided: 'waits',
      },
    }),
    'three-again': measure({
      say: 'Once more, on zeroed leads: its three pairs, then any of them to ground.',
      body: AGAIN,
      callouts: [OUT_OF_LINE],
      why: ONCE,
      picture: THREE_LEADS,
      circuit: 'part',
      fields: THREE_PAIRS,
      cant: 'waits',
      next: 'three-twice',
    }),
    'three-twice': judge('three-windings', {
      of: { readings: 'three-again', earlier: 'three', warm: null },
      limits: LIMITS.threeWindings,
      then: {
        good: 'plug',
        // All three open, hours off and cold.
        'ask-warm': 'protector-failed',
        'until-cool': 'waits',
        'protector-open': 'waits',
        open: 'open',
        grounded: 'grounded',
        repeat: 'waits',
        undecided: 'waits',
      },
    }),
    'protector-failed': verdict({
      verdict: 'overload-stays-open',
      title: 'All three pairs are open on a cold shell: its overload stays open',
      says: ['Open at its own terminals, four hours off and cold. A closed overload lets all three read.'],
      next: ['A senior confirms before anybody tells the customer. Leave it locked.'],
      who: 'senior',
      judged: ['three-judged', 'three-twice'],
      evidence: ['agreed', 'shell', 'three', 'three-again'],
      raises: 'verdict',
      then: '!raised',
    }),
    pairs: measure({
      say: 'At the compressor’s own terminals, plug off: C to R, C to S, S to R, and to ground.',
      body: ['Face out of line. Type ol for over range.'],
      callouts: [OUT_OF_LINE],
      why: 'Here a winding that is open is open.',
      picture: COMPRESSOR_LEADS,
      circuit: 'part',
      fields: PAIRS_AND_GROUND,
      cant: 'waits',
      next: 'judged',
    }),
    judged: judge('compressor-windings', {
      of: { readings: 'pairs', earlier: null, shell: null },
      limits: LIMITS.compressorWindings,
      then: {
        good: 'plug',
        'ask-shell': 'pairs-again',
        'until-cool': 'waits',
        'overload-open': 'waits',
        'common-lead': 'pairs-again',
        'open-start': 'pairs-again',
        'open-run': 'pairs-again',
        'all-open': 'pairs-again',
        grounded: 'grounded',
        repeat: 'waits',
        undecided: 'waits',
      },
    }),
    'pairs-again': measure({
      say: 'Once more, on zeroed leads: C to R, C to S, S to R, and to ground.',
      body: AGAIN,
      callouts: [OUT_OF_LINE],
      why: ONCE,
      picture: COMPRESSOR_LEADS,
      circuit: 'part',
      fields: PAIRS_AND_GROUND,
      cant: 'waits',
      next: 'twice',
    }),
    twice: judge('compressor-windings', {
      of: { readings: 'pairs-again', earlier: 'pairs', shell: null },
      limits: LIMITS.compressorWindings,
      then: {
        good: 'plug',
        'ask-shell': 'overload-failed',
        'until-cool': 'waits',
        'overload-open': 'waits',
        'common-lead': 'overload-failed',
        'open-start': 'open',
        'open-run': 'open',
        'all-open': 'open',
        grounded: 'grounded',
        repeat: 'waits',
        undecided: 'waits',
      },
    }),
    plug: act('rewire', {
      say: 'The windings are whole at the terminals: the plug or a lead is open. Mend it, cover back on.',
      body: ['A burnt push-on is cut back to bright copper and crimped anew with the maker’s kit.'],
      yes: 'Plug or lead mended, cover on',
      words: ['mended', 'fixed', 'plug replaced', 'lead replaced', 'crimped'],
      cant: { label: 'Not today', words: ['not today'], to: 'waits' },
      next: 'mended',
    }),
    mended: verdict({
      verdict: 'compressor-plug-or-lead',
      title: 'The compressor’s plug or a lead was open: mended',
      says: ['Open at the harness, whole at the terminals.'],
      next: ['Not proven until the restart numbers are in.'],
      who: 'junior',
      judged: ['judged', 'twice', 'three-judged', 'three-twice'],
      evidence: ['agreed', 'pairs', 'pairs-again', 'three', 'three-again', 'plug'],
      then: '!settled',
    }),
    open: verdict({
      verdict: 'compressor-winding-open',
      title: 'A winding is open at the terminals: the compressor has failed',
      says: ['Open at its own terminals, cold, plug off, read twice on zeroed leads.'],
      next: [
        'A senior confirms before anybody tells the customer.',
        'Why it burnt: volts, a lost line, a weak capacitor. Leave it locked.',
      ],
      who: 'senior',
      judged: ['judged', 'twice', 'three-judged', 'three-twice'],
      evidence: ['agreed', 'shell', 'pairs', 'pairs-again', 'three', 'three-again'],
      raises: 'verdict',
      then: '!raised',
    }),
    'overload-failed': verdict({
      verdict: 'overload-stays-open',
      title: 'The internal overload stays open on a cold shell',
      says: ['C to R and C to S are open at the terminals while S to R reads, four hours off and cold.'],
      next: ['A senior confirms before anybody tells the customer. Leave it locked.'],
      who: 'senior',
      judged: ['judged', 'twice'],
      evidence: ['agreed', 'shell', 'pairs', 'pairs-again'],
      raises: 'verdict',
      then: '!raised',
    }),
    grounded: verdict({
      verdict: 'compressor-grounded',
      title: 'The compressor reads low to ground at its own terminals: it stays off',
      says: ['Plug off, so no wire is in the reading. Never energise it.'],
      next: ['Leave it locked and tagged.', 'A senior confirms before anybody tells the customer.'],
      who: 'senior',
      judged: ['judged', 'twice', 'three-judged', 'three-twice'],
      evidence: ['agreed', 'shell', 'pairs', 'pairs-again', 'three', 'three-again'],
      raises: 'verdict',
      then: '!raised',
    }),
    waits: verdict({
      verdict: 'terminals-wait-for-a-senior',
      title: 'The terminals wait for a senior',
      says: ['Open at the harness condemns nothing, and the terminals were not settled.'],
      next: [
        'Cover on, locked. A senior decides when.',
        'Tell the customer that it is not known yet whether it is a wire or the compressor.',
      ],
      who: 'senior',
      judged: ['judged', 'twice', 'three-judged', 'three-twice'],
      evidence: ['agreed', 'shell', 'pairs', 'pairs-again', 'three', 'three-again'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
