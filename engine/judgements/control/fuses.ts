import type { Finding } from '../../schema.ts';
import { judgement, type Limit } from '../judgement.ts';
import { over, past, read, reads, untaken } from '../probing.ts';
import { type Reading, readingOf } from '../read.ts';
import { say } from '../say.ts';
import { type Band, ohmsFinding, sayOhms } from './ohm-band.ts';

const FUSES = ['First fuse', 'Second fuse', 'Third fuse'] as const;

/**
 * Fuses out of their holder, Ω. OL is blown; under the limit is good; anything between is noted and read again. A blown
 * fuse is a symptom: why it opened is found before a new one goes in. `least`: how many there are; a further one counts
 * where somebody read it.
 */
export const fuses = judgement({
  id: 'fuses',
  semantics: 1,
  takes: ['readings'],
  limits: ['good', 'least'],
  outcomes: ['good', 'blown', 'between', 'undecided'],
  run({ readings }, { good, least }) {
    const all = FUSES.map((name, i) => ({
      name: Number(least.value) > 1 ? name : 'Fuse',
      reading: readingOf(readings, `fuse${i + 1}`, 'Ω'),
    })).filter(({ reading }, i) => i < Number(least.value) || reading.kind !== 'none');
    const bands = all.map(({ reading }) => bandOf(reading, good));
    const findings = all.map(({ name, reading }) => said(name, reading, good));
    if (bands.includes('open')) return { outcome: 'blown', findings };
    if (bands.includes('between')) return { outcome: 'between', findings };
    return { outcome: bands.includes('missing') ? 'undecided' : 'good', findings };
  },
  probe({ good }) {
    const below = past(good.value, '-0.001');
    return [
      { readings: reads({ fuse1: below, fuse2: 0 }, 'Ω') },
      { readings: reads({ fuse1: good.value, fuse2: below }, 'Ω') },
      { readings: { ...reads({ fuse1: below }, 'Ω'), fuse2: over } },
      { readings: { ...reads({ fuse1: below, fuse2: below }, 'Ω'), fuse3: over } },
      { readings: { fuse1: read(below, 'Ω'), fuse2: untaken } },
      { readings: { fuse1: over } },
      {},
    ];
  },
});

function bandOf(reading: Reading, good: Limit): Band {
  if (reading.kind !== 'figure') return reading.kind === 'over' ? 'open' : 'missing';
  return reading.value.abs().lt(good.value) ? 'good' : 'between';
}

function said(name: string, reading: Reading, good: Limit): Finding {
  const band = bandOf(reading, good);
  const shown = sayOhms(reading);
  const limit = `under ${say(good.value, 'Ω')}`;
  const text = {
    good: `${name} reads ${shown}, ${limit}.`,
    open: `${name} reads OL. It is blown. Find why before a new one goes in.`,
    between: `${name} reads ${shown}, neither ${limit} nor OL. Clean its ends, zero the leads, read it again.`,
    low: '',
    missing: `${name} was not read.`,
  }[band];
  return ohmsFinding(name, reading, band === 'open' ? 'blown' : band, text, good, limit);
}
