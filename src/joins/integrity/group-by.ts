/** Things by a key, in the order in which each key came first; what has no key is left out. */
export const groupBy = <T>(
  things: readonly T[],
  keyOf: (thing: T) => string | undefined,
): ReadonlyMap<string, readonly T[]> => {
  const groups = new Map<string, T[]>();
  for (const thing of things) {
    const key = keyOf(thing);
    if (key === undefined) continue;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [thing]);
    else group.push(thing);
  }
  return groups;
};
