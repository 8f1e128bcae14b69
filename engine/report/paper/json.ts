/** A paper as data: what is on it, and beside the shop's the verdicts with their figures. */
import type { Closed } from '../closed.ts';
import type { Paper } from './paper.ts';

/** JSON, ending in a newline. Figures are decimal strings in the unit beside them. */
export function paperJson(job: Closed, paper: Paper): string {
  const last = job.entries.at(-1);
  const verdicts = job.verdicts.map(({ seq, body }) => ({
    seq,
    ...{ verdict: body.verdict, title: body.title, who: body.who, evidence: body.evidence, findings: body.findings },
  }));
  const file = {
    nocool: 'report',
    v: 1,
    for: paper.audience,
    job: last?.job ?? '',
    about: paper.about,
    training: job.memory.training,
    signed: paper.signed,
    proven: job.proven,
    ended: job.ending.title,
    entries: job.entries.length,
    head: last?.hash ?? '',
    stamps: paper.stamps,
    blocks: paper.blocks,
    ...(paper.audience === 'shop' ? { verdicts } : {}),
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}
