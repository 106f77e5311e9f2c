import type { WayPiece } from '../line-times.ts';

/** Pieces from `first` to `last` stand with what stands at their ends; none where `last` is before `first`. */
export const beltsOf = (way: readonly WayPiece[]): { readonly first: number; readonly last: number } => {
  const rigid = way.map(({ accumulates }) => accumulates === false);
  const last = rigid.lastIndexOf(true);
  return last < 0
    ? { first: way.length, last: way.length - 1 }
    : { first: rigid.lastIndexOf(false, last) + 1, last };
};

export const secondsOf = (pieces: readonly WayPiece[]): number =>
  pieces.reduce((sum, { seconds }) => sum + seconds, 0);

export const roomOf = (pieces: readonly WayPiece[]): number =>
  pieces.reduce((sum, { room = Number.POSITIVE_INFINITY }) => sum + room, 0);

/** s; moments that are summed up in another order differ by less */
const rounding = 1e-9;

/** A belt with what is left to each of its rows, the foremost first. */
class Belt {
  readonly left: number[] = [];
  readonly seconds: number;
  stoppedAt = Number.NEGATIVE_INFINITY;
  constructor(seconds: number) {
    this.seconds = seconds;
  }
  get moves(): boolean {
    return this.left.length === 0 || this.left[0]! > 0;
  }
}

/** Belts one after the other whose rows are moved on by a clock: positions, and no sums of stands. */
export class BeltWay {
  private readonly belts: readonly Belt[];
  private readonly at: {
    readonly row: number;
    readonly seconds: readonly number[];
    readonly rowsBefore: number;
    readonly roomBehind: number;
    readonly secondsBehind: number;
    readonly after: (seconds: number, happens: () => void) => void;
    readonly now: () => number;
    readonly arrive: () => void;
    /** Whether the fill station took so many bottles, or takes them as they are; `gone` left the belts. */
    readonly takes: (bottles: number, gone: number) => boolean;
  };
  private waiting = 0;
  private onto = 0;
  private ended = 0;
  private gone = 0;

  constructor(at: BeltWay['at']) {
    this.at = at;
    this.belts = at.seconds.map((seconds) => new Belt(seconds));
  }

  private accepts(belt: Belt): boolean {
    return belt.moves || this.at.now() - belt.stoppedAt <= rounding;
  }

  /** Whether the washer may begin its stroke after so many. */
  lets(strokes: number): boolean {
    const [first] = this.belts;
    if (first === undefined || this.endless) return true;
    return this.at.rowsBefore === 0 ? this.accepts(first) : strokes - this.onto < this.at.rowsBefore;
  }

  bring(): void {
    this.waiting += 1;
  }

  private get endless(): boolean {
    return this.at.roomBehind === Number.POSITIVE_INFINITY;
  }

  private leave(): void {
    const { secondsBehind, row, arrive, after } = this.at;
    this.gone += row;
    if (secondsBehind > 0) after(secondsBehind, arrive);
    else arrive();
  }

  private passOn(belt: Belt): void {
    belt.left.shift();
    // two that came on at one moment arrive at one
    if (!belt.moves) belt.stoppedAt = this.at.now();
  }

  /** Passes one row on; true where one could be. */
  step(): boolean {
    const { belts } = this;
    const { row, roomBehind, takes } = this.at;
    if (belts.length === 0) {
      if (this.waiting === 0) return false;
      this.waiting -= 1;
      this.leave();
      return true;
    }
    const last = belts.at(-1)!;
    if (last.left[0] === 0) {
      if (roomBehind > 0) {
        if (takes(this.gone + row - roomBehind, this.gone)) {
          this.passOn(last);
          this.leave();
          return true;
        }
      } else if (this.ended === this.gone / row) {
        // it is there for the lanes, and stands at the end until they take it
        this.ended += 1;
        this.at.arrive();
        return true;
      } else if (takes(this.gone + row, this.gone + row)) {
        this.gone += row;
        this.passOn(last);
        return true;
      }
    }
    for (let i = belts.length - 1; i > 0; i--) {
      if (belts[i - 1]!.left[0] === 0 && this.accepts(belts[i]!)) {
        this.passOn(belts[i - 1]!);
        belts[i]!.left.push(belts[i]!.seconds);
        return true;
      }
    }
    if (this.waiting > 0 && this.accepts(belts[0]!)) {
      this.waiting -= 1;
      this.onto += 1;
      belts[0]!.left.push(belts[0]!.seconds);
      return true;
    }
    return false;
  }

  /** s until the next row is at an end */
  nextIn(): number {
    return Math.min(
      Number.POSITIVE_INFINITY,
      ...this.belts.filter(({ left, moves }) => moves && left.length > 0).map(({ left }) => left[0]!),
    );
  }

  move(seconds: number): void {
    for (const belt of this.belts) {
      if (!belt.moves) continue;
      for (const [i, left] of belt.left.entries()) {
        belt.left[i] = left - seconds < 0.1 * rounding ? 0 : left - seconds;
      }
      if (!belt.moves) belt.stoppedAt = this.at.now() + seconds;
    }
  }
}
