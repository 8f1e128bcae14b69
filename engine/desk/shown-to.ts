/** In whose units something is shown: a person's own, else the shop's. */
import type { Settings, Units } from '../schema.ts';
import { besideText } from '../units/beside.ts';
import { findingIn } from '../units/shown.ts';
import type { EvidenceRow, JobCard, Person } from './types.ts';

/** `settings`: those in force for the job, or the shop's where it is no job's. null: nobody in particular reads it. */
export const unitsOf = (person: Person | null | undefined, settings: Pick<Settings, 'units'>): Units | undefined =>
  person?.units ?? settings.units;

/** A card is kept as the record says it, for whoever reads it. */
export const cardFor = <C extends JobCard>(card: C, units: Units | undefined): C => ({
  ...card,
  where: besideText(card.where, units),
  urgency: card.urgency && { ...card.urgency, why: besideText(card.urgency.why, units) },
});

export const evidenceFor = (row: EvidenceRow, units: Units | undefined): EvidenceRow => ({
  ...row,
  findings: row.findings.map((finding) => findingIn(finding, units)),
});
