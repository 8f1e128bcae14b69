/** What came of conversations, as lines for a terminal. */
import type { Figures, Talked } from './talk.ts';

const share = (some: number, of: number): string => (of === 0 ? '–' : `${((100 * some) / of).toFixed(0)} %`);
const listed = (of: Readonly<Record<string, number>>): string =>
  Object.entries(of)
    .sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1))
    .map(([what, times]) => `${what} ${times}`)
    .join(' · ');

export function tellFigures(f: Figures): string[] {
  const jobs = f.conversations;
  return [
    `${f.turns} turns in ${jobs} conversations, seed ${f.seed}: ${f.entries} entries on their records`,
    `  refused ${share(f.refused, f.turns)} of the turns · processes that died ${f.crashes}, records folded anew to the same question ${f.replays}`,
    `  proved dead in ${share(f.proved, jobs)} of the jobs · a verdict in ${share(f.judged, jobs)} · started again and measured in ${share(f.restarts, jobs)}`,
    `  endings: ${listed(f.endings)}`,
    `  on the way: ${listed(f.events)}`,
    `  verdicts, ${Object.keys(f.verdicts).length} of them: ${listed(f.verdicts)}`,
  ];
}

export function tellBreach({ breach, figures }: Talked, brief = false): string[] {
  if (!breach) return ['  breaches: 0'];
  const { rule, what, conversation, nr, of } = breach;
  return [
    `  BREACH of "${rule}": ${what}`,
    `  conversation ${nr} of seed ${figures.seed}, ${of} steps shortened to ${conversation.length}:`,
    ...(brief ? [] : conversation.map((line) => `      ${line}`)),
  ];
}
