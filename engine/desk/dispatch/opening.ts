/** What a taken call opens: the job's first entries, with all that the call brought. */
import { textRef } from '../../chain.ts';
import { learnt, VULNERABLE } from '../../decide/call.ts';
import { memoryOf, placeIdOf, planOf } from '../../replay.ts';
import type { Draft, Equipment, Text } from '../../schema.ts';
import type { File } from '../files.ts';

/** Whether this record is a call that is over and opens a job. */
export function opensJob({ standing }: File): boolean {
  const opens = planOf(standing).manual.caller?.opens ?? [];
  return opens.some((ending) => placeIdOf(standing) === `!${ending}`);
}

export interface Opening {
  readonly title: string;
  /** After `opened` and the settings in force. */
  readonly drafts: Draft[];
  readonly texts: Text[];
  readonly training: boolean;
  /** Where the unit is no record of the shop's yet: by what it is known from now on. */
  readonly newUnit: string | null;
}

/** `unit` as the shop's record has it now; null where the call is about none. */
export function openingOf(from: string, by: string, file: File, unit: Equipment | null, salt: () => string): Opening {
  const memory = memoryOf(file.standing);
  const { call, words, vulnerable } = learnt(planOf(file.standing), memory);
  const said: (readonly [string, string])[] = [
    ...Object.entries(words).map(([what, { ref }]) => [what, file.texts.get(ref) ?? '(removed)'] as const),
    ...(vulnerable === null ? [] : [[VULNERABLE, vulnerable] as const]),
  ];
  // The first reference is the title's.
  const refs = said.map(([what, text], i) => [what, textRef(text, salt(), `${by}.call.${i + 2}`)] as const);
  const address = said.find(([what]) => what === 'address')?.[1];
  const about = memory.alarm ? 'EMERGENCY' : (call.causes[0]?.because.split('; ')[0] ?? call.said[0] ?? 'no cooling');
  return {
    title: `${address ?? 'No address yet'}: ${about}`.slice(0, 200),
    drafts: [
      {
        kind: 'set',
        body: {
          what: 'call',
          call: { ...call, from, words: Object.fromEntries(refs.map(([what, { ref }]) => [what, ref])) },
        },
      },
      // Its name says where the caller lives, and no entry can be changed: the record knows it by its id alone.
      ...(unit
        ? [{ kind: 'set' as const, body: { what: 'equipment' as const, equipment: { ...unit, name: '' } } }]
        : []),
      ...(memory.alarm ? [{ kind: 'alarmed' as const, body: { hazard: memory.alarm.hazard } }] : []),
    ],
    texts: refs.map(([, { row }]) => row),
    training: memory.training,
    newUnit: unit || memory.training ? null : (address ?? null),
  };
}
