/** The README's script of a whole call, read as rows: who does what, and what each window then shows. */
import { readFile } from 'node:fs/promises';

export type Who = 'Dana' | 'Ines' | 'Ruth';
export type Act =
  | { readonly do: 'open' | 'press' | 'pick'; readonly what: string }
  /** `in` is left out for the line that takes anything. */
  | { readonly do: 'type'; readonly what: string; readonly in: string | null };
export interface Row {
  readonly who: Who;
  readonly acts: readonly Act[];
  readonly sees: readonly { readonly who: Who; readonly what: string }[];
}

const README = new URL('../../README.md', import.meta.url);
const VERBS = { opens: 'open', presses: 'press', picks: 'pick', types: 'type' } as const;
const ACTS =
  /(?<verb>\bopens|presses|picks|types)\b|\*\*(?<bold>[^*]+)\*\*(?:)|`(?<typed>[^`]+)`(?: in \*\*(?<field>[^*]+)\*\*)?/g;
const SEES = /(?<who>Dana|Ines|Ruth):|\*\*(?<bold>[^*]+)\*\*/g;

/** Every row of the section's table. Throws where a cell says anything that would not be played. */
export async function fiveMinutes(): Promise<Row[]> {
  const [, after = ''] = (await readFile(README, 'utf8')).split('## Five minutes: a whole call with three people\n');
  const [section = ''] = after.split('\n## ');
  return section
    .split('\n')
    .filter((line) => /^\| (Dana|Ines|Ruth) \|/.test(line))
    .map((line) => {
      const [, who = '', does = '', sees = ''] = line.split('|').map((cell) => cell.trim());
      return { who: who as Who, acts: actsIn(does), sees: seesIn(sees, who as Who) };
    });
}

export function actsIn(cell: string): Act[] {
  nothingElse(cell, ACTS);
  let verb: keyof typeof VERBS | null = null;
  const acts: Act[] = [];
  for (const { groups = {} } of cell.matchAll(ACTS)) {
    if (groups.verb) verb = groups.verb as keyof typeof VERBS;
    else if (groups.typed !== undefined && verb === 'types')
      acts.push({ do: 'type', what: groups.typed, in: groups.field ?? null });
    else if (groups.bold && verb !== null && verb !== 'types') acts.push({ do: VERBS[verb], what: groups.bold });
    else throw new Error(`what is done with "${groups.bold ?? groups.typed}" in "${cell}"?`);
  }
  return acts;
}

function seesIn(cell: string, first: Who): Row['sees'] {
  nothingElse(cell, SEES);
  let who = first;
  const sees: { who: Who; what: string }[] = [];
  for (const { groups = {} } of cell.matchAll(SEES)) {
    if (groups.who) who = groups.who as Who;
    else sees.push({ who, what: groups.bold ?? '' });
  }
  return sees;
}

/** Whatever is neither played nor looked for has no place in the table. */
function nothingElse(cell: string, known: RegExp): void {
  const rest = cell.replace(known, '').replace(/\band\b|[,;\s]/g, '');
  if (rest !== '') throw new Error(`"${rest}" in "${cell}" is neither done nor seen`);
}
