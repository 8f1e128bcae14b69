/**
 * In which order a senior reads jobs. First an emergency that stands, then a job in which somebody waits for a senior's
 * word, then by the gravest thing that needs attention, then by how many kinds of them there are; of two alike the one
 * that has waited longer comes first. A finished job without any still has to be signed; a signed or a training job is
 * not in the queue at all.
 */
export const KINDS = [
  'hazard',
  'voided',
  'skipped',
  'approved',
  'conditional',
  'habit',
  'exact',
  'fast',
  'repeat',
  'compressor',
  'raised',
] as const;
export type Kind = (typeof KINDS)[number];

/** Something that a senior should look at: which entry, and what about it. */
export interface Attention {
  readonly kind: Kind;
  readonly seq: number;
  /** The kind in words. */
  readonly head: string;
  readonly words: string;
}

/** What each kind is headed with. */
export const HEADS: Readonly<Record<Kind, string>> = {
  hazard: 'Hazard',
  voided: 'Isolation ended',
  skipped: 'Skipped or not possible',
  approved: 'Approved by a senior',
  conditional: 'Conditional verdict',
  habit: 'The habit would say otherwise',
  exact: 'Exact values',
  fast: 'Very fast gate',
  repeat: 'Repeat failure',
  compressor: 'Compressor verdict',
  raised: 'Raised to a senior',
};

/** What a job is at, as far as the order of the queue asks. */
export interface Stand {
  readonly at: 'emergency' | 'waits' | 'finished' | 'under-way' | 'signed';
  readonly training: boolean;
}

/** Above any risk, so that what comes first has the smallest number. */
const MOST = 1_000_000;

/** The job's place in the queue: the smaller comes first. Null where no review is due. */
export function queuePlace({ at, training }: Stand, items: readonly Attention[]): number | null {
  const kinds = new Set(items.map(({ kind }) => kind));
  if (training || at === 'signed' || (at === 'under-way' && kinds.size === 0)) return null;
  const gravest = KINDS.findIndex((kind) => kinds.has(kind));
  const rank = gravest < 0 ? 0 : KINDS.length - gravest;
  const now = at === 'emergency' ? 2 : at === 'waits' ? 1 : 0;
  // No number of kinds outweighs a graver one.
  return MOST - now * 10_000 - rank * 100 - kinds.size;
}
