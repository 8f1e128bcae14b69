import { judgement } from './judgement.ts';
import { confirmed, figureOf, printOf } from './read.ts';
import { isOut, type Section, type SectionName } from './section.ts';
import { sectionFindings } from './section-findings.ts';
import { isExact, type Look, SECTION_OUTCOMES, SECTION_TAKES, type SectionOutcome, takeIn } from './section-look.ts';
import { probeSections } from './section-probe.ts';
import {
  contradicts,
  fanInBand,
  figureIn,
  hermMaybeFan,
  isOpenReading,
  isSwapped,
  isUnreadable,
} from './section-try.ts';

/**
 * The values of a run capacitor, one or two sections, µF, wires off. First what the leads could explain (swapped, OL,
 * HERM–FAN read for FAN, three readings that contradict), then the label with the meter's doubt. Limits: the print on
 * the part; words: ILAC-G8; the band and the repeat: the trade's traps, computed.
 */
export const sectionValues = judgement({
  id: 'section-values',
  semantics: 1,
  takes: SECTION_TAKES,
  limits: ['openShare', 'habit'],
  outcomes: SECTION_OUTCOMES,
  run(given, limits, force) {
    const label = printOf(given.label);
    if (label === null) return { outcome: 'undecided', findings: sectionFindings(null, 'undecided', limits, force) };
    const look = takeIn(given, label, limits, force);
    const outcome = decide(look);
    return { outcome, findings: sectionFindings(look, outcome, limits, force) };
  },
  probe: probeSections,
});

function decide(look: Look): SectionOutcome {
  const { given, part, now, carried } = look;
  if (now.herm.kind === 'none' && now.fan.kind === 'none') return 'undecided';
  const leads = byLeads(look);
  if (leads !== null) return leads;
  const equal = byExactness(look);
  if (equal !== null) return equal;

  const dual = part.label.fan !== null;
  const complete = dual && figureIn(now.herm) !== null && figureIn(now.fan) !== null;
  const hermOpen = !carried.includes('HERM') && hermMaybeFan(now, part);
  if (hermOpen && !complete) return 'undecided';
  const fanOpen = dual && !carried.includes('FAN') && fanInBand(now, part);
  const byTabs = complete && ['t1', 't2', 't3'].some((key) => figureOf(given.tabs, key, 'count') !== null);
  const noThird = figureIn(now.hf) === null;
  if (complete && noThird && (hermOpen || fanOpen || byTabs)) {
    if (given.third === undefined) return 'ask-third';
    if (hermOpen) return 'undecided';
    if (byTabs) return look.sections.some((s) => s.name === 'HERM' && !isOut(s)) ? 'fan-undecided' : 'undecided';
  }
  if (contradicts(now, part)) return twiceIfBefore(look, 'pair');
  // Without a HERM reading no third reading can tell FAN from HERM–FAN.
  const fanUnknown = fanOpen && (noThird || !complete);
  return byLabel(look, fanUnknown);
}

/** A second contradiction, of either kind, is not asked about again. */
function twiceIfBefore({ was, part }: Look, outcome: 'swapped' | 'pair'): SectionOutcome {
  return was !== null && (isSwapped(was, part) || contradicts(was, part)) ? 'contradiction' : outcome;
}

/** What wires and leads explain. Null: nothing, or the wires were confirmed and only HERM–FAN shows OL. */
function byLeads(look: Look): SectionOutcome | null {
  const { given, part, now, was } = look;
  const { herm, fan } = part.label;
  if (isSwapped(now, part)) return twiceIfBefore(look, 'swapped');
  const hermBad = isUnreadable(now.herm, herm, part);
  const fanBad = fan !== null && isUnreadable(now.fan, fan, part);
  if (!hermBad && !fanBad && now.hf.kind !== 'over') return null;
  if (given.wires === undefined) return 'wires';
  if (!confirmed(given.wires)) return 'undecided';
  if (!hermBad && !fanBad) return null;
  const hermOpen = isOpenReading(now.herm, herm, part) && !fanBad && figureIn(now.fan) !== null;
  const fanOpen = fan !== null && isOpenReading(now.fan, fan, part) && !hermBad && figureIn(now.herm) !== null;
  if (hermOpen || fanOpen) return contradicts(now, part) ? twiceIfBefore(look, 'pair') : 'open';
  return was === null ? 'repeat' : 'ohms';
}

function byExactness(look: Look): SectionOutcome | null {
  // Denied, the answer stays the same: the line is measured again, and going over the page must lead there again.
  return !isExact(look) || confirmed(look.given.exact) ? null : 'exact';
}

/** From the mildest to the gravest; the worst of both sections is the part's. */
const GRAVITY: readonly SectionOutcome[] = [
  'pass',
  'conditional-pass',
  'fan-undecided',
  'undecided',
  'repeat',
  'too-high',
  'too-high-twice',
  'fails',
];

function byLabel(look: Look, fanUnknown: boolean): SectionOutcome {
  const { given, part } = look;
  const judged = look.sections.filter((s) => !(fanUnknown && s.name === 'FAN'));
  const tooHigh = (s: Section): boolean => s.word === 'fail' && s.side === 'above';
  if (judged.length === 2 && judged.every(isOut) && !judged.every(tooHigh) && !confirmed(given.wires)) {
    return given.wires === undefined ? 'wires' : 'undecided';
  }
  const expected: SectionName[] = part.label.fan === null ? ['HERM'] : ['HERM', 'FAN'];
  const outcomes = expected.map((name): SectionOutcome => {
    const section = judged.find((s) => s.name === name);
    if (section) return ofSection(section, look);
    return name === 'FAN' && fanUnknown && judged.length > 0 ? 'fan-undecided' : 'undecided';
  });
  return outcomes.reduce((worst, o) => (GRAVITY.indexOf(o) > GRAVITY.indexOf(worst) ? o : worst));
}

function ofSection(section: Section, look: Look): SectionOutcome {
  const earlier = look.earlier.find((e) => e.name === section.name);
  const outBefore = earlier !== undefined && isOut(earlier);
  if (section.word === 'fail') {
    if (section.side === 'below') return 'fails';
    return outBefore && earlier.side === 'above' ? 'too-high-twice' : 'too-high';
  }
  if (section.word === 'conditional fail') return outBefore ? 'fails' : 'repeat';
  if (section.word === 'conditional pass') return 'conditional-pass';
  // Both out at once and then in, after the wires were seen to: the wires were the reason.
  const wires = look.earlier.length === 2 && look.earlier.every(isOut) && confirmed(look.given.wires);
  return outBefore && !wires ? 'conditional-pass' : 'pass';
}
