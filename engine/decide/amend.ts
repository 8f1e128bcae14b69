/** Changing an answer (same observation, another figure) and taking one back (the observation isn't trusted). */
import { placeOf } from '../fold.ts';
import { prompt, promptAgain } from '../prompt.ts';
import { memoryOf, planOf, type Standing } from '../replay.ts';
import type { Given, GivenParts, Part, Parts, TextRef, Value } from '../schema.ts';
import { readLine } from '../understand/index.ts';
import { endsByVolts, readParts } from './answer.ts';
import { type Context, type Relation, refuse, type Scribe, type Wish } from './types.ts';

const SIGNED = 'This record is signed. A senior sends it back before anything is changed; notes are still taken.';
const GONE = 'That answer no longer stands. It is asked again where it is needed.';

function relationTo(
  s: Standing,
  of: number,
  c: Context,
  reason: boolean,
): { place: string; relation: Relation } | null {
  const memory = memoryOf(s);
  const id = placeOf(memory, of);
  const place = id === null ? undefined : planOf(s).places.get(id);
  const fact = id === null ? undefined : memory.facts[id];
  if (!place || !fact) return null;
  const holder = memory.isolations[place.cabinet]?.holder === c.by;
  return { place: place.id, relation: { own: fact.by === c.by, holder, gate: place.gate, reason } };
}

export function decideAmend(
  s: Standing,
  how: { of: number; text?: string; parts?: GivenParts; reason?: string },
  c: Context,
  keep: Scribe,
): Wish {
  if (memoryOf(s).signed) return refuse('closed', SIGNED);
  const found = relationTo(s, how.of, c, (how.reason ?? '') !== '');
  const place = found && planOf(s).places.get(found.place);
  const fact = found && memoryOf(s).facts[found.place];
  if (!found || !place || !fact) return refuse('nothing-to-change', GONE);
  if (!c.may('amend', found.relation)) {
    return refuse(
      'no-right',
      'Only who answered, or the holder, changes this. A senior gives a reason, and takes a gate back instead of changing it.',
    );
  }
  const asked = promptAgain(s, place.id, how.of, c.at);
  const typed = how.parts ? { given: how.parts, unread: [] } : readLine(how.text ?? '', asked.parts);
  const { given } = typed;
  if (Object.keys(given).length === 0)
    return refuse(
      'unclear',
      `That changes nothing in the answer to “${asked.title}” For example: back ${exampleOf(asked.parts)}.`,
    );
  // "back fan 5.2" typed to the line that is asked now, before it was answered: a note behind it is not written over.
  const onlyNotes = asked.parts.every(({ key, kind }) => kind === 'note' || given[key] === undefined);
  const now =
    onlyNotes && how.text
      ? readLine(
          how.text,
          prompt(s, c.at).parts.filter(({ kind }) => kind === 'field'),
        ).given
      : {};
  if (Object.keys(now).length > 0)
    return refuse(
      'unclear',
      `That answers what is asked now: type it without back. “${asked.title}” is the last answer, and it was not changed.`,
    );
  const whole = { ...printed(fact.body.parts), ...given };
  const read = readParts(place, whole, memoryOf(s), s, keep);
  if ('refusal' in read) return read.refusal;
  const parts: Record<string, Value> = {};
  for (const [key, value] of Object.entries(read.parts)) {
    const was = fact.body.parts[key];
    if (Object.hasOwn(given, key) || was === undefined) parts[key] = value;
  }
  const changed = Object.entries(parts).filter(([k, v]) => JSON.stringify(v) !== JSON.stringify(fact.body.parts[k]));
  if (changed.length === 0) return refuse('nothing-to-change', 'That is what stands already.');
  // What is typed beside the figure says why: "back fan 5.2 lead was on paint".
  const why = how.reason || typed.unread.join(', ');
  const reason = why ? keep.keep(why) : undefined;
  return {
    drafts: [
      { kind: 'amended', body: { of: how.of, parts: Object.fromEntries(changed), ...(reason ? { reason } : {}) } },
      ...endsByVolts(planOf(s), place, Object.fromEntries(changed), c.at),
    ],
  };
}

const exampleOf = ([part]: readonly Part[]): string =>
  part && 'options' in part ? (part.options[0]?.label ?? '') : `${part?.key ?? ''} and the new value`;

/** A standing answer as it could be sent again. Texts can't be: they are kept unless they are changed. */
function printed(parts: Parts): GivenParts {
  const out: Record<string, Given> = {};
  for (const [key, value] of Object.entries(parts)) {
    if (value.kind === 'choice') out[key] = [...value.chosen];
    else if (value.kind === 'figure') out[key] = `${value.value} ${value.unit === 'count' ? '' : value.unit}`.trim();
    else if (value.kind === 'over') out[key] = 'OL';
    else if (value.kind === 'photo') out[key] = value.hash;
    else if (value.kind === 'label') {
      const l = value.label;
      const values = l.fan === null ? l.herm : `${l.herm}+${l.fan}`;
      const tolerance = l.below === l.above ? `±${l.above}%` : `-${l.below}/+${l.above}%`;
      out[key] = `${values} µF ${tolerance}${l.volts === null ? '' : ` ${l.volts} VAC`}`;
    } else if (value.kind === 'text') out[key] = '·';
  }
  return out;
}

export function decideWithdraw(s: Standing, of: number, reason: TextRef | undefined, c: Context): Wish {
  if (memoryOf(s).signed) return refuse('closed', SIGNED);
  const found = relationTo(s, of, c, reason !== undefined);
  if (!found) return refuse('nothing-to-change', GONE);
  if (!c.may('withdraw', found.relation)) {
    return refuse('no-right', 'Only who answered, or the holder, takes this back. A senior gives a reason.');
  }
  return { drafts: [{ kind: 'withdrawn', body: { of, ...(reason ? { reason } : {}) } }] };
}
