/** Share of a distribution below and above a point; the smaller of the two has its own digits. */
export interface Tails {
  readonly lower: number;
  readonly upper: number;
}
