/** The readings of a new part before it goes in, dead, against what is asked for. */
import { Exact, within } from '../../calc/exact.ts';
import { seriesMicrofarads } from '../../calc/series.ts';
import type { CapacitorLabel, Finding, Parts } from '../../schema.ts';
import type { Force, Limit } from '../judgement.ts';
import { chosenOf, type Reading, readingOf } from '../read.ts';
import { finding, say, sayRange } from '../say.ts';
import { called, isOut, judgeSection, type Section, type SectionName, sectionFinding } from '../section.ts';
import { bandOf, contradicts, figureIn, isSwapped, type Part, type Try, tryOf } from '../section-try.ts';

export type NewPartLimits = Readonly<Record<'volts' | 'fail' | 'clear' | 'habit', Limit>>;
interface Line {
  readonly is: 'good' | 'out' | 'open';
  readonly finding: Finding;
}

export function readNewPart(
  label: CapacitorLabel,
  part: Parts | undefined,
  earlier: Parts | undefined,
  limits: NewPartLimits,
  force: Force,
): readonly Line[] {
  const now = tryOf(part, undefined);
  // Another part's readings are no earlier try of this one.
  const again = chosenOf(earlier, 'pick')[0] === chosenOf(part, 'pick')[0];
  const before = tryOf(again ? earlier : undefined, undefined);
  const about: Part = { label, meter: force.meter, openPercent: new Exact(0) };
  const leads = leadsOf(now, about);
  const names: SectionName[] = label.fan === null ? ['HERM'] : ['HERM', 'FAN'];
  const sections = names.map((name): Line => {
    const reading = name === 'HERM' ? now.herm : now.fan;
    const value = figureIn(reading);
    const section = value && judgeSection(name, label, value, force);
    const said = called(name, force);
    if (!section) return unread(said, reading);
    if (leads?.is === 'out') {
      const shown = say(section.reading, 'µF');
      const text = `${said} reads ${shown}. It is not judged yet.`;
      return { is: 'open', finding: finding({ name: said, reading: shown, word: 'not judged', text }) };
    }
    const was = earlierOf(name, name === 'HERM' ? before.herm : before.fan, label, force);
    return { is: isOut(section) ? 'out' : 'good', finding: sectionFinding(section, was, label, limits.habit, force) };
  });
  return [...sections, ...(leads ? [leads] : []), ...caseOf(part, limits)];
}

function earlierOf(name: SectionName, reading: Reading, label: CapacitorLabel, force: Force): Section | null {
  const value = figureIn(reading);
  return value && judgeSection(name, label, value, force);
}

function unread(name: string, { kind }: Reading): Line {
  const over = kind === 'over';
  const text = over ? `${name} reads OL. That is no value: look at leads and range first.` : `${name} was not read.`;
  const word = over ? 'no verdict' : 'not read';
  return { is: 'open', finding: finding({ name, reading: over ? 'OL' : 'no reading', word, text }) };
}

/**
 * Whether the leads sat where they should. With its lead on HERM a good FAN section reads HERM and FAN in series, and that
 * may lie inside the label's limits: a section that was never read must not pass. The reading itself counts here, without
 * the meter's doubt: a coarse meter would ask about every sound part.
 */
function leadsOf(now: Try, part: Part): Line | null {
  const line = (is: Line['is'], reading: string, word: string, text: string): Line => ({
    is,
    finding: finding({ name: 'Leads', reading, word, text, source: '1/x + 1/y = 1/z, physics' }),
  });
  if (isSwapped(now, part)) {
    const text = 'HERM reads like FAN and FAN like HERM. The leads look exchanged: read both again.';
    const swapped = line('out', '–', 'exchanged', text);
    return { ...swapped, finding: { ...swapped.finding, source: null } };
  }
  const [herm, fan, hf, band] = [figureIn(now.herm), figureIn(now.fan), figureIn(now.hf), bandOf(now, part)];
  if (!herm || !fan || !band) return null;
  if (hf) {
    const against = contradicts(now, part);
    const series = say(seriesMicrofarads(herm, fan), 'µF', 3);
    const so = against ? 'The three contradict each other: read all again.' : 'The three fit within the doubt.';
    const text = `HERM and FAN in series give ${series}, HERM–FAN reads ${say(hf, 'µF')}. ${so}`;
    return line(against ? 'out' : 'good', say(hf, 'µF'), against ? 'contradicts' : 'fits', text);
  }
  if (!within(fan, band)) return null;
  const text = `With its lead on HERM instead of C, a good FAN section reads ${sayRange(band, 'µF', 2)}. Read HERM–FAN as well.`;
  return line('open', 'HERM–FAN not read', 'ask', text);
}

/** The case may be left out. A part fresh from its box that doesn't read clear is wiped or left. */
function caseOf(part: Parts | undefined, { fail, clear }: NewPartLimits): Line[] {
  const reading = readingOf(part, 'case', 'MΩ');
  if (reading.kind === 'none') return [];
  const value = figureIn(reading);
  const shown = value ? say(value, 'MΩ') : 'OL';
  const word = !value || value.gt(clear.value) ? 'clear' : value.lt(fail.value) ? 'leak' : 'between';
  const text = {
    clear: `${shown} to the case: no leak.`,
    leak: `${shown} to the case is below ${say(fail.value, 'MΩ')}. Leave this part out.`,
    between: `${shown} to the case is not above ${say(clear.value, 'MΩ')}. Wipe it, fingers off the probes, read again.`,
  }[word];
  const limits = `above ${say(clear.value, 'MΩ')}, or OL`;
  const source = word === 'leak' ? fail.source : clear.source;
  return [
    {
      is: word === 'clear' ? 'good' : 'out',
      finding: finding({ name: 'Case', reading: shown, limits, word, text, source }),
    },
  ];
}
