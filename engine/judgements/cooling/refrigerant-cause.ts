import type { Parts } from '../../schema.ts';
import { judgement } from '../judgement.ts';
import { chose, untaken } from '../probing.ts';
import { chosenOf } from '../read.ts';
import { finding } from '../say.ts';
import { CAUSES, COLUMNS, type Column, LEVELS, type Level, misfits, type Pattern, ROWS } from './cause-table.ts';

const SOURCE = 'common practice, no single source';
/** What has to be so before a pattern means anything. */
const READY = {
  certified: 'Only a certified person concludes on refrigerant.',
  stable: 'It has to run for 15\u2009minutes before its figures stand still.',
  'no-ice': 'On ice no figure of the circuit means anything. Thaw it first.',
  clean: 'Filter and both coils have to be clean first: dirt looks like a wrong charge.',
} as const;

/**
 * Four figures called low, normal or high, against the cause table. Takes `pattern` (suction, head, superheat,
 * subcooling) and `ready` (certified, stable, no-ice, clean, each confirmed). A pattern that fits no row is undecided,
 * and its nearest rows say which figure would decide.
 */
export const refrigerantCause = judgement({
  id: 'refrigerant-cause',
  semantics: 1,
  takes: ['pattern', 'ready'],
  limits: [],
  outcomes: [...CAUSES, 'undecided'],
  run({ pattern, ready }) {
    const missing = (Object.keys(READY) as (keyof typeof READY)[]).filter(
      (key) => !chosenOf(ready, key).includes('yes'),
    );
    const whole = patternOf(pattern);
    const reading = COLUMNS.map((column) => `${column} ${levelOf(pattern, column) ?? 'not read'}`).join(', ');
    const of = (outcome: (typeof CAUSES)[number] | 'undecided', word: string, texts: readonly string[]) => ({
      outcome,
      findings: texts.map((text) => finding({ name: 'Pattern', reading, word, text, source: SOURCE })),
    });
    if (missing.length > 0)
      return of(
        'undecided',
        'not judged',
        missing.map((key) => READY[key]),
      );
    if (whole === null)
      return of('undecided', 'not judged', ['All four figures are needed. One alone concludes nothing.']);
    const row = ROWS.find((candidate) => misfits(whole, candidate).length === 0);
    return row ? of(row.cause, row.cause, [row.text]) : of('undecided', 'fits no cause', [...nearest(whole)]);
  },
  probe: () => probePatterns(),
});

const levelOf = (pattern: Parts | undefined, column: Column): Level | null => {
  const chosen = chosenOf(pattern, column);
  return LEVELS.find((level) => chosen.length === 1 && chosen[0] === level) ?? null;
};

function patternOf(parts: Parts | undefined): Pattern | null {
  const [suction, head, superheat, subcooling] = COLUMNS.map((column) => levelOf(parts, column));
  return suction && head && superheat && subcooling ? { suction, head, superheat, subcooling } : null;
}

/** Rows that one figure read otherwise would fit. */
function nearest(pattern: Pattern): string[] {
  const near = ROWS.flatMap((row) => {
    const [column, ...more] = misfits(pattern, row);
    return column && more.length === 0 ? [{ row, column }] : [];
  });
  if (near.length === 0) return ['These four do not belong together. Take all of them again before anything else.'];
  return near.map(({ row, column }) => {
    const wanted = row.levels[column].join(' or ');
    return `With ${column} ${wanted} it would be ${NAMES[row.cause]}. Read ${column} again.`;
  });
}

const NAMES: Readonly<Record<(typeof CAUSES)[number], string>> = {
  normal: 'a circuit in order',
  undercharge: 'an undercharge',
  restriction: 'a restriction',
  airflow: 'a matter of air or load',
  overcharge: 'an overcharge or air in it',
  'condenser-air': 'a matter of the condenser’s air',
  'not-pumping': 'a compressor that does not pump',
  overfeeding: 'a metering device that feeds too much',
};

function probePatterns(): { pattern?: Parts; ready?: Parts }[] {
  const ready: Parts = { certified: chose('yes'), stable: chose('yes'), 'no-ice': chose('yes'), clean: chose('yes') };
  const of = (...levels: readonly Level[]): Parts =>
    Object.fromEntries(COLUMNS.map((column, i) => [column, chose(levels[i] ?? 'normal')]));
  const every = LEVELS.flatMap((a) =>
    LEVELS.flatMap((b) => LEVELS.flatMap((c) => LEVELS.map((d) => ({ pattern: of(a, b, c, d), ready })))),
  );
  const undercharge = of('low', 'low', 'high', 'low');
  return [
    ...every,
    ...Object.keys(READY).map((key) => ({ pattern: undercharge, ready: { ...ready, [key]: chose('no') } })),
    { pattern: undercharge },
    { pattern: { ...undercharge, head: untaken }, ready },
    {},
  ];
}
