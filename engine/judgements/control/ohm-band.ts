/** One Ω reading against the bands of a part that is tested dead, and the line of evidence it gives. */
import type { Finding } from '../../schema.ts';
import type { Limit } from '../judgement.ts';
import type { Reading } from '../read.ts';
import { finding, say } from '../say.ts';

/** Where a reading lies. `between`: neither good nor bad; noted, and repeated. */
export type Band = 'good' | 'open' | 'low' | 'between' | 'missing';

/** A figure in Ω as its size decides: Ω, kΩ or MΩ. */
export const sayOhms = (reading: Reading): string => {
  if (reading.kind !== 'figure') return reading.kind === 'over' ? 'OL' : 'no reading';
  const { value } = reading;
  if (value.abs().gte(1_000_000)) return say(value.div(1_000_000), 'MΩ');
  return value.abs().gte(1000) ? say(value.div(1000), 'kΩ') : say(value, 'Ω');
};

/** The word for one reading; `text` says what it means, after the reading. */
export const ohmsFinding = (name: string, reading: Reading, word: string, text: string, limit: Limit, limits: string) =>
  finding({ name, reading: sayOhms(reading), limits, word, text, source: limit.source }) satisfies Finding;
