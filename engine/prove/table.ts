/** What is proved, as the README shows it. `tests/prove/proof.test.ts` holds both together. */
import { BROKEN } from './broken.ts';
import type { Proof } from './index.ts';
import type { Rule } from './rules/rules.ts';

const WORDS: Readonly<Record<Exclude<Rule, 'opinion'>, string>> = {
  R1: 'hands inside only when dead: means, lock, both provings, every pair, every residual',
  R2: 'live work ends the isolation; 24 V with the line locked does not, and more than that does',
  R3: 'it goes stale: age, power back, lock off, hand-over, a gate changed or taken back',
  R4: 'a hazard wins, from anywhere',
  R5: 'stop is always there',
  R6: 'no gate is skipped',
  R7: 'no verdict without its evidence',
  R8: 'the label governs, with the meter’s doubt, not the habit',
  R9: 'what is read on the refrigerant is read by a certified person',
  R10: 'every state leads on, and to an end',
  R12: 'no page tells anybody to bypass a safety',
  R13: 'a unit with a bus, or one that nobody is sure about, never reaches a cabinet that is not its own',
};

export const walksTable = (proof: Proof): readonly string[] => [
  '| walk | states | turns |',
  '|---|---|---|',
  ...proof.walks.map((w) => `| ${w.name} | ${w.states} | ${w.edges} |`),
];
/** Each rule with the variants that break it; in the tests and by the command every one of them is caught. */
export const rulesTable = (): readonly string[] => [
  '| rule | in words | broken variants, all caught |',
  '|---|---|---|',
  ...Object.entries(WORDS).map(
    ([rule, words]) => `| ${rule} | ${words} | ${BROKEN.filter((v) => v.rule === rule).length} |`,
  ),
];
