/** The pictures that go with a prompt. */
import type { Conclusion, Finding } from '../schema.ts';
import type { Path, Picture, PictureData } from './data.ts';
import { draw } from './draw.ts';

/** Prompts are made anew at every look, mostly with pictures that were drawn a moment ago. */
const drawn = new Map<string, Picture>();
const KEPT = 300;

function picture(data: PictureData, verdict: string | null, position: number): Picture {
  // The position keeps two pictures of the same apart on one page.
  const key = `${verdict ?? ''}#${position}`;
  const what = `${key} ${JSON.stringify(data)}`;
  const known = drawn.get(what);
  if (known) return known;
  if (drawn.size >= KEPT) drawn.clear();
  const made: Picture = { kind: data.kind, verdict, ...draw(data, { key }) };
  drawn.set(what, made);
  return made;
}

/** With a question: where its leads go for the parts that are asked, and what is shown with it in figures. */
export function questionPictures(
  leads: PictureData | undefined,
  asked: readonly string[],
  shown: readonly Finding[],
): Picture[] {
  const figures = shown.flatMap((finding) => finding.figures ?? []);
  return [...leadsFor(leads, asked), ...figures].map((data, i) => picture(data, null, i));
}

/** Where the leads go, for these parts of the question. */
export function leadsFor(leads: PictureData | undefined, asked: readonly string[]): PictureData[] {
  if (leads?.kind !== 'probes') return leads ? [leads] : [];
  const on = leads.on.flatMap(({ part, ...pair }) => (part === undefined || asked.includes(part) ? [pair] : []));
  return on.length > 0 ? [{ ...leads, on }] : [];
}

/** With each verdict: its findings in figures. */
export const verdictPictures = (verdicts: readonly Conclusion[]): Picture[] =>
  verdicts.flatMap(({ place, findings }) =>
    findings.flatMap(({ figures }, i) => (figures ? [picture(figures, place, i)] : [])),
  );

/** With the end of a call: the way that led there. */
export const wayPicture = (way: Path): Picture => picture(way, null, 0);
