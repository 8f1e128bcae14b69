/** How many texts a property is tried on: as many as said, or five times as many with FUZZ=long. */
export const runs = (short: number): { numRuns: number } => ({
  numRuns: process.env.FUZZ === 'long' ? short * 5 : short,
});
