/** Adds to the list under `key`, beginning one where there is none. */
export function file<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const there = map.get(key);
  if (there) there.push(value);
  else map.set(key, [value]);
}
