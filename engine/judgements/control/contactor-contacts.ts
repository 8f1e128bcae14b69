/** Contacts of a contactor in Ω: closed with the armature pressed in, open with it let go. */
import type { Finding, Parts } from '../../schema.ts';
import type { Limit } from '../judgement.ts';
import { readingOf } from '../read.ts';
import { say } from '../say.ts';
import { ohmsFinding, sayOhms } from './ohm-band.ts';

export interface ContactLine {
  readonly pole: (typeof POLES)[number][0];
  readonly is: 'good' | 'bad' | 'open';
  readonly finding: Finding;
}
const POLES = [
  ['pole1', 'First contact'],
  ['pole2', 'Second contact'],
  ['pole3', 'Third contact'],
] as const;

/** Pressed in. A single-pole contactor's second pole is a bar and reads closed as well. */
export const contactFindings = (readings: Parts | undefined, limit: Limit): ContactLine[] =>
  // Only a three-phase unit has a third pole: it counts where it was read.
  POLES.filter(([key]) => key !== 'pole3' || readingOf(readings, key, 'Ω').kind !== 'none').map(([key, name]) => {
    const reading = readingOf(readings, key, 'Ω');
    const most = `${say(limit.value, 'Ω')} or less`;
    const line = (is: ContactLine['is'], word: string, text: string): ContactLine => ({
      pole: key,
      is,
      finding: ohmsFinding(`${name}, pressed in`, reading, word, text, limit, most),
    });
    if (reading.kind === 'none') return line('open', 'missing', `${name} was not read with the armature pressed in.`);
    const shown = sayOhms(reading);
    if (reading.kind === 'figure' && reading.value.abs().lte(limit.value))
      return line('good', 'good', `${name} reads ${shown} pressed in, ${most}.`);
    return line(
      'bad',
      'bad',
      `${name} reads ${shown} pressed in, more than ${say(limit.value, 'Ω')}. It is worn or burnt.`,
    );
  });

/** Let go, where it was read. Closed with the armature up is welded; a bar instead of a contact reads so by design. */
export const releasedFindings = (released: Parts | undefined, limit: Limit): ContactLine[] =>
  POLES.flatMap(([key, name]): ContactLine[] => {
    const reading = readingOf(released, key, 'Ω');
    if (reading.kind === 'none') return [];
    const shown = sayOhms(reading);
    const welded = reading.kind === 'figure' && reading.value.abs().lt(limit.value);
    const text = welded
      ? `${name} reads ${shown} with the armature up. It is welded.`
      : `${name} reads ${shown} with the armature up. It is not welded.`;
    const limits = `welded under ${say(limit.value, 'Ω')}`;
    return [
      {
        pole: key,
        is: welded ? 'bad' : 'good',
        finding: ohmsFinding(`${name}, let go`, reading, welded ? 'welded' : 'not welded', text, limit, limits),
      },
    ];
  });
