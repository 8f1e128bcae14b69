/** What people type of a fan or a blower wheel that they turned by hand. */
export const SPINS = [
  ...['spin free', 'free', 'spins free', 'spins', 'spun free', 'spins good', 'spins fine', 'spins freely'],
  ...['spins easy', 'turns free', 'turns freely', 'no play', 'gira libre'],
] as const;
/** The shaft itself. */
export const STIFF = [
  ...['stiff', 'tight', 'play', 'has play', 'play in shaft', 'binds', 'binding', 'drags', 'dragging', 'rough'],
  ...['grinds', 'grinding', 'wobbles', 'wobbly', 'bearings', 'bearings shot', 'bad bearings', 'noisy'],
  ...['loose', 'duro', 'stiff scrapes'],
] as const;
/** What says nothing of the shaft yet: it touches something, or doesn’t turn. */
export const RUBS = [
  ...['rubs', 'rubbing', 'blade rubs', 'wheel rubs', 'scrapes', 'scraping', 'hits', 'hits the guard', 'catches'],
  ...['blocked', 'jammed', 'debris', 'stick', 'seized', 'locked up', 'stuck', 'wont turn', 'wont spin', 'not spin'],
  ...['not turn', 'not free', 'trabado'],
] as const;
/** Cleared of what it rubbed on and spun again, blower or fan: what its answers are called. */
export const CLEARED = {
  yes: 'Clear, and spins free, no play',
  words: [...SPINS, 'cleared', 'clear now', 'free now'],
} as const;
export const STILL_STIFF = {
  label: 'Clear of everything, and still stiff, rough or has play',
  words: STIFF,
  to: 'bearings',
} as const;
