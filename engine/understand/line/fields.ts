/**
 * The numbers of a line, given to the fields they belong to: by name in any order, or by their order alone.
 *
 * Nothing is guessed: numbers without a name count only if they are exactly as many as asked, or as many as the fields
 * before the first named one, or between two named ones. A name without a value beside a number without a name gives
 * nothing, because the number may stand before its name. A field named twice is a contradiction and gives nothing.
 */
import type { FieldPart } from '../field.ts';
import { FieldScan, type Named } from './scan.ts';
import type { Line } from './state.ts';

/** Raw text by field key. What it gives is used; the rest stays for others or unread. */
export function claimFields(line: Line): Record<string, string> {
  const scan = new FieldScan(line);
  const given: Record<string, string> = {};
  for (const { key, from, to, value } of [...named(line, scan), ...placed(line, scan)]) {
    given[key] = line.slice(value.from, value.to);
    line.use(from, to);
  }
  return given;
}

/** "fuses 0.1" for two that must be given: which of them? */
function halves(line: Line, { shared, valued }: FieldScan): Set<string> {
  const left = new Set(required(line.lexicon.fields).flatMap(({ key }) => (valued.has(key) ? [] : [key])));
  return new Set(shared.filter(({ keys }) => keys.some((key) => left.has(key))).flatMap(({ given }) => given));
}

function named(line: Line, scan: FieldScan): Named[] {
  const { counted, named: all, loose, dangling, unsure } = scan;
  const times = new Map<string, number>();
  for (const { key } of [...counted, ...all]) times.set(key, (times.get(key) ?? 0) + 1);
  const half = halves(line, scan);
  const sure = dangling && loose.length > 0 ? counted : [...counted, ...all];
  return sure.filter(({ key }) => times.get(key) === 1 && !unsure.has(key) && !half.has(key));
}

/** Numbers without a name, by order. */
function placed(line: Line, scan: FieldScan): Named[] {
  const { counted, named: all, loose, dangling, twoWays, unsure } = scan;
  if (loose.length === 0 || dangling || twoWays || unsure.size > 0 || halves(line, scan).size > 0) return [];
  const { fields } = line.lexicon;
  const taken = new Set([...counted, ...all].map(({ key }) => key));
  const missing = fields.filter(({ key }) => !taken.has(key));
  const candidates: (readonly FieldPart[])[] = all.length === 0 ? [required(missing), missing] : [];
  if (all.length > 0) {
    const firstNamed = fields.findIndex(({ key }) => all.some((found) => found.key === key));
    const leading = fields.slice(0, firstNamed).filter(({ key }) => !taken.has(key));
    const allBefore = (loose.at(-1)?.from ?? 0) < (all[0]?.from ?? 0);
    if (allBefore) candidates.push(required(leading), leading);
    if (missing.length === 1) candidates.push(missing);
    candidates.push(byGaps(line, scan, required(missing)), byGaps(line, scan, missing));
  }
  const fitting = candidates.find(({ length }) => length === loose.length) ?? [];
  return loose.flatMap((value, n) => {
    const key = fitting[n]?.key;
    return key === undefined ? [] : [{ key, ...value, value }];
  });
}

/**
 * Names in the order of the question, and between them as many numbers as fields lie between: "121 / 0 0 0 / 2nd feed
 * 0 0 0 / 121". Names with no number between them may stand in any order: "9.3 / start 0.1 run 0.2 / 9.3". Empty where
 * it doesn't come out.
 */
function byGaps(line: Line, scan: FieldScan, wanted: readonly FieldPart[]): readonly FieldPart[] {
  const { fields } = line.lexicon;
  const place = ({ key }: { key: string }): number => fields.findIndex((field) => field.key === key);
  const looseBefore = (at: number): number => scan.loose.filter(({ from }) => from < at).length;
  const names = scan.named
    .map((found) => ({ at: found.from, place: place(found), run: looseBefore(found.from) }))
    .sort((a, b) => a.run - b.run || a.place - b.place);
  if (names.some((name, n) => name.place <= (names[n - 1]?.place ?? -1))) return [];
  const gapOf = (at: number): number => names.filter((name) => name.at < at).length;
  const gapOfField = (field: FieldPart): number => names.filter((name) => name.place < place(field)).length;
  const fits =
    wanted.length === scan.loose.length &&
    scan.loose.every(({ from }, n) => {
      const field = wanted[n];
      return field !== undefined && gapOfField(field) === gapOf(from);
    });
  return fits ? wanted : [];
}

const required = <F extends { optional: boolean }>(fields: readonly F[]): F[] =>
  fields.filter(({ optional }) => !optional);
