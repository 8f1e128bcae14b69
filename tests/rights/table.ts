/**
 * Who may do what, written from the trade and not from the code: the junior on the call, the senior in another van, the
 * dispatcher at the desk, the owner, and nobody, who has no session. `own`: a call that is theirs, and whose lock is theirs.
 * y: it is done. -: it is refused, nothing changes, and nothing of the call is told. n: refused, on a call that they may see.
 *
 * - A junior has the calls that they take part in, and may warn on any: stop, danger, power, a lock, a note, a senior.
 * - A senior has every call, but hands inside and gates are the holder’s alone, and nobody decides about their own work.
 * - A dispatcher has callers, board and assignment, sees every call, and answers nothing at a unit.
 * - Crew, settings and stock are the owner’s, who counts as a senior.
 */
export const COLUMNS = [
  'nobody',
  'technician own',
  'technician other',
  'senior own',
  'senior other',
  'dispatcher other',
  'owner own',
  'owner other',
] as const;
export type Column = (typeof COLUMNS)[number];
export type Cell = 'y' | '-' | 'n';

const TABLE = `
  nobody / technician own, other / senior own, other / dispatcher / owner own, other

  # A call on site
  open a call                            -  y y  y y  y  y y
  open a call for somebody else          -  - -  y y  y  y y
  list of calls                          -  y -  y y  y  y y
  look at a call                         -  y -  y y  y  y y
  page of a call                         -  y -  y y  y  y y
  page of the list                       -  y -  y y  y  y y
  who am I                               -  y y  y y  y  y y
  export a call                          -  y -  y y  n  y y
  answer with eyes                       -  y -  y y  n  y y
  answer a gate                          -  y -  y n  n  y n
  answer with hands inside               -  y -  y n  n  y n
  skip with hands inside                 -  y -  y n  n  y n
  why                                    -  y -  y y  y  y y
  where                                  -  y -  y y  y  y y
  help                                   -  y -  y y  y  y y
  photo                                  -  y -  y y  y  y y
  back                                   -  y -  y n  n  y n
  change an answer                       -  y -  y n  n  y n
  change an answer, with a reason        -  y -  y y  n  y y
  change a gate, with a reason           -  y -  y n  n  y n
  take back a gate                       -  y -  y n  n  y n
  take back a gate, with a reason        -  y -  y y  n  y y
  keep a photo                           -  y -  y y  n  y y
  look at a photo                        -  y -  y y  y  y y

  # What anybody of the crew may say on any call
  stop                                   -  y y  y y  y  y y
  alarm                                  -  y y  y y  y  y y
  words of danger                        -  y y  y y  y  y y
  power is back                          -  y y  y y  y  y y
  lock is off                            -  y y  y y  y  y y
  call a senior                          -  y y  y y  y  y y
  note                                   -  y y  y y  y  y y

  # Whose call it is
  go on                                  -  y -  y y  n  y y
  hand over                              -  y -  y y  y  y y
  take over                              -  y -  y n  n  y n
  assign                                 -  n -  y y  y  y y

  # Danger
  happening                              -  y -  y y  y  y y
  old mark                               -  y -  y n  n  y n
  not here                               -  y -  y y  n  y y
  seen                                   -  y -  y y  y  y y
  release                                -  n -  n y  n  n y
  approvals awaited                      -  - -  y y  -  y y
  emergencies to know of                 -  n -  y y  y  y y

  # What a senior decides
  approve                                -  n -  n y  n  n y
  ask                                    -  n -  n y  n  n y
  reply to a question                    -  y -  y y  n  y y
  sign                                   -  n -  n y  n  n y
  send back                              -  n -  n y  n  n y
  queue of review                        -  n -  y y  n  y y
  page of the queue                      -  n -  y y  n  y y
  review a call                          -  n -  y y  n  y y
  page of a review                       -  n -  y y  n  y y
  recompute                              -  n -  y y  n  y y
  counts                                 -  n -  y y  n  y y

  # Reports
  page for the customer                  -  y -  y y  y  y y
  page for the customer as data          -  y -  y y  y  y y
  record for the shop                    -  y -  y y  n  y y
  record for the shop as PDF             -  y -  y y  n  y y
  record for the shop as data            -  y -  y y  n  y y
  share the page                         -  y -  y y  y  y y
  share the record                       -  n -  y y  n  y y
  links to the page                      -  y -  y y  y  y y
  links to the record                    -  n -  y y  n  y y
  take back a link to the page           -  y -  y y  y  y y
  take back a link to the record         -  n -  y y  n  y y

  # Callers and the board
  take a call                            -  - -  y y  y  y y
  look at a caller’s call                -  - -  y y  y  y y
  page of a caller’s call                -  - -  y y  y  y y
  answer for a caller                    -  - -  y y  y  y y
  say which unit it is                   -  - -  y y  y  y y
  what is known of a caller              -  - -  y y  y  y y
  board                                  -  y -  y y  y  y y
  page of the board                      -  y -  y y  y  y y
  find                                   -  y -  y y  y  y y

  # Crew and shop
  crew and shop                          -  - -  y y  y  y y
  page of crew and shop                  -  - -  y y  y  y y
  save a person                          -  - -  - -  -  y y
  save settings                          -  - -  - -  -  y y
  save a truck                           -  - -  - -  -  y y
  link for a person                      -  - -  - -  -  y y
  sign a person out                      -  - -  - -  -  y y
  devices of a person                    -  - -  - -  -  y y
  sign a device out                      -  - -  - -  -  y y
  own devices                            -  y y  y y  y  y y
  page of own devices                    -  y y  y y  y  y y
  own units                              -  y y  y y  y  y y
  sign an own device out                 -  y y  y y  y  y y
  sign out                               y  y y  y y  y  y y

  # Live
  feed of a call                         -  y -  y y  y  y y
  feed of all calls                      -  y -  y y  y  y y

  # Programs
  document of the API                    -  y y  y y  y  y y`;

/** By use case, a cell for each column. */
export const EXPECTED: ReadonlyMap<string, ReadonlyMap<Column, Cell>> = new Map(
  TABLE.split('\n')
    .filter((line) => /^ {2}\S.* {2}[-ny] /.test(line))
    .map((line) => {
      const [, name = '', cells = ''] = /^ {2}(.+?) {2,}((?:[-ny] *)+)$/.exec(line) ?? [];
      const each = cells.trim().split(/\s+/) as Cell[];
      return [name, new Map(COLUMNS.map((column, i) => [column, each[i] ?? 'n']))];
    }),
);
