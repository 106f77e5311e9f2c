/** Writes the moments of rows from one to before another, of which the first is the set of that number; maybe of a part alone. */
type WriteMoments = (first: number, end: number, set: number, part: boolean) => void;

/** Rows that are written at once: who asks for one often asks for some before it. */
const atOnce = 4;

/**
 * Rows and sets of which no more is written down than what later ones look back on, until somebody asks for the rest.
 *
 * Method   stretches of them in the order of the line, written from behind
 */
export class LateMoments {
  /** Rows from this one on are whole, and so are sets of no lower number. */
  wholeFrom = 0;
  write: WriteMoments = () => undefined;
  private readonly firsts: number[] = [];
  private readonly ends: number[] = [];
  private readonly sets: number[] = [];

  begin(): void {
    this.wholeFrom = 0;
    this.firsts.length = 0;
    this.ends.length = 0;
    this.sets.length = 0;
  }

  add(first: number, end: number, set: number): void {
    this.firsts.push(first);
    this.ends.push(end);
    this.sets.push(set);
    this.wholeFrom = end;
  }

  /** Writes what is missing of the row or set of a number, and of those behind it. */
  writeFrom(number: number): void {
    const { firsts, ends, sets } = this;
    while (this.wholeFrom > number) {
      const last = ends.length - 1;
      const [first, end] = [firsts[last]!, ends[last]!];
      const from = Math.max(first, Math.min(number, end) - atOnce);
      this.write(from, end, sets[last]! + from - first, from > first);
      if (from > first) ends[last] = from;
      else {
        firsts.pop();
        ends.pop();
        sets.pop();
      }
      this.wholeFrom = ends.at(-1) ?? 0;
    }
  }
}
