/** Caps of a chute over a shift as the corners of a line: between two of them the level is straight while the sorter works. */
export class ChuteKnots {
  /** s from the start, rising. */
  readonly at: number[] = [];
  readonly caps: number[] = [];
  /** Whether the sorter is on from here. */
  readonly runs: boolean[] = [];

  begin(): void {
    this.at.length = 0;
    this.caps.length = 0;
    this.runs.length = 0;
  }

  add(at: number, caps: number, runs: boolean): void {
    this.at.push(at);
    this.caps.push(caps);
    this.runs.push(runs);
  }
}
