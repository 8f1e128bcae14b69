import type { Finding, Parts } from '../../schema.ts';
import { judgement } from '../judgement.ts';
import { chose, over, past, read, reads, untaken } from '../probing.ts';
import { type CoilBand, coilBand, coilFinding, ratedVolts } from './contactor-coil.ts';
import { contactFindings, releasedFindings } from './contactor-contacts.ts';

/**
 * A contactor tested dead, one coil wire off: its contacts in Ω with the armature pressed in and, where somebody read
 * them, let go; its coil in Ω. The band of the coil holds for a 24 V coil only. The gravest fault is the outcome, and
 * every line is in the findings. Bands: common practice, no single source.
 */
export const contactor = judgement({
  id: 'contactor',
  semantics: 1,
  takes: ['readings', 'released', 'rated'],
  limits: ['contacts', 'welded', 'shorted', 'low', 'high', 'rated'],
  outcomes: ['good', 'coil-open', 'coil-shorted', 'contacts', 'welded', 'between', 'undecided'],
  run({ readings, released, rated }, limits) {
    const contacts = contactFindings(readings, limits.contacts);
    const letGo = releasedFindings(released, limits.welded);
    const volts = ratedVolts(rated);
    const coil = coilBand(readings, volts, limits);
    const findings: Finding[] = [
      ...contacts.map((c) => c.finding),
      ...letGo.map((c) => c.finding),
      coilFinding(readings, volts, limits),
    ];
    if (letGo.some((c) => c.is === 'bad')) return { outcome: 'welded', findings };
    if (contacts.some((c) => c.is === 'bad')) return { outcome: 'contacts', findings };
    const byCoil = BY_COIL[coil];
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
      { readings: good, rated: { volts: chose('120') } },
      { readings: { ...good, coil: over }, rated: { volts: read(240, 'V') } },
      {},
    ];
  },
});

const BY_COIL: Readonly<Record<CoilBand, 'good' | 'coil-open' | 'coil-shorted' | 'between' | 'undecided'>> = {
  ...{ good: 'good', open: 'coil-open', low: 'coil-shorted', between: 'between' },
  ...{ missing: 'undecided', 'other volts': 'undecided' },
};
