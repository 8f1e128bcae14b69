/** Verdicts of these pages that put something right: a restart in its figures then proves it. */
export const SETTLED = [
  'air-side-righted',
  'air-side-was-it',
  'condenser-cleaned',
  'bulb-loose',
  'drain-cleared',
  'no-float-there',
  'rattle-put-right',
  'ran-backwards',
  'coil-smell-cleaned',
  'reversing-set-right',
  'reversing-coil',
] as const;
