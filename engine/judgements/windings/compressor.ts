import { judgement } from '../judgement.ts';
import { findPairs, type PairsState, pairsFinding } from './compressor-pairs.ts';
import { probeCompressor } from './compressor-probe.ts';
import { FRAME_LIMITS, frameBand, frameFinding } from './frame.ts';
import { apartFinding, OHMMETER_LIMITS, ohmsOf, openApart, told } from './look.ts';

const OUTCOMES = [
  'good',
  'ask-shell',
  'until-cool',
  'overload-open',
  'common-lead',
  'open-start',
  'open-run',
  'all-open',
  'grounded',
  'repeat',
  'undecided',
] as const;

/**
 * The windings of a single-phase compressor, Ω, wires off, from the harness ends: C–R, C–S, S–R and any of them to the
 * frame. A ground found at meter voltage wins. A sum that doesn't fit asks once for a repeat and never
 * condemns, nor do two lines that are open in different pairs.
 */
export const compressorWindings = judgement({
  id: 'compressor-windings',
  semantics: 2,
  takes: ['readings', 'earlier', 'shell'],
  limits: [...OHMMETER_LIMITS, ...FRAME_LIMITS, 'equal'],
  outcomes: OUTCOMES,
  run({ readings, earlier, shell }, limits) {
    const now = findPairs(readings, limits);
    const before = findPairs(earlier, limits);
    const frame = ohmsOf(readings, 'g');
    const band = frameBand(frame, limits);
    const temperature = told(shell).includes('hot') ? 'hot' : told(shell).includes('cold') ? 'cold' : 'unknown';
    const apart = PATTERNS[before.is] !== 'repeat' && openApart(now.three, before.three);
    const outcome = ((): (typeof OUTCOMES)[number] => {
      if (band === 'low') return 'grounded';
      if (apart) return 'undecided';
      if (now.is === 'common') {
        if (temperature === 'unknown') return shell === undefined ? 'ask-shell' : 'until-cool';
        return temperature === 'hot' ? 'overload-open' : 'common-lead';
      }
      if (now.is === 'fits') return band === 'clear' ? 'good' : 'undecided';
      const pattern = PATTERNS[now.is];
      if (pattern !== 'repeat') return pattern;
      return PATTERNS[before.is] === 'repeat' ? 'undecided' : 'repeat';
    })();
    return {
      outcome,
      findings: [
        ...(before.is === 'missing' ? [] : [pairsFinding('Windings, earlier', before, 'unknown', limits)]),
        pairsFinding('Windings', now, temperature, limits, PATTERNS[before.is] === 'repeat'),
        ...(apart ? [apartFinding] : []),
        frameFinding('Frame', frame, limits),
      ],
    };
  },
  probe: (limits) => probeCompressor(limits),
});

/** What each state leads to. `fits` and `common` need more than the pairs. */
const PATTERNS: Readonly<Record<PairsState, (typeof OUTCOMES)[number]>> = {
  missing: 'undecided',
  fits: 'good',
  common: 'ask-shell',
  start: 'open-start',
  run: 'open-run',
  all: 'all-open',
  impossible: 'repeat',
  'near-zero': 'repeat',
  equal: 'repeat',
  'other-terminals': 'repeat',
  misfit: 'repeat',
};
