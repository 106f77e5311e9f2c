/** Number of single-letter changes, insertions, deletions and swaps of neighbours between two words. */
const distance = (a: string, b: string): number => {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, before[j - 2]! + 1);
      }
      next.push(least);
    }
    before = row;
    row = next;
  }
  return row[b.length]!;
};

/**
 * The word that was most likely meant, or nothing where none is near.
 *
 * Method   optimal string alignment distance, letters' case aside; near: at most a third of the longer word, at least 2
 * Cost     O(words x length squared); a word of more than 60 letters has no nearest
 */
export const nearestWord = (given: string, words: Iterable<string>): string | undefined => {
  if (given.length > 60) return undefined;
  const lower = given.toLowerCase();
  let nearest: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const word of words) {
    if (Math.abs(word.length - given.length) > 20) continue;
    const away = distance(lower, word.toLowerCase());
    const allowed = Math.max(2, Math.floor(Math.max(word.length, given.length) / 3));
    if (away <= allowed && away < Math.max(given.length, 1) && away < least) {
      nearest = word;
      least = away;
    }
  }
  return nearest;
};
