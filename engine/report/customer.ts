/** A finished call in words for whoever pays for it: what was found, what was fitted, that it runs, what is still open. */
import type { Finding } from '../schema.ts';
import { type Closed, type Drawn, type Fitted, newPartOf, sentence } from './closed.ts';

/** Findings that a customer is told of, by the name that the judgement gives them. */
const PLAIN: Readonly<Record<string, string>> = {
  HERM: 'HERM',
  FAN: 'FAN',
  'L1–L2': 'Supply voltage',
  Compressor: 'Compressor current',
  Fan: 'Fan current',
  Split: 'Air is cooled by',
  'Start capacitor': 'Start capacitor',
};
const TERMS = 'HERM is the part of the capacitor that serves the compressor, FAN the part that serves the fan.';
/** Words of a judgement that say how a reading lies to its limits. */
const LIES: Readonly<Record<string, string>> = {
  pass: 'inside',
  in: 'inside',
  'conditional pass': 'inside, close to the limit',
  'conditional fail': 'outside, close to the limit',
  fail: 'outside',
  undecided: 'not decided',
};

/** A reading as a customer is told it: beside what is allowed, and where the part was replaced, beside the old one. */
export interface PlainReading {
  readonly name: string;
  readonly before: string | null;
  readonly reading: string;
  readonly allowed: string | null;
  readonly lies: string | null;
}
type Said = string | PlainReading;

export const customerLines = (of: Closed): string[] =>
  customerSays(of).map((said) => (typeof said === 'string' ? said : readingWords(said)));

function readingWords({ name, before, reading, allowed, lies }: PlainReading): string {
  if (before !== null || lies === null)
    return allowed === null
      ? `${name}: ${reading}.`
      : `${name}: ${before === null || before === '' ? '' : `before ${before}, `}new part ${reading}, allowed ${allowed}.`;
  return `${name}: ${reading}, allowed ${allowed}: ${lies}.`;
}

/** Verdicts on the unit as it was found, of which a customer is told readings. */
export const measured = (of: Closed): Drawn[] => found(of).filter((v) => readings(v).length > 0);
// A new part that was measured and not fitted was not found on the unit.
const found = (of: Closed): Drawn[] => of.verdicts.filter((v) => v !== atEnd(of) && !newPartOf(v.body));

/** The same as `customerLines`, with the figures apart. */
export function customerSays(of: Closed): Said[] {
  const parts = of.fitted.map((f) => f.part);
  const last = of.verdicts.at(-1);
  const before = found(of);
  return explained([
    `Visit of ${of.when.day(of.entries[0]?.at ?? '')}, by ${of.memory.assigned.map(of.name).join(' and ') || 'nobody assigned'}.`,
    ...before.flatMap((v) => [sentence(`Found: ${v.body.title}`), ...readings(v)]),
    ...(of.fitted.length === 0 ? ['Nothing was fitted.'] : []),
    ...of.fitted.flatMap((f) => [
      sentence(`Fitted: ${fittedWords(f)}`),
      ...(f.part ? beforeAndAfter(f.part, before) : []),
    ]),
    ...(last && last === atEnd(of) && !parts.includes(last)
      ? [sentence(`At the end: ${last.body.title}`), ...readings(last)]
      : []),
    of.proven
      ? 'It ran while these figures were read.'
      : 'Not proven: the visit ended without readings that prove that it runs as it should.',
    sentence(`How it was left: ${of.ending.title}`),
    ...open(of),
  ]);
}

/** The last verdict, where it says how the visit ended and not what was found. */
function atEnd(of: Closed): Drawn | undefined {
  const last = of.verdicts.at(-1);
  return last && (of.proven || last.body.findings.length === 0 || of.fitted.length > 0) ? last : undefined;
}
/** What went in: the part by its print where it was measured, else in the words of the page. */
export const fittedWords = ({ part, words }: Fitted): string => newPart(part) ?? words;
const newPart = (part: Drawn | null): string | null => {
  const found = part ? newPartOf(part.body) : undefined;
  return found ? `run capacitor, ${found.reading}` : null;
};

const readings = ({ body }: Drawn): PlainReading[] => body.findings.flatMap(reading);
function reading(f: Finding): PlainReading[] {
  const name = PLAIN[f.name];
  if (name === undefined) return [];
  const lies = LIES[f.word];
  // Where the judgement does not say how it lies to them, the limits are no limits of this reading.
  const limits = lies === undefined || f.limits === null ? null : f.limits;
  return [{ name, before: null, reading: f.reading, allowed: limits, lies: limits === null ? null : (lies ?? null) }];
}

/** A section of the old part beside the same section of the new one. */
function beforeAndAfter(part: Drawn, found: readonly Drawn[]): PlainReading[] {
  return part.body.findings.flatMap((now) => {
    if (now.figures?.kind !== 'scale' || PLAIN[now.name] === undefined) return [];
    const { rated } = now.figures;
    const was = found
      .filter((v) => v.place.round === part.place.round)
      .flatMap((v) => v.body.findings)
      .find((f) => f.name === now.name && f.figures?.kind === 'scale' && f.figures.rated === rated);
    return { name: now.name, before: was?.reading ?? '', reading: now.reading, allowed: now.limits ?? '–', lies: null };
  });
}

/** What somebody else still has to say. */
function open(of: Closed): string[] {
  if (of.signed) return [`Read and signed by ${of.name(of.signed.by)} on ${of.when.day(of.signed.at)}.`];
  const waits = of.verdicts.filter((v) => v.body.who !== 'junior');
  return [
    ...waits.map((v) =>
      sentence(`Not yet confirmed by ${v.body.who === 'senior' ? 'a senior' : 'a certified person'}: ${v.body.title}`),
    ),
    'Not signed yet: a senior reads the record first.',
  ];
}

/** The two words of the trade are explained before the first line that has one. */
function explained(lines: readonly Said[]): Said[] {
  const first = lines.findIndex((line) => /\b(HERM|FAN)\b/.test(typeof line === 'string' ? line : line.name));
  return first < 0 ? [...lines] : [...lines.slice(0, first), TERMS, ...lines.slice(first)];
}
