/** The pictures that go with a prompt, drawn once for the data they are drawn of. */
import type { Conclusion, Finding } from '../schema.ts';
import type { Path, Picture, PictureData } from './data.ts';
import { draw } from './draw.ts';

/** Prompts are made anew at every look, what they are drawn of stays the same object. */
const drawn = new WeakMap<PictureData, Map<string, Picture>>();

function picture(data: PictureData, verdict: string | null, position: number): Picture {
  // The position keeps two pictures of the same apart on one page.
  const key = `${verdict ?? ''}#${position}`;
  const known = drawn.get(data) ?? new Map<string, Picture>();
  drawn.set(data, known);
  const made = known.get(key) ?? { kind: data.kind, verdict, ...draw(data, { key }) };
  known.set(key, made);
  return made;
}

/** With a question: where its leads go, and what is shown with it in figures. */
export function questionPictures(leads: PictureData | undefined, shown: readonly Finding[]): Picture[] {
  const figures = shown.flatMap((finding) => finding.figures ?? []);
  return [...(leads ? [leads] : []), ...figures].map((data, i) => picture(data, null, i));
}

/** With each verdict: its findings in figures. */
export const verdictPictures = (verdicts: readonly Conclusion[]): Picture[] =>
  verdicts.flatMap(({ place, findings }) =>
    findings.flatMap(({ figures }, i) => (figures ? [picture(figures, place, i)] : [])),
  );

/** With the end of a call: the way that led there. */
export const wayPicture = (way: Path): Picture => picture(way, null, 0);
