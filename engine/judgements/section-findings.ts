/** The evidence of a try at both sections, in the order a person reads it. */
import { windowMicrofarads } from '../calc/doubt.ts';
import { seriesMicrofarads } from '../calc/series.ts';
import type { Finding } from '../schema.ts';
import type { Force } from './judgement.ts';
import { confirmed } from './read.ts';
import { finding, say, sayRange } from './say.ts';
import { called, type SectionName, sectionFinding } from './section.ts';
import { isExact, type Look, readingFor, type SectionLimits, type SectionOutcome } from './section-look.ts';
import { bandOf, contradicts, figureIn, isOpenReading, isUnreadable } from './section-try.ts';

/** What the line is called that says that both readings are the label's own. */
export const EXACT_VALUES = 'Exact values';
/** Outcomes that explain or question the leads: no section is given a word by the label. */
const LEADS: readonly SectionOutcome[] = [
  'swapped',
  'pair',
  'contradiction',
  'wires',
  'ask-third',
  'exact',
  'undecided',
];

export function sectionFindings(
  look: Look | null,
  outcome: SectionOutcome,
  limits: SectionLimits,
  force: Force,
): Finding[] {
  if (look === null) {
    const text = 'The rating is not known, so there is no verdict on the value.';
    return [finding({ name: 'Rating', reading: 'not known', word: 'undecided', text })];
  }
  const names: SectionName[] = look.part.label.fan === null ? ['HERM'] : ['HERM', 'FAN'];
  const shown = names.map((name) => ofSection(name, look, outcome, limits, force));
  return [...shown, ...threeReadings(look), ...remark(look, outcome)];
}

function ofSection(
  name: SectionName,
  look: Look,
  outcome: SectionOutcome,
  limits: SectionLimits,
  force: Force,
): Finding {
  const { part, now } = look;
  const rated = (name === 'HERM' ? part.label.herm : part.label.fan) ?? '0';
  const reading = readingFor(now, name);
  const value = figureIn(reading);
  const shown = value ? say(value, 'µF') : reading.kind === 'over' ? 'OL' : 'no reading';
  const shownAs = called(name, force);
  const plain = (word: string, text: string): Finding => finding({ name: shownAs, reading: shown, word, text });
  if (reading.kind === 'none') return plain('not read', `${shownAs} was not read.`);
  if (outcome === 'open' && isOpenReading(reading, rated, part)) {
    const least = `${say(limits.openShare.value, '%')} of ${say(rated, 'µF')}`;
    const text = `${shownAs} reads ${shown}, under ${least}, wires off. The other section reads on the same C: it is open.`;
    return { ...plain('open', text), limits: `open below ${least}`, source: limits.openShare.source };
  }
  if (isUnreadable(reading, rated, part)) {
    const why =
      reading.kind === 'over' ? ': over range, shorted, charged, or a winding in parallel' : ` for ${say(rated, 'µF')}`;
    return plain('no verdict', `${shownAs} reads ${shown}. That is no verdict${why}.`);
  }
  if (outcome === 'fan-undecided' && name === 'FAN') {
    return plain('undecided', `${name} reads ${shown}, and nobody knows between which terminals.`);
  }
  const section = look.sections.find((s) => s.name === name);
  if (!section || LEADS.includes(outcome))
    return plain('not judged', `${shownAs} reads ${shown}. It is not judged yet.`);
  const earlier = look.earlier.find((e) => e.name === name) ?? null;
  const said = sectionFinding(section, earlier, part.label, limits.habit, force);
  return look.carried.includes(name) ? { ...said, text: `${said.text} Read in the try before.` } : said;
}

function threeReadings({ part, now }: Look): Finding[] {
  const [herm, fan, hf] = [figureIn(now.herm), figureIn(now.fan), figureIn(now.hf)];
  const against = contradicts(now, part);
  if (!herm || !fan || !hf || against === null) return [];
  const series = say(seriesMicrofarads(herm, fan), 'µF', 3);
  return [
    finding({
      name: 'HERM–FAN',
      reading: say(hf, 'µF'),
      limits: series,
      doubt: sayRange(windowMicrofarads(part.meter, hf), 'µF', 2),
      word: against ? 'contradicts' : 'fits',
      text: `HERM and FAN in series give ${series}, HERM–FAN reads ${say(hf, 'µF')}. ${against ? 'The three contradict each other.' : 'The three fit within the doubt.'}`,
      source: '1/x + 1/y = 1/z, physics',
    }),
  ];
}

function remark(look: Look, outcome: SectionOutcome): Finding[] {
  const { part, now, given } = look;
  const { herm, fan } = part.label;
  const exact =
    isExact(look) && confirmed(given.exact)
      ? [
          finding({
            name: EXACT_VALUES,
            reading: `${say(herm, 'µF')}, ${say(fan ?? '0', 'µF')}`,
            word: 'confirmed',
            text: 'Both readings equal the label to the last digit. They were confirmed as read on the meter.',
          }),
        ]
      : [];
  const band = bandOf(now, part);
  const words: Partial<Record<SectionOutcome, readonly [string, string]>> = {
    swapped: ['swapped', 'HERM reads like FAN, or FAN like HERM. Leads or terminals are mixed up.'],
    wires: ['wires first', 'Zero, OL, an absurd value, or both sections out at once: wires and C tab come first.'],
    exact: ['ask', 'Both readings equal the label to the last digit.'],
    ohms: ['ohms', 'The same again with the wires off and the range right. Ohms decide whether a section is shorted.'],
    contradiction: ['undecided', 'The readings contradicted each other in both tries. Nothing is condemned on them.'],
    ...(band
      ? {
          'ask-third': [
            'ask',
            `A good FAN section reads ${sayRange(band, 'µF', 2)} with its lead on HERM instead of C.`,
          ],
          'fan-undecided': [
            'undecided',
            `Without HERM–FAN nobody knows which pair was read. On HERM–FAN a good one reads ${sayRange(band, 'µF', 2)}.`,
          ],
        }
      : {}),
  };
  const said = words[outcome];
  return said ? [...exact, finding({ name: 'Leads', reading: '–', word: said[0], text: said[1] })] : exact;
}
