/** Who may do what: one table, role × use case, for every adapter. The desk asks it before anything is decided. */
import type { Relation, UseCase } from '../decide/types.ts';
import type { Manual } from '../vocabulary.ts';
import type { Role } from './types.ts';

/** How a person stands to a job besides their role. */
export interface Standing extends Relation {
  readonly participates: boolean;
}
type Rule = (to: Standing) => boolean;
const always: Rule = () => true;
const taking: Rule = (to) => to.participates;
const holding: Rule = (to) => to.holder;
const ownOrHolding: Rule = (to) => to.own || to.holder;
/** A senior or owner may change another's answer with a reason, but a gate they only take back. */
const seniorAmends: Rule = (to) => to.own || to.holder || (to.reason && !to.gate);
const seniorWithdraws: Rule = (to) => to.own || to.holder || to.reason;
const notHolding: Rule = (to) => !to.holder;

export type DeskUse =
  | ('open' | 'see' | 'export' | 'assign' | 'crew' | 'settings' | 'review')
  | ('take-call' | 'board' | 'told-of-alarms' | 'read-crew')
  | ReportUse;
/** The customer's page and the shop's record: read, and shared by a link. */
type ReportUse = 'read-page' | 'read-record' | 'share-page' | 'share-record';
type Row = Partial<Record<Role, Rule>>;

export const RIGHTS: Readonly<Record<UseCase | DeskUse, Row>> = {
  open: { technician: always, senior: always, dispatcher: always, owner: always },
  see: { technician: taking, senior: always, dispatcher: always, owner: always },
  export: { technician: taking, senior: always, owner: always },
  assign: { senior: always, dispatcher: always, owner: always },
  // A call while the caller is on the line: its questions, and the answers to them.
  'take-call': { senior: always, dispatcher: always, owner: always },
  board: { senior: always, dispatcher: always, owner: always },
  // Whose screens say so until they have seen it, on whatever job it is.
  'told-of-alarms': { senior: always, dispatcher: always, owner: always },
  'read-crew': { senior: always, dispatcher: always, owner: always },
  crew: { owner: always },
  settings: { owner: always },
  review: { senior: always, owner: always },
  'read-page': { technician: taking, senior: always, dispatcher: always, owner: always },
  'read-record': { technician: taking, senior: always, owner: always },
  'share-page': { technician: taking, senior: always, dispatcher: always, owner: always },
  'share-record': { senior: always, owner: always },
  answer: { technician: taking, senior: always, owner: always },
  // Gates, acts, inside, control and live steps: the holder; who answers the first gate becomes it.
  hold: { technician: taking, senior: taking, owner: taking },
  amend: { technician: ownOrHolding, senior: seniorAmends, owner: seniorAmends },
  withdraw: { technician: ownOrHolding, senior: seniorWithdraws, owner: seniorWithdraws },
  raise: { technician: always, senior: always, dispatcher: always, owner: always },
  stop: { technician: always, senior: always, dispatcher: always, owner: always },
  alarm: { technician: always, senior: always, dispatcher: always, owner: always },
  report: { technician: always, senior: always, dispatcher: always, owner: always },
  note: { technician: always, senior: always, dispatcher: always, owner: always },
  'hand-over': { technician: holding, senior: always, dispatcher: always, owner: always },
  'take-over': { technician: always, senior: always, owner: always },
  'not-here': { technician: (to) => to.own, senior: always, dispatcher: (to) => to.own, owner: always },
  release: { senior: notHolding, owner: notHolding },
  approve: { senior: notHolding, owner: notHolding },
  ask: { senior: notHolding, owner: notHolding },
  reply: { technician: taking, senior: always, owner: always },
  sign: { senior: notHolding, owner: notHolding },
  'send-back': { senior: notHolding, owner: notHolding },
};

/** True where one of the person's roles allows it. */
export const may = (roles: readonly Role[], use: UseCase | DeskUse, to: Standing): boolean =>
  roles.some((role) => RIGHTS[use][role]?.(to) ?? false);

const ANSWERS: readonly string[] = ['answer', 'amend', 'withdraw'];
/** A call that is taken down touches no unit: whoever takes calls answers there, and nobody else. */
export const useOn = (manual: Pick<Manual, 'caller'>, use: UseCase): UseCase | DeskUse =>
  manual.caller && ANSWERS.includes(use) ? 'take-call' : use;
