import type { Finding } from '../schema.ts';
import { judgement, type Limit } from './judgement.ts';
import { type Band, ohmsFinding, sayOhms } from './ohm-band.ts';
import { over, past, read, reads, untaken } from './probing.ts';
import { type Reading, readingOf } from './read.ts';
import { say } from './say.ts';

const FUSES = { first: 'First fuse', second: 'Second fuse', third: 'Third fuse' } as const;

/**
 * Fuses out of their holder, Ω. OL is blown; under the limit is good; anything between is noted and read again. A blown
 * fuse is a symptom: why it opened is found before a new one goes in.
 */
export const fuses = judgement({
  id: 'fuses',
  semantics: 1,
  takes: ['readings'],
  limits: ['good'],
  outcomes: ['good', 'blown', 'between', 'undecided'],
  run({ readings }, { good }) {
    const all = [
      { name: FUSES.first, reading: readingOf(readings, 'first', 'Ω') },
      { name: FUSES.second, reading: readingOf(readings, 'second', 'Ω') },
      // Two poles have two fuses: a third counts where somebody read one.
      { name: FUSES.third, reading: readingOf(readings, 'third', 'Ω') },
    ].filter(({ name, reading }) => name !== FUSES.third || reading.kind !== 'none');
    const bands = all.map(({ reading }) => bandOf(reading, good));
    const findings = all.map(({ name, reading }) => said(name, reading, good));
    if (bands.includes('open')) return { outcome: 'blown', findings };
    if (bands.includes('between')) return { outcome: 'between', findings };
    return { outcome: bands.includes('missing') ? 'undecided' : 'good', findings };
  },
  probe({ good }) {
    const below = past(good.value, '-0.001');
    return [
      { readings: reads({ first: below, second: 0 }, 'Ω') },
      { readings: reads({ first: good.value, second: below }, 'Ω') },
      { readings: { ...reads({ first: below }, 'Ω'), second: over } },
      { readings: { ...reads({ first: below, second: below }, 'Ω'), third: over } },
      { readings: { first: read(below, 'Ω'), second: untaken } },
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
