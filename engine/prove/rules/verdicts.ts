/** R7 and R8: a verdict against the figures on the record, recomputed here by the rule with plain arithmetic. */
import type { CapacitorLabel, Conclusion, Entry, Parts, Value } from '../../schema.ts';
import { unprovenControl } from './control-verdicts.ts';
import { unprovenCooling } from './cooling-verdicts.ts';
import { cabinetOf, chosen, figure, SAYS_CLASS } from './evidence.ts';

interface Section {
  readonly read: number;
  readonly low: number;
  readonly high: number;
  readonly doubt: number;
}
const out = (s: Section): boolean => s.read < s.low - 1e-9 || s.read > s.high + 1e-9;
const wholly = (s: Section): boolean => s.read + s.doubt < s.low - 1e-9 || s.read - s.doubt > s.high + 1e-9;

/** A sentence where the record does not carry the verdict, else null. */
export function unproven(c: Conclusion, record: readonly Entry[]): string | null {
  const answers = standing(record);
  // In the order of the tries: a first one that was taken back and read anew is still what the second is a repeat of.
  const tries = answers
    .filter((a) => a.place.endsWith('/sections') && sameTries(a.place, c.place))
    .sort((a, b) => tryOf(a.place) - tryOf(b.place));
  const label = lastPrint(record, answers, c.place);
  const now = tries.at(-1);
  const read = (at: Answer): Section[] => (label?.kind === 'label' ? sections(at, answers, label.label) : []);
  const outNow = now ? read(now) : [];
  const outBefore = tries.slice(0, -1).flatMap(read);
  switch (c.verdict) {
    case 'section-fails-value': {
      if (outNow.some(wholly)) return null;
      const twice = outNow.some((s) => out(s) && outBefore.some((b) => b.low === s.low && out(b)));
      return twice ? null : 'condemned on a value that is not wholly outside the label, and not outside twice';
    }
    case 'capacitor-good':
      return good(
        label,
        outNow,
        answers,
        c,
        (s) => !out(s) && s.read - s.doubt >= s.low - 1e-9 && s.read + s.doubt <= s.high + 1e-9,
      );
    case 'capacitor-conditional-pass':
      return good(label, outNow, answers, c, (s) => !out(s));
    case 'section-too-high':
      return outNow.some((s) => s.read > s.high && wholly(s)) && outBefore.some((s) => s.read > s.high)
        ? null
        : 'called too high without reading so twice';
    case 'wrong-part-fitted':
      return wrongPart(label, answers, c);
    case 'section-open':
      return outNow.some((s) => s.read < ((s.low + s.high) / 2) * 0.02) && wiresAsked(answers)
        ? null
        : 'called open without the wires checked or above 2 %';
    case 'section-shorted': {
      const ohms = answers.findLast((a) => /\/(section-ohms|unrated)$/.test(a.place))?.parts ?? {};
      const low = ['hermc', 'fanc'].some((k) => (figure(ohms[k]) ?? 99) < 2 + 1e-9);
      return low && wiresOff(answers, c) ? null : 'called shorted without steady ohms near zero, wires off';
    }
    case 'leak-to-case': {
      const low = answers.filter((a) => sameRound(a.place, c.place) && (figure(a.parts.case) ?? 99) <= 20);
      return low.length >= 2 ? null : 'called a leak on one reading';
    }
    case 'start-capacitor-by-sight':
    case 'condemned-by-sight':
      return bySight(answers, c);
    case 'start-capacitor-fails': {
      // Above its printed range it is flagged: makers let it read more than it prints.
      const folder = c.place.slice(0, c.place.lastIndexOf('/') + 1);
      const read = figure(answers.findLast((a) => a.place === `${folder}readings`)?.parts.start);
      const print = answers.findLast((a) => a.parts.print && isOf(a.place, c.place))?.parts.print;
      const low = print?.kind === 'label' ? Number(print.label.range?.low ?? Number.NaN) : Number.NaN;
      return read !== null && read < low - 1e-9
        ? null
        : 'a start capacitor condemned that does not read below its range';
    }
    case 'runs-nothing-found':
    case 'repair-proven': {
      const f = answers.findLast((a) => a.place.endsWith('/figures'))?.parts ?? {};
      const volts = figure(f.l1l2);
      const [low, high] = plateVolts(answers, c.place);
      const rla = figure(answers.findLast((a) => a.place.endsWith('/restart/plate'))?.parts.rla);
      const legs = ['comp', 'comp2', 'comp3'].flatMap((key) => figure(f[key]) ?? []);
      if (rla !== null && legs.some((amps) => amps > rla * 1.56 + 1e-9)) return 'proven above its MCC';
      const comp = figure(f.comp);
      if (comp !== null && (rla === null ? comp < 2 : comp < rla * 0.4 - 1e-9))
        return 'proven with a compressor that draws too little to run';
      return volts !== null && comp !== null && figure(f.fan) !== null && volts >= low && volts <= high
        ? null
        : 'proven without its restart figures';
    }
    case 'blower-runs-nothing-found':
    case 'blower-proven': {
      const f = answers.findLast((a) => a.place.endsWith('/figures'))?.parts ?? {};
      const volts = figure(f.l1l2) ?? 0;
      const [low, high] = plateVolts(answers, c.place);
      return volts >= low && volts <= high && (figure(f.fan) ?? 0) > 0 ? null : 'proven without its restart figures';
    }
    case 'blower-bearings':
    case 'fan-bearings':
      // P1: clear of everything. One that rubs or doesn't turn is cleared and turned again.
      return turned(answers, c, 'spin') === 'stiff' ||
        (turned(answers, c, 'spin') === 'no' && turned(answers, c, 'freed') === 'no')
        ? null
        : 'bearings called without a spin by hand, clear of everything';
    case 'overload-open':
      return [...said(answers, c, 'shell'), ...said(answers, c, 'warm')].includes('hot')
        ? null
        : 'an overload called open on a shell that is not hot';
    case 'blower-winding-open':
    case 'fan-winding-open':
      // An ohmmeter says nothing of a motor with electronics in it.
      if (c.verdict === 'fan-winding-open' && isElectronic(answers))
        return 'a winding called open on an electronic fan';
      return said(answers, c, 'warm').includes('cool') ? null : 'a winding called open on a motor that is not cool';
    case 'board-fuse-blown':
    case 'inverter-fuse-blown':
    case 'fuse-blown': {
      const read = answers.filter((a) => sameRound(a.place, c.place) && cabinetOf(a.place) === cabinetOf(c.place));
      return read.some((a) => ['fuse1', 'fuse2', 'fuse3'].some((k) => a.parts[k]?.kind === 'over'))
        ? null
        : 'a fuse called blown that did not read OL';
    }
    case 'new-part-right': {
      const part = answers.findLast((a) => a.place.endsWith('/part') && sameRound(a.place, c.place))?.parts ?? {};
      return (figure(part.herm) ?? 0) > 0 ? null : 'a new part called right without a reading';
    }
    default:
      return unprovenCooling(c, answers) ?? unprovenControl(c, answers);
  }
}

/** K9: what is printed on the part is not what the unit's diagram asks for, and the part itself was read or seen to fail. */
function wrongPart(label: Value | undefined, answers: readonly Answer[], c: Conclusion): string | null {
  const asked = answers.findLast((a) => a.place.endsWith('/asked-for') && a.parts.print)?.parts.print;
  if (label?.kind !== 'label' || asked?.kind !== 'label')
    return 'a part called wrong without its print and the diagram';
  const [own, meant] = [label.label, asked.label];
  const same =
    Number(own.herm) === Number(meant.herm) &&
    Number(own.fan ?? 0) === Number(meant.fan ?? 0) &&
    Number(own.volts ?? 999) >= Number(meant.volts ?? 0);
  if (same) return 'a part called wrong that is what the diagram asks for';
  const read = answers.some((a) => sameRound(a.place, c.place) && ['herm', 'hermAmps'].some((k) => a.parts[k]));
  return read || c.place.endsWith('/repair/wrong') ? null : 'a part called wrong that was not read';
}

/** K5, of the part itself: where several capacitors stand in a cabinet, somebody said on which one it was seen. */
function bySight(answers: readonly Answer[], c: Conclusion): string | null {
  const look = answers.findLast((a) => a.place.endsWith('/look') && cabinetOf(a.place) === cabinetOf(c.place))?.parts;
  if (!chosen(look?.condition).some((x) => ['bulged', 'oil', 'vented', 'burnt-through'].includes(x)))
    return 'condemned by sight on rust, dirt or age';
  const folder = c.place.slice(0, c.place.lastIndexOf('/') + 1);
  const which = answers.findLast((a) => a.place.startsWith(`${folder}this-one`))?.parts;
  const said = [...chosen(which?.ok), ...chosen(which?.choice)];
  const own = said.some((x) => (c.verdict === 'start-capacitor-by-sight' ? ['start'] : ['yes', 'run']).includes(x));
  return (figure(look?.count) ?? 1) <= 1 || own ? null : 'condemned by sight where another capacitor may have shown it';
}

export interface Answer {
  readonly seq: number;
  readonly at: string;
  readonly place: string;
  readonly parts: Parts;
}
/** Answers that stand: amended figures in place, what was taken back left out. */
function standing(record: readonly Entry[]): Answer[] {
  const answers: Answer[] = [];
  // What was left out is no answer, until somebody says it after all.
  const leftOut = new Set<number>();
  for (const e of record) {
    if (e.kind === 'answered') {
      answers.push({ seq: e.seq, at: e.at, place: e.body.place, parts: e.body.parts });
      if (e.body.skipped !== undefined) leftOut.add(e.seq);
    }
    if (e.kind === 'amended') leftOut.delete(e.body.of);
    if (e.kind === 'amended' || e.kind === 'withdrawn') {
      const at = answers.findIndex((a) => a.seq === e.body.of);
      const old = answers[at];
      if (!old) continue;
      if (e.kind === 'withdrawn') answers.splice(at, 1);
      else answers[at] = { ...old, parts: { ...old.parts, ...e.body.parts } };
    }
  }
  return answers.filter(({ seq }) => !leftOut.has(seq));
}
/** The print as it was said last, be it by changing an older answer; of what still stands. */
function lastPrint(record: readonly Entry[], answers: readonly Answer[], verdict: string): Value | undefined {
  const said = record.findLast((e) => {
    if (e.kind !== 'answered' && e.kind !== 'amended') return false;
    const of = answers.find(({ seq }) => seq === (e.kind === 'amended' ? e.body.of : e.seq));
    return e.body.parts.print?.kind === 'label' && of !== undefined && isOf(of.place, verdict);
  });
  return said?.kind === 'answered' || said?.kind === 'amended' ? said.body.parts.print : undefined;
}
/** What the line has to keep, by what the nameplate in that cabinet prints and how many lines feed the unit outdoors. */
export function plateVolts(answers: readonly Answer[], place: string): readonly [number, number] {
  const indoors = place.includes('/blower/');
  const printed = answers.findLast((a) => chosen(a.parts.volts).length > 0 && a.place.includes('/blower/') === indoors)
    ?.parts.volts;
  const three =
    !indoors && answers.some((a) => SAYS_CLASS.test(a.place) && chosen(a.parts.choice).includes('three-phase'));
  const one = Number(chosen(printed).find((v) => v !== '208/230') ?? 0);
  return one > 0 ? [one * 0.9 - 1e-9, one * 1.1 + 1e-9] : [three ? 187 : 197, 253];
}
/** A unit of whose fan somebody said that it is electronic. */
export const isElectronic = (answers: readonly Answer[]): boolean =>
  chosen(answers.findLast((a) => SAYS_CLASS.test(a.place))?.parts.choice).includes('ecm');
/** Whose print and case a verdict is about: the other capacitor has its own; the new part's are none of the old one's. */
function isOf(place: string, verdict: string): boolean {
  if (/\/(part|why|asked-for)$/.test(place) || cabinetOf(place) !== cabinetOf(verdict)) return false;
  const other = /^.*\/(another|yet-another)\//.exec(verdict)?.[0];
  return other === undefined ? !/\/(another|yet-another)\//.test(place) : place.startsWith(other);
}
/** Tries of the same page in the same round. */
const sameTries = (a: string, b: string): boolean => pageOf(a) === pageOf(b);
const tryOf = (place: string): number => Number(/~(\d+)\/[^/]+$/.exec(place)?.[1] ?? 1);
const pageOf = (place: string): string => place.slice(0, place.lastIndexOf('/')).replace(/(.*)~\d+$/, '$1');
const wiresOff = (answers: readonly Answer[], c: Conclusion): boolean =>
  answers.some((a) => /\/wires$/.test(a.place) && sameRound(a.place, c.place) && !chosen(a.parts.ok).includes('cant'));
const turned = (answers: readonly Answer[], c: Conclusion, step: 'spin' | 'freed'): string | undefined =>
  chosen(answers.findLast((a) => a.place.endsWith(`/${step}`) && sameRound(a.place, c.place))?.parts.ok)[0];
const said = (answers: readonly Answer[], c: Conclusion, name: string): readonly string[] =>
  chosen(answers.findLast((a) => a.place.endsWith(`/${name}`) && sameRound(a.place, c.place))?.parts.choice);
const roundOf = (place: string): string => /^round~(\d+)/.exec(place)?.[1] ?? '';
const sameRound = (a: string, b: string): boolean => roundOf(a) === roundOf(b);
const wiresAsked = (answers: readonly Answer[]): boolean =>
  answers.some((a) => a.place.endsWith('/wires') && chosen(a.parts.ok).includes('yes'));

/** HERM and FAN of one try; a FAN that was asked again replaces the first. Meter ±(1.9 % + 2 counts), as in the walk. */
function sections(at: Answer, answers: readonly Answer[], label: CapacitorLabel): Section[] {
  const prefix = at.place.slice(0, at.place.lastIndexOf('/'));
  const third = answers.findLast((a) => a.place === `${prefix}/third`);
  const pairs: [number | null, string | null][] = [
    [figure(at.parts.herm), label.herm],
    [figure(third?.parts.fan) ?? figure(at.parts.fan), label.fan],
  ];
  return pairs.flatMap(([read, rated]) => {
    if (read === null || rated === null) return [];
    const doubt = (read * 1.9) / 100 + 2 * (read < 10 ? 0.01 : 0.1);
    return [
      {
        read,
        doubt,
        low: Number(rated) * (1 - Number(label.below) / 100),
        high: Number(rated) * (1 + Number(label.above) / 100),
      },
    ];
  });
}

/** How many sections the label has; two where nobody knows it. */
const rated = (label: Value | undefined): number => (label?.kind === 'label' && label.label.fan === null ? 1 : 2);

function good(
  label: Value | undefined,
  now: readonly Section[],
  answers: readonly Answer[],
  c: Conclusion,
  fits: (s: Section) => boolean,
): string | null {
  if (now.length < rated(label) || !now.every(fits)) return 'called good with a section outside, near, or not read';
  const shell = answers
    .filter((a) => sameRound(a.place, c.place) && isOf(a.place, c.place))
    .filter((a) => a.parts.case && a.parts.case.kind !== 'untaken')
    .at(-1)?.parts.case;
  return shell?.kind === 'over' || (figure(shell) ?? 0) > 20 ? null : 'called good without a clear reading to the case';
}
