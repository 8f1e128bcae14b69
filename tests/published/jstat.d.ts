/** What is used of jstat, which ships no types. */
declare module 'jstat' {
  export const jStat: { readonly normal: { readonly cdf: (x: number, mean: number, deviation: number) => number } };
}
