/**
 * What was asked after each turn of a record, computed from its entries alone. The words of a page are in its
 * fingerprint and the verdicts are entries; the engine's own wording may get better without an old record changing.
 * Everything else of a prompt counts: where, which parts with which units, ranges and options, for whom, and how the
 * isolation stands.
 */

import { canonicalJson } from '../canonical.ts';
import { unreachable } from '../errors.ts';
import { prompt } from '../prompt.ts';
import { placeIdOf, type Standing } from '../replay.ts';
import type { Entry, Part, Prompt } from '../schema.ts';
import { sha256 } from './digest.ts';
import type { Shown } from './file.ts';

function partOf(part: Part): object {
  const { kind, key, optional } = part;
  switch (kind) {
    case 'choose':
      return { kind, key, optional, several: part.several, remembered: part.remembered, options: idsOf(part) };
    case 'confirm':
    case 'act':
      return { kind, key, optional, options: idsOf(part) };
    case 'field': {
      const { unit, over, unitNeeded, remembered, from, to } = part;
      return { kind, key, optional, unit, over, unitNeeded, remembered, from, to };
    }
    case 'label':
      return { kind, key, optional, remembered: part.remembered };
    case 'photo':
    case 'note':
      return { kind, key, optional };
    default:
      return unreachable(part);
  }
}
const idsOf = (part: { options: readonly { id: string }[] }): string[] => part.options.map((o) => o.id);

/** Named one by one: what is added to a prompt later does not change what was asked then. */
const essence = (p: Prompt): object => ({
  seq: p.seq,
  place: p.place,
  kind: p.kind,
  class: p.class,
  callouts: p.callouts.map((c) => c.level),
  notices: p.notices.map((n) => n.code),
  parts: p.parts.map(partOf),
  skippable: p.skippable,
  answered: p.progress.answered,
  isolation: p.isolation.map(({ words: _, ...line }) => line),
  holder: p.holder,
  question: p.question,
});

/** After the last entry of a turn, as of its time. */
export function shownAfter(standing: Standing, entry: Entry): Shown {
  const asks = sha256(canonicalJson(essence(prompt(standing, entry.at))));
  return { seq: entry.seq, place: placeIdOf(standing), asks };
}

/** A turn is what one message of one person put on the record. */
export const endsTurn = (entry: Entry, next: Entry | undefined): boolean =>
  next === undefined || next.client !== entry.client || next.by !== entry.by;
