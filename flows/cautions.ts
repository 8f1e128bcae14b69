/** What several pages warn of in the same words. */

/** Before live readings. */
export const QUALIFIED = {
  level: 'warning',
  text: 'Live readings are for qualified people with rated gloves and eye protection. NFPA 70E and your employer’s program govern.',
} as const;
/** Where the question itself says that they are live. */
export const GLOVES = {
  level: 'warning',
  text: 'Rated gloves and eye protection. NFPA 70E and your employer’s program govern.',
} as const;
