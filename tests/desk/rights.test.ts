/** Who may do what, against a table written out by hand. */
import { describe, expect, test } from 'vitest';
import { may, RIGHTS, type Standing } from '../../engine/desk/rights.ts';
import type { Role } from '../../engine/desk/types.ts';

const ROLES: readonly Role[] = ['technician', 'senior', 'dispatcher', 'owner'];
/** What a cell of the table means, for somebody who stands to the job and the answer like this. */
const CELLS: Readonly<Record<string, (to: Standing) => boolean>> = {
  '+': () => true,
  '-': () => false,
  part: (to) => to.participates,
  own: (to) => to.own,
  lock: (to) => to.holder,
  'no lock': (to) => !to.holder,
  mine: (to) => to.own || to.holder,
  'mine, why': (to) => to.own || to.holder || to.reason,
  'mine, why unless gate': (to) => to.own || to.holder || (to.reason && !to.gate),
};
/**
 * +: always · part: takes part in the job · own: their own answer or alarm · lock: holds the isolation · no lock: does not ·
 * mine: own or lock · why: with a reason. A call that is opened has no holder yet, so its assignment asks for none.
 */
const TABLE = `
  use case     technician  senior                   dispatcher  owner
  open         +           +                        +           +
  see          part        +                        +           +
  export       part        +                        -           +
  assign       -           +                        +           +
  hand-over    lock        +                        +           +
  take-over    +           +                        -           +
  answer       part        +                        -           +
  hold         part        part                     -           part
  amend        mine        mine, why unless gate    -           mine, why unless gate
  withdraw     mine        mine, why                -           mine, why
  raise        +           +                        +           +
  stop         +           +                        +           +
  alarm        +           +                        +           +
  report       +           +                        +           +
  note         +           +                        +           +
  not-here     own         +                        own         +
  release      -           no lock                  -           no lock
  approve      -           no lock                  -           no lock
  ask          -           no lock                  -           no lock
  reply        part        +                        -           +
  sign         -           no lock                  -           no lock
  send-back    -           no lock                  -           no lock
  take-call    -           +                        +           +
  board        -           +                        +           +
  told-of-alarms  -        +                        +           +
  read-crew    -           +                        +           +
  crew         -           -                        -           +
  settings     -           -                        -           +
  review       -           +                        -           +
  read-page    part        +                        +           +
  read-record  part        +                        -           +
  share-page   part        +                        +           +
  share-record  -          +                        -           +`;
const rows = TABLE.trim()
  .split('\n')
  .slice(1)
  .map((line) => line.trim().split(/ {2,}/) as [keyof typeof RIGHTS, ...string[]]);
const bits = [false, true];
const RELATIONS: readonly Standing[] = bits.flatMap((participates) =>
  bits.flatMap((holder) =>
    bits.flatMap((own) => bits.flatMap((gate) => bits.map((reason) => ({ participates, holder, own, gate, reason })))),
  ),
);

test('the table has a row for every use case and a cell for every role', () => {
  expect(rows.map(([use]) => use).sort()).toEqual(Object.keys(RIGHTS).sort());
  expect(rows.every((row) => row.length === 5 && row.slice(1).every((cell) => Object.hasOwn(CELLS, cell)))).toBe(true);
});
describe.each(rows)('%s', (use, ...cells) => {
  test.each(ROLES.map((role, i) => [role, cells[i] ?? '']))('%s: %s', (role, cell) => {
    const wrong = RELATIONS.filter((to) => may([role], use, to) !== CELLS[cell]?.(to));
    expect(wrong).toEqual([]);
  });
  test('two roles are as good as the better one', () => {
    const both: Role[] = ['technician', 'owner'];
    const either = (to: Standing): boolean => both.some((role) => may([role], use, to));
    expect(RELATIONS.filter((to) => may(both, use, to) !== either(to))).toEqual([]);
    expect(may([], use, RELATIONS.at(-1) ?? ({} as Standing))).toBe(false);
  });
});
