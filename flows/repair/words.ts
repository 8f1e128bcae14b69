/** How a technician says that a part is in, and that its wires are back. */
export const FITTED = [
  'fitted',
  'installed',
  'put in',
  'put it in',
  'its in',
  'new one in',
  'mounted',
  'installed and strapped',
] as const;
export const WIRES_BACK = [
  'wires back',
  'wires back on',
  'wires on',
  'back on',
  'rewired',
  'reconnected',
  'hooked up',
  'hooked back up',
  'wired up',
  'wired back up',
  'back together',
  'tight',
  'tugged',
] as const;
