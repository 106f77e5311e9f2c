/** Number of letters to change, add, drop or swap with their neighbour to make one word of the other. */
const distance = (a: string, b: string): number => {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, (beforeLast[j - 2] ?? 0) + 1);
      }
      row.push(least);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? 0;
};

/** The name that was probably meant, or nothing where none is near: at most a third of the letters differ. */
export const nearestName = (typed: string, names: readonly string[]): string | undefined => {
  // a pasted page of text is no mistyped name
  if (typed.length > 60) return undefined;
  const ranked = names
    .map((name) => ({ name, off: distance(typed.toLowerCase(), name.toLowerCase()) }))
    .sort((a, b) => a.off - b.off);
  const best = ranked[0];
  return best !== undefined && best.off <= Math.max(1, Math.floor(best.name.length / 3))
    ? best.name
    : undefined;
};
