/** All matches of a global pattern. `String.matchAll` makes another pattern for each call, which costs more than the search. */
export function* matches(pattern: RegExp, text: string): Generator<RegExpExecArray> {
  pattern.lastIndex = 0;
  for (let match = pattern.exec(text); match; match = pattern.exec(text)) {
    const next = pattern.lastIndex;
    yield match;
    // Another search with it may have come between.
    pattern.lastIndex = match[0] === '' ? next + 1 : next;
  }
}
