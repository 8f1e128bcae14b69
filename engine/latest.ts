/** Puts a value last, and lets the one go that was put longest ago where there are more than `most`. */
export function keepLatest<K, V>(all: Map<K, V>, key: K, value: V, most: number): void {
  all.delete(key);
  all.set(key, value);
  for (const oldest of all.keys()) {
    if (all.size <= most) return;
    all.delete(oldest);
  }
}
