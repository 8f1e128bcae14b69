import type { Finding, Parts } from '../../schema.ts';
import { judgement } from '../judgement.ts';
import { chose, over, past, read, reads, untaken } from '../probing.ts';
import { finding } from '../say.ts';
import { type CoilBand, coilBand, coilFinding, ratedVolts } from './contactor-coil.ts';
import { contactFindings, releasedFindings } from './contactor-contacts.ts';

const ONCE = { name: 'Twice', reading: '–', word: 'once' } as const;
const ANOTHER = 'Another contact than the first time reads closed. Neither is welded on one reading.';

/**
 * A contactor tested dead, one coil wire off: its contacts in Ω with the armature pressed in and, where somebody read
 * them, let go; its coil in Ω. `first` is what was read of it before, where this is the second time: only what reads bad
 * both times stands, and what reads bad once is between good and bad. The band of the coil holds for a 24 V coil only. The
 * gravest fault is the outcome, and every line is in the findings. Bands: common practice, no single source.
 */
export const contactor = judgement({
  id: 'contactor',
  semantics: 4,
  takes: ['readings', 'first', 'released', 'rated'],
  limits: ['contacts', 'welded', 'shorted', 'low', 'high', 'rated'],
  outcomes: ['good', 'coil-open', 'coil-shorted', 'contacts', 'welded', 'between', 'undecided'],
  run({ readings, first, released, rated }, limits) {
    const contacts = contactFindings(readings, limits.contacts);
    const letGo = releasedFindings(released, limits.welded);
    const volts = ratedVolts(rated);
    const coil = coilBand(readings, volts, limits);
    const findings: Finding[] = [
      ...contacts.map((c) => c.finding),
      ...letGo.map((c) => c.finding),
      coilFinding(readings, volts, limits),
    ];
    const stuck = letGo.filter((c) => c.is === 'bad');
    if (stuck.length > 0) {
      const then = releasedFindings(first, limits.welded).filter((c) => c.is === 'bad');
      if (!first || stuck.some(({ pole }) => then.some((b) => b.pole === pole))) return { outcome: 'welded', findings };
      return { outcome: 'between', findings: [...findings, finding({ ...ONCE, text: ANOTHER })] };
    }
    const byCoil = BY_COIL[coil];
    const worn = contacts.filter((c) => c.is === 'bad');
    if (first) {
      const before = contactFindings(first, limits.contacts).filter((c) => c.is === 'bad');
      if (worn.some(({ pole }) => before.some((b) => b.pole === pole))) return { outcome: 'contacts', findings };
      const bad = byCoil === 'coil-open' || byCoil === 'coil-shorted';
      if (bad && coil === coilBand(first, volts, limits)) return { outcome: byCoil, findings };
      if (bad || worn.length > 0) {
        const text =
          'It reads bad now and read good before, or the other part did. Neither is condemned on one reading.';
        return { outcome: 'between', findings: [...findings, finding({ ...ONCE, text })] };
      }
    }
    if (worn.length > 0) return { outcome: 'contacts', findings };
    if (byCoil !== 'good') return { outcome: byCoil, findings };
    return { outcome: contacts.some((c) => c.is === 'open') ? 'undecided' : 'good', findings };
  },
  probe(limits) {
    const { contacts, welded, shorted, low, high } = limits;
    const good: Parts = reads({ pole1: 0.1, pole2: contacts.value, coil: low.value }, 'Ω');
    const coil = (ohms: Parameters<typeof past>[0]): Parts => ({ ...good, coil: read(ohms, 'Ω') });
    return [
      { readings: good },
      { readings: coil(high.value) },
      { readings: coil(past(high.value, '0.001')) },
      { readings: coil(past(low.value, '-0.001')) },
      { readings: coil(shorted.value) },
      { readings: coil(past(shorted.value, '-0.001')) },
      { readings: { ...good, coil: over } },
      { readings: { ...good, pole2: read(past(contacts.value, '0.001'), 'Ω') } },
      { readings: { ...good, pole1: over } },
      { readings: { ...good, pole1: untaken } },
      { readings: good, released: { pole1: over, pole2: over } },
      { readings: good, released: { pole1: over, pole2: read(past(welded.value, '-0.001'), 'Ω') } },
      { readings: good, released: { pole1: over, pole2: read(welded.value, 'Ω') } },
      { first: { pole1: over, pole2: read(0.1, 'Ω') }, released: { pole1: over, pole2: read(0.1, 'Ω') } },
      { first: { pole1: read(0.1, 'Ω'), pole2: over }, released: { pole1: over, pole2: read(0.1, 'Ω') } },
      { readings: { ...good, coil: over }, first: { ...good, coil: over } },
      { readings: { ...good, coil: over }, first: good },
      { readings: { ...good, pole1: over }, first: { ...good, pole1: over } },
      { readings: { ...good, pole1: over }, first: { ...good, pole2: over } },
      { readings: good, first: { ...good, coil: over } },
      { readings: good, rated: { volts: chose('120') } },
      { readings: coil(past(shorted.value, '-0.001')), rated: { rated: chose('240') } },
      { readings: coil(past(shorted.value, '-0.001')), rated: { rated: chose('other') } },
      { readings: coil(shorted.value), rated: { rated: chose('240') } },
      { readings: { ...good, coil: over }, rated: { volts: read(240, 'V') } },
      {},
    ];
  },
});

const BY_COIL: Readonly<Record<CoilBand, 'good' | 'coil-open' | 'coil-shorted' | 'between' | 'undecided'>> = {
  ...{ good: 'good', open: 'coil-open', low: 'coil-shorted', between: 'between' },
  ...{ missing: 'undecided', 'other volts': 'undecided' },
};
