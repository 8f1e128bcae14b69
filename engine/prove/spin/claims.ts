/** What an answer or a judgement's outcome proves, and the rules as claims over it: by the rules, not by the pages. */

/** The links of a proof of dead, in their order. Each counts only after the one before it. */
export const LINKS = ['fit', 'means', 'locked', 'looked', 'line', 'left'] as const;
export type Link = (typeof LINKS)[number];

/** Which link a gate's answer makes; any other answer to it unmakes it. `next`: there is one way on. */
export const ANSWERS: Readonly<Record<string, { readonly makes: Link; readonly by: readonly string[] }>> = {
  fit: { makes: 'fit', by: ['yes'] },
  unfit: { makes: 'fit', by: ['next'] },
  means: { makes: 'means', by: ['next'] },
  locked: { makes: 'locked', by: ['yes'] },
  tag: { makes: 'locked', by: ['yes'] },
  approve: { makes: 'locked', by: ['next'] },
  look: { makes: 'looked', by: ['next'] },
  waited: { makes: 'looked', by: ['yes'] },
  // A line counts once it is judged.
  proving: { makes: 'line', by: [] },
  residual: { makes: 'left', by: [] },
  bus: { makes: 'left', by: [] },
};
/** Which outcome of which judgement makes a link; every other outcome unmakes it. */
export const OUTCOMES: Readonly<Record<string, { readonly makes: Link; readonly by: readonly string[] }>> = {
  absence: { makes: 'line', by: ['dead'] },
  bridge: { makes: 'line', by: ['induced'] },
  capacitors: { makes: 'left', by: ['none'] },
  residual: { makes: 'left', by: ['discharged'] },
  bus: { makes: 'left', by: ['go'] },
};

export interface Claim {
  readonly name: string;
  readonly rule: string;
  readonly says: string;
  readonly ltl: string;
  /** False: it has to be violated, or the others hold of nothing. */
  readonly holds: boolean;
}
const WHOLE = LINKS.join(' && ');
/** IN: a question with hands inside stands, and the product lets it be answered. */
export const CLAIMS: readonly Claim[] = [
  claim('whole', 'R1', 'hands inside only with the whole proof', `[] (IN -> (${WHOLE}))`),
  claim('ended', 'R3', 'hands inside only where nothing ended the isolation since the lock', '[] (IN -> !ended)'),
  claim('old', 'R3', 'hands inside only within thirty minutes, or after the lock was confirmed', '[] (IN -> !old)'),
  claim('holder', 'R3', 'hands inside only of the person whose lock it is', '[] (IN -> lockOf == holder)'),
  claim('alarm', 'R4', 'no isolation outlives an emergency', '[] (alarm -> !proved)'),
  claim('gates', 'R6', 'nothing is proved with a gate left out', `[] (proved -> (${WHOLE}))`),
  { ...claim('reached', '–', 'hands inside are reached at all: violated, as it has to be', '[] !IN'), holds: false },
];
function claim(name: string, rule: string, says: string, ltl: string): Claim {
  return { name, rule, says, ltl, holds: true };
}
