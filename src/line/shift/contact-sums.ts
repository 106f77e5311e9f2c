import type { RowEvents } from './shift-events.ts';
import type { WasherStation, WashZone } from './shift-line.ts';

/** Figures that a zone has in a list of contacts. */
export const contactWidth = 4;

const first = 4096;

/**
 * Seconds for which bottles are wetted in each zone of the washer.
 *
 * Method   a stand between two strokes of length d wets share min(d, time-out) - dead; soaking, the whole index does; a row
 *          has the sum of the stands that it spent in the zone, less the draining of an immersed bottle
 * Returns  by zone: bottles, least, sum, most
 */
export class ContactSums {
  readonly sums: Float64Array;
  private readonly washer: WasherStation;
  /** Wetted seconds before each stand, by zone. */
  private wetted: Float64Array[];
  /** With the strokes from a row's entering the washer to its leaving the zone. */
  private readonly zones: readonly (WashZone & { readonly leaves: number })[];

  constructor(washer: WasherStation) {
    this.washer = washer;
    this.sums = new Float64Array(washer.zones.length * contactWidth);
    this.wetted = washer.zones.map(() => new Float64Array(first));
    let rows = 0;
    this.zones = washer.zones.map((zone) => {
      rows += zone.rows;
      return { ...zone, leaves: rows };
    });
    this.clear();
  }

  clear(): void {
    this.washer.zones.forEach((_, zone) => {
      this.sums[zone * contactWidth] = 0;
      this.sums[zone * contactWidth + 1] = Number.POSITIVE_INFINITY;
      this.sums[zone * contactWidth + 2] = 0;
      this.sums[zone * contactWidth + 3] = 0;
    });
  }

  /**
   * The stands before strokes from one number to before another, and what the rows that leave a zone by them had.
   *
   * Symbols  counts  whether the strokes belong to the shift
   */
  stood(from: number, to: number, { stroke, stroked, put }: RowEvents, counts: boolean): void {
    const { sums, zones } = this;
    while (zones.length > 0 && to > this.wetted[0]!.length) this.grow();
    for (let zone = 0; zone < zones.length; zone++) {
      const { rows, leaves, share, dead, timeOut, soaks, emptying } = zones[zone]!;
      const wetted = this.wetted[zone]!;
      const drained = soaks ? emptying : 0;
      const at = zone * contactWidth;
      let [bottles, least, sum, most] = [sums[at]!, sums[at + 1]!, sums[at + 2]!, sums[at + 3]!];
      let after = wetted[from - 1]!;
      for (let number = from; number < to; number++) {
        const seconds = stroke[number]! - stroked[number - 1]!;
        after += soaks
          ? seconds + this.washer.stroke
          : Math.max(0, share * Math.min(seconds, timeOut) - dead);
        wetted[number] = after;
        const row = number - leaves;
        if (!counts || row < 0 || put[row] === 0) continue;
        const contact = after - wetted[number - rows]! - drained;
        bottles += put[row]!;
        sum += put[row]! * contact;
        if (contact < least) least = contact;
        if (contact > most) most = contact;
      }
      sums[at] = bottles;
      sums[at + 1] = least;
      sums[at + 2] = sum;
      sums[at + 3] = most;
    }
  }

  private grow(): void {
    this.wetted = this.wetted.map((old) => {
      const grown = new Float64Array(2 * old.length);
      grown.set(old);
      return grown;
    });
  }
}
