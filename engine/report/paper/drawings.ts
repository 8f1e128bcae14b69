/** What a verdict rests on, drawn: where the leads sat, and the windings that were read. The same drawings as in the chat. */
import type { PictureData } from '../../picture/data.ts';
import { draw } from '../../picture/draw.ts';
import { leadsFor } from '../../picture/of-prompt.ts';
import { askedAt, type Closed, type Drawn } from '../closed.ts';

export interface Drawing {
  readonly title: string;
  /** The whole of it in words. */
  readonly says: string;
  readonly svg: string;
}

/** `seen`: what stands on the paper already; a drawing of the same stands on it once. */
export function drawingsOf(job: Closed, verdict: Drawn, seen: Set<string>): Drawing[] {
  const leads = verdict.body.evidence.flatMap((seq) => leadsAt(job, seq));
  const windings = verdict.body.findings.flatMap(({ figures }) => (figures?.kind === 'windings' ? [figures] : []));
  return [...leads, ...windings].flatMap((data): Drawing[] => {
    const what = JSON.stringify(data);
    if (seen.has(what)) return [];
    seen.add(what);
    const { title, text, svg } = draw(data, { key: `report ${seen.size}` });
    return [{ title, says: text, svg }];
  });
}

/** Where the leads sat for this answer, where it was taken with leads; of a changed one as it was asked. */
function leadsAt(job: Closed, seq: number): PictureData[] {
  const entry = job.entries[seq - 1];
  const answer = entry?.kind === 'amended' ? job.entries[entry.body.of - 1] : entry;
  if (answer?.kind !== 'answered' || answer.body.skipped) return [];
  return leadsFor(askedAt(job, answer.body.place)?.picture, Object.keys(answer.body.parts));
}
